using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>Overall steering ratio, by the turns of the wheel and by box and arms.</summary>
/// <remarks>
/// Formula:  i = 360 turns / total road-wheel angle; i = box ratio x steering arm / pitman arm
/// Valid:    the first is the mean over the whole lock, the second holds near straight ahead
/// Source:   geometry, derived in docs/derivations/steering-effort.md
/// Example:  4.0 turns for 66 deg -> 21.8
/// </remarks>
public sealed class SteeringRatio() : Calculation<SteeringRatio.Inputs, SteeringRatio.Result>(new()
{
    Id = "steering.ratio",
    Version = 1,
    Title = "Steering ratio",
    Purpose = "How many degrees of the steering wheel make one degree of the road wheels, got two ways: where they do not agree, an arm, a box or a reading is wrong.",
    Formula = "i = 360 turns / total road-wheel angle of one wheel; i = box ratio x steering arm / pitman arm",
    Validity = "By turns it is the mean from stop to stop, play of the linkage included; by box and arms it is that near straight ahead. A pitman arm that swings far "
        + "makes the two differ by a few per cent, a variable-ratio box by more.",
    Sources = ["Geometry, derived (docs/derivations/steering-effort.md)", "Limits of 10 % and 2 deg: common practice, no source"],
    Checks =
    [
        new("agree", Sense.AtMost, "Do turns and arms tell the same ratio?", "innerAngles", "outerAngles", "boxRatio", "pitmanLength", "armLength"),
        new("even-locks", Sense.AtMost, "Do the wheels turn equally far to both sides?", "innerAngles"),
    ],
    Trends =
    [
        new("turns", "byTurns", '+', 2, 8), new("innerAngles", "byTurns", '-', 15, 45), new("outerAngles", "byTurns", '-', 15, 45),
        new("boxRatio", "byArms", '+', 10, 30), new("armLength", "byArms", '+', 4, 12), new("pitmanLength", "byArms", '-', 4, 12),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["turns"] = "4", ["innerAngles"] = """{"left":"36 deg","right":"36 deg"}""", ["outerAngles"] = """{"left":"30 deg","right":"30 deg"}""",
            },
            new Dictionary<string, double> { ["byTurns"] = 21.818, ["ratio"] = 21.818 }, 0.0001, "4 x 360 / (36 + 30)", Provenance.Derived),
        new(new Dictionary<string, string> { ["turns"] = "4", ["boxRatio"] = "20", ["pitmanLength"] = "6.5 in", ["armLength"] = "7 in" },
            new Dictionary<string, double> { ["byArms"] = 21.538, ["ratio"] = 21.538 }, 0.0001, "20 x 7 / 6.5", Provenance.Derived),
    ],
    Cautions =
    [
        BoxMounting,
        "A longer pitman arm quickens the steering and loads box, joints and hands in proportion; pitman arms are not bent, welded or re-drilled.",
    ],
})
{
    /// <summary>Said wherever a steering box is judged: the box is only as good as the rail it is bolted to.</summary>
    internal const string BoxMounting =
        "Look at the frame around the steering box with the wheels being worked by a second person: rails crack at its bolts, first on the inside and under the flange. "
        + "Clean to metal, use dye, sleeve the bolt holes and plate the rail as the box's and frame's makers say; a cracked rail is for a qualified welder and an inspector, "
        + "and the vehicle stays off the road until then.";

    private const double Agreeing = 10; // %, common practice, no source
    private const double Even = 2; // deg, common practice, no source

    public sealed record Inputs(
        [Input("turns of the steering wheel from stop to stop", MoreThan = 0, Low = 1.5, High = 10, Measure = HowToMeasureSteering.Turns)] Ratio Turns,
        [Input("angle of the inner wheel at the stop, turning to each side", "deg", MoreThan = 0, Low = 5, High = 50, Measure = HowToMeasureSteering.InnerAngle)]
        Members<Angle>? InnerAngles,
        [Input("angle of the outer wheel at the stop, turning to each side", "deg", MoreThan = 0, Low = 5, High = 50, Measure = HowToMeasureSteering.OuterAngle)]
        Members<Angle>? OuterAngles,
        [Input("ratio of the steering box", MoreThan = 0, Low = 8, High = 40, Measure = HowToMeasureSteering.BoxRatio)] Ratio? BoxRatio,
        [Input("length of the pitman arm", "in", MoreThan = 0, Low = 3, High = 14, Measure = HowToMeasureSteering.PitmanLength)] Length? PitmanLength,
        [Input("length of the steering arm", "in", MoreThan = 0, Low = 3, High = 14, Measure = HowToMeasureSteering.ArmLength)] Length? ArmLength);

    public sealed record Result(
        [Output("ratio by turns and turn plates, mean over the lock")] Ratio? ByTurns,
        [Output("ratio by box and arms, near straight ahead")] Ratio? ByArms,
        [Output("overall ratio: by turns where known, else by arms")] Ratio? Ratio);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double? byTurns = null, byArms = null;
        if (x is { InnerAngles: { } inner, OuterAngles: { } outer })
        {
            var total = inner.Items.Average(i => i.Value.Degrees) + outer.Items.Average(o => o.Value.Degrees); // deg
            byTurns = 360 * x.Turns.DecimalFractions / total;
            w.Line("i", "360 turns / (inner + outer)", $"360 x {x.Turns.DecimalFractions} / {total}", byTurns.Value, "1");
        }
        if (x is { BoxRatio: { } box, PitmanLength: { } pitman, ArmLength: { } arm })
        {
            byArms = box.DecimalFractions * arm.Meters / pitman.Meters;
            w.Line("i", "box x steering arm / pitman arm", $"{box.DecimalFractions} x {arm.Millimeters} / {pitman.Millimeters}", byArms.Value, "1");
        }
        if (byTurns is { } t && byArms is { } a)
        {
            var apart = 100 * Math.Abs(t - a) / Math.Max(t, a);
            w.AtMost("agree", apart, Agreeing, "%", apart <= Agreeing ? $"By turns {t:0.0} to 1, by box and arms {a:0.0} to 1: they agree."
                : $"By turns {t:0.0} to 1, by box and arms {a:0.0} to 1: an arm, the box's tag or a reading is wrong, or the stops and the box do not belong together.",
                "common practice, no source", beyond: Verdict.Caution);
        }
        if (x.InnerAngles is { } locks) JudgeLocks(w, locks);
        return byTurns is null && byArms is null && x.InnerAngles is null ? null : new(Of(byTurns), Of(byArms), Of(byTurns ?? byArms));
    }

    private static void JudgeLocks(Worksheet w, Members<Angle> inner)
    {
        double least = inner.Items.Min(i => i.Value.Degrees), most = inner.Items.Max(i => i.Value.Degrees), apart = most - least; // deg
        w.AtMost("even-locks", apart, Even, "deg", apart <= Even ? $"The inner wheel turns {least:0.#} to {most:0.#} deg to either side."
            : $"The inner wheel turns {least:0.#} deg to one side and {most:0.#} deg to the other: center the box first, then set drag link and stops.",
            "common practice, no source", beyond: Verdict.Caution);
    }

    private static Ratio? Of(double? number) => number is { } n ? UnitsNet.Ratio.FromDecimalFractions(n) : null;
}
