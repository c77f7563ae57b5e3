using System.Globalization;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>What goes into a calculation and comes out of it, for reading.</summary>
public static class Values
{
    private const int MostPoints = 24;

    public static string Tell(InputSpec spec, Value value, MeasureSystem measure) => Tell(value, spec.Dimension, spec.CurveUnit?.Dimension, measure);

    public static string Tell(OutputSpec spec, Value value, MeasureSystem measure) => Tell(value, spec.Dimension, null, measure);

    /// <summary>An output in the unit that its calculation fixes, as <c>calc run</c> prints it.</summary>
    public static string AsFixed(OutputSpec spec, Value value) =>
        value.IsNumber ? WithUnit(spec.Unit!.FromSi(value.Number), spec.Unit.Code)
        : value.Members is { } members ? string.Join("\n", members.Items.Select(i => $"{i.Name}: {AsFixed(spec, i.Value)}"))
        : value.Text ?? ShopWords.DontKnow;

    /// <summary>An uncertainty to the two figures it deserves.</summary>
    public static string Spread(double si, Dimension dimension, MeasureSystem measure)
    {
        var told = Display.Show(si, dimension, measure).Split(' ', 2);
        if (!double.TryParse(told[0], CultureInfo.InvariantCulture, out var number) || number == 0) return string.Join(' ', told);
        var digits = Math.Clamp(1 - (int)Math.Floor(Math.Log10(Math.Abs(number))), 0, 9);
        told[0] = Figures.Short(Math.Round(number, digits));
        return string.Join(' ', told);
    }

    /// <summary>A number in one of our unit codes, its unit as it is printed.</summary>
    public static string WithUnit(double number, string? code) =>
        code is null or "1" ? Figures.Short(number) : $"{Figures.Short(number)} {(Units.Find(code) is { } unit ? Display.Symbol(unit) : code)}";

    private static string Tell(Value value, Dimension? dimension, Dimension? second, MeasureSystem measure) =>
        value.IsAbsent ? ShopWords.DontKnow
        : value.IsNumber ? Display.Show(value.Number, dimension!, measure)
        : value.Members is { } members ? string.Join("\n", members.Items.Select(i => $"{i.Name}: {Tell(i.Value, dimension, second, measure)}"))
        : value.Curve is { } curve ? Curve(curve, dimension!, second!, measure)
        : value.Text!;

    private static string Curve(Curve curve, Dimension x, Dimension y, MeasureSystem measure) => curve.Points.Count > MostPoints
        ? $"curve of {curve.Points.Count} points, {Pair(curve.Points[0], x, y, measure)} to {Pair(curve.Points[^1], x, y, measure)}"
        : string.Join("\n", curve.Points.Select(p => Pair(p, x, y, measure)));

    private static string Pair((double X, double Y) point, Dimension x, Dimension y, MeasureSystem measure) => $"{Display.Show(point.X, x, measure)}: {Display.Show(point.Y, y, measure)}";
}
