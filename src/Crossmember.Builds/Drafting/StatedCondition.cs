using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Drafting;

/// <summary>Finds what was said of who and what is on board, as it was written.</summary>
public static class StatedCondition
{
    /// <summary>The payload as it stands; null where nobody has stated the condition.</summary>
    public static JsonObject? Of(IEnumerable<Entry> entries, string condition) => Last(entries, EntryKind.ConditionStated, $"conditions/{condition}");

    /// <summary>What the build was opened with, or what was said of it since: its title and its sets.</summary>
    public static JsonObject? Opening(IEnumerable<Entry> entries) => Last(entries, EntryKind.BuildOpened, EntryKind.BuildOpened.Subject);

    /// <summary>The opening with one more loading condition; null where nobody has opened the build.</summary>
    public static JsonObject? Opened(IEnumerable<Entry> entries, string condition)
    {
        if (Opening(entries) is not { } opening) return null;
        if (opening["sets"] is not JsonObject sets) opening["sets"] = sets = [];
        if (sets["condition"] is not JsonArray conditions) sets["condition"] = conditions = [];
        conditions.Add((JsonNode?)condition);
        return opening;
    }

    private static JsonObject? Last(IEnumerable<Entry> entries, EntryKind kind, string subject)
    {
        var standing = Corrections.Effective(entries.Where(e => e.Fact.Subject == subject && e.Fact.Kind == kind.Name));
        return standing.Count == 0 ? null : standing[^1].Payload.DeepClone() as JsonObject;
    }
}
