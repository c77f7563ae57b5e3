namespace Crossmember.Engineering.Driveline;

/// <summary>How a Cardan joint, and two of them in a row, turn unevenly.</summary>
/// <remarks>
/// Formula:  output / input = cos b / (1 - sin^2 b cos^2 a); fluctuation (largest - smallest) / mean = 1 / cos b - cos b = sin b tan b;
///           two joints: be^4 = b1^4 + b2^4 - 2 b1^2 b2^2 cos 2g, g between the shaft's yokes
/// Valid:    one joint: exact; two joints: small angles, both in one plane
/// Source:   docs/derivations/cardan-joint.md
/// Example:  30 deg -> 1.1547 and 0.8660; 12 deg -> 4.419 %
/// </remarks>
internal static class CardanJoint
{
    /// <summary>Speed of the output over the input at joint angle <paramref name="b"/> and input yoke angle <paramref name="a"/> (rad).</summary>
    public static double SpeedRatio(double b, double a) => Math.Cos(b) / (1 - Math.Pow(Math.Sin(b) * Math.Cos(a), 2));

    /// <summary>Largest less smallest speed of the output, as a share of the input's.</summary>
    public static double Fluctuation(double b) => Math.Sin(b) * Math.Tan(b);

    /// <summary>The angle of one joint that would turn as unevenly as two in a row, for working angles and the offset of the yokes (rad).</summary>
    public static double EquivalentAngle(double b1, double b2, double offset)
    {
        // The difference of squares apart from the rest, so that equal angles in phase cancel to the last bit.
        double s1 = b1 * b1, s2 = b2 * b2, sin = Math.Sin(offset);
        return Math.Sqrt(Math.Sqrt(((s1 - s2) * (s1 - s2)) + (4 * s1 * s2 * sin * sin)));
    }
}
