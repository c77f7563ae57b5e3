using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Tests.Journal;

/// <summary>The plainest store there can be: two lists, searched from end to end.</summary>
internal sealed class MemoryJournalStore : IJournalStore, IJournalTransaction
{
    private List<Entry> _entries = [];
    private List<HeldFact> _held = [];
    private bool _abandoned;

    public IReadOnlyList<HeldFact> AllHeld => _held;

    public T Transact<T>(Func<IJournalTransaction, T> work)
    {
        var (entries, held) = (_entries.ToList(), _held.ToList());
        _abandoned = false;
        var result = work(this);
        if (_abandoned) (_entries, _held) = (entries, held);
        return result;
    }

    public IReadOnlyList<Entry> Read(string stream, long after = 0, long upTo = long.MaxValue) =>
        [.. _entries.Where(e => e.Fact.Stream == stream && e.Sequence > after && e.Sequence <= upTo)];

    public IReadOnlyList<Entry> Pick(string stream, IReadOnlyList<long> sequences) => [.. Read(stream).Where(e => sequences.Contains(e.Sequence))];

    public Head Head(string stream) => Read(stream) is [.., var last] ? new(last.Sequence, last.Hash) : Builds.Journal.Head.Empty;

    public IReadOnlyList<string> Streams() => [.. _entries.Select(e => e.Fact.Stream).Distinct().Order(StringComparer.Ordinal)];

    public IReadOnlyList<HeldFact> Held(string stream) => [.. _held.Where(h => h.Fact.Stream == stream && h.Decision is null)];

    public Entry? Find(Guid factId) => _entries.Find(e => e.Fact.Id == factId);

    public HeldFact? FindHeld(Guid factId) => _held.Find(h => h.Fact.Id == factId);

    public IReadOnlyList<HeldFact> HeldBatch(Guid batch) => [.. _held.Where(h => h.Fact.Batch == batch && h.Decision is null)];

    public Entry? LastOn(string stream, string subject) =>
        _entries.FindLast(e => e.Fact.Stream == stream && EntryKind.Find(e.Fact.Kind)?.Nature != EntryNature.Log
            && $"{subject}/".StartsWith($"{e.Fact.Subject}/", StringComparison.Ordinal) | $"{e.Fact.Subject}/".StartsWith($"{subject}/", StringComparison.Ordinal));

    public void Append(IReadOnlyList<Entry> entries) => _entries.AddRange(entries);

    public void Hold(HeldFact held) => _held.Add(held);

    public void Settle(Guid factId, HeldDecision decision)
    {
        var at = _held.FindIndex(h => h.Fact.Id == factId);
        _held[at] = _held[at] with { Decision = decision };
    }

    public void Abandon() => _abandoned = true;
}
