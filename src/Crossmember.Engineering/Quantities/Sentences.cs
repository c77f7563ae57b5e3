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

    [GeneratedRegex(@"(?<![\w.,-])(?<number>\d+(?:\.\d+)?) (?<unit>kg|mm|km/h|kN|N m|N|kW|MPa|m/s|lbf ft|lbf|lb|mph|psi|hp|ft)(?![\w/·])", RegexOptions.ExplicitCapture)]
    private static partial Regex Quantities();

    public static string InMeasures(string text, MeasureSystem system) => Quantities().Replace(text, found =>
    {
        var unit = Units.Find(found.Groups["unit"].Value)!;
        if (CustomaryUnits.Belongs(unit, system)) return found.Value;
        var number = found.Groups["number"].Value;
        var si = unit.ToSi(double.Parse(number, CultureInfo.InvariantCulture));
        var own = CustomaryUnits.For(si, unit.Dimension, system);
        return $"{Rounded(own.FromSi(si), Math.Max(FewestFigures, number.TrimStart('0', '.').Count(char.IsDigit)))} {own.Code}";
    });

    private static string Rounded(double value, int figures)
    {
        if (value == 0) return "0";
        var decimals = figures - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value)));
        var scale = Math.Pow(10, decimals);
        return (Math.Round(value * scale) / scale).ToString("0.######", CultureInfo.InvariantCulture);
    }
}
