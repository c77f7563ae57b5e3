using Bunit;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Templates;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Starting;
using Crossmember.Web.Features.Today;

namespace Crossmember.Web.Tests.Starting;

/// <summary>A new build wants a name and nothing else.</summary>
public sealed class NewBuildTests : StartingShop
{
    private IRenderedComponent<NewBuildPage> Make(string title, Action<IRenderedComponent<NewBuildPage>>? before = null)
    {
        var page = Page<NewBuildPage>();
        page.Find("#build-title").Input(title);
        before?.Invoke(page);
        page.Find("form").Submit();
        return page;
    }

    [Fact]
    public void A_name_is_enough()
    {
        Make("Long pickup, green");
        Assert.EndsWith("/builds/long-pickup-green/decisions", Address, StringComparison.Ordinal);
        var build = Desk.Open("long-pickup-green")!.Build;
        Assert.Equal("Long pickup, green", build.Title);
        Assert.Equal(TemplateReader.Shipped[0].Items.Count, build.Slots.Length);
        Assert.Equal(["1", "2", "3", "4"], build.Sets.Of("gear"));
    }

    [Fact]
    public void Without_a_name_it_says_what_to_write_and_nothing_is_made()
    {
        var page = Make("  ");
        Assert.Contains("The name is missing", page.Find("#build-title-error").TextContent, StringComparison.Ordinal);
        Assert.Empty(Desk.Builds());
    }

    [Fact]
    public void The_id_is_shown_and_a_taken_one_gets_a_number()
    {
        Make("Heron");
        var page = Page<NewBuildPage>();
        page.Find("#build-title").Input("Heron");
        Assert.Contains("heron-2", page.Find("#build-id-hint").TextContent, StringComparison.Ordinal);
        page.Find("form").Submit();
        Assert.Equal(["heron", "heron-2"], Desk.Builds().Select(b => b.Id).Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("my own id", "no id")]
    [InlineData("shop", "no id")]
    [InlineData("heron", "heron-2 is free")]
    public void An_id_of_ones_own_is_looked_at(string id, string says)
    {
        Make("Heron");
        var page = Make("Another", p =>
        {
            p.Find("#build-id-hint button").Click();
            p.Find("#build-id").Input(id);
        });
        Assert.Contains(says, page.Find("#build-title-error").TextContent, StringComparison.Ordinal);
        Assert.Single(Desk.Builds());
    }

    [Fact]
    public void Gears_and_ranges_are_simple_choices()
    {
        Make("Five", p =>
        {
            p.FindAll("input[type=radio]")[^1].Change(true);
            p.Find("#build-gears").Change("5");
            p.Find("#build-ranges").Change("1");
        });
        var build = Desk.Open("five")!.Build;
        Assert.Equal([Slot.Root], build.Slots.Select(s => s.Id));
        Assert.Equal((5, 1), (build.Sets.Of("gear").Length, build.Sets.Of("range").Length));
    }

    [Fact]
    public void A_build_that_is_here_lends_its_items_and_options()
    {
        Import(Bracken.Json);
        Make("Second", p => p.FindAll("input[type=radio]")[^2].Change(true));
        var build = Desk.Open("second")!.Build;
        Assert.Equal(Bracken.Build.Slots.Select(s => s.Id), build.Slots.Select(s => s.Id));
        Assert.Contains(build.Find("tires")!.Options, o => o.Id == "at33");
        Assert.Empty(build.Find("tires")!.Find(Option.AsFound)!.Parameters);
        Assert.Empty(build.Weighings);
    }

    [Fact]
    public void Taking_a_new_build_back_puts_it_away_and_once_more_takes_it_out()
    {
        Make("Heron");
        var page = Decisions("heron");
        Assert.Contains("What is next", page.Markup, StringComparison.Ordinal);
        var undo = page.FindAll("button").Single(b => b.TextContent == "Undo mine");
        Assert.Contains("put away", undo.GetAttribute("title"), StringComparison.Ordinal);
        undo.Click();
        Assert.NotNull(Desk.Open("heron")!.Build.Archived);
        var list = Page<BuildsPage>();
        Assert.Empty(list.FindAll(".build"));
        Assert.Contains("Heron", list.Find(".away").TextContent, StringComparison.Ordinal);
        page.FindAll("button").Single(b => b.TextContent == "Undo mine").Click();
        Assert.Null(Desk.Open("heron")!.Build.Archived);
    }

    [Fact]
    public void An_empty_shop_shows_its_first_steps_on_both_lists()
    {
        Assert.Equal(3, Page<TodayPage>().FindAll(".first-steps li").Count);
        var page = Page<BuildsPage>();
        Assert.Equal("builds/new", page.Find(".first-steps a").GetAttribute("href"));
        Assert.Contains("invented vehicles", page.Find(".first-steps").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_demo_comes_in_by_one_button()
    {
        var page = Page<BuildsPage>();
        page.Find(".first-steps button").Click();
        page.WaitForAssertion(() => Assert.Equal(DemoShop.Files.Count, Desk.Builds().Count), TimeSpan.FromSeconds(60));
        page.WaitForAssertion(() => Assert.Empty(page.FindAll(".first-steps")), TimeSpan.FromSeconds(60));
        Assert.Equal("builds/new", page.Find(".head-line a").GetAttribute("href"));
    }
}
