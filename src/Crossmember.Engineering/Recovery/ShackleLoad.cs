using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Driveline;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>What a shackle may carry at the angle it is pulled, and what an unmarked one would have been good for.</summary>
/// <remarks>
/// Formula:  allowed = rated load x 100, 70 or 50 % in line, up to 45 and up to 90 deg to the side; unmarked: 3 D^2 short tons (D in)
/// Valid:    a sound shackle with its own pin screwed home; the mark governs and the field rule is only for judging what is unmarked
/// Source:   ASME B30.26-2010, 26-1.2 and 26-1.4.2, from memory; US Navy steelworker manual (3 D^2); side loading: common practice, no source
/// Example:  5/8 in unmarked: 2343.8 lb; rated 4750 kg at 45 deg 3325 kg, at 90 deg 2375 kg, breaks at 23,750 kg or more
/// </remarks>
public sealed class ShackleLoad() : Calculation<ShackleLoad.Inputs, ShackleLoad.Result>(new()
{
    Id = "recovery.shackle",
    Version = 1,
    Title = "Shackle against its load",
    Purpose = "What a shackle may carry when it is pulled askew, and that one without a mark belongs in the scrap.",
    Formula = "allowed = rated load x share; in line 100 %, up to 45 deg to the side 70 %, up to 90 deg 50 %; unmarked 3 D^2 short tons, D in inches",
    Validity = "Between those angles the lower share counts: up to 5 deg is taken as in line. Pull along the bow, pin screwed home, the rope running on the bow and not on the pin. "
        + "Two legs in the bow up to 120 deg apart, evenly, count as in line (common practice, no source).",
    Sources =
    [
        "US Navy steelworker manual, shackles: safe working load 3 D^2 tons, D in inches", "ASME B30.26-2010, 26-1.2: design factor 5 or more, from memory",
        "Side loading 100, 70, 50 %: common practice, no source",
    ],
    Checks = [new("load", Sense.AtMost, "Does the shackle carry no more than it may at this angle?")],
    Trends = [new("ratedLoad", "allowed", '+', 500, 20000), new("linePull", "used", '+', 5, 100)],
    NoTrends =
    [
        new("pinSize", "stands in only where there is no mark"), new("sideAngle", "lowers the load in steps"),
    ],
    Examples =
    [
        new(Case("4750 kg", "45"), new Dictionary<string, double> { ["allowed"] = 3325, ["breaking"] = 23750 }, 0.0001, "70 % of 4750 kg and 5 times it by hand; rules from memory and practice", Provenance.Derived),
        new(Case("4750 kg", "90"), new Dictionary<string, double> { ["allowed"] = 2375 }, 0.0001, "50 % of 4750 kg by hand; common practice", Provenance.Derived),
        new(new Dictionary<string, string> { ["linePull"] = "10 kN", ["pinSize"] = "5/8 in" }, new Dictionary<string, double> { ["fieldRule"] = 2343.8 * 0.45359237, ["allowed"] = 2343.8 * 0.45359237 }, 0.0001,
            "US Navy steelworker manual: 5/8 in, 3 x 0.625^2 x 2000 = 2343.8 lb as printed", Provenance.Published),
    ],
    Cautions =
    [
        RecoveryCautions.Marks, RecoveryCautions.NoLifting,
        "Never put a bolt in a shackle for its pin, and never join ropes through a shackle that could fly: soft shackles and pinned joints weigh less where it counts.",
    ],
})
{
    internal const double DesignFactor = 5;

    public sealed record Inputs(
        [Input("pull on the shackle", "kN", MoreThan = 0, High = 300, Measure = HowToMeasureRecovery.FirstPull)] Force LinePull,
        [Input("rated load marked on the shackle", "kg", MoreThan = 0, Measure = HowToMeasureRecovery.RatedLoad)] UnitsNet.Mass? RatedLoad,
        [Input("thickness of the bow, for the field rule where there is no mark", "in", MoreThan = 0, Low = 0.25, High = 2, Measure = "caliper the bow beside the eyes")] Length? PinSize,
        [Input("how far to the side it is pulled; 0 is in line", "deg", AtLeast = 0, High = 90, Default = 0, Measure = HowToMeasureRecovery.Angle)] Angle SideAngle);

    public sealed record Result(
        [Output("what it may carry at this angle", "kg")] UnitsNet.Mass? Allowed,
        [Output("share of it that the pull takes", "%")] Ratio? Used,
        [Output("breaking load of a marked shackle, at least", "kg")] UnitsNet.Mass? Breaking,
        [Output("field rule of an unmarked one, in line", "kg")] UnitsNet.Mass? FieldRule);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double T = x.LinePull.Newtons, angle = x.SideAngle.Degrees, share = Share(angle); // N, deg
        double? field = x.PinSize is { } d ? 3 * d.Inches * d.Inches * 2000 * 0.45359237 : null; // kg
        w.Line("share", "100 % in line, 70 % to 45 deg, 50 % to 90 deg", $"at {angle}", 100 * share, "%");
        if (field is { } rule) w.Line("field rule", "3 D^2 x 2000 lb", $"3 x {x.PinSize!.Value.Inches}^2 x 2000", rule, "kg");
        if ((x.RatedLoad?.Kilograms ?? field) is not { } rated || share == 0)
        {
            w.Answer("load", Verdict.Unknown, share == 0 ? "Not known: no shackle is pulled more than square to its bow. Measure the angle again."
                : $"Not known: rated load of the shackle is missing ({HowToMeasureRecovery.RatedLoad}).");
            return new(null, null, null, Of(field));
        }
        var allowed = rated * share; // kg
        var used = T / (allowed * Resistance.Gravity);
        w.Line("allowed", "rated load x share", $"{rated} x {share}", allowed, "kg");
        w.Line("used", "T / (allowed g)", $"{T} / ({allowed} x {Resistance.Gravity})", 100 * used, "%");
        var told = $"Pulled {angle:0} deg to the side the shackle may carry {allowed:0} kg and carries {T / Resistance.Gravity:0} kg.";
        if (x.RatedLoad is null)
            w.AtMost("load", T / Resistance.Gravity, allowed, "kg", "No mark, no rating: by the field rule " + char.ToLowerInvariant(told[0]) + told[1..] + " Put a marked one in its place.",
                "US Navy steelworker manual, field rule 3 D^2", watch: -1);
        else w.AtMost("load", T / Resistance.Gravity, allowed, "kg", told, "marked rating; side loading: common practice, no source");
        return new(UnitsNet.Mass.FromKilograms(allowed), Ratio.FromDecimalFractions(used), x.RatedLoad is null ? null : UnitsNet.Mass.FromKilograms(DesignFactor * rated), Of(field));
    }

    /// <summary>Share of the rated load at an angle to the side, in degrees; nothing beyond a right angle.</summary>
    internal static double Share(double degrees) => degrees switch { <= 5 => 1, <= 45.0000001 => 0.7, <= 90.0000001 => 0.5, _ => 0 };

    private static UnitsNet.Mass? Of(double? kilograms) => kilograms is { } kg ? UnitsNet.Mass.FromKilograms(kg) : null;

    private static Dictionary<string, string> Case(string rated, string degrees) => new() { ["linePull"] = "10 kN", ["ratedLoad"] = rated, ["sideAngle"] = $"{degrees} deg" };
}
