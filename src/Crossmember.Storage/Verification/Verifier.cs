using Crossmember.Builds.Journal;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Crossmember.Storage.Verification;

/// <summary>Says whether everything kept is as it was written.</summary>
internal sealed class Verifier(ShopDatabase database, Attachments attachments)
{
    public IReadOnlyList<Problem> Verify(HeadsFile? kept)
    {
        using var db = database.Open();
        // One read transaction: every check sees the same state while others go on appending.
        using var transaction = db.BeginTransaction(deferred: true);
        using var context = database.Context();
        List<Problem> problems =
        [
            .. Database(db), .. ChainCheck.Check(db), .. HeldCheck.Check(db),
            .. AttachmentCheck.Check(context.Attachments.AsNoTracking().OrderBy(a => a.Hash), attachments),
        ];
        if (kept is not null) problems.AddRange(kept.Check((stream, sequence) => HashAt(db, stream, sequence)));
        return problems;
    }

    public HeadsFile Heads()
    {
        using var db = database.Open();
        using var transaction = db.BeginTransaction(deferred: true);
        return new(db.Streams().ToDictionary(s => s, db.Head));
    }

    private static IEnumerable<Problem> Database(SqliteConnection db)
    {
        foreach (var wrong in db.Command("PRAGMA integrity_check").Rows(r => r.GetString(0)))
            if (wrong != "ok") yield return new("database", null, "integrity", wrong);
        var present = db.Command("SELECT name FROM sqlite_master WHERE type = 'trigger'").Rows(r => r.GetString(0));
        foreach (var missing in JournalGuards.Names.Except(present))
            yield return new("database", null, missing, "the guard of the journal was taken away");
    }

    private static byte[]? HashAt(SqliteConnection db, string stream, long sequence) =>
        sequence == 0
            ? Head.Empty.Hash.ToArray()
            : db.Command("SELECT Hash FROM Entries WHERE Stream = $stream AND Sequence = $sequence", ("$stream", stream), ("$sequence", sequence))
                .Rows(r => r.GetValue(0) as byte[] ?? []).SingleOrDefault();
}
