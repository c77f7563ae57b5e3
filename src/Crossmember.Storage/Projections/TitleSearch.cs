using Crossmember.Builds.Journal;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Projections;

/// <summary>Where a title was found.</summary>
/// <param name="Build">Title of the build.</param>
/// <param name="Item">Title of the item that it is, or is an option of.</param>
public sealed record TitleHit(string Stream, string Subject, string Title, string Build, string Item)
{
    /// <summary>The id of the item.</summary>
    public string Slot => Subject.Split('/')[1];

    public bool IsOption => Subject.Split('/').Length > 3;
}

/// <summary>Full text over the titles of slots and options.</summary>
public sealed class TitleSearch : IProjection
{
    private static readonly string[] s_titled = [EntryKind.SlotDefined.Name, EntryKind.OptionStated.Name];

    public string Name => "search";

    public int Version => 1;

    public void Apply(IReadOnlyList<Entry> entries, SqliteConnection db)
    {
        var titled = entries.Where(e => s_titled.Contains(e.Fact.Kind)).Select(e => (e.Fact.Stream, e.Fact.Subject, e.Fact.Kind)).Distinct();
        foreach (var (stream, subject, kind) in titled)
        {
            db.Run("DELETE FROM Search WHERE Stream = $stream AND Subject = $subject", ("$stream", stream), ("$subject", subject));
            if (Titles.Standing(db, stream, subject, kind) is { } title)
                db.Run("INSERT INTO Search (Stream, Subject, Title) VALUES ($stream, $subject, $title)", ("$stream", stream), ("$subject", subject), ("$title", title));
        }
    }

    public void Clear(SqliteConnection db) => db.Run("DELETE FROM Search");

    /// <summary>Titles that have every word typed, or a word that begins with it; best first.</summary>
    internal static IReadOnlyList<TitleHit> Find(SqliteConnection db, string typed, int most)
    {
        // Each word in quotes: what people type is never read as a query language. A dash alone is no word.
        var words = typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Where(w => w.Any(char.IsLetterOrDigit))
            .Select(w => $"\"{w.Replace("\"", "\"\"", StringComparison.Ordinal)}\"*").ToList();
        if (words.Count == 0) return [];
        var found = db.Command("""
            SELECT s.Stream, s.Subject, s.Title, coalesce(b.Title, s.Stream) FROM Search s LEFT JOIN Builds b ON b.Id = s.Stream
            WHERE Search MATCH $words ORDER BY rank, s.Stream, s.Subject LIMIT $most
            """, ("$words", $"Title : ({string.Join(" AND ", words)})"), ("$most", most))
            .Rows(r => new TitleHit(r.GetString(0), r.GetString(1), r.GetString(2), r.GetString(3), r.GetString(2)));
        var items = Items(db, [.. found.Where(f => f.IsOption).Select(f => "slots/" + f.Slot).Distinct()]);
        return [.. found.Select(f => f.IsOption ? f with { Item = items.GetValueOrDefault((f.Stream, "slots/" + f.Slot), f.Slot) } : f)];
    }

    /// <summary>Titles of the items that options belong to, in one pass over the index: it is not ordered by subject.</summary>
    private static Dictionary<(string Stream, string Subject), string> Items(SqliteConnection db, List<string> subjects) => subjects.Count == 0 ? [] :
        db.Command("SELECT Stream, Subject, Title FROM Search WHERE Subject IN (SELECT value FROM json_each($subjects))", ("$subjects", System.Text.Json.JsonSerializer.Serialize(subjects)))
            .Rows(r => (r.GetString(0), r.GetString(1), r.GetString(2))).ToDictionary(r => (r.Item1, r.Item2), r => r.Item3);
}
