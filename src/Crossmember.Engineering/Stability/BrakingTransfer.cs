using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Stability;

/// <summary>Load that moves to the front axle under braking, and the deceleration at which the rear would lift.</summary>
/// <remarks>
/// Formula:  dW = W z h / L, z the deceleration in g; rear Wr - dW; lifts at z = a / h
/// Valid:    steady braking on a level road, rigid vehicle; the springs' dive moves a little more
/// Source:   statics, docs/derivations/tip-angles.md
/// Example:  2150 kg, h 0.72 m, L 2.56 m, 0.6 g -> 3558 N
/// </remarks>
public sealed class BrakingTransfer() : Calculation<BrakingTransfer.Inputs, BrakingTransfer.Result>(new()
{
    Id = "stability.braking-transfer",
    Version = 1,
    Title = "Load moved by braking",
    Purpose = "What braking takes off the rear axle and puts on the front: a high load makes the rear brakes lock early and the front tires and springs carry more.",
    Formula = "dW = W z h / L; front Wf + dW, rear Wr - dW; rear lifts at z = a / h",
    Validity = "Steady braking, level road, rigid vehicle. The brakes themselves are not looked at here.",
    Sources = ["Statics, derived"],
    Checks = [new("rear-kept", Sense.AtLeast, "Does the rear axle keep load enough to brake and to track?")],
    Trends =
    [
        new("deceleration", "moved", '+', 0.1, 1), new("height", "moved", '+', 0.4, 1.2), new("wheelbase", "moved", '-', 2, 5), new("total", "moved", '+', 1000, 4000),
        new("centerX", "rear", '+', 0.8, 1.8),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["total"] = "2150 kg", ["centerX"] = "1291.9 mm", ["height"] = "720 mm", ["wheelbase"] = "2560 mm", ["deceleration"] = "0.6" },
            new Dictionary<string, double> { ["moved"] = 799.9 }, 0.0005, "2150 x 9.80665 x 0.6 x 0.72 / 2.56 = 3558 N by hand, 4.4482 N to the lbf", Provenance.Derived),
    ],
    Cautions = ["Brakes, tires and suspension decide whether a vehicle stops straight: have them inspected by a qualified person and try them empty and loaded on a closed road."],
})
{
    public sealed record Inputs(
        [Input("total mass", "kg", MoreThan = 0, Measure = "drive it over a scale, one axle at a time, and add the readings")] UnitsNet.Mass Total,
        [Input("center of gravity behind the front axle", "m", MoreThan = 0, Low = 0.3, High = 6, Measure = HowToMeasureStability.Center)] Length CenterX,
        [Input("height of the center of gravity over the ground", "m", MoreThan = 0, Low = 0.3, High = 2, Measure = HowToMeasureStability.Height)] Length Height,
        [Input("wheelbase", "m", MoreThan = 0, Low = 1.2, High = 8, Measure = "tape from hub center to hub center on both sides and take the mean")] Length Wheelbase,
        [Input("deceleration as a share of g", AtLeast = 0, High = 1.2, Default = 0.6, Measure = "0.6 is a hard stop on dry pavement")] Ratio Deceleration);

    public sealed record Result(
        [Output("load moved from rear to front", "lbf")] Force Moved,
        [Output("front axle load while braking", "lbf")] Force? Front,
        [Output("rear axle load while braking; unknown where it would lift", "lbf")] Force? Rear,
        [Output("deceleration at which the rear axle would lift, as a share of g")] Ratio Lifts);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double W = x.Total.Kilograms * 9.80665, a = x.CenterX.Meters, h = x.Height.Meters, L = x.Wheelbase.Meters, z = x.Deceleration.DecimalFractions; // N, m
        double moved = W * z * h / L, level = W * a / L, rear = level - moved, front = W - rear, lifts = a / h;
        w.Line("dW", "W z h / L", $"{W} x {z} x {h} / {L}", moved, "N");
        w.Line("rear", "W a / L - dW", $"{W} x {a} / {L} - {moved}", rear, "N");
        w.AtLeast("rear-kept", 100 * rear / level, 35, "%", rear <= 0
            ? $"The rear axle would lift at {lifts:0.00} g: look at the height of the center of gravity."
            : $"Braking at {z:0.0#} g leaves {100 * rear / level:0} % of its load on the rear axle.", "common practice, no source", beyond: rear <= 0 ? Verdict.Fail : Verdict.Caution);
        return new(Force.FromNewtons(moved), rear < 0 ? null : Force.FromNewtons(front), rear < 0 ? null : Force.FromNewtons(rear), Ratio.FromDecimalFractions(lifts));
    }
}
