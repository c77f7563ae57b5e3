namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Pressure of the air over the altitude, and the vacuum of an engine there.</summary>
/// <remarks>
/// Formula:  p = 101325 (1 - 2.25577e-5 h)^5.25588 (h m, p Pa)
/// Valid:    up to 11,000 m; the weather moves it by a few kPa. An idling engine holds about the same absolute pressure in its manifold everywhere, so vacuum falls as much as the air does
/// Source:   ISO 2533, standard atmosphere, from memory; about 1 inHg less for each 1000 ft: common practice, no source
/// </remarks>
internal static class Atmosphere
{
    public const double SeaLevel = 101_325; // Pa

    public static double At(double altitude) => SeaLevel * Math.Pow(Math.Max(0, 1 - (2.25577e-5 * altitude)), 5.25588);

    /// <summary>Vacuum in Pa at an altitude of that measured at another; none is left where the air is as thin as the manifold.</summary>
    public static double Vacuum(double measured, double where, double altitude) =>
        Math.Clamp(measured - At(where) + At(altitude), 0, At(altitude));
}
