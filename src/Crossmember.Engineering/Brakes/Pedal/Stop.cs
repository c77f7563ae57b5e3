namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Motion in a stop whose deceleration rises straight over a build-up time and is constant from there on.</summary>
/// <remarks>
/// Formula:  s = v (tr + tb / 2) + v^2 / (2 d) - d tb^2 / 24
/// Valid:    the vehicle still rolls at the end of the build-up: d tb &lt;= 2 v
/// Source:   derived in docs/derivations/brake-pedal.md
/// </remarks>
internal static class Stop
{
    /// <summary>m/s, m: mean fully developed deceleration between two speeds over a distance.</summary>
    public static double MeanDeveloped(double from, double to, double over) => ((from * from) - (to * to)) / (2 * over);

    /// <summary>Null where it stands before the brakes are built up.</summary>
    public static double? Distance(double v, double d, double delay, double buildUp) =>
        d * buildUp > 2 * v ? null : (v * (delay + (buildUp / 2))) + (v * v / (2 * d)) - (d * buildUp * buildUp / 24);

    /// <summary>The deceleration of a distance; null where the distance is shorter than delay and build-up allow.</summary>
    public static double? Deceleration(double v, double distance, double delay, double buildUp)
    {
        // d of q d^2 + r d - v^2 / 2 = 0, the root that stays when the build-up goes to nothing.
        double q = buildUp * buildUp / 24, r = distance - (v * (delay + (buildUp / 2)));
        var d = v * v / (r + Math.Sqrt((r * r) + (2 * q * v * v)));
        return d > 0 && double.IsFinite(d) && d * buildUp <= 2 * v ? d : null;
    }
}
