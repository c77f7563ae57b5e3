namespace Crossmember.Engineering.Brakes.Limits;

/// <summary>Way to a stop when the deceleration rises in a straight line and then stays.</summary>
/// <remarks>
/// Formula:  s = v tb/2 + v2/(2 d) - d tb2/24
/// Valid:    tb d below 2 v, so that the brakes have come up before it stands; level road; the driver's own delay is not in here
/// Source:   integrated twice in docs/derivations/brake-balance.md; mean of a stretch: UN Regulation 13, Annex 4, 1.1.2 as in working document GRRF-56-3
/// </remarks>
public static class StoppingDistance
{
    /// <param name="speed">m/s.</param>
    /// <param name="deceleration">When the brakes are fully on, m/s2; more than 0.</param>
    /// <param name="buildUp">s.</param>
    public static double Of(double speed, double deceleration, double buildUp) =>
        deceleration * buildUp <= 2 * speed ? (speed * buildUp / 2) + (speed * speed / (2 * deceleration)) - (deceleration * buildUp * buildUp / 24)
        : Math.Sqrt(2 * speed * buildUp / deceleration) * speed * 2 / 3; // it stands before they are: v = d t2 / (2 tb)

    /// <summary>m/s, m: mean fully developed deceleration between two speeds over a distance.</summary>
    public static double MeanDeveloped(double from, double to, double over) => ((from * from) - (to * to)) / (2 * over);

    /// <summary>The way back: what stops within a distance in m. The root that is positive, written so that nothing cancels.</summary>
    public static double Deceleration(double speed, double distance, double buildUp)
    {
        var level = distance - (speed * buildUp / 2);
        return speed * speed / (level + Math.Sqrt((level * level) + (speed * speed * buildUp * buildUp / 12)));
    }
}
