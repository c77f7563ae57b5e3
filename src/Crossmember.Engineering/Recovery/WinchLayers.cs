using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>What a winch pulls on each layer of rope, and how much rope there is on it.</summary>
/// <remarks>
/// Formula:  F(k) = F1 (D + d) / (D + (2k - 1) d); layer k holds n pi (D + (2k - 1) d) of rope, n = whole turns in the drum's width
/// Valid:    same torque on each layer, turns side by side, layers stacked one upon another
/// Source:   docs/derivations/winch-and-tackle.md; US Army TM 9-2320-338-10, table Self-Recovery Winch Pull Capacity
/// Example:  drum 63.5 mm, rope 9.5 mm, width 228 mm, 4310 kgf on the first layer -> 4310, 3420, 2835, 2420 kgf
/// </remarks>
public sealed class WinchLayers() : Calculation<WinchLayers.Inputs, WinchLayers.Result>(new()
{
    Id = "recovery.winch-layers",
    Version = 1,
    Title = "Pull of a winch by layer",
    Purpose = "What the winch pulls with a full drum and on the last turns: a plate that says 9,000 lb means one layer, and the others pull less.",
    Formula = "F(k) = F1 (D + d) / (D + (2k - 1) d); rope up to layer k = n pi (k D + k^2 d), n whole turns in the width",
    Validity = "The same torque on each layer; turns side by side and layers stacked, which stands for most drums within a few per cent: rope that beds into the "
        + "grooves lies lower and pulls a little more, rope wound loose or heaped lies higher and pulls less. Brake, motor heat and battery are not in it.",
    Sources =
    [
        "Torque and geometry of a drum, derived (docs/derivations/winch-and-tackle.md)",
        "US Army TM 9-2320-338-10 and TM 9-2320-430-10, table Self-Recovery Winch Pull Capacity, by cable layer",
        "Wraps left on the drum: the maker's figure governs; ASME B30.7-2016 asks two full wraps, from memory",
    ],
    Checks =
    [
        new("fits", Sense.AtMost, "Does the whole rope fit on the drum?", "flangeDiameter"),
    ],
    Trends =
    [
        new("linePull", "fullPull", '+', 2, 200), new("ropeLength", "usableRope", '+', 20, 60),
        new("minimumWraps", "usableRope", '-', 2, 10),
    ],
    NoTrends =
    [
        new("drumDiameter", "takes whole layers off, so the pull on the full drum goes in steps"),
        new("drumWidth", "only whole turns count, so layers and pull go in steps"), new("ropeDiameter", "only whole turns and layers count, so the pull goes in steps"),
        new("flangeDiameter", "only compared with the rope on the drum"),
    ],
    Examples =
    [
        new(Case("9.5 m", "9.5 mm"), new Dictionary<string, double> { ["layers"] = 2, ["fullPull"] = 3420 * 9.80665e-3, ["turns"] = 24 }, 0.001,
            "4310 x 73 / 92 by hand: 24 turns in 228 mm, 5.50 m on the first layer", Provenance.Derived),
        new(Case("30.6 m", "9.5 mm"), new Dictionary<string, double> { ["layers"] = 4, ["fullPull"] = 2420 * 9.80665e-3, ["firstPull"] = 4310 * 9.80665e-3 }, 0.001,
            "4310 x 73 / 130 by hand: four layers hold 30.61 m", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["linePull"] = "20000 lbf", ["ratingLayer"] = "first layer", ["drumDiameter"] = "9.447 in", ["drumWidth"] = "10 in", ["ropeDiameter"] = "0.5 in", ["ropeLength"] = "160 ft",
            },
            new Dictionary<string, double> { ["layers"] = 3, ["fullPull"] = 16663 * 4.4482216e-3 }, 0.001,
            "US Army TM 9-2320-338-10, Self-Recovery Winch Pull Capacity: 20,000, 18,173, 16,663 lb; drum over rope from the first two", Provenance.Published),
    ],
    Cautions = [RecoveryCautions.StandClear, RecoveryCautions.Marks, RecoveryCautions.NoLifting],
})
{
    internal const string FirstLayer = "first layer", FullDrum = "full drum";

    internal const double UsualWraps = 5;

    public sealed record Inputs(
        [Input("rated line pull", "kN", MoreThan = 0, Low = 1, High = 300, Measure = HowToMeasureRecovery.LinePull)] Force LinePull,
        [Input("which layer the rating means", OneOf = [FirstLayer, FullDrum], Measure = HowToMeasureRecovery.RatingLayer)] string RatingLayer,
        [Input("diameter of the bare drum", "mm", MoreThan = 0, Low = 30, High = 600, Measure = HowToMeasureRecovery.DrumDiameter)] Length DrumDiameter,
        [Input("width of the drum between its flanges", "mm", MoreThan = 0, Low = 50, High = 1000, Measure = HowToMeasureRecovery.DrumWidth)] Length DrumWidth,
        [Input("diameter of the rope", "mm", MoreThan = 0, Low = 4, High = 30, Measure = HowToMeasureRecovery.RopeDiameter)] Length RopeDiameter,
        [Input("length of the rope", "m", MoreThan = 0, Low = 3, High = 150, Measure = HowToMeasureRecovery.RopeLength)] Length RopeLength,
        [Input("full wraps that must stay on the drum; five where none are given", AtLeast = 0, High = 20, Measure = HowToMeasureRecovery.Wraps)] Ratio? MinimumWraps,
        [Input("diameter of the drum's flanges", "mm", MoreThan = 0, Measure = HowToMeasureRecovery.Flange)] Length? FlangeDiameter);

    public sealed record Result(
        [Output("layers of rope on the drum")] Ratio Layers,
        [Output("turns side by side in a layer")] Ratio Turns,
        [Output("line pull on the first layer", "kN")] Force FirstPull,
        [Output("line pull on the outermost layer, with all rope on the drum", "kN")] Force FullPull,
        [Output("rope that may be paid out", "m")] Length? UsableRope);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        var drum = new WinchDrum(x.DrumDiameter.Meters, x.DrumWidth.Meters, x.RopeDiameter.Meters, x.RopeLength.Meters);
        if (!drum.Holds)
        {
            w.Caution(drum.Turns < 1 ? "The rope is thicker than the drum is wide: measure both again."
                : $"The rope would lie in more than {WinchDrum.MostLayers} layers: measure drum, rope and its length again.");
            return null;
        }
        var K = drum.Layers;
        double rated = x.LinePull.Newtons, first = x.RatingLayer == FullDrum ? rated / drum.Share(K) : rated; // N
        w.Line("n", "whole turns in width / d", $"whole turns in {x.DrumWidth.Millimeters} / {x.RopeDiameter.Millimeters}", drum.Turns, "1");
        if (x.RatingLayer == FullDrum) w.Line("F1", "rating (D + (2K - 1) d) / (D + d)", $"{rated} x {drum.At(K)} / {drum.At(1)}", first, "N");
        for (var k = 1; w.Shown && k <= K; k++)
        {
            w.Line($"F({k})", "F1 (D + d) / (D + (2k - 1) d)", $"{first} x {drum.At(1)} / {drum.At(k)}", first * drum.Share(k), "N");
            w.Line($"rope to layer {k}", "n pi (k D + k^2 d)", $"{drum.Turns} x pi x ({k} x {drum.Diameter} + {k}^2 x {drum.Rope})", drum.Wound(k), "m");
            w.Curve(Line(drum, k, first * drum.Share(k)));
        }
        var wraps = x.MinimumWraps?.DecimalFractions ?? UsualWraps;
        var usable = drum.Usable(wraps);
        w.Line("usable", "L - wraps pi (D + d)", $"{drum.Length} - {wraps} x pi x {drum.At(1)}", usable, "m");
        if (usable <= 0) w.Caution("The wraps that must stay take more rope than there is.");
        if (x.FlangeDiameter is { } flange) Judge(w, drum, flange);
        return new(Ratio.FromDecimalFractions(K), Ratio.FromDecimalFractions(drum.Turns), Force.FromNewtons(first), Force.FromNewtons(first * drum.Share(K)),
            usable > 0 ? Length.FromMeters(usable) : null);
    }

    private static void Judge(Worksheet w, WinchDrum drum, Length flange)
    {
        double over = 1000 * (drum.Diameter + (2 * drum.Layers * drum.Rope)), rim = flange.Millimeters, clear = rim - (2000 * drum.Rope); // mm
        w.AtMost("fits", over, rim, "mm", over > rim
            ? $"{Feet(drum.Length)} of rope stand {over:0} mm across in {drum.Layers} layers, over the flange of {rim:0} mm: a shorter or thinner rope."
            : $"{Feet(drum.Length)} of rope stand {over:0} mm across in {drum.Layers} layers, within the flange of {rim:0} mm"
                + (over > clear ? ", but less than a rope's thickness below its rim: wound unevenly it climbs over." : "."),
            "one rope thickness clear of the rim: common practice, no source", watch: clear);
    }

    internal static string Feet(double m) => $"{m / 0.3048:0} ft";

    /// <summary>Pull of one layer over the rope paid out while the rope leaves that layer.</summary>
    private static PlottedCurve Line(WinchDrum drum, int layer, double pull)
    {
        double from = Math.Max(0, drum.Length - drum.Wound(layer)), to = drum.Length - drum.Wound(layer - 1); // m
        var lbf = Force.FromNewtons(pull).PoundsForce;
        return new($"layer {layer}", "rope paid out", "ft", [from / 0.3048, to / 0.3048], "line pull", "lbf", [lbf, lbf]);
    }

    private static Dictionary<string, string> Case(string length, string rope) => new()
    {
        ["linePull"] = "4310 kgf", ["ratingLayer"] = FirstLayer, ["drumDiameter"] = "63.5 mm", ["drumWidth"] = "228 mm", ["ropeDiameter"] = rope, ["ropeLength"] = length,
    };
}
