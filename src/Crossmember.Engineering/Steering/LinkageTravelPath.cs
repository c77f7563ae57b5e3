namespace Crossmember.Engineering.Steering;

/// <summary>The road wheels over the turn of the steering box's shaft, from straight ahead to one lock.</summary>
/// <param name="Linkage">As it was measured, straight ahead.</param>
/// <param name="Pitman">The pitman arm about the box's shaft.</param>
/// <param name="TieRod">Steering arm of the tie rod beside the drag link's wheel, straight ahead; null where the tie rod is not known.</param>
/// <param name="Other">The same of the other wheel.</param>
internal sealed record LinkageTravelPath(Linkage Linkage, LinkageCrank Pitman, LinkageCrank? TieRod, LinkageCrank? Other)
{
    private const double Step = Math.PI / 180, Farthest = 100 * Step; // of the box's shaft; no pitman arm swings farther than this

    /// <param name="Box">Turn of the box's shaft, rad.</param>
    /// <param name="Steer">Of the drag link's wheel, rad, left positive.</param>
    /// <param name="OtherSteer">Of the other wheel.</param>
    /// <param name="Transmission">Lower of the transmission angles at both ends of the drag link, rad: 90 deg pulls square, 0 is a dead center.</param>
    internal readonly record struct Point(double Box, double Steer, double? OtherSteer, double Transmission);

    /// <param name="Points">From straight ahead outward; the last one is at the lock, if it was reached.</param>
    /// <param name="Reached">Whether the wheel came to its lock.</param>
    /// <param name="Gap">Where the drag link parted: by how much at the next degree of the box, m; 0 where it only turned back.</param>
    internal sealed record Walk(IReadOnlyList<Point> Points, bool Reached, double Gap);

    /// <summary>Turns the box's shaft one way until the drag link's wheel stands at its lock (rad) on whichever side that is.</summary>
    public Walk Turn(int way, Func<bool, double> lockTo)
    {
        var points = new List<Point>();
        for (var box = 0.0; box <= Farthest; box += Step)
        {
            if (At(way * box, out var gap) is not { } point) return new(points, false, gap);
            if (points.Count > 1 && Math.Abs(point.Steer) <= Math.Abs(points[^1].Steer)) return new(points, false, 0); // over a dead center: the wheel comes back
            if (points.Count > 0 && Math.Abs(point.Steer) >= lockTo(point.Steer > 0))
            {
                points.Add(AtLock(way, points[^1], point, lockTo(point.Steer > 0)));
                return new(points, true, 0);
            }
            points.Add(point);
        }
        return new(points, false, 0);
    }

    public Point? At(double box) => At(box, out _);

    private Point? At(double box, out double gap)
    {
        var ball = Pitman.At(box);
        var answer = Linkage.Turn(default, ball);
        gap = answer.Gap;
        if (answer.Angle is not { } turn) return null;
        var leverage = Math.Min(Linkage.Knuckle.Leverage(turn, ball), Pitman.Leverage(box, Linkage.Knuckle.At(turn)));
        double? other = null;
        if (TieRod is { } near && Other is { } far)
        {
            var rod = (near.Ball - far.Ball).Length;
            if (LinkClosure.Solve(far, near.At(turn), rod, LinkClosure.Side(far, near.Ball)).Angle is { } second) other = Linkage.Steer(far.Axis, second);
        }
        return double.IsFinite(leverage) ? new(box, Linkage.Steer(turn), other, Math.Asin(Math.Min(1, leverage))) : null;
    }

    /// <summary>Halves the last step down to the lock.</summary>
    private Point AtLock(int way, Point inside, Point outside, double stop)
    {
        for (var i = 0; i < 50; i++)
        {
            var middle = At((inside.Box + outside.Box) / 2);
            if (middle is not { } m) break;
            if (Math.Abs(m.Steer) >= stop) outside = m;
            else inside = m;
        }
        return outside with { Box = way * Math.Abs(outside.Box) };
    }
}
