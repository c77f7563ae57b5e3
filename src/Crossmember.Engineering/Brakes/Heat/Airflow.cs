namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Heat that a rotor or drum sheds to the air over the road speed. SI.</summary>
/// <remarks>
/// Formula:  hA = still + (at 40 mph - still) (v / 40 mph)^n, n = 0.8 disc, 2/3 drum
/// Valid:    2 to 40 m/s, wheel and splash shield fitted; half or twice is possible: time a cooling brake to know it
/// Source:   disc 0.04 (k/D) Re^0.8, drum 0.1 (k/D) Re^(2/3) (Limpert, Brake Design and Safety, from memory); vented half as much again and 6 W/(m2 K) in still air: common practice, no source
/// </remarks>
/// <param name="AtSpeed">W/K of one wheel at <see cref="ReferenceSpeed"/>.</param>
/// <param name="Still">W/K standing.</param>
public readonly record struct Airflow(double AtSpeed, double Still, double Exponent)
{
    /// <summary>40 mph in m/s, and the excess at which keys of a sheet tell the heat that is shed, K.</summary>
    public const double ReferenceSpeed = 17.8816, ReferenceExcess = 100;

    public const double StillFilm = 6, VentedFactor = 1.5, DiscExponent = 0.8, DrumExponent = 2.0 / 3;

    private const double AirConductivity = 0.026, AirViscosity = 1.57e-5; // W/(m K), m2/s at 25 C

    /// <param name="shed">W at 40 mph, 100 K hotter than the air.</param>
    /// <param name="area">m2.</param>
    public static Airflow Of(bool drum, double shed, double area)
    {
        var at = shed / ReferenceExcess;
        return new(at, Math.Min(at, StillFilm * area), drum ? DrumExponent : DiscExponent);
    }

    public double At(double speed) => Still + ((AtSpeed - Still) * Math.Pow(speed / ReferenceSpeed, Exponent));

    /// <summary>W/(m2 K) at 40 mph from the diameter.</summary>
    public static double Film(bool drum, double diameter, bool vented)
    {
        var re = ReferenceSpeed * diameter / AirViscosity;
        return drum ? 0.1 * AirConductivity / diameter * Math.Pow(re, DrumExponent)
            : (vented ? VentedFactor : 1) * 0.04 * AirConductivity / diameter * Math.Pow(re, DiscExponent);
    }
}
