namespace Crossmember.Engineering.Steering;

/// <summary>A ball joint on an arm that turns about an axis: pitman arm, or steering arm about its kingpin.</summary>
/// <param name="Pivot">A point on the axis.</param>
/// <param name="Axis">Of length one; a turn is positive as a right-handed screw drives along it.</param>
/// <param name="Ball">Where the ball is with the arm not turned.</param>
internal readonly record struct LinkageCrank(Point3 Pivot, Point3 Axis, Point3 Ball)
{
    /// <summary>The foot of the ball on the axis: the middle of its circle.</summary>
    public Point3 Center => Pivot + ((Ball - Pivot).Dot(Axis) * Axis);

    public double Radius => (Ball - Center).Length;

    /// <summary>The ball with the arm turned (rad).</summary>
    public Point3 At(double angle)
    {
        Point3 center = Center, arm = Ball - center;
        return center + (Math.Cos(angle) * arm) + (Math.Sin(angle) * Axis.Cross(arm));
    }

    /// <summary>The same arm elsewhere: the axle it sits on has moved.</summary>
    public LinkageCrank Moved(Point3 by) => this with { Pivot = Pivot + by, Ball = Ball + by };

    /// <summary>How a rod along a line turns it: share of the arm's length that its force has as a lever; 0 is a dead center.</summary>
    public double Leverage(double angle, Point3 other)
    {
        var ball = At(angle);
        Point3 rod = ball - other, way = Axis.Cross(ball - Center); // m; the way the ball moves
        return Math.Abs(rod.Dot(way)) / (rod.Length * way.Length);
    }
}
