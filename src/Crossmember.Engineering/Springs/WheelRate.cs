using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>Vertical rate of an axle's springs, felt at one wheel.</summary>
/// <remarks>
/// Formula:  springs beside each other add, a pad under them yields with them: ks = 1 / (1 / sum k + 1 / kp); at the wheel k = r^2 ks, r = spring travel / wheel travel
/// Valid:    both wheels going up together, without the tire; a helper counts here only while it touches from the start
/// Source:   springs in parallel and in series, virtual work, docs/derivations/springs.md
/// Example:  coil 60 N/mm at 0.7 -> 29.4 N/mm
/// </remarks>
public sealed class WheelRate() : Calculation<WheelRate.Inputs, WheelRate.Result>(new()
{
    Id = "springs.wheel-rate",
    Version = 1,
    Title = "Spring rate at the wheel",
    Purpose = "One figure for how stiff an axle is sprung, whatever carries it: leaf, coil or torsion bar, a helper beside it, a rubber pad under it. Everything about "
        + "ride height, ride and roll goes by it.",
    Formula = "k = r^2 / (1 / (leaf + coil + torsion) + 1 / pad), r = travel of the spring / travel of the wheel; a stated rate of the spring, else the one "
        + "measured from two heights, beats the dimensions",
    Validity = "Both wheels going up together, the tire not counted. A rate measured on the vehicle is taken as it is: motion ratio, pads and shackles are already in "
        + "it. A helper that touches later counts in the ride height, not here; a rate weighed across its first touch has part of it in it and is left out.",
    Sources = ["Springs in parallel and in series, virtual work, derived (docs/derivations/springs.md)", "20 % between two ways to the rate: common practice, no source"],
    Checks = [new("known", null, "Is the rate known, and do all ways to it agree?")],
    Either = ["springRate", "measuredRate", "leafRate", "coilRate", "torsionRate"],
    Trends =
    [
        new("springRate", "rate", '+', 10, 400), new("leafRate", "rate", '+', 20, 400), new("installedRate", "rate", '+', 20, 400), new("coilRate", "rate", '+', 10, 200),
        new("torsionRate", "rate", '+', 10, 100), new("measuredRate", "rate", '+', 10, 300), new("motionRatio", "rate", '+', 0.4, 1), new("padRate", "rate", '+', 200, 5000),
        new("helperRate", "rate", '+', 10, 200),
    ],
    NoTrends =
    [
        new("height", "only tells whether the helper touched between the heights"), new("secondHeight", "only tells that a rate should have come out of the weighing, and before the helper touched"),
        new("helperClearance", "decides whether the helper counts"),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["axle"] = "front", ["coilRate"] = "60 N/mm", ["motionRatio"] = "0.7" },
            new Dictionary<string, double> { ["rate"] = 29.4 }, 1e-9, "60 x 0.7^2 by hand", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["axle"] = "rear", ["leafRate"] = "30 N/mm", ["padRate"] = "600 N/mm", ["helperRate"] = "20 N/mm", ["helperClearance"] = "0 mm",
            },
            new Dictionary<string, double> { ["rate"] = 48.571 }, 1e-5, "30 x 600 / 630 + 20 by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["axle"] = "front", ["torsionRate"] = "20 N/mm", ["motionRatio"] = "0.9" },
            new Dictionary<string, double> { ["rate"] = 16.2 }, 1e-9, "20 x 0.81 by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["axle"] = "rear", ["measuredRate"] = "38 N/mm" }, new Dictionary<string, double> { ["rate"] = 38 }, 1e-9, "measured at the wheel", Provenance.Derived),
        new(new Dictionary<string, string> { ["axle"] = "rear", ["installedRate"] = "41 N/mm", ["leafRate"] = "40 N/mm" },
            new Dictionary<string, double> { ["rate"] = 41 }, 1e-9, "the spring as it is hung counts", Provenance.Derived),
        new(new Dictionary<string, string> { ["axle"] = "rear", ["springRate"] = "35 N/mm" }, new Dictionary<string, double> { ["rate"] = 35 }, 1e-9, "solid axle: as stated", Provenance.Derived),
    ],
    Cautions = [StoredEnergy, UBolts, Stops, Qualified],
})
{
    private const double Apart = 0.2;

    public sealed record Inputs(
        [Input(Axle, OneOf = ["front", "rear"])] string Axle,
        [Input("rate of one spring as stated", "N/mm", MoreThan = 0, High = 1000, Measure = "ask the spring's maker, or read its tag")] ForcePerLength? SpringRate,
        [Input("rate of the leaf spring from its dimensions", "N/mm", MoreThan = 0, High = 1000, Measure = "measure the leaves")] ForcePerLength? LeafRate,
        [Input("rate of the leaf spring as it is hung", "N/mm", MoreThan = 0, High = 1000, Measure = "measure the shackle")] ForcePerLength? InstalledRate,
        [Input("rate of the coil spring from its dimensions", "N/mm", MoreThan = 0, High = 1000, Measure = "measure the coil")] ForcePerLength? CoilRate,
        [Input("rate of the torsion bar at its arm's end", "N/mm", MoreThan = 0, High = 1000, Measure = "measure bar and arm")] ForcePerLength? TorsionRate,
        [Input("rate at the wheel measured from two heights", "N/mm", MoreThan = 0, High = 1000, Measure = "weigh the axle and tape the frame over it twice")] ForcePerLength? MeasuredRate,
        [Input("first height, under the lighter load", "mm", Measure = HowToMeasureSprings.Height)] Length? Height,
        [Input("second height, under the heavier load", "mm", Measure = HowToMeasureSprings.Height)] Length? SecondHeight,
        [Input("travel of the spring over travel of the wheel; without it 1, as on a solid axle", MoreThan = 0, Low = 0.3, High = 1.2, Measure = HowToMeasureSprings.MotionRatio)]
        Ratio? MotionRatio,
        [Input("rate of the pad under one spring", "N/mm", MoreThan = 0, Measure = "ask the pad's maker; leave it out for thin or steel pads")] ForcePerLength? PadRate,
        [Input("rate of one helper", "N/mm", MoreThan = 0, High = 1000, Measure = HowToMeasureSprings.HelperRate)] ForcePerLength? HelperRate,
        [Input("gap until the helper touches", "mm", AtLeast = 0, Measure = HowToMeasureSprings.HelperClearance)] Length? HelperClearance);

    public sealed record Result([Output("rate at one wheel, springs only", "N/mm")] ForcePerLength? Rate);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        if (x.SecondHeight is not null && x.MeasuredRate is null)
        {
            w.Answer("known", Verdict.Fail, "The two weighed heights give no rate: the heavier load does not stand lower. Bounce the vehicle and tape and weigh both again.");
            return new((ForcePerLength?)null);
        }
        // The helper counts in the ride height from its first touch on: in the measured rate it would count twice.
        var across = x.MeasuredRate is not null && x.HelperRate is not null && x.HelperClearance?.Meters > 0 && x.Height?.Meters - x.SecondHeight?.Meters > x.HelperClearance?.Meters + 1e-6 ? Across(x) : "";
        var ways = Ways(x, w, across.Length == 0);
        if (ways.Count == 0 && across.Length > 0)
        {
            w.Answer("known", Verdict.Unknown, $"Not known: {across}");
            return new((ForcePerLength?)null);
        }
        if (ways.Count == 0)
        {
            w.Answer("known", Verdict.Unknown, $"Not known: nothing says how stiff the springs of the {x.Axle} axle are ({WheelRate0}).");
            return new((ForcePerLength?)null);
        }
        if (x.HelperRate is not null && x.HelperClearance is null) w.Caution("The helper is left out: tape the gap until it touches.");
        var (name, k) = ways[0];
        var far = ways.Skip(1).Where(o => Math.Abs(o.Rate - k) > Apart * k).Select(o => $"{o.Name} gives {o.Rate / 1000:0.#} N/mm").ToList();
        w.Answer("known", far.Count > 0 || across.Length > 0 ? Verdict.Caution : Verdict.Pass, far.Count > 0
            ? $"{k / 1000:0.#} N/mm at the wheel by {name}, but {string.Join(" and ", far)}: measure again, or find out why."
            : across.Length > 0 ? $"{k / 1000:0.#} N/mm at the wheel, by {name}; {across}"
            : $"{k / 1000:0.#} N/mm at the wheel, by {name}.", k / 1000, "N/mm", far.Count > 0 ? Practice : null);
        return new(Rate(k));
    }

    private const string WheelRate0 = HowToMeasureSprings.WheelRate;

    private static string Across(Inputs x) => $"the two heights, {(x.Height - x.SecondHeight)!.Value.Millimeters:0} mm apart, were weighed across the helper, which touches after "
        + $"{x.HelperClearance!.Value.Millimeters:0} mm. Weigh and tape again with less load, before it touches.";

    /// <summary>Every way to the rate at the wheel (N/m) that the inputs allow, the one that counts first.</summary>
    private static List<(string Name, double Rate)> Ways(Inputs x, Worksheet w, bool weighed)
    {
        double r = x.MotionRatio?.DecimalFractions ?? 1, helper = x.HelperClearance?.Meters == 0 ? x.HelperRate?.NewtonsPerMeter ?? 0 : 0; // -, N/m
        var ways = new List<(string, double)>();
        if (x.SpringRate is { } stated) ways.Add(("the stated rate of the spring", AtWheel(stated.NewtonsPerMeter)));
        if (weighed && x.MeasuredRate is { } measured) ways.Add(("the two weighed heights", measured.NewtonsPerMeter));
        var dimensions = (x.InstalledRate ?? x.LeafRate)?.NewtonsPerMeter + (x.CoilRate?.NewtonsPerMeter ?? 0) + (x.TorsionRate?.NewtonsPerMeter ?? 0)
            ?? (x.CoilRate?.NewtonsPerMeter + (x.TorsionRate?.NewtonsPerMeter ?? 0)) ?? x.TorsionRate?.NewtonsPerMeter;
        if (dimensions is { } sum) ways.Add(("the dimensions of the spring", AtWheel(sum)));
        return ways;

        double AtWheel(double spring)
        {
            var soft = x.PadRate is { } pad ? spring * pad.NewtonsPerMeter / (spring + pad.NewtonsPerMeter) : spring;
            var k = r * r * (soft + helper);
            w.Line("k", "r^2 (1 / (1 / spring + 1 / pad) + helper)", $"{r}^2 x ({soft / 1000} + {helper / 1000})", k / 1000, "N/mm");
            return k;
        }
    }
}
