using System.Text.Json.Nodes;
using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Decisions;
using Crossmember.Web.Features.Settings;

namespace Crossmember.Web.Tests.Starting;

/// <summary>A shop in which nobody has said a currency: none is assumed, and the first price tells.</summary>
public sealed class FirstPriceTests : StartingShop
{
    public FirstPriceTests() => Import("""{"format":"crossmember.build/1","id":"b","title":"B","slots":[{"id":"vehicle","parent":null,"title":"Van"},{"id":"tires","parent":"vehicle","title":"Tires"}],"scenarios":[{"id":"working"}]}""");

    private string? Books => BooksCurrency.Of(Desk, Desk.Shop.Shelf.Shop(), Desk.Open("b")!.Build);

    private IRenderedComponent<DecisionsPage> Sent(string title, string price)
    {
        var page = Decisions("b", "tires");
        page.FindAll("button").First(b => b.TextContent.Trim() == "New option").Click();
        page.Find("#of-title").Input(title);
        page.Find("#of-price").Input(price);
        page.Find(".option-form").Submit();
        return page;
    }

    [Fact]
    public void A_bare_first_price_is_asked_for_its_currency()
    {
        Assert.Null(Books);
        var page = Sent("Used set", "310");
        Assert.Contains("310 EUR", page.Find("#of-price-error").TextContent, StringComparison.Ordinal);
        Assert.Contains("Settings", page.Find("#of-price-error").TextContent, StringComparison.Ordinal);
        Assert.Null(Desk.Open("b")!.Build.Find("tires")!.Find("used-set"));
    }

    [Fact]
    public void The_first_price_tells_the_currency_of_the_next_and_Settings_names_it()
    {
        Sent("Used set", "310 EUR");
        Sent("New set", "400");
        Assert.Equal("400.00 EUR", Desk.Open("b")!.Build.Find("tires")!.Find("new-set")!.Prices!.Value[0].Each.ToString());
        Assert.Equal("EUR", Books);
        var said = Page<SettingsPage>().Find("#currency").TextContent;
        Assert.Contains("prices in 1 build in EUR", said, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_shop_has_said_counts_before_its_prices()
    {
        Desk.Append([Desk.Stating.Say(Fact.Shop, EntryKind.ShopOpened, "shop", new JsonObject { ["currency"] = "CAD" }, null, new("Ben", "there"))], Arrival.Online);
        Assert.Equal("CAD", Books);
    }
}
