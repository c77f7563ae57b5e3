using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>Rate and stress of one semi-elliptic leaf spring from its dimensions.</summary>
/// <remarks>
/// Formula:  k = E b t^3 (2 ng + 3 nf) / (6 Lh^3), Lh = (span - share x clamp) / 2; stress 6 W Lh / (n b t^2) or 18 W Lh / (b t^2 (2 ng + 3 nf)), W = half the load
/// Valid:    leaves of one width and thickness, steps even, arch small against the span; friction between leaves comes on top
/// Source:   R. S. Khurmi and J. K. Gupta, A Textbook of Machine Design, leaf springs, from memory; docs/derivations/springs.md
/// Example:  7 leaves 65 x 9 mm, 2 of full length, 1100 mm, clamp 80 mm, 210 GPa -> 200 N/mm
/// </remarks>
public sealed class LeafPack() : Calculation<LeafPack.Inputs, LeafPack.Result>(new()
{
    Id = "springs.leaf-pack",
    Version = 1,
    Title = "Leaf spring from its dimensions",
    Purpose = "The rate of one leaf spring from what tape and calipers give, what its leaves are stressed to, and whether it is pushed past flat: the "
        + "first question before leaves are added or taken out.",
    Formula = "k = E b t^3 (2 ng + 3 nf) / (6 Lh^3); full-length leaves 18 W Lh / (b t^2 (2 ng + 3 nf)), with nip 6 W Lh / (n b t^2); W half the load, "
        + "Lh half of span less the clamped share",
    Validity = "Leaves of one width and thickness in even steps, arch up to about a tenth of the span. The whole clamp is taken as stiff; with soft pads "
        + "only about two thirds of it is (from memory), which makes the spring a few per cent softer. Small quick movements meet friction between the leaves: "
        + "there the spring acts 1.1 to 1.5 times as stiff (common practice, no source), a dirty or rusted pack more. "
        + "The loads are what the leaves alone carry: a helper's share is taken off before.",
    Sources =
    [
        "R. S. Khurmi and J. K. Gupta, A Textbook of Machine Design, chapter on springs, leaf springs, from memory, to be checked in the book",
        "Beam of uniform strength, derived (docs/derivations/springs.md)", "Friction between leaves 1.1 to 1.5: common practice, no source",
    ],
    Checks =
    [
        new("dimensions", null, "Can these dimensions be of one spring?"),
        new("stress", Sense.AtMost, "Is the stress in the leaves within what their maker allows?", "loads", "stressLimit"),
        new("flat", Sense.AtLeast, "Is the spring still arched under its heaviest load?", "loads", "freeArch"),
    ],
    Trends =
    [
        new("eyeSpan", "rate", '-', 900, 1500), new("clampLength", "rate", '+', 40, 150), new("clampShare", "rate", '+', 0.5, 1),
        new("width", "rate", '+', 45, 90), new("thickness", "rate", '+', 5, 14), new("modulus", "rate", '+', 190, 215),
        new("loads", "stress", '+', 100, 1500), new("freeArch", "archLeft", '+', 40, 150),
    ],
    NoTrends =
    [
        new("stressLimit", "only compared with the result"), new("leaves", "whole leaves only; each one more adds to the rate"),
        new("fullLength", "whole leaves only; each graduated leaf made full length adds to the rate"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["eyeSpan"] = "1.1 m", ["clampLength"] = "80 mm", ["leaves"] = "7", ["fullLength"] = "2", ["width"] = "65 mm", ["thickness"] = "9 mm",
                ["modulus"] = "210 GPa", ["loads"] = """{"full":"611.83 kg"}""", ["freeArch"] = "60 mm",
            },
            new Dictionary<string, double> { ["rate"] = 200, ["stress"] = 326.9, ["archLeft"] = 30.0, ["effectiveLength"] = 1020 }, 0.0005,
            "Khurmi and Gupta, Machine Design, leaf springs, from memory: 6000 N, 8.70 mm found and 9 mm used, deflection 30.0 mm", Provenance.HandbookMemory),
        new(new Dictionary<string, string>
            {
                ["eyeSpan"] = "1.1 m", ["clampLength"] = "80 mm", ["leaves"] = "7", ["fullLength"] = "0", ["width"] = "65 mm", ["thickness"] = "9 mm", ["modulus"] = "210 GPa",
            },
            new Dictionary<string, double> { ["rate"] = 175.0 }, 0.0005, "8 E n b t^3 / (3 L^3), all leaves graduated, by hand", Provenance.Derived),
    ],
    Cautions = [StoredEnergy, UBolts, Qualified],
})
{
    public const string HowSpan = "tape from eye center to eye center along the main leaf, or straight with the weight on when it stands nearly flat",
        HowClamp = "tape between the outer edges of the U-bolts", HowLeaves = "count the leaves, the helper not among them",
        HowFull = "count the leaves that reach the eyes, the main leaf among them", HowWidth = "caliper a leaf",
        HowThickness = "caliper a clean leaf away from wear; of unlike leaves take the cube root of the mean of their cubes",
        HowNip = "see whether a gap stands between the loose leaves before the center bolt is tightened: yes or no",
        HowArch = "with the spring off, lay a string through both eye centers and tape down to the main leaf at the center bolt";

    /// <summary>More leaves than any vehicle's pack: a slip of the keyboard.</summary>
    private const int MostLeaves = 40;

    public sealed record Inputs(
        [Input("distance between the eye centers", "mm", MoreThan = 0, Low = 500, High = 2000, Measure = HowSpan)] Length EyeSpan,
        [Input("length clamped by the U-bolts", "mm", AtLeast = 0, High = 300, Measure = HowClamp)] Length ClampLength,
        [Input("share of the clamped length that does not bend", AtLeast = 0, High = 1, Default = 1, Measure = "take 1 for bare steel pads, 2/3 for soft ones")] Ratio ClampShare,
        [Input("number of leaves", MoreThan = 0, Low = 1, High = 20, Measure = HowLeaves)] Ratio Leaves,
        [Input("how many of them are of full length; without it one, the main leaf", AtLeast = 0, High = 5, Measure = HowFull)] Ratio? FullLength,
        [Input("width of a leaf", "mm", MoreThan = 0, Low = 30, High = 120, Measure = HowWidth)] Length Width,
        [Input("thickness of a leaf", "mm", MoreThan = 0, Low = 3, High = 25, Measure = HowThickness)] Length Thickness,
        [Input("modulus of elasticity", "GPa", MoreThan = 0, Low = 180, High = 220, Default = 206, Measure = "take 206 GPa for steel")] Pressure Modulus,
        [Input("leaves nipped, so that all share the stress; without an answer no", OneOf = ["yes", "no"], Measure = HowNip)] string? Nipped,
        [Input("what the leaves of one spring carry, in each state of load, a helper's share taken off", "kg", AtLeast = 0, High = 5000, Measure = SpringLoads)] Members<UnitsNet.Mass>? Loads,
        [Input("arch of the unloaded spring", "mm", AtLeast = 0, High = 300, Measure = HowArch)] Length? FreeArch,
        [Input("stress that the leaves may carry", "MPa", MoreThan = 0, Low = 200, High = 1200, Measure = StressLimit)] Pressure? StressLimit);

    public sealed record Result(
        [Output("length that bends", "mm")] Length? EffectiveLength,
        [Output("rate of one spring, moved slowly", "N/mm")] ForcePerLength? Rate,
        [Output("rate that small quick movements meet at least", "N/mm")] ForcePerLength? RateLow,
        [Output("rate that small quick movements meet at most", "N/mm")] ForcePerLength? RateHigh,
        [Output("largest stress under the heaviest load", "MPa")] Pressure? Stress,
        [Output("load on one spring at which the stress reaches its limit", "kg")] UnitsNet.Mass? LoadAtLimit,
        [Output("arch left under the heaviest load; negative is past flat", "mm")] Length? ArchLeft,
        [Output("lengths of the leaves for even steps, the shortest first", "mm")] Members<Length>? Lengths);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double n = x.Leaves.DecimalFractions, full = x.FullLength?.DecimalFractions ?? 1; // leaves
        double dead = x.ClampShare.DecimalFractions * x.ClampLength.Meters, L = x.EyeSpan.Meters - dead; // m
        var wrong = Wrong(n, full, L, x);
        w.Answer("dimensions", wrong is null ? Verdict.Pass : Verdict.Fail,
            wrong ?? $"{n:0.##} leaves, {full:0.##} of full length, {1000 * L:0} mm long between eyes and clamp together.");
        if (wrong is not null) return new(null, null, null, null, null, null, null, null);
        var leaf = new LeafBeam(n, full, x.Width.Meters, x.Thickness.Meters, x.Modulus.Pascals, L / 2);
        w.Line("L", "span - share x clamp", $"{x.EyeSpan.Millimeters} - {x.ClampShare.DecimalFractions} x {x.ClampLength.Millimeters}", 1000 * L, "mm");
        w.Line("k", "E b t^3 (2 ng + 3 nf) / (6 (L/2)^3)",
            $"{leaf.Modulus / 1e6} x {1000 * leaf.Width} x {1000 * leaf.Thickness}^3 x (2 x {n - full} + 3 x {full}) / (6 x {500 * L}^3)", leaf.Rate / 1000, "N/mm");
        if (x.FullLength is null) w.Caution("The number of full-length leaves is not given: the main leaf alone is taken, which makes the spring softer than it may be.");
        var (low, high) = n > 1 ? (1.1, 1.5) : (1, 1);
        var (stress, left) = Loaded(x, w, leaf);
        var limit = x.StressLimit is { } s ? s.Pascals / leaf.Stress(1, x.Nipped == "yes") / Gravity : (double?)null; // kg
        return new(Length.FromMeters(L), Rate(leaf.Rate), Rate(low * leaf.Rate), Rate(high * leaf.Rate), Pascals(stress),
            limit is { } m ? UnitsNet.Mass.FromKilograms(m) : null, Meters(left), leaf.Lengths(dead));
    }

    private static string? Wrong(double n, double full, double L, Inputs x) =>
        n != Math.Floor(n) || full != Math.Floor(full) ? "A pack has whole leaves: count them again."
        : n > MostLeaves ? $"{n:0} leaves are more than a pack has: count them again."
        : full > n ? $"{full:0} leaves of full length are more than the {n:0} in the pack: count them again."
        : L <= 0 ? $"The clamp, {x.ClampLength.Millimeters:0} mm, is as long as the spring, {x.EyeSpan.Millimeters:0} mm: tape both again." : null;

    /// <summary>Stress (Pa) and arch left (m) under the heaviest load.</summary>
    private static (double? Stress, double? Left) Loaded(Inputs x, Worksheet w, LeafBeam leaf)
    {
        if (x.Loads is not { } loads) return (null, null);
        var (name, load) = loads.Items.MaxBy(l => l.Value.Kilograms);
        double m = load.Kilograms, F = m * Gravity, mega = leaf.Stress(F, x.Nipped == "yes") / 1e6; // kg, N, MPa
        var nipped = x.Nipped == "yes";
        w.Line("stress", nipped ? "6 W Lh / (n b t^2)" : "18 W Lh / (b t^2 (2 ng + 3 nf))", $"W = {F / 2} N, Lh = {1000 * leaf.Half} mm", mega, "MPa");
        if (x.StressLimit is { } limit)
            w.AtMost("stress", mega, limit.Megapascals, "MPa", $"{m:0} kg on one spring ({name}) stresses its leaves to {mega:0} MPa; "
                + $"{limit.Megapascals:0} MPa are allowed.", "spring maker's limit, as stated", watch: 0.9 * limit.Megapascals);
        if (x.FreeArch is not { } free) return (mega * 1e6, null);
        var left = free.Meters - (F / leaf.Rate); // m
        w.Line("arch", "free arch - F / k", $"{free.Millimeters} - {F} / {leaf.Rate / 1000}", 1000 * left, "mm");
        w.AtLeast("flat", 1000 * left, 0, "mm", left < 0
            ? $"Under {m:0} kg ({name}) the spring is {-1000 * left:0} mm past flat: it is too soft or has sagged. Rate and stress still hold, but its travel and its length do not."
            : $"Under {m:0} kg ({name}) the spring keeps {1000 * left:0} mm of arch.", Practice, beyond: Verdict.Caution);
        return (mega * 1e6, left);
    }
}
