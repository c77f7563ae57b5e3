namespace Crossmember.Engineering.Steering;

/// <summary>The steer that axle travel makes with the steering wheel held still.</summary>
/// <param name="Linkage">As it was measured.</param>
/// <param name="Guide">Where the axle goes as it rises.</param>
internal sealed record LinkageBump(Linkage Linkage, LinkageGuide Guide)
{
    /// <param name="Rise">Of the axle over where it was measured, m.</param>
    /// <param name="Steer">Rad, left positive.</param>
    internal readonly record struct Point(double Rise, double Steer);

    /// <summary>Where travel ends for the linkage before it ends for the springs.</summary>
    /// <param name="ByGuide">Whether spring or link cannot follow, not the drag link.</param>
    internal readonly record struct Parting(double Rise, double Gap, bool ByGuide);

    public double? SteerAt(double rise) => Try(rise, out _);

    /// <summary>From one height to another in even steps, as far as the linkage follows.</summary>
    public (List<Point> Points, Parting? Parting) Walk(double from, double to, int steps)
    {
        var points = new List<Point>(steps + 1);
        for (var i = 0; i <= steps; i++)
        {
            var rise = from + ((to - from) * i / steps);
            if (Try(rise, out var gap) is { } steer) points.Add(new(rise, steer));
            else return (points, Parted(points.Count == 0 ? from : points[^1].Rise, rise, gap));
        }
        return (points, null);
    }

    private double? Try(double rise, out Parting parting)
    {
        parting = new(rise, 0, true);
        if (Guide.Moved(rise) is not { } moved) return null;
        var answer = Linkage.Turn(moved, Linkage.PitmanBall);
        parting = new(rise, answer.Gap, false);
        return answer.Angle is { } turn ? Linkage.Steer(turn) : null;
    }

    /// <summary>Halves the step in which it parted, to name the height; the gap is that at the far end of the step.</summary>
    private Parting Parted(double good, double bad, Parting far)
    {
        for (var i = 0; i < 30; i++)
        {
            var middle = (good + bad) / 2;
            if (SteerAt(middle) is null) bad = middle;
            else good = middle;
        }
        return far with { Rise = bad };
    }
}
