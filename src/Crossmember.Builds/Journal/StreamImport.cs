using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Journal;

/// <summary>What came of taking in a stream.</summary>
/// <param name="Appended">Entries that were new; 0 where the stream here is as long or longer.</param>
/// <param name="Fault">Why nothing was taken in; its path is stream and sequence of the first entry that differs.</param>
public sealed record ImportOutcome(int Appended, Fault? Fault);

/// <summary>Takes in a stream with its stamps: a true extension of what is here, or nothing.</summary>
internal static class StreamImport
{
    public static ImportOutcome Import(IReadOnlyList<Entry> entries, IJournalTransaction tx)
    {
        if (entries.Count == 0) return new(0, null);
        var stream = entries[0].Fact.Stream;
        var here = tx.Read(stream);
        var head = Head.Empty;
        foreach (var entry in entries)
        {
            if (Wrong(entry, stream, head, here, tx) is { } wrong)
                return new(0, new($"{stream}/{entry.Sequence}", wrong, "import a copy that only adds to what is here"));
            head = new(entry.Sequence, entry.Hash);
        }
        List<Entry> added = [.. entries.Skip(here.Count)];
        if (added.Count > 0) tx.Append(added);
        return new(added.Count, null);
    }

    /// <summary>What came of a stream and the facts appended beside it.</summary>
    public static ImportOutcome With(ImportOutcome stream, IReadOnlyList<AppendOutcome> beside)
    {
        var (refused, conflict) = (beside.OfType<AppendOutcome.Refused>().FirstOrDefault(), beside.OfType<AppendOutcome.Conflict>().FirstOrDefault());
        if (refused is not null) return new(0, refused.Fault);
        if (conflict is not null) return new(0, new(conflict.Subject, "something else was said here first", "import it again"));
        if (beside.FirstOrDefault(o => o is not (AppendOutcome.Appended or AppendOutcome.Acknowledged)) is { } waits)
            return new(0, new(FactText.Id(waits.FactId), "this fact waits for a person's decision", "decide on it first"));
        return stream with { Appended = stream.Appended + beside.Count(o => o is AppendOutcome.Appended) };
    }

    private static string? Wrong(Entry entry, string stream, Head head, IReadOnlyList<Entry> here, IJournalTransaction tx)
    {
        if (!entry.Follows(head)) return "the chain of hashes is broken here";
        if (entry.Fact.Stream != stream || FactText.Write(entry.Fact, new()) != entry.FactText) return "the fact is not what its text says";
        if (entry.Sequence <= here.Count)
            return here[(int)entry.Sequence - 1].Hash.Span.SequenceEqual(entry.Hash.Span) ? null : "the two copies differ from here on";
        return tx.Find(entry.Fact.Id) is { } known ? $"its id is known from '{known.Fact.Stream}' already" : null;
    }
}
