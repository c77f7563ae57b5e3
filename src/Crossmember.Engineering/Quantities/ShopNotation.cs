namespace Crossmember.Engineering.Quantities;

/// <summary>Understands quantities as a shop writes them: <c>1' 4-1/2"</c>, <c>120 ft-lb</c>, <c>180 °F</c>, <c>3/16 in</c>.</summary>
/// <remarks>
/// Every code of <c>docs/units.md</c> is accepted as it stands; other spellings are listed there. The decimal mark is a point; a comma is refused,
/// because 3,000 is three thousand in one shop and three in the next. Nothing a person can type makes it throw.
/// </remarks>
public static class ShopNotation
{
    private const int LongestText = 100;

    // Larger and smaller units that may be written one after the other.
    private static readonly Dictionary<Dimension, string[]> s_chains = new()
    {
        [Dimension.Length] = ["ft", "in"],
        [Dimension.Mass] = ["lb", "oz"],
        [Dimension.Angle] = ["deg", "arcmin"],
        [Dimension.Duration] = ["h", "min", "s"],
    };

    private readonly record struct Part(double Number, bool Whole, Unit Unit);

    /// <summary>The quantity meant by a text, in SI, or what in it is not understood (characters count from 1) and what would do.</summary>
    /// <param name="text">What a person typed.</param>
    /// <param name="dimension">The kind of quantity that is asked for; it decides what "lb" means.</param>
    public static Parsed<Quantity> Read(string text, Dimension dimension)
    {
        if (string.IsNullOrWhiteSpace(text)) return Not("nothing is written", $"write {Example(dimension)}");
        if (text.Length > LongestText) return Not($"the text goes on after character {LongestText}", $"write only {Example(dimension)}");
        var plain = Notation.Plain(text).TrimEnd();
        if (Notation.Refused(plain) is { } refused) return Not(refused.Wrong, refused.Right);
        var at = Notation.SkipSpaces(plain, 0);
        var sign = plain[at] == '-' ? -1 : 1;
        if (plain[at] is '-' or '+') at = Notation.SkipSpaces(plain, at + 1);
        return Parts(text.Trim(), plain, at, sign, dimension);
    }

    /// <summary>What to write where this dimension is asked for, for messages.</summary>
    private static string Example(Dimension dimension) =>
        dimension == Dimension.Dimensionless ? "a plain number, for example 4.1" : $"a number and its unit, for example 12 {Usual(dimension)}";

    private static Unit Usual(Dimension dimension) => Display.Customary(dimension, MeasureSystem.UsCustomary);

    private static Parsed<Quantity> Parts(string typed, string plain, int at, int sign, Dimension dimension)
    {
        var parts = new List<Part>();
        while (at < plain.Length || parts.Count == 0)
        {
            var number = dimension == Dimension.Dimensionless ? NumberReader.RatioAt(plain, at) : NumberReader.At(plain, at);
            if (number.Length == 0) return Not($"{Notation.Quoted(plain, at, plain.Length)} is not a number", $"begin with the number: {Example(dimension)}");
            var end = at + number.Length;
            if (number.Wrong is { } wrong) return Not($"{Notation.Quoted(plain, at, end)} {wrong}", $"write {Example(dimension)}");
            var (unit, next) = UnitAt(plain, end, dimension);
            if (unit is null) return NoUnit(plain, at, end, next, dimension);
            if (parts.Count > 0 && !Follows(parts[^1].Unit, unit, dimension))
                return Not($"{Notation.Quoted(plain, at, next)} cannot follow a part in {parts[^1].Unit}", $"write {Example(dimension)}");
            if (parts.Count > 0 && !parts[^1].Whole)
                return Not($"{Notation.Quoted(plain, at, next)} follows a part that is not whole", "only the last part may have a fraction, as in 5 ft 3-1/2 in");
            parts.Add(new(number.Value, number.Whole, unit));
            at = next;
        }
        var si = parts is [var only] ? only.Unit.ToSi(sign * only.Number) : sign * parts.Sum(p => p.Number * p.Unit.Factor);
        return Checked(new(si, parts[0].Unit, typed), dimension);
    }

    private static Parsed<Quantity> Checked(Quantity read, Dimension dimension)
    {
        if (!double.IsFinite(read.Si)) return Not($"'{read.Typed}' at character 1 is too large", $"write {Example(dimension)}");
        if (dimension == Dimension.Temperature && read.Si < -1e-9)
            return Not($"'{read.Typed}' at character 1 is below absolute zero", "-273.15 C or -459.67 F is the least");
        return new(read, null, null);
    }

    /// <summary>The unit at a place and where the next part begins; the whole rest is tried first, since a unit may hold digits.</summary>
    private static (Unit? Unit, int Next) UnitAt(string plain, int start, Dimension dimension)
    {
        var rest = plain[start..].Trim();
        if (rest.Length == 0) return (dimension == Dimension.Dimensionless ? dimension.Si : null, plain.Length);
        if (Spellings.Find(rest, dimension) is { } whole) return (whole, plain.Length);
        var next = s_chains.ContainsKey(dimension) ? NextPart(plain, start + 1) : plain.Length;
        return (Spellings.Find(plain[start..next], dimension), next);
    }

    private static int NextPart(string plain, int from)
    {
        for (var i = from; i < plain.Length; i++)
        {
            // "5 ft.3 in" is left alone: the point may end "ft." or begin ".3".
            if (plain[i - 1] is '.' or '/' || char.IsLetterOrDigit(plain[i - 1]) || !NumberReader.Starts(plain[i])) continue;
            if (plain[i] != '.' || (i + 1 < plain.Length && char.IsAsciiDigit(plain[i + 1]))) return i;
        }
        return plain.Length;
    }

    private static bool Follows(Unit larger, Unit smaller, Dimension dimension) =>
        s_chains.GetValueOrDefault(dimension) is { } chain && Array.IndexOf(chain, larger.Code) is >= 0 and var a && Array.IndexOf(chain, smaller.Code) > a;

    private static Parsed<Quantity> NoUnit(string plain, int start, int end, int next, Dimension dimension)
    {
        var number = plain[start..end];
        var at = Notation.SkipSpaces(plain, end);
        if (at >= plain.Length)
            return Not($"{Notation.Quoted(plain, start, end)} has no unit", $"write the unit too, for example {number} {Usual(dimension)}");
        var rest = plain[at..Math.Max(at, next)].TrimEnd();
        if (Spellings.Canonical(rest).Length == 0) rest = plain[at..]; // only a mark before the next number: the whole rest is meant
        var wrong = Notation.Quoted(plain, at, at + rest.Length);
        if (Spellings.Elsewhere(rest) is { } other && other.Dimension != dimension)
            return Not($"{wrong} is a unit of {other.Dimension}, not of {dimension}", $"write {Example(dimension)}");
        return Not($"{wrong} is no unit of {dimension}", $"the nearest known is {Spellings.NearestTo(rest, dimension)}, or write {Example(dimension)}");
    }

    private static Parsed<Quantity> Not(string wrong, string wouldBeRight) => Parsed<Quantity>.Not(wrong, wouldBeRight);
}
