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

    private const string Engine = "the engine's torque with all gear and transfer case ratios", Ground = "the axle's load in every condition with its rolling radius";

    /// <summary>Torque after the transfer case with the engine at its best in the lowest gear and range, N m.</summary>
    /// <param name="stated">The engine's largest torque, used where no curve is known.</param>
    public static double? AtStall(Curve? curve, Torque? stated, Members<Ratio>? gears, Members<Ratio>? ranges, Ratio converter, Ratio efficiency, Worksheet w)
    {
        // An engine that only brakes twists nothing.
        if ((curve?.Points.Max(p => p.Y) ?? stated?.NewtonMeters) is not (> 0 and var T) || gears is null || ranges is null) return null;
        double gear = gears.Lowest().DecimalFractions, range = ranges.Lowest().DecimalFractions, k = converter.DecimalFractions, eta = efficiency.DecimalFractions;
        var stall = k * T * gear * range * eta; // N m
        w.Line("Ts", "converter x peak torque x lowest gear x lowest range x efficiency", $"{k} x {T} x {gear} x {range} x {eta}", stall, "N m");
        return stall;
    }

    /// <summary>Torque at the two wheels of an axle at which the tires let go, in the heaviest condition, N m.</summary>
    public static double? OfGrip(Ratio grip, Members<UnitsNet.Mass>? loads, Length? radius, Worksheet w)
    {
        if (loads is null || radius is not { } re) return null;
        double mu = grip.DecimalFractions, m = loads.Items.Max(l => l.Value.Kilograms), r = re.Meters; // kg, m
        var torque = mu * m * Resistance.Gravity * r;
        w.Line("Tg", "grip x heaviest axle load x g x rolling radius", $"{mu} x {m} x {Resistance.Gravity} x {r}", torque, "N m");
        return torque;
    }
}
