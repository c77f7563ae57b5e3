namespace Crossmember.Documents.Vehicle;

/// <summary>A mark of one item, or of several that sit too near each other for marks of their own.</summary>
/// <param name="X">Its middle.</param>
/// <param name="Members">Indices of the items, in the order given.</param>
public sealed record PlacedMark(double X, double Y, IReadOnlyList<int> Members);

/// <summary>Sets marks so that none overlaps another and none leaves the picture.</summary>
public static class MarkLayout
{
    private const int Directions = 24;

    /// <summary>
    /// Each mark lies at its place or at the nearest free one within reach; where none is free it joins the nearest mark.
    /// Earlier places have the better claim to their own.
    /// </summary>
    /// <param name="size">Side of the square that a mark needs for itself.</param>
    public static IReadOnlyList<PlacedMark> Of(IReadOnlyList<(double X, double Y)> places, Area area, double size)
    {
        var marks = new List<(double X, double Y, List<int> Members)>();
        for (var i = 0; i < places.Count; i++)
        {
            var place = Within(places[i], area, size);
            if (Free(place, area, size, marks) is { } spot) marks.Add((spot.X, spot.Y, [i]));
            else Nearest(place, marks).Members.Add(i);
        }
        return [.. marks.Select(m => new PlacedMark(m.X, m.Y, m.Members))];
    }

    private static (double X, double Y) Within((double X, double Y) place, Area area, double size) =>
        (Held(place.X, area.Left + (size / 2), area.Left + area.Width - (size / 2)), Held(place.Y, area.Top + (size / 2), area.Top + area.Height - (size / 2)));

    /// <summary>Rounding may put the far edge a bit before the near one where the area is just as large as a mark.</summary>
    private static double Held(double x, double near, double far) => Math.Clamp(x, near, Math.Max(near, far));

    private static (double X, double Y)? Free((double X, double Y) place, Area area, double size, List<(double X, double Y, List<int> Members)> marks)
    {
        if (IsFree(place, size, marks)) return place;
        var reach = 1.8 * size;
        for (var far = size / 4; far <= reach; far += size / 4)
            for (var d = 0; d < Directions; d++)
            {
                var (sin, cos) = Math.SinCos(2 * Math.PI * d / Directions);
                var tried = (X: place.X + (far * cos), Y: place.Y + (far * sin));
                if (Within(tried, area, size) == tried && IsFree(tried, size, marks)) return tried;
            }
        return null;
    }

    private static bool IsFree((double X, double Y) place, double size, List<(double X, double Y, List<int> Members)> marks) =>
        marks.TrueForAll(m => Math.Abs(m.X - place.X) >= size || Math.Abs(m.Y - place.Y) >= size);

    private static (double X, double Y, List<int> Members) Nearest((double X, double Y) place, List<(double X, double Y, List<int> Members)> marks) =>
        marks.MinBy(m => Math.Pow(m.X - place.X, 2) + Math.Pow(m.Y - place.Y, 2));
}
