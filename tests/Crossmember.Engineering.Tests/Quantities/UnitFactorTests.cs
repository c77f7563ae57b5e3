using Crossmember.Engineering.Quantities;
using UnitsNet;

namespace Crossmember.Engineering.Tests.Quantities;

/// <summary>The factors of the unit table against published values and against an independent units library.</summary>
public class UnitFactorTests
{
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

    [Theory]
    [MemberData(nameof(Independent))]
    public void Agrees_with_an_independent_units_library(string code, double theirs, double relative)
    {
        var unit = Units.Require(code);
        Assert.InRange(unit.ToSi(1), theirs - (relative * Math.Abs(theirs)), theirs + (relative * Math.Abs(theirs)));
    }

    /// <summary>UnitsNet keeps its own rounded factors, so most rows agree to nine figures, some to six, its mechanical horsepower (745.69 W) and pound per minute to five.</summary>
    public static TheoryData<string, double, double> Independent()
    {
        const double close = 1e-9, sixFigures = 2e-6, fiveFigures = 2e-5;
        var data = new TheoryData<string, double, double>();
        void Row(string code, double si, double relative = close) => data.Add(code, si, relative);
        Row("%", Ratio.FromPercent(1).DecimalFractions);
        Row("mm", Length.FromMillimeters(1).Meters);
        Row("cm", Length.FromCentimeters(1).Meters);
        Row("km", Length.FromKilometers(1).Meters);
        Row("um", Length.FromMicrometers(1).Meters);
        Row("in", Length.FromInches(1).Meters);
        Row("ft", Length.FromFeet(1).Meters);
        Row("yd", Length.FromYards(1).Meters);
        Row("mile", Length.FromMiles(1).Meters);
        Row("mil", Length.FromMils(1).Meters);
        Row("mm2", Area.FromSquareMillimeters(1).SquareMeters);
        Row("cm2", Area.FromSquareCentimeters(1).SquareMeters);
        Row("in2", Area.FromSquareInches(1).SquareMeters);
        Row("ft2", Area.FromSquareFeet(1).SquareMeters);
        Row("L", Volume.FromLiters(1).CubicMeters);
        Row("mm3", Volume.FromCubicMillimeters(1).CubicMeters);
        Row("cm3", Volume.FromCubicCentimeters(1).CubicMeters);
        Row("in3", Volume.FromCubicInches(1).CubicMeters);
        Row("ft3", Volume.FromCubicFeet(1).CubicMeters);
        Row("gal", Volume.FromUsGallons(1).CubicMeters);
        Row("qt", Volume.FromUsQuarts(1).CubicMeters);
        Row("pt", Volume.FromUsPints(1).CubicMeters, sixFigures);
        Row("fl oz", Volume.FromUsOunces(1).CubicMeters);
        Row("g", Mass.FromGrams(1).Kilograms);
        Row("t", Mass.FromTonnes(1).Kilograms);
        Row("lb", Mass.FromPounds(1).Kilograms);
        Row("oz", Mass.FromOunces(1).Kilograms);
        Row("ton", Mass.FromShortTons(1).Kilograms);
        Row("ms", Duration.FromMilliseconds(1).Seconds);
        Row("min", Duration.FromMinutes(1).Seconds);
        Row("h", Duration.FromHours(1).Seconds);
        Row("day", Duration.FromDays(1).Seconds);
        Row("week", Duration.FromWeeks(1).Seconds);
        Row("km/h", Speed.FromKilometersPerHour(1).MetersPerSecond);
        Row("mm/s", Speed.FromMillimetersPerSecond(1).MetersPerSecond);
        Row("m/min", Speed.FromMetersPerMinutes(1).MetersPerSecond);
        Row("mph", Speed.FromMilesPerHour(1).MetersPerSecond);
        Row("ft/s", Speed.FromFeetPerSecond(1).MetersPerSecond);
        Row("ft/min", Speed.FromFeetPerMinute(1).MetersPerSecond);
        Row("in/s", Speed.FromInchesPerSecond(1).MetersPerSecond);
        Row("in/min", Speed.FromInchesPerMinute(1).MetersPerSecond);
        Row("gn", Acceleration.FromStandardGravity(1).MetersPerSecondSquared);
        Row("ft/s2", Acceleration.FromFeetPerSecondSquared(1).MetersPerSecondSquared);
        Row("rpm", RotationalSpeed.FromRevolutionsPerMinute(1).RadiansPerSecond);
        Row("deg/s", RotationalSpeed.FromDegreesPerSecond(1).RadiansPerSecond);
        Row("1/mm", ReciprocalLength.FromInverseMillimeters(1).InverseMeters);
        Row("1/in", ReciprocalLength.FromInverseInches(1).InverseMeters);
        Row("rev/mile", ReciprocalLength.FromInverseMiles(1).InverseMeters);
        Row("deg", Angle.FromDegrees(1).Radians);
        Row("arcmin", Angle.FromArcminutes(1).Radians);
        Row("mrad", Angle.FromMilliradians(1).Radians);
        Row("rev", Angle.FromRevolutions(1).Radians);
        Row("kHz", Frequency.FromKilohertz(1).Hertz);
        Row("1/min", Frequency.FromCyclesPerMinute(1).Hertz);
        Row("kN", Force.FromKilonewtons(1).Newtons);
        Row("lbf", Force.FromPoundsForce(1).Newtons);
        Row("kgf", Force.FromKilogramsForce(1).Newtons);
        Row("kip", Force.FromKilopoundsForce(1).Newtons);
        Row("tonf", Force.FromShortTonsForce(1).Newtons);
        Row("kN m", Torque.FromKilonewtonMeters(1).NewtonMeters);
        Row("N mm", Torque.FromNewtonMillimeters(1).NewtonMeters);
        Row("kgf m", Torque.FromKilogramForceMeters(1).NewtonMeters);
        Row("lbf ft", Torque.FromPoundForceFeet(1).NewtonMeters);
        Row("lbf in", Torque.FromPoundForceInches(1).NewtonMeters);
        Row("kPa", Pressure.FromKilopascals(1).Pascals);
        Row("MPa", Pressure.FromMegapascals(1).Pascals);
        Row("GPa", Pressure.FromGigapascals(1).Pascals);
        Row("bar", Pressure.FromBars(1).Pascals);
        Row("mbar", Pressure.FromMillibars(1).Pascals);
        Row("psi", Pressure.FromPoundsForcePerSquareInch(1).Pascals);
        Row("ksi", Pressure.FromKilopoundsForcePerSquareInch(1).Pascals);
        Row("atm", Pressure.FromAtmospheres(1).Pascals);
        Row("kgf/cm2", Pressure.FromKilogramsForcePerSquareCentimeter(1).Pascals);
        Row("inHg", Pressure.FromInchesOfMercury(1).Pascals, sixFigures);
        Row("mmHg", Pressure.FromMillimetersOfMercury(1).Pascals, sixFigures);
        Row("inH2O", Pressure.FromInchesOfWaterColumn(1).Pascals, sixFigures);
        Row("N/mm", ForcePerLength.FromNewtonsPerMillimeter(1).NewtonsPerMeter);
        Row("kN/m", ForcePerLength.FromKilonewtonsPerMeter(1).NewtonsPerMeter);
        Row("lbf/in", ForcePerLength.FromPoundsForcePerInch(1).NewtonsPerMeter, sixFigures);
        Row("lbf/ft", ForcePerLength.FromPoundsForcePerFoot(1).NewtonsPerMeter, sixFigures);
        Row("kgf/mm", ForcePerLength.FromKilogramsForcePerMillimeter(1).NewtonsPerMeter, sixFigures);
        Row("N m/deg", RotationalStiffness.FromNewtonMetersPerDegree(1).NewtonMetersPerRadian);
        Row("lbf ft/deg", RotationalStiffness.FromPoundForceFeetPerDegrees(1).NewtonMetersPerRadian, sixFigures);
        Row("mm4", AreaMomentOfInertia.FromMillimetersToTheFourth(1).MetersToTheFourth);
        Row("cm4", AreaMomentOfInertia.FromCentimetersToTheFourth(1).MetersToTheFourth);
        Row("in4", AreaMomentOfInertia.FromInchesToTheFourth(1).MetersToTheFourth);
        Row("lb in2", MassMomentOfInertia.FromPoundSquareInches(1).KilogramSquareMeters, sixFigures);
        Row("lb ft2", MassMomentOfInertia.FromPoundSquareFeet(1).KilogramSquareMeters);
        Row("g/m", LinearDensity.FromGramsPerMeter(1).KilogramsPerMeter);
        Row("lb/ft", LinearDensity.FromPoundsPerFoot(1).KilogramsPerMeter, sixFigures);
        Row("lb/in", LinearDensity.FromPoundsPerInch(1).KilogramsPerMeter, sixFigures);
        Row("m3/h", VolumeFlow.FromCubicMetersPerHour(1).CubicMetersPerSecond);
        Row("L/min", VolumeFlow.FromLitersPerMinute(1).CubicMetersPerSecond);
        Row("L/h", VolumeFlow.FromLitersPerHour(1).CubicMetersPerSecond);
        Row("cm3/min", VolumeFlow.FromCubicCentimetersPerMinute(1).CubicMetersPerSecond);
        Row("gpm", VolumeFlow.FromUsGallonsPerMinute(1).CubicMetersPerSecond);
        Row("gph", VolumeFlow.FromUsGallonsPerHour(1).CubicMetersPerSecond);
        Row("cfm", VolumeFlow.FromCubicFeetPerMinute(1).CubicMetersPerSecond);
        Row("kg/h", MassFlow.FromKilogramsPerHour(1).KilogramsPerSecond);
        Row("g/s", MassFlow.FromGramsPerSecond(1).KilogramsPerSecond);
        Row("lb/h", MassFlow.FromPoundsPerHour(1).KilogramsPerSecond, sixFigures);
        Row("lb/min", MassFlow.FromPoundsPerMinute(1).KilogramsPerSecond, fiveFigures);
        Row("kJ", Energy.FromKilojoules(1).Joules);
        Row("MJ", Energy.FromMegajoules(1).Joules);
        Row("W h", Energy.FromWattHours(1).Joules);
        Row("kW h", Energy.FromKilowattHours(1).Joules);
        Row("ft lbf", Energy.FromFootPounds(1).Joules);
        Row("BTU", Energy.FromBritishThermalUnits(1).Joules);
        Row("kW", (double)Power.FromKilowatts(1).Watts);
        Row("hp", (double)Power.FromMechanicalHorsepower(1).Watts, fiveFigures);
        Row("PS", (double)Power.FromMetricHorsepower(1).Watts);
        Row("BTU/h", (double)Power.FromBritishThermalUnitsPerHour(1).Watts, sixFigures);
        Row("g/cm3", Density.FromGramsPerCubicCentimeter(1).KilogramsPerCubicMeter);
        Row("kg/L", Density.FromKilogramsPerLiter(1).KilogramsPerCubicMeter);
        Row("lb/in3", Density.FromPoundsPerCubicInch(1).KilogramsPerCubicMeter, sixFigures);
        Row("lb/ft3", Density.FromPoundsPerCubicFoot(1).KilogramsPerCubicMeter, sixFigures);
        Row("lb/gal", Density.FromPoundsPerUSGallon(1).KilogramsPerCubicMeter, sixFigures);
        Row("C", Temperature.FromDegreesCelsius(1).Kelvins);
        Row("F", Temperature.FromDegreesFahrenheit(1).Kelvins);
        Row("dC", TemperatureDelta.FromDegreesCelsius(1).Kelvins);
        Row("dF", TemperatureDelta.FromDegreesFahrenheit(1).Kelvins);
        Row("mA", ElectricCurrent.FromMilliamperes(1).Amperes);
        Row("kA", ElectricCurrent.FromKiloamperes(1).Amperes);
        Row("mV", ElectricPotential.FromMillivolts(1).Volts);
        Row("kV", ElectricPotential.FromKilovolts(1).Volts);
        Row("mOhm", ElectricResistance.FromMilliohms(1).Ohms);
        Row("uOhm", ElectricResistance.FromMicroohms(1).Ohms);
        Row("kOhm", ElectricResistance.FromKiloohms(1).Ohms);
        Row("MOhm", ElectricResistance.FromMegaohms(1).Ohms);
        Row("uOhm cm", ElectricResistivity.FromMicroohmsCentimeter(1).OhmMeters);
        Row("A h", ElectricCharge.FromAmpereHours(1).Coulombs);
        return data;
    }
}
