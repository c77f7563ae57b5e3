using System.Globalization;
using Crossmember.Builds.Pasting;
using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Builds.Tests.Pasting;

/// <summary>Numbers and amounts as lists hold them.</summary>
public sealed class WrittenAmountsTests
{
    [Theory]
    [InlineData("310", "310")]
    [InlineData("1,310.50", "1310.50")]
    [InlineData("1 310.50", "1310.50")]
    [InlineData("1'310.50", "1310.50")]
    [InlineData("1,234,567", "1234567")]
    [InlineData("-2.5", "-2.5")]
    [InlineData(".5", "0.5")]
    [InlineData("12,5", null)]
    [InlineData("0,500", null)]
    [InlineData("0 500", null)]
    [InlineData("1,23,456", null)]
    [InlineData("12.", null)]
    [InlineData("twelve", null)]
    [InlineData("", null)]
    public void A_number_with_a_point(string text, string? number) => Assert.Equal(number, WrittenNumber.Read(text, DecimalMark.Point)?.ToString(CultureInfo.InvariantCulture));

    [Theory]
    [InlineData("12,50", "12.50")]
    [InlineData("1.310,50", "1310.50")]
    [InlineData("1.310", "1310")]
    [InlineData("12.5", null)]
    [InlineData("0,500", "0.500")]
    [InlineData("0.500", null)]
    public void A_number_with_a_comma(string text, string? number) => Assert.Equal(number, WrittenNumber.Read(text, DecimalMark.Comma)?.ToString(CultureInfo.InvariantCulture));

    [Theory]
    [InlineData(DecimalMark.Comma, "12,50", "1.310,00", "8")]
    [InlineData(DecimalMark.Comma, "€ 12,5", "1.310")]
    [InlineData(DecimalMark.Comma, "0,500", "1,310")]
    [InlineData(DecimalMark.Point, "0.500", "1.310")]
    [InlineData(DecimalMark.Point, "$1,310.50", "12")]
    [InlineData(DecimalMark.Point, "1,310", "2,500")]
    [InlineData(DecimalMark.Point)]
    public void A_column_tells_its_mark(DecimalMark mark, params string[] cells) => Assert.Equal(mark, WrittenNumber.Guess(cells));

    [Fact]
    public void Every_number_is_read_back_as_either_people_write_it() => Gen.Int[0, 99_999_999].Sample(cents =>
    {
        var number = cents / 100m;
        var point = number.ToString("#,##0.00", CultureInfo.InvariantCulture);
        var comma = string.Concat(point.Select(c => c == ',' ? '.' : c == '.' ? ',' : c));
        Assert.Equal(number, WrittenNumber.Read(point, DecimalMark.Point));
        Assert.Equal(number, WrittenNumber.Read(comma, DecimalMark.Comma));
        Assert.Equal(DecimalMark.Comma, WrittenNumber.Guess([comma]));
    });

    [Theory]
    [InlineData("310", "310.00 USD")]
    [InlineData("$310", "310.00 USD")]
    [InlineData("US$ 1,310.5", "1310.50 USD")]
    [InlineData("310.00 USD", "310.00 USD")]
    [InlineData("USD 310", "310.00 USD")]
    [InlineData("usd 0.125", "0.125 USD")]
    public void An_amount_is_read_with_its_currency_or_in_the_shops(string text, string money) => Assert.Equal(money, WrittenMoney.Read(text, "USD", DecimalMark.Point, "p", new())?.ToString());

    [Fact]
    public void A_plain_dollar_sign_is_the_shops_own_dollar() => Assert.Equal("310.00 CAD", WrittenMoney.Read("$310", "CAD", DecimalMark.Point, "p", new())?.ToString());

    [Theory]
    [InlineData("310", "says no currency", "such as 310 EUR")]
    [InlineData("$310", "several dollars", "such as 310 USD")]
    [InlineData("310 pcs", "'pcs' is no currency", "USD")]
    public void Where_nobody_has_said_a_currency_none_is_assumed(string text, string wrong, string right)
    {
        var faults = new Faults();
        Assert.Null(WrittenMoney.Read(text, null, DecimalMark.Point, "price", faults));
        Assert.Contains(wrong, Assert.Single(faults.List).Wrong, StringComparison.Ordinal);
        Assert.Contains(right, faults.List[0].Right, StringComparison.Ordinal);
        Assert.Equal("310.00 EUR", WrittenMoney.Read("310 EUR", null, DecimalMark.Point, "price", new()).ToString());
    }

    [Theory]
    [InlineData("EUR 310", "a price in EUR", "USD")]
    [InlineData("€310", "a price in EUR", "convert")]
    [InlineData("on request", "is no amount", "310.00")]
    [InlineData("$310 USD", "is no amount", "310.00")]
    [InlineData("-5", "a price of -5", "zero or more")]
    [InlineData("0.00001", "four decimals", "at most")]
    public void What_is_no_price_says_what_would_be(string text, string wrong, string right)
    {
        var faults = new Faults();
        Assert.Null(WrittenMoney.Read(text, "USD", DecimalMark.Point, "price", faults));
        var fault = Assert.Single(faults.List);
        Assert.Equal("price", fault.Path);
        Assert.Contains(wrong, fault.Wrong, StringComparison.Ordinal);
        Assert.Contains(right, fault.Right, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("310 each, 5", "310", 5)]
    [InlineData("310 ea", "310", 1)]
    [InlineData("5 x 310", "310", 5)]
    [InlineData("5 @ 310.00 USD", "310.00 USD", 5)]
    [InlineData("310 x 5", "310", 5)]
    [InlineData("31 kg each, 4", "31 kg", 4)]
    [InlineData("12 lb 8 oz", "12 lb 8 oz", 1)]
    [InlineData("1,310.50", "1,310.50", 1)]
    public void How_much_and_how_many_stand_in_one_field(string text, string each, double count) => Assert.Equal((each, (decimal)count), EachAndCount.Split(text));

    [Fact]
    public void What_is_said_of_each_is_split_again() => Gen.Select(Gen.Int[1, 9999], Gen.Int[1, 400]).Sample((each, count) =>
        Assert.Equal(($"{each} USD", (decimal)count), EachAndCount.Split(EachAndCount.Say($"{each} USD", count))));
}
