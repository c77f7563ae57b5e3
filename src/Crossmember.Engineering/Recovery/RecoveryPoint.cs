using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Driveline;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>Whether a recovery point is one, bears a mark, and holds twice the loaded vehicle.</summary>
/// <remarks>
/// Formula:  least of rated load and bolts at least factor x heaviest mass, factor 2
/// Valid:    steady pull; a jerk with a stretching rope gives more
/// Source:   twice the loaded mass: common practice, no source
/// Example:  3130 kg, point rated 8 t on bolts for 70 kN -> 7138 of 6260 kg
/// </remarks>
public sealed class RecoveryPoint() : Calculation<RecoveryPoint.Inputs, RecoveryPoint.Result>(new()
{
    Id = "recovery.point",
    Version = 1,
    Title = "Recovery point",
    Purpose = "Whether there is something at this end of the vehicle that a rope may be put on: of a kind made for it, marked, and bolted to hold twice the loaded vehicle.",
    Formula = "least of rated load and what its bolts hold, against factor x heaviest mass",
    Validity = "Steady pull by winch or a slow pull by another vehicle, shared out to one point. Jerking with a stretching rope gives more than twice. A point without a mark has no rating, "
        + "whatever its bolts hold: no pull is told for it. A tow ball is none, whatever its mark: that is for a trailer.",
    Sources = ["Twice the loaded mass: common practice, no source", "Never a tow ball: makers' instructions and recovery practice, from memory"],
    Checks = [new("holds", Sense.AtLeast, "May a rope be put on it?")],
    Trends = [new("ratedLoad", "holds", '+', 500, 5000), new("masses", "wanted", '+', 500, 6000), new("factor", "wanted", '+', 1, 3), new("boltStrength", "boltsHold", '+', 10, 200)],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["kind"] = "hook", ["ratedLoad"] = "8 t", ["boltStrength"] = "70 kN", ["masses"] = """{"empty":"1973 kg","touring":"3130 kg"}""",
            },
            new Dictionary<string, double> { ["holds"] = 7138, ["boltsHold"] = 7138, ["wanted"] = 6260 }, 0.0001, "70,000 / 9.80665 and 2 x 3130 by hand", Provenance.Derived),
    ],
    Cautions = [RecoveryCautions.NoBall, RecoveryCautions.Marks, RecoveryCautions.StandClear, RecoveryCautions.Qualified],
})
{
    internal const string Ball = "tow ball", None = "none";

    public sealed record Inputs(
        [Input("kind of point", OneOf = ["hook", "loop", "eye", "receiver pin", Ball, None])] string Kind,
        [Input("rated load marked on it", "kg", MoreThan = 0, Measure = HowToMeasureRecovery.RatedLoad)] UnitsNet.Mass? RatedLoad,
        [Input("pull that its bolts hold", "kN", MoreThan = 0, Measure = "take it from its bolts and the frame behind them")] Force? BoltStrength,
        [Input("masses of the vehicle as it is loaded", "kg", MoreThan = 0, Low = 300, High = 20000, Measure = HowToMeasureRecovery.Mass)] Members<UnitsNet.Mass> Masses,
        [Input("times the loaded mass that it must hold", AtLeast = 1, High = 5, Default = 2, Measure = "take 2")] Ratio Factor);

    public sealed record Result(
        [Output("what it may be pulled with", "kg")] UnitsNet.Mass? Holds,
        [Output("what its bolts hold", "kg")] UnitsNet.Mass? BoltsHold,
        [Output("what is wanted", "kg")] UnitsNet.Mass Wanted);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double heaviest = x.Masses.Items.Max(m => m.Value.Kilograms), wanted = heaviest * x.Factor.DecimalFractions; // kg
        double? bolts = x.BoltStrength?.Newtons / Resistance.Gravity, rated = x.RatedLoad?.Kilograms; // kg
        w.Line("wanted", "factor x heaviest mass", $"{x.Factor.DecimalFractions} x {heaviest}", wanted, "kg");
        if (bolts is { } b) w.Line("bolts", "strength / g", $"{x.BoltStrength!.Value.Newtons} / {Resistance.Gravity}", b, "kg");
        // Without a mark nobody knows what the point itself holds, whatever its bolts do: no figure to pull with.
        double? holds = x.Kind is Ball or None || rated is not { } r ? null : bolts is { } s ? Math.Min(r, s) : r;
        if (x.Kind == Ball) w.Answer("holds", Verdict.Fail, "A tow ball is no recovery point: take it off or cover it, and put a rated point on the frame. A rating marked on it is for towing a trailer.",
                source: "never a recovery point: makers' instructions and recovery practice, from memory");
        else if (x.Kind == None) w.Answer("holds", Verdict.Caution, "There is no recovery point at this end: nobody can pull it out without tying to something that was not made for it.");
        else if (holds is { } kg)
            w.AtLeast("holds", kg, wanted, "kg", (kg < heaviest ? $"It holds {kg:0} kg, less than the loaded vehicle, {heaviest:0} kg: no rope on it."
                : $"It may be pulled with {kg:0} kg; {x.Factor.DecimalFractions:0.#} times the loaded vehicle is {wanted:0} kg.") + (bolts is null ? " Its bolts and the frame behind them have not been looked at." : ""),
                kg < heaviest ? "less than the vehicle itself" : "twice the loaded mass: common practice, no source", watch: bolts is null ? double.PositiveInfinity : null,
                beyond: kg < heaviest ? Verdict.Fail : Verdict.Caution);
        else if (bolts is { } unmarked)
            w.Answer("holds", unmarked < heaviest ? Verdict.Fail : Verdict.Caution, $"Its bolts would hold {unmarked:0} kg, {(unmarked < heaviest ? $"less than the loaded vehicle, {heaviest:0} kg" : $"where {wanted:0} kg is wanted")}, "
                + "but it bears no mark, and nobody knows what it holds itself: put a rated point there.", source: unmarked < heaviest ? "less than the vehicle itself" : "no mark, no rating: common practice, no source");
        else
            w.Answer("holds", Verdict.Unknown, $"Not known: neither a rated load ({HowToMeasureRecovery.RatedLoad}) nor the strength of its bolts is there.");
        return new(Of(holds), Of(bolts), UnitsNet.Mass.FromKilograms(wanted));
    }

    private static UnitsNet.Mass? Of(double? kilograms) => kilograms is { } kg ? UnitsNet.Mass.FromKilograms(kg) : null;
}
