namespace Crossmember.Builds.Pasting;

/// <summary>Writes cells as a spreadsheet would put them on the clipboard.</summary>
public static class CellWriter
{
    public static string Write(IEnumerable<IReadOnlyList<string>> rows, char separator) =>
        string.Concat(rows.Select(r => string.Join(separator, r.Select(c => Cell(c, separator))) + "\n"));

    private static string Cell(string cell, char separator) =>
        cell.StartsWith('"') || cell.AsSpan().IndexOfAny(separator, '\r', '\n') >= 0 ? $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"" : cell;
}
