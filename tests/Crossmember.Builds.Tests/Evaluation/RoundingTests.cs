using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Workshop;
using Crossmember.Planning;
using CsCheck;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Totals of a build by the shop's rounding; the numbers are worked by hand, half away from zero, line by line (common practice, no source).</summary>
public sealed class RoundingTests
{
    private const string Slots = """
        ,{"id":"bed","parent":"vehicle","title":"Bed","weight":1,"options":[{"id":"new","class":"replace","originality":0.5,"masses":[],
          "prices":[{"id":"a","what":"boards","count":3,"each":"10.333 USD","category":"parts"},{"id":"b","what":"bolts","count":7,"each":"1.2345 USD","category":"parts"}],
          "hours":[{"trade":"fabricator","distribution":{"kind":"fixed","value":2.5}}]}]}
        """;

    private static readonly Opened s_bed = Opened.Vehicle(Slots, """{"id":"working","base":null,"choices":{"bed":"new"}}""",
        "\"shop\":{\"currency\":\"USD\",\"rates\":{\"fabricator\":\"95.33 USD\"},\"tax\":{\"parts\":0.0725}},");

    private static Totals With(decimal? step) => s_bed.Plan.Evaluate(s_bed.Build, s_bed.Shop with { Rounding = step }, s_bed.Build.Scenarios["working"]).Totals;

    // Lines 30.999 and 8.6415, tax 7.25 % of their rounded sum, labour 2.5 x 95.33 = 238.325.
    [Theory]
    [InlineData(null, "42.51 USD", "238.33 USD")]   // 31.00 + 8.64 = 39.64, tax 2.8739 -> 2.87
    [InlineData("0.01", "42.51 USD", "238.33 USD")] // the smallest coin itself
    [InlineData("0.05", "42.50 USD", "238.35 USD")] // 31.00 + 8.65 = 39.65, tax 2.874625 -> 2.85
    [InlineData("0.10", "42.50 USD", "238.30 USD")] // 31.00 + 8.60 = 39.60, tax 2.871 -> 2.90
    [InlineData("0.25", "42.75 USD", "238.25 USD")] // 31.00 + 8.75 = 39.75, tax 2.881875 -> 3.00
    [InlineData("1", "43.00 USD", "238.00 USD")]    // 31 + 9 = 40, tax 2.90 -> 3
    [InlineData("5", "45.00 USD", "240.00 USD")]    // 30 + 10 = 40, tax 2.90 -> 5
    public void Totals_are_those_worked_by_hand(string? step, string parts, string labour)
    {
        var totals = With(step is null ? null : decimal.Parse(step, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Equal(parts, totals.Cost["parts"].ToString());
        Assert.Equal(labour, totals.Labour["fabricator"].ToString());
    }

    [Fact]
    public void Without_a_step_lines_are_rounded_as_before() => Gen.Decimal[-100_000, 100_000].Sample(amount =>
        Assert.Equal(new Money(amount, "USD").Rounded(), new Money(amount, "USD").Rounded(null)));

    private static readonly Gen<decimal> s_steps = Gen.Int[0, 7].Select(i => new[] { 0.01m, 0.05m, 0.1m, 0.25m, 0.5m, 1m, 5m, 10m }[i]);

    [Fact]
    public void A_rounded_line_is_a_multiple_of_the_step_and_no_more_than_half_a_step_away() => Gen.Select(Gen.Decimal[-100_000, 100_000], s_steps).Sample((amount, step) =>
    {
        var rounded = new Money(amount, "USD").Rounded(step).Amount;
        Assert.Equal(0, rounded % step);
        Assert.True(Math.Abs(rounded - amount) <= step / 2);
        Assert.Equal(rounded, new Money(rounded, "USD").Rounded(step).Amount); // rounding again changes nothing
        Assert.Equal(-rounded, new Money(-amount, "USD").Rounded(step).Amount); // away from zero on both sides
    });

    [Fact]
    public void The_order_of_lines_changes_nothing() => Gen.Select(Gen.Decimal[0, 1000].Array[1, 20], s_steps).Sample((amounts, step) =>
    {
        Money Sum(IEnumerable<decimal> list) => list.Aggregate(Money.Zero("USD"), (sum, a) => sum + new Money(Math.Round(a, 4), "USD").Rounded(step));
        Assert.Equal(Sum(amounts), Sum(amounts.Reverse()));
        Assert.Equal(0, Sum(amounts).Amount % step);
    });

    /// <summary>Every sum of a build is one of steps, whatever rates, tax and step the shop has.</summary>
    [Fact]
    public void All_totals_are_multiples_of_the_step() => Gen.Select(Gen.Int[0, 100_000], Gen.Int[0, 3000], s_steps).Sample((rate, tax, step) =>
    {
        var shop = s_bed.Shop with { Rounding = step, Rates = s_bed.Shop.Rates.SetItem("fabricator", new Money(rate / 100m, "USD")), Tax = s_bed.Shop.Tax.SetItem("parts", tax / 10_000m) };
        var totals = s_bed.Plan.Evaluate(s_bed.Build, shop, s_bed.Build.Scenarios["working"]).Totals;
        Assert.All(totals.Cost.Values.Append(totals.CostTotal).Concat(totals.Labour.Values), m => Assert.Equal(0, m.Amount % step));
        Assert.Equal(totals.CostTotal.Amount + totals.Labour.Values.Sum(l => l.Amount), MoneyMove.Sum(totals).Amount);
    }, iter: 300);
}
