using Crossmember.Builds.Journal;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Projections;

/// <summary>A table that follows from the journal and can be thrown away: written in the append's transaction, rebuilt when its version changes.</summary>
public interface IProjection
{
    string Name { get; }

    /// <summary>Raise it whenever the rows for the same entries would differ.</summary>
    int Version { get; }

    /// <summary>Follows entries that have just been appended; the connection is inside the transaction and already shows them.</summary>
    void Apply(IReadOnlyList<Entry> entries, SqliteConnection db);

    /// <summary>Empties its tables.</summary>
    void Clear(SqliteConnection db);
}
