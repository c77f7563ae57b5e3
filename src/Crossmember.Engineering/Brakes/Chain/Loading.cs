namespace Crossmember.Engineering.Brakes.Chain;

/// <summary>What the axles carry in one loading condition, at rest and under braking.</summary>
/// <remarks>
/// Formula:  Nf = W (L - a + z h) / L, Nr = W (a - z h) / L
/// Valid:    two axles, level road, rigid springs, no air force, no trailer
/// Source:   statics; symbols as in DARCOM-P 706-358 (1976), p. 142
/// </remarks>
/// <param name="Weight">N.</param>
/// <param name="Wheelbase">m.</param>
/// <param name="Behind">Center of gravity behind the front axle, m.</param>
/// <param name="Height">Center of gravity over the ground, m.</param>
public readonly record struct Loading(double Weight, double Wheelbase, double Behind, double Height)
{
    public const double Gravity = 9.80665;

    /// <summary>Load on the front axle in N at a deceleration of z g.</summary>
    public double Front(double z) => Weight * (Wheelbase - Behind + (z * Height)) / Wheelbase;

    public double Rear(double z) => Weight * (Behind - (z * Height)) / Wheelbase;

    /// <summary>Front braking force in N that uses both axles' grip alike.</summary>
    public double IdealFront(double z) => z * Front(z);

    public double IdealRear(double z) => z * Rear(z);

    /// <summary>Deceleration with only the front axle braked and just about to lock; with a nose so heavy or a grip so high that it would tip, 1 over the ratio is beyond use and it is infinite.</summary>
    public double FrontOnly(double friction) => Wheelbase - (friction * Height) is > 0 and var d ? friction * (Wheelbase - Behind) / d : double.PositiveInfinity;

    public double RearOnly(double friction) => friction * Behind / (Wheelbase + (friction * Height));
}
