namespace Crossmember.Engineering.Brakes.Chain;

public enum LocksFirst { Neither, Front, Rear, Both }

/// <summary>The first axle to lock on a road, and what is had by then.</summary>
/// <param name="Pressure">Line pressure, Pa.</param>
/// <param name="Deceleration">Share of g.</param>
/// <param name="FrontUse">Grip that the front axle uses then, share of its load.</param>
public readonly record struct LockPoint(LocksFirst Axle, double Pressure, double Deceleration, double FrontUse, double RearUse)
{
    /// <summary>Deceleration over grip: what of the road is used when the first axle locks; 1 is all of it.</summary>
    public double Efficiency(double friction) => Deceleration / friction;
}

/// <summary>Which axle locks first when the pressure rises.</summary>
/// <remarks>
/// Formula:  the least line pressure with F = mu N at an axle; each difference F - mu N is straight between the corners of the lines, so every piece is solved by itself
/// Valid:    deceleration without wheel and engine inertia, grip alike at all wheels; after the first lock nothing is said
/// Source:   statics; DARCOM-P 706-358 (1976), ch. 8 for the quantities; derived in docs/derivations/brake-balance.md
/// </remarks>
public static class LockUp
{
    /// <returns><see cref="LocksFirst.Neither"/> where the brakes cannot lock an axle at any pressure.</returns>
    public static LockPoint On(double friction, in Rig rig, in Loading load)
    {
        Span<double> corners = stackalloc double[Rig.MostCorners];
        var n = rig.Corners(corners);
        double frontAt = double.NaN, rearAt = double.NaN, from = corners[0];
        var (front, rear) = Over(friction, rig, load, from);
        for (var i = 0; i < n; i++)
        {
            var last = i + 1 == n;
            var reach = last ? AxleForce.ReferencePressure : corners[i + 1] - from;
            if (reach <= 0) continue;
            var (frontEnd, rearEnd) = Over(friction, rig, load, from + reach);
            (frontAt, rearAt) = (Crossing(front, frontEnd, last), Crossing(rear, rearEnd, last));
            if (!double.IsNaN(frontAt) || !double.IsNaN(rearAt))
            {
                // What is not a number is never the lesser.
                var share = frontAt <= rearAt || double.IsNaN(rearAt) ? frontAt : rearAt;
                return At(frontAt == rearAt ? LocksFirst.Both : share == frontAt ? LocksFirst.Front : LocksFirst.Rear, from + (share * reach), rig, load);
            }
            (from, front, rear) = (from + reach, frontEnd, rearEnd);
        }
        return new(LocksFirst.Neither, double.NaN, double.NaN, double.NaN, double.NaN);
    }

    /// <summary>Line pressure in Pa at which the front axle locks, whatever the rear does; not a number where it never does.</summary>
    public static double FrontAt(double friction, in Rig rig, in Loading load)
    {
        Span<double> corners = stackalloc double[Rig.MostCorners];
        var n = rig.Corners(corners);
        for (var i = 0; i < n; i++)
        {
            double from = corners[i], reach = i + 1 < n ? corners[i + 1] - from : AxleForce.ReferencePressure;
            if (reach > 0 && Crossing(Over(friction, rig, load, from).Front, Over(friction, rig, load, from + reach).Front, i + 1 == n) is var share && !double.IsNaN(share)) return from + (share * reach);
        }
        return double.NaN;
    }

    /// <summary>Braking forces of the axles over what their grip holds, N; one locks at zero.</summary>
    private static (double Front, double Rear) Over(double friction, in Rig rig, in Loading load, double line)
    {
        double f = rig.FrontAt(line), r = rig.RearAt(line), z = (f + r) / load.Weight;
        return (f - (friction * load.Front(z)), r - (friction * load.Rear(z)));
    }

    /// <summary>Where along a straight piece zero is reached from below, as a share of the piece; NaN where it is not.</summary>
    private static double Crossing(double at, double end, bool last) =>
        at >= 0 ? 0 : end > at && (end >= 0 || last) ? at / (at - end) : double.NaN;

    private static LockPoint At(LocksFirst axle, double line, in Rig rig, in Loading load)
    {
        double f = rig.FrontAt(line), r = rig.RearAt(line), z = (f + r) / load.Weight;
        return new(axle, line, z, f / load.Front(z), load.Rear(z) > 0 ? r / load.Rear(z) : double.PositiveInfinity);
    }
}
