using Crossmember.Builds.Journal;
using Microsoft.EntityFrameworkCore;

namespace Crossmember.Storage;

/// <summary>Folded states by (stream, sequence, fold version): a memory that may be lost at any time.</summary>
public sealed class Snapshots(ShopDatabase database) : ISnapshotStore
{
    /// <summary>The newest one not after a position, made by the same version of the fold; null where there is none.</summary>
    public (long Sequence, byte[] Content)? Latest(string stream, long upTo, int foldVersion)
    {
        using var db = database.Context();
        var row = db.Snapshots.AsNoTracking().Where(s => s.Stream == stream && s.FoldVersion == foldVersion && s.Sequence <= upTo)
            .OrderByDescending(s => s.Sequence).FirstOrDefault();
        return row is null ? null : (row.Sequence, row.Content);
    }

    /// <summary>Keeps one; older ones of the stream by other versions of the fold go, since nothing can read them any more.</summary>
    public void Keep(string stream, long sequence, int foldVersion, byte[] content)
    {
        using var db = database.Open();
        db.Run("DELETE FROM Snapshots WHERE Stream = $stream AND FoldVersion <> $version", ("$stream", stream), ("$version", foldVersion));
        db.Run("INSERT INTO Snapshots (Stream, Sequence, FoldVersion, Content) VALUES ($stream, $sequence, $version, $content) ON CONFLICT DO UPDATE SET Content = $content",
            ("$stream", stream), ("$sequence", sequence), ("$version", foldVersion), ("$content", content));
    }
}
