using System.Globalization;
using Crossmember.Builds.Journal;
using CsCheck;

namespace Crossmember.Builds.Tests.Journal;

public class EcmaNumberTests
{
    /// <summary>RFC 8785 (June 2020), appendix B, number serialization samples: bits of the double, expected text.</summary>
    [Theory]
    [InlineData("0000000000000000", "0")]
    [InlineData("8000000000000000", "0")]
    [InlineData("0000000000000001", "5e-324")]
    [InlineData("8000000000000001", "-5e-324")]
    [InlineData("7fefffffffffffff", "1.7976931348623157e+308")]
    [InlineData("ffefffffffffffff", "-1.7976931348623157e+308")]
    [InlineData("4340000000000000", "9007199254740992")]
    [InlineData("c340000000000000", "-9007199254740992")]
    [InlineData("4430000000000000", "295147905179352830000")]
    [InlineData("44b52d02c7e14af5", "9.999999999999997e+22")]
    [InlineData("44b52d02c7e14af6", "1e+23")]
    [InlineData("44b52d02c7e14af7", "1.0000000000000001e+23")]
    [InlineData("444b1ae4d6e2ef4e", "999999999999999700000")]
    [InlineData("444b1ae4d6e2ef4f", "999999999999999900000")]
    [InlineData("444b1ae4d6e2ef50", "1e+21")]
    [InlineData("3eb0c6f7a0b5ed8c", "9.999999999999997e-7")]
    [InlineData("3eb0c6f7a0b5ed8d", "0.000001")]
    [InlineData("41b3de4355555553", "333333333.3333332")]
    [InlineData("41b3de4355555554", "333333333.33333325")]
    [InlineData("41b3de4355555555", "333333333.3333333")]
    [InlineData("41b3de4355555556", "333333333.3333334")]
    [InlineData("41b3de4355555557", "333333333.33333343")]
    [InlineData("becbf647612f3696", "-0.0000033333333333333333")]
    [InlineData("43143ff3c1cb0959", "1424953923781206.2")]
    public void Numbers_are_written_as_the_rfc_tabulates_them(string bits, string text) =>
        Assert.Equal(text, EcmaNumber.Text(BitConverter.UInt64BitsToDouble(ulong.Parse(bits, NumberStyles.HexNumber, CultureInfo.InvariantCulture))));

    /// <summary>RFC 8785, appendix B: NaN and Infinity are errors.</summary>
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public void What_is_no_number_is_refused(double number) => Assert.Throws<ArgumentOutOfRangeException>(() => EcmaNumber.Text(number));

    [Fact]
    public void Every_text_reads_back_as_the_same_double() =>
        Gen.ULong.Select(BitConverter.UInt64BitsToDouble).Where(double.IsFinite).Sample(x =>
            double.Parse(EcmaNumber.Text(x), CultureInfo.InvariantCulture) == x);
}
