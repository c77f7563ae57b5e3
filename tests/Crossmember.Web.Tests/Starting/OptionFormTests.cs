using System.Text.Json.Nodes;
using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Planning;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Decisions;
using Crossmember.Web.Features.Starting;

namespace Crossmember.Web.Tests.Starting;

/// <summary>Items and options said on the Decisions page.</summary>
public sealed class OptionFormTests : StartingShop
{
    public OptionFormTests() => Import(Bracken.Json);

    private Slot Tires => Desk.Open("bracken")!.Build.Find("tires")!;

    private static void Press(IRenderedComponent<DecisionsPage> page, string text) => page.FindAll("button").First(b => b.TextContent.Trim() == text).Click();

    private IRenderedComponent<DecisionsPage> Opened()
    {
        var page = Decisions("bracken", "tires");
        Press(page, "New option");
        return page;
    }

    [Fact]
    public void An_item_is_a_name_and_where_it_belongs()
    {
        var page = Decisions("bracken", "tires");
        page.Find("#new-item-title").Input("Roof rack");
        page.Find("#new-item-parent").Change("vehicle");
        page.Find(".new-item form").Submit();
        var added = Desk.Open("bracken")!.Build.Find("roof-rack")!;
        Assert.Equal(("Roof rack", "vehicle"), (added.Title, added.Parent));
        Assert.Contains("item=roof-rack", Address, StringComparison.Ordinal);
    }

