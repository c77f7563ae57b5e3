namespace Crossmember.Engineering.Steering;

/// <summary>Torque that turns a standing tire on the spot.</summary>
/// <remarks>Recalled, not read; <c>docs/derivations/steering-effort.md</c> shows why load and pressure stand in it as they do.</remarks>
internal static class StandingTire
{
    public const double Gravity = 9.80665; // m/s2, standard acceleration of free fall

    /// <summary>N m for a load in N, an inflation pressure in Pa, and grip.</summary>
    public static double Torque(double W, double p, double mu) => mu / 3 * W * Math.Sqrt(W / p);
}
