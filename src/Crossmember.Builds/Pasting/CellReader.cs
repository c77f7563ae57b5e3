using System.Text;

namespace Crossmember.Builds.Pasting;

/// <summary>A row of a pasted table.</summary>
/// <param name="Line">The line of the text on which it begins, from 1.</param>
/// <param name="Cells">Without the blanks around them.</param>
public sealed record CellRow(int Line, IReadOnlyList<string> Cells)
{
    /// <summary>Cells with a quote that has no other: an inch mark, or a cell cut through by the wrong separator.</summary>
    internal int OpenQuotes { get; init; }
}

/// <summary>A pasted table: every row that holds anything.</summary>
/// <param name="Separator">Between cells; null where each line is one cell.</param>
public sealed record CellTable(IReadOnlyList<CellRow> Rows, char? Separator)
{
    public int Columns => Rows.Count == 0 ? 0 : Rows.Max(r => r.Cells.Count);
}

/// <summary>Reads what a spreadsheet puts on the clipboard or saves as text: cells between tabs, semicolons, bars or commas, quoted where they hold one (RFC 4180).</summary>
/// <remarks>A quote that does not open and close a whole cell is an inch mark or a slip: it stays in the cell as it is.</remarks>
public static class CellReader
{
    /// <summary>In the order they are thought of: a comma also stands within numbers and sentences.</summary>
    private static readonly char[] s_separators = ['\t', ';', '|', ','];

    private const int RowsLookedAt = 200, LongestQuoted = 32_000;

    /// <summary>Cells with the separator that makes a table of the text.</summary>
    public static CellTable Read(string text) => Guess(text) is { } separator ? Read(text, separator) : Read(text, '\0') with { Separator = null };

    public static CellTable Read(string text, char separator) => new([.. Rows(text, separator)], separator);

    /// <summary>The first separator that gives two cells or more in at least half of the rows, and leaves fewer quotes open than any other: a wrong one cuts quoted cells apart.</summary>
    private static char? Guess(string text)
    {
        var fitting = s_separators.Select(s => (Separator: s, Rows: Rows(text, s).Take(RowsLookedAt).ToList()))
            .Where(g => g.Rows.Count > 0 && g.Rows.Count(r => r.Cells.Count > 1) * 2 >= g.Rows.Count).ToList();
        return fitting.Count == 0 ? null : fitting.MinBy(g => g.Rows.Sum(r => r.OpenQuotes)).Separator;
    }

    private static IEnumerable<CellRow> Rows(string text, char separator)
    {
        List<string> cells = [];
        var (at, line, first, open) = (text.StartsWith('\uFEFF') ? 1 : 0, 1, 1, 0);
        while (at < text.Length)
        {
            var (cell, end, lines) = Cell(text, at, separator);
            // A cell in quotes is shorter than what was read for it; any other holds them in pairs, or it was cut through.
            if (cell.Length == end - at && (cell.StartsWith('"') || cell.Count(c => c == '"') % 2 == 1)) open++;
            cells.Add(cell.Trim());
            line += lines;
            at = end;
            if (at < text.Length && text[at] == separator)
            {
                // A separator at the very end has an empty cell behind it.
                if (++at == text.Length) cells.Add("");
                else continue;
            }
            if (cells.Exists(c => c.Length > 0)) yield return new(first, [.. cells]) { OpenQuotes = open };
            cells.Clear();
            open = 0;
            if (at < text.Length) at += text[at] == '\r' && at + 1 < text.Length && text[at + 1] == '\n' ? 2 : 1;
            first = ++line;
        }
    }

    private static (string Cell, int End, int Lines) Cell(string text, int at, char separator)
    {
        if (text[at] == '"' && Quoted(text, at, separator) is { } quoted) return quoted;
        var end = at;
        while (end < text.Length && text[end] != separator && text[end] is not ('\r' or '\n')) end++;
        return (text[at..end], end, 0);
    }

    /// <summary>Null where the quote is never closed, or something stands behind the one that closes it.</summary>
    private static (string, int, int)? Quoted(string text, int at, char separator)
    {
        var cell = new StringBuilder();
        var lines = 0;
        for (var i = at + 1; i < text.Length && i - at < LongestQuoted; i++)
        {
            if (text[i] != '"')
            {
                if (text[i] == '\n' || (text[i] == '\r' && (i + 1 == text.Length || text[i + 1] != '\n'))) lines++;
                cell.Append(text[i]);
            }
            else if (i + 1 < text.Length && text[i + 1] == '"') cell.Append(text[i++]);
            else if (i + 1 == text.Length || text[i + 1] == separator || text[i + 1] is '\r' or '\n') return (cell.ToString(), i + 1, lines);
            else return null;
        }
        return null;
    }
}
