using System.Globalization;
using System.Text.RegularExpressions;
using Crossmember.Builds.Folding;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Planning;

namespace Crossmember.Builds.Pasting;

/// <summary>Reads the rows of a parts list by what is thought of its columns. No row is left out: what is wrong with one stands in it.</summary>
/// <param name="books">The currency of the shop, taken where a price names none; null: nobody has said it.</param>
/// <param name="massUnit">The unit of weights that name none.</param>
public sealed partial class PartsReader(HeaderGuess guess, string? books, string massUnit)
{
    private const int LongestText = 300;

    public PastedPart Read(CellRow row)
    {
        var faults = new Faults();
        string? Text(ColumnKind kind) => Cell(row, kind) is { Text.Length: > 0 } cell ? Short(cell.Text) : null;
        var title = Text(ColumnKind.Part);
        if (title is null) faults.Add(At(row, Cell(row, ColumnKind.Part)?.Column), "the part has no name", "a name, such as brake hose");
        var (each, count) = Price(row, faults);
        return new(row.Line, row.Cells, title ?? "", Text(ColumnKind.Description), Count(row, count, faults), each, Text(ColumnKind.Vendor), Text(ColumnKind.Number), Lead(row), Text(ColumnKind.Item),
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
        var (each, count) = EachAndCount.Split(text, guess.Columns[column].Mark);
        if (!each.Any(c => char.IsLetter(c) || char.GetUnicodeCategory(c) == UnicodeCategory.CurrencySymbol))
        {
            // What stands over the column stands in each of its bare cells.
            if (HeaderUnits.Currency(guess.Columns[column].Header) is { } over) each = $"{over} {each}";
            else
            {
                faults.Add(At(row, column), $"'{text}' may be in one of several currencies: the header says '{guess.Columns[column].Header}'", "the price with its currency, such as 310 EUR");
                return (null, null);
            }
        }
        return (WrittenMoney.Read(each, books, guess.Columns[column].Mark, At(row, column), faults), count == 1 ? null : count);
    }

    private decimal Count(CellRow row, decimal? inPrice, Faults faults)
    {
        if (Cell(row, ColumnKind.Quantity) is not var (column, text) || text.Length == 0) return inPrice ?? 1;
        // "4 pcs" and "2x" are 4 and 2; "2 1/2" and "3 pairs" are not 2 and 3.
        var digits = Counted().Match(text) is { Success: true } m ? m.Groups["n"].Value : text;
        if (WrittenNumber.Read(digits, guess.Columns[column].Mark) is { } count and >= 0 and <= 1_000_000) return count;
        faults.Add(At(row, column), $"'{text}' is no number of parts", "a number such as 4");
        return 1;
    }

    private static string Category(string? text) =>
        text?.ToLowerInvariant() is { } said && CostReader.Categories.FirstOrDefault(c => c == said.Replace(' ', '-') || c.TrimEnd('s') == said) is { } known ? known : "parts";

    private string? Mass(CellRow row, Faults faults)
    {
        if (Cell(row, ColumnKind.Mass) is not var (column, text) || text.Length == 0) return null;
        var mark = guess.Columns[column].Mark;
        var bare = WrittenNumber.Read(text, mark) is { } number and >= 0 ? number : (decimal?)null;
        if (bare is { } weight)
        {
            if (HeaderUnits.Mass(guess.Columns[column].Header, massUnit) is { } unit) return FormattableString.Invariant($"{weight} {unit}");
            faults.Add(At(row, column), $"it is not known in what unit '{text}' is: the header says '{guess.Columns[column].Header}'", "a weight with its unit, such as 31 kg or 12 lb");
            return null;
        }
        if (Weighed(text, mark) is { } said) return said;
        faults.Add(At(row, column), $"'{text}' is no weight", "a number with its unit, such as 31 kg or 12 lb");
        return null;
    }

    /// <summary>A weight with its unit in the shop's notation, its number read by the mark of the column; null where it is none.</summary>
    private static string? Weighed(string text, DecimalMark mark)
    {
        // Where no mark is in it, or the one that the notation knows, it is a weight as it stands: "1/2 lb", "12 lb 8.5 oz".
        var plain = mark == DecimalMark.Point || text.IndexOfAny(['.', ',']) < 0;
        if (plain && ShopNotation.Read(text, Dimension.Mass).Value is { } read) return read.Si >= 0 ? text : null;
        if (NumberAndUnit().Match(text) is not { Success: true } m || WrittenNumber.Read(m.Groups["n"].Value, mark) is not { } number) return null;
        var said = FormattableString.Invariant($"{number} {m.Groups["unit"].Value}");
        return ShopNotation.Read(said, Dimension.Mass).Value is { Si: >= 0 } ? said : null;
    }

    /// <summary>"3" under "Lead (weeks)" is three weeks.</summary>
    private string? Lead(CellRow row)
    {
        if (Cell(row, ColumnKind.Lead) is not var (column, text) || text.Length == 0) return null;
        return Short(BareTime().IsMatch(text) && HeaderUnits.Lead(guess.Columns[column].Header) is { Length: > 0 } unit ? $"{text} {unit}" : text);
    }

    private static string Short(string text) => text.Length <= LongestText ? text : text[..LongestText];

    /// <summary>Words for single parts around a number.</summary>
    [GeneratedRegex(@"^[x×]?\s*(?<n>[+-]?\d([\d.,'\u00A0\u202F ]*\d)?)\s*(x|×|pcs?|pieces?|off|ea|each|nos?|units?|sets?|kits?|stück|stueck|stk|st|pièces?|pzas?|pz|pezzi|uds?|unidades|stuks)?\.?$", RegexOptions.IgnoreCase)]
    private static partial Regex Counted();

    [GeneratedRegex(@"^(?<n>[+-]?\d([\d.,'\u00A0\u202F ]*\d)?)\s*(?<unit>[^\d\s.,][^\d]*)$")]
    private static partial Regex NumberAndUnit();

    [GeneratedRegex(@"^\d{1,4}([.,]\d{1,2})?(\s*(-|–|to)\s*\d{1,4}([.,]\d{1,2})?)?$")]
    private static partial Regex BareTime();
}
