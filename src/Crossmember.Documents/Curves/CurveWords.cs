using System.Globalization;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Curves;

/// <summary>What a chart shows, for those who do not see it.</summary>
public static class CurveWords
{
    /// <summary>Axes, then for each curve where it runs from and to, and its highest point.</summary>
    public static string Describe(CurveChart chart) =>
        $"{chart.Title}: {chart.Y.Label} against {chart.X.Label}. " + string.Join(" ", chart.Curves.Concat(chart.Spots).OrderBy(l => l.Then).Select(l => Of(chart, l)));

    private static string Of(CurveChart p, Line line)
    {
        if (line.IsSpot) return $"{Named(p, line)}: {Told(line.X[0], p.X)}, {Told(line.Y[0], p.Y)}.";
        var peak = Enumerable.Range(0, line.Y.Count).MaxBy(i => line.Y[i]);
        return $"{Named(p, line)}: from {Told(line.X.Min(), p.X)} to {Told(line.X.Max(), p.X)}, highest {Told(line.Y[peak], p.Y)} at {Told(line.X[peak], p.X)}.";
    }

    private static string Named(CurveChart p, Line line) => p.Then is null ? line.Name : $"{line.Name}, {(line.Then ? p.Then : p.Now)}";

    /// <summary>To the figures that can be read off a chart.</summary>
    public static string Told(double value, Axis axis) => axis.Unit.Length == 0 ? Rounded(value) : $"{Rounded(value)} {axis.Unit}";

    /// <summary>Whole numbers from a hundred on, three figures below.</summary>
    public static string Rounded(double value) => Math.Abs(value) >= 100 ? value.ToString("N0", CultureInfo.InvariantCulture)
        : Figures.Short(Math.Round(value, value == 0 ? 0 : Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9)));
}
