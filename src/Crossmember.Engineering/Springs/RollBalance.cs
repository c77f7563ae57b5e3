namespace Crossmember.Engineering.Springs;

/// <summary>One axle in a steady bend. SI.</summary>
/// <param name="Load">Mass on the axle.</param>
/// <param name="Unsprung">Mass that does not lean.</param>
/// <param name="Stiffness">N m/rad.</param>
/// <param name="RollCenter">Height over the ground.</param>
/// <param name="Track">Distance of the tires.</param>
/// <param name="Radius">Height of the unsprung mass over the ground.</param>
internal readonly record struct RollingAxle(double Load, double Unsprung, double Stiffness, double RollCenter, double Track, double Radius)
{
    public double Sprung => Load - Unsprung;
}

/// <summary>Body on two axles in a steady bend: it leans about the line through both roll centers until springs and bars hold it.</summary>
/// <remarks>Linear in the sideways acceleration; derived in <c>docs/derivations/springs.md</c>.</remarks>
internal readonly record struct RollBalance(RollingAxle Front, RollingAxle Rear, double CenterHeight)
{
    private const double Gravity = HowToMeasureSprings.Gravity;

    public double Sprung => Front.Sprung + Rear.Sprung;

    /// <summary>Center of the sprung mass over the roll axis beneath it, m.</summary>
    public double Arm =>
        (((Front.Load + Rear.Load) * CenterHeight) - (Front.Unsprung * Front.Radius) - (Rear.Unsprung * Rear.Radius)
            - (Front.Sprung * Front.RollCenter) - (Rear.Sprung * Rear.RollCenter)) / Sprung;

    /// <summary>What is left of both stiffnesses after the weight that leans out, N m/rad.</summary>
    public double Holding => Front.Stiffness + Rear.Stiffness - (Sprung * Gravity * Arm);

    /// <summary>Lean under 1 g, rad.</summary>
    public double RollPerGee => Sprung * Gravity * Arm / Holding;

    /// <summary>How far the center of gravity of the whole moves outward under 1 g, m.</summary>
    /// <remarks>None where the weight hangs under the roll axis and would lean inward: that helps and is not counted.</remarks>
    public double ShiftPerGee => Math.Max(0, Sprung * Arm * RollPerGee / (Front.Load + Rear.Load));

    /// <summary>Load that moves from the inside to the outside wheel of an axle under 1 g, N.</summary>
    public double TransferPerGee(RollingAxle axle) =>
        ((axle.Stiffness * RollPerGee) + (Gravity * ((axle.Sprung * axle.RollCenter) + (axle.Unsprung * axle.Radius)))) / axle.Track;

    /// <summary>Sideways acceleration in g at which the axle's inside wheel carries nothing; infinite where its load does not move outward.</summary>
    public double LiftAt(RollingAxle axle) => TransferPerGee(axle) is > 0 and var transfer ? axle.Load * Gravity / 2 / transfer : double.PositiveInfinity;
}
