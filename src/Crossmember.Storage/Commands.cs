using Microsoft.Data.Sqlite;

namespace Crossmember.Storage;

/// <summary>Plain commands with named values; a command joins the transaction its connection is in.</summary>
internal static class Commands
{
    public static SqliteCommand Command(this SqliteConnection connection, string text, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        var command = connection.CreateCommand();
        command.CommandText = text;
        foreach (var (name, value) in values) command.Parameters.AddWithValue(name, value ?? DBNull.Value);
        return command;
    }

    public static int Run(this SqliteConnection connection, string text, params ReadOnlySpan<(string Name, object? Value)> values)
    {
        using var command = connection.Command(text, values);
        return command.ExecuteNonQuery();
    }

    public static IReadOnlyList<T> Rows<T>(this SqliteCommand command, Func<SqliteDataReader, T> read)
    {
        var rows = new List<T>();
        using (command)
        using (var reader = command.ExecuteReader())
            while (reader.Read()) rows.Add(read(reader));
        return rows;
    }

    public static string? TextOrNull(this SqliteDataReader reader, int column) => reader.IsDBNull(column) ? null : reader.GetString(column);
}
