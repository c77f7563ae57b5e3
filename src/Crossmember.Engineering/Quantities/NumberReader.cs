using System.Globalization;

namespace Crossmember.Engineering.Quantities;

/// <summary>Reads the number at the start of a shop notation: 29, .5, 1.5e3, 3/16, 1 3/8, 2-1/2, ½, 1½.</summary>
internal static class NumberReader
{
    private const string Vulgar = "½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞";

    private static readonly double[] s_vulgar =
        [1.0 / 2, 1.0 / 3, 2.0 / 3, 1.0 / 4, 3.0 / 4, 1.0 / 5, 2.0 / 5, 3.0 / 5, 4.0 / 5, 1.0 / 6, 5.0 / 6, 1.0 / 8, 3.0 / 8, 5.0 / 8, 7.0 / 8];

    /// <summary>The number and where it ends; a length of 0 means there is none; Wrong tells of a number that cannot be.</summary>
    public readonly record struct Found(double Value, int Length, string? Wrong = null, bool Whole = false);

    public static bool Starts(char c) => char.IsAsciiDigit(c) || c == '.' || Vulgar.Contains(c, StringComparison.Ordinal);

    public static Found At(string text, int start)
    {
        if (start >= text.Length || !Starts(text[start])) return default;
        if (!char.IsAsciiDigit(text[start]) && text[start] != '.') return new(s_vulgar[Vulgar.IndexOf(text[start])], 1);
        var i = Digits(text, start);
        if (i == start || i >= text.Length || text[i] is '.' or 'e' or 'E') return Decimal(text, start, i);
        if (Fraction(text, start) is { Length: > 0 } plain) return plain;
        var whole = Value(text, start, i);
        if (Starts(text[i]) && text[i] != '.') return new(whole + At(text, i).Value, i + 1 - start);
        var part = text[i] is ' ' or '-' ? Fraction(text, i + 1) : default;
        if (part.Length == 0 && text[i] == ' ' && i + 1 < text.Length && Vulgar.Contains(text[i + 1], StringComparison.Ordinal)) part = At(text, i + 1);
        if (part.Length == 0) return new(whole, i - start, null, true);
        var wrong = part.Wrong ?? (part.Value >= 1 ? "has a fraction of 1 or more after a whole number" : null);
        return new(whole + part.Value, i + 1 + part.Length - start, wrong);
    }

    /// <summary>A ratio written out, 4.11:1 or 1:12; otherwise the number alone.</summary>
    public static Found RatioAt(string text, int start)
    {
        var first = At(text, start);
        var colon = Notation.SkipSpaces(text, start + first.Length);
        if (first.Length == 0 || first.Wrong is not null || colon >= text.Length || text[colon] != ':') return first;
        var from = Notation.SkipSpaces(text, colon + 1);
        var second = At(text, from);
        if (second.Length == 0) return first;
        var ratio = first.Value / second.Value;
        return new(ratio, from + second.Length - start, second.Wrong ?? (second.Value == 0 ? "divides by zero" : double.IsFinite(ratio) ? null : "is too large"));
    }

    private static Found Decimal(string text, int start, int i)
    {
        var whole = i > start;
        if (i < text.Length && text[i] == '.') (i, whole) = (Digits(text, i + 1), false);
        if (i - start == 1 && text[start] == '.') return default;
        if (i < text.Length && text[i] is 'e' or 'E')
        {
            var e = i + 1 < text.Length && text[i + 1] is '+' or '-' ? i + 2 : i + 1;
            var end = Digits(text, e);
            if (end > e) (i, whole) = (end, false);
        }
        var value = Value(text, start, i);
        return new(value, i - start, double.IsFinite(value) ? null : "is too large", whole);
    }

    private static Found Fraction(string text, int start)
    {
        var slash = Digits(text, start);
        if (slash == start || slash >= text.Length || text[slash] != '/') return default;
        var end = Digits(text, slash + 1);
        if (end == slash + 1) return default;
        double top = Value(text, start, slash), bottom = Value(text, slash + 1, end);
        return new(top / bottom, end - start, bottom == 0 ? "divides by zero" : !double.IsFinite(top / bottom) ? "is too large" : null);
    }

    private static int Digits(string text, int i)
    {
        while (i < text.Length && char.IsAsciiDigit(text[i])) i++;
        return i;
    }

    private static double Value(string text, int start, int end) => double.Parse(text.AsSpan(start, end - start), NumberStyles.Float, CultureInfo.InvariantCulture);
}
