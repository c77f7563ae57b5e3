using System.Text.Json;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>A stream read: the build it tells, and what in it this program cannot read.</summary>
/// <param name="Unreadable">Not empty: the build opens read-only, and these name what wrote it.</param>
public sealed record StreamState(Build Build, IReadOnlyList<Lifted.Unreadable> Unreadable, IReadOnlyList<Fault> Faults);

/// <summary>Entries to build: corrections put in place, old payloads lifted, then folded in order.</summary>
public sealed class StreamFold(ParameterTable table, Lifts lifts)
{
    public StreamState Build(string id, IEnumerable<Entry> entries) => Fold(new(id, table), entries);

    /// <summary>Goes on from an earlier fold; only for entries that correct nothing before them.</summary>
    public StreamState Continue(Build from, IEnumerable<Entry> entries) => Fold(new(from, table), entries);

    private StreamState Fold(BuildFold fold, IEnumerable<Entry> entries)
    {
        var (unreadable, faults) = (new List<Lifted.Unreadable>(), new Faults());
        Each(entries, unreadable, (s, payload) => fold.Apply(s.Fact.Kind, s.Fact.Subject, payload, s.Fact.Subject, s.Source.Sequence, faults));
        return new(fold.ToBuild(), unreadable, faults.List);
    }

    public ShopFacts Shop(IEnumerable<Entry> entries)
    {
        var fold = new ShopFold();
        var faults = new Faults();
        Each(entries, [], (s, payload) => fold.Apply(s.Fact.Kind, s.Fact.Subject, payload, s.Fact.Subject, s.Source.Sequence, faults));
        return fold.ToShop();
    }

    /// <summary>The entries that still matter: folding these alone gives the same build. This list is what a snapshot keeps.</summary>
    /// <remarks>
    /// Of the kinds that replace, the last on its subject; where a first mention fixes the place in a list, the first as well.
    /// A correction travels with what it corrects.
    /// </remarks>
    public static IReadOnlyList<long> Living(IEnumerable<Entry> entries)
    {
        var first = new Dictionary<(string, string), Standing>();
        var last = new Dictionary<(string, string), Standing>();
        var all = new List<Standing>();
        foreach (var s in Corrections.Effective(entries))
        {
            if (EntryKind.Find(s.Fact.Kind) is not { } kind || kind == EntryKind.WeighingTaken || kind == EntryKind.ScenarioApproved) all.Add(s);
            else if (kind.Nature == EntryNature.State)
            {
                first.TryAdd((s.Fact.Kind, s.Fact.Subject), s);
                last[(s.Fact.Kind, s.Fact.Subject)] = s;
            }
        }
        return [.. all.Concat(first.Values).Concat(last.Values).SelectMany(s => s.Correction is { } c ? [s.Entry.Sequence, c.Sequence] : new[] { s.Entry.Sequence }).Distinct().Order()];
    }

    private void Each(IEnumerable<Entry> entries, List<Lifted.Unreadable> unreadable, Action<Standing, JsonElement> apply)
    {
        foreach (var standing in Corrections.Effective(entries))
        {
            // Logs add to projections, not to the build: their payloads are not even parsed here.
            if (EntryKind.Find(standing.Fact.Kind) is { Nature: EntryNature.Log } log && log != EntryKind.WeighingTaken && standing.Schema <= log.Schema) continue;
            if (lifts.Lift(standing) is Lifted.Readable { Payload: var payload }) apply(standing, JsonSerializer.SerializeToElement(payload));
            else if (lifts.Lift(standing) is Lifted.Unreadable u && !unreadable.Contains(u)) unreadable.Add(u);
        }
    }
}
