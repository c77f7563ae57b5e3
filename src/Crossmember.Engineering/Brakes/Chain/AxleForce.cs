namespace Crossmember.Engineering.Brakes.Chain;

/// <summary>Braking force of an axle at the road over its own line pressure: nothing up to a threshold, then straight.</summary>
/// <param name="PerPascal">N of both wheels at the road per Pa over the threshold.</param>
/// <param name="Threshold">Pressure that return springs and seals take, Pa.</param>
public readonly record struct AxleForce(double PerPascal, double Threshold)
{
    /// <summary>The pressure at which the keys of a sheet tell torques and forces: 1000 psi over the threshold, in Pa.</summary>
    public const double ReferencePressure = 6_894_757.293_168;

    public double At(double pressure) => PerPascal * Math.Max(0, pressure - Threshold);

    /// <summary>The same over the pressure of another circuit, of which its own is a share.</summary>
    public AxleForce Seen(double share) => new(PerPascal * share, Threshold / share);

    public static AxleForce None => new(0, 0);
}
