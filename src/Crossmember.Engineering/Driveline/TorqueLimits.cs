using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>What can twist a shaft: the engine in its lowest gearing, or the ground. The lower one governs.</summary>
/// <remarks>
/// Formula:  stall = converter x peak torque x gear x transfer x efficiency, after the transfer case; grip = mu m g re, at both wheels together
/// Valid:    steady; one axle gets all of the engine's torque, as with the transfer case locked and the other axle without grip
/// Source:   statics; efficiency 0.85: US Army TM 9-8000, par. 29-14
/// Example:  330 N m, 5.15, 2.28, 0.85 -> 3294 N m; 0.7, 1182.5 kg, 406.88 mm -> 3303 N m
/// </remarks>
/// <param name="Stall">N m; null where engine or gearing is not known.</param>
/// <param name="Grip">N m; null where load or tire is not known.</param>
internal readonly record struct TorqueLimits(double? Stall, double? Grip)
{
    private const double StandardGravity = 9.80665; // m/s2, exact by definition

    /// <summary>The lower of those known, N m: where one is missing, the shaft sees no more than this.</summary>
    public double? Governing => Stall is { } s && Grip is { } g ? Math.Min(s, g) : Stall ?? Grip;

    /// <summary>Whether the governing torque is more than an upper bound.</summary>
    public bool Settled => Stall is not null && Grip is not null;

    public string By => Stall <= Grip || Grip is null ? "what the engine can give" : "what the ground can hold";

    /// <summary>What is still to be known, in a builder's words.</summary>
    public string Lacking => (Stall, Grip) switch
    {
        (null, null) => $"{Engine}, or {Ground}",
        (null, _) => Engine,
        _ => Ground,
    };

    private const string Engine = "the engine's torque curve with all gear and transfer case ratios", Ground = "the axle's load in every condition with its rolling radius";

    /// <summary>Torque after the transfer case with the engine at its best in the lowest gear and range, N m.</summary>
    public static double? AtStall(Curve? curve, Members<Ratio>? gears, Members<Ratio>? ranges, Ratio converter, Ratio efficiency, Worksheet w)
    {
        if (curve is null || gears is null || ranges is null) return null;
        double T = curve.Points.Max(p => p.Y), k = converter.DecimalFractions, eta = efficiency.DecimalFractions; // N m
        if (T <= 0) return null; // an engine that only brakes twists nothing
        double gear = gears.Items.Max(g => g.Value.DecimalFractions), range = ranges.Items.Max(r => r.Value.DecimalFractions);
        var stall = k * T * gear * range * eta;
        w.Line("Ts", "converter x peak torque x lowest gear x lowest range x efficiency", $"{k} x {T} x {gear} x {range} x {eta}", stall, "N m");
        return stall;
    }

    /// <summary>Torque at the two wheels of an axle at which the tires let go, in the heaviest condition, N m.</summary>
    public static double? OfGrip(Ratio grip, Members<UnitsNet.Mass>? loads, Length? radius, Worksheet w)
    {
        if (loads is null || radius is not { } re) return null;
        double mu = grip.DecimalFractions, m = loads.Items.Max(l => l.Value.Kilograms), r = re.Meters; // kg, m
        var torque = mu * m * StandardGravity * r;
        w.Line("Tg", "grip x heaviest axle load x g x rolling radius", $"{mu} x {m} x {StandardGravity} x {r}", torque, "N m");
        return torque;
    }
}
