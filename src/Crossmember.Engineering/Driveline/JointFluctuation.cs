using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>How unevenly one Cardan joint turns what it drives.</summary>
/// <remarks>
/// Formula:  output / input = cos b / (1 - sin^2 b cos^2 a): between cos b and 1 / cos b, twice a turn; fluctuation = sin b tan b
/// Valid:    exact for a single cross and two yokes; not for double Cardan and ball joints
/// Source:   docs/derivations/cardan-joint.md
/// Example:  30 deg -> 1.1547 and 0.8660; 12 deg -> 4.419 %
/// </remarks>
public sealed class JointFluctuation() : Calculation<JointFluctuation.Inputs, JointFluctuation.Result>(new()
{
    Id = "driveline.joint-fluctuation",
    Version = 1,
    Title = "Speed fluctuation of a joint",
    Purpose = "How much a single Cardan joint hurries and lags at an angle, twice in every turn: what the tube between two joints suffers even when "
        + "the second evens it out.",
    Formula = "output / input = cos b / (1 - sin^2 b cos^2 a), a the input yoke from the plane of the angle; largest 1 / cos b, smallest cos b, "
        + "fluctuation sin b tan b",
    Validity = "One cross and two yokes, rigid. Double Cardan (constant velocity) and ball joints even it out within themselves.",
    Sources = ["Geometry of the Cardan joint, derived (docs/derivations/cardan-joint.md)"],
    Trends = [new("angle", "fluctuation", '+', 0.5, 44)],
    Examples =
    [
        new(new Dictionary<string, string> { ["angle"] = "30 deg" },
            new Dictionary<string, double> { ["largestRatio"] = 1.1547, ["smallestRatio"] = 0.8660 }, 0.00005, "1 / cos 30 and cos 30", Provenance.Derived),
        new(new Dictionary<string, string> { ["angle"] = "12 deg" }, new Dictionary<string, double> { ["fluctuation"] = 4.419 }, 0.0002,
            "sin 12 x tan 12 = 0.04419", Provenance.Derived),
    ],
    Cautions = ["A front shaft joint at full lock shakes the steering wheel and can snatch it: keep the power off at full lock."],
})
{
    public sealed record Inputs([Input("working angle of the joint", "deg", AtLeast = 0, High = 45, Measure = HowToMeasureShafts.TransferAngle)] Angle Angle);

    public sealed record Result(
        [Output("fastest the output turns, over the input")] Ratio LargestRatio,
        [Output("slowest the output turns, over the input")] Ratio SmallestRatio,
        [Output("fluctuation: fastest less slowest", "%")] Ratio Fluctuation);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double b = x.Angle.Radians, degrees = x.Angle.Degrees; // rad, deg
        if (degrees >= 90)
        {
            w.Caution("No joint turns at a right angle or more: measure the angle between the two shafts again.");
            return null;
        }
        double least = Math.Cos(b), most = 1 / least, U = CardanJoint.Fluctuation(b);
        w.Line("most", "1 / cos b", $"1 / cos {degrees} deg", most, "1");
        w.Line("least", "cos b", $"cos {degrees} deg", least, "1");
        w.Line("U", "sin b tan b", $"sin {degrees} deg x tan {degrees} deg", 100 * U, "%");
        if (w.Shown) w.Curve(Turn(b));
        return new(Ratio.FromDecimalFractions(most), Ratio.FromDecimalFractions(least), Ratio.FromDecimalFractions(U));
    }

    private static PlottedCurve Turn(double b)
    {
        double[] degrees = [.. Enumerable.Range(0, 73).Select(i => 5.0 * i)];
        double[] ratios = [.. degrees.Select(a => CardanJoint.SpeedRatio(b, a * Math.PI / 180))];
        return new("output over input in one turn", "input yoke", "deg", degrees, "output / input", "1", ratios);
    }
}
