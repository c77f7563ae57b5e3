using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Crossmember.Storage;

/// <summary>Settings every connection needs before its first command.</summary>
/// <remarks>synchronous=FULL: with NORMAL a power cut could take back an entry that was acknowledged.</remarks>
public sealed class ConnectionSettings : DbConnectionInterceptor
{
    private const string Settings = "PRAGMA journal_mode=WAL; PRAGMA synchronous=FULL; PRAGMA foreign_keys=ON; PRAGMA busy_timeout=10000;";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData) => Apply(connection);

    public override async Task ConnectionOpenedAsync(DbConnection connection, ConnectionEndEventData eventData, CancellationToken cancellationToken = default)
    {
        var command = connection.CreateCommand();
        await using (command.ConfigureAwait(false))
        {
            command.CommandText = Settings;
            await command.ExecuteNonQueryAsync(cancellationToken).ConfigureAwait(false);
        }
    }

    public static void Apply(DbConnection connection)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Settings;
        command.ExecuteNonQuery();
    }
}
