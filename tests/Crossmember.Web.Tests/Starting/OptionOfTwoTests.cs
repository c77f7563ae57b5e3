using System.Text.Json.Nodes;
using Bunit;
using Crossmember.Builds.Drafting;
using Crossmember.Builds.Journal;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Decisions;

namespace Crossmember.Web.Tests.Starting;

/// <summary>Two people change one option: what the form was opened with decides whether what it says is late.</summary>
public sealed class OptionOfTwoTests : StartingShop
{
    public OptionOfTwoTests() => Import(Bracken.Json);

    private JsonObject Stands => StatedBody.Of(BuildView.Of(Desk, "bracken")!.Entries, "tires", "at33")!;

    private string Says => Stands["title"]!.GetValue<string>();

    private static void Press(IRenderedComponent<DecisionsPage> page, string text) => page.FindAll("button").First(b => b.TextContent.Trim() == text).Click();

    private void BenSays(string title)
    {
        var (body, seen) = (Stands, BuildView.Of(Desk, "bracken")!.Seen("slots/tires/options/at33"));
        body["title"] = title;
        Assert.IsType<AppendOutcome.Appended>(Desk.Append([Desk.Stating.State("bracken", "tires", "at33", body, seen, new("Ben", "there"))], Arrival.Online)[0]);
    }

    /// <summary>Ana has the form open, Ben says something else, and Ana has the page brought up to date before she keeps hers.</summary>
    private IRenderedComponent<DecisionsPage> Late()
    {
        var page = Decisions("bracken", "tires");
        page.Find("[data-option=at33] button[aria-label^=Change]").Click();
        page.Find("#of-title").Input("Ana's tires");
        BenSays("Ben's tires");
        page.WaitForAssertion(() => page.Find(".news button"));
        Press(page, "Show the present state");
        Assert.Equal("Ana's tires", page.Find("#of-title").GetAttribute("value"));
        page.Find(".option-form").Submit();
        return page;
    }

    [Fact]
    public void What_somebody_else_said_under_an_open_form_is_not_written_over_in_silence()
    {
        var page = Late();
        Assert.Equal("Ben's tires", Says);
        Assert.Contains("Ben's tires", page.Find("[role=alertdialog]").TextContent, StringComparison.Ordinal);
        Assert.Equal("Ana's tires", page.Find("#of-title").GetAttribute("value"));
    }

    [Fact]
    public void Picking_ones_own_keeps_it_and_closes_the_form()
    {
        var page = Late();
        Press(page, "Use mine");
        Assert.Equal("Ana's tires", Says);
        Assert.Empty(page.FindAll(".option-form"));
        Assert.Empty(page.FindAll("[role=alertdialog]"));
    }

    [Fact]
    public void What_is_typed_while_two_words_stand_side_by_side_stays()
    {
        var page = Late();
        page.Find("#of-title").Input("Ana's tires, said again");
        Press(page, "Use mine");
        Assert.Equal("Ana's tires", Says);
        Assert.Equal("Ana's tires, said again", page.Find("#of-title").GetAttribute("value"));
    }

    [Fact]
    public void Theirs_stays_where_it_is_picked_and_the_form_is_still_late()
    {
        var page = Late();
        Press(page, "Keep theirs");
        page.Find(".option-form").Submit();
        Assert.Equal("Ben's tires", Says);
        Assert.NotEmpty(page.FindAll("[role=alertdialog]"));
    }
}
