using ScottPlot;
using ScottPlot.TickGenerators;

namespace Crossmember.Documents.Curves;

/// <summary>Lays a chart out as a plot: axes with quantity and unit, lines with a mark and a name each, a key.</summary>
internal static class CurvePlot
{
    private const float TextSize = 14, LineWidth = 2, GuideWidth = 0.8f, MarkSize = 9, SpotSize = 14;
    private const int MarksOnALine = 4;

    private static readonly MarkerShape[] s_marks =
    [
        MarkerShape.FilledCircle, MarkerShape.FilledSquare, MarkerShape.FilledTriangleUp, MarkerShape.FilledDiamond, MarkerShape.OpenCircle, MarkerShape.OpenSquare,
        MarkerShape.Eks, MarkerShape.FilledTriangleDown, MarkerShape.Cross, MarkerShape.OpenDiamond, MarkerShape.OpenTriangleUp,
    ];

    static CurvePlot() => DrawnFace.Register();

    /// <param name="pens">How inks and line kinds are drawn: plainly for pixels, or in code colours that are replaced afterwards.</param>
    public static Plot Of(CurveChart chart, PictureSize size, IPens pens)
    {
        var plot = new Plot();
        plot.FigureBackground.Color = plot.DataBackground.Color = pens.Ground;
        Frame(plot, chart, size, pens);
        foreach (var line in chart.Lines) Draw(plot, line, pens);
        foreach (var label in DirectLabels.Of(chart, size)) Name(plot, label, pens);
        Key(plot, chart, size, pens);
        return plot;
    }

    private static void Frame(Plot plot, CurveChart chart, PictureSize size, IPens pens)
    {
        var (x, y) = (Span.Of(chart.Lines.SelectMany(l => l.X)), Span.Of(chart.Lines.SelectMany(l => l.Y)));
        plot.Axes.SetLimits(x.Low, x.High + (0.04 * x.Length), y.Low, y.High + (0.08 * y.Length));
        plot.Axes.Color(pens.Of(Ink.Quiet));
        plot.Axes.FrameColor(pens.Of(Ink.Quiet));
        plot.Axes.Top.FrameLineStyle.Width = plot.Axes.Right.FrameLineStyle.Width = 0;
        plot.Grid.MajorLineColor = pens.Of(Ink.Rule);
        foreach (var (axis, title) in new (IAxis, string)[] { (plot.Axes.Bottom, chart.X.Title), (plot.Axes.Left, chart.Y.Title) })
        {
            axis.Label.Text = DrawnFace.Printable(title);
            axis.Label.Bold = false;
            axis.Label.ForeColor = pens.Of(Ink.Text);
            axis.Label.FontSize = axis.TickLabelStyle.FontSize = TextSize;
            axis.Label.FontName = axis.TickLabelStyle.FontName = DrawnFace.Name;
            axis.MinorTickStyle.Length = 0;
            axis.TickGenerator = new NumericAutomatic { TargetTickCount = size.Ticks, LabelFormatter = Tick };
        }
    }

    private static string Tick(double value) => CurveWords.Rounded(Math.Abs(value) < 1e-12 ? 0 : value);

    private static void Draw(Plot plot, Line line, IPens pens)
    {
        if (line.IsGuide)
        {
            plot.Add.ScatterLine(line.X.ToArray(), line.Y.ToArray(), pens.Of(Ink.Quiet)).LineWidth = GuideWidth;
            return;
        }
        var ink = Ink.OfCurve(line.Mark);
        var path = plot.Add.ScatterLine(line.X.ToArray(), line.Y.ToArray(), pens.Line(ink, line.Then));
        path.LineWidth = LineWidth;
        path.LinePattern = pens.Pattern(line.Then);
        var marked = Enumerable.Range(0, MarksOnALine).Select(i => line.Along((i + 0.5) / MarksOnALine)).ToList();
        var marks = plot.Add.ScatterPoints(marked.Select(m => m.X).ToArray(), marked.Select(m => m.Y).ToArray(), pens.Of(ink));
        (marks.MarkerShape, marks.MarkerSize) = (Mark(line), line.IsSpot ? SpotSize : MarkSize);
    }

    private static MarkerShape Mark(Line line) => s_marks[line.Mark % s_marks.Length];

    private static void Name(Plot plot, DirectLabel label, IPens pens)
    {
        var text = plot.Add.Text(DrawnFace.Printable(label.Line.Name), label.X, label.Y);
        (text.LabelFontColor, text.LabelFontName, text.LabelFontSize) = (pens.Of(Ink.Text), DrawnFace.Name, TextSize);
        (text.LabelAlignment, text.OffsetX) = label.Rest switch { Around.Before => (Alignment.LowerRight, -4), Around.After => (Alignment.LowerLeft, 4), _ => (Alignment.LowerCenter, 0) };
        text.OffsetY = -3;
    }

    private static void Key(Plot plot, CurveChart chart, PictureSize size, IPens pens)
    {
        var key = plot.Legend;
        foreach (var line in chart.Lines.Where(l => !l.IsGuide).OrderBy(l => l.Mark).DistinctBy(l => l.Name))
        {
            var ink = pens.Of(Ink.OfCurve(line.Mark));
            key.ManualItems.Add(new() { LabelText = line.Name, MarkerShape = Mark(line), MarkerSize = MarkSize, MarkerColor = ink, LineColor = pens.Line(Ink.OfCurve(line.Mark), false), LineWidth = line.IsSpot ? 0 : LineWidth });
        }
        if (chart.Then is { } then)
            foreach (var (name, past) in new[] { (chart.Now, false), (then, true) })
                key.ManualItems.Add(new() { LabelText = name, LineColor = pens.Line(Ink.Text, past), LinePattern = pens.Pattern(past), LineWidth = LineWidth });
        foreach (var item in key.ManualItems)
            (item.LabelText, item.LabelFontName, item.LabelFontSize, item.LabelFontColor) = (DrawnFace.Printable(Plain.Short(item.LabelText)), DrawnFace.Name, TextSize, pens.Of(Ink.Text));
        (key.SymbolWidth, key.OutlineWidth, key.ShadowColor, key.BackgroundColor) = (44, 0, Colors.Transparent, Colors.Transparent);
        var panel = plot.ShowLegend(size.KeyBeneath ? Edge.Bottom : Edge.Right);
        if (size.KeyBeneath) key.Orientation = Orientation.Vertical;
        else panel.Padding = new(0);
    }

    /// <summary>The reach of an axis: from zero where the numbers are all on one side of it.</summary>
    private readonly record struct Span(double Low, double High)
    {
        public double Length => High - Low;

        public static Span Of(IEnumerable<double> values)
        {
            double low = 0, high = 0;
            foreach (var v in values) (low, high) = (Math.Min(low, v), Math.Max(high, v));
            return high > low ? new(low, high) : new(low, low + 1);
        }
    }
}
