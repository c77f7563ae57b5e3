using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Sums of two currencies mean nothing: what is not in the books' currency is named and left out, never added and never a crash.</summary>
public sealed class CurrencyTests
{
    private const string Slots = """
        ,{"id":"bed","parent":"vehicle","title":"Bed","weight":1,"options":[{"id":"new","class":"replace","originality":0.5,"masses":[],
          "prices":[{"id":"a","what":"boards","count":2,"each":"10.00 USD","category":"parts"}],"hours":[{"trade":"fabricator","distribution":{"kind":"fixed","value":2}}]}]}
        """;

    private static readonly Opened s_bed = Opened.Vehicle(Slots, """{"id":"working","base":null,"choices":{"bed":"new"}}""", "");

    private static Builds.Evaluation.Sheet In(string? currency, string? rate = null) => s_bed.Plan.Evaluate(s_bed.Build,
        new ShopFacts { Currency = currency, Rates = new ShopFacts().Rates.SetItems(rate is null ? [] : [KeyValuePair.Create("fabricator", (Planning.Money?)new Planning.Money(95, rate))]) }, s_bed.Build.Scenarios["working"]);

    [Fact]
    public void Without_books_the_prices_say_the_currency()
    {
        Assert.Equal("20.00 USD", In(null).Totals.CostTotal.ToString());
        Assert.Empty(In(null).Totals.Foreign);
    }

    [Theory]
    [InlineData("EUR", null)]
    [InlineData(null, "EUR")] // a first rate sets the books
    [InlineData("EUR", "EUR")]
    public void A_price_in_another_currency_than_the_books_is_left_out_and_named(string? currency, string? rate)
    {
        var sheet = In(currency, rate);
        Assert.Equal("0.00 EUR", sheet.Totals.CostTotal.ToString());
        var finding = Assert.Single(sheet.ModelFindings, f => f.Id == "model/currency[bed]");
        Assert.Equal(Engineering.Calculations.Verdict.Unknown, finding.Finding.Verdict);
        Assert.Equal(rate is null ? "0.00 EUR" : "190.00 EUR", Builds.Workshop.MoneyMove.Sum(sheet.Totals).ToString());
    }
}
