using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Tires;

/// <summary>The tire diameter an axle is geared with, and whether its tires are alike.</summary>
/// <remarks>
/// Formula:  D = largest diameter; spread = (largest - smallest) / largest
/// Valid:    nominal or measured diameters, all got the same way
/// Source:   common practice, no source (limit 1 %)
/// Example:  31 in and 30.5 in -> 31 in, spread 1.6 %
/// </remarks>
public sealed class AxleDiameter() : Calculation<AxleDiameter.Inputs, AxleDiameter.Result>(new()
{
    Id = "tires.axle-diameter",
    Version = 1,
    Title = "Tire diameter of an axle",
    Purpose = "The one diameter that gearing is figured with, and whether the tires of the axle are alike enough for its differential.",
    Formula = "D = largest diameter; spread = (largest - smallest) / largest",
    Validity = "Diameters got the same way, all nominal or all measured. Wear and inflation make tires of one size differ.",
    Sources = ["Limit of 1 %: common practice, no source"],
    Checks = [new("alike", Sense.AtMost, "Are the tires of the axle alike?")],
    Trends = [new("diameters", "diameter", '+', 24, 44)],
    Examples =
    [
        new(new Dictionary<string, string> { ["diameters"] = """{"left":"31 in","right":"775 mm"}""" },
            new Dictionary<string, double> { ["diameter"] = 31 }, 1e-9,
            "775 mm is 30.51 in, so 31 in is the larger, by hand", Provenance.Derived),
    ],
    Cautions = ["Unequal tires on an axle keep its differential working on every straight, wear it out and pull the vehicle to one side; a locked axle fights the steering."],
})
{
    public sealed record Inputs(
        [Input("diameters of the tires on the axle", "in", MoreThan = 0, Low = 20, High = 60,
            Measure = "read the sizes on the sidewalls, or tape once around each tread and divide by 3.1416")] Members<Length> Diameters);

    public sealed record Result([Output("tire diameter of the axle", "in")] Length Diameter);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double largest = x.Diameters.Items.Max(d => d.Value.Meters), smallest = x.Diameters.Items.Min(d => d.Value.Meters); // m
        var spread = (largest - smallest) / largest;
        w.Line("D", "largest diameter", $"{largest}", largest, "m");
        w.Line("spread", "(largest - smallest) / largest", $"({largest} - {smallest}) / {largest}", 100 * spread, "%");
        w.AtMost("alike", 100 * spread, 1, "%", spread > 0.01
            ? $"The tires of this axle differ by {100 * spread:0.##} %: unequal tires work the differential all the time."
            : $"The tires of this axle are alike within {100 * spread:0.##} %.", "common practice, no source");
        return new(Length.FromMeters(largest));
    }
}
