using Crossmember.Engineering.Quantities;
using UnitsNet;

namespace Crossmember.Engineering.Tests.Quantities;

/// <summary>The factors of the unit table against published values and against an independent units library.</summary>
public class UnitFactorTests
{
    private const double NineFigures = 1e-9, SixFigures = 2e-6, FiveFigures = 2e-5;

    /// <summary>NIST Special Publication 811, 2008 edition, appendix B.8: seven figures, from memory of the tables.</summary>
    [Theory]
    [InlineData("lbf", 4.448222)]
    [InlineData("kip", 4.448222e3)]
    [InlineData("tonf", 8.896443e3)]
    [InlineData("lbf ft", 1.355818)]
    [InlineData("lbf in", 1.129848e-1)]
    [InlineData("ft lbf", 1.355818)]
    [InlineData("psi", 6.894757e3)]
    [InlineData("ksi", 6.894757e6)]
    [InlineData("kgf/cm2", 9.80665e4)]
    [InlineData("inHg", 3.386389e3)]
    [InlineData("mmHg", 1.333224e2)]
    [InlineData("inH2O", 2.490889e2)]
    [InlineData("lbf/in", 1.751268e2)]
    [InlineData("lbf/ft", 1.459390e1)]
    [InlineData("mph", 4.4704e-1)]
    [InlineData("ft/min", 5.08e-3)]
    [InlineData("gal", 3.785412e-3)]
    [InlineData("qt", 9.463529e-4)]
    [InlineData("pt", 4.731765e-4)]
    [InlineData("fl oz", 2.957353e-5)]
    [InlineData("in3", 1.638706e-5)]
    [InlineData("ft3", 2.831685e-2)]
    [InlineData("in2", 6.4516e-4)]
    [InlineData("ft2", 9.290304e-2)]
    [InlineData("in4", 4.162314e-7)]
    [InlineData("mil", 2.54e-5)]
    [InlineData("mile", 1.609344e3)]
    [InlineData("oz", 2.834952e-2)]
    [InlineData("lb", 4.535924e-1)]
    [InlineData("ton", 9.071847e2)]
    [InlineData("hp", 7.456999e2)]
    [InlineData("PS", 7.354988e2)]
    [InlineData("BTU", 1.055056e3)]
    [InlineData("BTU/h", 2.930711e-1)]
    [InlineData("W h", 3.6e3)]
    [InlineData("lb/ft3", 1.601846e1)]
    [InlineData("lb/in3", 2.767990e4)]
    [InlineData("lb/gal", 1.198264e2)]
    [InlineData("lb/ft", 1.488164)]
    [InlineData("lb/in", 1.785797e1)]
    [InlineData("lb in2", 2.926397e-4)]
    [InlineData("lb ft2", 4.214011e-2)]
    [InlineData("lb/h", 1.259979e-4)]
    [InlineData("lb/min", 7.559873e-3)]
    [InlineData("cfm", 4.719474e-4)]
    [InlineData("gpm", 6.309020e-5)]
    [InlineData("rpm", 1.047198e-1)]
    [InlineData("deg", 1.745329e-2)]
    [InlineData("arcmin", 2.908882e-4)]
    [InlineData("A h", 3.6e3)]
    public void Agrees_with_SP_811_to_its_seven_figures(string code, double published)
    {
        var lastFigure = Math.Pow(10, Math.Floor(Math.Log10(published)) - 6);
        Assert.InRange(Units.Require(code).Factor, published - (0.51 * lastFigure), published + (0.51 * lastFigure));
    }

    /// <summary>International yard and pound agreement, 1959; 3rd CGPM, 1901; US gallon of 231 cubic inches: exact by definition.</summary>
    [Fact]
    public void Defined_units_are_exact()
    {
        Assert.Equal(736.6, Units.Require("mm").FromSi(Units.Require("in").ToSi(29)), 1e-12);
        Assert.Equal(0.0254, Units.Require("in").Factor);
        Assert.Equal(0.45359237, Units.Require("lb").Factor);
        Assert.Equal(9.80665, Units.Require("gn").Factor);
        Assert.Equal(231, Units.Require("gal").Factor / Units.Require("in3").Factor, 1e-12);
        Assert.Equal(5280, Units.Require("mile").Factor / Units.Require("ft").Factor, 1e-12);
        Assert.Equal(33000, Units.Require("hp").Factor * 60 / Units.Require("ft lbf").Factor, 1e-9); // foot pounds a minute, after Watt
    }

