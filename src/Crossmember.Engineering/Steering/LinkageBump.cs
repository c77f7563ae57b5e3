namespace Crossmember.Engineering.Steering;

/// <summary>The steer that axle travel makes with the steering wheel held still.</summary>
/// <param name="Linkage">As it was measured.</param>
/// <param name="Guide">Where the axle goes as it rises.</param>
internal sealed record LinkageBump(Linkage Linkage, LinkageGuide Guide)
{
    /// <summary>Share of the steering arm's length below which the drag link stands at a dead center: on either side of it the wheel could go either way.</summary>
    private const double Dead = 0.1;

    /// <param name="Rise">Of the axle over where it was measured, m.</param>
    /// <param name="Steer">Rad, left positive.</param>
    internal readonly record struct Point(double Rise, double Steer);

    /// <summary>Where travel ends for the linkage before it ends for the springs.</summary>
    /// <param name="Gap">By how much the drag link is too long or short, m; 0 at a dead center.</param>
    /// <param name="ByGuide">Whether spring or link cannot follow, not the drag link.</param>
    /// <param name="Ended">False where it still follows.</param>
    internal readonly record struct Parting(double Rise, double Gap, bool ByGuide, bool Ended);

    public double? SteerAt(double rise) => Try(rise, out _);

    /// <summary>From one height to another in even steps, as far as the linkage follows.</summary>
    public (List<Point> Points, Parting? Parting) Walk(double from, double to, int steps)
    {
        var points = new List<Point>(steps + 1);
        for (var i = 0; i <= steps; i++)
        {
            var rise = from + ((to - from) * i / steps);
            if (Try(rise, out var gap) is { } steer) points.Add(new(rise, steer));
            else return (points, Ended(points.Count == 0 ? from : points[^1].Rise, rise, to, gap));
        }
        return (points, null);
    }

    /// <summary>Where the travel ends for the linkage: where it parts, if it does so before the end of the walk, else at the dead center that it came to first.</summary>
    private Parting Ended(double good, double bad, double to, Parting first)
    {
        const int steps = 40;
        for (var i = 0; i <= steps && first is { Gap: 0, ByGuide: false }; i++)
        {
            var rise = bad + ((to - bad) * i / steps);
            Try(rise, out var there);
            if (there.Gap != 0 || there.ByGuide) return Halved(good, rise, there, p => p.Gap != 0 || p.ByGuide);
        }
        return Halved(good, bad, first, first.ByGuide ? p => p.ByGuide : first.Gap != 0 ? p => p.Gap != 0 : p => p.Ended);
    }

    private double? Try(double rise, out Parting parting)
    {
        parting = new(rise, 0, true, true);
        if (Guide.Moved(rise) is not { } moved) return null;
        var answer = Linkage.Turn(moved, Linkage.PitmanBall);
        double? steer = answer.Angle is { } turn && Linkage.Knuckle.Moved(moved).Leverage(turn, Linkage.PitmanBall) >= Dead ? Linkage.Steer(turn) : null;
        parting = new(rise, answer.Gap, false, steer is null);
        return steer;
    }

    /// <summary>Halves the way to where it ended, to name the height; the gap is that at the far end.</summary>
    private Parting Halved(double good, double bad, Parting far, Func<Parting, bool> ended)
    {
        for (var i = 0; i < 40; i++)
        {
            var middle = (good + bad) / 2;
            Try(middle, out var there);
            if (ended(there)) bad = middle;
            else good = middle;
        }
        return far with { Rise = bad };
    }
}
