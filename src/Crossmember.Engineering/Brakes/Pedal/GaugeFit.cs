namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>One parameter fitted to readings of which some may be misread.</summary>
/// <remarks>
/// Formula:  least sum of |read - expected| / error over a grid and by golden section; beside it least sum of min(((read - expected) / error)^2, 9)
/// Valid:    any line; several valleys are told apart no finer than the grid
/// Source:   least absolute deviations and truncated least squares, common practice, no source
/// </remarks>
internal static class GaugeFit
{
    private const int Grid = 24, Sections = 18;
    private const double Most = 9, Fine = 0.1;

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

    /// <summary>Where the sum of gaps is least, then least squares beside it: squares cut off are level far away and would lead nowhere.</summary>
    public static (double Value, double Cost) Best(ReadOnlySpan<GaugeReading> readings, in GaugeModel model, Func<GaugeModel, double, GaugeModel> change, double from, double to)
    {
        double best = from, least = double.PositiveInfinity, step = (to - from) / Grid;
        for (var i = 0; i <= Grid; i++)
        {
            var at = from + (i * step);
            var gaps = Gaps(readings, change(model, at));
            if (gaps < least) (best, least) = (at, gaps);
        }
        var near = Section(readings, model, change, Math.Max(from, best - step), Math.Min(to, best + step), false);
        if (Gaps(readings, change(model, near)) < least) best = near;
        // Far from explaining even half of the readings there is nothing to refine.
        if (2 * Within(readings, change(model, best)) < readings.Length) return (best, Cost(readings, change(model, best)));
        var fine = Section(readings, model, change, Math.Max(from, best - (Fine * step)), Math.Min(to, best + (Fine * step)), true);
        double atBest = Cost(readings, change(model, best)), atFine = Cost(readings, change(model, fine));
        return atFine < atBest ? (fine, atFine) : (best, atBest);
    }

    private static double Gaps(ReadOnlySpan<GaugeReading> readings, in GaugeModel model)
    {
        double sum = 0;
        foreach (var r in readings) sum += Math.Abs(r.Value - model.At(r.Place, r.Force)) / r.Error;
        return sum;
    }

    private static double Section(ReadOnlySpan<GaugeReading> readings, in GaugeModel model, Func<GaugeModel, double, GaugeModel> change, double low, double high, bool squares) =>
        GoldenSection.Least(new Change(readings, model, change, squares), low, high, Sections).X;

    /// <summary>What is left unexplained, over what a change is made of.</summary>
    private readonly ref struct Change(ReadOnlySpan<GaugeReading> readings, GaugeModel model, Func<GaugeModel, double, GaugeModel> change, bool squares) : GoldenSection.ICurve
    {
        private readonly ReadOnlySpan<GaugeReading> _readings = readings;

        public double At(double value) => squares ? Cost(_readings, change(model, value)) : Gaps(_readings, change(model, value));
    }
}
