namespace Crossmember.Engineering.Quantities;

/// <summary>Understands quantities as a shop writes them: <c>1' 4-1/2"</c>, <c>120 ft-lb</c>, <c>180 °F</c>, <c>3/16 in</c>.</summary>
/// <remarks>
/// Every code of <c>docs/units.md</c> is accepted as it stands; other spellings are listed there. The decimal mark is a point; a comma is refused,
/// because 3,000 is three thousand in one shop and three in the next. Nothing a person can type makes it throw.
/// </remarks>
public static class ShopNotation
{
    private const int LongestText = 100;

    // Larger and smaller unit that may be written one after the other.
    private static readonly Dictionary<Dimension, string[]> s_chains = new()
    {
        [Dimension.Length] = ["ft", "in"],
        [Dimension.Mass] = ["lb", "oz"],
        [Dimension.Angle] = ["deg", "arcmin"],
        [Dimension.Duration] = ["h", "min", "s"],
    };

    /// <summary>The quantity meant by a text, in SI, or what in it is not understood (characters count from 1) and what would do.</summary>
    /// <param name="text">What a person typed.</param>
    /// <param name="dimension">The kind of quantity that is asked for; it decides what "lb" means.</param>
    public static Parsed<Quantity> Read(string text, Dimension dimension)
    {
        if (string.IsNullOrWhiteSpace(text)) return Not("nothing is written", $"write {Example(dimension)}");
        if (text.Length > LongestText) return Not($"the text goes on after character {LongestText}", $"write only a number and its unit, {Example(dimension)}");
        var plain = Plain(text);
        if (Refused(plain) is { } refused) return refused;
        var at = plain.Length - plain.TrimStart().Length;
        var sign = 1;
        if (plain[at] is '-' or '+')
        {
            sign = plain[at] == '-' ? -1 : 1;
            do at++;
            while (at < plain.Length && plain[at] == ' ');
        }
        return Terms(text.Trim(), plain.TrimEnd(), at, sign, dimension);
    }

    private static Parsed<Quantity> Terms(string typed, string plain, int at, int sign, Dimension dimension)
    {
        double sum = 0;
        Unit? first = null, previous = null;
        var wholeBefore = true;
        while (true)
        {
            var number = NumberReader.At(plain, at);
            if (number.Length == 0) return Not($"{Quoted(plain, at, Math.Max(plain.Length, at + 1))} is not a number", $"begin with the number, {Example(dimension)}");
            var end = at + number.Length;
            if (number.Wrong is { } wrong) return Not($"{Quoted(plain, at, end)} {wrong}", $"write {Example(dimension)}");
            if (!wholeBefore) return Not($"{Quoted(plain, at, plain.Length)} follows a number that is not whole", "only the last part may have a fraction, for example 5 ft 3-1/2 in");
            var (unit, next) = UnitAt(plain, end, dimension);
            if (unit is null) return NoUnit(plain, at, end, dimension);
            if (previous is not null && !Follows(previous, unit, dimension))
                return Not($"{Quoted(plain, at, next)} cannot follow {previous}", $"write one unit, {Example(dimension)}");
            (sum, first, previous, wholeBefore) = (sum + (next < plain.Length || first is not null ? number.Value * unit.Factor : unit.ToSi(sign * number.Value) * sign), first ?? unit, unit, number.Whole);
            if (next >= plain.Length) return Checked(sign * sum, first, typed, dimension);
            at = next;
        }
    }

    private static Parsed<Quantity> Checked(double si, Unit unit, string typed, Dimension dimension)
    {
        if (!double.IsFinite(si)) return Not($"'{typed}' at character 1 is too large", $"write {Example(dimension)}");
        if (dimension == Dimension.Temperature && si < -1e-9) return Not($"'{typed}' at character 1 is below absolute zero", "-273.15 C or -459.67 F is the least");
        return new(new(si, unit, typed), null, null);
    }

