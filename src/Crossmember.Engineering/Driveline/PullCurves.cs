using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Driveline;

/// <summary>Pull and road load drawn over road speed, in mph and lbf.</summary>
internal static class PullCurves
{
    private const double MetersPerSecond = 1609.344 / 3600; // in a mph
    private const double Newtons = 0.45359237 * Resistance.Gravity; // in a lbf

    /// <summary>One gear: straight between the corners of the torque curve, so the corners are all there is to draw.</summary>
    public static PlottedCurve Of(string name, Gearing gearing, FullLoad full) =>
        Over(name, full.Points.Select(p => (gearing.RoadSpeed(p.Speed), gearing.Force(p.Torque))));

    /// <summary>Road load up a slope of <paramref name="theta"/> radians from standstill to <paramref name="fastest"/> m/s.</summary>
    public static PlottedCurve RoadLoad(string name, Resistance road, double theta, double fastest) =>
        Over(name, Enumerable.Range(0, 41).Select(i => (fastest * i / 40, road.Total(fastest * i / 40, theta))));

    /// <summary>A force that is the same at every speed.</summary>
    public static PlottedCurve Level(string name, double force, double fastest) => Over(name, [(0, force), (fastest, force)]);

    private static PlottedCurve Over(string name, IEnumerable<(double Speed, double Force)> points)
    {
        var told = points.ToList();
        return new(name, "road speed", "mph", [.. told.Select(p => p.Speed / MetersPerSecond)], "force at the wheels", "lbf", [.. told.Select(p => p.Force / Newtons)]);
    }
}
