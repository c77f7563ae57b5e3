using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Driveline;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>The slope a winch pulls the vehicle up on its first layer and on the full drum, and how many blocks the wanted pull takes.</summary>
/// <remarks>
/// Formula:  rolling: sin th + r cos th = F / (margin W); mired: sin th + m = F / (margin W); parts n: P (1 + 0.1 (n - 1)) / n at most F / margin
/// Valid:    single line straight up the slope; the share of the ground is an estimate
/// Source:   docs/derivations/winch-and-tackle.md
/// Example:  2420 kgf, margin 1.5, 2340 kg, shallow mud (1/3) -> 22.42 deg
/// </remarks>
public sealed class WinchReach() : Calculation<WinchReach.Inputs, WinchReach.Result>(new()
{
    Id = "recovery.winch-reach",
    Version = 1,
    Title = "What the winch gets it up",
    Purpose = "Whether a single line is enough for this vehicle, loaded as it is, on the ground and grade it is to be recovered from; how steep it could be, and how many blocks it takes.",
    Formula = "rolling: sin th + r cos th = F / (margin W); mired: sin th + m = F / (margin W); n parts of line: P (1 + 0.1 (n - 1)) / n at most F / margin",
    Validity = "Straight pull up the slope on the likely share of the ground; low and high differ by a quarter or more. Whether rope, blocks and points hold is another question, "
        + "and rope may run out before the pull does.",
    Sources = ["Statics on a slope, derived", "10 % of the load for each block: US Army recovery manuals, from memory", "Margin of 1.5: common practice, no source"],
    Checks = [new("single-line", Sense.AtLeast, "Does a single line on the full drum pull it out?")],
    Trends =
    [
        new("fullPull", "fullDrumUsable", '+', 5, 100), new("firstPull", "firstLayerUsable", '+', 5, 100), new("margin", "fullDrumUsable", '-', 1, 3),
        new("mass", "pull", '+', 1000, 6000), new("grade", "gradePull", '+', 0, 1.2),
    ],
    NoTrends = [new("sheaveResistance", "decides how many parts it takes, in steps")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["firstPull"] = "4310 kgf", ["fullPull"] = "2420.2 kgf", ["mass"] = "2340 kg", ["grade"] = "0.2", ["ground"] = "shallow mud",
            },
            new Dictionary<string, double> { ["fullDrumSlope"] = 22.42, ["fullDrumUsable"] = 1613.5 * 9.80665e-3, ["firstLayerUsable"] = 2873.3 * 9.80665e-3 }, 0.0015,
            "1613 kgf on 2340 kg: sin th + cos th / 3 = 0.6895 by hand, 41.3 %; 2873 kgf are more than any slope takes", Provenance.Derived),
    ],
    Cautions = [RecoveryCautions.StandClear, RecoveryCautions.Marks, "A winch holds a vehicle on a slope only as long as its brake and rope do: chock it before anybody goes near."],
})
{
    public sealed record Inputs(
        [Input("line pull on the first layer", "kN", MoreThan = 0, Low = 1, High = 300, Measure = HowToMeasureRecovery.FirstPull)] Force FirstPull,
        [Input("line pull on the full drum", "kN", MoreThan = 0, Low = 1, High = 300, Measure = HowToMeasureRecovery.FullPull)] Force FullPull,
        [Input("mass of the vehicle as it is loaded", "kg", MoreThan = 0, Low = 300, High = 20000, Measure = HowToMeasureRecovery.Mass)] UnitsNet.Mass Mass,
        [Input("grade of the pull", AtLeast = 0, High = 1.2, Default = 0.25, Measure = HowToMeasureRecovery.Grade)] Ratio Grade,
        [Input("ground", Notation = typeof(Ground.Notation), Measure = HowToMeasureRecovery.Ground)] string Ground,
        [Input("margin of the winch over the pull", AtLeast = 1, High = 4, Default = 1.5, Measure = HowToMeasureRecovery.Margin)] Ratio Margin,
        [Input("share of the load that each block takes", AtLeast = 0, High = 0.4, Default = 0.1, Measure = HowToMeasureRecovery.Sheave)] Ratio SheaveResistance);

    public sealed record Result(
        [Output("line pull on the first layer with the margin", "kN")] Force FirstLayerUsable,
        [Output("line pull on the full drum with the margin", "kN")] Force FullDrumUsable,
        [Output("steepest slope on the first layer; none where no slope stops it", "deg")] Angle? FirstLayerSlope,
        [Output("steepest slope on the full drum; none where no slope stops it", "deg")] Angle? FullDrumSlope,
        [Output("pull needed on the grade, likely", "kN")] Force Pull,
        [Output("of it what the grade takes", "kN")] Force GradePull,
        [Output("parts of line needed on the full drum")] Ratio? Parts);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double W = x.Mass.Kilograms * Resistance.Gravity, th = Math.Atan(x.Grade.DecimalFractions), margin = x.Margin.DecimalFractions; // N, rad
        var ground = Recovery.Ground.Find(x.Ground)!;
        double first = x.FirstPull.Newtons / margin, full = x.FullPull.Newtons / margin; // N
        double likely = W * ground.Share(ground.Likely, th), high = W * ground.Share(ground.High, th); // N
        w.Line("F1 / margin", "first layer / margin", $"{x.FirstPull.Newtons} / {margin}", first, "N");
        w.Line("F / margin", "full drum / margin", $"{x.FullPull.Newtons} / {margin}", full, "N");
        double? onFirst = ground.Slope(first / W), onFull = ground.Slope(full / W); // rad
        if (onFirst is { } a) w.Line("th1", Formula(ground), $"{first} / {W}, share {ground.Likely}", a * 180 / Math.PI, "deg");
        if (onFull is { } b) w.Line("th", Formula(ground), $"{full} / {W}, share {ground.Likely}", b * 180 / Math.PI, "deg");
        w.Line("P", ground.Mired ? "W (m + sin th)" : "W (r cos th + sin th)", $"{W}, {ground.Likely}, {th * 180 / Math.PI} deg", likely, "N");
        var parts = Tackle.Parts(likely, full, x.SheaveResistance.DecimalFractions);
        Judge(w, full / 1000, likely / 1000, high / 1000, margin, parts, ground);
        return new(Force.FromNewtons(first), Force.FromNewtons(full), Of(onFirst), Of(onFull), Force.FromNewtons(likely), Force.FromNewtons(W * Math.Sin(th)),
            parts is { } n ? Ratio.FromDecimalFractions(n) : null);
    }

    private static void Judge(Worksheet w, double full, double likely, double high, double margin, int? parts, Ground ground) =>
        w.AtLeast("single-line", full, likely, "kN",
            $"With a margin of {margin:0.##} the full drum pulls {full:0.0} kN; {ground.Name} on this grade takes about {likely:0.0} kN, up to {high:0.0} kN. "
            + parts switch
            {
                1 => full < high ? "A single line may be enough: have a block at hand." : "A single line is enough.",
                { } n => $"With the drum full, as it is near the end of a pull, rig {Tackle.Told(n)}; with more rope out fewer parts may do.",
                null => $"With the drum full not even {Tackle.MostParts} parts of line are enough: dig, unload, or get a heavier winch.",
            }, "margin and share of the ground: common practice and memory", watch: high, beyond: Verdict.Caution);

    private static string Formula(Ground ground) => ground.Mired ? "asin(F / W - m)" : "asin(F / W / sqrt(1 + r^2)) - atan r";

    private static Angle? Of(double? radians) => radians is { } th ? Angle.FromRadians(th) : null;
}
