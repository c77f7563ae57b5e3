using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Stability;

/// <summary>Axle loads facing up a grade and down it, and the slope at which the vehicle would tip end over end.</summary>
/// <remarks>
/// Formula:  facing up Wf = W (b cos th - h sin th) / L, Wr = W (a cos th + h sin th) / L; tips facing up at atan(b / h), facing down at atan(a / h)
/// Valid:    standing or crawling straight up or down an even slope; springs and tires rigid, which errs high
/// Source:   statics, docs/derivations/tip-angles.md
/// Example:  2150 kg, a 1.2919 m, h 0.72 m, L 2.56 m, 30 deg up -> front 6080 N, rear 12180 N; 60.41 and 60.87 deg
/// </remarks>
public sealed class GradeTip() : Calculation<GradeTip.Inputs, GradeTip.Result>(new()
{
    Id = "stability.grade-tip",
    Version = 1,
    Title = "Axle loads on a grade, and tipping end over end",
    Purpose = "What is left on the steered axle facing uphill and on the rear facing down, and the slope that would turn it over: what hangs behind the axle or stands on the roof decides.",
    Formula = "up: Wf = W (b cos th - h sin th) / L, Wr = W (a cos th + h sin th) / L; tips at atan(b / h) facing up, atan(a / h) facing down",
    Validity = "Standing or at a crawl, straight up or down; springs and tires taken as rigid: real angles are some degrees less.",
    Sources = ["Statics on a slope, derived"],
    Checks =
    [
        new("steered", Sense.AtLeast, "Does the front axle keep enough load to steer facing up the grade?"),
        new("held", Sense.AtLeast, "Does the rear axle keep enough load facing down the grade?"),
    ],
    Trends =
    [
        new("height", "tipsFacingUp", '-', 0.5, 1.2), new("height", "tipsFacingDown", '-', 0.5, 1.2), new("centerX", "tipsFacingUp", '-', 0.8, 1.8), new("centerX", "tipsFacingDown", '+', 0.8, 1.8),
        new("wheelbase", "tipsFacingUp", '+', 2, 4), new("total", "rearFacingUp", '+', 1000, 4000), new("grade", "frontFacingUp", '-', 0, 0.8),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["total"] = "2150 kg", ["centerX"] = "1291.9 mm", ["height"] = "720 mm", ["wheelbase"] = "2560 mm", ["grade"] = "0.57735",
            },
            new Dictionary<string, double> { ["frontFacingUp"] = 1366.8, ["rearFacingUp"] = 2738.2, ["tipsFacingUp"] = 60.41, ["tipsFacingDown"] = 60.87 }, 0.0005,
            "30 deg: 6080 N front and 12180 N rear by hand, 4.4482 N to the lbf", Provenance.Derived),
    ],
    Cautions =
    [
        HowToMeasureStability.UpperBound, HowToMeasureStability.NotForPeople,
        "Never turn round or stop to think on a steep grade: back straight down in low range.",
    ],
})
{
    /// <summary>Share of its level load that an axle should keep on the grade. Common practice, no source.</summary>
    private const double Kept = 0.4;

    public sealed record Inputs(
        [Input("total mass", "kg", MoreThan = 0, Measure = "drive it over a scale, one axle at a time, and add the readings")] UnitsNet.Mass Total,
        [Input("center of gravity behind the front axle", "m", MoreThan = 0, Low = 0.3, High = 6, Measure = HowToMeasureStability.Center)] Length CenterX,
        [Input("height of the center of gravity over the ground", "m", MoreThan = 0, Low = 0.3, High = 2, Measure = HowToMeasureStability.Height)] Length Height,
        [Input("wheelbase", "m", MoreThan = 0, Low = 1.2, High = 8, Measure = "tape from hub center to hub center on both sides and take the mean")] Length Wheelbase,
        [Input("grade as rise over run", AtLeast = 0, High = 1.2, Default = 0.4, Measure = "ask the customer for the steepest grade")] Ratio Grade);

    public sealed record Result(
        [Output("load on the front axle facing up", "lbf")] Force? FrontFacingUp,
        [Output("load on the rear axle facing up", "lbf")] Force? RearFacingUp,
        [Output("load on the rear axle facing down", "lbf")] Force? RearFacingDown,
        [Output("slope at which it tips backward, facing up", "deg")] Angle? TipsFacingUp,
        [Output("slope at which it tips forward, facing down", "deg")] Angle? TipsFacingDown);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double W = x.Total.Kilograms * 9.80665, a = x.CenterX.Meters, h = x.Height.Meters, L = x.Wheelbase.Meters, b = L - a; // N, m
        if (b <= 0)
        {
            var why = $"The center of gravity would lie {-1000 * b:0} mm behind the rear axle: check the readings and the wheelbase.";
            w.Answer("steered", Verdict.Fail, why);
            w.Answer("held", Verdict.Fail, why);
            return new(null, null, null, null, null);
        }
        double th = Math.Atan(x.Grade.DecimalFractions), cos = Math.Cos(th), sin = Math.Sin(th);
        double frontUp = W * ((b * cos) - (h * sin)) / L, rearUp = W * ((a * cos) + (h * sin)) / L, rearDown = W * ((a * cos) - (h * sin)) / L;
        double up = Math.Atan2(b, h), down = Math.Atan2(a, h);
        w.Line("Wf up", "W (b cos th - h sin th) / L", $"{W} x ({b} x {cos} - {h} x {sin}) / {L}", frontUp, "N");
        w.Line("Wr up", "W (a cos th + h sin th) / L", $"{W} x ({a} x {cos} + {h} x {sin}) / {L}", rearUp, "N");
        w.Line("th up", "atan(b / h)", $"atan({b} / {h})", up * 180 / Math.PI, "deg");
        w.Line("th down", "atan(a / h)", $"atan({a} / {h})", down * 180 / Math.PI, "deg");
        Share(w, "steered", frontUp / (W * b / L), "front", "up", up, x.Grade.Percent);
        Share(w, "held", rearDown / (W * a / L), "rear", "down", down, x.Grade.Percent);
        return new(Told(frontUp), frontUp < 0 ? null : Told(rearUp), Told(rearDown), Angle.FromRadians(up), Angle.FromRadians(down));
    }

    private static void Share(Worksheet w, string check, double share, string axle, string way, double tips, double grade) =>
        w.AtLeast(check, 100 * share, 100 * Kept, "%", share <= 0
            ? $"It would tip over before {grade:0.#} %: facing {way} at {tips * 180 / Math.PI:0.0} deg, standing still."
            : $"Facing {way} {grade:0.#} % the {axle} axle keeps {100 * share:0} % of its level load; it would tip at {tips * 180 / Math.PI:0.0} deg standing still. Never a safe slope.",
            "common practice, no source", beyond: share <= 0 ? Verdict.Fail : Verdict.Caution);

    /// <summary>An axle that would leave the ground carries nothing that can be told.</summary>
    private static Force? Told(double newtons) => newtons < 0 ? null : Force.FromNewtons(newtons);
}
