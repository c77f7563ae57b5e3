using System.Globalization;

namespace Crossmember.Builds.Journal;

/// <summary>A double as ECMAScript writes it (ECMA-262, Number::toString, radix 10), which RFC 8785 section 3.2.2.3 asks for.</summary>
public static class EcmaNumber
{
    /// <summary>The text of a finite number; minus zero is <c>0</c>.</summary>
    public static string Text(double number)
    {
        if (!double.IsFinite(number)) throw new ArgumentOutOfRangeException(nameof(number), "JSON has no NaN and no infinity");
        if (number == 0) return "0";
        // The runtime already gives the shortest digits that read back as the same double; only their layout differs from ECMAScript's.
        var (digits, point) = Digits(Math.Abs(number));
        return (number < 0 ? "-" : "") + Layout(digits, point);
    }

    /// <summary>Significant digits and the place of the decimal point counted from their start (n in ECMA-262).</summary>
    private static (string Digits, int Point) Digits(double number)
    {
        var text = number.ToString("R", CultureInfo.InvariantCulture);
        var e = text.IndexOf('E', StringComparison.Ordinal);
        var mantissa = e < 0 ? text : text[..e];
        var exponent = e < 0 ? 0 : int.Parse(text.AsSpan(e + 1), NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture);
        var dot = mantissa.IndexOf('.', StringComparison.Ordinal);
        var point = (dot < 0 ? mantissa.Length : dot) + exponent;
        var all = mantissa.Replace(".", "", StringComparison.Ordinal);
        var significant = all.TrimStart('0');
        return (significant.TrimEnd('0'), point - (all.Length - significant.Length));
    }

    private static string Layout(string digits, int point)
    {
        var k = digits.Length;
        if (k <= point && point <= 21) return digits.PadRight(point, '0');
        if (point is > 0 and <= 21) return digits[..point] + "." + digits[point..];
        if (point is > -6 and <= 0) return "0." + new string('0', -point) + digits;
        var fraction = k == 1 ? "" : "." + digits[1..];
        return $"{digits[0]}{fraction}e{(point > 0 ? "+" : "-")}{Math.Abs(point - 1)}";
    }
}
