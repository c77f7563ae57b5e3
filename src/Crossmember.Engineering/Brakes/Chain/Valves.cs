namespace Crossmember.Engineering.Brakes.Chain;

/// <summary>What stands between the master cylinder and the axles: a metering valve in front, a proportioning valve behind, or none.</summary>
/// <remarks>
/// Formula:  rear p up to the knee, then knee + slope (p - knee); front 0 up to the metering pressure, then two for one until it has caught up, then p
/// Valid:    pressing the pedal; on release a valve lets go later. A residual valve only matters at rest and is not in here
/// Source:   derived, statics of a stepped piston
/// </remarks>
/// <param name="Knee">Line pressure at which the rear valve begins, Pa; infinite without one.</param>
/// <param name="Slope">0 a limiter, 1 no valve.</param>
/// <param name="Metering">Line pressure below which the front gets nothing, Pa; 0 without a valve.</param>
public readonly record struct Valves(double Knee, double Slope, double Metering)
{
    public static Valves None => new(double.PositiveInfinity, 1, 0);

    public double Rear(double line) => line <= Knee ? line : Knee + (Slope * (line - Knee));

    public double Front(double line) => line <= Metering ? 0 : Math.Min(line, 2 * (line - Metering));

    /// <summary>The rear valve let past, as when the front circuit is lost and a by-pass opens.</summary>
    public Valves Bypassed() => this with { Knee = double.PositiveInfinity, Slope = 1 };
}
