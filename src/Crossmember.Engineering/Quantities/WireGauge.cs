using System.Globalization;
using UnitsNet;

namespace Crossmember.Engineering.Quantities;

/// <summary>The size of a conductor: an American Wire Gauge number, or a metric size given as metal area.</summary>
/// <remarks>
/// Formula:  d = 0.127 mm x 92^((36-n)/39), A = pi d^2/4; 1/0 is n = 0, 2/0 is -1, 3/0 is -2, 4/0 is -3
/// Valid:    solid round conductors 4/0 to 40. A stranded cable of the same number has about this metal area and a larger outside.
/// Source:   ASTM B258, standard nominal diameters of wires (formula from memory of the standard)
/// Example:  10 AWG -> 2.588 mm, 5.261 mm2
/// </remarks>
public sealed record WireGauge
{
    /// <summary>Gauge number of the thickest (4/0) and the thinnest size.</summary>
    public const int Thickest = -3, Thinnest = 40;

    private const string Sample = "10 AWG, 2/0 AWG or 2.5 mm2";

    private WireGauge(int? number, double squareMeters) => (Number, Area) = (number, UnitsNet.Area.FromSquareMeters(squareMeters));

    /// <summary>The AWG number (0 for 1/0, -3 for 4/0), or null for a metric size.</summary>
    public int? Number { get; }

    /// <summary>Metal area.</summary>
    public Area Area { get; }

    /// <summary>Diameter of the solid conductor of this gauge; null for a metric size, whose area alone is stated.</summary>
    public Length? Diameter => Number is { } n ? Length.FromMillimeters(Millimeters(n)) : null;

    /// <summary>The conductor of a gauge number.</summary>
    /// <param name="number">-3 (4/0) to 40.</param>
    public static WireGauge Awg(int number)
    {
        if (number is < Thickest or > Thinnest) throw new ArgumentOutOfRangeException(nameof(number), number, "sizes run from 4/0 (-3) to 40");
        var d = Millimeters(number) / 1000; // m
        return new(number, Math.PI * d * d / 4);
    }

    /// <summary>Reads <c>10 AWG</c>, <c>AWG 10</c>, <c>2/0 AWG</c>, <c>4/0</c>, <c>00 AWG</c> or a metal area such as <c>2.5 mm2</c>.</summary>
    public static Parsed<WireGauge> Read(string text)
    {
        var plain = Notation.Plain(text ?? "").TrimEnd();
        if (plain.Length == 0) return Parsed<WireGauge>.Not("nothing is written", $"write {Sample}");
        var word = plain.IndexOf("AWG", StringComparison.OrdinalIgnoreCase);
        if (word < 0) return plain.EndsWith("/0", StringComparison.Ordinal) ? Gauge(plain.Trim(), plain) : Metric(plain);
        var leads = word == Notation.SkipSpaces(plain, 0);
        var size = leads ? plain[(word + 3)..].Trim() : plain[..word].Trim();
        if (leads || word + 3 == plain.Length) return Gauge(size, plain);
        return Parsed<WireGauge>.Not($"{Notation.Quoted(plain, Notation.SkipSpaces(plain, word + 3), plain.Length)} is not understood", $"write {Sample}");
    }

    public override string ToString() => Number switch
    {
        null => $"{Figures.Short(Area.SquareMillimeters)} mm2",
        < 1 => $"{1 - Number}/0 AWG",
        _ => $"{Number} AWG",
    };

    private static double Millimeters(int n) => 0.127 * Math.Pow(92, (36 - n) / 39.0);

    private static Parsed<WireGauge> Gauge(string size, string plain)
    {
        var at = plain.IndexOf(size, StringComparison.Ordinal);
        var wrong = Notation.Quoted(plain, size.Length == 0 ? plain.Length : at, at + size.Length);
        if (GaugeNumber(size) is not { } n)
            return Parsed<WireGauge>.Not($"{wrong} is no AWG size",
                "sizes are 4/0, 3/0, 2/0, 1/0 and whole numbers 1 to 40, for example 10 AWG");
        return n is < Thickest or > Thinnest
            ? Parsed<WireGauge>.Not($"{wrong} is outside the AWG sizes 4/0 to 40", $"write {Sample}")
            : new(Awg(n), null, null);
    }

    private static int? GaugeNumber(string size)
    {
        if (size.Length is 0 or > 4 || !size.All(c => char.IsAsciiDigit(c) || c == '/')) return null;
        if (size.All(c => c == '0')) return 1 - size.Length;
        if (size is [var zeros, '/', '0']) return zeros == '0' ? null : 1 - (zeros - '0');
        return size[0] != '0' && int.TryParse(size, NumberStyles.None, CultureInfo.InvariantCulture, out var n) ? n : null;
    }

    private static Parsed<WireGauge> Metric(string plain)
    {
        var area = ShopNotation.Read(plain, Dimension.Area);
        if (area.Value is not { } read)
        {
            var bare = ShopNotation.Read(plain, Dimension.Dimensionless).Value is { Si: > 0 } number ? number.Typed : null;
            return Parsed<WireGauge>.Not(area.Wrong!, bare is null ? $"write {Sample}" : $"write {bare} AWG or {bare} mm2: a bare number can be meant as either");
        }
        return read.Si > 0
            ? new(new WireGauge(null, read.Si), null, null)
            : Parsed<WireGauge>.Not($"{Notation.Quoted(plain, 0, plain.Length)} is no conductor area", $"write {Sample}");
    }
}
