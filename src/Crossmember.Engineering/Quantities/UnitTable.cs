using D = Crossmember.Engineering.Quantities.Dimension;

namespace Crossmember.Engineering.Quantities;

/// <summary>The rows of <see cref="Units"/>: code, dimension, factor to SI. One line per family; within a dimension the SI unit stands first.</summary>
/// <remarks>Sources of the factors stand in <c>docs/units.md</c>, one per code; a test holds page and table together.</remarks>
internal static class UnitTable
{
    // Exact by definition: international yard and pound (1959), standard acceleration of free fall (CGPM 1901), US gallon of 231 in3.
    private const double Inch = 0.0254, Foot = 0.3048, Mile = 1609.344, Pound = 0.45359237, G = 9.80665, PoundForce = Pound * G;
    private const double In2 = Inch * Inch, In3 = In2 * Inch, Ft3 = Foot * Foot * Foot, Gallon = 231 * In3;
    private const double Psi = PoundForce / In2, Turn = 2 * Math.PI, Degree = Math.PI / 180, Kelvin9 = 5.0 / 9.0;
    private const double FootPound = PoundForce * Foot, InchPound = PoundForce * Inch;
    private const double Btu = 1055.05585262; // International Table

    public static IReadOnlyList<Unit> Rows { get; } =
    [
        new("1", D.Dimensionless, 1), new("%", D.Dimensionless, 0.01),
        new("m", D.Length, 1), new("mm", D.Length, 0.001), new("cm", D.Length, 0.01), new("km", D.Length, 1000), new("um", D.Length, 1e-6),
        new("in", D.Length, Inch), new("ft", D.Length, Foot), new("yd", D.Length, 3 * Foot), new("mile", D.Length, Mile), new("mil", D.Length, Inch / 1000),
        new("m2", D.Area, 1), new("mm2", D.Area, 1e-6), new("cm2", D.Area, 1e-4), new("in2", D.Area, In2), new("ft2", D.Area, Foot * Foot),
        new("m3", D.Volume, 1), new("L", D.Volume, 1e-3), new("mm3", D.Volume, 1e-9), new("cm3", D.Volume, 1e-6), new("in3", D.Volume, In3),
        new("ft3", D.Volume, Ft3),
        new("gal", D.Volume, Gallon), new("qt", D.Volume, Gallon / 4), new("pt", D.Volume, Gallon / 8), new("fl oz", D.Volume, Gallon / 128),
        new("kg", D.Mass, 1), new("g", D.Mass, 0.001), new("t", D.Mass, 1000), new("lb", D.Mass, Pound), new("oz", D.Mass, Pound / 16),
        new("ton", D.Mass, 2000 * Pound),
        new("kg m", D.MassMoment, 1), new("kg mm", D.MassMoment, 0.001), new("lb in", D.MassMoment, Pound * Inch), new("lb ft", D.MassMoment, Pound * Foot),
        new("s", D.Duration, 1), new("ms", D.Duration, 0.001), new("min", D.Duration, 60), new("h", D.Duration, 3600), new("day", D.Duration, 86400),
        new("week", D.Duration, 604800),
        new("m/s", D.Speed, 1), new("km/h", D.Speed, 1 / 3.6), new("mm/s", D.Speed, 0.001), new("m/min", D.Speed, 1.0 / 60),
        new("mph", D.Speed, Mile / 3600), new("ft/s", D.Speed, Foot), new("ft/min", D.Speed, Foot / 60), new("in/s", D.Speed, Inch),
        new("in/min", D.Speed, Inch / 60),
        new("m/s2", D.Acceleration, 1), new("gn", D.Acceleration, G), new("ft/s2", D.Acceleration, Foot),
        new("rad/s", D.RotationalSpeed, 1), new("rpm", D.RotationalSpeed, Turn / 60), new("deg/s", D.RotationalSpeed, Degree),
        new("1/m", D.ReciprocalLength, 1), new("1/mm", D.ReciprocalLength, 1000), new("1/in", D.ReciprocalLength, 1 / Inch),
        new("rev/km", D.ReciprocalLength, 0.001), new("rev/mile", D.ReciprocalLength, 1 / Mile),
        new("rad", D.Angle, 1), new("mrad", D.Angle, 0.001), new("deg", D.Angle, Degree), new("arcmin", D.Angle, Degree / 60), new("rev", D.Angle, Turn),
        new("Hz", D.Frequency, 1), new("kHz", D.Frequency, 1000), new("1/min", D.Frequency, 1.0 / 60),
        new("N", D.Force, 1), new("kN", D.Force, 1000), new("lbf", D.Force, PoundForce), new("kgf", D.Force, G), new("kip", D.Force, 1000 * PoundForce),
        new("tonf", D.Force, 2000 * PoundForce),
        new("N m", D.Torque, 1), new("kN m", D.Torque, 1000), new("N mm", D.Torque, 0.001), new("kgf m", D.Torque, G), new("lbf ft", D.Torque, FootPound),
        new("lbf in", D.Torque, InchPound),
        new("Pa", D.Pressure, 1), new("kPa", D.Pressure, 1e3), new("MPa", D.Pressure, 1e6), new("GPa", D.Pressure, 1e9), new("bar", D.Pressure, 1e5),
        new("mbar", D.Pressure, 100),
        new("psi", D.Pressure, Psi), new("ksi", D.Pressure, 1000 * Psi), new("atm", D.Pressure, 101325), new("kgf/cm2", D.Pressure, G * 1e4),
        new("inHg", D.Pressure, 3386.389), new("mmHg", D.Pressure, 133.3224), new("inH2O", D.Pressure, 249.08891), // conventional columns
        new("N/m", D.SpringRate, 1), new("N/mm", D.SpringRate, 1000), new("kN/m", D.SpringRate, 1000), new("lbf/in", D.SpringRate, PoundForce / Inch),
        new("lbf/ft", D.SpringRate, PoundForce / Foot), new("kgf/mm", D.SpringRate, G * 1000),
        new("N m/rad", D.TorsionRate, 1), new("N m/deg", D.TorsionRate, 1 / Degree), new("lbf ft/deg", D.TorsionRate, FootPound / Degree),
        new("lbf in/deg", D.TorsionRate, InchPound / Degree),
        new("m4", D.AreaMoment, 1), new("mm4", D.AreaMoment, 1e-12), new("cm4", D.AreaMoment, 1e-8), new("in4", D.AreaMoment, In2 * In2),
        new("kg m2", D.Inertia, 1), new("lb in2", D.Inertia, Pound * In2), new("lb ft2", D.Inertia, Pound * Foot * Foot),
        new("kg/m", D.LinearDensity, 1), new("g/m", D.LinearDensity, 0.001), new("lb/ft", D.LinearDensity, Pound / Foot),
        new("lb/in", D.LinearDensity, Pound / Inch),
        new("m3/s", D.VolumeFlow, 1), new("m3/h", D.VolumeFlow, 1.0 / 3600), new("L/min", D.VolumeFlow, 1e-3 / 60), new("L/h", D.VolumeFlow, 1e-3 / 3600),
        new("cm3/min", D.VolumeFlow, 1e-6 / 60), new("gpm", D.VolumeFlow, Gallon / 60), new("gph", D.VolumeFlow, Gallon / 3600),
        new("cfm", D.VolumeFlow, Ft3 / 60),
        new("kg/s", D.MassFlow, 1), new("kg/h", D.MassFlow, 1.0 / 3600), new("g/s", D.MassFlow, 0.001), new("lb/h", D.MassFlow, Pound / 3600),
        new("lb/min", D.MassFlow, Pound / 60),
        new("J", D.Energy, 1), new("kJ", D.Energy, 1000), new("MJ", D.Energy, 1e6), new("W h", D.Energy, 3600), new("kW h", D.Energy, 3.6e6),
        new("ft lbf", D.Energy, FootPound), new("BTU", D.Energy, Btu),
        new("W", D.Power, 1), new("kW", D.Power, 1000), new("hp", D.Power, 550 * FootPound), new("PS", D.Power, 75 * G), new("BTU/h", D.Power, Btu / 3600),
        new("kg/m3", D.Density, 1), new("g/cm3", D.Density, 1000), new("kg/L", D.Density, 1000), new("lb/in3", D.Density, Pound / In3),
        new("lb/ft3", D.Density, Pound / Ft3),
        new("lb/gal", D.Density, Pound / Gallon),
        new("K", D.Temperature, 1), new("C", D.Temperature, 1, 273.15), new("F", D.Temperature, Kelvin9, 459.67 * Kelvin9),
        new("dK", D.TemperatureDifference, 1), new("dC", D.TemperatureDifference, 1), new("dF", D.TemperatureDifference, Kelvin9),
        new("A", D.Current, 1), new("mA", D.Current, 0.001), new("kA", D.Current, 1000),
        new("V", D.Voltage, 1), new("mV", D.Voltage, 0.001), new("kV", D.Voltage, 1000),
        new("Ohm", D.Resistance, 1), new("mOhm", D.Resistance, 0.001), new("uOhm", D.Resistance, 1e-6), new("kOhm", D.Resistance, 1e3),
        new("MOhm", D.Resistance, 1e6),
        new("Ohm m", D.Resistivity, 1), new("Ohm mm2/m", D.Resistivity, 1e-6), new("uOhm cm", D.Resistivity, 1e-8),
        new("A s", D.Charge, 1), new("A h", D.Charge, 3600),
    ];
}
