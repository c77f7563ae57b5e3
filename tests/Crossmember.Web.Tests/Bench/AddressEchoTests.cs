using Bunit;
using Crossmember.Web.Features.Bench;

namespace Crossmember.Web.Tests.Bench;

/// <summary>An address comes back from the browser later than the next field is typed: it must not put the form back.</summary>
public sealed class AddressEchoTests : BenchShop
{
    [Fact]
    public void What_was_written_comes_back_once_and_takes_with_it_what_was_overtaken()
    {
        var echo = new AddressEcho();
        foreach (var address in (string[])["one", "two", "three"]) echo.Write(address);
        Assert.True(echo.Is("two"));
        Assert.False(echo.Is("one"));
        Assert.False(echo.Is("somebody else's"));
        Assert.True(echo.Is("three"));
        Assert.False(echo.Is("three"));
    }

    [Fact]
    public void A_page_drawn_again_keeps_what_is_typed_and_another_address_is_followed()
    {
        using var card = Card("driveline.engine-speed");
        Write(card, "#in-roadSpeed", "65");
        card.Find("#in-tireDiameter").Input("33");
        card.Render();
        Assert.Equal(("65 mph", "33"), (card.Find("#in-roadSpeed").GetAttribute("value"), card.Find("#in-tireDiameter").GetAttribute("value")));
        Nav.NavigateTo(BenchAddress.Of("driveline.engine-speed", """{"roadSpeed":"40 mph"}"""));
        Assert.Equal(("40 mph", ""), (card.Find("#in-roadSpeed").GetAttribute("value"), card.Find("#in-tireDiameter").GetAttribute("value") ?? ""));
    }

    [Fact]
    public void The_same_holds_for_what_is_tried_on_a_build()
    {
        using var card = BuildCard("driveline.engine-speed[gear=4,range=high]");
        Write(card, "#in-roadSpeed", "70");
        card.Find("#in-axleRatio").Input("5");
        card.Render();
        Assert.Equal(("70 mph", "5"), (card.Find("#in-roadSpeed").GetAttribute("value"), card.Find("#in-axleRatio").GetAttribute("value")));
        Nav.NavigateTo(BenchAddress.Of("bracken", "working", "driveline.engine-speed[gear=4,range=high]", """{"axleRatio":"3"}"""));
        Assert.Equal(("", "3"), (card.Find("#in-roadSpeed").GetAttribute("value") ?? "", card.Find("#in-axleRatio").GetAttribute("value")));
    }
}
