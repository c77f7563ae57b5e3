namespace Crossmember.Documents.Curves;

/// <summary>Where a curve's name stands beside it: at its end, or further back where another name is in the way; the key has it in any case.</summary>
internal static class DirectLabels
{
    // The room of a letter in pixels, and of a line of text as a share of the height.
    private const double Letter = 10, Height = 0.06;

    private static readonly double[] s_places = [1, 0.8, 0.6, 0.4];

    public static IEnumerable<(Line Line, int At)> Of(CurvePicture picture, PictureSize size)
    {
        double width = Reach(picture.Lines.SelectMany(l => l.X)), height = Reach(picture.Lines.SelectMany(l => l.Y));
        var taken = new List<(double X, double Y, double Width)>();
        foreach (var line in picture.Lines.Where(l => !l.Then))
            foreach (var place in s_places)
            {
                var at = (int)(place * (line.X.Count - 1));
                var box = (X: line.X[at] / width, Y: line.Y[at] / height, Width: line.Name.Length * Letter / size.Width);
                if (box.X < box.Width || taken.Exists(t => t.X > box.X - box.Width && box.X > t.X - t.Width && Math.Abs(t.Y - box.Y) < Height)) continue;
                taken.Add(box);
                yield return (line, at);
                break;
            }
    }

    private static double Reach(IEnumerable<double> values) => values.Select(Math.Abs).DefaultIfEmpty().Max() is > 0 and var most ? most : 1;
}