    /// <summary>The unit at a place and where the next part of the notation begins; the whole rest is tried first, since a unit may hold digits.</summary>
    private static (Unit? Unit, int Next) UnitAt(string plain, int start, Dimension dimension)
    {
        var rest = plain[start..].Trim();
        if (rest.Length == 0) return (dimension == Dimension.Dimensionless ? dimension.Si : null, plain.Length);
        if (Spellings.Find(rest, dimension) is { } whole) return (whole, plain.Length);
        if (!s_chains.ContainsKey(dimension)) return (null, plain.Length);
        for (var i = start + 1; i < plain.Length; i++)
        {
            if (!NumberReader.Starts(plain[i]) || char.IsLetterOrDigit(plain[i - 1]) || plain[i - 1] == '.') continue;
            return (Spellings.Find(plain[start..i], dimension), i);
        }
        return (null, plain.Length);
    }

    private static bool Follows(Unit larger, Unit smaller, Dimension dimension) =>
        s_chains.GetValueOrDefault(dimension) is { } chain && Array.IndexOf(chain, larger.Code) is var a and >= 0 && Array.IndexOf(chain, smaller.Code) > a;

    private static Parsed<Quantity> NoUnit(string plain, int start, int end, Dimension dimension)
    {
        var at = end;
        while (at < plain.Length && plain[at] == ' ') at++;
        var number = plain[start..end];
        if (at >= plain.Length) return Not($"{Quoted(plain, start, end)} has no unit", $"write the unit too, for example {number} {Unit(dimension)}");
        var rest = plain[at..];
        if (Spellings.Elsewhere(rest) is { } other && other.Dimension != dimension)
            return Not($"{Quoted(plain, at, plain.Length)} is a unit of {other.Dimension}, not of {dimension}", $"write {Example(dimension)}");
        return Not($"{Quoted(plain, at, plain.Length)} is no unit of {dimension}", $"the nearest known is {Spellings.NearestTo(rest, dimension)}, for example {number} {Spellings.NearestTo(rest, dimension)}");
    }

    private static Parsed<Quantity>? Refused(string plain)
    {
        var comma = plain.IndexOf(',', StringComparison.Ordinal);
        if (comma >= 0)
        {
            var from = comma;
            while (from > 0 && char.IsAsciiDigit(plain[from - 1])) from--;
            var to = comma + 1;
            while (to < plain.Length && (char.IsAsciiDigit(plain[to]) || plain[to] is ',' or '.')) to++;
            var number = plain[from..to];
            var point = number.Replace(',', '.');
            var joined = number.Replace(",", "", StringComparison.Ordinal);
            var right = comma + 4 <= to && from < comma ? $"write {joined}, not {number}; if the comma is a decimal mark, write {point}" : $"write {point}, not {number}";
            return Not($"{Quoted(plain, comma, comma + 1)} is not understood", from < comma && to > comma + 1 ? right : "write a decimal point and no other marks, for example 38.1 mm");
        }
        var tolerance = plain.IndexOf('±', StringComparison.Ordinal);
        return tolerance < 0 ? null : Not($"{Quoted(plain, tolerance, tolerance + 1)} is not understood", "write the number alone; its uncertainty has a place of its own");
    }

    /// <summary>One character for one, so that places in the plain text are places in what was typed.</summary>
    private static string Plain(string text) => string.Create(text.Length, text, (span, source) =>
    {
        for (var i = 0; i < span.Length; i++)
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
    });

    private static string Quoted(string plain, int start, int end) =>
        start >= plain.Length ? $"the end at character {plain.Length + 1}" : $"'{plain[start..end]}' at character {start + 1}";

    private static string Unit(Dimension dimension) => (dimension == Dimension.Length ? "in" : dimension.Si.Code);

    private static string Example(Dimension dimension) => dimension == Dimension.Dimensionless ? "a plain number, for example 4.1" : $"a number and its unit, for example 12 {Unit(dimension)}";

    private static Parsed<Quantity> Not(string wrong, string wouldBeRight) => Parsed<Quantity>.Not(wrong, wouldBeRight);
}
