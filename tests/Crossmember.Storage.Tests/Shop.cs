using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Microsoft.Data.Sqlite;

namespace Crossmember.Storage.Tests;

/// <summary>An invented shop in a folder of its own, gone after the test.</summary>
public sealed class Shop : IDisposable
{
    private readonly List<ShopStore> _open = [];

    public Shop() => Store = Open();

    public string Folder { get; } = Directory.CreateTempSubdirectory("crossmember-").FullName;

    public ShopStore Store { get; }

    public Builds.Journal.Journal Journal => Store.Journal;

    /// <summary>Opens the same shop once more, as a second program would.</summary>
    public ShopStore Open(Projections.ProjectionSet? projections = null)
    {
        var store = ShopStore.Open(ShopPlace.Folder(Folder), TimeProvider.System, projections: projections);
        _open.Add(store);
        return store;
    }

    /// <summary>Runs a statement past the program, with the guards down if asked: what somebody with the file in hand could do.</summary>
    public int Tamper(string sql, bool guardsDown = true)
    {
        using var db = new SqliteConnection($"Data Source={Path.Combine(Folder, "shop.db")};Pooling=False");
        db.Open();
        var guards = guardsDown ? Strings(db, "SELECT sql FROM sqlite_master WHERE type = 'trigger'") : [];
        foreach (var name in guardsDown ? Strings(db, "SELECT name FROM sqlite_master WHERE type = 'trigger'") : []) Run(db, $"DROP TRIGGER {name}");
        var changed = Run(db, sql);
        foreach (var guard in guards) Run(db, guard);
        return changed;
    }

    public IReadOnlyList<string> Query(string sql)
    {
        using var db = new SqliteConnection($"Data Source={Path.Combine(Folder, "shop.db")};Pooling=False");
        db.Open();
        return Strings(db, sql);
    }

    public IReadOnlyList<AppendOutcome> Append(params Fact[] facts) => Journal.Append(facts, Arrival.Online);

    public static Guid Id(int n) => new($"0190163d-8694-739b-aea5-{n:x12}");

    public static Fact Fact(int n, EntryKind kind, string subject, string payload, int? after = null, string stream = "b1") =>
        new(Id(n), stream, kind.Name, kind.Schema, new(2026, 1, 31, 8, 0, 0, TimeSpan.Zero), "ana", "bench", subject,
            after is { } a ? Id(a) : null, null, null, JsonNode.Parse(payload));

    public static Fact Graded(int n, int? after = null, string slot = "tires") => Fact(n, EntryKind.SlotGraded, $"slots/{slot}/grade", """{"grade":"C"}""", after);

    public static Fact Noted(int n, string stream = "b1") => Fact(n, EntryKind.NoteWritten, "slots/tires/notes", """{"text":"worn"}""", stream: stream);

    public void Dispose()
    {
        foreach (var store in _open) store.Dispose();
        Directory.Delete(Folder, recursive: true);
    }

    private static int Run(SqliteConnection db, string sql)
    {
        using var command = db.CreateCommand();
        command.CommandText = sql;
        return command.ExecuteNonQuery();
    }

    private static List<string> Strings(SqliteConnection db, string sql)
    {
        using var command = db.CreateCommand();
        command.CommandText = sql;
        using var reader = command.ExecuteReader();
        var list = new List<string>();
        while (reader.Read()) list.Add(string.Join('|', Enumerable.Range(0, reader.FieldCount).Select(i => reader.GetValue(i).ToString())));
        return list;
    }
}
