using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Crossmember.Web.Features.Settings;
using CsCheck;

namespace Crossmember.Web.Tests.Settings;

/// <summary>What people type for money, percentages, steps and parts.</summary>
public sealed class TypedTests
{
    [Theory]
    [InlineData("95", "95.00 USD")]
    [InlineData("95.5", "95.50 USD")]
    [InlineData("95.00 usd", "95.00 USD")]
    [InlineData("1,234.5", "1234.50 USD")]
    [InlineData("2.8525", "2.8525 USD")]
    public void Amounts_take_the_currency_of_the_books(string typed, string read) => Assert.Equal(read, Typed.Amount(typed, "USD", new()).ToString());

    [Theory]
    [InlineData("1,23")]
    [InlineData("12,34.5")]
    [InlineData("0,500")]
    [InlineData("")]
    [InlineData("95 dollars")]
    public void What_could_be_read_in_two_ways_is_asked_about(string typed)
    {
        var faults = new Faults();
        Assert.Null(Typed.Amount(typed, "USD", faults));
        Assert.Contains("such as 95.50", Assert.Single(faults.List).Right, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_books_the_currency_must_be_typed()
    {
        var faults = new Faults();
        Assert.Null(Typed.Amount("95", null, faults));
        Assert.Contains("with its currency", faults.List[0].Right, StringComparison.Ordinal);
        Assert.Equal("95.00 CAD", Typed.Amount("95 CAD", null, new()).ToString());
    }

    /// <summary>Every percentage with up to four decimals survives the canonical text of the journal digit by digit.</summary>
    [Fact]
    public void A_percentage_is_kept_exactly() => Gen.Int[0, 1_000_000].Sample(tenThousandths =>
    {
        var percent = tenThousandths / 10_000m;
        var payload = Typed.Percent(percent.ToString(System.Globalization.CultureInfo.InvariantCulture), new())!;
        var read = decimal.Parse(CanonicalJson.Of(payload["fraction"]), System.Globalization.NumberStyles.Float, System.Globalization.CultureInfo.InvariantCulture);
        Assert.Equal(percent / 100, read);
    });

    [Theory]
    [InlineData("101")]
    [InlineData("-1")]
    [InlineData("7,25")]
    [InlineData("7.12345")]
    public void What_is_no_percentage_is_a_fault(string typed)
    {
        var faults = new Faults();
        Assert.Null(Typed.Percent(typed, faults));
        Assert.Single(faults.List);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("1001")]
    [InlineData("1 EUR")]
    public void What_is_no_step_is_a_fault(string typed)
    {
        var faults = new Faults();
        Assert.Null(Typed.Step(typed, "USD", faults));
        Assert.Single(faults.List);
    }

    [Theory]
    [InlineData("2026-05-31", true)]
    [InlineData("2026-06-01", false)] // the last day itself
    [InlineData("2026-06-02", false)]
    [InlineData("next spring", false)]
    [InlineData(null, false)]
    public void A_price_is_over_the_day_after_its_last(string? until, bool over) => Assert.Equal(over, Builds.Slots.PriceHeld.RanOut(until, new DateOnly(2026, 6, 1)));

    [Fact]
    public void A_part_comes_back_as_it_was_listed_and_keeps_what_it_brings()
    {
        var part = new Builds.Slots.StockPart("x", "Plate", "P-1", "Yard", new(2.85m, "USD"), "materials", "2 days", 2.5m, "2026-12-31", """{"class":"replace"}""");
        var payload = StockDraft.Of(part).Read("USD", new())!;
        Assert.Equal("""{"title":"Plate","number":"P-1","vendor":"Yard","each":"2.85 USD","category":"materials","lead":"2 days","onHand":2.5,"until":"2026-12-31","option":{"class":"replace"}}""", payload.ToJsonString());
    }

    [Fact]
    public void The_table_of_parts_can_be_read_by_table_programs()
    {
        var text = System.Text.Encoding.UTF8.GetString(StockCsv.Write([new("x", "=1+1", "a,b", null, new(2.5m, "USD"), null, null, 3, null, null)]));
        Assert.Equal("\uFEFFid,title,number,vendor,each,currency,category,lead,on hand,price held until\r\nx,'=1+1,\"a,b\",,2.5,USD,,,3,\r\n", text);
    }
}
