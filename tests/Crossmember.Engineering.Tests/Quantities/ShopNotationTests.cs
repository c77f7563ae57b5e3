using Crossmember.Engineering.Quantities;
using static Crossmember.Engineering.Quantities.Dimension;

namespace Crossmember.Engineering.Tests.Quantities;

/// <summary>What people write on a drawing or a job card. Expected numbers are worked by hand from 1 in = 25.4 mm and 1 lb = 0.45359237 kg.</summary>
public class ShopNotationTests
{
    private static void Means(string text, Dimension dimension, double si, string code)
    {
        var read = ShopNotation.Read(text, dimension);
        Assert.True(read.Ok, $"{text}: {read.Wrong}; {read.WouldBeRight}");
        Assert.Equal(code, read.Value!.Unit.Code);
        Assert.True(Math.Abs(read.Value.Si - si) <= 1e-12 * Math.Abs(si), $"{text}: {read.Value.Si:R} is not {si:R}");
        Assert.Equal(text.Trim(), read.Value.Typed);
    }

    [Theory]
    [InlineData("29 in", 0.7366)]
    [InlineData("29in", 0.7366)]
    [InlineData("29\"", 0.7366)]
    [InlineData("29″", 0.7366)]
    [InlineData("29”", 0.7366)]
    [InlineData("29''", 0.7366)]
    [InlineData(" 29 in. ", 0.7366)]
    [InlineData("29 Inches", 0.7366)]
    [InlineData("3/16\"", 0.0047625)]
    [InlineData("3/16 in", 0.0047625)]
    [InlineData("3⁄16 in", 0.0047625)]
    [InlineData("1 3/8 in", 0.034925)]
    [InlineData("2-1/2 in", 0.0635)]
    [InlineData("2½ in", 0.0635)]
    [InlineData("2 ½\"", 0.0635)]
    [InlineData("½ in", 0.0127)]
    [InlineData("-3/16 in", -0.0047625)]
    [InlineData("- 2-1/2 in", -0.0635)]
    [InlineData("−2-1/2 in", -0.0635)]
    [InlineData("+.5 in", 0.0127)]
    [InlineData("5e-1 in", 0.0127)]
    public void Inches_and_their_fractions(string text, double metres) => Means(text, Length, metres, "in");

    [Theory]
    [InlineData("1' 4-1/2\"", 0.4191)]
    [InlineData("1'4 1/2\"", 0.4191)]
    [InlineData("1'-4 1/2\"", 0.4191)]
    [InlineData("1′ 4½″", 0.4191)]
    [InlineData("5 ft 3 in", 1.6002)]
    [InlineData("5ft 3in", 1.6002)]
    [InlineData("5' 3\"", 1.6002)]
    [InlineData("5'3.5\"", 1.6129)]
    [InlineData("-5' 3\"", -1.6002)]
    [InlineData("5 ft. 3 in.", 1.6002)]
    [InlineData("5-ft 3-in", 1.6002)]
    [InlineData("5' .5\"", 1.5367)]
    [InlineData("5'", 1.524)]
    [InlineData("5 feet", 1.524)]
    public void Feet_and_inches(string text, double metres) => Means(text, Length, metres, "ft");

    [Fact]
    public void Other_units_that_come_in_pairs()
    {
        Means("12 lb 8 oz", Dimension.Mass, 12.5 * 0.45359237, "lb");
        Means("1° 30'", Angle, Math.PI / 120, "deg");
        Means("2 h 30 min", Duration, 9000, "h");
        Means("1h 1min 1s", Duration, 3661, "h");
    }

    [Theory]
    [InlineData("120 ft-lb")]
    [InlineData("120 lb-ft")]
    [InlineData("120 lbf ft")]
    [InlineData("120 lbf·ft")]
    [InlineData("120 ft·lb")]
    [InlineData("120 ft×lb")]
    [InlineData("120 ft.lbs.")]
    [InlineData("120 FT LBS")]
    [InlineData("120 Ft-Lb")]
    [InlineData("120 foot-pounds")]
    public void Torque_in_foot_pounds_however_it_is_written(string text) => Means(text, Torque, 120 * 1.3558179483314004, "lbf ft");

    [Fact]
    public void Pounds_mean_what_is_asked_for()
    {
        Means("500 lb", Dimension.Mass, 226.796185, "lb");
        Means("500 lb", Force, 2224.11080763025, "lbf");
        Means("500 lb/in", SpringRate, 500 * 4.4482216152605 / 0.0254, "lbf/in");
        Means("10 lb/ft", LinearDensity, 14.881639435695538, "lb/ft");
        Means("45 in-lb", Torque, 45 * 0.1129848290276167, "lbf in");
        Means("45 in-lb", Dimension.MassMoment, 45 * 0.45359237 * 0.0254, "lb in");
        Means("60 lb/in²", Pressure, 60 * 6894.757293168361, "psi");
    }

    [Theory]
    [InlineData("180 F", 355.3722222222222)]
    [InlineData("180 °F", 355.3722222222222)]
    [InlineData("180°F", 355.3722222222222)]
    [InlineData("180 deg F", 355.3722222222222)]
    [InlineData("-40 f", 233.15)]
    public void Temperatures_on_the_scale_of_Fahrenheit(string text, double kelvin) => Means(text, Temperature, kelvin, "F");

    [Fact]
    public void A_temperature_step_has_no_offset()
    {
        Means("18 F", TemperatureDifference, 10, "dF");
        Means("10 °C", TemperatureDifference, 10, "dC");
        Means("10 K", TemperatureDifference, 10, "dK");
    }

