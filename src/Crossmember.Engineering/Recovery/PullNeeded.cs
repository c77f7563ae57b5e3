using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Driveline;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>What it takes to pull a vehicle out, from its mass, the ground and the grade.</summary>
/// <remarks>
/// Formula:  rolling: P = W (r cos th + sin th); mired: P = W (m + sin th); W = mass g, tan th = grade
/// Valid:    an estimate: the share of the ground is known to a quarter at best, and low and high say so
/// Source:   docs/derivations/winch-and-tackle.md; shares: data/engineering/ground-resistance.csv, each row with its source
/// Example:  2340 kg on 20 deg of soft dry sand -> 1350 kgf
/// </remarks>
public sealed class PullNeeded() : Calculation<PullNeeded.Inputs, PullNeeded.Result>(new()
{
    Id = "recovery.pull-needed",
    Version = 1,
    Title = "Pull needed to recover it",
    Purpose = "What a winch or another vehicle must pull to get this one out, loaded as it is: the choice of winch, rope, blocks and recovery points starts here.",
    Formula = "rolling: pull = W (r cos th + sin th); mired: pull = W (m + sin th); never both",
    Validity = "An estimate, told as low, likely and high. Rolling shares hold for a vehicle whose wheels turn; the mire factors for one that is stuck to that depth. "
        + "Suction, obstacles, a slope across the pull and wheels that help are not in it.",
    Sources =
    [
        "Statics on a slope, derived",
        "Mire factors 1, 2, 3: US Army FM 20-22 and FM 9-43-2, from memory; shares of rolling vehicles: common practice, no source (each row of the table says which)",
    ],
    Trends =
    [
        new("mass", "pull", '+', 500, 6000), new("grade", "gradePull", '+', 0, 1.2),
    ],
    NoTrends = [],
    Examples =
    [
        new(new Dictionary<string, string> { ["mass"] = "2340 kg", ["grade"] = "0.363970", ["ground"] = "soft dry sand" },
            new Dictionary<string, double> { ["pull"] = 1350 * 9.80665e-3, ["ruleOfManuals"] = 1385 * 9.80665e-3 }, 0.0008,
            "2340 x (0.25 cos 20 + sin 20) by hand; with the share on the full weight 1385 kgf", Provenance.Derived),
        new(new Dictionary<string, string> { ["mass"] = "4000 lb", ["grade"] = "0", ["ground"] = "grass or gravel" },
            new Dictionary<string, double> { ["high"] = 1320 * 4.4482216e-3 }, 0.0001,
            "4000 lb on grass or gravel, 0.33 of the weight by common practice: 1320 lb, by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["mass"] = "3000 kg", ["grade"] = "0", ["ground"] = "mired to the fenders" },
            new Dictionary<string, double> { ["pull"] = 2 * 3000 * 9.80665e-3 }, 0.0001, "Twice the weight: mire factor of the US Army manuals, from memory", Provenance.HandbookMemory),
    ],
    Cautions =
    [
        "Dig first: a shovel takes more off this pull than any rope adds. Estimate high, and stop when the winch labors more than this says.",
        RecoveryCautions.StandClear,
    ],
})
{
    public sealed record Inputs(
        [Input("mass of the vehicle as it is loaded", "kg", MoreThan = 0, Low = 300, High = 20000, Measure = HowToMeasureRecovery.Mass)] UnitsNet.Mass Mass,
        [Input("grade of the pull", AtLeast = 0, High = 1.2, Default = 0.25, Measure = HowToMeasureRecovery.Grade)] Ratio Grade,
        [Input("ground", Notation = typeof(Ground.Notation), Measure = HowToMeasureRecovery.Ground)] string Ground);

    public sealed record Result(
        [Output("pull needed, likely", "kN")] Force Pull,
        [Output("pull needed, low", "kN")] Force Low,
        [Output("pull needed, high", "kN")] Force High,
        [Output("of it what the grade takes", "kN")] Force GradePull,
        [Output("by the rule of the manuals, the share on the full weight", "kN")] Force RuleOfManuals);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double W = x.Mass.Kilograms * Resistance.Gravity, th = Math.Atan(x.Grade.DecimalFractions), degrees = th * 180 / Math.PI; // N, rad, deg
        var ground = Recovery.Ground.Find(x.Ground)!;
        double low = W * ground.Share(ground.Low, th), likely = W * ground.Share(ground.Likely, th), high = W * ground.Share(ground.High, th); // N
        w.Line("W", "m g", $"{x.Mass.Kilograms} x {Resistance.Gravity}", W, "N");
        w.Line("th", "atan(grade)", $"atan({x.Grade.DecimalFractions})", degrees, "deg");
        w.Line("Pg", "W sin th", $"{W} x sin({degrees})", W * Math.Sin(th), "N");
        if (ground.Mired) w.Line("P", "W (m + sin th)", $"{W} x ({ground.Likely} + sin({degrees}))", likely, "N");
        else w.Line("P", "W (r cos th + sin th)", $"{W} x ({ground.Likely} x cos({degrees}) + sin({degrees}))", likely, "N");
        w.Line("low", "the same with the low share", $"{ground.Low} for {ground.Likely}", low, "N");
        w.Line("high", "the same with the high share", $"{ground.High} for {ground.Likely}", high, "N");
        return new(Force.FromNewtons(likely), Force.FromNewtons(low), Force.FromNewtons(high), Force.FromNewtons(W * Math.Sin(th)),
            Force.FromNewtons(W * (ground.Likely + Math.Sin(th))));
    }
}
