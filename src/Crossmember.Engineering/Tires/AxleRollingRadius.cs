using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Tires;

/// <summary>The rolling radius an axle pulls and turns with.</summary>
/// <remarks>
/// Formula:  re = C / (2 pi) of the tire with the largest rolling circumference C
/// Valid:    circumferences got the same way; on the safe side for shaft loads (a larger radius lets the ground hold more torque), not for pull
/// Source:   geometry, docs/derivations/rolling-wheel.md
/// Example:  2556.51 and 2500 mm -> 406.9 mm
/// </remarks>
public sealed class AxleRollingRadius() : Calculation<AxleRollingRadius.Inputs, AxleRollingRadius.Result>(new()
{
    Id = "tires.axle-rolling-radius",
    Version = 1,
    Title = "Rolling radius of an axle",
    Purpose = "The one radius that turns shaft torque into pull and back: that of the larger tire, as gearing takes the larger diameter.",
    Formula = "rolling radius = C / (2 pi), C the largest rolling circumference on the axle",
    Validity = "Circumferences got the same way, all by rule or all measured. The larger tire is the safe choice for what shafts must carry; "
        + "the pull at the smaller tire is a little more.",
    Sources = ["Geometry of a rolling wheel, derived"],
    Trends = [new("circumferences", "rollingRadius", '+', 75, 135)],
    Examples =
    [
        new(new Dictionary<string, string> { ["circumferences"] = """{"left":"2556.51 mm","right":"2500 mm"}""" },
            new Dictionary<string, double> { ["rollingRadius"] = 406.881 / 25.4 }, 0.00001, "2556.51 / (2 pi) = 406.881 mm by hand", Provenance.Derived),
    ],
    Cautions = ["Tires of unequal rolling circumference on one axle wear out its differential and pull the vehicle to one side: fit four alike."],
})
{
    public sealed record Inputs(
        [Input("rolling circumferences of the tires on the axle", "in", MoreThan = 0, Low = 60, High = 190,
            Measure = "take the sizes from the sidewalls, or roll ten turns of each wheel with the weight on, tape the way and divide by ten")]
        Members<Length> Circumferences);

    public sealed record Result([Output("rolling radius of the axle", "in")] Length RollingRadius);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var C = x.Circumferences.Items.Max(c => c.Value.Millimeters);
        var re = C / (2 * Math.PI); // mm
        w.Line("re", "C / (2 pi)", $"{C} / (2 x pi)", re, "mm");
        return new(Length.FromMillimeters(re));
    }
}