    [Fact]
    public void Numbers_without_a_unit()
    {
        Means("4.1", Dimensionless, 4.1, "1");
        Means("3/16", Dimensionless, 0.1875, "1");
        Means("5 1/2", Dimensionless, 5.5, "1");
        Means("12 %", Dimensionless, 0.12, "%");
        Means("12%", Dimensionless, 0.12, "%");
        Means("-1.5e-3", Dimensionless, -0.0015, "1");
        Means("4.11:1", Dimensionless, 4.11, "1");
    }

    [Fact]
    public void Signs_and_spellings_of_other_kinds()
    {
        Means("65 MPH", Speed, 65 * 0.44704, "mph");
        Means("1.5e3 N", Force, 1500, "N");
        Means("90 Nm", Torque, 90, "N m");
        Means("14.2V", Voltage, 14.2, "V");
        Means("8 mΩ", Resistance, 0.008, "mOhm");
        Means("0.017241 Ω·mm²/m", Resistivity, 1.7241e-8, "Ohm mm2/m");
        Means("25 µm", Length, 25e-6, "um");
        Means("2.5 mm^2", Area, 2.5e-6, "mm2");
        Means("640 rev/mi", ReciprocalLength, 640 / 1609.344, "rev/mile");
        Means("5 1/m", ReciprocalLength, 5, "1/m");
        Means("350 cu in", Volume, 350 * 0.000016387064, "in3");
        Means("12 V", Voltage, 12, "V");
    }

    [Fact]
    public void Milli_and_mega_are_never_mixed_up()
    {
        Means("2 mOhm", Resistance, 0.002, "mOhm");
        Means("2 MOhm", Resistance, 2e6, "MOhm");
        Means("2 MPa", Pressure, 2e6, "MPa");
        Refuses("2 MOHM", Resistance, "'MOHM' at character 3 is no unit of resistance");
        Refuses("2 mpa", Pressure, "'mpa' at character 3 is no unit of pressure", "MPa");
        Refuses("2 MV", Voltage, "'MV' at character 3 is no unit of voltage");
    }

    [Theory]
    [InlineData("38,1 mm", "',' at character 3", "write 38.1, not 38,1")]
    [InlineData("0,5 in", "',' at character 2", "write 0.5, not 0,5")]
    [InlineData("3,000 N", "',' at character 2", "write 3000, not 3,000")]
    [InlineData("1,234,567 N", "',' at character 2", "write 1234567, not 1,234,567")]
    [InlineData("1,234.5 N", "',' at character 2", "write 1234.5, not 1,234.5")]
    [InlineData("5, N", "',' at character 2", "decimal point")]
    [InlineData("5 ± 1 mm", "'±' at character 3", "uncertainty")]
    public void Commas_and_tolerances_are_refused_with_a_hint(string text, string wrong, string right) =>
        Refuses(text, text.EndsWith('N') ? Force : Length, wrong, right);

    [Fact]
    public void A_length_needs_its_unit()
    {
        Refuses("3/16", Length, "'3/16' at character 1 has no unit", "3/16 in");
        Refuses("29", Length, "'29' at character 1 has no unit", "29 in");
        Refuses("5' 3", Length, "'3' at character 4 has no unit", "3 in");
        Refuses(" 5", Torque, "'5' at character 2 has no unit", "5 lbf ft");
    }

    [Fact]
    public void What_is_not_understood_is_named_with_its_place()
    {
        Refuses("29 inn", Length, "'inn' at character 4 is no unit of length", "in");
        Refuses("29 psi", Length, "'psi' at character 4 is a unit of pressure, not of length");
        Refuses("about 5 in", Length, "'about 5 in' at character 1 is not a number");
        Refuses("3/0 in", Length, "'3/0' at character 1 divides by zero");
        Refuses("1 9/8 in", Length, "'1 9/8' at character 1 has a fraction of 1 or more");
        Refuses("5.5' 3\"", Length, "'3\"' at character 6 follows a part that is not whole");
        Refuses("3 in 5 ft", Length, "'5 ft' at character 6 cannot follow a part in in");
        Refuses("5 ft 3 ft", Length, "'3 ft' at character 6 cannot follow a part in ft");
        Refuses("5 ft 3 inc", Length, "'inc' at character 8 is no unit of length");
        Refuses("5 ft.3 in", Length, "'ft.3 in' at character 3 is no unit of length"); // 3 or 0.3?
        Refuses("10 1/2 1/4 in", Length, "'1/4 in' at character 8 is no unit of length");
        Refuses("3 - 1/2 in", Length, "'- 1/2 in' at character 3 is no unit of length");
        Refuses("1e999 m", Length, "'1e999' at character 1 is too large");
        Refuses("-", Length, "the end at character 2 is not a number");
        Refuses("-300 C", Temperature, "'-300 C' at character 1 is below absolute zero");
        Refuses("4.11:0", Dimensionless, "divides by zero");
        Refuses("", Length, "nothing is written", "12 in");
        Refuses(new string('1', 101), Length, "after character 100");
    }

    private static void Refuses(string text, Dimension dimension, string wrong, string right = "")
    {
        var read = ShopNotation.Read(text, dimension);
        Assert.False(read.Ok, text);
        Assert.Contains(wrong, read.Wrong, StringComparison.Ordinal);
        Assert.Contains(right, read.WouldBeRight, StringComparison.Ordinal);
    }
}
