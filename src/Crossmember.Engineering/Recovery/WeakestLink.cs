using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Driveline;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>Which link between winch and anchor comes nearest its limit when the winch pulls all it can.</summary>
/// <remarks>
/// Formula:  use of a link = its load / its limit; rope T / breaking force (70 % of it sharply bent), shackle T / (rated x share), block and strap 2 T cos(a / 2) / rated, mount T / what it holds
/// Valid:    limits of unlike kinds side by side: a rope's is its breaking force, all others' are rated loads
/// Source:   equilibrium; marked ratings
/// Example:  40 kN, rope 80 kN, shackle 4750 kg, block doubled back rated 10 t -> rope 50 %, shackle 86 %, block 82 %: the shackle
/// </remarks>
public sealed class WeakestLink() : Calculation<WeakestLink.Inputs, WeakestLink.Result>(new()
{
    Id = "recovery.weakest-link",
    Version = 1,
    Title = "Weakest link of the winch line",
    Purpose = "One overloaded shackle makes a good winch dangerous: which part of the chain from winch mount to anchor is nearest its limit at full pull.",
    Formula = "use = load / limit; rope: T / breaking force; shackle: T / (rated x side share); block and anchor strap: 2 T cos(a / 2) / rated; winch mount: T / what its bolts hold",
    Validity = "At the stall of the winch on its first layer, steady pull. A rope's limit is its breaking force, that of all others their rated load, which lies well below breaking: "
        + "at equal use the rope is the first to part. What is not stated is not looked at and named.",
    Sources = ["Equilibrium, derived", "Marked ratings; rope no more than half of its breaking force: common practice, no source"],
    Checks = [new("weakest", Sense.AtMost, "Is every link within its limit at full pull?")],
    Trends =
    [
        new("linePull", "used", '+', 5, 100), new("breakingForce", "ropeUsed", '-', 40, 200), new("shackleRatedLoad", "shackleUsed", '-', 1000, 20000),
        new("blockRatedLoad", "blockUsed", '-', 1000, 20000), new("anchorRatedLoad", "anchorUsed", '-', 1000, 20000), new("mountStrength", "mountUsed", '-', 20, 200),
        new("blockAngle", "blockUsed", '-', 0, 170),
    ],
    NoTrends = [new("sideAngle", "lowers the shackle's load in steps")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["linePull"] = "40 kN", ["breakingForce"] = "80 kN", ["shackleRatedLoad"] = "4750 kg", ["blockRatedLoad"] = "10 t", ["anchorRatedLoad"] = "9 t", ["mountStrength"] = "60 kN",
            },
            new Dictionary<string, double> { ["ropeUsed"] = 50, ["shackleUsed"] = 85.87, ["blockUsed"] = 81.58, ["anchorUsed"] = 90.64, ["mountUsed"] = 66.67, ["used"] = 90.64 }, 0.0001,
            "40 / 80, 40 / 46.58, 80 / 98.07, 80 / 88.26, 40 / 60 by hand", Provenance.Derived),
    ],
    Cautions = [RecoveryCautions.StandClear, RecoveryCautions.Marks, RecoveryCautions.NoBall, RecoveryCautions.NoLifting],
})
{
    private const double HalfOfRope = 0.5;

    public sealed record Inputs(
        [Input("line pull of the winch on the first layer", "kN", MoreThan = 0, Low = 1, High = 300, Measure = HowToMeasureRecovery.FirstPull)] Force LinePull,
        [Input("minimum breaking force of the rope", "kN", MoreThan = 0, Measure = HowToMeasureRecovery.Breaking)] Force? BreakingForce,
        [Input("how the rope is bent under load; straight where nothing is said", OneOf = [RopeStrength.Straight, RopeStrength.Sharp])] string? Bend,
        [Input("rated load marked on the shackle", "kg", MoreThan = 0, Measure = HowToMeasureRecovery.RatedLoad)] UnitsNet.Mass? ShackleRatedLoad,
        [Input("how far to the side the shackle is pulled; 0 is in line", "deg", AtLeast = 0, High = 90, Default = 0, Measure = HowToMeasureRecovery.Angle)] Angle SideAngle,
        [Input("rated load of the block", "kg", MoreThan = 0, Measure = HowToMeasureRecovery.RatedLoad)] UnitsNet.Mass? BlockRatedLoad,
        [Input("rated load of the strap round the anchor, as it is laid", "kg", MoreThan = 0, Measure = HowToMeasureRecovery.RatedLoad)] UnitsNet.Mass? AnchorRatedLoad,
        [Input("angle between the two parts of the rope at the block; 0 is doubled back", "deg", AtLeast = 0, High = 180, Default = 0, Measure = HowToMeasureRecovery.Angle)] Angle BlockAngle,
        [Input("line pull that the winch mount holds", "kN", MoreThan = 0, Measure = "take it from the bolts of the mount")] Force? MountStrength);

    public sealed record Result(
        [Output("the weakest link")] string? Weakest,
        [Output("how much of its limit it takes", "%")] Ratio? Used,
        [Output("rope, of its breaking force", "%")] Ratio? RopeUsed,
        [Output("shackle, of its rated load", "%")] Ratio? ShackleUsed,
        [Output("block, of its rated load", "%")] Ratio? BlockUsed,
        [Output("strap round the anchor, of its rated load", "%")] Ratio? AnchorUsed,
        [Output("winch mount", "%")] Ratio? MountUsed);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double T = x.LinePull.Newtons, around = x.BlockAngle.Degrees <= 180 ? T * BlockLoad.Factored(x.BlockAngle.Degrees) : double.NaN, side = ShackleLoad.Share(x.SideAngle.Degrees); // N
        double? Use(string link, double load, double? limit)
        {
            if (limit is not { } most || most == 0) return null;
            w.Line(link, "load / limit", $"{load} / {most}", 100 * load / most, "%");
            return load / most;
        }
        w.Line("T", "line pull on the first layer", $"{T}", T, "N");
        w.Line("round the block", "2 T cos(a / 2)", $"2 x {T} x cos({x.BlockAngle.Degrees} / 2)", around, "N");
        double? rope = Use("rope", T, x.BreakingForce?.Newtons * (x.Bend == RopeStrength.Sharp ? 0.7 : 1)), shackle = Use("shackle", T, Newtons(x.ShackleRatedLoad) * side);
        double? block = Use("block", around, Newtons(x.BlockRatedLoad)), anchor = Use("anchor strap", around, Newtons(x.AnchorRatedLoad)), mount = Use("winch mount", T, x.MountStrength?.Newtons);
        (string Name, double? Use)[] links = [("rope", rope), ("shackle", shackle), ("block", block), ("anchor strap", anchor), ("winch mount", mount)];
        var known = links.Where(l => l.Use is { } u && double.IsFinite(u)).ToList();
        if (known.Count == 0)
        {
            w.Answer("weakest", Verdict.Unknown, "Not known: no link between winch and anchor is stated (read the marks on rope tag, shackle, block and strap).");
            return new(null, null, null, null, null, null, null);
        }
        var worst = known.MaxBy(l => l.Use!.Value);
        Judge(w, T, worst.Name, worst.Use!.Value, rope, [.. links.Where(l => !known.Contains(l)).Select(l => l.Name)]);
        return new(worst.Name, Of(worst.Use), Of(rope), Of(shackle), Of(block), Of(anchor), Of(mount));
    }

    private static void Judge(Worksheet w, double T, string name, double used, double? rope, string[] unknown)
    {
        var text = $"At the winch's full {T / 1000:0.0} kN the {name} is nearest its limit: {100 * used:0} % of its {(name == "rope" ? "breaking force" : "rated load")}.";
        if (name != "rope" && rope > HalfOfRope) text += $" The rope takes {100 * rope:0} % of its breaking force.";
        if (unknown.Length > 0) text += $" Not looked at, since not stated: {string.Join(", ", unknown)}.";
        // A limit of a rope is where it parts; nothing is within it that lies near it.
        w.AtMost("weakest", 100 * used, 100, "%", text, "marked ratings; rope: half of its breaking force, common practice, no source",
            watch: unknown.Length > 0 || rope > HalfOfRope ? -1 : null);
    }

    private static double? Newtons(UnitsNet.Mass? rated) => rated?.Kilograms * Resistance.Gravity;

    private static Ratio? Of(double? use) => use is { } u && double.IsFinite(u) ? Ratio.FromDecimalFractions(u) : null;
}
