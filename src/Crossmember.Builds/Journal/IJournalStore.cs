namespace Crossmember.Builds.Journal;

/// <summary>Where entries are kept. SQLite today; anything that can append a batch in one transaction will do.</summary>
/// <remarks>The rules of appending are in <see cref="Journal"/>; a store only reads, appends and keeps held facts, inside one transaction.</remarks>
public interface IJournalStore
{
    /// <summary>Runs work in one transaction that sees no other writer; an exception or <see cref="IJournalTransaction.Abandon"/> leaves nothing behind.</summary>
    T Transact<T>(Func<IJournalTransaction, T> work);

    /// <summary>Entries of a stream in order, after a sequence number.</summary>
    IReadOnlyList<Entry> Read(string stream, long after = 0, long upTo = long.MaxValue);

    /// <summary>The entries of a stream with these sequence numbers, in order.</summary>
    IReadOnlyList<Entry> Pick(string stream, IReadOnlyList<long> sequences);

    /// <summary>The last sequence of a stream and its hash; 0 and 32 zero bytes where there is none.</summary>
    Head Head(string stream);

    /// <summary>Every stream that has entries, <c>shop</c> included, ordinally.</summary>
    IReadOnlyList<string> Streams();

    /// <summary>Facts of a stream that wait for a person to decide, in the order they came.</summary>
    IReadOnlyList<HeldFact> Held(string stream);
}

/// <summary>What may be done inside the appending transaction.</summary>
public interface IJournalTransaction
{
    Head Head(string stream);

    /// <summary>The entry with this fact id in any stream.</summary>
    Entry? Find(Guid factId);

    /// <summary>The held fact with this id, decided or not.</summary>
    HeldFact? FindHeld(Guid factId);

    /// <summary>The facts of a batch that wait for a decision, in the order they came.</summary>
    IReadOnlyList<HeldFact> HeldBatch(Guid batch);

    /// <summary>The last entry on the subject, above it (a shorter path) or beneath it (a longer one). Log kinds have no order and are passed over.</summary>
    Entry? LastOn(string stream, string subject);

    IReadOnlyList<Entry> Read(string stream, long after = 0, long upTo = long.MaxValue);

    /// <summary>Appends ready-stamped entries; projections follow in the same transaction.</summary>
    void Append(IReadOnlyList<Entry> entries);

    void Hold(HeldFact held);

    /// <summary>Keeps what a person decided about a held fact; the fact itself stays on record.</summary>
    void Settle(Guid factId, HeldDecision decision);

    /// <summary>Gives the work up: nothing of it stays.</summary>
    void Abandon();
}

/// <summary>Where a stream stands.</summary>
public sealed record Head(long Sequence, ReadOnlyMemory<byte> Hash)
{
    public static Head Empty { get; } = new(0, new byte[32]);
}
