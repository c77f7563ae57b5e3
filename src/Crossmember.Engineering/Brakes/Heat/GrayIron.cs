namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>What rotors and drums are made of, and what they rub on. Handbook figures of gray cast iron and of organic lining, from memory.</summary>
/// <remarks>The specific heat is that of warm iron and is held constant: red-hot iron takes a fifth more, so temperatures err to the hot side.</remarks>
public static class GrayIron
{
    /// <summary>J/(kg K).</summary>
    public const double SpecificHeat = 480;

    /// <summary>kg/m3.</summary>
    public const double Density = 7200;

    /// <summary>W/(m K).</summary>
    public const double Conductivity = 50;

    /// <summary>m2/s.</summary>
    public const double Diffusivity = Conductivity / (Density * SpecificHeat);

    /// <summary>Square root of conductivity, density and specific heat, W s^0.5/(m2 K): how readily the surface takes heat in.</summary>
    public static double Effusivity { get; } = Math.Sqrt(Conductivity * Density * SpecificHeat);

    /// <summary>The same of a lining: 1.2 W/(m K), 2000 kg/m3, 1250 J/(kg K).</summary>
    public static double LiningEffusivity { get; } = Math.Sqrt(1.2 * 2000 * 1250);

    /// <summary>Above this, in K, the iron is past everything that is reckoned here: it melts near 1150 C.</summary>
    public const double Spent = SpentCelsius + 273.15;

    public const double SpentCelsius = 1000;
}
