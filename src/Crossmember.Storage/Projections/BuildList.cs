using Crossmember.Builds.Journal;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Projections;

/// <summary>The list of builds: title, number of entries, first and last recorded.</summary>
public sealed class BuildList : IProjection
{
    public string Name => "builds";

    public int Version => 1;

    public void Apply(IReadOnlyList<Entry> entries, SqliteConnection db)
    {
        foreach (var build in entries.Where(e => e.Fact.Stream != Fact.Shop).GroupBy(e => e.Fact.Stream))
        {
            var last = build.Last();
            db.Run("INSERT INTO Builds (Id, Title, Entries, FirstRecorded, LastRecorded) VALUES ($id, $title, $entries, $first, $last) " +
                   "ON CONFLICT (Id) DO UPDATE SET Title = $title, Entries = $entries, LastRecorded = $last",
                ("$id", build.Key), ("$title", Titles.Standing(db, build.Key, EntryKind.BuildOpened.Subject, EntryKind.BuildOpened.Name) ?? build.Key),
                ("$entries", last.Sequence), ("$first", Instants.Text(build.First().Recorded)), ("$last", Instants.Text(last.Recorded)));
        }
    }

    public void Clear(SqliteConnection db) => db.Run("DELETE FROM Builds");
}
