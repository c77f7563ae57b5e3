namespace Crossmember.Engineering.Brakes.Chain;

/// <summary>Line pressure over pedal force: straight pieces, for a leg alone, a booster up to its run-out, and a dead booster.</summary>
/// <remarks>
/// Formula:  leg alone p = g F. Boosted: 0 up to the cut-in, then straight from the jump-in to the knee, and g more for every newton above it. Dead booster: g F less the return spring
/// Valid:    quasi-static apply, no hysteresis
/// Source:   three pieces as in SAE J1808 (terms from memory), derived in docs/derivations/brake-pedal.md
/// </remarks>
/// <param name="PerNewton">Pressure per newton of pedal with the leg alone, Pa/N.</param>
/// <param name="CutIn">Pedal force at which the booster begins, N; 0 without one.</param>
/// <param name="JumpIn">Pressure just above it, Pa.</param>
/// <param name="Knee">Pedal force at which the booster runs out, N; 0 without one.</param>
/// <param name="KneePressure">Pressure there, Pa.</param>
/// <param name="DeadLoss">Pressure that the return spring of a dead booster takes, Pa.</param>
public readonly record struct PedalLine(double PerNewton, double CutIn, double JumpIn, double Knee, double KneePressure, double DeadLoss)
{
    /// <summary>The force at which the keys of a sheet tell pressures: 100 lbf, in N.</summary>
    public const double ReferenceForce = 444.822_161_526;

    /// <summary>A booster that begins at no force and has little to add runs out at no force either: it is known by its pressure then.</summary>
    public bool Boosted => Knee > 0 || KneePressure > 0 || DeadLoss > 0;

    /// <summary>Line pressure in Pa at a pedal force in N.</summary>
    public double Pressure(double pedal) =>
        !Boosted ? PerNewton * Math.Max(0, pedal)
        : pedal <= CutIn ? 0
        : pedal >= Knee ? KneePressure + (PerNewton * (pedal - Knee))
        : JumpIn + ((KneePressure - JumpIn) * (pedal - CutIn) / (Knee - CutIn));

    /// <summary>Line pressure with a dead booster; without one the same as ever.</summary>
    public double DeadPressure(double pedal) => Math.Max(0, (PerNewton * pedal) - DeadLoss);

    /// <summary>Least pedal force in N that makes a pressure in Pa; what jumps in comes at the cut-in.</summary>
    public double Force(double pressure) =>
        pressure <= 0 ? 0
        : !Boosted ? pressure / PerNewton
        : pressure <= JumpIn ? CutIn
        : pressure >= KneePressure ? Knee + ((pressure - KneePressure) / PerNewton)
        : CutIn + ((pressure - JumpIn) * (Knee - CutIn) / (KneePressure - JumpIn));

    /// <summary>The same with a dead booster.</summary>
    public double DeadForce(double pressure) => pressure <= 0 ? 0 : (pressure + DeadLoss) / PerNewton;
}
