using System.Globalization;
using System.Text.RegularExpressions;

namespace Crossmember.Builds.Pasting;

/// <summary>What stands before the decimals of a column of numbers.</summary>
public enum DecimalMark { Point, Comma }

/// <summary>Reads numbers as people write them in lists: 1,310.50 or 1.310,50 or 1 310.50.</summary>
public static partial class WrittenNumber
{
    /// <summary>The number, or null where the text is none with this mark.</summary>
    public static decimal? Read(string text, DecimalMark mark)
    {
        var plain = Blanks().Replace(text.Trim(), "");
        // With the marks exchanged a number with a comma is one with a point.
        if (mark == DecimalMark.Comma) plain = string.Concat(plain.Select(c => c switch { ',' => '.', '.' => ',', _ => c }));
        return Plain().IsMatch(plain) && decimal.TryParse(plain.Replace(",", "", StringComparison.Ordinal), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var number) ? number : null;
    }

    /// <summary>The mark with which most cells of a column are numbers; a point where both serve.</summary>
    public static DecimalMark Guess(IEnumerable<string> cells)
    {
        var numbers = cells.Select(c => Digits().Match(c).Value).Where(d => d.Length > 0).ToList();
        // One comma and three digits are thousands to one and decimals to the other: only what is not so tells.
        var telling = numbers.Where(n => !Either().IsMatch(n)).ToList();
        return telling.Count(n => Read(n, DecimalMark.Comma) is not null) > telling.Count(n => Read(n, DecimalMark.Point) is not null) ? DecimalMark.Comma : DecimalMark.Point;
    }

    /// <summary>Blanks and apostrophes that part thousands.</summary>
    [GeneratedRegex(@"(?<=^[+-]?[1-9]\d{0,2}([ \u00A0\u202F']\d{3})*)[ \u00A0\u202F'](?=\d{3}(\D|$))")]
    private static partial Regex Blanks();

    /// <summary>No thousands begin with a zero: "0,500" is a half or nothing at all.</summary>
    [GeneratedRegex(@"^[+-]?([1-9]\d{0,2}(,\d{3})+|\d+)?(\.\d+)?$(?<=\d)")]
    private static partial Regex Plain();

    [GeneratedRegex(@"[+-]?\d[\d.,'\u00A0\u202F ]*\d|\d")]
    private static partial Regex Digits();

    [GeneratedRegex(@"^[+-]?[1-9]\d{0,2}[.,]\d{3}$")]
    private static partial Regex Either();
}
