namespace Crossmember.Engineering.Steering;

/// <summary>Where a rod of fixed length puts the arm at its other end: the ball's circle met with the sphere about the far ball.</summary>
/// <remarks>
/// On the circle the distance to the far ball grows steadily from the nearest point to the farthest one, half a turn away. Between these two dead centers there is one answer
/// on each side, found by Newton's steps that are kept inside a shrinking bracket. Derivation: <c>docs/derivations/steering-linkage.md</c>.
/// </remarks>
internal static class LinkClosure
{
    private const double Closeness = 1e-13; // of the lengths that meet

    private const double Touching = 1e-12; // share of the length by which rounding may miss a dead center

    private const int MostSteps = 100;

    /// <param name="Angle">Of the arm, rad between -pi and pi; null where the rod cannot reach.</param>
    /// <param name="Gap">By how much the rod is too short (positive) or too long (negative), m; 0 where it closes.</param>
    internal readonly record struct Answer(double? Angle, double Gap);

    /// <summary>On which side of the dead centers the arm stands when it is not turned: 1, -1, or 0 on one of them.</summary>
    public static int Side(LinkageCrank arm, Point3 far)
    {
        var across = arm.Axis.Cross(arm.Ball - arm.Center).Dot(far - arm.Center);
        return Math.Sign(across) * -1;
    }

    /// <param name="side">Which of the two answers; an arm never crosses a dead center by itself.</param>
    public static Answer Solve(LinkageCrank arm, Point3 far, double length, int side)
    {
        Point3 center = arm.Center, ball = arm.Ball - center, to = far - center;
        double r = ball.Length, along = to.Dot(arm.Axis);
        var flat = to - (along * arm.Axis);
        double rho = flat.Length, nearest = Hypotenuse(along, rho - r), farthest = Hypotenuse(along, rho + r);
        if (!double.IsFinite(farthest)) return new(null, 0);
        if (length < nearest * (1 - Touching)) return new(null, length - nearest);
        if (length > farthest * (1 + Touching)) return new(null, length - farthest);
        if (side == 0 || r * rho <= 1e-12 * (farthest * farthest)) return new(null, 0); // no leverage: any angle would do
        var start = Math.Atan2(arm.Axis.Cross(ball).Dot(flat), ball.Dot(flat)); // where the circle comes nearest
        var psi = Between(arm, far, length, start, side, rho * r);
        return new(Math.IEEERemainder(start + (side * psi), 2 * Math.PI), 0);
    }

    /// <summary>Angle from the nearest point, 0 to pi, at which the distance is the rod's length.</summary>
    private static double Between(LinkageCrank arm, Point3 far, double length, double start, int side, double product)
    {
        double low = 0, high = Math.PI, psi = Math.PI / 2, tolerance = Closeness * length * length;
        for (var step = 0; step < MostSteps; step++)
        {
            var rod = arm.At(start + (side * psi)) - far;
            var over = rod.Dot(rod) - (length * length);
            if (Math.Abs(over) <= tolerance) return psi;
            if (over > 0) high = psi;
            else low = psi;
            var slope = 2 * product * Math.Sin(psi);
            var next = psi - (over / slope);
            psi = next > low && next < high ? next : (low + high) / 2; // also where the slope is nothing
            if (high - low <= 1e-15) return psi;
        }
        return psi;
    }

    private static double Hypotenuse(double a, double b) => Math.Sqrt((a * a) + (b * b));
}
