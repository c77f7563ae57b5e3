using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Decisions;
using Crossmember.Web.Features.Search;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests.Decisions;

/// <summary>Whole pages over a store of their own, without a browser.</summary>
public sealed class PageTests() : ShopPages(Bracken.Json)
{
    private IRenderedComponent<DecisionsPage> Page(string? item = null)
    {
        Nav.NavigateTo($"builds/bracken/decisions{(item is null ? "" : $"?item={item}")}");
        return Render<DecisionsPage>(p => p.Add(d => d.Id, "bracken").AddCascadingValue(Ana));
    }

    private void Somebody(string item, string option)
    {
        var view = BuildView.Of(Desk, "bracken")!;
        Assert.IsType<AppendOutcome.Appended>(Desk.Append([Desk.Deciding.Choose("bracken", "working", item, option, view.Seen($"scenarios/working/choices/{item}"), "Ben", "there")], Arrival.Online)[0]);
    }

    [Fact]
    public void The_header_counts_the_checks_of_the_sheet()
    {
        Somebody("final-drives", "short");
        var tally = Page().FindAll(".tally li").Select(l => string.Join(' ', l.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries))).ToList();
        var findings = BuildView.Of(Desk, "bracken")!.Sheet("working").Findings().GroupBy(f => f.Finding.Verdict).ToDictionary(g => Words.Of(g.Key), g => g.Count());
        Assert.Equal(new[] { "no", "don't know", "watch", "good" }.Select(w => $"{findings.GetValueOrDefault(w)} {w}"), tally);
    }

    [Fact]
    public void What_somebody_else_decides_elsewhere_shows_at_once_and_is_told()
    {
        var page = Page("tires");
        Somebody("final-drives", "short");
        page.WaitForAssertion(() => Assert.Contains("Just now: Ben chose “4.88 gears” for Final drives", page.Find(".news").TextContent, StringComparison.Ordinal));
        Assert.Equal("no", page.FindAll(".items a").Single(a => a.GetAttribute("title") == "final-drives").QuerySelector(".verdict")!.TextContent.Trim());
    }

    [Fact]
    public void What_somebody_else_decides_on_the_item_in_hand_waits_until_it_is_asked_for()
    {
        var page = Page("final-drives");
        Somebody("final-drives", "short");
        page.WaitForAssertion(() => Assert.Contains("Somebody has decided what you are looking at", page.Find(".news").TextContent, StringComparison.Ordinal));
        Assert.Contains("chosen", page.Find("[data-option=as-found]").ClassName!, StringComparison.Ordinal);
        page.Find(".news button").Click();
        Assert.Contains("chosen", page.Find("[data-option=short]").ClassName!, StringComparison.Ordinal);
    }

    [Fact]
    public void A_look_is_told_in_one_breath_with_what_would_restore_and_against_any_side()
    {
        var page = Page("final-drives");
        page.Find("[data-option=short] .look").Click();
        Assert.Contains("If 4.88 gears is chosen for Final drives", page.Find(".gist").TextContent, StringComparison.Ordinal);
        Assert.Contains("worse", page.Find(".gist").TextContent, StringComparison.Ordinal);
        var rows = int.Parse(page.Find(".ripple").GetAttribute("data-rows")!, null);
        page.Find("#against").Change("as-found");
        Assert.Equal(rows, int.Parse(page.Find(".ripple").GetAttribute("data-rows")!, null)); // working chooses nothing yet
    }

    [Fact]
    public void At_most_four_options_are_ticked_and_two_make_a_table()
    {
        var page = Page("final-drives");
        Assert.Equal(4, page.Find("table.sides thead tr").Children.Length); // as found and two sets of gears
        page.Find("[data-option=none] .tick input").Change(true);
        Assert.Equal(5, page.Find("table.sides thead tr").Children.Length);
        page.Find("[data-option=none] .tick input").Change(false);
        page.Find("[data-option=tall] .tick input").Change(false);
        page.Find("[data-option=short] .tick input").Change(false);
        Assert.Empty(page.FindAll("table.sides"));
    }

    [Fact]
    public void The_phase_is_chosen_in_the_header_and_stands_in_the_history()
    {
        var page = Page();
        page.Find("#phase").Change("deciding");
        Assert.Contains("Ana moved the vehicle to deciding", page.Find(".history").TextContent, StringComparison.Ordinal);
        Assert.Equal("deciding", Desk.Open("bracken")!.Build.Phase);
    }

    [Fact]
    public void The_history_of_an_item_is_its_own_until_the_whole_is_asked_for()
    {
        Somebody("tires", "at33");
        Somebody("final-drives", "tall");
        var page = Page("tires");
        Assert.Contains("33 in all-terrain", Assert.Single(page.FindAll(".history li")).TextContent, StringComparison.Ordinal);
        page.Find("[aria-labelledby=history-title] .tick input").Change(true);
        page.WaitForAssertion(() => Assert.Equal(2, page.FindAll(".history li").Count));
    }

    [Fact]
    public void The_list_of_builds_names_phase_worst_finding_and_the_next_step_in_the_readers_measures()
    {
        Desk.Append([Desk.Deciding.Enter("bracken", "deciding", null, "ana", "test")], Arrival.Online);
        Somebody("final-drives", "short");
        var card = Render<BuildsPage>(p => p.AddCascadingValue(Ana)).Find(".build");
        Assert.Contains("deciding", card.QuerySelector(".phase")!.TextContent, StringComparison.Ordinal);
        Assert.Equal("no", card.QuerySelector(".sentence .verdict")!.TextContent.Trim());
        Assert.Contains("Look at the options for", card.QuerySelector(".next")!.TextContent, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("all-terrain", "33 in all-terrain", "builds/bracken/decisions?item=tires")]
    [InlineData("final dri", "Final drives", "builds/bracken/decisions?item=final-drives")]
    public void The_wholeShop_is_searched_by_words_and_their_beginnings(string typed, string title, string address)
    {
        var page = Render<SearchPage>();
        page.Find("#q").Input(typed);
        var hit = page.FindAll(".hits li a").First(a => a.TextContent == title);
        Assert.Equal(address, hit.GetAttribute("href"));
    }

    [Fact]
    public void A_search_for_nothing_and_one_without_answer_say_what_to_do()
    {
        var page = Render<SearchPage>();
        Assert.Contains("Begin to write", page.Markup, StringComparison.Ordinal);
        page.Find("#q").Input("zeppelin");
        Assert.Contains("Nothing here is called “zeppelin”", page.Markup, StringComparison.Ordinal);
        page.Find("#q").Input("brack");
        Assert.Contains("Bracken flatbed", page.Find(".hits h2").TextContent, StringComparison.Ordinal);
    }
}
