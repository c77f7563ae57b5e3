using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>What the search for the top speed found, how sure it is, and what it says of the cruise speed asked for.</summary>
/// <param name="Speed">m/s; null where no gear holds any speed.</param>
/// <param name="Pull">Force at the wheels there, N; null for a bound by power alone.</param>
/// <param name="Bound">Whether the true speed may be lower: only the power is known, not where the gears let the engine make it.</param>
internal sealed record TopSpeedAnswer(double? Speed, Gearing Gearing, string? Gear, string? Range, string? LimitedBy, double? Pull, bool Bound)
{
    private const string Power = "power", Redline = "redline", CurveEnd = "end of the torque curve";

    /// <summary>Null for a bound by power alone: the engine then does not turn at a speed of its own.</summary>
    public RotationalSpeed? EngineSpeed => Speed is { } v && Gear is not null ? RotationalSpeed.FromRadiansPerSecond(Gearing.EngineSpeed(v)) : null;

    /// <summary>The lower of what the power is used up at and what the redline allows in the longest gear.</summary>
    public static TopSpeedAnswer ByPower(double power, double? redline, Gearing longest) =>
        redline < power ? new(redline, longest, null, null, Redline, null, true) : new(power, longest, null, null, Power, null, true);

    /// <summary>The fastest speed that any gear holds.</summary>
    public static TopSpeedAnswer ByCurve(IReadOnlyList<(string Gear, string Range, Gearing Gearing)> gears, FullLoad full, Resistance road)
    {
        var best = gears.Select(g => (g.Gear, g.Range, g.Gearing, Speed: full.FastestHeld(g.Gearing, road))).MaxBy(g => g.Speed ?? -1);
        if (best.Speed is not { } v) return new(null, best.Gearing, null, null, null, null, false);
        double last = full.Points[^1].Speed, n = Math.Min(best.Gearing.EngineSpeed(v), last); // rad/s; the way back may miss the end by a bit
        var pull = full.At(n) is { } torque ? best.Gearing.Force(torque) : (double?)null;
        return new(v, best.Gearing, best.Gear, best.Range, v < best.Gearing.RoadSpeed(last) ? Power : full.EndsAtRedline ? Redline : CurveEnd, pull, false);
    }

    public static Speed? Told(double? metersPerSecond) => metersPerSecond is { } v ? UnitsNet.Speed.FromMetersPerSecond(v) : null;

    public void Write(Worksheet w, Resistance road, Speed? cruise)
    {
        if (Speed is { } v)
        {
            if (Gear is null) w.Line("v", "smaller of vp and vr", $"limited by {LimitedBy}", v, "m/s");
            else w.Line("v", "fastest held in any gear", $"gear {Gear}, range {Range}, G = {Gearing.Ratio}, limited by {LimitedBy}", v, "m/s");
            if (EngineSpeed is { } n) w.Line("n", "30 v G / (pi re)", $"30 x {v} x {Gearing.Ratio} / (pi x {Gearing.Radius})", n.RevolutionsPerMinute, "rpm");
            if (Pull is { } F) w.Line("F", "T(n) G eta / re", $"T(n) x {Gearing.Ratio} x {Gearing.Efficiency} / {Gearing.Radius}", F, "N");
            w.Line("R", "m g f + rho CdA v^2 / 2", $"{road.Weight} x {road.Rolling} + {road.AirDensity} x {road.DragArea} x {v}^2 / 2", road.Total(v), "N");
        }
        if (cruise is { } wanted) Judge(w, wanted);
    }

    private void Judge(Worksheet w, Speed cruise)
    {
        const string check = "reaches-cruise";
        var wanted = cruise.MilesPerHour;
        if (Told(Speed)?.MilesPerHour is not { } mph)
        {
            w.Answer(check, Verdict.Fail, "No gear holds any speed on the level at which the torque is known: the road load is more than the pull everywhere. "
                + "Check masses, ratios and torque curve.");
            return;
        }
        var asked = $"{wanted:0.#} mph was asked for.";
        if (mph < wanted && LimitedBy == CurveEnd)
            w.Answer(check, Verdict.Unknown, $"Not known beyond {mph:0.#} mph, where the torque curve ends at {EngineSpeed!.Value.RevolutionsPerMinute:0} rpm; "
                + $"{asked} Measure the torque up to the redline.", mph, "mph");
        else if (mph >= wanted && Bound)
            w.Answer(check, Verdict.Caution, $"The power would do for {mph:0.#} mph at most, if the gears let the engine make it there; {asked} "
                + "A torque curve tells.", mph, "mph");
        else
            w.AtLeast(check, mph, wanted, "mph", $"{(Bound ? "At most" : "Holds")} {mph:0.#} mph on the level{Where}; {asked}");
    }

    private string Where => Gear is null ? $", limited by {LimitedBy}"
        : $" in gear {Gear}, range {Range}, at {EngineSpeed!.Value.RevolutionsPerMinute:0} rpm, limited by {(LimitedBy == CurveEnd ? "the " : "")}{LimitedBy}";
}
