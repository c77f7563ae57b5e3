using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Springs;

/// <summary>Height of the axle center over the ground: measured at the wheels, or guessed from the tires' diameter.</summary>
/// <remarks>
/// Formula:  mean of the measured radii; else r = (1 - s) D / 2 with s the share by which the weight flattens the tire
/// Valid:    usual pressure under a usual load; a soft or overloaded tire stands lower
/// Source:   definition; 5 %: common practice, no source
/// Example:  33 in, 5 % -> 398.1 mm
/// </remarks>
public sealed class LoadedRadius() : Calculation<LoadedRadius.Inputs, LoadedRadius.Result>(new()
{
    Id = "springs.loaded-radius",
    Version = 1,
    Title = "Axle height on loaded tires",
    Purpose = "How high the axle's center stands over the ground, so that heights over the axle become heights over the ground, before anybody has taped it.",
    Formula = "mean of the measured loaded radii; else (1 - s) D / 2",
    Validity = "Without a measurement it is an estimate: the share s by which the weight flattens a tire is 3 to 8 % of its radius (common practice, no source), "
        + "which on a 33 in tire is an inch from end to end.",
    Sources = ["Definition of the loaded radius", "5 %: common practice, no source"],
    Trends = [new("diameter", "radius", '+', 25, 44), new("flattening", "radius", '-', 0.02, 0.1), new("measured", "radius", '+', 10, 24)],
    Examples =
    [
        new(new Dictionary<string, string> { ["diameter"] = "33 in" }, new Dictionary<string, double> { ["radius"] = 398.145 }, 1e-6, "0.95 x 419.1 mm by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["diameter"] = "33 in", ["measured"] = """{"left":"15.4 in","right":"15.5 in"}""" },
            new Dictionary<string, double> { ["radius"] = 392.43 }, 1e-6, "mean of two readings, 15.45 in", Provenance.Derived),
    ],
})
{
    public sealed record Inputs(
        [Input("diameter of the axle's tires", "in", MoreThan = 0, Low = 20, High = 60, Measure = "comes from the tire size")] Length Diameter,
        [Input("measured loaded radius of its tires", "in", MoreThan = 0, Measure = "tape from level ground to the hub center, weight on, on both sides")] Members<Length>? Measured,
        [Input("share of the radius by which the weight flattens the tire", AtLeast = 0, High = 0.15, Default = 0.05, Measure = "take 0.05, or measure the radius")] Ratio Flattening);

    public sealed record Result([Output("height of the axle center over the ground", "mm")] Length? Radius);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double D = x.Diameter.Meters, s = x.Flattening.DecimalFractions; // m
        if (x.Measured is { } measured)
        {
            var mean = measured.Items.Average(m => m.Value.Meters);
            w.Line("r", "mean of the readings", $"{measured.Items.Count} readings", 1000 * mean, "mm");
            return new(Length.FromMeters(mean));
        }
        if (s >= 1)
        {
            w.Caution("No tire is flattened by its whole radius: correct the share.");
            return new((Length?)null);
        }
        w.Line("r", "(1 - s) D / 2", $"(1 - {s}) x {1000 * D} / 2", 500 * (1 - s) * D, "mm");
        w.Caution("The axle's height over the ground is an estimate from the tire's diameter: tape it with the weight on.");
        return new(Length.FromMeters((1 - s) * D / 2));
    }
}
