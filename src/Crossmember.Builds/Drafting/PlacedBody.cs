using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Drafting;

/// <summary>States a mass item with another place, and leaves every other word as it was written.</summary>
public static class PlacedBody
{
    /// <summary>The payload that puts the item there: a whole option body or a whole list of what is on board. Null where nobody has stated such an item.</summary>
    /// <param name="at">Three lengths with their units: x to the rear, y to the right, z up.</param>
    public static JsonObject? Of(Build build, IReadOnlyList<Entry> entries, MassRef which, IReadOnlyList<string> at)
    {
        var place = new JsonArray([.. at.Select(a => (JsonNode?)a)]);
        if (which.Condition is { } condition)
        {
            if (StatedCondition.Of(entries, condition) is not { } aboard || Find(aboard["items"], which.Item) is not { } item) return null;
            item["at"] = place;
            return aboard;
        }
        if (build.Find(which.Slot!) is not { } slot || StatedBody.Of(entries, slot.Id, which.Option!) is not { } body) return null;
        if (Find(body["masses"], which.Item) is { } own) own["at"] = place;
        else if (Inherited(slot, entries, body, which.Item) is { } source)
        {
            source["at"] = place;
            if (body["masses"] is JsonArray list) list.Add((JsonNode?)source);
            else body["masses"] = new JsonArray(source);
        }
        else return null;
        return body;
    }

    private static JsonObject? Find(JsonNode? list, string item) =>
        (list as JsonArray)?.OfType<JsonObject>().FirstOrDefault(m => DraftReader.Text(m["id"]) == item && m["drop"]?.GetValueKind() != System.Text.Json.JsonValueKind.True);

    /// <summary>As the option says it that this one starts from: it is stated anew on this one, the other stays as it is.</summary>
    private static JsonObject? Inherited(Slot slot, IReadOnlyList<Entry> entries, JsonObject body, string item)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var like = DraftReader.Text(body["like"]); like.Length > 0 && seen.Add(like);)
        {
            if (StatedBody.Of(entries, slot.Id, like) is not { } source) return null;
            if (Find(source["masses"], item) is { } found) return found.DeepClone() as JsonObject;
            like = DraftReader.Text(source["like"]);
        }
        return null;
    }
}
