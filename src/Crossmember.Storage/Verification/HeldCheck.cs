using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Verification;

/// <summary>Compares the columns of held facts with their text, and releases with the entries they became. Held facts have no chain: they lie outside every stream.</summary>
internal static class HeldCheck
{
    public static IEnumerable<Problem> Check(SqliteConnection db) =>
        db.Command("SELECT h.FactId, h.Stream, h.Batch, h.Fact, h.ReleasedAs, e.Fact FROM Held h LEFT JOIN Entries e ON e.FactId = h.ReleasedAs ORDER BY h.Place")
            .Rows(r => Row(r.GetString(0), r.GetString(1), r.TextOrNull(2), r.GetString(3), r.TextOrNull(4), r.TextOrNull(5))).SelectMany(p => p);

    private static List<Problem> Row(string id, string stream, string? batch, string text, string? releasedAs, string? entry)
    {
        var faults = new Faults();
        if (FactText.Read(text, faults) is not { } fact) return [new("held", null, id, $"cannot be read: {faults.List[0]}")];
        var problems = new List<Problem>();
        if (FactText.Id(fact.Id) != id) problems.Add(new("held", null, id, "FactId is not the one in the fact"));
        if (fact.Stream != stream) problems.Add(new("held", null, id, "Stream is not the one in the fact"));
        if (fact.Batch is { } b ? FactText.Id(b) != batch : batch is not null) problems.Add(new("held", null, id, "Batch is not the one in the fact"));
        if (releasedAs is not null && (entry is null || FactText.Read(entry, new())?.Releases != fact.Id))
            problems.Add(new("held", null, id, "ReleasedAs names no entry that releases it"));
        return problems;
    }
}
