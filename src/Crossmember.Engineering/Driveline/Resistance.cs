namespace Crossmember.Engineering.Driveline;

/// <summary>What holds a vehicle back at a steady speed: rolling, air and grade. SI throughout.</summary>
/// <remarks>Derived in <c>docs/derivations/road-load.md</c>. Still air; the rolling share is the same at every speed.</remarks>
/// <param name="Mass">kg.</param>
/// <param name="Rolling">Rolling resistance as a share of the weight pressing on the road.</param>
/// <param name="DragArea">Drag coefficient times frontal area, m2.</param>
/// <param name="AirDensity">kg/m3.</param>
internal readonly record struct Resistance(double Mass, double Rolling, double DragArea, double AirDensity)
{
    /// <summary>Standard acceleration of free fall, m/s2 (CGPM 1901).</summary>
    public const double Gravity = 9.80665;

    /// <summary>N.</summary>
    public double Weight => Mass * Gravity;

    /// <summary>Air resistance is this times the speed squared, kg/m.</summary>
    public double AirFactor => 0.5 * AirDensity * DragArea;

    /// <summary>N, on a slope of <paramref name="theta"/> radians.</summary>
    public double OfRolling(double theta) => Weight * Rolling * Math.Cos(theta);

    /// <summary>N, at <paramref name="v"/> m/s.</summary>
    public double OfAir(double v) => AirFactor * v * v;

    /// <summary>N, up a slope of <paramref name="theta"/> radians.</summary>
    public double OfGrade(double theta) => Weight * Math.Sin(theta);

    /// <summary>N, at <paramref name="v"/> m/s up a slope of <paramref name="theta"/> radians.</summary>
    public double Total(double v, double theta = 0) => OfRolling(theta) + OfAir(v) + OfGrade(theta);

    /// <summary>The slope in radians on which rolling and grade together take <paramref name="q"/> of the weight: sin th + f cos th = q, exactly.</summary>
    /// <returns>Null where no slope takes as much: the pull then holds the vehicle on any. Below f it is a slope downward.</returns>
    public static double? Slope(double q, double f)
    {
        var most = Math.Sqrt(1 + (f * f));
        return Math.Abs(q) > most ? null : Math.Asin(q / most) - Math.Atan(f);
    }

    /// <summary>The speed in m/s at which <paramref name="power"/> (W, at the wheels) is used up on the level: the one real root of v (m g f + rho CdA v^2 / 2) = P.</summary>
    /// <remarks>In the hyperbolic form, which loses no figures where rolling outweighs the air.</remarks>
    public double SpeedForPower(double power)
    {
        double k = AirFactor, a = Weight * Rolling;
        if (k == 0) return power / a;
        double p = a / k, q = power / k; // v^3 + p v = q
        return p == 0 ? Math.Cbrt(q) : 2 * Math.Sqrt(p / 3) * Math.Sinh(Math.Asinh(1.5 * q / p * Math.Sqrt(3 / p)) / 3);
    }
}
