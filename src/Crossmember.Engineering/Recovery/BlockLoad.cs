using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Driveline;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>What a block and its anchor carry when a rope is led round it.</summary>
/// <remarks>
/// Formula:  R = 2 T cos(a / 2), a the angle between the two parts of the rope
/// Valid:    the same tension in both parts; friction in the block lowers the sum a little
/// Source:   equilibrium, docs/derivations/winch-and-tackle.md
/// Example:  doubled back (0 deg) 2.00 T, 90 deg 1.41 T, 120 deg 1.00 T, straight through (180 deg) none
/// </remarks>
public sealed class BlockLoad() : Calculation<BlockLoad.Inputs, BlockLoad.Result>(new()
{
    Id = "recovery.block-load",
    Version = 1,
    Title = "Load on a block and its anchor",
    Purpose = "A block with the rope doubled back carries twice the line pull, and so do its shackle, its strap and the tree behind it.",
    Formula = "R = 2 T cos(a / 2), a = angle between the two parts of the rope",
    Validity = "Both parts under the same tension. The angle is the one between the parts: some charts count how far the rope is turned instead, which is 180 deg less this.",
    Sources = ["Equilibrium of the block, derived"],
    Checks = [new("block", Sense.AtMost, "Does the block carry no more than its rated load?", "ratedLoad")],
    Trends = [new("linePull", "load", '+', 1, 100), new("angle", "load", '-', 0, 180)],
    NoTrends = [new("ratedLoad", "only compared with the load")],
    Examples =
    [
        new(Case("0"), new Dictionary<string, double> { ["factor"] = 2.00, ["load"] = 20 }, 0.0001, "Doubled back: twice the line pull", Provenance.Derived),
        new(Case("60"), new Dictionary<string, double> { ["factor"] = 1.73 }, 0.003, "2 cos 30 by hand", Provenance.Derived),
        new(Case("120"), new Dictionary<string, double> { ["factor"] = 1.00 }, 0.0001, "2 cos 60 by hand", Provenance.Derived),
        new(Case("150"), new Dictionary<string, double> { ["factor"] = 0.52 }, 0.005, "2 cos 75 by hand", Provenance.Derived),
    ],
    Cautions = [RecoveryCautions.StandClear, RecoveryCautions.Marks],
})
{
    public sealed record Inputs(
        [Input("pull of the line", "kN", MoreThan = 0, High = 300, Measure = HowToMeasureRecovery.FirstPull)] Force LinePull,
        [Input("angle between the two parts of the rope; 0 is doubled back", "deg", AtLeast = 0, High = 180, Default = 0, Measure = HowToMeasureRecovery.Angle)] Angle Angle,
        [Input("rated load of the block", "kg", MoreThan = 0, Measure = HowToMeasureRecovery.RatedLoad)] UnitsNet.Mass? RatedLoad);

    public sealed record Result(
        [Output("load on block, shackle, strap and anchor", "kN")] Force? Load,
        [Output("the same in pulls of the line")] Ratio? Factor);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double T = x.LinePull.Newtons, a = x.Angle.Degrees; // N, deg
        if (a > 180)
        {
            w.Answer("block", Verdict.Unknown, "Not known: two parts of a rope are never more than 180 deg apart. Measure the smaller angle between them.");
            return new(null, null);
        }
        double factor = Factored(a), R = T * factor;
        w.Line("R / T", "2 cos(a / 2)", $"2 x cos({a} / 2)", factor, "1");
        w.Line("R", "T x 2 cos(a / 2)", $"{T} x {factor}", R, "N");
        if (x.RatedLoad is { } rated)
            w.AtMost("block", R / 1000, rated.Kilograms * Resistance.Gravity / 1000, "kN",
                $"At {a:0} deg between the ropes the block carries {R / 1000:0.0} kN of a rated {rated.Kilograms * Resistance.Gravity / 1000:0.0} kN.");
        return new(Force.FromNewtons(R), Ratio.FromDecimalFractions(factor));
    }

    /// <summary>Pulls of the line on the block; the angle between the ropes in degrees, 0 to 180.</summary>
    internal static double Factored(double degrees) => 2 * Math.Cos(degrees * Math.PI / 360);

    private static Dictionary<string, string> Case(string degrees) => new() { ["linePull"] = "10 kN", ["angle"] = $"{degrees} deg" };
}
