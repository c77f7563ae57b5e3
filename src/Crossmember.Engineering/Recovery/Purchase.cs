using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>How many parts of line the pull takes, what the winch line and the anchor then carry, and whether the rope is long enough.</summary>
/// <remarks>
/// Formula:  tackle = share P (n - 1); fall line = (P + tackle) / n; rope out = n s; must stay within the pull of the layer the rope leaves, over the margin
/// Valid:    parts of line as good as parallel; each block takes the same share of the load
/// Source:   US Army TB 9-2350-292-10, recovery steps 4 and 5; docs/derivations/winch-and-tackle.md
/// Example:  6600 lb, 3 parts over 2 blocks -> tackle 1320, total 7920, fall line 2640 lb
/// </remarks>
public sealed class Purchase() : Calculation<Purchase.Inputs, Purchase.Result>(new()
{
    Id = "recovery.purchase",
    Version = 1,
    Title = "Blocks and parts of line",
    Purpose = "How many parts of line the pull takes with this winch: every block halves the line pull a little less than the books of statics say, "
        + "costs speed, and needs rope; and the anchor carries it all.",
    Formula = "tackle = share x P (n - 1); fall line = (P + tackle) / n; rope out = n s",
    Validity = "Parts of line nearly parallel: at an angle they pull less. Start of the pull, with the vehicle the whole distance from the anchor: as rope comes in it climbs "
        + "to higher layers and the winch pulls less. The anchor's figure is the sum of all parts at the pull of the fall line, a little high on purpose.",
    Sources =
    [
        "US Army TB 9-2350-292-10, recovery steps 4 and 5: total = load + tackle resistance, fall line = total / mechanical advantage",
        "10 % of the load for each block: US Army recovery manuals, from memory", "Margin of 1.5: common practice, no source",
    ],
    Checks = [new("rigging", Sense.AtMost, "Can the winch pull it out with the rope it has?")],
    Trends =
    [
        new("pull", "total", '+', 5, 25), new("sheaveResistance", "fallLine", '+', 0.02, 0.2),
    ],
    NoTrends =
    [
        new("high", "only compared with the pull at hand"), new("firstPull", "decides how many parts it takes, in steps"), new("drumDiameter", "decides layers, in steps"),
        new("drumWidth", "decides layers, in steps"), new("ropeDiameter", "decides layers, in steps"), new("ropeLength", "decides whether it reaches"),
        new("minimumWraps", "decides whether it reaches"), new("distance", "decides layers and whether the rope reaches, in steps"),
        new("margin", "decides how many parts it takes, in steps"), new("parts", "more parts lower the fall line and lengthen the rope"),
    ],
    Examples =
    [
        new(Case("6600 lbf", "3"),
            new Dictionary<string, double> { ["tackle"] = 1320 * 4.4482216e-3, ["total"] = 7920 * 4.4482216e-3, ["fallLine"] = 2640 * 4.4482216e-3, ["sheaves"] = 2 }, 1e-6,
            "Load resistance 6600 lb, 2 sheaves, mechanical advantage 3: procedure of US Army TB 9-2350-292-10, steps 4 and 5; 10 % by hand", Provenance.Published),
    ],
    Cautions =
    [
        RecoveryCautions.StandClear, RecoveryCautions.Marks, RecoveryCautions.NoBall,
        "A tree or a stake that gives way lets everything go at once: spread the load over anchors, pad living trees, and pull against them slowly first.",
    ],
})
{
    private const string Practice = "margin and share of the ground: common practice and memory";

    public sealed record Inputs(
        [Input("pull needed, likely", "kN", MoreThan = 0, High = 300, Measure = HowToMeasureRecovery.PullNeeded)] Force Pull,
        [Input("pull needed, high", "kN", MoreThan = 0, Measure = HowToMeasureRecovery.PullNeeded)] Force? High,
        [Input("line pull on the first layer", "kN", MoreThan = 0, Low = 1, High = 300, Measure = HowToMeasureRecovery.FirstPull)] Force FirstPull,
        [Input("diameter of the bare drum", "mm", MoreThan = 0, Low = 30, High = 600, Measure = HowToMeasureRecovery.DrumDiameter)] Length DrumDiameter,
        [Input("width of the drum between its flanges", "mm", MoreThan = 0, Low = 50, High = 1000, Measure = HowToMeasureRecovery.DrumWidth)] Length DrumWidth,
        [Input("diameter of the rope", "mm", MoreThan = 0, Low = 4, High = 30, Measure = HowToMeasureRecovery.RopeDiameter)] Length RopeDiameter,
        [Input("length of the rope", "m", MoreThan = 0, Low = 3, High = 150, Measure = HowToMeasureRecovery.RopeLength)] Length RopeLength,
        [Input("full wraps that must stay on the drum; five where none are given", AtLeast = 0, High = 20, Measure = HowToMeasureRecovery.Wraps)] Ratio? MinimumWraps,
        [Input("distance to the anchor", "m", MoreThan = 0, Low = 2, High = 100, Default = 10, Measure = HowToMeasureRecovery.Distance)] Length Distance,
        [Input("margin of the winch over the pull", AtLeast = 1, High = 4, Default = 1.5, Measure = HowToMeasureRecovery.Margin)] Ratio Margin,
        [Input("share of the load that each block takes", AtLeast = 0, High = 0.4, Default = 0.1, Measure = HowToMeasureRecovery.Sheave)] Ratio SheaveResistance,
        [Input("parts of line; the fewest that do where none are given", AtLeast = 1, High = 6, Measure = "count the lines that run to the vehicle")] Ratio? Parts);

    public sealed record Result(
        [Output("parts of line")] Ratio? Parts,
        [Output("blocks")] Ratio? Sheaves,
        [Output("tackle resistance", "kN")] Force? Tackle,
        [Output("load with tackle resistance, which is also the most that all anchors together carry", "kN")] Force? Total,
        [Output("fall line: pull of the line at the winch", "kN")] Force? FallLine,
        [Output("most that a block and its anchor carry, the rope doubled back", "kN")] Force? BlockLoad,
        [Output("rope paid out at the start", "m")] Length? RopeOut,
        [Output("layer that the rope leaves at the start")] Ratio? Layer,
        [Output("what the winch pulls there", "kN")] Force? LayerPull,
        [Output("the fall line brought to the first layer: what the motor sees at the start", "kN")] Force? FirstLayerLoad,
        [Output("the same on the full drum, near the end of the pull", "kN")] Force? FullDrumLoad,
        [Output("speed of the vehicle as a share of the rope's", "%")] Ratio? Speed);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var drum = new WinchDrum(x.DrumDiameter.Meters, x.DrumWidth.Meters, x.RopeDiameter.Meters, x.RopeLength.Meters);
        var none = new Result(null, null, null, null, null, null, null, null, null, null, null, null);
        if (!drum.Holds)
        {
            w.Answer("rigging", Verdict.Unknown, "Not known: a rope of this thickness and length does not lie on a drum like this. Measure drum and rope again.");
            return none;
        }
        double P = x.Pull.Newtons, share = x.SheaveResistance.DecimalFractions, s = x.Distance.Meters, margin = x.Margin.DecimalFractions; // N, m
        var usable = drum.Usable(x.MinimumWraps?.DecimalFractions ?? WinchLayers.UsualWraps); // m
        double Allowed(int n) => x.FirstPull.Newtons * drum.Share(drum.LayerAt(n * s)) / margin; // N
        var most = (int)Math.Clamp(Math.Floor(usable / s), 0, Recovery.Tackle.MostParts);
        int? least = x.Parts is { } given ? (int)Math.Min(Math.Max(1, Math.Round(given.DecimalFractions)), 100)
            : Enumerable.Range(1, Recovery.Tackle.MostParts).Where(n => Recovery.Tackle.FallLine(P, n, share) <= Allowed(n)).Select(n => (int?)n).FirstOrDefault();
        if (least is not { } parts)
        {
            w.Answer("rigging", Verdict.Caution, $"Not even {Recovery.Tackle.MostParts} parts of line pull {P / 1000:0.0} kN with this winch and a margin of {margin:0.##}: "
                + "dig, unload, or get a heavier winch.", P / 1000, "kN", Practice);
            return none;
        }
        var fall = Recovery.Tackle.FallLine(P, parts, share);
        var layer = drum.LayerAt(parts * s);
        var capacity = x.FirstPull.Newtons * drum.Share(layer); // N
        w.Line("tackle", "share x P (n - 1)", $"{share} x {P} x ({parts} - 1)", share * P * (parts - 1), "N");
        w.Line("total", "P + tackle", $"{P} + {share * P * (parts - 1)}", parts * fall, "N");
        w.Line("fall line", "total / n", $"{parts * fall} / {parts}", fall, "N");
        w.Line("rope out", "n s", $"{parts} x {s}", parts * s, "m");
        w.Line("layer pull", "F1 (D + d) / (D + (2k - 1) d)", $"{x.FirstPull.Newtons} x {drum.At(1)} / {drum.At(layer)}, layer {layer}", capacity, "N");
        w.Line("at the motor", "fall line x (D + (2k - 1) d) / (D + d)", $"{fall} x {drum.At(layer)} / {drum.At(1)}", fall / drum.Share(layer), "N");
        w.Line("at the end", "fall line x (D + (2n - 1) d) / (D + d)", $"{fall} x {drum.At(drum.Layers)} / {drum.At(1)}, {drum.Layers} layers", fall / drum.Share(drum.Layers), "N");
        Judge(w, new(parts, fall, capacity, margin, x.FirstPull.Newtons * drum.Share(drum.Layers), (x.High?.Newtons ?? P) / P), parts <= most, parts * s, usable, layer, drum.Layers, x.Parts is not null || most < 1);
        return new(Ratio.FromDecimalFractions(parts), Ratio.FromDecimalFractions(parts - 1), Force.FromNewtons(share * P * (parts - 1)), Force.FromNewtons(parts * fall),
            Force.FromNewtons(fall), parts > 1 ? Force.FromNewtons(2 * fall) : null, Length.FromMeters(parts * s), Ratio.FromDecimalFractions(layer), Force.FromNewtons(capacity),
            Force.FromNewtons(fall / drum.Share(layer)), Force.FromNewtons(fall / drum.Share(drum.Layers)), Ratio.FromDecimalFractions(1.0 / parts));
    }

    /// <summary>Forces in N; Spread: high pull over likely.</summary>
    private readonly record struct Rigged(int Parts, double Fall, double Capacity, double Margin, double FullDrum, double Spread);

    /// <param name="sure">Whether the parts were stated, or not even one reaches: else their number rests on margin and ground.</param>
    private static void Judge(Worksheet w, Rigged r, bool reaches, double out_, double usable, int layer, int layers, bool sure)
    {
        var told = Recovery.Tackle.Told(r.Parts);
        var rope = $"{char.ToUpperInvariant(told[0])}{told[1..]} {(r.Parts > 2 ? "take" : "takes")} {WinchLayers.Feet(out_)} of rope";
        if (!reaches)
        {
            w.Answer("rigging", sure ? Verdict.Fail : Verdict.Caution, $"{rope}, and only {WinchLayers.Feet(Math.Max(0, usable))} may be paid out: "
                + "a nearer anchor, a longer rope, or an extension.", r.Fall / 1000, "kN", sure ? "length of the rope" : Practice);
            return;
        }
        double fall = r.Fall / 1000, allowed = r.Capacity / 1000 / r.Margin; // kN
        var later = Math.Min(allowed, r.FullDrum / 1000) / r.Spread;
        w.AtMost("rigging", fall, allowed, "kN",
            $"{rope}, with {fall:0.0} kN in the winch line; with so much rope out it comes off layer {layer} of {layers}, where the winch pulls {r.Capacity / 1000:0.0} kN, {allowed:0.0} kN with a margin of {r.Margin:0.##}."
            + (fall <= allowed && fall > later ? $" On the full drum it pulls {r.FullDrum / 1000:0.0} kN, and the ground may hold more than the likely figure: have another block at hand." : ""),
            Practice, watch: later, beyond: Verdict.Caution);
    }

    private static Dictionary<string, string> Case(string pull, string parts) => new()
    {
        ["pull"] = pull, ["firstPull"] = "4310 kgf", ["drumDiameter"] = "63.5 mm", ["drumWidth"] = "228 mm", ["ropeDiameter"] = "9.5 mm", ["ropeLength"] = "30.6 m",
        ["distance"] = "8 m", ["parts"] = parts,
    };
}
