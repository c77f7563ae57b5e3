using Crossmember.Builds.Journal;
using Crossmember.Storage.Projections;

namespace Crossmember.Storage;

/// <summary>The journal in SQLite. Each piece of work runs in one immediate transaction, so two writers take turns instead of failing at commit.</summary>
public sealed class SqliteJournalStore(ShopDatabase database, ProjectionSet projections) : IJournalStore
{
    public T Transact<T>(Func<IJournalTransaction, T> work)
    {
        using var db = database.Open();
        using var transaction = db.BeginTransaction(deferred: false);
        var journal = new SqliteJournalTransaction(db, projections);
        var result = work(journal);
        if (!journal.Abandoned) transaction.Commit();
        return result;
    }

    public IReadOnlyList<Entry> Read(string stream, long after = 0, long upTo = long.MaxValue)
    {
        using var db = database.Open();
        return db.Read(stream, after, upTo);
    }

    public IReadOnlyList<Entry> Pick(string stream, IReadOnlyList<long> sequences)
    {
        using var db = database.Open();
        return db.Pick(stream, sequences);
    }

    public Head Head(string stream)
    {
        using var db = database.Open();
        return db.Head(stream);
    }

    public IReadOnlyList<string> Streams()
    {
        using var db = database.Open();
        return db.Streams();
    }

    public IReadOnlyList<HeldFact> Held(string stream)
    {
        using var db = database.Open();
        return db.Waiting(stream);
    }
}
