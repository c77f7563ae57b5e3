using Crossmember.Engineering.Brakes.Chain;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>One road in one loading condition, made ready to be asked of many valves: the front axle's lock is a straight line in knee and slope.</summary>
/// <remarks>
/// Formula:  past the knee k: p = (mu W b / L + kf p0f (1 - mu h / L) + mu h / L kr (k (1 - s) - p0r)) / (kf (1 - mu h / L) - mu h / L kr s)
/// Valid:    knees from the rear's threshold and twice the metering pressure on, which the search keeps to
/// Source:   F = mu N at the front axle, solved for the line pressure; docs/derivations/brake-balance.md
/// </remarks>
public readonly struct RoadCase
{
    private readonly double _fixed, _front, _back, _kf, _kr, _p0f, _p0r, _perWeight, _perAsked, _held, _heldPerZ;

    public RoadCase(double mu, double frontPerPascal, double frontThreshold, double rearPerPascal, double rearThreshold, double metering, in Loading load)
    {
        (_perWeight, _perAsked) = (1 / load.Weight, 1 / (mu * LockFindings.EfficiencyAsked(mu)));
        (_held, _heldPerZ) = (mu * load.Weight * load.Behind / load.Wheelbase, mu * load.Weight * load.Height / load.Wheelbase);
        (_kf, _kr, _p0f, _p0r) = (frontPerPascal, rearPerPascal, frontThreshold, rearThreshold);
        var moved = mu * load.Height / load.Wheelbase;
        (_front, _back) = (frontPerPascal * (1 - moved), moved * rearPerPascal);
        _fixed = (mu * load.Front(0)) + (frontThreshold * _front) - (_back * rearThreshold);
        var plain = LockUp.FrontAt(mu, new(new(frontPerPascal, frontThreshold), new(rearPerPascal, rearThreshold), Valves.None with { Metering = metering }), load);
        Plain = double.IsNaN(plain) ? double.PositiveInfinity : plain;
    }

    /// <summary>Line pressure in Pa at which the front locks without a valve; infinite where it does not.</summary>
    public double Plain { get; }

    /// <summary>Lock by lock: what is left of the rear's grip when the front locks, as a share of it (below 0 the rear was first), and how far the deceleration then lies over what is asked.</summary>
    public (double FrontFirst, double Efficiency) Margins(double knee, double slope)
    {
        double line = Plain, rear;
        if (line <= knee) rear = Math.Max(0, line - _p0r);
        else
        {
            var rise = _front - (_back * slope);
            if (rise <= 0) return (-1, -1);
            line = (_fixed + (_back * knee * (1 - slope))) / rise;
            rear = knee + (slope * (line - knee)) - _p0r;
        }
        if (double.IsInfinity(line)) return (-1, -1);
        double f = _kf * Math.Max(0, line - _p0f), r = _kr * Math.Max(0, rear), z = (f + r) * _perWeight, held = _held - (z * _heldPerZ);
        return (held > 0 ? Math.Max(-1, 1 - (r / held)) : -1, (z * _perAsked) - 1);
    }
}

/// <summary>A rear valve, and how well it does on the worst road in the worst condition.</summary>
/// <param name="Knee">Pa.</param>
/// <param name="Margin">Least of both margins.</param>
public readonly record struct RearValve(double Knee, double Slope, double Margin);

/// <summary>The valve with the largest least margin.</summary>
/// <remarks>
/// For a slope, a later knee never helps the front be first and never hurts the efficiency: the best knee is where both margins meet, found by false position (with the stale end halved, after
/// Illinois: Dowell and Jarratt, BIT 11 (1971), from memory). Over slopes: a coarse look, then the golden section. The same every time.
/// </remarks>
public static class ValveSearch
{
    private const int MostSteps = 40, Coarse = 8, Fine = 9;
    private const double Near = 100; // Pa
    private const double SteepestSlope = 0.8;

    public static (double FrontFirst, double Efficiency) Least(ReadOnlySpan<RoadCase> roads, double knee, double slope)
    {
        double first = double.PositiveInfinity, efficiency = double.PositiveInfinity;
        foreach (ref readonly var road in roads)
        {
            var (f, e) = road.Margins(knee, slope);
            (first, efficiency) = (Math.Min(first, f), Math.Min(efficiency, e));
        }
        return (first, efficiency);
    }

    public static double Margin(ReadOnlySpan<RoadCase> roads, double knee, double slope) => Least(roads, knee, slope) is var (f, e) ? Math.Min(f, e) : 0;

    /// <param name="low">Earliest knee in Pa: nothing is gained by one beneath the rear's threshold.</param>
    public static RearValve Best(ReadOnlySpan<RoadCase> roads, double low)
    {
        var high = low;
        foreach (ref readonly var road in roads) if (double.IsFinite(road.Plain)) high = Math.Max(high, road.Plain);
        var best = At(roads, 0, low, high);
        for (var i = 1; i <= Coarse; i++) best = Better(best, At(roads, SteepestSlope * i / Coarse, low, high));
        double from = Math.Max(0, best.Slope - (SteepestSlope / Coarse)), to = Math.Min(SteepestSlope, best.Slope + (SteepestSlope / Coarse));
        var near = GoldenSection.Least(new OverSlopes(roads, low, high), from, to, Fine).X;
        return Better(best, At(roads, near, low, high));
    }

    /// <summary>What the best knee of each slope leaves to be wished for.</summary>
    private readonly ref struct OverSlopes(ReadOnlySpan<RoadCase> roads, double low, double high) : GoldenSection.ICurve
    {
        private readonly ReadOnlySpan<RoadCase> _roads = roads;

        public double At(double slope) => -ValveSearch.At(_roads, slope, low, high).Margin;
    }

    private static RearValve Better(in RearValve a, in RearValve b) => b.Margin > a.Margin + 1e-9 ? b : a;

    private static RearValve At(ReadOnlySpan<RoadCase> roads, double slope, double low, double high)
    {
        double over = Gap(roads, low, slope), under = Gap(roads, high, slope);
        if (over <= 0) return new(low, slope, Margin(roads, low, slope));
        if (under >= 0) return new(high, slope, Margin(roads, high, slope));
        for (int i = 0, side = 0; i < MostSteps && high - low > Near; i++)
        {
            var at = low + ((high - low) * over / (over - under));
            var gap = Gap(roads, at, slope);
            if (Math.Abs(gap) < 1e-9) return new(at, slope, Margin(roads, at, slope));
            if (gap > 0)
            {
                (low, over) = (at, gap);
                if (side > 0) under /= 2;
                side = 1;
            }
            else
            {
                (high, under) = (at, gap);
                if (side < 0) over /= 2;
                side = -1;
            }
        }
        return new(low, slope, Margin(roads, low, slope));
    }

    private static double Gap(ReadOnlySpan<RoadCase> roads, double knee, double slope) => Least(roads, knee, slope) is var (first, efficiency) ? first - efficiency : 0;
}
