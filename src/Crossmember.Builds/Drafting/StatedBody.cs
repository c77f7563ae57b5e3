using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Drafting;

/// <summary>Finds what was said of an option, as it was written.</summary>
public static class StatedBody
{
    /// <summary>The body as it stands; null where nobody has stated the option.</summary>
    public static JsonObject? Of(IEnumerable<Entry> entries, string slot, string option)
    {
        var subject = $"slots/{slot}/options/{option}";
        var standing = Corrections.Effective(entries.Where(e => e.Fact.Subject == subject && e.Fact.Kind == EntryKind.OptionStated.Name));
        return standing.Count == 0 ? null : standing[^1].Payload.DeepClone() as JsonObject;
    }

    /// <summary>A part of the shelf or of a price list as the body of an option: copied in with the id of its source, never linked.</summary>
    public static JsonObject Copied(StockPart part)
    {
        var body = part.Body is { } own ? JsonNode.Parse(own) as JsonObject ?? [] : [];
        body["title"] ??= part.Title;
        body["class"] ??= "replace";
        if (part.Each is { } each) body["prices"] ??= new JsonArray(Price(part, each.ToString()));
        if (part.Lead is { Length: > 0 } lead) body["lead"] ??= lead;
        body["stock"] = part.Id;
        return body;
    }

    private static JsonObject Price(StockPart part, string each)
    {
        var line = new JsonObject { ["id"] = "price", ["what"] = part.Title, ["count"] = 1, ["each"] = each, ["category"] = part.Category ?? "parts" };
        if (part.Until is { } until) line["until"] = until;
        return line;
    }
}
