using Crossmember.Builds.Folding;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Planning;

namespace Crossmember.Builds.Pasting;

/// <summary>Reads the rows of a parts list by what is thought of its columns. No row is left out: what is wrong with one stands in it.</summary>
/// <param name="books">The currency of the shop: taken where a price names none.</param>
/// <param name="massUnit">The unit of weights that name none.</param>
public sealed class PartsReader(HeaderGuess guess, string books, string massUnit)
{
    private const int LongestText = 300;

    public PastedPart Read(CellRow row)
    {
        var faults = new Faults();
        string? Text(ColumnKind kind) => Cell(row, kind) is { Text.Length: > 0 } cell ? Short(cell.Text) : null;
        var title = Text(ColumnKind.Part);
        if (title is null) faults.Add(At(row, Cell(row, ColumnKind.Part)?.Column), "the part has no name", "a name, such as brake hose");
        var (each, count) = Price(row, faults);
        return new(row.Line, row.Cells, title ?? "", Text(ColumnKind.Description), Count(row, count, faults), each, Text(ColumnKind.Vendor), Text(ColumnKind.Number), Text(ColumnKind.Lead), Text(ColumnKind.Item),
            Category(Text(ColumnKind.Category)), Mass(row, faults), faults.List);
    }

    private (int Column, string Text)? Cell(CellRow row, ColumnKind kind)
    {
        for (var i = 0; i < guess.Columns.Count; i++)
            if (guess.Columns[i].Kind == kind) return (i, i < row.Cells.Count ? row.Cells[i] : "");
        return null;
    }

    private string At(CellRow row, int? column) => column is { } c ? $"line {row.Line}, {Name(c)}" : $"line {row.Line}";

    private string Name(int column) => guess.Columns[column].Header is { Length: > 0 } header ? $"“{header}”" : $"column {column + 1}";

    /// <summary>A cell may say how many as well: "310 each, 5".</summary>
    private (Money?, decimal?) Price(CellRow row, Faults faults)
    {
        if (Cell(row, ColumnKind.Price) is not var (column, text) || text.Length == 0) return (null, null);
        var (each, count) = EachAndCount.Split(text);
        return (WrittenMoney.Read(each, books, guess.Columns[column].Mark, At(row, column), faults), count == 1 ? null : count);
    }

    private decimal Count(CellRow row, decimal? inPrice, Faults faults)
    {
        if (Cell(row, ColumnKind.Quantity) is not var (column, text) || text.Length == 0) return inPrice ?? 1;
        // "4 pcs" and "2x" are 4 and 2.
        var digits = text.TrimEnd(' ', '.', 'x', '×').Split(' ')[0];
        if (WrittenNumber.Read(digits, guess.Columns[column].Mark) is { } count and >= 0 and <= 1_000_000) return count;
        faults.Add(At(row, column), $"'{text}' is no number of parts", "a number such as 4");
        return 1;
    }

    private static string Category(string? text) =>
        text?.ToLowerInvariant() is { } said && CostReader.Categories.FirstOrDefault(c => c == said.Replace(' ', '-') || c.TrimEnd('s') == said) is { } known ? known : "parts";

    private string? Mass(CellRow row, Faults faults)
    {
        if (Cell(row, ColumnKind.Mass) is not var (column, text) || text.Length == 0) return null;
        if (ShopNotation.Read(text, Dimension.Mass).Value is { Si: >= 0 }) return text;
        if (WrittenNumber.Read(text, guess.Columns[column].Mark) is { } number and >= 0) return FormattableString.Invariant($"{number} {UnitOf(guess.Columns[column], massUnit)}");
        faults.Add(At(row, column), $"'{text}' is no weight", "a number with its unit, such as 31 kg or 12 lb");
        return null;
    }

    /// <summary>The unit of the weights of a column: that of its header, else the usual one.</summary>
    public static string UnitOf(ColumnGuess column, string usual) => (column.Header ?? "").ToLowerInvariant() switch
    {
        var h when h.Contains("kg", StringComparison.Ordinal) => "kg",
        var h when h.Contains("lb", StringComparison.Ordinal) => "lb",
        _ => usual,
    };

    private static string Short(string text) => text.Length <= LongestText ? text : text[..LongestText];
}
