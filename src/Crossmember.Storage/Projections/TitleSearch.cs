using Crossmember.Builds.Journal;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Projections;

/// <summary>Where a title was found.</summary>
public sealed record TitleHit(string Stream, string Subject, string Title);

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
        return words.Count == 0
            ? []
            : db.Command("SELECT Stream, Subject, Title FROM Search WHERE Search MATCH $words ORDER BY rank, Stream, Subject LIMIT $most",
                ("$words", $"Title : ({string.Join(" AND ", words)})"), ("$most", most)).Rows(r => new TitleHit(r.GetString(0), r.GetString(1), r.GetString(2)));
    }
}
