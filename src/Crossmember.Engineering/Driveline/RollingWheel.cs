namespace Crossmember.Engineering.Driveline;

/// <summary>The one relation behind every speed of a driveline: a wheel that rolls without slip, geared to the engine.</summary>
/// <remarks>Derived in <c>docs/derivations/rolling-wheel.md</c>.</remarks>
internal static class RollingWheel
{
    /// <summary>Engine speed in rpm at road speed <paramref name="v"/> (m/s), overall ratio <paramref name="G"/>, tire diameter <paramref name="D"/> (m).</summary>
    public static double EngineSpeed(double v, double G, double D) => 60 * v * G / (Math.PI * D);

    /// <summary>Road speed in m/s at engine speed <paramref name="n"/> (rpm): the way back.</summary>
    public static double RoadSpeed(double n, double G, double D) => n * Math.PI * D / (60 * G);
}
