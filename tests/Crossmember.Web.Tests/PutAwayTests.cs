using System.Text.Json.Nodes;
using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Decisions;
using Crossmember.Web.Features.Search;

namespace Crossmember.Web.Tests;

/// <summary>Out of the daily lists and back; nothing is lost.</summary>
public sealed class PutAwayTests : WrittenPages
{
    private IRenderedComponent<BuildsPage> Builds() => Render<BuildsPage>(p => p.AddCascadingValue(Ana));

    private string? Archived => Desk.Open("bracken")!.Build.Archived;

    [Fact]
    public void A_build_is_put_away_with_a_reason_and_taken_out_by_undo()
    {
        var page = Builds();
        page.Find("#why-bracken").Input("handed over");
        page.Find(".put-away form").Submit();
        Assert.Equal("handed over", Archived);
        Assert.Empty(page.FindAll(".build"));
        Assert.Contains("Put away: 1", page.Find(".away summary").TextContent, StringComparison.Ordinal);
        Assert.Contains("handed over", page.Find(".away li").TextContent, StringComparison.Ordinal);
        Assert.Contains("Ana put the build away", page.Find(".said").TextContent, StringComparison.Ordinal);
        page.Find(".said button").Click();
        Assert.Null(Archived);
        Assert.Single(page.FindAll(".build"));
    }

    [Fact]
    public void What_is_put_away_is_taken_out_again_from_the_list()
    {
        Ben("bracken", EntryKind.BuildArchived, "archive", new JsonObject { ["archived"] = true, ["why"] = "" });
        var page = Builds();
        page.Find(".away .put-away button").Click();
        Assert.Null(Archived);
        Assert.Empty(page.FindAll(".away"));
    }

    [Fact]
    public void Search_finds_what_is_put_away_and_says_so()
    {
        Ben("bracken", EntryKind.BuildArchived, "archive", new JsonObject { ["archived"] = true });
        var page = Render<SearchPage>();
        page.Find("#q").Input("tires");
        Assert.Contains("put away", page.Find(".hits h2").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_header_of_a_build_puts_it_away_too_and_its_page_tells_so()
    {
        var page = Render<DecisionsPage>(p => p.Add(d => d.Id, "bracken").AddCascadingValue(Ana));
        page.Find(".head .put-away form").Submit();
        Assert.Equal("", Archived);
        page.WaitForAssertion(() => Assert.Contains("This build is put away.", page.Find(".news").TextContent, StringComparison.Ordinal));
        page.FindAll("button").First(b => b.TextContent == "Undo mine").Click();
        Assert.Null(Archived);
    }

    [Fact]
    public void Totals_of_an_open_build_follow_a_rate_that_somebody_changes()
    {
        Ben("bracken", EntryKind.ChoiceMade, "scenarios/working/choices/tires", new JsonObject { ["option"] = "at33" });
        var page = Render<DecisionsPage>(p => p.Add(d => d.Id, "bracken").AddCascadingValue(Ana));
        Assert.Contains("270.00 USD", page.Find(".totals").TextContent, StringComparison.Ordinal); // 3 h at 90
        Ben(Fact.Shop, EntryKind.TradeRated, "trades/technician", new JsonObject { ["rate"] = "100.00 USD" });
        page.WaitForAssertion(() => Assert.Contains("300.00 USD", page.Find(".totals").TextContent, StringComparison.Ordinal));
        Assert.Contains("Just now: Ben rated technician at 100.00 USD an hour", page.Find(".news").TextContent, StringComparison.Ordinal);
    }
}
