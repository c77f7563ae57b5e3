namespace Crossmember.Storage;

/// <summary>What the lists show of each build, worked out once and kept: a memory that may be lost at any time, as snapshots are.</summary>
public sealed class Glances(ShopDatabase database)
{
    /// <summary>One row for every build of the shop, by id.</summary>
    /// <param name="maker">The program that reads: what another one kept counts as not there.</param>
    public IReadOnlyList<KeptGlance> All(string maker)
    {
        using var db = database.Open();
        return db.Command("""
            SELECT h.Stream, h.Sequence, g.Position, g.Shop, g.Content,
              coalesce(b.Title, h.Stream), (SELECT count(*) FROM Held w WHERE w.Stream = h.Stream AND w.DecidedBy IS NULL)
            FROM Heads h LEFT JOIN Builds b ON b.Id = h.Stream LEFT JOIN Glances g ON g.Stream = h.Stream AND g.Maker = $maker WHERE h.Stream <> $shop ORDER BY h.Stream
            """, ("$maker", maker), ("$shop", Builds.Journal.Fact.Shop))
            .Rows(r => new KeptGlance(r.GetString(0), r.GetInt64(1), r.IsDBNull(2) ? 0 : r.GetInt64(2), r.IsDBNull(3) ? 0 : r.GetInt64(3), r.TextOrNull(4), r.GetString(5), r.GetInt32(6)));
    }

    /// <summary>Keeps one. One that was worked out further along is not put back.</summary>
    public void Keep(string build, long position, long shop, string maker, string content)
    {
        using var db = database.Open();
        db.Run("""
            INSERT INTO Glances (Stream, Position, Shop, Maker, Content) VALUES ($build, $position, $shop, $maker, $content)
            ON CONFLICT (Stream) DO UPDATE SET Position = $position, Shop = $shop, Maker = $maker, Content = $content
              WHERE Maker <> $maker OR (Position <= $position AND Shop <= $shop)
            """, ("$build", build), ("$position", position), ("$shop", shop), ("$maker", maker), ("$content", content));
    }
}

/// <summary>What is kept of a build, and where its stream stands now.</summary>
/// <param name="Content">Null where nothing is kept.</param>
/// <param name="Held">Facts that lie outside the stream until somebody decides.</param>
public sealed record KeptGlance(string Build, long Head, long Position, long Shop, string? Content, string Title, int Held)
{
    public bool IsOf(long shop) => Content is not null && Position == Head && Shop == shop;
}
