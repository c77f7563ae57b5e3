using Crossmember.Builds.Journal;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Today;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests.Today;

/// <summary>The board over a store in which one vehicle can no longer be read.</summary>
public sealed class GlanceBoardTests() : ShopPages(Bracken.Json)
{
    private GlanceBoard Board => Services.GetRequiredService<GlanceBoard>();

    private void Spoil(string build)
    {
        using var db = new SqliteConnection($"Data Source={Path.Combine(Folder, "shop.db")}");
        db.Open();
        foreach (var guard in Rows(db, "SELECT name FROM sqlite_master WHERE type = 'trigger'")) Run(db, $"DROP TRIGGER \"{guard}\"");
        Run(db, $"UPDATE Entries SET Fact = 'not a fact' WHERE Stream = '{build}' AND Sequence = 3");
        Run(db, "DELETE FROM Snapshots");
        Run(db, "DELETE FROM Glances");
    }

    private static void Run(SqliteConnection db, string text)
    {
        using var command = db.CreateCommand();
        command.CommandText = text;
        command.ExecuteNonQuery();
    }

    private static List<string> Rows(SqliteConnection db, string text)
    {
        using var command = db.CreateCommand();
        command.CommandText = text;
        using var reader = command.ExecuteReader();
        var rows = new List<string>();
        while (reader.Read()) rows.Add(reader.GetString(0));
        return rows;
    }

    [Fact]
    public async Task A_vehicle_that_cannot_be_read_is_told_as_such_and_the_others_go_on()
    {
        Import(Bracken.Json.Replace("\"id\":\"bracken\"", "\"id\":\"spoilt\"", StringComparison.Ordinal).Replace("Bracken flatbed, invented", "Spoilt flatbed", StringComparison.Ordinal));
        Spoil("spoilt");
        var rows = Board.Rows().ToDictionary(r => r.Glance.Id, r => r.Glance);
        Assert.True(rows["bracken"].Checks > 0);
        await Board.Settled();
        rows = Board.Rows().ToDictionary(r => r.Glance.Id, r => r.Glance);
        Assert.Contains("cannot be worked out", rows["spoilt"].Worst!.Text, StringComparison.Ordinal);
        Assert.Contains("Spoilt flatbed", Render<TodayPage>(p => p.AddCascadingValue(Ana)).Markup, StringComparison.Ordinal);

        // What was said of another vehicle afterwards still reaches the board.
        Assert.IsType<AppendOutcome.Appended>(Desk.Append([Desk.Deciding.Choose("bracken", "working", "final-drives", "short", Desk.Deciding.LastOn("bracken", "scenarios/working/choices/final-drives"), "Ben", "there")], Arrival.Online)[0]);
        await Board.Settled();
        Assert.Equal(1, Board.Rows().Single(r => r.Glance.Id == "bracken").Glance.Fails);
    }
}
