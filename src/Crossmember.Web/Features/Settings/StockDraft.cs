using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.Settings;

/// <summary>A part as it is being typed: every field is text until it is kept.</summary>
public sealed class StockDraft
{
    private const int LongestText = 120;

    public string Title { get; set; } = "";

    public string Number { get; set; } = "";

    public string Vendor { get; set; } = "";

    public string Each { get; set; } = "";

    public string Category { get; set; } = "parts";

    public string Lead { get; set; } = "";

    public string OnHand { get; set; } = "";

    public string Until { get; set; } = "";

    /// <summary>What an option copied from it brings besides; only carried along.</summary>
    public string? Body { get; private init; }

    public static StockDraft Of(StockPart part) => new()
    {
        Title = part.Title, Number = part.Number ?? "", Vendor = part.Vendor ?? "", Each = part.Each?.ToString() ?? "", Category = part.Category ?? "",
        Lead = part.Lead ?? "", OnHand = part.OnHand?.ToString(CultureInfo.InvariantCulture) ?? "", Until = part.Until ?? "", Body = part.Body,
    };

    /// <summary>The payload, or null with faults, each at its field.</summary>
    public JsonObject? Read(string? books, Faults faults)
    {
        if (Title.Trim().Length == 0) faults.Add("title", "the part has no title", "write what it is called");
        foreach (var (field, text) in new[] { ("title", Title), ("number", Number), ("vendor", Vendor), ("lead", Lead) })
            if (text.Length > LongestText) faults.Add(field, $"{text.Length} characters", $"at most {LongestText}");
        var payload = new JsonObject { ["title"] = Title.Trim() };
        Put("number", Number);
        Put("vendor", Vendor);
        if (Each.Trim().Length > 0 && At("each", inner => Typed.Amount(Each.Trim(), books, inner)) is { } each) payload["each"] = each.ToString();
        if (Category.Length > 0 && !CostReader.Categories.Contains(Category)) faults.Add("category", $"'{Category}' is no category", string.Join(", ", CostReader.Categories));
        Put("category", Category);
        Put("lead", Lead);
        if (OnHand.Trim().Length > 0)
        {
            if (decimal.TryParse(OnHand.Trim(), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var count) && count <= 1_000_000) payload["onHand"] = count;
            else faults.Add("onHand", $"'{OnHand}' is no count", "a number from 0 to a million, such as 4 or 2.5");
        }
        if (Until.Length > 0 && PriceHeld.LastDay(Until) is null) faults.Add("until", $"'{Until}' is no day", "year, month and day, such as 2026-12-31");
        Put("until", Until);
        if (Body is { } body) payload["option"] = JsonNode.Parse(body);
        return faults.Any ? null : payload;

        void Put(string key, string text)
        {
            if (key != "title" && text.Trim().Length > 0) payload[key] = text.Trim();
        }

        T At<T>(string field, Func<Faults, T> read)
        {
            var inner = new Faults();
            var result = read(inner);
            foreach (var fault in inner.List) faults.Add(field, fault.Wrong, fault.Right);
            return result;
        }
    }
}
