using Crossmember.Engineering.Quantities;

namespace Crossmember.Engineering.Tests.Quantities;

/// <summary>How quantities are shown; expected numbers are worked by hand from the definitions of the units, the choice of unit is common practice.</summary>
public class DisplayTests
{
    [Theory]
    [InlineData("length", 0.7366, "29 in", "736.6 mm")]
    [InlineData("length", 0.0381, "1-1/2 in", "38.1 mm")]
    [InlineData("length", 0.0047625, "3/16 in", "4.7625 mm")]
    [InlineData("length", 0.00079375, "1/32 in", "0.79375 mm")]
    [InlineData("length", 0.04, "1.5748 in", "40 mm")]
    [InlineData("length", -0.0635, "-2-1/2 in", "-63.5 mm")]
    [InlineData("length", 0, "0 in", "0 mm")]
    [InlineData("length", 3.048, "10 ft", "3048 mm")]
    [InlineData("length", 4.9149, "16 ft 1-1/2 in", "4914.9 mm")]
    [InlineData("length", -4.9149, "-16 ft 1-1/2 in", "-4914.9 mm")]
    [InlineData("length", 10.01, "32.841 ft", "10.01 m")]
    [InlineData("length", 16093.44, "10 mile", "16.093 km")]
    [InlineData("mass", 45.359237, "100 lb", "45.359 kg")]
    [InlineData("mass", 0.028349523125, "1 oz", "28.35 g")]
    [InlineData("torque", 162.69815, "120 lbf·ft", "162.7 N·m")]
    [InlineData("pressure", 241316.5, "35 psi", "241.32 kPa")]
    [InlineData("pressure", 3.45e8, "50.038 ksi", "345 MPa")]
    [InlineData("spring-rate", 35025.4, "200 lbf/in", "35.025 N/mm")]
    [InlineData("speed", 29.0576, "65 mph", "104.61 km/h")]
    [InlineData("temperature", 355.37222222, "180 °F", "82.222 °C")]
    [InlineData("temperature-difference", 10, "18 °F", "10 °C")]
    [InlineData("angle", 0.52359877559829882, "30 °", "30 °")]
    [InlineData("area", 2.5e-6, "0.003875 in²", "2.5 mm²")]
    [InlineData("area-moment", 1e-6, "2.4025 in⁴", "100 cm⁴")]
    [InlineData("resistance", 0.008, "8 mΩ", "8 mΩ")]
    [InlineData("resistivity", 1.7241e-8, "0.017241 Ω·mm²/m", "0.017241 Ω·mm²/m")]
    [InlineData("power", 110, "110 W", "110 W")]
    [InlineData("power", 149139.97, "200 hp", "149.14 kW")]
    [InlineData("dimensionless", 4.11, "4.11", "4.11")]
    [InlineData("current", double.NaN, "unknown", "unknown")]
    public void Each_kind_and_size_has_its_customary_unit(string dimension, double si, string us, string metric)
    {
        Assert.Equal(us, Display.Show(si, Dimension.Named(dimension)!, MeasureSystem.UsCustomary));
        Assert.Equal(metric, Display.Show(si, Dimension.Named(dimension)!, MeasureSystem.Metric));
    }

    [Fact]
    public void A_typed_text_stays_while_its_unit_belongs_to_the_system()
    {
        var ride = ShopNotation.Read("2 ft 5 in", Dimension.Length).Value!;
        Assert.Equal("2 ft 5 in", Display.Show(ride));
        Assert.Equal("2 ft 5 in", Display.Show(ride, MeasureSystem.UsCustomary));
        Assert.Equal("736.6 mm", Display.Show(ride, MeasureSystem.Metric));
    }

    [Theory]
    [InlineData("40 mm", "length", "1.5748 in", "40 mm")]
    [InlineData("110 W", "power", "110 W", "110 W")]
    [InlineData("3 gn", "acceleration", "3 gn", "3 gn")]
    [InlineData("3 g", "acceleration", "3 g", "3 g")]
    [InlineData("20 in Hg", "pressure", "20 in Hg", "67.728 kPa")]
    [InlineData("14.2 V", "voltage", "14.2 V", "14.2 V")]
    [InlineData("2.2 kgf m", "torque", "15.913 lbf·ft", "2.2 kgf m")]
    [InlineData("6 fl oz", "volume", "6 fl oz", "177.44 cm³")]
    public void A_text_of_the_other_system_is_converted(string typed, string dimension, string us, string metric)
    {
        var quantity = ShopNotation.Read(typed, Dimension.Named(dimension)!).Value!;
        Assert.Equal(us, Display.Show(quantity, MeasureSystem.UsCustomary));
        Assert.Equal(metric, Display.Show(quantity, MeasureSystem.Metric));
    }

    [Fact]
    public void Every_symbol_is_read_back_as_its_unit() =>
        Assert.All(Units.All, unit => Assert.Equal(unit, unit.Code == "1" ? unit : ShopNotation.Read("5 " + Display.Symbol(unit), unit.Dimension).Value?.Unit));

    [Fact]
    public void Every_dimension_has_a_customary_unit_that_belongs_to_its_system()
    {
        foreach (var system in Enum.GetValues<MeasureSystem>())
        {
            foreach (var dimension in Dimension.All)
            {
                var unit = Display.Customary(dimension, system);
                Assert.Equal(dimension, unit.Dimension);
                Assert.Equal($"5 {unit}", Display.Show(ShopNotation.Read($"5 {unit}", dimension).Value!, system));
            }
        }
    }

    /// <summary>A fraction must not hide what a caliper can tell: 1/32 in is 0.79375 mm, 0.795 mm is half a thousandth off.</summary>
    [Theory]
    [InlineData(0.000795, "0.031299 in")]
    [InlineData(0.7367, "29.004 in")]
    [InlineData(3.657599, "12 ft")]
    public void Fractions_stand_only_for_what_they_are(double metres, string shown) =>
        Assert.Equal(shown, Display.Show(metres, Dimension.Length, MeasureSystem.UsCustomary));

    [Theory]
    [InlineData(1234567, "1234567")]
    [InlineData(12345.678, "12346")]
    [InlineData(0.00123456, "0.0012346")]
    [InlineData(1.5e12, "1.5e+12")]
    [InlineData(-2.5e-9, "-2.5e-9")]
    [InlineData(0, "0")]
    [InlineData(double.PositiveInfinity, "unknown")]
    public void Numbers_carry_five_significant_figures(double value, string shown) => Assert.Equal(shown, Figures.Short(value));
}
