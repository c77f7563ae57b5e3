using System.Text.Json;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Workshop;

/// <summary>The rules across subjects, run in the appending transaction: the build with the new facts in it must fold and hold together.</summary>
public sealed class AppendRules(Catalogue catalogue) : IAppendRules
{
    private readonly StreamFold _fold = new(catalogue.Table, Lifts.Current);
    private readonly Dictionary<string, (Build Build, Head Head)> _last = new(StringComparer.Ordinal);

    public IReadOnlyList<Fault> Check(string stream, IReadOnlyList<Fact> facts, IJournalTransaction transaction)
    {
        var faults = new Faults();
        foreach (var fact in facts.Where(f => EntryKind.Find(f.Kind) is { Nature: EntryNature.Log })) LogPayloads.Check(fact, faults);
        if (faults.Any) return faults.List;
        return stream == Fact.Shop ? CheckShop(facts, transaction) : CheckBuild(stream, facts, transaction);
    }

    private IReadOnlyList<Fault> CheckBuild(string stream, IReadOnlyList<Fact> facts, IJournalTransaction transaction)
    {
        var head = transaction.Head(stream);
        List<Entry> added = [.. Stamped(facts, head)];
        var now = Current(stream, head, transaction);
        if (now.Unreadable.Count > 0) return [new(facts[0].Subject, $"the build is open for reading only: {now.Unreadable[0]}", "use the program that wrote it")];
        var state = facts.Any(f => f.Corrects is not null) ? _fold.Build(stream, [.. transaction.Read(stream), .. added]) : _fold.Continue(now.Build, added);
        var faults = new Faults();
        foreach (var f in state.Faults) faults.Add(f);
        foreach (var fact in facts) Grounds.Check(fact, state.Build, faults);
        foreach (var broken in BuildRules.Check(state.Build, catalogue.Table, Books(facts, transaction))) faults.Add(broken.Subject + broken.Inner, broken.Wrong, broken.Right);
        return faults.List;
    }

    /// <summary>The stream as it stands, from what was folded for the last append where that is still its beginning.</summary>
    private StreamState Current(string stream, Head head, IJournalTransaction transaction)
    {
        StreamState state;
        if (Remembered(stream) is { } known && known.Head.Sequence <= head.Sequence && StillBegins(stream, known.Head, transaction)
            && transaction.Read(stream, known.Head.Sequence) is var tail && tail.All(e => e.Fact.Corrects is null))
            state = _fold.Continue(known.Build, tail);
        else state = _fold.Build(stream, transaction.Read(stream));
        // Only what is in the store is remembered: the new facts may yet be given up with their transaction.
        if (state.Unreadable.Count == 0) lock (_last) _last[stream] = (state.Build, head);
        return state;
    }

    /// <summary>The currency of the shop's books, asked for only where a price may be among the facts: it would not add up with another.</summary>
    private string? Books(IReadOnlyList<Fact> facts, IJournalTransaction transaction) =>
        facts.Any(f => f.Kind == EntryKind.OptionStated.Name) ? _fold.Shop(transaction.Read(Fact.Shop)).Books : null;

    private (Build Build, Head Head)? Remembered(string stream)
    {
        lock (_last) return _last.TryGetValue(stream, out var known) ? known : null;
    }

    private static bool StillBegins(string stream, Head known, IJournalTransaction transaction) =>
        known.Sequence == 0 || (transaction.Read(stream, known.Sequence - 1, known.Sequence) is [var last] && last.Hash.Span.SequenceEqual(known.Hash.Span));

    private static IReadOnlyList<Fault> CheckShop(IReadOnlyList<Fact> facts, IJournalTransaction transaction)
    {
        var faults = new Faults();
        var fold = new ShopFold();
        foreach (var standing in Corrections.Effective([.. transaction.Read(Fact.Shop), .. Stamped(facts, transaction.Head(Fact.Shop))]))
            fold.Apply(standing.Fact.Kind, standing.Fact.Subject, JsonSerializer.SerializeToElement(standing.Payload), standing.Fact.Subject, 0, faults);
        return faults.List;
    }

    /// <summary>The facts as the entries they would become.</summary>
    internal static IEnumerable<Entry> Stamped(IReadOnlyList<Fact> facts, Head head)
    {
        foreach (var fact in facts)
        {
            var entry = Stamp.On(head, fact, FactText.Write(fact), DateTimeOffset.UnixEpoch);
            head = new(entry.Sequence, entry.Hash);
            yield return entry;
        }
    }
}
