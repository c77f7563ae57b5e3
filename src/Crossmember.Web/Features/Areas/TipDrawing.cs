using System.Globalization;
using Crossmember.Builds.Places;

namespace Crossmember.Web.Features.Areas;

/// <summary>A vehicle on the slope where it would tip: the line of gravity goes through the lower wheels' contact.</summary>
/// <remarks>Drawn in the vehicle's own frame, u away from the lower contact (uphill is negative), v up from the ground, then turned by the slope. Nobody's vehicle.</remarks>
public sealed class TipDrawing
{
    private const double Width = 320, Height = 240, Margin = 14;

    private readonly double _slope, _scale, _left, _top;

    /// <param name="slope">rad.</param>
    /// <param name="span">Between the two contacts, m.</param>
    /// <param name="weight">The weight uphill of the lower contact, m, and its height, m.</param>
    private TipDrawing(double slope, double span, (double Arm, double High) weight, IReadOnlyList<(double U, double V)> body, IReadOnlyList<IReadOnlyList<(double U, double V)>> tires)
    {
        _slope = slope;
        List<(double X, double Y)> all = [.. body.Concat(tires.SelectMany(t => t)).Append((-weight.Arm, weight.High)).Select(Turn)];
        double wide = all.Max(p => p.X) - all.Min(p => p.X), high = all.Max(p => p.Y) - Math.Min(0, all.Min(p => p.Y));
        _scale = Math.Min((Width - (2 * Margin)) / wide, (Height - (2 * Margin)) / high);
        (_left, _top) = ((Width / 2) - (_scale * (all.Max(p => p.X) + all.Min(p => p.X)) / 2), Margin + (_scale * all.Max(p => p.Y)));
        Body = Line(body);
        Tires = [.. tires.Select(Line)];
        Ground = Line([(-span - 0.6, 0), (0.6, 0)]);
        Level = Line([Unturned(-0.9, 0), Unturned(0.9, 0)]);
        Weight = At((-weight.Arm, weight.High));
        Foot = At((0, 0));
    }

    public static string Box => $"0 0 {Width} {Height}";

    public string Body { get; }

    public IReadOnlyList<string> Tires { get; }

    public string Ground { get; }

    public string Level { get; }

    public (double X, double Y) Weight { get; }

    public (double X, double Y) Foot { get; }

    /// <summary>Seen from behind or before, across the slope, the body leaning downhill.</summary>
    /// <param name="lean">rad.</param>
    /// <param name="shift">How far the weight moved downhill with it, m.</param>
    public static TipDrawing Across(VehicleSize size, double slope, double lean, double shift, double height)
    {
        double track = size.Track.Meters, tire = size.TireDiameter.Meters, half = (track / 2) + 0.16, floor = tire * 0.8, belt = floor + (0.2 * size.Wheelbase.Meters), roof = size.DatumHeight.Meters + (0.54 * size.Wheelbase.Meters);
        (double U, double V) Leaning(double u, double v) => ((-track / 2) + u + ((v - (tire / 2)) * Math.Tan(lean)), v);
        (double, double)[] body = [Leaning(-half, floor), Leaning(-half, belt), Leaning(-half * 0.8, roof), Leaning(half * 0.8, roof), Leaning(half, belt), Leaning(half, floor), Leaning(-half, floor)];
        return new(slope, track, ((track / 2) - shift, height), body, [Tread(0, tire), Tread(-track, tire)]);
    }

    /// <summary>Seen from the side, the lower axle at the right.</summary>
    /// <param name="arm">From the lower axle to the center of gravity, m.</param>
    /// <param name="facingUp">The front is uphill.</param>
    public static TipDrawing Along(VehicleSize size, double slope, double arm, double height, bool facingUp)
    {
        double w = size.Wheelbase.Meters, tire = size.TireDiameter.Meters, datum = size.DatumHeight.Meters;
        // x behind the front axle, as everywhere; facing up the rear axle is the lower one.
        (double U, double V) Place(double x, double z) => (facingUp ? x - w : -x, z + datum);
        (double, double)[] body =
        [
            Place(-0.27 * w, 0.02 * w), Place(-0.27 * w, 0.27 * w), Place(0.22 * w, 0.3 * w), Place(0.31 * w, 0.54 * w), Place(0.62 * w, 0.54 * w), Place(0.66 * w, 0.3 * w),
            Place(1.39 * w, 0.3 * w), Place(1.39 * w, 0.02 * w), Place(-0.27 * w, 0.02 * w),
        ];
        return new(slope, w, (arm, height), body, [Round(0, tire), Round(-w, tire)]);
    }

    private static (double, double)[] Tread(double u, double tire) => [(u - 0.12, 0), (u + 0.12, 0), (u + 0.12, tire), (u - 0.12, tire), (u - 0.12, 0)];

    private static (double, double)[] Round(double u, double tire) =>
        [.. Enumerable.Range(0, 33).Select(i => (u + (tire / 2 * Math.Sin(i * Math.PI / 16)), (tire / 2) - (tire / 2 * Math.Cos(i * Math.PI / 16))))];

    private (double X, double Y) Turn((double U, double V) p) => ((p.U * Math.Cos(_slope)) + (p.V * Math.Sin(_slope)), (p.V * Math.Cos(_slope)) - (p.U * Math.Sin(_slope)));

    private (double, double) Unturned(double x, double y) => ((x * Math.Cos(_slope)) - (y * Math.Sin(_slope)), (x * Math.Sin(_slope)) + (y * Math.Cos(_slope)));

    private (double X, double Y) At((double U, double V) p)
    {
        var (x, y) = Turn(p);
        return (Math.Round(_left + (_scale * x), 1), Math.Round(_top - (_scale * y), 1));
    }

    private string Line(IEnumerable<(double U, double V)> points) =>
        string.Join(' ', points.Select(At).Select(p => string.Create(CultureInfo.InvariantCulture, $"{p.X},{p.Y}")));
}
