using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>How an axle's springs and its anti-roll bar hold the body against leaning.</summary>
/// <remarks>
/// Formula:  K = k s^2 / 2 + bar (N m/rad), k at each side, s from spring to spring (on independent wheels k at the wheel and s the track)
/// Valid:    solid axle, springs upright, small angles, tires not counted
/// Source:   moments of two springs about the middle, docs/derivations/springs.md
/// Example:  35 N/mm, 800 mm -> 11200 N m/rad = 195.5 N m/deg
/// </remarks>
public sealed class RollStiffness() : Calculation<RollStiffness.Inputs, RollStiffness.Result>(new()
{
    Id = "springs.roll-stiffness",
    Version = 1,
    Title = "Roll stiffness of an axle",
    Purpose = "What holds the body upright in a bend: springs set far apart hold it much better than stiff ones close together, and an anti-roll bar helps without making the ride harder.",
    Formula = "K = k s^2 / 2 + bar, k the spring at each side, s from spring to spring",
    Validity = "Solid axle with upright springs and small angles; tires, bushes and the twist of leaves, which adds a little, are left out. A helper counts while it touches on both sides: one that touches only on the outside, "
        + "or lifts off on the inside, is not seen. Bump stops are left out. For independent wheels take the track for s.",
    Sources = ["Moments of two springs about the middle of the axle, derived (docs/derivations/springs.md)"],
    Trends = [new("wheelRate", "rollStiffness", '+', 10, 150), new("carryingRate", "rollStiffness", '+', 10, 300), new("springBase", "rollStiffness", '+', 500, 1600), new("bar", "rollStiffness", '+', 20, 1000)],
    NoTrends = [new("helperRate", "only tells that there is a helper; where it touches it is in the rate of the state of load")],
    Examples =
    [
        new(new Dictionary<string, string> { ["wheelRate"] = "35 N/mm", ["springBase"] = "0.80 m" },
            new Dictionary<string, double> { ["rollStiffness"] = 195.5 }, 0.0003, "35000 x 0.64 / 2 = 11200 N m/rad by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["wheelRate"] = "35 N/mm", ["springBase"] = "0.80 m", ["bar"] = "100 N m/deg" },
            new Dictionary<string, double> { ["rollStiffness"] = 295.5, ["barShare"] = 33.84 }, 0.0003, "195.48 + 100 by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["wheelRate"] = "35 N/mm", ["springBase"] = "0.80 m", ["carryingRate"] = "70 N/mm", ["helperRate"] = "35 N/mm" },
            new Dictionary<string, double> { ["rollStiffness"] = 390.95 }, 0.0003, "with the helper twice 195.48, by hand", Provenance.Derived),
    ],
    Cautions = [Qualified, "An anti-roll bar's brackets and links carry fatigue loads: they go where the frame is stiff, and must clear at full lock, bump and droop."],
})
{
    public sealed record Inputs(
        [Input("spring rate at each side", "N/mm", MoreThan = 0, Low = 5, High = 600, Measure = HowToMeasureSprings.WheelRate)] ForcePerLength WheelRate,
        [Input("distance between the springs", "mm", MoreThan = 0, Low = 300, High = 2500, Measure = "tape from spring center to spring center on the axle")] Length SpringBase,
        [Input("what an anti-roll bar adds at the axle", "N m/deg", MoreThan = 0, High = 5000, Measure = "ask its maker; leave it out where there is none")] RotationalStiffness? Bar,
        [Input("the same in this state of load with a helper as far as it touches, the bump stop not counted", "N/mm", MoreThan = 0, Low = 5, High = 2000, Measure = "comes from the ride height")]
        ForcePerLength? CarryingRate,
        [Input("rate of one helper", "N/mm", MoreThan = 0, High = 1000, Measure = HowToMeasureSprings.HelperRate)] ForcePerLength? HelperRate);

    public sealed record Result(
        [Output("roll stiffness of the axle", "N m/deg")] RotationalStiffness RollStiffness,
        [Output("share of it that the anti-roll bar gives", "%")] Ratio BarShare);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double k = (x.CarryingRate ?? x.WheelRate).NewtonsPerMeter, s = x.SpringBase.Meters, bar = x.Bar?.NewtonMetersPerRadian ?? 0; // N/m, m, N m/rad
        if (x.HelperRate is not null && x.CarryingRate is null) w.Caution("Whether the helper touches is not known, and it is left out: tape its gap, and the height with its load.");
        var K = (k * s * s / 2) + bar; // N m/rad
        w.Line("K", "k s^2 / 2 + bar", $"{k} x {s}^2 / 2 + {bar}", K, "N m/rad");
        return new(RotationalStiffness.FromNewtonMetersPerRadian(K), Ratio.FromDecimalFractions(bar / K));
    }
}
