using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Web.Features.MasterSheet;

namespace Crossmember.Web.Tests.MasterSheet;

/// <summary>Two people survey one item.</summary>
public sealed class GradeOfTwoTests : SheetPages
{
    private (string? Grade, string Found) Stands => (View.Build.Find("engine")!.Grade, string.Join('|', View.Build.Find("engine")!.Findings));

    private void BenGrades(string grade, params string[] found)
    {
        var fact = Desk.Stating.Grade("bracken", "engine", grade, found, View.Seen("slots/engine/grade"), new("Ben", "there"));
        Assert.IsType<AppendOutcome.Appended>(Desk.Append([fact], Arrival.Online)[0]);
    }

    private static void ShowPresent(IRenderedComponent<SheetPage> page)
    {
        page.WaitForAssertion(() => page.Find(".news button"));
        page.FindAll("button").Single(b => b.TextContent == "Show the present state").Click();
    }

    private static void Send(IRenderedComponent<SheetPage> page) => page.FindAll("form")[^1].Submit();

    [Fact]
    public void What_is_typed_over_an_older_grade_does_not_replace_the_newer_one_in_silence()
    {
        var page = Page("engine");
        page.Find("#found").Input("knocks when warm");
        BenGrades("D", "rod through the block");
        ShowPresent(page);
        Assert.Equal("knocks when warm", page.Find("#found").GetAttribute("value"));
        Send(page);
        Assert.Equal(("D", "rod through the block"), Stands);
        page.FindAll("[role=alertdialog] button").Single(b => b.TextContent == "Use mine").Click();
        Assert.Equal((null, "knocks when warm"), Stands);
        page.Find("#grade").Input("C");
        Send(page);
        Assert.Equal(("C", "knocks when warm"), Stands);
    }

    [Fact]
    public void A_form_in_which_nothing_is_typed_shows_what_stands()
    {
        var page = Page("engine");
        BenGrades("D", "rod through the block");
        ShowPresent(page);
        Assert.Equal(("D", "rod through the block"), (page.Find("#grade").GetAttribute("value"), page.Find("#found").GetAttribute("value")));
        page.Find("#found").Input("rod through the block\ncrank is blue");
        Send(page);
        Assert.Equal(("D", "rod through the block|crank is blue"), Stands);
        page.Find("#grade").Input("E");
        Send(page);
        Assert.Equal(("E", "rod through the block|crank is blue"), Stands);
    }

    [Fact]
    public void A_figure_put_right_by_two_is_met()
    {
        Ben("final-drives", "axle.*.ratio", "4.9");
        var first = View.Entries[^1].Fact;
        var page = Page("final-drives");
        page.Find("[data-key-name='axle.front.ratio'] .acts button").Click();
        page.FindAll(".more button").Single(b => b.TextContent == "It was wrong").Click();
        Desk.Append([Desk.Stating.PutRight(first, Builds.Workshop.Stating.Noted("4.8", Builds.Slots.Basis.Measured, null), View.Seen(first.Subject), new("Ben", "there"))], Arrival.Online);
        ShowPresent(page);
        Note(page, "4.09");
        Assert.Equal(4.8, Sheet.Key("axle.rear.ratio")!.Value.Value.Number);
        Assert.NotEmpty(page.FindAll("[role=alertdialog]"));
    }
}
