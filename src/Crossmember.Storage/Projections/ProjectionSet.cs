using Crossmember.Builds.Journal;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Projections;

/// <summary>All projections of a shop.</summary>
public sealed class ProjectionSet(IReadOnlyList<IProjection> projections)
{
    public static ProjectionSet Standard { get; } = new([new BuildList(), new TitleSearch()]);

    public void Apply(IReadOnlyList<Entry> entries, SqliteConnection db)
    {
        foreach (var projection in projections) projection.Apply(entries, db);
    }

    /// <summary>Rebuilds those whose version is not the one they were written in.</summary>
    public void BringUpToDate(SqliteConnection db)
    {
        var written = db.Command("SELECT Name, Version FROM Projections").Rows(r => (r.GetString(0), r.GetInt32(1))).ToDictionary();
        Rebuild([.. projections.Where(p => written.GetValueOrDefault(p.Name) != p.Version)], db);
    }

    /// <summary>Writes every projection anew from the journal, in one transaction.</summary>
    public void Rebuild(SqliteConnection db) => Rebuild(projections, db);

    private static void Rebuild(IReadOnlyList<IProjection> projections, SqliteConnection db)
    {
        if (projections.Count == 0) return;
        using var transaction = db.BeginTransaction(deferred: false);
        foreach (var projection in projections) projection.Clear(db);
        foreach (var stream in db.Streams())
        {
            var entries = db.Read(stream, 0, long.MaxValue);
            foreach (var projection in projections) projection.Apply(entries, db);
        }
        foreach (var projection in projections)
            db.Run("INSERT INTO Projections (Name, Version) VALUES ($name, $version) ON CONFLICT (Name) DO UPDATE SET Version = $version",
                ("$name", projection.Name), ("$version", projection.Version));
        transaction.Commit();
    }
}
