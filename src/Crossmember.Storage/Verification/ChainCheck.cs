using System.Text;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Crossmember.Storage.Rows;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Verification;

/// <summary>Recomputes every chain from its first entry and compares each column with the fact's text.</summary>
internal static class ChainCheck
{
    public static IEnumerable<Problem> Check(SqliteConnection db)
    {
        var heads = db.Command("SELECT Stream, Sequence, Hash FROM Heads ORDER BY Stream")
            .Rows(r => new HeadRow { Stream = Text(r, 0), Sequence = r.GetInt64(1), Hash = Bytes(r, 2) }).ToDictionary(h => h.Stream);
        var streams = db.Command("SELECT DISTINCT Stream FROM Entries ORDER BY Stream").Rows(r => Text(r, 0));
        return heads.Keys.Union(streams).SelectMany(s => Stream(db, s, heads.GetValueOrDefault(s)));
    }

    private static List<Problem> Stream(SqliteConnection db, string stream, HeadRow? head)
    {
        var problems = new List<Problem>();
        var rows = db.Command("SELECT Stream, Sequence, FactId, Kind, Subject, Fact, Recorded, Previous, Hash FROM Entries WHERE Stream = $stream ORDER BY Sequence", ("$stream", stream)).Rows(Row);
        var expected = 1L;
        var previous = new byte[32];
        for (var i = 0; i < rows.Count; i++)
        {
            var row = rows[i];
            if (row.Sequence != expected)
                problems.Add(new(stream, expected, "Sequence", $"the entry is missing; the next one here is {row.Sequence}"));
            else if (!row.Previous.AsSpan().SequenceEqual(previous))
                problems.Add(new(stream, row.Sequence, "Previous", "not the hash of the entry before"));
            // The next entry (or the head) repeats this hash, which tells an altered hash from altered content.
            var repeated = i + 1 < rows.Count ? rows[i + 1].Previous : head?.Hash;
            if (Hash(row, row.Sequence == expected ? previous : row.Previous, repeated) is { } wrong) problems.Add(wrong);
            problems.AddRange(Columns(row));
            (expected, previous) = (row.Sequence + 1, Computed(row, row.Previous) is var own && repeated is not null && own.AsSpan().SequenceEqual(repeated) ? own : row.Hash);
        }
        if (head is null) problems.Add(new(stream, null, "Heads", "the stream has entries but no head"));
        else if (head.Sequence != expected - 1) problems.Add(new(stream, head.Sequence, "Heads", $"the head says {head.Sequence}, but the last entry here is {expected - 1}"));
        else if (!head.Hash.AsSpan().SequenceEqual(previous)) problems.Add(new(stream, head.Sequence, "Heads", "the head is not the hash of the last entry"));
        return problems;
    }

    private static Problem? Hash(EntryRow row, byte[] previous, byte[]? repeated)
    {
        var computed = Computed(row, previous);
        if (computed.AsSpan().SequenceEqual(row.Hash)) return null;
        return repeated is not null && computed.AsSpan().SequenceEqual(repeated)
            ? new(row.Stream, row.Sequence, "Hash", "altered: the next link of the chain has another")
            : new(row.Stream, row.Sequence, "Fact or Recorded", "altered: the content no longer has the hash it was written with");
    }

    private static byte[] Computed(EntryRow row, byte[] previous) => Stamp.Hash(previous, row.Sequence, row.Recorded, row.Fact);

    private static IEnumerable<Problem> Columns(EntryRow row)
    {
        var faults = new Faults();
        if (FactText.Read(row.Fact, faults) is not { } fact) return [new(row.Stream, row.Sequence, "Fact", $"cannot be read: {faults.List[0]}")];
        (string Column, string Kept, string Said)[] pairs =
        [
            ("Stream", row.Stream, fact.Stream), ("FactId", row.FactId, FactText.Id(fact.Id)), ("Kind", row.Kind, fact.Kind),
            ("Subject", row.Subject, fact.Subject), ("Fact", row.Fact, FactText.Write(fact)),
        ];
        return pairs.Where(p => p.Kept != p.Said).Select(p => new Problem(row.Stream, row.Sequence, p.Column, $"'{p.Kept}' here, '{p.Said}' in the fact"));
    }

    private static EntryRow Row(SqliteDataReader r) => new()
    {
        Stream = Text(r, 0), Sequence = r.GetInt64(1), FactId = Text(r, 2), Kind = Text(r, 3), Subject = Text(r, 4),
        Fact = Text(r, 5), Recorded = Text(r, 6), Previous = Bytes(r, 7), Hash = Bytes(r, 8),
    };

    // A damaged cell may have changed its type; it must show as a difference, not stop the check.
    private static string Text(SqliteDataReader row, int column) => row.GetValue(column) switch
    {
        string text => text,
        byte[] bytes => Encoding.Latin1.GetString(bytes),
        var other => other.ToString() ?? "",
    };

    private static byte[] Bytes(SqliteDataReader row, int column) => row.GetValue(column) as byte[] ?? Encoding.UTF8.GetBytes(Text(row, column));
}
