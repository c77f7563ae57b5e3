using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

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
    /// <exception cref="InvalidDataException">The tables were made by a newer program; writing to them could spoil what it keeps.</exception>
    public void Migrate()
    {
        using var db = Context();
        var unknown = db.Database.GetAppliedMigrations().Except(db.Database.GetMigrations()).ToList();
        if (unknown.Count > 0) throw new InvalidDataException($"the database was written by a newer program (it has '{unknown[0]}'); bring this program up to date");
        db.Database.Migrate();
    }

    public void Dispose()
    {
        using var connection = new SqliteConnection(_connectionString);
        SqliteConnection.ClearPool(connection);
    }
}