    [Fact]
    public void An_item_without_a_name_is_answered_beside_the_field()
    {
        var page = Decisions("bracken", "tires");
        page.Find(".new-item form").Submit();
        Assert.Contains("The name is missing", page.Find("#new-item-error").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void An_option_with_a_price_and_one_figure_of_hours()
    {
        var page = Opened();
        page.Find("#of-title").Input("Used set");
        page.Find("#of-price").Input("85 each, 4");
        page.Find("#of-trade-0").Change("technician");
        page.Find("#of-figure-0").Input("12");
        Assert.Contains("12 h as a guess counts as 14.3 h", page.Find("#of-hours-hint-0").TextContent, StringComparison.Ordinal);
        page.Find("#of-sure-0").Change("DoneIt");
        page.Find(".option-form").Submit();
        var option = Tires.Find("used-set")!;
        Assert.Equal((4m, 85m), (option.Prices!.Value[0].Count, option.Prices.Value[0].Each!.Value.Amount));
        Assert.Equal(new Distribution.Lognormal(12, 1.15), option.Hours!.Value[0].Hours);
        Assert.Empty(page.FindAll(".option-form"));
        Assert.NotNull(page.Find("[data-option=used-set]"));
        Press(page, "Undo mine");
        Assert.Null(Tires.Find("used-set"));
    }

    [Theory]
    [InlineData("#of-price", "cheap", "#of-price-error", "no amount")]
    [InlineData("#of-figure-0", "long", "#of-hours-error-0", "no number of hours")]
    [InlineData("#of-mass", "heavy", "#of-mass-error", "31")]
    public void What_is_wrong_stands_beside_its_field_and_what_was_typed_stays(string field, string typed, string error, string says)
    {
        var page = Opened();
        page.Find("#of-title").Input("Used set");
        page.Find(field).Input(typed);
        page.Find(".option-form").Submit();
        if (field != "#of-mass") Assert.Contains(says, page.Find(error).TextContent, StringComparison.Ordinal);
        Assert.NotEqual("", page.Find(error).TextContent.Trim());
        Assert.Equal("true", page.Find(field).GetAttribute("aria-invalid"));
        Assert.Equal(typed, page.Find(field).GetAttribute("value"));
        Assert.Equal("Used set", page.Find("#of-title").GetAttribute("value"));
        Assert.Null(Tires.Find("used-set"));
    }

    [Fact]
    public void An_option_is_changed_and_keeps_what_the_form_does_not_show()
    {
        var was = Tires.Find("at33")!;
        var page = Decisions("bracken", "tires");
        page.Find("[data-option=at33] button[aria-label^=Change]").Click();
        Assert.Equal(was.Title, page.Find("#of-title").GetAttribute("value"));
        page.Find("#of-title").Input("33 in, said anew");
        page.Find(".option-form").Submit();
        var now = Tires.Find("at33")!;
        Assert.Equal("33 in, said anew", now.Title);
        Assert.Equal(was.Parameters.Select(p => (p.Key, p.Value.Typed)), now.Parameters.Select(p => (p.Key, p.Value.Typed)));
        Assert.Equal((was.Originality, was.Class, was.Prices?.Length, was.Masses?.Length), (now.Originality, now.Class, now.Prices?.Length, now.Masses?.Length));
    }

    [Fact]
    public void What_is_there_can_be_said_of_as_found()
    {
        var page = Decisions("bracken", "tires");
        page.Find("[data-option=as-found] button[aria-label^=Change]").Click();
        page.Find("#of-below").Input("5 kg");
        page.Find(".option-form").Submit();
        Assert.Equal(5, Tires.Find(Option.AsFound)!.MassBelow);
    }

    [Fact]
    public void What_is_often_thought_of_begins_a_form_and_stands_nowhere_before()
    {
        var page = Decisions("bracken", "tires");
        var options = Tires.Options.Length;
        Press(page, "Aftermarket");
        Assert.Equal("Aftermarket", page.Find("#of-title").GetAttribute("value"));
        Press(page, "Cancel");
        Assert.Equal(options, Tires.Options.Length);
    }

    [Fact]
    public void What_is_cancelled_is_forgotten_and_what_begins_otherwise_has_a_draft_of_its_own()
    {
        var page = Opened();
        var blank = page.Find("#of-price").GetAttribute("data-draft")!;
        page.Find("#of-price").Input("85 each, 4");
        Press(page, "Cancel");
        var forgotten = (string)JSInterop.Invocations["desk.forgetAll"].Single().Arguments[0]!;
        Assert.StartsWith(forgotten, blank, StringComparison.Ordinal);
        Assert.EndsWith(".", forgotten, StringComparison.Ordinal);
        Press(page, "Aftermarket");
        Assert.Equal("", page.Find("#of-price").GetAttribute("value") ?? "");
        Assert.False(page.Find("#of-price").GetAttribute("data-draft")!.StartsWith(forgotten, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("#of-lead", "3 weeks")]
    [InlineData("#of-mass", "31 kg")]
    [InlineData("#of-below", "5 kg")]
    public void A_draft_is_never_put_back_out_of_sight(string field, string typed)
    {
        var page = Opened();
        Assert.Null(page.Find(".more").GetAttribute("open"));
        page.Find(field).Input(typed);
        Assert.NotNull(page.Find(".more").GetAttribute("open"));
    }

    [Fact]
    public void A_part_of_the_price_list_is_copied_in()
    {
        var listed = Desk.Stating.Say(Fact.Shop, EntryKind.StockListed, "stock/t33", new JsonObject { ["title"] = "33 in tire", ["each"] = "310.00 USD", ["category"] = "parts" }, null, new Speaker("Ana", "here"));
        Assert.IsType<AppendOutcome.Appended>(Desk.Append([listed], Arrival.Online)[0]);
        var page = Decisions("bracken", "tires");
        page.Find(".from-stock select").Change("t33");
        Assert.Equal("310.00 USD", page.Find("#of-price").GetAttribute("value"));
        page.Find(".option-form").Submit();
        Assert.Equal("t33", Tires.Find("33-in-tire")!.Stock);
    }

    [Fact]
    public void A_value_is_picked_from_a_list_and_written_as_people_write_it()
    {
        var page = Opened();
        page.Find("#of-title").Input("35 in");
        Press(page, "Another value");
        page.Find("#of-key-0").Change("wheel.*.*.tire.size");
        page.Find("#of-typed-0").Input("35x12.50R15LT");
        page.Find("#of-basis-0").Change("vendor");
        page.Find(".option-form").Submit();
        var (key, stated) = Tires.Find("35-in")!.Parameters[0];
        Assert.Equal(("wheel.*.*.tire.size", "35x12.50R15LT", Basis.Vendor), (key, stated.Typed, stated.Basis));
    }

    [Fact]
    public void Values_that_share_a_word_with_the_item_come_first()
    {
        var keys = ValueKey.Of(BuildView.Of(Desk, "bracken")!.Sheet("working"), new Slot { Id = "axle.rear.tires", Title = "Rear tires" });
        var own = keys.TakeWhile(k => k.Page == keys[0].Page).Select(k => k.Key).ToList();
        Assert.Contains("wheel.*.*.tire.size", own);
        Assert.Contains("wheel.rear.left.tire.size", own);
        Assert.DoesNotContain("wheel.front.left.tire.size", own);
        Assert.DoesNotContain("engine.redline", own);
        Assert.Contains(keys, k => k.Key == "engine.redline");
    }
}
