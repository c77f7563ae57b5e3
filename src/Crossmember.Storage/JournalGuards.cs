using Microsoft.EntityFrameworkCore.Migrations;

namespace Crossmember.Storage;

/// <summary>What the database itself refuses: an entry is appended after the last one of its stream and never touched again.</summary>
internal static class JournalGuards
{
    private static readonly (string Name, string Text)[] s_guards =
    [
        ("EntriesAreNeverChanged", "BEFORE UPDATE ON Entries BEGIN SELECT RAISE(ABORT, 'an entry is never changed'); END"),
        ("EntriesAreNeverRemoved", "BEFORE DELETE ON Entries BEGIN SELECT RAISE(ABORT, 'an entry is never removed'); END"),
        // INSERT OR REPLACE removes the old row without firing the trigger above, so inserting has a guard of its own.
        ("EntriesOnlyFollow",
            "BEFORE INSERT ON Entries " +
            "WHEN NEW.Sequence <> (SELECT coalesce(max(Sequence), 0) + 1 FROM Entries WHERE Stream = NEW.Stream) OR EXISTS (SELECT 1 FROM Entries WHERE FactId = NEW.FactId) " +
            "BEGIN SELECT RAISE(ABORT, 'an entry only follows the last one of its stream'); END"),
        ("HeldFactsAreNeverRemoved", "BEFORE DELETE ON Held BEGIN SELECT RAISE(ABORT, 'a held fact is never removed'); END"),
        ("HeldFactsAreDecidedOnce", "BEFORE UPDATE ON Held WHEN OLD.DecidedBy IS NOT NULL OR NEW.Fact <> OLD.Fact BEGIN SELECT RAISE(ABORT, 'a held fact is decided on once'); END"),
    ];

    public static IEnumerable<string> Names => s_guards.Select(g => g.Name);

    /// <summary>Puts the guards up; called by the migration that makes the tables.</summary>
    public static void PutUp(MigrationBuilder migration)
    {
        foreach (var (name, text) in s_guards) migration.Sql($"CREATE TRIGGER {name} {text};");
    }
}
