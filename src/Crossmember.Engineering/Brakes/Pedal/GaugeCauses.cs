using Crossmember.Engineering.Brakes.Chain;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>What may stand behind a gap between readings and expectation. Causes of one family are one repair's difference apart.</summary>
internal enum GaugeFamily { Linkage, Bore, Vacuum, BoosterDead, FrontHeld, RearHeld, Valve, FrontLine, RearLine, Friction }

/// <summary>A cause that was fitted, and what the builder reads of it.</summary>
/// <param name="Value">The fitted parameter: see the family.</param>
internal readonly record struct GaugeCause(GaugeFamily Family, double Value, double Cost, int Within, string Told);

/// <summary>What is known besides the model: only for naming a cause in the builder's own figures.</summary>
/// <param name="Efficiency">Of pedal and linkage as stated.</param>
/// <param name="Bore">Effective bore as stated, m.</param>
/// <param name="Vacuum">Pa; null where it is not known.</param>
internal readonly record struct GaugeStated(double Efficiency, double? Ratio, double? Bore, double? Vacuum);

/// <summary>Tries each cause by itself: one parameter, least squares.</summary>
internal static class GaugeCauses
{
    private const double MostHeld = 0.5e6, Near = 0.01; // Pa; a fit nearer to the stated value than this changes nothing

    public static List<GaugeCause> Fit(ReadOnlySpan<GaugeReading> readings, in GaugeModel model, in GaugeStated s, bool decelerations)
    {
        var causes = new List<GaugeCause>(14);
        Leg(causes, readings, model, s);
        Bores(causes, readings, model, s);
        if (model.Line.Boosted) Boosters(causes, readings, model, s);
        Lines(causes, readings, model);
        if (double.IsFinite(model.Rig.Valves.Knee)) Valves(causes, readings, model);
        if (decelerations) Frictions(causes, readings, model);
        return causes;
    }

    private static void Leg(List<GaugeCause> causes, ReadOnlySpan<GaugeReading> readings, in GaugeModel m, in GaugeStated s)
    {
        var (k, cost) = GaugeFit.Best(readings, m, (x, v) => x with { Leg = v }, 0.3, Math.Max(1.2, 1 / s.Efficiency));
        var efficiency = s.Efficiency * k;
        Add(causes, readings, m with { Leg = k }, GaugeFamily.Linkage, k, 1, cost, efficiency <= 1
            ? $"pedal efficiency {efficiency:0.00} instead of {s.Efficiency:0.00}" + (s.Ratio is { } ratio ? $" (or a pedal ratio of {ratio * k:0.00} instead of {ratio:0.00})" : "")
            : s.Ratio is { } stated ? $"a pedal ratio of {stated * k:0.00} instead of {stated:0.00}" : $"a pedal ratio {k:0.00} times that which was stated");
    }

    private static void Bores(List<GaugeCause> causes, ReadOnlySpan<GaugeReading> readings, in GaugeModel m, in GaugeStated s)
    {
        if (s.Bore is not { } own) return;
        var best = -1;
        double least = double.PositiveInfinity, at = 1;
        for (var i = 0; i < TravelCurves.Bores.Count; i++)
        {
            var area = own * own / (TravelCurves.Bores[i] * TravelCurves.Bores[i]);
            if (Math.Abs(area - 1) < Near) continue;
            var cost = GaugeFit.Cost(readings, m with { Bore = area });
            if (cost < least) (best, least, at) = (i, cost, area);
        }
        if (best >= 0)
            Add(causes, readings, m with { Bore = at }, GaugeFamily.Bore, at, 1, least,
                $"a master cylinder of {TravelCurves.Bores[best] * 1000:0.0} mm ({TravelCurves.Names[best]} in) instead of {own * 1000:0.0} mm");
    }

    private static void Boosters(List<GaugeCause> causes, ReadOnlySpan<GaugeReading> readings, in GaugeModel m, in GaugeStated s)
    {
        var (share, cost) = GaugeFit.Best(readings, m, (x, v) => x.Assisted(v), 0, 1.4);
        Add(causes, readings, m.Assisted(share), GaugeFamily.Vacuum, share, 1, cost, s.Vacuum is { } vacuum
            ? $"a vacuum of {vacuum * share / 1e3:0} kPa instead of {vacuum / 1e3:0} kPa in the booster" : $"a booster that adds {100 * share:0} % of what was stated");
        var dead = m with { BoosterDead = true };
        Add(causes, readings, dead, GaugeFamily.BoosterDead, 0, 1, GaugeFit.Cost(readings, dead), "a booster that does not work at all");
    }

