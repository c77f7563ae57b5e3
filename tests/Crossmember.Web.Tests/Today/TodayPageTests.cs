using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Calculations;
using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Today;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests.Today;

/// <summary>The morning page over a store of its own.</summary>
public sealed class TodayPageTests() : ShopPages(null)
{
    private static readonly Speaker s_ana = new("Ana", "here");

    private GlanceBoard Board => Services.GetRequiredService<GlanceBoard>();

    private IRenderedComponent<TodayPage> Page() => Render<TodayPage>(p => p.AddCascadingValue(Ana));

    private void Say(params Fact[] facts) => Assert.All(Desk.Append(facts, Arrival.Online), o => Assert.IsType<AppendOutcome.Appended>(o));

    private void Choose(string item, string option) =>
        Say(Desk.Deciding.Choose("bracken", "working", item, option, BuildView.Of(Desk, "bracken")!.Seen($"scenarios/working/choices/{item}"), "Ben", "there"));

    [Fact]
    public void An_emptyShop_says_what_to_do_first()
    {
        var page = Page();
        Assert.NotNull(page.Find(".empty a"));
        Assert.Empty(page.FindAll(".vehicle-day"));
    }

    [Fact]
    public void What_is_in_trouble_stands_with_the_item_that_settles_it_and_columns_without_content_are_left_out()
    {
        Import(Bracken.Json);
        Choose("final-drives", "short");
        var vehicle = Page().Find(".vehicle-day");
        Assert.Contains("fail", vehicle.ClassList);
        Assert.Equal("builds/bracken/decisions?item=final-drives&in=working", vehicle.QuerySelector("[aria-label='In trouble'] li a")!.GetAttribute("href"));
        Assert.Null(vehicle.QuerySelector("[aria-label='To approve']"));
        Assert.Null(vehicle.QuerySelector("[aria-label='Prices that ran out']"));
        Assert.All(vehicle.QuerySelectorAll(".asks section"), s => Assert.True(s.QuerySelectorAll("li, p").Length > 0));
    }

    [Fact]
    public void The_counts_are_those_of_the_sheet()
    {
        Import(Bracken.Json);
        Choose("final-drives", "short");
        var row = Assert.Single(Board.Rows());
        var findings = Bracken.With(("final-drives", "short")).Findings().Select(f => f.Finding.Verdict).ToList();
        Assert.Equal((1, findings.Count(v => v == Verdict.Unknown), findings.Count), (row.Glance.Fails, row.Glance.Unknowns, row.Glance.Checks));
    }

    [Fact]
    public async Task Somebodys_choice_reaches_the_open_page()
    {
        Import(Bracken.Json);
        var page = Page();
        Assert.Empty(page.FindAll("[aria-label='In trouble']"));
        Choose("final-drives", "short");
        await Board.Settled();
        page.WaitForAssertion(() => Assert.NotEmpty(page.FindAll("[aria-label='In trouble']")));
    }

    [Fact]
    public async Task What_was_worked_out_is_kept_and_read_again_until_the_build_moves_on()
    {
        Import(Bracken.Json);
        await Board.Settled();
        var first = Assert.Single(Board.Rows());
        Assert.False(first.IsOld);
        using (var again = new GlanceBoard(new(Shop), TimeProvider.System))
        {
            var read = Assert.Single(again.Rows());
            Assert.Equal((first.Glance.Next, first.Glance.Worst, first.Glance.Undecided.Count), (read.Glance.Next, read.Glance.Worst, read.Glance.Undecided.Count));
        }
        Choose("final-drives", "short");
        await Board.Settled();
        Assert.Equal(1, Assert.Single(Board.Rows()).Glance.Fails);
    }

    [Fact]
    public void A_vehicle_put_away_is_not_in_theShop()
    {
        Import(Bracken.Json);
        Say(Desk.Stating.Archive("bracken", true, "sold as it stood", null, s_ana));
        Assert.DoesNotContain("Bracken", Page().Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void A_stop_of_work_comes_first_and_says_why()
    {
        Import(Bracken.Json);
        Say(Desk.Stating.Say("bracken", EntryKind.WorkStopped, "work", new System.Text.Json.Nodes.JsonObject { ["stopped"] = true, ["why"] = "waits for the title" }, null, s_ana));
        var page = Page();
        Assert.Contains("1 stopped", page.Find(".today-sum").TextContent, StringComparison.Ordinal);
        Assert.Contains("waits for the title", page.Find(".vehicle-day .next").TextContent, StringComparison.Ordinal);
    }
}
