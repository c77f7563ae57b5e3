using CsCheck;

namespace Crossmember.Planning.Tests;

/// <summary>Money: ISO 4217:2015 for currency codes and minor units (from memory); half away from zero, as shops round.</summary>
public sealed class MoneyTests
{
    [Theory]
    [InlineData("USD", 2)]
    [InlineData("EUR", 2)]
    [InlineData("JPY", 0)]
    [InlineData("KWD", 3)]
    [InlineData("ISK", 0)]
    [InlineData("TND", 3)]
    public void Smallest_coins_are_those_of_the_standard(string currency, int decimals) => Assert.Equal(decimals, Money.Decimals(currency));

    [Theory]
    [InlineData("2.345 USD", "2.35 USD")]
    [InlineData("-2.345 USD", "-2.35 USD")]
    [InlineData("2.3449 USD", "2.34 USD")]
    [InlineData("0.5 JPY", "1 JPY")]
    [InlineData("1.0005 KWD", "1.001 KWD")]
    public void Rounding_goes_half_away_from_zero_to_the_smallest_coin(string amount, string rounded) => Assert.Equal(rounded, Read(amount).Rounded().ToString());

    [Theory]
    [InlineData("310.00 USD", 310)]
    [InlineData("  310   USD ", 310)]
    [InlineData("4.1150 USD", 4.115)]
    [InlineData("-12.5 CAD", -12.5)]
    public void Amounts_are_read_as_typed(string text, double amount) => Assert.Equal((decimal)amount, Read(text).Amount);

    [Theory]
    [InlineData("310.00", "no amount")]
    [InlineData("310,00 USD", "no number")]
    [InlineData("310.00 usd", "no currency")]
    [InlineData("310.00 DOLLAR", "no currency")]
    [InlineData("4.11501 USD", "four decimals")]
    [InlineData("1e3 USD", "no number")]
    [InlineData("2000000000000 USD", "beyond")]
    [InlineData("", "no amount")]
    public void What_is_no_amount_says_why(string text, string why)
    {
        Assert.False(Money.TryParse(text, out _, out var wrong));
        Assert.Contains(why, wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Text_comes_back_as_the_same_amount() =>
        Gen.Select(Gen.Decimal[-1_000_000, 1_000_000], Gen.OneOf(Gen.Const("USD"), Gen.Const("JPY"), Gen.Const("KWD"))).Sample(
            (amount, currency) =>
            {
                var money = new Money(Math.Round(amount, 4), currency);
                Assert.Equal(money, Read(money.ToString()));
            });

    [Fact]
    public void Sums_do_not_depend_on_order_and_currencies_do_not_mix()
    {
        Gen.Decimal[-1000, 1000].Array[2, 30].Sample(amounts =>
        {
            Money Sum(IEnumerable<decimal> list) => list.Aggregate(Money.Zero("USD"), (a, b) => a + new Money(Math.Round(b, 4), "USD"));
            Assert.Equal(Sum(amounts), Sum(amounts.Reverse()));
        });
        Assert.Throws<InvalidOperationException>(() => new Money(1, "USD") + new Money(1, "CAD"));
        Assert.Equal(new Money(7.5m, "USD"), new Money(2.5m, "USD") * 3);
    }

    private static Money Read(string text)
    {
        Assert.True(Money.TryParse(text, out var money, out var wrong), wrong);
        return money;
    }
}
