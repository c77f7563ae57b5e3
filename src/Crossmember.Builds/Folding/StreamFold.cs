using System.Text.Json;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>A stream read: the build it tells, and what in it this program cannot read.</summary>
/// <param name="Unreadable">Not empty: the build opens read-only, and these name what wrote it.</param>
/// <param name="Living">Sequences of the entries that still matter; folding these alone gives the same build.</param>
public sealed record StreamState(Build Build, IReadOnlyList<Lifted.Unreadable> Unreadable, IReadOnlyList<Fault> Faults, IReadOnlyList<long> Living);

/// <summary>Entries to build: corrections put in place, what is overtaken left out, old payloads lifted, the rest folded in order.</summary>
public sealed class StreamFold(ParameterTable table, Lifts lifts)
{
    /// <param name="pointer">Where the payload of an entry stands, for faults; its subject where nothing is given.</param>
    public StreamState Build(string id, IEnumerable<Entry> entries, Func<Entry, string>? pointer = null) => Fold(new(id, table), entries, pointer);

    /// <summary>Goes on from an earlier fold; only for entries that correct nothing before them.</summary>
    public StreamState Continue(Build from, IEnumerable<Entry> entries) => Fold(new(from, table), entries);

    /// <param name="faults">Collects what could not be read, where somebody wants to know.</param>
    public ShopFacts Shop(IEnumerable<Entry> entries, Faults? faults = null)
    {
        var fold = new ShopFold();
        faults ??= new();
        foreach (var standing in Corrections.Effective(entries))
            if (lifts.Lift(standing) is Lifted.Readable { Payload: var payload })
                fold.Apply(standing.Fact.Kind, standing.Fact.Subject, JsonSerializer.SerializeToElement(payload), standing.Fact.Subject, standing.Source.Sequence, faults);
        return fold.ToShop();
    }

    private StreamState Fold(BuildFold fold, IEnumerable<Entry> entries, Func<Entry, string>? pointer = null)
    {
        var (unreadable, faults) = (new List<Lifted.Unreadable>(), new Faults());
        List<Entry> read = [.. entries];
        var standing = Corrections.Effective(read);
        foreach (var s in standing)
            if (EntryKind.Find(s.Fact.Kind) is not { } kind || s.Schema > kind.Schema)
                if (lifts.Lift(s) is Lifted.Unreadable u && !unreadable.Contains(u))
                    unreadable.Add(u);
        var living = LivingEntries.Of(standing);
        foreach (var s in living)
            if (lifts.Lift(s) is Lifted.Readable { Payload: var payload })
                fold.Apply(s.Fact.Kind, s.Fact.Subject, JsonSerializer.SerializeToElement(payload), pointer?.Invoke(s.Source) ?? s.Fact.Subject, s.Source.Sequence, faults);
        // The position is that of the stream, whether or not its last entry matters to the build.
        var build = fold.ToBuild();
        if (read.Count > 0) build = build with { Position = Math.Max(build.Position, read[^1].Sequence) };
        return new(build, unreadable, faults.List, LivingEntries.Sequences(living));
    }
}
