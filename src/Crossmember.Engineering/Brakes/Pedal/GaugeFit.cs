namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Least squares over one parameter, no reading counting for more than a few errors.</summary>
/// <remarks>
/// Formula:  least of the sum of min(((read - expected) / error)^2, 9) over the parameter: a grid, then golden section around its best
/// Valid:    any line; several valleys are told apart no finer than the grid
/// Source:   truncated least squares, common practice, no source
/// </remarks>
internal static class GaugeFit
{
    private const int Grid = 36, Sections = 28;
    private const double Most = 9, Golden = 0.618_033_988_749_894_8;

    public static double Cost(ReadOnlySpan<GaugeReading> readings, in GaugeModel model)
    {
        double sum = 0;
        foreach (var r in readings)
        {
            var off = (r.Value - model.At(r.Place, r.Force)) / r.Error;
            sum += Math.Min(off * off, Most);
        }
        return sum;
    }

    /// <summary>How many readings lie within their error.</summary>
    public static int Within(ReadOnlySpan<GaugeReading> readings, in GaugeModel model)
    {
        var n = 0;
        foreach (var r in readings) if (Math.Abs(r.Value - model.At(r.Place, r.Force)) <= r.Error * (1 + 1e-9)) n++;
        return n;
    }

    public static (double Value, double Cost) Best(ReadOnlySpan<GaugeReading> readings, in GaugeModel model, Func<GaugeModel, double, GaugeModel> change, double from, double to)
    {
        double best = from, least = double.PositiveInfinity, step = (to - from) / Grid;
        for (var i = 0; i <= Grid; i++)
        {
            var at = from + (i * step);
            var cost = Cost(readings, change(model, at));
            if (cost < least) (best, least) = (at, cost);
        }
        double low = Math.Max(from, best - step), high = Math.Min(to, best + step);
        double a = high - (Golden * (high - low)), b = low + (Golden * (high - low));
        double ca = Cost(readings, change(model, a)), cb = Cost(readings, change(model, b));
        for (var i = 0; i < Sections; i++)
            if (ca <= cb)
            {
                (high, b, cb) = (b, a, ca);
                a = high - (Golden * (high - low));
                ca = Cost(readings, change(model, a));
            }
            else
            {
                (low, a, ca) = (a, b, cb);
                b = low + (Golden * (high - low));
                cb = Cost(readings, change(model, b));
            }
        if (ca < least) (best, least) = (a, ca);
        if (cb < least) (best, least) = (b, cb);
        return (best, least);
    }
}