    private static void Lines(List<GaugeCause> causes, ReadOnlySpan<GaugeReading> readings, in GaugeModel m)
    {
        var (held, cost) = GaugeFit.Best(readings, m, (x, v) => x with { FrontHeld = v }, 0, MostHeld);
        Add(causes, readings, m with { FrontHeld = held }, GaugeFamily.FrontHeld, held, m.FrontHeld, cost, Held(held, m.FrontHeld, "front"));
        (held, cost) = GaugeFit.Best(readings, m, (x, v) => x with { RearHeld = v }, 0, MostHeld);
        Add(causes, readings, m with { RearHeld = held }, GaugeFamily.RearHeld, held, m.RearHeld, cost, Held(held, m.RearHeld, "rear"));
        (var share, cost) = GaugeFit.Best(readings, m, (x, v) => x with { FrontLine = v }, 0, 1);
        Add(causes, readings, m with { FrontLine = share }, GaugeFamily.FrontLine, share, 1, cost, Line(share, "front"));
        (share, cost) = GaugeFit.Best(readings, m, (x, v) => x with { RearLine = v }, 0, 1);
        Add(causes, readings, m with { RearLine = share }, GaugeFamily.RearLine, share, 1, cost, Line(share, "rear"));
    }

    private static string Held(double held, double stated, string end) =>
        $"{held / 1e6:0.00} MPa held in the {end} line with the pedal up instead of {stated / 1e6:0.00} MPa (a residual valve, or a piston that does not uncover its port)";

    private static string Line(double share, string end) => share < 0.05 ? $"a blocked {end} line: a closed valve, a collapsed hose or a chamber that does not build pressure"
        : $"a {end} line that passes {100 * share:0} % of the pressure: a collapsed hose, a valve or a leaking chamber";

    private static void Valves(List<GaugeCause> causes, ReadOnlySpan<GaugeReading> readings, in GaugeModel m)
    {
        var valves = m.Rig.Valves;
        var (knee, cost) = GaugeFit.Best(readings, m, Turned, 0.3e6, 14e6);
        Add(causes, readings, Turned(m, knee), GaugeFamily.Valve, knee, valves.Knee, cost, $"a rear valve that turns at {knee / 1e6:0.0} MPa instead of {valves.Knee / 1e6:0.0} MPa");
        (var slope, cost) = GaugeFit.Best(readings, m, Sloped, 0, 1);
        Add(causes, readings, Sloped(m, slope), GaugeFamily.Valve, slope, valves.Slope, cost, $"a rear valve of slope {slope:0.00} instead of {valves.Slope:0.00}");
    }

    private static GaugeModel Turned(GaugeModel m, double knee) => m with { Rig = m.Rig with { Valves = m.Rig.Valves with { Knee = knee } } };

    private static GaugeModel Sloped(GaugeModel m, double slope) => m with { Rig = m.Rig with { Valves = m.Rig.Valves with { Slope = slope } } };

    private static void Frictions(List<GaugeCause> causes, ReadOnlySpan<GaugeReading> readings, in GaugeModel m)
    {
        ReadOnlySpan<(bool Front, bool Rear, string Told)> axles = [(true, true, "all linings"), (true, false, "the front linings"), (false, true, "the rear linings")];
        foreach (var (front, rear, told) in axles)
        {
            GaugeModel Scaled(GaugeModel x, double v) => x with { Rig = x.Rig with { Front = Times(x.Rig.Front, front ? v : 1), Rear = Times(x.Rig.Rear, rear ? v : 1) } };
            var (scale, cost) = GaugeFit.Best(readings, m, Scaled, 0.1, 2);
            Add(causes, readings, Scaled(m, scale), GaugeFamily.Friction, scale, 1, cost, $"{told} at {100 * scale:0} % of the friction stated");
        }
    }

    private static AxleForce Times(AxleForce axle, double by) => axle with { PerPascal = axle.PerPascal * by };

    /// <summary>A fit that comes back to the stated value explains nothing.</summary>
    private static void Add(List<GaugeCause> causes, ReadOnlySpan<GaugeReading> readings, in GaugeModel fitted, GaugeFamily family, double value, double stated, double cost, string told)
    {
        if (Math.Abs(value - stated) <= Near * Math.Abs(stated)) return;
        causes.Add(new(family, value, cost, GaugeFit.Within(readings, fitted), told));
    }
}
