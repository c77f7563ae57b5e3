using System.Text.RegularExpressions;
using Crossmember.Engineering.Tires;
using CsCheck;

namespace Crossmember.Engineering.Tests.Tires;

/// <summary>Sizes as they stand on sidewalls. Diameters are worked by hand from the size code: 25.4 r + 2 W A/100, or 25.4 D (mm).</summary>
public class TireSizeTests
{
    private static TireSize Size(string text)
    {
        var read = TireSize.Read(text);
        Assert.True(read.Ok, $"{text}: {read.Wrong}; {read.WouldBeRight}");
        return read.Value!;
    }

    [Theory]
    [InlineData("245/55R18", 726.7, 245, 18)] // section height 134.75 mm
    [InlineData("245/55ZR18", 726.7, 245, 18)]
    [InlineData("235/75R15", 733.5, 235, 15)]
    [InlineData("P235/75R15", 733.5, 235, 15)]
    [InlineData("LT235/85R16", 805.9, 235, 16)]
    [InlineData("33x10.50R15", 838.2, 266.7, 15)] // section height 228.6 mm
    [InlineData("33x10.50R15LT", 838.2, 266.7, 15)]
    [InlineData("33×10.50R15LT", 838.2, 266.7, 15)]
    [InlineData("31X10.5-15", 787.4, 266.7, 15)]
    [InlineData("35x12.50R17", 889, 317.5, 17)]
    [InlineData("37 x 12.50 R 16.5", 939.8, 317.5, 16.5)]
    public void Nominal_dimensions_follow_from_the_code(string text, double diameter, double width, double rim)
    {
        var size = Size(text);
        Assert.True(size.DiameterKnown);
        Assert.Equal(diameter, size.Diameter!.Value.Millimeters, 0.05);
        Assert.Equal(width, size.Width.Millimeters, 1e-9);
        Assert.Equal(rim, size.RimDiameter.Inches, 1e-9);
        Assert.Equal((diameter - (25.4 * rim)) / 2, size.SectionHeight!.Value.Millimeters, 0.05);
    }

    [Theory]
    [InlineData("7.50R16", 190.5, TireConstruction.Radial)]
    [InlineData("7.50-16", 190.5, TireConstruction.Diagonal)]
    [InlineData("7.50-16 8PR", 190.5, TireConstruction.Diagonal)]
    [InlineData("9.00-20", 228.6, TireConstruction.Diagonal)]
    [InlineData("205R16", 205, TireConstruction.Radial)]
    public void A_size_without_aspect_ratio_does_not_tell_its_diameter(string text, double width, TireConstruction construction)
    {
        var size = Size(text);
        Assert.False(size.DiameterKnown);
        Assert.Null(size.SectionHeight);
        Assert.Equal(TireNotation.Numeric, size.Notation);
        Assert.Equal(width, size.Width.Millimeters, 1e-9);
        Assert.Equal(construction, size.Construction);
    }

    [Fact]
    public void Service_and_construction_are_read()
    {
        Assert.Equal(TireService.Passenger, Size("P235/75R15").Service);
        Assert.Equal(TireService.LightTruck, Size("lt235/85r16").Service);
        Assert.Equal(TireService.LightTruck, Size("33x10.50R15LT").Service);
        Assert.Equal(TireService.Unmarked, Size("235/75R15").Service);
        Assert.Equal(TireConstruction.BeltedBias, Size("33x12.50B15").Construction);
        Assert.Equal(TireConstruction.Diagonal, Size("225/75D15").Construction);
        Assert.Equal('Z', Size("245/55ZR18").SpeedSymbol);
    }

    [Theory]
    [InlineData("235/75R15 104S", 104, null, 'S', null, null)]
    [InlineData("235/75R15 104 S", 104, null, 'S', null, null)]
    [InlineData("LT235/85R16 121/118Q", 121, 118, 'Q', null, null)]
    [InlineData("LT235/85R16 120/116Q LRE", 120, 116, 'Q', "E", null)]
    [InlineData("LT235/85R16 E", null, null, null, "E", null)]
    [InlineData("LT235/85R16/E", null, null, null, "E", null)]
    [InlineData("LT235/85R16E 120/116R", 120, 116, 'R', "E", null)]
    [InlineData("LT235/85R16 120/116 E", 120, 116, null, "E", null)]
    [InlineData("33x10.50R15LT load range C", null, null, null, "C", null)]
    [InlineData("33x10.50R15LT/C 114Q", 114, null, 'Q', "C", null)]
    [InlineData("245/55ZR18 103W XL", 103, null, 'W', "XL", null)]
    [InlineData("7.50R16 8PR", null, null, null, null, 8)]
    public void A_service_description_may_follow(string text, int? index, int? dual, char? speed, string? range, int? ply)
    {
        var size = Size(text);
        Assert.Equal((index, dual, speed, range, ply), (size.LoadIndex, size.DualLoadIndex, size.SpeedSymbol, size.LoadRange, size.PlyRating));
        Assert.Equal(text, size.Typed);
    }

    [Theory]
    [InlineData("235/75Q15", "'Q15' at character 7 is no construction letter")]
    [InlineData("33x10,50R15", "',' at character 6 is not understood")]
    [InlineData("big ones", "'BIG ONES' at character 1 is not a width or diameter")]
    [InlineData("235/7R15", "'7' at character 5 is not an aspect ratio")]
    [InlineData("35/75R15", "at character 1 has a metric width below 100 mm")]
    [InlineData("14x10.50R15", "at character 1 has a rim as large as the tire")]
    [InlineData("235/75R", "the end at character 8 is not a rim diameter")]
    [InlineData("235/75R15 104.5S", "at character 11 is not a whole load index")]
    [InlineData("235/75R15 104S 105S", "at character 16 is a second load index")]
    [InlineData("235/75R15 wide", "'WIDE' at character 11 is not understood after the size")]
    [InlineData("", "nothing is written")]
    public void What_is_not_understood_is_named_with_its_place(string text, string wrong)
    {
        var read = TireSize.Read(text);
        Assert.False(read.Ok);
        Assert.Contains(wrong, read.Wrong, StringComparison.Ordinal);
        Assert.False(string.IsNullOrWhiteSpace(read.WouldBeRight));
    }

    [Fact]
    public void Any_metric_size_has_the_diameter_of_rim_and_two_walls() =>
        Gen.Select(Gen.Int[125, 395], Gen.Int[25, 95], Gen.Int[12, 24]).Sample((w, a, r) =>
        {
            var size = TireSize.Read($"{w}/{a}R{r}").Value!;
            var walls = 2 * size.SectionHeight!.Value.Millimeters;
            return Math.Abs(size.Diameter!.Value.Millimeters - walls - size.RimDiameter.Millimeters) < 1e-9
                && Math.Abs((walls / 2 / size.Width.Millimeters * 100) - a) < 1e-9;
        });

    [Fact]
    public void No_text_throws() =>
        Gen.OneOf(Gen.String[0, 40], Gen.String[Gen.Char["0123456789/xXR-.PLTZBDEQS ×"], 0, 20]).Sample(text =>
        {
            var read = TireSize.Read(text);
            return read.Ok ? read.Value!.Width.Meters > 0 : Regex.IsMatch(read.Wrong!, @"character \d|nothing is written") && read.WouldBeRight!.Length > 0;
        });
}
