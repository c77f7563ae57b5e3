using System.Reflection;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Migrations;

namespace Crossmember.Storage;

/// <summary>The database of a shop: opens connections with the right settings and brings the tables up to date.</summary>
public sealed class ShopDatabase : IDisposable
{
    private readonly DbContextOptions<ShopDb> _options;
    private readonly string _connectionString;

    public ShopDatabase(string connectionString)
    {
        _connectionString = connectionString;
        _options = new DbContextOptionsBuilder<ShopDb>().UseSqlite(connectionString).AddInterceptors(new ConnectionSettings()).Options;
    }

    public ShopDb Context() => new(_options);

    /// <summary>An open connection for plain commands; the caller disposes it.</summary>
    public SqliteConnection Open()
    {
        var connection = new SqliteConnection(_connectionString);
        connection.Open();
        ConnectionSettings.Apply(connection);
        return connection;
    }

    /// <summary>Applies the migrations that are missing.</summary>
    /// <remarks>Asked in plain SQL first: building the model for the migrator takes longer than a whole command needs, and most openings find nothing to do.</remarks>
    /// <exception cref="InvalidDataException">The tables were made by a newer program; writing to them could spoil what it keeps.</exception>
    public void Migrate()
    {
        var known = typeof(ShopDb).Assembly.GetTypes().Select(t => t.GetCustomAttribute<MigrationAttribute>()?.Id).OfType<string>().ToHashSet();
        var applied = Applied();
        if (applied.FirstOrDefault(m => !known.Contains(m)) is { } unknown)
            throw new InvalidDataException($"the database was written by a newer program (it has '{unknown}'); bring this program up to date");
        if (known.SetEquals(applied)) return;
        using var db = Context();
        db.Database.Migrate();
    }

    private IReadOnlyList<string> Applied()
    {
        using var db = Open();
        return db.Command("SELECT name FROM sqlite_master WHERE name = '__EFMigrationsHistory'").Rows(r => r.GetString(0)).Count == 0
            ? []
            : db.Command("SELECT MigrationId FROM __EFMigrationsHistory").Rows(r => r.GetString(0));
    }

    public void Dispose()
    {
        using var connection = new SqliteConnection(_connectionString);
        SqliteConnection.ClearPool(connection);
    }
}
