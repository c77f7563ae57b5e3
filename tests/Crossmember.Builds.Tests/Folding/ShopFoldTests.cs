using System.Text.Json;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.Folding;

/// <summary>What the shop says of itself, entry by entry.</summary>
public sealed class ShopFoldTests
{
    private static (ShopFacts Shop, Faults Faults) Fold(params (string Kind, string Subject, string Payload)[] entries)
    {
        var (fold, faults) = (new ShopFold(), new Faults());
        foreach (var (kind, subject, payload) in entries) fold.Apply(kind, subject, JsonDocument.Parse(payload).RootElement, subject, 1, faults);
        return (fold.ToShop(), faults);
    }

    [Fact]
    public void A_person_is_named_changed_and_away()
    {
        var (shop, faults) = Fold(("person.named", "people/a", """{"name":" Ana ","role":"lead"}"""), ("person.named", "people/b", """{"name":"Ben"}"""), ("person.named", "people/a", """{"name":"Ana","away":true}"""));
        Assert.False(faults.Any);
        Assert.Equal(new Person("a", "Ana", null, true), shop.People["a"]);
        Assert.Equal(new Person("b", "Ben", null, false), shop.People["b"]);
    }

    [Theory]
    [InlineData("""{"name":" "}""", "without a name")]
    [InlineData("""{"role":"lead"}""", "")]
    public void A_person_without_a_name_is_a_fault(string payload, string wrong)
    {
        var (shop, faults) = Fold(("person.named", "people/a", payload));
        Assert.Contains(faults.List, f => f.Wrong.Contains(wrong, StringComparison.Ordinal));
        Assert.Empty(shop.People);
    }

    [Theory]
    [InlineData("\"0.05\"", "0.05")]
    [InlineData("\"1\"", "1")]
    [InlineData("null", null)]
    public void A_step_is_a_text_or_null(string step, string? read)
    {
        var (shop, faults) = Fold(("shop.opened", "shop", """{"currency":"USD"}"""), ("rounding.set", "rounding", $$"""{"step":{{step}}}"""));
        Assert.False(faults.Any);
        Assert.Equal(read, shop.Rounding?.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }

    [Theory]
    [InlineData("0.05")]
    [InlineData("\"0\"")]
    [InlineData("\"-1\"")]
    [InlineData("\"1001\"")]
    [InlineData("\"0.004\"")] // no coins of USD make it
    [InlineData("\"a little\"")]
    public void What_is_no_step_is_a_fault_and_changes_nothing(string step)
    {
        var (shop, faults) = Fold(("shop.opened", "shop", """{"currency":"USD"}"""), ("rounding.set", "rounding", """{"step":"0.10"}"""), ("rounding.set", "rounding", $$"""{"step":{{step}}}"""));
        Assert.Single(faults.List);
        Assert.Equal(0.10m, shop.Rounding);
    }

    [Theory]
    [InlineData("JPY", "lines are rounded to 0.10")] // the yen has no smaller coin than one (ISO 4217)
    [InlineData("EUR", null)]
    public void A_currency_whose_coins_cannot_make_the_step_is_refused(string currency, string? why)
    {
        var (shop, faults) = Fold(("rounding.set", "rounding", """{"step":"0.10"}"""), ("shop.opened", "shop", $$"""{"currency":"{{currency}}"}"""));
        Assert.Equal(why is null, !faults.Any);
        Assert.Equal(why is null ? currency : null, shop.Currency);
        if (why is not null) Assert.Contains(why, faults.List[0].Right, StringComparison.Ordinal);
    }

    [Fact]
    public void The_currency_stays_while_there_are_rates_in_another()
    {
        var (shop, faults) = Fold(("shop.opened", "shop", """{"currency":"USD"}"""), ("trade.rated", "trades/body", """{"rate":"95.00 USD"}"""), ("shop.opened", "shop", """{"currency":"CAD"}"""));
        Assert.Contains("rates in USD", Assert.Single(faults.List).Right, StringComparison.Ordinal);
        Assert.Equal("USD", shop.Currency);
    }

    [Fact]
    public void A_listed_part_keeps_what_was_said_and_what_an_option_brings_besides()
    {
        var (shop, faults) = Fold(("stock.listed", "stock/x", """{"title":"Plate","number":"P-1","vendor":"Yard","each":"2.85 USD","category":"materials","lead":"2 days","onHand":2.5,"until":"2026-12-31","option":{"class":"replace"}}"""));
        Assert.False(faults.Any);
        Assert.Equal(new StockPart("x", "Plate", "P-1", "Yard", new(2.85m, "USD"), "materials", "2 days", 2.5m, "2026-12-31", """{"class":"replace"}"""), shop.Stock["x"]);
    }

    [Theory]
    [InlineData("""{"title":"x","each":"-1.00 USD"}""")]
    [InlineData("""{"title":"x","category":"gifts"}""")]
    [InlineData("""{"title":"x","onHand":-1}""")]
    public void What_no_part_can_have_is_a_fault(string payload) => Assert.Single(Fold(("stock.listed", "stock/x", payload)).Faults.List);
}
