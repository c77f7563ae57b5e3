using System.Globalization;
using System.Text.Json;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;
using Crossmember.Planning;

namespace Crossmember.Builds.Folding;

/// <summary>Reads prices and hours.</summary>
public static class CostReader
{
    private const double LargestMean = 1e6;

    public static readonly string[] Categories = ["parts", "materials", "freight", "core", "outside-work", "supplies"];

    public static PriceLine? Price(ObjectReader r)
    {
        var id = r.Text("id");
        if (r.OptionalFlag("drop") == true) return new(id, null, 0, null, null, null, null, true);
        var count = r.OptionalNumber("count") ?? 1;
        if (count is < 0 or > 1e6) r.Faults.Add(r.At("count"), $"a count of {count}", "zero to a million");
        var each = r.Text("each") is { Length: > 0 } text ? Amount(text, r.At("each"), r.Faults) : null;
        var category = r.Text("category");
        if (category.Length > 0 && !Categories.Contains(category)) r.Faults.Add(r.At("category"), $"'{category}' is no category", string.Join(", ", Categories));
        return new(id, r.OptionalText("what"), (decimal)Math.Clamp(count, 0, 1e6), each, category, r.OptionalText("quote"), r.OptionalText("until"));
    }

    public static HoursLine? Hours(ObjectReader r)
    {
        var trade = r.Text("trade");
        if (trade.Length > 0 && !Subject.Fits("trades/" + trade, EntryKind.TradeRated.Subject)) r.Faults.Add(r.At("trade"), $"'{trade}' is no name of a trade", "words without slashes");
        if (r.OptionalFlag("drop") == true) return new(trade, null, [], true);
        var driver = r.Map("driver").Select(d => KeyValuePair.Create(d.Name, r.NumberOf(d.Value, d.Pointer) ?? 0)).ToList();
        if (driver.Sum(d => d.Value * d.Value) > 1 + 1e-12) r.Faults.Add(r.At("driver"), "the squares of the drivers add to more than 1", "at most 1");
        if (r.Object("distribution") is { } d2) return new(trade, DistributionOf(d2), [.. driver]);
        r.Missing("distribution");
        return new(trade, null, [.. driver]);
    }

    public static Money? Amount(string text, string pointer, Faults faults)
    {
        if (!Money.TryParse(text, out var money, out var wrong)) faults.Add(pointer, wrong, "an amount and its currency, such as \"310.00 USD\"");
        else return money;
        return null;
    }

    public static Distribution? DistributionOf(ObjectReader r)
    {
        Distribution? made = r.Text("kind") switch
        {
            "fixed" => new Distribution.Fixed(r.Number("value")),
            "uniform" => new Distribution.Uniform(r.Number("low"), r.Number("high")),
            "triangular" => new Distribution.Triangular(r.Number("low"), r.Number("mode"), r.Number("high")),
            "pert" => new Distribution.Pert(r.Number("low"), r.Number("mode"), r.Number("high")),
            "lognormal" => new Distribution.Lognormal(r.Number("median"), r.Number("factor")),
            var kind => Unknown(r, kind),
        };
        if (made is not null) r.Done();
        return made is null || InOrder(made, r) ? made : null;
    }

    private static Distribution? Unknown(ObjectReader r, string kind)
    {
        r.Faults.Add(r.At("kind"), $"'{kind}' is no kind of distribution", "fixed, uniform, triangular, pert or lognormal");
        return null;
    }

    private static bool InOrder(Distribution d, ObjectReader r)
    {
        var wrong = d switch
        {
            Distribution.Fixed f => f.Value < 0 ? "a value below zero" : null,
            Distribution.Uniform u => u.Low < 0 || u.Low > u.High ? "low and high out of order" : null,
            Distribution.Triangular t => t.Low < 0 || t.Low > t.Mode || t.Mode > t.High ? "low, mode and high out of order" : null,
            Distribution.Pert p => p.Low < 0 || p.Low > p.Mode || p.Mode > p.High ? "low, mode and high out of order" : null,
            Distribution.Lognormal l => l.Median <= 0 || l.Factor < 1 ? "a median of zero or a factor below 1" : null,
            _ => null,
        };
        // What grows without bound would overflow every sum it enters.
        if (wrong is null && !(d.Mean <= LargestMean)) wrong = "a mean of more than a million";
        if (wrong is null) return true;
        r.Faults.Add(r.Pointer, wrong, "0 <= low <= mode <= high; median more than 0, factor at least 1; a mean of at most a million");
        return false;
    }

    /// <summary>A fraction such as a tax rate, exactly as written.</summary>
    public static decimal? Fraction(JsonElement e, string pointer, Faults faults)
    {
        if (e.ValueKind == JsonValueKind.Number && decimal.TryParse(e.GetRawText(), NumberStyles.Float, CultureInfo.InvariantCulture, out var d) && d is >= 0 and <= 1) return d;
        faults.Add(pointer, $"{e.GetRawText()} is no share", "a number from 0 to 1");
        return null;
    }
}
