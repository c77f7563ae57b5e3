using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>The spring rate that keeps an axle's height and ride for all its loads, and what to ask the spring works for.</summary>
/// <remarks>
/// Formula:  height k >= (mh - ml) g / (2 tol); ride (2 pi 1.2)^2 mh' &lt;= k &lt;= (2 pi 2)^2 ml', m' = (m - unsprung) / 2; chosen: the geometric mean of what is left
/// Valid:    straight-line springs; where nothing is left one rate cannot do it
/// Source:   rate and free vibration, docs/derivations/springs.md; 1.2 to 2 Hz: common practice, no source
/// Example:  900 and 1300 kg, 180 kg unsprung, 75 mm -> 31.8 to 56.8 N/mm
/// </remarks>
public sealed class RestoringRate() : Calculation<RestoringRate.Inputs, RestoringRate.Result>(new()
{
    Id = "springs.restore",
    Version = 1,
    Title = "Springs that restore height and ride",
    Purpose = "What to order when the load has changed: the rate that keeps the height between empty and loaded and still rides, the height to ask for, and about "
        + "how many leaves that takes. Or the plain answer that no single rate does it.",
    Formula = "k >= (heaviest - lightest) g / (2 x tolerance); (2 pi x 1.2 Hz)^2 x heaviest sprung <= k <= (2 pi x 2 Hz)^2 x lightest sprung, each wheel",
    Validity = "Straight-line springs. Where the lowest rate for the height is above the highest for the ride, only a helper, a progressive or an adjustable spring does both. "
        + "A present spring with a helper is held against them by the rates on which it stands empty and loaded and by the height that it loses between. Leaf count and thickness are hints for the spring works: same length, width and steel.",
    Sources = ["Rate and free vibration, derived (docs/derivations/springs.md)", "1.2 to 2 Hz: common practice, no source"],
    Checks = [new("one-rate", null, "Does one rate keep both height and ride?"), new("present", null, "Is the present rate such a one?", "wheelRate")],
    Trends =
    [
        new("tolerance", "rateForHeight", '-', 20, 150), new("unsprungMass", "stiffestForRide", '-', 80, 400), new("originalHeight", "heightAtHeaviest", '+', 100, 300),
        new("presentHeights", "raise", '-', 100, 200), new("thickness", "thicknessNeeded", '+', 5, 12),
    ],
    NoTrends =
    [
        new("presentRates", "only compared with the result"), new("loads", "the heaviest and the lightest pull apart"), new("wheelRate", "only compared with the result"), new("leafRate", "turns the rate found into leaves"),
        new("leaves", "whole leaves only"), new("fullLength", "whole leaves only"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["loads"] = """{"empty":"900 kg","loaded":"1300 kg"}""", ["unsprungMass"] = "180 kg", ["tolerance"] = "75 mm", ["wheelRate"] = "30 N/mm", ["originalHeight"] = "200 mm",
                ["presentHeights"] = """{"empty":"190 mm","loaded":"125 mm"}""", ["leafRate"] = "30 N/mm", ["leaves"] = "7", ["fullLength"] = "2", ["thickness"] = "7 mm",
            },
            new Dictionary<string, double>
            {
                ["rateForHeight"] = 26.151, ["softestForRide"] = 31.835, ["stiffestForRide"] = 56.849, ["rate"] = 42.541, ["heightAtHeaviest"] = 176.95, ["raise"] = 51.95,
                ["leavesNeeded"] = 11, ["thicknessNeeded"] = 7.864,
            }, 0.0005, "400 x 9.80665 / 150; 560 x (2 pi 1.2)^2 and 360 x (4 pi)^2; sqrt of both; 200 - 46.1 / 2; (16 x 1.4180 - 2) / 2 = 10.3; 7 x 1.4180^(1/3); by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["loads"] = """{"empty":"700 kg","loaded":"1700 kg"}""", ["unsprungMass"] = "180 kg", ["tolerance"] = "50 mm" },
            new Dictionary<string, double> { ["rateForHeight"] = 98.067, ["softestForRide"] = 43.205, ["stiffestForRide"] = 41.057 }, 0.0005,
            "1000 x 9.80665 / 100; 760 x (2 pi 1.2)^2 and 260 x (4 pi)^2; no rate left; by hand", Provenance.Derived),
    ],
    Cautions = [UBolts, Stops, "More rate or arch at one end moves brake balance, shaft angles, brake hoses and headlamp aim: look at all of them.", StoredEnergy, Qualified],
})
{
    public sealed record Inputs(
        [Input("load on the axle, in each state of load", "kg", MoreThan = 0, High = 10000, Measure = "put the axle on a scale in each state of load")] Members<UnitsNet.Mass> Loads,
        [Input("mass of the unsprung parts of the axle", "kg", AtLeast = 0, High = 1500, Measure = HowToMeasureSprings.UnsprungMass)] UnitsNet.Mass UnsprungMass,
        [Input("how much lower it may stand loaded than empty", "mm", MoreThan = 0, Low = 10, High = 200, Default = 75, Measure = "ask the customer; 2 to 3 in is usual")] Length Tolerance,
        [Input("present spring rate at one wheel", "N/mm", MoreThan = 0, High = 1000, Measure = HowToMeasureSprings.WheelRate)] ForcePerLength? WheelRate,
        [Input("height over the axle center as it was built", "mm", Low = -300, High = 1000, Measure = "take it from the maker's handbook, or from an unaltered vehicle")] Length? OriginalHeight,
        [Input("height over the axle center now, in each state of load", "mm", Low = -300, High = 1000, Measure = HowToMeasureSprings.Height)] Members<Length>? PresentHeights,
        [Input("rate at one wheel now with a helper as far as it touches, in each state of load", "N/mm", MoreThan = 0, High = 2000, Measure = "comes from the ride height")]
        Members<ForcePerLength>? PresentRates,
        [Input("rate of the present leaf spring", "N/mm", MoreThan = 0, High = 1000, Measure = "measure the leaves")] ForcePerLength? LeafRate,
        [Input("its number of leaves", MoreThan = 0, Low = 1, High = 20, Measure = LeafPack.HowLeaves)] Ratio? Leaves,
        [Input("how many of them are of full length", AtLeast = 0, High = 5, Measure = LeafPack.HowFull)] Ratio? FullLength,
        [Input("thickness of its leaves", "mm", MoreThan = 0, Low = 3, High = 25, Measure = LeafPack.HowThickness)] Length? Thickness);

    public sealed record Result(
        [Output("least rate that keeps the height", "N/mm")] ForcePerLength RateForHeight,
        [Output("least rate that does not wallow loaded", "N/mm")] ForcePerLength? SoftestForRide,
        [Output("largest rate that still rides empty", "N/mm")] ForcePerLength? StiffestForRide,
        [Output("rate to ask for, at one wheel; unknown where no single rate does it", "N/mm")] ForcePerLength? Rate,
        [Output("height over the axle to ask for under the heaviest load", "mm")] Length? HeightAtHeaviest,
        [Output("how much higher that is than now", "mm")] Length? Raise,
        [Output("leaves for it, of the present thickness")] Ratio? LeavesNeeded,
        [Output("thickness of leaf for it, at the present number", "mm")] Length? ThicknessNeeded);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var (heaviest, high) = x.Loads.Items.MaxBy(l => l.Value.Kilograms);
        double most = high.Kilograms, least = x.Loads.Items.Min(l => l.Value.Kilograms), unsprung = x.UnsprungMass.Kilograms; // kg
        var forHeight = (most - least) * Gravity / (2 * x.Tolerance.Meters); // N/m
        w.Line("k height", "(heaviest - lightest) g / (2 tolerance)", $"({most} - {least}) x {Gravity} / (2 x {x.Tolerance.Millimeters})", forHeight / 1000, "N/mm");
        if (least <= unsprung)
        {
            w.Answer("one-rate", Verdict.Fail, $"The unsprung parts, {unsprung:0} kg, weigh as much as the axle's load, {least:0} kg: weigh both again.");
            return new(ForcePerLength.FromNewtonsPerMeter(forHeight), null, null, null, null, null, null, null);
        }
        double soft = Rated(RideFrequency.Slowest, most - unsprung), stiff = Rated(RideFrequency.Fastest, least - unsprung), low = Math.Max(forHeight, soft); // N/m
        w.Line("k soft", "(2 pi f)^2 m", $"(2 pi x {RideFrequency.Slowest})^2 x {(most - unsprung) / 2}", soft / 1000, "N/mm");
        w.Line("k stiff", "(2 pi f)^2 m", $"(2 pi x {RideFrequency.Fastest})^2 x {(least - unsprung) / 2}", stiff / 1000, "N/mm");
        double? rate = low <= stiff ? Math.Sqrt(low * stiff) : null; // N/m
        Answer(x, w, low, stiff, forHeight > soft);
        if (Staged(x, heaviest) is { } staged) Helped(x, w, staged, soft, stiff);
        else if (x.WheelRate is { } present) Present(w, present.NewtonsPerMeter, low, stiff);
        var height = x.OriginalHeight?.Meters - ((most - least) * Gravity / (4 * rate)); // m
        var now = x.PresentHeights?.Items.Where(i => i.Name == heaviest).Select(i => (double?)i.Value.Meters).FirstOrDefault();
        var (leaves, thickness) = Leafed(x, rate);
        return new(ForcePerLength.FromNewtonsPerMeter(forHeight), Rate(soft), Rate(stiff), Rate(rate), Meters(height), Meters(height - now),
            leaves is { } n ? Ratio.FromDecimalFractions(n) : null, Meters(thickness));
    }

    private static double Rated(double hertz, double sprung) => Math.Pow(2 * Math.PI * hertz, 2) * sprung / 2;

    private static void Answer(Inputs x, Worksheet w, double low, double stiff, bool byHeight)
    {
        var one = low <= stiff;
        w.Answer("one-rate", one ? Verdict.Pass : Verdict.Caution, one
            ? $"From {low / 1000:0} N/mm to {stiff / 1000:0} N/mm at each wheel one spring keeps both height and ride."
            : $"No single rate does it: {(byHeight ? "the height" : "the ride loaded")} asks for {low / 1000:0} N/mm or more, the ride empty for {stiff / 1000:0} N/mm or less. "
                + "A helper that touches later, a progressive spring or air does; or allow more height to be lost, or carry less.", null, null, Practice);
    }

    /// <summary>One straight-line spring against the range for both.</summary>
    private static void Present(Worksheet w, double k, double low, double stiff)
    {
        var good = k >= low && k <= stiff;
        w.Answer("present", good ? Verdict.Pass : Verdict.Caution, good ? $"The present {k / 1000:0.#} N/mm is such a rate."
            : k < low && k > stiff ? $"The present {k / 1000:0.#} N/mm lies between, but no single rate does it."
            : k < low ? $"The present {k / 1000:0.#} N/mm is too soft: {low / 1000:0.#} N/mm or more keep it up."
            : $"The present {k / 1000:0.#} N/mm rides hard empty: {stiff / 1000:0.#} N/mm or less are usual.", k / 1000, "N/mm", Practice);
    }

    /// <summary>Rates (N/m) at the lightest and at the heaviest load, and the height lost between (m), where a helper touches at the heaviest.</summary>
    private static (double Light, double Heavy, double? Lost)? Staged(Inputs x, string heaviest)
    {
        var lightest = x.Loads.Items.MinBy(l => l.Value.Kilograms).Name;
        double? At(string name) => x.PresentRates?.Items.Where(i => i.Name == name).Select(i => (double?)i.Value.NewtonsPerMeter).FirstOrDefault();
        double? Height(string name) => x.PresentHeights?.Items.Where(i => i.Name == name).Select(i => (double?)i.Value.Meters).FirstOrDefault();
        return At(lightest) is { } light && At(heaviest) is { } heavy && heavy > 1.001 * Math.Min(light, x.WheelRate?.NewtonsPerMeter ?? light) ? (light, heavy, Height(lightest) - Height(heaviest)) : null;
    }

    /// <summary>A spring whose helper touches: height by what it loses, ride by the rate on which it stands.</summary>
    private static void Helped(Inputs x, Worksheet w, (double Light, double Heavy, double? Lost) now, double soft, double stiff)
    {
        var both = now.Heavy > 1.001 * now.Light ? $"{now.Light / 1000:0.#} N/mm empty and {now.Heavy / 1000:0.#} N/mm loaded with its helper" : $"{now.Heavy / 1000:0.#} N/mm with its helper";
        var sinks = now.Lost > x.Tolerance.Meters + 1e-6;
        var (verdict, text) = sinks ? (Verdict.Caution, $"The present spring, {both}, loses {1000 * now.Lost:0} mm of height; {x.Tolerance.Millimeters:0} mm were asked for.")
            : now.Heavy < soft ? (Verdict.Caution, $"The present {both} is too soft: {soft / 1000:0.#} N/mm or more ride well loaded.")
            : now.Light > stiff ? (Verdict.Caution, $"The present {both} rides hard empty: {stiff / 1000:0.#} N/mm or less are usual.")
            : now.Lost is { } lost ? (Verdict.Pass, $"The present spring, {both}, loses {1000 * lost:0} mm of height and rides as such vehicles do.")
            : (Verdict.Unknown, $"The present spring, {both}, rides as such vehicles do; its height loaded is not known: tape it empty and loaded.");
        w.Answer("present", verdict, text, now.Heavy / 1000, "N/mm", Practice);
    }

    /// <summary>Whole leaves of the present thickness, and thickness (m) at the present number, for a rate.</summary>
    private static (double? Leaves, double? Thickness) Leafed(Inputs x, double? rate)
    {
        if (rate is not { } k || x.LeafRate is not { } leaf) return (null, null);
        var more = k / leaf.NewtonsPerMeter;
        double? leaves = null;
        if (x.Leaves?.DecimalFractions is { } n && (x.FullLength?.DecimalFractions ?? 1) is var full && full <= n)
            leaves = Math.Ceiling(((((2 * n) + full) * more) - full) / 2);
        return (leaves, x.Thickness?.Meters * Math.Cbrt(more));
    }
}
