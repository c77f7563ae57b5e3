using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>Full-load torque over the engine speeds at which it is known and may be used: never below idle, over the redline or beyond the measured curve.</summary>
internal sealed class FullLoad
{
    private const double RpmPerRadian = 30 / Math.PI;

    private readonly Curve _curve;
    private readonly double? _redline; // rad/s

    public FullLoad(Curve curve, RotationalSpeed? idle, RotationalSpeed? redline)
    {
        (_curve, _redline) = (curve, redline?.RadiansPerSecond);
        double from = Math.Max(curve.Points[0].X, Math.Max(idle?.RadiansPerSecond ?? 0, 0)), to = Math.Min(curve.Points[^1].X, _redline ?? double.PositiveInfinity);
        Points = from >= to ? []
            : [(from, curve.At(from)!.Value), .. curve.Points.Where(p => p.X > from && p.X < to), (to, curve.At(to)!.Value)];
    }

    /// <summary>Corners of the curve between its usable ends, rad/s and N m; none where the curve and the usable speeds do not meet.</summary>
    public IReadOnlyList<(double Speed, double Torque)> Points { get; }

    /// <summary>The corner of largest torque.</summary>
    public (double Speed, double Torque) Peak => Points.MaxBy(p => p.Torque);

    /// <summary>Whether the engine still pulls somewhere.</summary>
    public bool Pulls => Points.Count > 0 && Peak.Torque > 0;

    /// <summary>Largest power, W: within a straight piece of the curve it may lie between the corners.</summary>
    public double PeakPower => Pieces.Max(p =>
    {
        double slope = (p.To.Torque - p.From.Torque) / (p.To.Speed - p.From.Speed), level = p.From.Torque - (slope * p.From.Speed);
        var top = slope < 0 ? Math.Clamp(-level / (2 * slope), p.From.Speed, p.To.Speed) : p.To.Speed;
        return Math.Max(Math.Max(p.From.Speed * p.From.Torque, p.To.Speed * p.To.Torque), top * (level + (slope * top)));
    });

    private IEnumerable<((double Speed, double Torque) From, (double Speed, double Torque) To)> Pieces => Points.Zip(Points.Skip(1));

    /// <summary>N m at <paramref name="speed"/> rad/s; null beyond the usable ends.</summary>
    public double? At(double speed) => Points.Count == 0 || speed < Points[0].Speed || speed > Points[^1].Speed ? null : _curve.At(speed);

    /// <summary>What ends the usable speeds: the redline, or a curve that is not known as far.</summary>
    public bool EndsAtRedline => _redline <= _curve.Points[^1].X;

    /// <summary>The highest speed (m/s) on the level at which the pull in this gear is at least the road load; null where there is none.</summary>
    /// <remarks>Torque is straight between two corners, so pull meets road load at a root of k v^2 - s v + c = 0.</remarks>
    public double? FastestHeld(Gearing gearing, Resistance resistance)
    {
        foreach (var (from, to) in Pieces.Reverse())
        {
            double v0 = gearing.RoadSpeed(from.Speed), v1 = gearing.RoadSpeed(to.Speed), f0 = gearing.Force(from.Torque), f1 = gearing.Force(to.Torque);
            if (f1 >= resistance.Total(v1)) return v1;
            double k = resistance.AirFactor, s = (f1 - f0) / (v1 - v0), c = resistance.OfRolling(0) - f0 + (s * v0);
            if (LargestRoot(k, -s, c, v0, v1) is { } v) return v;
        }
        return null;
    }

    /// <summary>Engine speeds at which the curve is usable, for people.</summary>
    public string Range => $"{_curve.Points[0].X * RpmPerRadian:0} to {_curve.Points[^1].X * RpmPerRadian:0} rpm";

    /// <summary>The largest root of a x^2 + b x + c within the ends, without the loss of figures that the school formula has.</summary>
    private static double? LargestRoot(double a, double b, double c, double low, double high)
    {
        var square = (b * b) - (4 * a * c);
        if (square < 0) return null;
        var q = -0.5 * (b + Math.CopySign(Math.Sqrt(square), b));
        double[] roots = [q / a, c / q];
        return roots.Where(x => x >= low && x <= high).Cast<double?>().Max();
    }
}
