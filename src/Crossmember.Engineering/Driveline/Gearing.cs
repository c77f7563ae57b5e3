namespace Crossmember.Engineering.Driveline;

/// <summary>A gear and range seen from the wheels: what torque and speed of the engine become at the tire. SI throughout.</summary>
/// <remarks>Force times road speed is torque times engine speed times efficiency, whatever the gear.</remarks>
/// <param name="Ratio">Engine turns for one turn of the wheel.</param>
/// <param name="Radius">Rolling radius, m.</param>
/// <param name="Efficiency">Share of the engine's torque that reaches the wheels.</param>
internal readonly record struct Gearing(double Ratio, double Radius, double Efficiency)
{
    /// <summary>N, at <paramref name="torque"/> N m of the engine.</summary>
    public double Force(double torque) => torque * Ratio * Efficiency / Radius;

    /// <summary>m/s, at <paramref name="engineSpeed"/> rad/s.</summary>
    public double RoadSpeed(double engineSpeed) => engineSpeed * Radius / Ratio;

    /// <summary>rad/s, at <paramref name="roadSpeed"/> m/s.</summary>
    public double EngineSpeed(double roadSpeed) => roadSpeed * Ratio / Radius;
}
