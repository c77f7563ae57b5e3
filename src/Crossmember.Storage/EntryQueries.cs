using System.Text;
using System.Text.Json;
using Crossmember.Builds.Journal;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage;

/// <summary>Reads entries, heads and held facts; used alone and inside the appending transaction.</summary>
internal static class EntryQueries
{
    private const string Columns = "SELECT Fact, Sequence, Recorded, Previous, Hash FROM Entries";
    private const string HeldColumns = "SELECT Fact, Received, Met, Reason, DecidedBy, DecidedAt, ReleasedAs, Why FROM Held";

    // Kinds unknown here count as ordered: a newer program may have meant them so.
    private static readonly string s_ordered =
        $"Kind NOT IN ({string.Join(',', EntryKind.All.Where(k => k.Nature == EntryNature.Log).Select(k => $"'{k.Name}'"))})";

    public static IReadOnlyList<Entry> Read(this SqliteConnection db, string stream, long after, long upTo) =>
        db.Command($"{Columns} WHERE Stream = $stream AND Sequence > $after AND Sequence <= $upTo ORDER BY Sequence",
            ("$stream", stream), ("$after", after), ("$upTo", upTo)).Rows(Entry);

    /// <summary>Entries by their numbers; the list travels as one JSON parameter, so its length does not matter.</summary>
    public static IReadOnlyList<Entry> Pick(this SqliteConnection db, string stream, IReadOnlyList<long> sequences) =>
        db.Command($"{Columns} WHERE Stream = $stream AND Sequence IN (SELECT value FROM json_each($sequences)) ORDER BY Sequence",
            ("$stream", stream), ("$sequences", $"[{string.Join(',', sequences)}]")).Rows(Entry);

    /// <summary>All entries on exactly this subject, in order.</summary>
    public static IReadOnlyList<Entry> On(this SqliteConnection db, string stream, string subject) =>
        db.Command($"{Columns} WHERE Stream = $stream AND Subject = $subject ORDER BY Sequence", ("$stream", stream), ("$subject", subject)).Rows(Entry);

    public static Entry? Find(this SqliteConnection db, Guid factId) =>
        db.Command($"{Columns} WHERE FactId = $id", ("$id", FactText.Id(factId))).Rows(Entry).SingleOrDefault();

    public static Head Head(this SqliteConnection db, string stream) =>
        db.Command("SELECT Sequence, Hash FROM Heads WHERE Stream = $stream", ("$stream", stream))
            .Rows(r => new Head(r.GetInt64(0), r.GetFieldValue<byte[]>(1))).SingleOrDefault() ?? Builds.Journal.Head.Empty;

    public static IReadOnlyList<string> Streams(this SqliteConnection db) => db.Command("SELECT Stream FROM Heads ORDER BY Stream").Rows(r => r.GetString(0));

    /// <summary>The last ordered entry on the subject, above it or beneath it: three look-ups by index.</summary>
    public static Entry? LastOn(this SqliteConnection db, string stream, string subject)
    {
        var last = 0L;
        foreach (var exact in Subject.Above(subject).Prepend(subject))
            last = Math.Max(last, Last(db, $"Subject = $subject AND {s_ordered}", stream, exact));
        // '0' is the character after '/': between the two lies all that is beneath the subject, and nothing else.
        last = Math.Max(last, Last(db, $"Subject > $subject || '/' AND Subject < $subject || '0' AND {s_ordered}", stream, subject));
        return last == 0 ? null : db.Read(stream, last - 1, last)[0];
    }

    private static long Last(SqliteConnection db, string where, string stream, string subject)
    {
        using var command = db.Command($"SELECT coalesce(max(Sequence), 0) FROM Entries WHERE Stream = $stream AND {where}", ("$stream", stream), ("$subject", subject));
        return (long)command.ExecuteScalar()!;
    }

    public static IReadOnlyList<HeldFact> Waiting(this SqliteConnection db, string stream) =>
        db.Command($"{HeldColumns} WHERE Stream = $stream AND DecidedBy IS NULL ORDER BY Place", ("$stream", stream)).Rows(HeldFact);

    public static IReadOnlyList<HeldFact> WaitingBatch(this SqliteConnection db, Guid batch) =>
        db.Command($"{HeldColumns} WHERE Batch = $batch AND DecidedBy IS NULL ORDER BY Place", ("$batch", FactText.Id(batch))).Rows(HeldFact);

    public static HeldFact? FindHeld(this SqliteConnection db, Guid factId) =>
        db.Command($"{HeldColumns} WHERE FactId = $id", ("$id", FactText.Id(factId))).Rows(HeldFact).SingleOrDefault();

    private static Entry Entry(SqliteDataReader row)
    {
        var utf8 = row.GetFieldValue<byte[]>(0);
        return new(Fact(utf8), Encoding.UTF8.GetString(utf8), row.GetInt64(1), Instant(row.GetString(2)), row.GetFieldValue<byte[]>(3), row.GetFieldValue<byte[]>(4));
    }

    private static HeldFact HeldFact(SqliteDataReader row)
    {
        var utf8 = row.GetFieldValue<byte[]>(0);
        var decision = row.TextOrNull(4) is { } by ? new HeldDecision(by, Instant(row.GetString(5)), Id(row.TextOrNull(6)), row.GetString(7)) : null;
        return new(Fact(utf8), Encoding.UTF8.GetString(utf8), Instant(row.GetString(1)), Id(row.TextOrNull(2)), row.GetString(3), decision);
    }

    private static Fact Fact(byte[] utf8)
    {
        try { return KeptFact.Read(utf8); }
        catch (JsonException e) { throw new InvalidDataException("a kept fact cannot be read; run verify", e); }
    }

    private static DateTimeOffset Instant(string text) => Instants.Read(text) ?? throw new InvalidDataException($"'{text}' is no kept instant; run verify");

    private static Guid? Id(string? text) => text is null ? null : Guid.Parse(text);
}
