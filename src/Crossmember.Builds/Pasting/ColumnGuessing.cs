using System.Text.RegularExpressions;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Builds.Pasting;

/// <summary>Guesses what the columns of a pasted list hold: by the words over them, else by what stands in them.</summary>
public static partial class ColumnGuessing
{
    private const int RowsLookedAt = 200;

    public static HeaderGuess Of(CellTable table)
    {
        if (table.Rows.Count == 0) return new(false, []);
        var top = table.Rows[0].Cells;
        var header = IsHeader(top);
        var body = table.Rows.Skip(header ? 1 : 0).Take(RowsLookedAt).ToList();
        var columns = Enumerable.Range(0, table.Columns).Select(c => new Column(header && c < top.Count ? top[c] : null, [.. body.Select(r => c < r.Cells.Count ? r.Cells[c] : "").Where(t => t.Length > 0)])).ToList();
        var kinds = header ? ByWords(columns) : new ColumnKind[columns.Count];
        ByContent(columns, kinds, header);
        return new(header, [.. columns.Select((c, i) => new ColumnGuess(kinds[i], c.Header, WrittenNumber.Guess(c.Cells)))]);
    }

    /// <summary>Two cells that name a column, or all that are there, and none with a number in it.</summary>
    private static bool IsHeader(IReadOnlyList<string> cells)
    {
        var filled = cells.Where(c => c.Length > 0).ToList();
        var known = filled.Count(c => HeaderWords.Of(c) is not null);
        return (known >= 2 || known == filled.Count) && !filled.Exists(c => Numeric().IsMatch(c));
    }

    private static ColumnKind[] ByWords(List<Column> columns)
    {
        var kinds = columns.Select(c => HeaderWords.Of(c.Header ?? "") ?? ColumnKind.Ignore).ToArray();
        for (var i = 0; i < kinds.Length; i++)
        {
            // Of two columns of a kind the first counts; a second "part" is most often the number.
            if (kinds[i] == ColumnKind.Ignore || Array.IndexOf(kinds, kinds[i]) == i) continue;
            kinds[i] = kinds[i] == ColumnKind.Part && !kinds.Contains(ColumnKind.Description) ? ColumnKind.Description : ColumnKind.Ignore;
        }
        return kinds;
    }

    private static void ByContent(List<Column> columns, ColumnKind[] kinds, bool header)
    {
        bool Lacks(ColumnKind kind) => !kinds.Contains(kind);
        // "Item" over a list without a name of the part is that name; a description does as well.
        if (header && Lacks(ColumnKind.Part))
            foreach (var name in new[] { ColumnKind.Description, ColumnKind.Item })
                if (Lacks(ColumnKind.Part) && Array.IndexOf(kinds, name) is var i and >= 0)
                    kinds[i] = ColumnKind.Part;
        List<int> Open() => [.. Enumerable.Range(0, kinds.Length).Where(i => kinds[i] == ColumnKind.Ignore && columns[i].Cells.Count > 0 && (!header || HeaderWords.IsAmount(columns[i].Header ?? "")))];
        void Give(ColumnKind kind, Func<Column, bool> fits)
        {
            if (Lacks(kind) && Open().Where(i => fits(columns[i])).ToList() is [var first, ..]) kinds[first] = kind;
        }
        Give(ColumnKind.Mass, c => c.Share(t => ShopNotation.Read(t, Dimension.Mass).Ok) > 0.6);
        Give(ColumnKind.Lead, c => c.Share(Lead().IsMatch) > 0.6);
        Give(ColumnKind.Price, c => c.Share(Priced().IsMatch) > 0.6);
        Give(ColumnKind.Quantity, c => c.Share(Whole().IsMatch) > 0.6);
        Give(ColumnKind.Price, c => c.Share(t => Numeric().IsMatch(t)) > 0.6);
        Give(ColumnKind.Number, c => c.Share(Coded().IsMatch) > 0.6);
        if (Lacks(ColumnKind.Part) && Open() is { Count: > 0 } left) kinds[left.MaxBy(i => columns[i].Cells.Average(c => c.Length))] = ColumnKind.Part;
    }

    private sealed record Column(string? Header, List<string> Cells)
    {
        public double Share(Func<string, bool> fits) => Cells.Count == 0 ? 0 : (double)Cells.Count(fits) / Cells.Count;
    }

    [GeneratedRegex(@"^\s*[A-Z]{0,3}[\p{Sc}]?\s*[+-]?\d[\d.,' \u00A0\u202F]*\s*(\p{Sc}|[A-Z]{3})?\s*$")]
    private static partial Regex Numeric();

    /// <summary>With a currency or with two decimals.</summary>
    [GeneratedRegex(@"^\s*([A-Z]{0,3}\p{Sc}|[A-Z]{3})\s*[\d.,' ]+\s*$|^\s*[\d.,' ]+\s*(\p{Sc}|[A-Z]{3})\s*$|^\s*[\d.,' ]*\d[.,]\d{2}\s*$")]
    private static partial Regex Priced();

    [GeneratedRegex(@"^\d{1,4}$")]
    private static partial Regex Whole();

    [GeneratedRegex(@"\d+\s*(-\s*\d+\s*)?(d|days?|w|wks?|weeks?|months?|tage?|wochen?|jours?|semaines?|días?|semanas?|dagen|weken)\b", RegexOptions.IgnoreCase)]
    private static partial Regex Lead();

    /// <summary>One word with a digit in it.</summary>
    [GeneratedRegex(@"^(?=.*\d)[A-Za-z0-9][A-Za-z0-9./-]{2,}$")]
    private static partial Regex Coded();
}
