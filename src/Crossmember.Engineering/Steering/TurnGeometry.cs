namespace Crossmember.Engineering.Steering;

/// <summary>The angles at which two wheels roll about one point on the line of the rear axle.</summary>
/// <remarks>cot outer - cot inner = B / L, derived in <c>docs/derivations/turning.md</c>. Angles in rad between 0 and pi, B and L alike.</remarks>
internal static class TurnGeometry
{
    /// <summary>The outer wheel's angle for an inner one.</summary>
    public static double Outer(double inner, double B, double L) => Math.Atan2(Math.Sin(inner), Math.Cos(inner) + (B / L * Math.Sin(inner)));

    /// <summary>The inner wheel's angle for an outer one: the way back.</summary>
    public static double Inner(double outer, double B, double L) => Math.Atan2(Math.Sin(outer), Math.Cos(outer) - (B / L * Math.Sin(outer)));

    public static double Degrees(double rad) => rad * 180 / Math.PI;
}