    /// <summary>Fixed points of the scales: ice 0 C = 32 F = 273.15 K, steam 100 C = 212 F, and -40 where the two scales meet.</summary>
    [Theory]
    [InlineData("C", 0, 273.15)]
    [InlineData("F", 32, 273.15)]
    [InlineData("F", 212, 373.15)]
    [InlineData("C", -40, 233.15)]
    [InlineData("F", -40, 233.15)]
    [InlineData("F", -459.67, 0)]
    public void Temperature_scales_have_their_offsets(string code, double number, double kelvin)
    {
        Assert.Equal(kelvin, Units.Require(code).ToSi(number), 1e-10);
        Assert.Equal(number, Units.Require(code).FromSi(kelvin), 1e-10);
    }

    [Fact]
    public void Agrees_with_an_independent_units_library()
    {
        foreach (var (code, theirs, relative) in s_theirs)
        {
            var ours = Units.Require(code).ToSi(1);
            Assert.True(Math.Abs(ours - theirs) <= relative * Math.Abs(theirs), $"{code}: {ours:R} here, {theirs:R} there");
        }
    }

    /// <summary>
    /// One of each unit in SI, by UnitsNet. It keeps its own rounded factors, so most rows agree to nine figures, some to six,
    /// its mechanical horsepower (745.69 W) and pound per minute to five.
    /// </summary>
    private static readonly (string Code, double Si, double Relative)[] s_theirs =
    [
        ("%", Ratio.FromPercent(1).DecimalFractions, NineFigures),
        ("mm", Length.FromMillimeters(1).Meters, NineFigures),
        ("cm", Length.FromCentimeters(1).Meters, NineFigures),
        ("km", Length.FromKilometers(1).Meters, NineFigures),
        ("um", Length.FromMicrometers(1).Meters, NineFigures),
        ("in", Length.FromInches(1).Meters, NineFigures),
        ("ft", Length.FromFeet(1).Meters, NineFigures),
        ("yd", Length.FromYards(1).Meters, NineFigures),
        ("mile", Length.FromMiles(1).Meters, NineFigures),
        ("mil", Length.FromMils(1).Meters, NineFigures),
        ("mm2", Area.FromSquareMillimeters(1).SquareMeters, NineFigures),
        ("cm2", Area.FromSquareCentimeters(1).SquareMeters, NineFigures),
        ("in2", Area.FromSquareInches(1).SquareMeters, NineFigures),
        ("ft2", Area.FromSquareFeet(1).SquareMeters, NineFigures),
        ("L", Volume.FromLiters(1).CubicMeters, NineFigures),
        ("mm3", Volume.FromCubicMillimeters(1).CubicMeters, NineFigures),
        ("cm3", Volume.FromCubicCentimeters(1).CubicMeters, NineFigures),
        ("in3", Volume.FromCubicInches(1).CubicMeters, NineFigures),
        ("ft3", Volume.FromCubicFeet(1).CubicMeters, NineFigures),
        ("gal", Volume.FromUsGallons(1).CubicMeters, NineFigures),
        ("qt", Volume.FromUsQuarts(1).CubicMeters, NineFigures),
        ("pt", Volume.FromUsPints(1).CubicMeters, SixFigures),
        ("fl oz", Volume.FromUsOunces(1).CubicMeters, NineFigures),
        ("g", UnitsNet.Mass.FromGrams(1).Kilograms, NineFigures),
        ("t", UnitsNet.Mass.FromTonnes(1).Kilograms, NineFigures),
        ("lb", UnitsNet.Mass.FromPounds(1).Kilograms, NineFigures),
        ("oz", UnitsNet.Mass.FromOunces(1).Kilograms, NineFigures),
        ("ton", UnitsNet.Mass.FromShortTons(1).Kilograms, NineFigures),
        ("ms", Duration.FromMilliseconds(1).Seconds, NineFigures),
        ("min", Duration.FromMinutes(1).Seconds, NineFigures),
        ("h", Duration.FromHours(1).Seconds, NineFigures),
        ("day", Duration.FromDays(1).Seconds, NineFigures),
        ("week", Duration.FromWeeks(1).Seconds, NineFigures),
        ("km/h", Speed.FromKilometersPerHour(1).MetersPerSecond, NineFigures),
        ("mm/s", Speed.FromMillimetersPerSecond(1).MetersPerSecond, NineFigures),
        ("m/min", Speed.FromMetersPerMinutes(1).MetersPerSecond, NineFigures),
        ("mph", Speed.FromMilesPerHour(1).MetersPerSecond, NineFigures),
        ("ft/s", Speed.FromFeetPerSecond(1).MetersPerSecond, NineFigures),
        ("ft/min", Speed.FromFeetPerMinute(1).MetersPerSecond, NineFigures),
        ("in/s", Speed.FromInchesPerSecond(1).MetersPerSecond, NineFigures),
        ("in/min", Speed.FromInchesPerMinute(1).MetersPerSecond, NineFigures),
        ("gn", Acceleration.FromStandardGravity(1).MetersPerSecondSquared, NineFigures),
        ("ft/s2", Acceleration.FromFeetPerSecondSquared(1).MetersPerSecondSquared, NineFigures),
        ("rpm", RotationalSpeed.FromRevolutionsPerMinute(1).RadiansPerSecond, NineFigures),
        ("deg/s", RotationalSpeed.FromDegreesPerSecond(1).RadiansPerSecond, NineFigures),
        ("1/mm", ReciprocalLength.FromInverseMillimeters(1).InverseMeters, NineFigures),
        ("1/in", ReciprocalLength.FromInverseInches(1).InverseMeters, NineFigures),
        ("rev/mile", ReciprocalLength.FromInverseMiles(1).InverseMeters, NineFigures),
        ("deg", Angle.FromDegrees(1).Radians, NineFigures),
        ("arcmin", Angle.FromArcminutes(1).Radians, NineFigures),
        ("mrad", Angle.FromMilliradians(1).Radians, NineFigures),
        ("rev", Angle.FromRevolutions(1).Radians, NineFigures),
        ("kHz", Frequency.FromKilohertz(1).Hertz, NineFigures),
        ("1/min", Frequency.FromCyclesPerMinute(1).Hertz, NineFigures),
        ("kN", Force.FromKilonewtons(1).Newtons, NineFigures),
        ("lbf", Force.FromPoundsForce(1).Newtons, NineFigures),
        ("kgf", Force.FromKilogramsForce(1).Newtons, NineFigures),
        ("kip", Force.FromKilopoundsForce(1).Newtons, NineFigures),
        ("tonf", Force.FromShortTonsForce(1).Newtons, NineFigures),
        ("kN m", Torque.FromKilonewtonMeters(1).NewtonMeters, NineFigures),
        ("N mm", Torque.FromNewtonMillimeters(1).NewtonMeters, NineFigures),
        ("kgf m", Torque.FromKilogramForceMeters(1).NewtonMeters, NineFigures),
        ("lbf ft", Torque.FromPoundForceFeet(1).NewtonMeters, NineFigures),
        ("lbf in", Torque.FromPoundForceInches(1).NewtonMeters, NineFigures),
        ("kPa", Pressure.FromKilopascals(1).Pascals, NineFigures),
        ("MPa", Pressure.FromMegapascals(1).Pascals, NineFigures),
        ("GPa", Pressure.FromGigapascals(1).Pascals, NineFigures),
        ("bar", Pressure.FromBars(1).Pascals, NineFigures),
        ("mbar", Pressure.FromMillibars(1).Pascals, NineFigures),
        ("psi", Pressure.FromPoundsForcePerSquareInch(1).Pascals, NineFigures),
        ("ksi", Pressure.FromKilopoundsForcePerSquareInch(1).Pascals, NineFigures),
        ("atm", Pressure.FromAtmospheres(1).Pascals, NineFigures),
        ("kgf/cm2", Pressure.FromKilogramsForcePerSquareCentimeter(1).Pascals, NineFigures),
        ("inHg", Pressure.FromInchesOfMercury(1).Pascals, SixFigures),
        ("mmHg", Pressure.FromMillimetersOfMercury(1).Pascals, SixFigures),
        ("inH2O", Pressure.FromInchesOfWaterColumn(1).Pascals, SixFigures),
        ("N/mm", ForcePerLength.FromNewtonsPerMillimeter(1).NewtonsPerMeter, NineFigures),
        ("kN/m", ForcePerLength.FromKilonewtonsPerMeter(1).NewtonsPerMeter, NineFigures),
        ("lbf/in", ForcePerLength.FromPoundsForcePerInch(1).NewtonsPerMeter, SixFigures),
        ("lbf/ft", ForcePerLength.FromPoundsForcePerFoot(1).NewtonsPerMeter, SixFigures),
        ("kgf/mm", ForcePerLength.FromKilogramsForcePerMillimeter(1).NewtonsPerMeter, SixFigures),
        ("N m/deg", RotationalStiffness.FromNewtonMetersPerDegree(1).NewtonMetersPerRadian, NineFigures),
        ("lbf ft/deg", RotationalStiffness.FromPoundForceFeetPerDegrees(1).NewtonMetersPerRadian, SixFigures),
        ("mm4", AreaMomentOfInertia.FromMillimetersToTheFourth(1).MetersToTheFourth, NineFigures),
        ("cm4", AreaMomentOfInertia.FromCentimetersToTheFourth(1).MetersToTheFourth, NineFigures),
        ("in4", AreaMomentOfInertia.FromInchesToTheFourth(1).MetersToTheFourth, NineFigures),
        ("lb in2", MassMomentOfInertia.FromPoundSquareInches(1).KilogramSquareMeters, SixFigures),
        ("lb ft2", MassMomentOfInertia.FromPoundSquareFeet(1).KilogramSquareMeters, NineFigures),
        ("g/m", LinearDensity.FromGramsPerMeter(1).KilogramsPerMeter, NineFigures),
        ("lb/ft", LinearDensity.FromPoundsPerFoot(1).KilogramsPerMeter, SixFigures),
        ("lb/in", LinearDensity.FromPoundsPerInch(1).KilogramsPerMeter, SixFigures),
        ("m3/h", VolumeFlow.FromCubicMetersPerHour(1).CubicMetersPerSecond, NineFigures),
        ("L/min", VolumeFlow.FromLitersPerMinute(1).CubicMetersPerSecond, NineFigures),
        ("L/h", VolumeFlow.FromLitersPerHour(1).CubicMetersPerSecond, NineFigures),
        ("cm3/min", VolumeFlow.FromCubicCentimetersPerMinute(1).CubicMetersPerSecond, NineFigures),
        ("gpm", VolumeFlow.FromUsGallonsPerMinute(1).CubicMetersPerSecond, NineFigures),
        ("gph", VolumeFlow.FromUsGallonsPerHour(1).CubicMetersPerSecond, NineFigures),
        ("cfm", VolumeFlow.FromCubicFeetPerMinute(1).CubicMetersPerSecond, NineFigures),
        ("kg/h", MassFlow.FromKilogramsPerHour(1).KilogramsPerSecond, NineFigures),
        ("g/s", MassFlow.FromGramsPerSecond(1).KilogramsPerSecond, NineFigures),
        ("lb/h", MassFlow.FromPoundsPerHour(1).KilogramsPerSecond, SixFigures),
        ("lb/min", MassFlow.FromPoundsPerMinute(1).KilogramsPerSecond, FiveFigures),
        ("kJ", Energy.FromKilojoules(1).Joules, NineFigures),
        ("MJ", Energy.FromMegajoules(1).Joules, NineFigures),
        ("W h", Energy.FromWattHours(1).Joules, NineFigures),
        ("kW h", Energy.FromKilowattHours(1).Joules, NineFigures),
        ("ft lbf", Energy.FromFootPounds(1).Joules, NineFigures),
        ("BTU", Energy.FromBritishThermalUnits(1).Joules, NineFigures),
        ("kW", (double)Power.FromKilowatts(1).Watts, NineFigures),
        ("hp", (double)Power.FromMechanicalHorsepower(1).Watts, FiveFigures),
        ("PS", (double)Power.FromMetricHorsepower(1).Watts, NineFigures),
        ("BTU/h", (double)Power.FromBritishThermalUnitsPerHour(1).Watts, SixFigures),
        ("g/cm3", Density.FromGramsPerCubicCentimeter(1).KilogramsPerCubicMeter, NineFigures),
        ("kg/L", Density.FromKilogramsPerLiter(1).KilogramsPerCubicMeter, NineFigures),
        ("lb/in3", Density.FromPoundsPerCubicInch(1).KilogramsPerCubicMeter, SixFigures),
        ("lb/ft3", Density.FromPoundsPerCubicFoot(1).KilogramsPerCubicMeter, SixFigures),
        ("lb/gal", Density.FromPoundsPerUSGallon(1).KilogramsPerCubicMeter, SixFigures),
        ("C", Temperature.FromDegreesCelsius(1).Kelvins, NineFigures),
        ("F", Temperature.FromDegreesFahrenheit(1).Kelvins, NineFigures),
        ("dC", TemperatureDelta.FromDegreesCelsius(1).Kelvins, NineFigures),
        ("dF", TemperatureDelta.FromDegreesFahrenheit(1).Kelvins, NineFigures),
        ("mA", ElectricCurrent.FromMilliamperes(1).Amperes, NineFigures),
        ("kA", ElectricCurrent.FromKiloamperes(1).Amperes, NineFigures),
        ("mV", ElectricPotential.FromMillivolts(1).Volts, NineFigures),
        ("kV", ElectricPotential.FromKilovolts(1).Volts, NineFigures),
        ("mOhm", ElectricResistance.FromMilliohms(1).Ohms, NineFigures),
        ("uOhm", ElectricResistance.FromMicroohms(1).Ohms, NineFigures),
        ("kOhm", ElectricResistance.FromKiloohms(1).Ohms, NineFigures),
        ("MOhm", ElectricResistance.FromMegaohms(1).Ohms, NineFigures),
        ("uOhm cm", ElectricResistivity.FromMicroohmsCentimeter(1).OhmMeters, NineFigures),
        ("A h", ElectricCharge.FromAmpereHours(1).Coulombs, NineFigures),
    ];
}
