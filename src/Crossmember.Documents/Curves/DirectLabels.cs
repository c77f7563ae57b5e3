namespace Crossmember.Documents.Curves;

/// <summary>A curve's name beside it.</summary>
/// <param name="Rest">On which side of the name the curve goes on: before it, after it, or on both sides.</param>
internal sealed record DirectLabel(Line Line, double X, double Y, Around Rest);

internal enum Around { Before, After, Both }

/// <summary>Where curves bear their names: at the highest point, or elsewhere where another name is in the way. The key has them in any case.</summary>
internal static class DirectLabels
{
    // The room of a letter in pixels, and of a line of text as a share of the height.
    private const double Letter = 10, Height = 0.06;

    /// <summary>So many curves among guides still leave room for names.</summary>
    private const int MostAmongGuides = 4;

    private static readonly double[] s_shares = [0.8, 0.6, 0.4];

    public static IEnumerable<DirectLabel> Of(CurveChart chart, PictureSize size)
    {
        double width = Reach(chart.Lines.SelectMany(l => l.X)), height = Reach(chart.Lines.SelectMany(l => l.Y));
        var crowded = chart.Lines.Any(l => l.IsGuide) && chart.Lines.Count(l => l is { IsGuide: false, IsSpot: false }) > MostAmongGuides;
        var taken = new List<(double From, double To, double Y)>();
        // Guides are in no key: they come first. A point has its mark in the key, and its name would lie across the lines that meet in it.
        foreach (var line in chart.Lines.Where(l => !l.Then && !l.IsSpot && (l.IsGuide || !crowded)).OrderBy(l => !l.IsGuide))
            foreach (var label in Places(line, width, height))
            {
                var room = line.Name.Length * Letter / size.Width;
                var from = (label.X / width) - (label.Rest == Around.Before ? room : label.Rest == Around.Both ? room / 2 : 0);
                var box = (From: from, To: from + room, Y: label.Y / height);
                if (box.From < 0 || box.To > 1.05 || taken.Exists(t => t.To > box.From && box.To > t.From && Math.Abs(t.Y - box.Y) < Height)) continue;
                taken.Add(box);
                yield return label;
                break;
            }
    }

    private static IEnumerable<DirectLabel> Places(Line line, double width, double height)
    {
        var peak = Enumerable.Range(0, line.Y.Count).MaxBy(i => line.Y[i]);
        yield return new(line, line.X[peak], line.Y[peak], peak == 0 ? Around.After : peak == line.X.Count - 1 ? Around.Before : Around.Both);
        yield return new(line, line.X[^1], line.Y[^1], Around.Before);
        yield return new(line, line.X[^1], line.Y[^1], Around.After);
        foreach (var share in s_shares)
        {
            var (x, y) = line.Along(share);
            if (!IsSteep(line, width, height)) yield return new(line, x, y, Around.Both);
        }
    }

    /// <summary>Such a line would run through a name that stands astride it.</summary>
    private static bool IsSteep(Line line, double width, double height) => Math.Abs(line.Y[^1] - line.Y[0]) / height > Math.Abs(line.X[^1] - line.X[0]) / width;

    private static double Reach(IEnumerable<double> values) => values.Select(Math.Abs).DefaultIfEmpty().Max() is > 0 and var most ? most : 1;
}
