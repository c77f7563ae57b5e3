using D = Crossmember.Engineering.Quantities.Dimension;

namespace Crossmember.Engineering.Quantities;

/// <summary>The stable unit codes of the project (<c>docs/units.md</c>): stored values carry these and never change meaning.</summary>
/// <remarks>Factors are exact by definition unless <c>docs/units.md</c> says otherwise (1 in = 25.4 mm, 1 lb = 0.45359237 kg, g = 9.80665 m/s2).</remarks>
public static class Units
{
    private const double Inch = 0.0254, Foot = 0.3048, Mile = 1609.344, Pound = 0.45359237, G = 9.80665, PoundForce = Pound * G;
    private const double Psi = PoundForce / (Inch * Inch), Turn = 2 * Math.PI;

    /// <summary>Every unit; within a dimension the SI unit comes first.</summary>
    public static IReadOnlyList<Unit> All { get; } =
    [
        new("1", D.Dimensionless, 1), new("%", D.Dimensionless, 0.01),
        new("m", D.Length, 1), new("mm", D.Length, 0.001), new("cm", D.Length, 0.01), new("km", D.Length, 1000),
        new("in", D.Length, Inch), new("ft", D.Length, Foot), new("yd", D.Length, 3 * Foot), new("mile", D.Length, Mile),
        new("m2", D.Area, 1), new("mm2", D.Area, 1e-6), new("cm2", D.Area, 1e-4), new("in2", D.Area, Inch * Inch), new("ft2", D.Area, Foot * Foot),
        new("m3", D.Volume, 1), new("L", D.Volume, 1e-3), new("cm3", D.Volume, 1e-6), new("in3", D.Volume, Inch * Inch * Inch),
        new("gal", D.Volume, 231 * Inch * Inch * Inch), new("qt", D.Volume, 57.75 * Inch * Inch * Inch),
        new("kg", D.Mass, 1), new("g", D.Mass, 0.001), new("t", D.Mass, 1000), new("lb", D.Mass, Pound), new("oz", D.Mass, Pound / 16),
        new("kg m", D.MassMoment, 1), new("lb in", D.MassMoment, Pound * Inch),
        new("s", D.Duration, 1), new("ms", D.Duration, 0.001), new("min", D.Duration, 60), new("h", D.Duration, 3600), new("day", D.Duration, 86400),
        new("m/s", D.Speed, 1), new("km/h", D.Speed, 1 / 3.6), new("mph", D.Speed, Mile / 3600), new("ft/min", D.Speed, Foot / 60),
        new("m/s2", D.Acceleration, 1), new("gn", D.Acceleration, G),
        new("rad/s", D.RotationalSpeed, 1), new("rpm", D.RotationalSpeed, Turn / 60),
        new("1/m", D.ReciprocalLength, 1), new("rev/km", D.ReciprocalLength, 0.001), new("rev/mile", D.ReciprocalLength, 1 / Mile),
        new("rad", D.Angle, 1), new("deg", D.Angle, Math.PI / 180),
        new("N", D.Force, 1), new("kN", D.Force, 1000), new("lbf", D.Force, PoundForce), new("kgf", D.Force, G),
        new("N m", D.Torque, 1), new("lbf ft", D.Torque, PoundForce * Foot), new("lbf in", D.Torque, PoundForce * Inch),
        new("Pa", D.Pressure, 1), new("kPa", D.Pressure, 1e3), new("MPa", D.Pressure, 1e6), new("bar", D.Pressure, 1e5),
        new("psi", D.Pressure, Psi), new("ksi", D.Pressure, 1000 * Psi), new("inHg", D.Pressure, 3386.389), // conventional inch of mercury at 0 C
        new("N/m", D.SpringRate, 1), new("N/mm", D.SpringRate, 1000), new("lbf/in", D.SpringRate, PoundForce / Inch),
        new("J", D.Energy, 1), new("kJ", D.Energy, 1000), new("W h", D.Energy, 3600),
        new("W", D.Power, 1), new("kW", D.Power, 1000), new("hp", D.Power, 550 * PoundForce * Foot),
        new("kg/m3", D.Density, 1),
        new("K", D.Temperature, 1), new("C", D.Temperature, 1, 273.15), new("F", D.Temperature, 5.0 / 9.0, 459.67 * 5.0 / 9.0),
        new("A", D.Current, 1), new("mA", D.Current, 0.001),
        new("V", D.Voltage, 1), new("mV", D.Voltage, 0.001),
        new("Ohm", D.Resistance, 1), new("mOhm", D.Resistance, 0.001),
    ];

    private static readonly Dictionary<string, Unit> s_byCode = All.ToDictionary(u => u.Code, StringComparer.Ordinal);
    private static readonly Dictionary<Dimension, Unit[]> s_byDimension = All.GroupBy(u => u.Dimension).ToDictionary(g => g.Key, g => g.ToArray());

    /// <summary>The unit of an exact code, or null.</summary>
    public static Unit? Find(string code) => s_byCode.GetValueOrDefault(code);

    /// <summary>The units of a dimension, SI first.</summary>
    public static IReadOnlyList<Unit> Of(Dimension dimension) => s_byDimension[dimension];

    /// <summary>The unit of a code that the program itself wrote.</summary>
    public static Unit Require(string code) => Find(code) ?? throw new ArgumentException($"'{code}' is no unit code of the project", nameof(code));
}
