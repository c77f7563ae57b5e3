using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Curves;

/// <summary>The curves that one sheet gives, under the name that people know the sheet by.</summary>
public sealed record Side(string Name, IReadOnlyList<PlottedCurve> Curves);

/// <summary>What an axis measures.</summary>
/// <param name="Unit">As it is printed; empty for a bare number.</param>
public sealed record Axis(string Label, string Unit)
{
    public string Title => Unit.Length == 0 ? Label : $"{Label} ({Unit})";
}

/// <summary>One line of a chart, its numbers in the units of the axes.</summary>
/// <param name="Mark">Curves of one name bear one mark, on either side.</param>
/// <param name="Then">Whether it is of the side that is compared with.</param>
public sealed record Line(string Name, int Mark, bool Then, IReadOnlyList<double> X, IReadOnlyList<double> Y)
{
    /// <summary>Only helps to read the others: thin, named at its end, in no key and no table.</summary>
    public bool IsGuide { get; init; }

    /// <summary>A single point that is marked.</summary>
    public bool IsSpot => X.Count == 1;

    /// <summary>Read off between the points by a straight line, as it is drawn; null beyond the ends.</summary>
    public double? At(double x)
    {
        for (var i = 0; i < X.Count; i++)
        {
            if (X[i] == x) return Y[i];
            if (i > 0 && X[i - 1] < x && x < X[i]) return Y[i - 1] + ((Y[i] - Y[i - 1]) * (x - X[i - 1]) / (X[i] - X[i - 1]));
        }
        return null;
    }

    /// <summary>The point at a share of the way along the first axis; of the points, where that axis does not rise.</summary>
    public (double X, double Y) Along(double share)
    {
        var x = X[0] + (share * (X[^1] - X[0]));
        if (At(x) is { } y) return (x, y);
        var at = (int)Math.Round(share * (X.Count - 1));
        return (X[at], Y[at]);
    }
}

/// <summary>Curves over the same axes, in the units of the person who looks: what is drawn, listed and told in words.</summary>
/// <param name="Now">Name of the side drawn solid.</param>
/// <param name="Then">Name of the side drawn dashed; null where nothing is compared.</param>
public sealed record CurveChart(string Title, Axis X, Axis Y, IReadOnlyList<Line> Lines, string Now, string? Then)
{
    /// <summary>Those that are read off: neither guides nor points.</summary>
    public IEnumerable<Line> Curves => Lines.Where(l => !l.IsGuide && !l.IsSpot);

    public IEnumerable<Line> Spots => Lines.Where(l => l.IsSpot);

    /// <summary>One chart for each pair of axes that the curves of the first side are plotted over; the other side's join where their axes are the same.</summary>
    public static IReadOnlyList<CurveChart> Of(string title, Side now, Side? then, MeasureSystem system)
    {
        var (left, right) = (Whole(now.Curves), Whole(then?.Curves ?? []));
        return [.. left.GroupBy(Axes).Select(g => One(Plain.Text(title), [.. g], [.. right.Where(c => Axes(c) == g.Key)], Plain.Text(now.Name), Plain.Text(then?.Name ?? ""), system))];
    }

    private static CurveChart One(string title, List<PlottedCurve> now, List<PlottedCurve> then, string nowName, string thenName, MeasureSystem system)
    {
        var (x, y) = (new Scale(now[0].XUnit, system), new Scale(now[0].YUnit, system));
        // Guides are read beside the lines of either side and stand once.
        then.RemoveAll(c => c.IsGuide);
        List<string> names = [.. now.Concat(then).OrderBy(c => c.IsGuide).Select(c => c.Name).Distinct()];
        Line Drawn(PlottedCurve c, bool past) => new(Plain.Text(c.Name), names.IndexOf(c.Name), past, x.Of(c.X, c.XUnit), y.Of(c.Y, c.YUnit)) { IsGuide = c.IsGuide };
        // Guides, then dashed lines, so that what stands now lies on top, and points on all of them.
        return new(title, new(now[0].XLabel, x.Symbol), new(now[0].YLabel, y.Symbol),
            [.. then.Select(c => Drawn(c, true)).Concat(now.Select(c => Drawn(c, false))).OrderBy(l => l.IsGuide ? 0 : l.IsSpot ? 2 : 1)], nowName, then.Count > 0 ? thenName : null);
    }

    private static (string, object, string, object) Axes(PlottedCurve c) => (c.XLabel, Measured(c.XUnit), c.YLabel, Measured(c.YUnit));

    private static object Measured(string unit) => Units.Find(unit) is { } known ? known.Dimension : unit;

    private static List<PlottedCurve> Whole(IEnumerable<PlottedCurve> curves) =>
        [.. curves.Where(c => c.X.Count > 0 && c.X.Count == c.Y.Count && c.X.Concat(c.Y).All(double.IsFinite))];

    /// <summary>Turns the unit that a calculation plots in into the reader's.</summary>
    private sealed class Scale(string code, MeasureSystem system)
    {
        private readonly Unit? _unit = Units.Find(code) is not { } own ? null
            : own.Dimension == Dimension.Dimensionless || own.Dimension == Dimension.Duration ? own : Display.Customary(own.Dimension, system);

        public string Symbol => _unit is null ? code : _unit.Code == "1" ? "" : Display.Symbol(_unit);

        public IReadOnlyList<double> Of(IReadOnlyList<double> values, string from) =>
            _unit is null || from == _unit.Code ? values : [.. values.Select(v => _unit.FromSi(Units.Require(from).ToSi(v)))];
    }
}
