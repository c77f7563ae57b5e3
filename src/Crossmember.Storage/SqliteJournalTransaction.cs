using Crossmember.Builds.Journal;
using Crossmember.Storage.Projections;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage;

/// <summary>The appending transaction on its connection.</summary>
internal sealed class SqliteJournalTransaction(SqliteConnection db, ProjectionSet projections) : IJournalTransaction
{
    private const string Insert =
        "INSERT INTO Entries (Stream, Sequence, FactId, Kind, Subject, Fact, Recorded, Previous, Hash) " +
        "VALUES ($stream, $sequence, $id, $kind, $subject, $fact, $recorded, $previous, $hash)";

    public bool Abandoned { get; private set; }

    public Head Head(string stream) => db.Head(stream);

    public Entry? Find(Guid factId) => db.Find(factId);

    public HeldFact? FindHeld(Guid factId) => db.FindHeld(factId);

    public IReadOnlyList<HeldFact> HeldBatch(Guid batch) => db.WaitingBatch(batch);

    public Entry? LastOn(string stream, string subject) => db.LastOn(stream, subject);

    public IReadOnlyList<Entry> Read(string stream, long after = 0, long upTo = long.MaxValue) => db.Read(stream, after, upTo);

    public void Append(IReadOnlyList<Entry> entries)
    {
        using var insert = db.Command(Insert);
        string[] names = ["$stream", "$sequence", "$id", "$kind", "$subject", "$fact", "$recorded", "$previous", "$hash"];
        foreach (var name in names) insert.Parameters.Add(new SqliteParameter { ParameterName = name });
        foreach (var entry in entries)
        {
            object[] values =
            [
                entry.Fact.Stream, entry.Sequence, FactText.Id(entry.Fact.Id), entry.Fact.Kind, entry.Fact.Subject,
                entry.FactText, Instants.Text(entry.Recorded), entry.Previous.ToArray(), entry.Hash.ToArray(),
            ];
            for (var i = 0; i < values.Length; i++) insert.Parameters[i].Value = values[i];
            insert.ExecuteNonQuery();
        }
        foreach (var last in entries.GroupBy(e => e.Fact.Stream).Select(g => g.Last()))
            db.Run("INSERT INTO Heads (Stream, Sequence, Hash) VALUES ($stream, $sequence, $hash) ON CONFLICT (Stream) DO UPDATE SET Sequence = $sequence, Hash = $hash",
                ("$stream", last.Fact.Stream), ("$sequence", last.Sequence), ("$hash", last.Hash.ToArray()));
        projections.Apply(entries, db);
    }

    public void Hold(HeldFact held) =>
        db.Run("INSERT INTO Held (FactId, Stream, Batch, Fact, Received, Met, Reason) VALUES ($id, $stream, $batch, $fact, $received, $met, $reason)",
            ("$id", FactText.Id(held.Fact.Id)), ("$stream", held.Fact.Stream), ("$batch", Id(held.Fact.Batch)), ("$fact", held.FactText),
            ("$received", Instants.Text(held.Received)), ("$met", Id(held.Met)), ("$reason", held.Reason));

    public void Settle(Guid factId, HeldDecision decision) =>
        db.Run("UPDATE Held SET DecidedBy = $by, DecidedAt = $at, ReleasedAs = $as, Why = $why WHERE FactId = $id AND DecidedBy IS NULL",
            ("$id", FactText.Id(factId)), ("$by", decision.Person), ("$at", Instants.Text(decision.At)), ("$as", Id(decision.ReleasedAs)), ("$why", decision.Why));

    public void Abandon() => Abandoned = true;

    private static string? Id(Guid? id) => id is { } known ? FactText.Id(known) : null;
}
