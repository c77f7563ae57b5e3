using Crossmember.Engineering.Quantities;

namespace Crossmember.Engineering.Tests.Quantities;

/// <summary>Wire sizes against ASTM B258, standard nominal diameters (values from handbook memory).</summary>
public class WireGaugeTests
{
    [Theory]
    [InlineData("4/0", 11.684)]
    [InlineData("0000 AWG", 11.684)]
    [InlineData("3/0 AWG", 10.405)]
    [InlineData("2/0 AWG", 9.266)]
    [InlineData("1/0", 8.252)]
    [InlineData("0 AWG", 8.252)]
    [InlineData("1 AWG", 7.348)]
    [InlineData("4 AWG", 5.189)]
    [InlineData("AWG 10", 2.588)]
    [InlineData("10 awg", 2.588)]
    [InlineData("10AWG", 2.588)]
    [InlineData("12 AWG", 2.053)]
    [InlineData("18 AWG", 1.024)]
    [InlineData("36 AWG", 0.127)]
    [InlineData("40 AWG", 0.0799)]
    public void Diameters_are_the_standard_ones(string text, double millimeters)
    {
        var read = WireGauge.Read(text);
        Assert.True(read.Ok, read.Wrong);
        Assert.Equal(millimeters, read.Value!.Diameter!.Value.Millimeters, 0.0006);
    }

    /// <summary>Areas in circular mils as printed in wire tables (from memory): 4/0 211,600, 10 AWG 10,380, 12 AWG 6530; 1 cmil = 5.06707e-4 mm2.</summary>
    [Theory]
    [InlineData("4/0", 211600)]
    [InlineData("10 AWG", 10380)]
    [InlineData("12 AWG", 6530)]
    public void Areas_are_the_printed_circular_mils(string text, double circularMils) =>
        Assert.Equal(circularMils, WireGauge.Read(text).Value!.Area.SquareMillimeters / 5.06707479e-4, 5e-4 * circularMils);

    [Fact]
    public void Thirty_nine_steps_span_a_ratio_of_ninety_two()
    {
        Assert.Equal(92, WireGauge.Awg(-3).Diameter!.Value / WireGauge.Awg(36).Diameter!.Value, 1e-9);
        for (var n = WireGauge.Thickest; n < WireGauge.Thinnest; n++) Assert.True(WireGauge.Awg(n).Area > WireGauge.Awg(n + 1).Area);
    }

    [Fact]
    public void Every_size_reads_back_as_it_is_written()
    {
        for (var n = WireGauge.Thickest; n <= WireGauge.Thinnest; n++) Assert.Equal(WireGauge.Awg(n), WireGauge.Read(WireGauge.Awg(n).ToString()).Value);
        Assert.Equal("2/0 AWG", WireGauge.Awg(-1).ToString());
        Assert.Throws<ArgumentOutOfRangeException>(() => WireGauge.Awg(41));
    }

    [Fact]
    public void A_metric_size_is_metal_area()
    {
        var cable = WireGauge.Read("2.5 mm²").Value!;
        Assert.Equal(2.5, cable.Area.SquareMillimeters, 1e-12);
        Assert.Null(cable.Number);
        Assert.Null(cable.Diameter);
        Assert.Equal("2.5 mm2", cable.ToString());
    }

    [Theory]
    [InlineData("10", "has no unit", "10 AWG or 10 mm2")]
    [InlineData("41 AWG", "'41' at character 1 is outside", "10 AWG")]
    [InlineData("5/0 AWG", "'5/0' at character 1 is outside", "10 AWG")]
    [InlineData("AWG ten", "'ten' at character 5 is no AWG size", "4/0")]
    [InlineData("10.5 AWG", "'10.5' at character 1 is no AWG size", "10 AWG")]
    [InlineData("10 AWG wire", "'wire' at character 8", "10 AWG")]
    [InlineData("0 mm2", "no conductor area", "2.5 mm2")]
    [InlineData("2,5 mm2", "',' at character 2", "2.5 mm2")]
    [InlineData("2.5 mm", "a unit of length", "2.5 mm2")]
    [InlineData("", "nothing is written", "10 AWG")]
    public void Other_texts_are_refused_with_a_remedy(string text, string wrong, string right)
    {
        var read = WireGauge.Read(text);
        Assert.False(read.Ok);
        Assert.Contains(wrong, read.Wrong, StringComparison.Ordinal);
        Assert.Contains(right, read.WouldBeRight, StringComparison.Ordinal);
    }
}
