using System.Globalization;
using System.Text.RegularExpressions;

namespace Crossmember.Engineering.Quantities;

/// <summary>Quantities inside a sentence, in the reader's own measures: findings are worded once, but read in two systems.</summary>
/// <remarks>
/// The figure keeps the number of figures it was written with (three at least), so it agrees with the exact one to that.
/// Inches stay: "in" is a word as well, and tires and tubes are called by inches everywhere.
/// </remarks>
public static partial class Sentences
{
    private const int FewestFigures = 3;

    [GeneratedRegex(@"(?<![\w.,-])(?<sign>[+-]?)(?<number>\d+(?:\.\d+)?) (?<unit>kg|mm|km/h|km|kN|N/mm|N m|N|kW|MPa|m/s|lbf ft|lbf|lb|mph|psi|hp|ft|m|C)(?![\w/·])", RegexOptions.ExplicitCapture)]
    private static partial Regex Quantities();

    /// <param name="exact">Numbers that the sentence was made from, each with its unit's code: where a figure in it is one of them rounded, the exact one is turned, so that nothing is rounded twice.</param>
    public static string InMeasures(string text, MeasureSystem system, params IEnumerable<(double? Value, string? Unit)> exact) => Quantities().Replace(text, found =>
    {
        var unit = Units.Find(found.Groups["unit"].Value)!;
        if (CustomaryUnits.Belongs(unit, system)) return found.Value;
        var number = found.Groups["number"].Value;
        var written = double.Parse(number, CultureInfo.InvariantCulture);
        var decimals = number.Contains('.', StringComparison.Ordinal) ? number.Length - number.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        var meant = exact.FirstOrDefault(e => e.Value is { } v && e.Unit == unit.Code && Math.Abs(Math.Abs(v) - written) <= 0.5000001 * Math.Pow(10, -decimals)).Value;
        // A temperature has its own zero in each system, so that its sign is part of the number.
        var below = unit.Dimension == Dimension.Temperature && found.Groups["sign"].Value == "-";
        var si = unit.ToSi(Math.Abs(meant ?? written) * (below ? -1 : 1));
        var own = CustomaryUnits.For(si, unit.Dimension, system);
        return $"{(below ? "" : found.Groups["sign"].Value)}{Rounded(own.FromSi(si), Math.Max(FewestFigures, number.TrimStart('0', '.').Count(char.IsDigit)))} {own.Code}";
    });

    private static string Rounded(double value, int figures)
    {
        if (value == 0) return "0";
        var decimals = figures - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        var scale = Math.Pow(10, decimals);
        return (Math.Round(value * scale) / scale).ToString("0.######", CultureInfo.InvariantCulture);
    }
}
