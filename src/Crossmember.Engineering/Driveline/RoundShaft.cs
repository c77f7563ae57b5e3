namespace Crossmember.Engineering.Driveline;

/// <summary>A round shaft or tube in torsion.</summary>
/// <remarks>
/// Formula:  tau = 16 T D / (pi (D^4 - d^4)); solid (d = 0): tau = 16 T / (pi D^3)
/// Valid:    elastic, away from splines, welds and steps
/// Source:   Shigley, Mechanical Engineering Design: torsion of round bars, from memory; the integral of r dF over the section gives the same
/// Example:  76.2 mm, wall 2.1 mm, 3294 N m -> 186.8 MPa
/// </remarks>
internal static class RoundShaft
{
    /// <summary>Highest shear stress in Pa for torque <paramref name="T"/> (N m), outer diameter <paramref name="D"/> and inner <paramref name="d"/> (m).</summary>
    public static double ShearStress(double T, double D, double d) => 16 * T * D / (Math.PI * (Math.Pow(D, 4) - Math.Pow(d, 4)));
}
