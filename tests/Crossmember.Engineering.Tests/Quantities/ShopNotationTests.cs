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
    [InlineData("5'", 1.524)]
    [InlineData("5 feet", 1.524)]
    public void Feet_and_inches(string text, double metres) => Means(text, Length, metres, "ft");
}
