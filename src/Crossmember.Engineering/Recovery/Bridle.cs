using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Driveline;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>What each leg of a bridle carries: a strap or chain between two recovery points, pulled in the middle.</summary>
/// <remarks>
/// Formula:  leg = T / (2 sin A), A the angle between a leg and the line through the two points
/// Valid:    both legs alike; below 30 deg it is not rigged
/// Source:   equilibrium, docs/derivations/winch-and-tackle.md; 30 deg: ANSI/ASME B30.9, sling angles, from memory
/// Example:  load-angle factor 1 / sin A: 90 deg 1.000, 60 deg 1.155, 45 deg 1.414, 30 deg 2.000
/// </remarks>
public sealed class Bridle() : Calculation<Bridle.Inputs, Bridle.Result>(new()
{
    Id = "recovery.bridle",
    Version = 1,
    Title = "Legs of a bridle or sling",
    Purpose = "A short strap between two hooks pulls them together with more than the winch pulls: how long it must be, and what each leg and hook carries.",
    Formula = "leg = T / (2 sin A); load-angle factor = 1 / sin A; A = angle between leg and the line through the two points",
    Validity = "Two legs alike, pulled in the middle. Pulled from the side one leg carries more, at worst all. The two points are pulled toward each other with T / (2 tan A).",
    Sources = ["Equilibrium, derived", "ANSI/ASME B30.9, sling angles below 30 deg not recommended, from memory"],
    Checks =
    [
        new("angle", Sense.AtLeast, "Is the bridle long enough for its angle?"),
        new("leg", Sense.AtMost, "Does each leg carry no more than its rated load?", "ratedLoad"),
    ],
    Trends = [new("pull", "leg", '+', 1, 100), new("angle", "leg", '-', 30, 90)],
    NoTrends = [new("ratedLoad", "only compared with the load")],
    Examples =
    [
        new(Case("60"), new Dictionary<string, double> { ["factor"] = 1.155, ["leg"] = 5.774 }, 0.0005, "1 / sin 60, table of load-angle factors in ANSI/ASME B30.9, from memory", Provenance.HandbookMemory),
        new(Case("45"), new Dictionary<string, double> { ["factor"] = 1.414 }, 0.0005, "1 / sin 45 by hand", Provenance.Derived),
        new(Case("30"), new Dictionary<string, double> { ["factor"] = 2.000, ["leg"] = 10 }, 0.0001, "1 / sin 30 by hand: each leg carries the whole pull", Provenance.Derived),
    ],
    Cautions = [RecoveryCautions.StandClear, RecoveryCautions.Marks, RecoveryCautions.NoLifting],
})
{
    private const double Least = 30;

    public sealed record Inputs(
        [Input("pull on the bridle", "kN", MoreThan = 0, High = 300, Measure = HowToMeasureRecovery.FirstPull)] Force Pull,
        [Input("angle between a leg and the line through the two points", "deg", MoreThan = 0, High = 90, Default = 60, Measure = HowToMeasureRecovery.Angle)] Angle Angle,
        [Input("rated load of one leg, straight", "kg", MoreThan = 0, Measure = HowToMeasureRecovery.RatedLoad)] UnitsNet.Mass? RatedLoad);

    public sealed record Result(
        [Output("pull in each leg", "kN")] Force? Leg,
        [Output("load-angle factor")] Ratio? Factor,
        [Output("pull of the two points toward each other", "kN")] Force? Inward);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double T = x.Pull.Newtons, A = x.Angle.Degrees, a = A * Math.PI / 180; // N, deg, rad
        w.Line("A", "angle between leg and line of the points", $"{A}", A, "deg");
        if (A is < Least - 1e-9 or > 90 + 1e-9)
        {
            w.AtLeast("angle", A > 90 ? 180 - A : A, Least, "deg", A > 90
                ? "An angle over 90 deg is the outer one: measure between the leg and the line through both points." : $"At {A:0} deg each leg would carry more than the whole pull: "
                    + $"lengthen the bridle until it is {Least:0} deg, better 60.", "ANSI/ASME B30.9, from memory");
            w.Answer("leg", Verdict.Unknown, "Not known: no leg is reckoned outside 30 to 90 deg.");
            return new(null, null, null);
        }
        double factor = 1 / Math.Sin(a), leg = T * factor / 2; // N
        w.Line("factor", "1 / sin A", $"1 / sin({A})", factor, "1");
        w.Line("leg", "T / (2 sin A)", $"{T} / (2 x sin({A}))", leg, "N");
        w.Line("inward", "T / (2 tan A)", $"{T} / (2 x tan({A}))", leg * Math.Cos(a), "N");
        w.AtLeast("angle", Math.Max(A, Least), Least, "deg", $"At {A:0} deg each leg carries {100 * factor / 2:0} % of the pull.", "ANSI/ASME B30.9, from memory", watch: 45);
        if (x.RatedLoad is { } rated)
            w.AtMost("leg", leg / 1000, rated.Kilograms * Resistance.Gravity / 1000, "kN",
                $"Each leg carries {leg / 1000:0.0} kN of a rated {rated.Kilograms * Resistance.Gravity / 1000:0.0} kN.");
        return new(Force.FromNewtons(leg), Ratio.FromDecimalFractions(factor), Force.FromNewtons(leg * Math.Cos(a)));
    }

    private static Dictionary<string, string> Case(string degrees) => new() { ["pull"] = "10 kN", ["angle"] = $"{degrees} deg" };
}
