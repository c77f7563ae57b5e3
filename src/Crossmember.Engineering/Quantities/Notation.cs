namespace Crossmember.Engineering.Quantities;

/// <summary>The characters of shop notation: look-alikes made plain, marks that are always refused, places quoted for messages.</summary>
internal static class Notation
{
    /// <summary>One character for one, so that places in the plain text are places in what was typed.</summary>
    public static string Plain(string text) => string.Create(text.Length, text, (span, source) =>
    {
        for (var i = 0; i < span.Length; i++)
        {
            span[i] = source[i] switch
            {
                '′' or '’' or '‘' or 'ʹ' or '´' or '`' => '\'',
                '″' or '”' or '“' or 'ʺ' or '„' => '"',
                '−' or '–' or '‐' or '‑' => '-',
                '·' or '⋅' or '×' or '•' or '∙' => '*',
                '⁄' or '∕' => '/',
                'º' or '˚' => '°',
                var c when char.IsWhiteSpace(c) => ' ',
                var c => c,
            };
        }
    });

    /// <summary>Commas and tolerances: what is wrong and what would be right, or null.</summary>
    public static (string Wrong, string Right)? Refused(string plain)
    {
        var tolerance = plain.IndexOf('±', StringComparison.Ordinal);
        if (tolerance >= 0)
            return ($"{Quoted(plain, tolerance, tolerance + 1)} is not understood", "write the number alone; its uncertainty has a place of its own");
        var comma = plain.IndexOf(',', StringComparison.Ordinal);
        return comma < 0 ? null : ($"{Quoted(plain, comma, comma + 1)} is not understood", WithoutComma(plain, comma));
    }

    public static int SkipSpaces(string plain, int at)
    {
        while (at < plain.Length && plain[at] == ' ') at++;
        return at;
    }

    public static string Quoted(string plain, int start, int end) =>
        start >= plain.Length ? $"the end at character {plain.Length + 1}" : $"'{plain[start..Math.Min(end, plain.Length)]}' at character {start + 1}";

    private static string WithoutComma(string plain, int comma)
    {
        int from = comma, to = comma + 1;
        while (from > 0 && char.IsAsciiDigit(plain[from - 1])) from--;
        while (to < plain.Length && (char.IsAsciiDigit(plain[to]) || plain[to] is ',' or '.')) to++;
        var number = plain[from..to];
        if (from == comma || !char.IsAsciiDigit(plain[to - 1])) return "write a decimal point and no other marks, for example 38.1";
        var joined = number.Replace(",", "", StringComparison.Ordinal);
        if (number.Count(c => c is ',' or '.') > 1) return $"write {joined}, not {number}";
        var point = number.Replace(',', '.');
        var thousands = to - comma == 4; // three digits after the comma may be meant either way
        return thousands ? $"write {joined}, not {number}; or {point} if the comma is a decimal mark" : $"write {point}, not {number}";
    }
}
