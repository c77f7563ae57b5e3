using Crossmember.Builds.Journal;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Crossmember.Storage.Tests;

public sealed class GuardTests : IDisposable
{
    private readonly Shop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Theory]
    [InlineData("UPDATE Entries SET Kind = 'x'", "never changed")]
    [InlineData("DELETE FROM Entries WHERE Sequence = 2", "never removed")]
    [InlineData("INSERT OR REPLACE INTO Entries SELECT Stream, 2, 'x', Kind, Subject, Fact, Recorded, Previous, Hash FROM Entries WHERE Sequence = 1", "only follows")]
    [InlineData("INSERT OR REPLACE INTO Entries SELECT Stream, 3, FactId, Kind, Subject, Fact, Recorded, Previous, Hash FROM Entries WHERE Sequence = 1", "only follows")]
    [InlineData("INSERT INTO Entries SELECT Stream, 4, 'x', Kind, Subject, Fact, Recorded, Previous, Hash FROM Entries WHERE Sequence = 1", "only follows")]
    [InlineData("DELETE FROM Held", "never removed")]
    [InlineData("UPDATE Held SET Fact = 'x'", "decided on once")]
    public void The_database_itself_refuses_to_touch_what_was_said(string sql, string why)
    {
        _shop.Append(Shop.Graded(1), Shop.Noted(2));
        _shop.Journal.Append([Shop.Graded(3)], Arrival.Queue);
        Assert.Contains(why, Assert.Throws<SqliteException>(() => _shop.Tamper(sql, guardsDown: false)).Message, StringComparison.Ordinal);
        Assert.Empty(_shop.Store.Verify());
    }

    [Fact]
    public void A_decision_is_taken_once()
    {
        _shop.Append(Shop.Graded(1));
        _shop.Journal.Append([Shop.Graded(3)], Arrival.Queue);
        _shop.Journal.Discard(Shop.Id(3), "bo", "wrong");
        Assert.Throws<SqliteException>(() => _shop.Tamper("UPDATE Held SET Why = 'right'", guardsDown: false));
    }

    [Fact]
    public void Connections_wait_for_the_disk_and_for_each_other()
    {
        using var database = new ShopDatabase(ShopPlace.Folder(_shop.Folder).ConnectionString);
        using var db = database.Open();
        // SQLite documentation, "PRAGMA Statements": synchronous 2 is FULL.
        foreach (var (pragma, value) in new[] { ("journal_mode", "wal"), ("synchronous", "2"), ("foreign_keys", "1"), ("busy_timeout", "10000") })
        {
            using var command = db.CreateCommand();
            command.CommandText = $"PRAGMA {pragma}";
            Assert.Equal(value, command.ExecuteScalar()!.ToString());
        }
        using var context = database.Context();
        Assert.Equal(2, context.Database.SqlQueryRaw<int>("PRAGMA synchronous").AsEnumerable().Single());
    }

    [Fact]
    public void A_database_of_a_newer_program_is_left_alone()
    {
        _shop.Tamper("INSERT INTO __EFMigrationsHistory VALUES ('29991231235959_Later', '99.0.0')");
        Assert.Contains("newer program", Assert.Throws<InvalidDataException>(() => _shop.Open()).Message, StringComparison.Ordinal);
    }
}
