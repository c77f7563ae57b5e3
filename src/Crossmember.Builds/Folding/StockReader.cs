using System.Text.Json;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Reads a part of the shelf or of a price list.</summary>
public static class StockReader
{
    /// <summary>Null with a fault. Whoever writes new parts calls <see cref="ObjectReader.Done"/> as well.</summary>
    public static StockPart? Read(ObjectReader r, string id)
    {
        var before = r.Faults.Count;
        var title = r.OptionalText("title") ?? id;
        var each = r.OptionalText("each") is { } text ? CostReader.Amount(text, r.At("each"), r.Faults) : null;
        if (each is { Amount: < 0 }) r.Faults.Add(r.At("each"), $"a price of {each}", "zero or more");
        var category = r.OptionalText("category");
        if (category is not null && !CostReader.Categories.Contains(category)) r.Faults.Add(r.At("category"), $"'{category}' is no category", string.Join(", ", CostReader.Categories));
        var onHand = r.OptionalNumber("onHand");
        if (onHand is < 0 or > 1e6) r.Faults.Add(r.At("onHand"), $"{onHand} on the shelf", "zero to a million");
        var body = r.Element("option") is { ValueKind: JsonValueKind.Object } option ? option.GetRawText() : null;
        var part = new StockPart(id, title, r.OptionalText("number"), r.OptionalText("vendor"), each, category, r.OptionalText("lead"), (decimal?)onHand, r.OptionalText("until"), body);
        return r.Faults.Count == before ? part : null;
    }
}
