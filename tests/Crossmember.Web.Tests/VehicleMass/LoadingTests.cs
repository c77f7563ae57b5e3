using Bunit;
using Crossmember.Builds.Journal;

namespace Crossmember.Web.Tests.VehicleMass;

/// <summary>Who and what is on board, and new conditions to look at.</summary>
public sealed class LoadingTests : VehiclePages
{
    private IRenderedComponent<Features.VehicleMass.VehiclePage> Loaded() => Page("?in=working&load=loaded&against=nothing");

    [Fact]
    public void Somebody_more_is_kept_with_a_name_and_a_mass()
    {
        var page = Loaded();
        page.Find("#aboard-name-2").Input("dog");
        page.Find("#aboard-mass-2").Input("36 lb");
        page.Find(".loading-form").Submit();
        Assert.Equal("""{"basis":"assumed","id":"dog","mass":"36 lb"}""", Aboard("loaded")["items"]![2]!.ToJsonString());
        Assert.Equal("3900 lb", Row(page, "Everything")[0]);
        Assert.Equal("", page.Find("#aboard-name-3").GetAttribute("value") ?? "");
        Press(page, "Undo mine");
        Assert.Equal("3864 lb", Row(page, "Everything")[0]);
    }

    [Fact]
    public void A_new_name_keeps_its_place_and_what_is_taken_off_is_gone()
    {
        var page = Loaded();
        page.Find("#aboard-name-0").Input("Ana");
        page.FindAll(".aboard-acts button").Single(b => b.GetAttribute("aria-label") == "Take off tools").Click();
        page.Find(".loading-form").Submit();
        Assert.Equal("""{"items":[{"at":["50 in","-15 in","30 in"],"basis":"assumed","id":"Ana","mass":"200 lb"}]}""", Aboard("loaded").ToJsonString());
    }

    [Fact]
    public void What_is_wrong_stands_at_its_line_and_what_was_typed_stays()
    {
        var page = Loaded();
        page.Find("#aboard-mass-0").Input("200");
        page.Find(".loading-form").Submit();
        Assert.Equal("true", page.Find("#aboard-mass-0").GetAttribute("aria-invalid"));
        Assert.NotEmpty(page.Find("#aboard-fault-0").TextContent.Trim());
        Assert.Equal("200", page.Find("#aboard-mass-0").GetAttribute("value"));
        Assert.Equal("200 lb", (string?)Aboard("loaded")["items"]![0]!["mass"]);
        Press(page, "Put back");
        Assert.Equal("200 lb", page.Find("#aboard-mass-0").GetAttribute("value"));
    }

    [Fact]
    public void A_form_in_hand_meets_the_word_of_somebody_else_as_a_conflict()
    {
        var page = Loaded();
        page.Find("#aboard-mass-0").Input("210 lb");
        var body = Aboard("loaded");
        body["items"]![0]!["mass"] = "180 lb";
        Assert.IsType<AppendOutcome.Appended>(Desk.Append([Desk.Stating.Say("bracken", EntryKind.ConditionStated, "conditions/loaded", body, View.Seen("conditions/loaded"), new("Ben", "there"))], Arrival.Online)[0]);
        page.WaitForAssertion(() => Assert.Equal("3844 lb", Row(page, "Everything")[0]));
        Assert.Equal("210 lb", page.Find("#aboard-mass-0").GetAttribute("value"));
        page.Find(".loading-form").Submit();
        Assert.NotEmpty(page.FindAll("[role=alertdialog]"));
        Press(page, "Use mine");
        Assert.Equal("210 lb", (string?)Aboard("loaded")["items"]![0]!["mass"]);
    }

    [Fact]
    public void A_mass_aboard_is_taken_in_hand_from_its_line()
    {
        var page = Loaded();
        page.FindAll(".aboard-acts button").Single(b => b.GetAttribute("aria-label") == "Place it on the drawing: tools").Click();
        Assert.Contains("tools", page.Find("#place-title").TextContent, StringComparison.Ordinal);
    }

    /// <summary>Towing starts as loaded is: the sets of the build are stated anew with one condition more, and nothing else of the opening changes.</summary>
    [Fact]
    public void A_new_condition_is_looked_at_like_the_others()
    {
        var page = Loaded();
        page.Find("#condition-name").Input("Towing, full");
        page.Find("#condition-from").Change("loaded");
        page.Find(".new-condition form").Submit();
        Assert.Equal(["empty", "loaded", "towing-full"], View.Build.Sets.Of("condition"));
        Assert.Equal(["1", "2", "3", "4"], View.Build.Sets.Of("gear"));
        Assert.Equal("Bracken flatbed, invented", View.Build.Title);
        Assert.Equal("2026-04-01T08:00:00.000Z", View.Build.Created);
        Assert.EndsWith("load=towing-full", Nav.Uri, StringComparison.Ordinal);
        Assert.Equal(3864 * 0.45359237, Sheet.Key("mass.towing-full.total")!.Value.Value.Number, 6);
        Assert.Null(View.Build.Archived);
    }

    /// <summary>The button that takes back must not put the build away: it was not opened just now.</summary>
    [Fact]
    public void Taking_back_after_a_new_condition_leaves_the_build_where_it_is()
    {
        var page = Loaded();
        page.Find("#condition-name").Input("towing");
        page.Find(".new-condition form").Submit();
        if (page.FindAll(".pick button").Single(b => b.TextContent == "Undo mine") is { } undo && !undo.HasAttribute("disabled")) undo.Click();
        Assert.Null(View.Build.Archived);
        Assert.Contains("towing", View.Build.Sets.Of("condition"));
    }

    [Theory]
    [InlineData("", "Nothing is written")]
    [InlineData("Loaded", "There is 'loaded' already")]
    public void A_name_that_cannot_be_is_refused_at_its_field(string name, string why)
    {
        var page = Loaded();
        page.Find("#condition-name").Input(name);
        page.Find(".new-condition form").Submit();
        Assert.StartsWith(why, page.Find("#condition-fault").TextContent, StringComparison.Ordinal);
        Assert.Equal(2, View.Build.Sets.Of("condition").Length);
    }

    [Fact]
    public void A_build_without_a_condition_gets_its_first_here()
    {
        Import("""{"format":"crossmember.build/1","id":"bare","title":"Bare","slots":[{"id":"vehicle","parent":null,"title":"Bare"}],"scenarios":[{"id":"working","base":null,"choices":{}}]}""");
        var page = Page("", id: "bare");
        Assert.Contains("no loading condition yet", page.Find(".empty").TextContent, StringComparison.Ordinal);
        page.Find("#condition-name").Input("empty");
        page.Find(".new-condition form").Submit();
        page.WaitForAssertion(() => Assert.Equal("empty", page.Find("#load option[selected]").GetAttribute("value")));
    }
}
