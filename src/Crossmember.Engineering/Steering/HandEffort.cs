using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>What hands must pull at the rim to turn the standing wheels, with the assist and with it lost.</summary>
/// <remarks>
/// Formula:  F = T / (i eta R); with assist F / a
/// Valid:    an estimate, standing on dry ground; R rim radius
/// Source:   statics, docs/derivations/steering-effort.md; limits of UN Regulation No. 79 from memory
/// Example:  486.4 N m, 16:1, 0.75, R 200 mm -> 202.7 N
/// </remarks>
public sealed class HandEffort() : Calculation<HandEffort.Inputs, HandEffort.Result>(new()
{
    Id = "steering.hand-effort",
    Version = 1,
    Title = "Hand force at the steering wheel",
    Purpose = "Whether the driver can turn the wheels where the vehicle stands, and whether it can still be steered when the engine or the belt is gone.",
    Formula = "F = T / (i x efficiency x R), R half the rim's diameter; with assist F / assist factor",
    Validity = "As good as the torque: an estimate, standing on dry ground, one steady pull. Rolling at walking pace takes a third to a half of it. The limits belong to a "
        + "vehicle that rolls at 10 km/h into a 12 m turn: standing is harder, so what passes here is good, and what does not is a caution. With the assist lost the "
        + "fluid pushed through the box adds to it, and the box may have play until its valve meets its stop.",
    Sources =
    [
        "Statics, derived (docs/derivations/steering-effort.md)",
        "UN Regulation No. 79, light goods vehicles (category N1): 200 N in order, 300 N with the assist lost (passenger vehicles 150 and 300 N), from memory",
        "More than 400 N is not turned standing by most people: common practice, no source",
    ],
    Checks =
    [
        new("parking", Sense.AtMost, "Can the standing wheels be turned by hand?", "assistFactor"),
        new("assist-lost", Sense.AtMost, "Can it be steered with the assist lost?", "assistFactor"),
    ],
    Trends =
    [
        new("kingpinTorque", "force", '+', 50, 1500), new("ratio", "force", '-', 10, 35), new("efficiency", "force", '-', 0.5, 0.95),
        new("rimDiameter", "force", '-', 12, 20), new("assistFactor", "force", '-', 1, 10),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["kingpinTorque"] = "486.4 N m", ["ratio"] = "16", ["efficiency"] = "0.75", ["rimDiameter"] = "400 mm", ["assistFactor"] = "1" },
            new Dictionary<string, double> { ["force"] = 202.7, ["forceUnassisted"] = 202.7 }, 0.0003, "486.4 / (16 x 0.75 x 0.20) = 202.7 N, by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "When the assist goes, the wheel is suddenly many times as heavy: drive it so once, slowly, where nobody is near, before the vehicle is handed over.",
        "Slow steering by a longer arm or a smaller wheel is no cure without a look at the rest: ratio, toe, pressure and kingpins first. Local rules come first.",
        SteeringRatio.BoxMounting,
    ],
})
{
    private const double InOrder = 200, Lost = 300, MostHold = 400; // N; the first two UN Regulation No. 79, category N1, from memory

    private const string Regulation = "UN Regulation No. 79, category N1, from memory", ToTell = "0.##";

    public sealed record Inputs(
        [Input("torque at both front wheels", "N m", MoreThan = 0, High = 5000, Measure = "comes from loads and pressure; or pull a wheel on a bar of known length, standing")]
        Torque KingpinTorque,
        [Input("overall steering ratio", MoreThan = 0, Low = 8, High = 45, Measure = "count turns from stop to stop, read the turn plates, and take 360 x turns / total angle")] Ratio Ratio,
        [Input("share of the hand's work that reaches the wheels", MoreThan = 0, Low = 0.3, High = 1, Default = 0.75, Measure = HowToMeasureSteering.Efficiency)] Ratio Efficiency,
        [Input("diameter of the steering wheel", "in", MoreThan = 0, Low = 11, High = 24, Measure = HowToMeasureSteering.RimDiameter)] Length RimDiameter,
        [Input("how many times the assist multiplies the hand's pull; 1 for manual steering", AtLeast = 1, High = 20, Measure = HowToMeasureSteering.Assist)] Ratio? AssistFactor);

    public sealed record Result(
        [Output("pull at the rim as the vehicle is", "N")] Force? Force,
        [Output("pull at the rim without assist", "N")] Force ForceUnassisted);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double T = x.KingpinTorque.NewtonMeters, i = x.Ratio.DecimalFractions, eta = x.Efficiency.DecimalFractions, R = x.RimDiameter.Meters / 2;
        var lost = T / (i * eta * R); // N
        w.Line("F", "T / (i eta R)", $"{T} / ({i} x {eta} x {R})", lost, "N");
        if (x.AssistFactor is not { DecimalFractions: var a }) return new(null, Force.FromNewtons(lost)); // nobody said whether it is powered: no guess
        var force = lost / a; // N
        if (a > 1) w.Line("Fa", "F / a", $"{lost} / {a}", force, "N");
        w.AtMost("parking", force, InOrder, "N", Standing(force, a), Regulation, beyond: Verdict.Caution);
        if (a > 1)
            w.AtMost("assist-lost", lost, Lost, "N", lost <= Lost ? $"With the assist lost it takes {lost:0} N standing; up to {Lost:0} N is allowed rolling."
                : $"With the assist lost it takes {lost:0} N standing, where {Lost:0} N is allowed rolling: try it rolling slowly, on an empty place, before it goes on the road.",
                Regulation, beyond: Verdict.Caution);
        else w.Answer("assist-lost", Verdict.Pass, "The steering is manual: there is no assist to lose.");
        return new(Force.FromNewtons(force), Force.FromNewtons(lost));
    }

    private static string Standing(double force, double assist)
    {
        var says = $"Turning the standing wheels on dry ground takes about {force:0} N at the rim{(assist > 1 ? $" with an assist of {assist.ToString(ToTell)}" : "")}; {InOrder:0} N is held to be the most.";
        return force > MostHold ? $"{says} Most people cannot turn it standing."
            : force > InOrder ? $"{says} Too heavy to park with: less load in front, more pressure in the tires, a slower box, or an assist." : says;
    }
}
