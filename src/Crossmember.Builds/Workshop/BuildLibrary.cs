using System.Buffers.Binary;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Workshop;

/// <summary>Opens builds out of the journal: folded, remembered by position, with snapshots so that old builds open fast.</summary>
public sealed class BuildLibrary(IJournalStore store, ISnapshotStore snapshots, Catalogue catalogue)
{
    /// <summary>A snapshot is worth keeping when this many entries were folded beyond the last.</summary>
    private const int SnapshotEvery = 500;

    private readonly StreamFold _fold = new(catalogue.Table, Lifts.Current);
    private readonly Dictionary<string, OpenBuild> _open = new(StringComparer.Ordinal);
    private readonly Lock _lock = new();
    private ShopFacts? _shop;

    public Catalogue Catalogue => catalogue;

    public IJournalStore Store => store;

    /// <summary>A build as it stands now, or null where there is none of this id.</summary>
    public OpenBuild? Open(string id)
    {
        var head = store.Head(id).Sequence;
        if (head == 0 || id == Fact.Shop) return null;
        lock (_lock)
            if (_open.TryGetValue(id, out var known) && known.State.Build.Position == head)
                return known;
        var opened = new OpenBuild(Fold(id, head), catalogue);
        lock (_lock) _open[id] = opened;
        return opened;
    }

    /// <summary>A build as it stood at a position.</summary>
    public StreamState At(string id, long position) => Fold(id, position);

    /// <summary>When the entry at a position of a build was recorded; null where there is none.</summary>
    public DateTimeOffset? Recorded(string id, long position) => store.Pick(id, [position]) is [var entry] ? entry.Recorded : null;

    /// <summary>The shop as it stands now.</summary>
    public ShopFacts Shop()
    {
        var head = store.Head(Fact.Shop).Sequence;
        if (_shop is { } known && known.Position == head) return known;
        return _shop = ShopAt(head);
    }

    public ShopFacts ShopAt(long position) => _fold.Shop(store.Read(Fact.Shop, 0, position)) with { Position = position };

    /// <summary>The shop as it would be with further facts, which are written nowhere; what cannot be said is a fault.</summary>
    public ShopFacts ShopWith(IReadOnlyList<Fact> facts, Faults faults) =>
        _fold.Shop([.. store.Read(Fact.Shop), .. AppendRules.Stamped(facts, store.Head(Fact.Shop))], faults);

    private StreamState Fold(string id, long position)
    {
        var (entries, snapshot) = Living(id, position);
        var state = _fold.Build(id, entries);
        // A stream this program cannot read in full is not summed up: a later program may.
        if (entries.Count - snapshot > SnapshotEvery && state.Unreadable.Count == 0) snapshots.Keep(id, position, BuildFold.Version, Pack(state.Living));
        return state with { Build = state.Build with { Position = position } };
    }

    /// <summary>The entries that matter: those a snapshot lists and all after it, or the whole stream.</summary>
    private (IReadOnlyList<Entry> Entries, int FromSnapshot) Living(string id, long position)
    {
        if (snapshots.Latest(id, position, BuildFold.Version) is not var (at, content)) return (store.Read(id, 0, position), 0);
        var tail = store.Read(id, at, position);
        // A correction may bring back what the snapshot left out as overtaken: then only the whole stream will do.
        if (tail.Any(e => e.Fact.Corrects is not null)) return (store.Read(id, 0, position), 0);
        var living = store.Pick(id, Unpack(content));
        return ([.. living, .. tail], living.Count);
    }

    private static byte[] Pack(IReadOnlyList<long> sequences)
    {
        var bytes = new byte[sequences.Count * 8];
        for (var i = 0; i < sequences.Count; i++) BinaryPrimitives.WriteInt64BigEndian(bytes.AsSpan(i * 8), sequences[i]);
        return bytes;
    }

    private static long[] Unpack(byte[] bytes)
    {
        var sequences = new long[bytes.Length / 8];
        for (var i = 0; i < sequences.Length; i++) sequences[i] = BinaryPrimitives.ReadInt64BigEndian(bytes.AsSpan(i * 8));
        return sequences;
    }
}
