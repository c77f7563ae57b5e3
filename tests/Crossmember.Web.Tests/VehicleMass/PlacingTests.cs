using Bunit;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Tests.VehicleMass;

/// <summary>A mass is picked, moved and kept. By hand: 64 lb moved by 100 in, the wheelbase, go whole from the front axle to the rear one.</summary>
public sealed class PlacingTests : VehiclePages
{
    [Fact]
    public void A_typed_place_moves_the_loads_and_writes_nothing()
    {
        var page = Page();
        Pick(page, "Winch: drum");
        Assert.Equal(["-25 in", "0 in", "5 in"], Place(page));
        var said = Said;
        page.Find("#place-x").Input("75");
        Assert.Equal("2016 lb", Row(page, "Front axle")[0]);
        Assert.Equal("1548 lb", Row(page, "Rear axle")[0]);
        Assert.Equal(["Front axle", "2080 lb", "2016 lb, 81 %", "−64 lb"], page.FindAll(".place-knock tbody tr")[0].Children.Select(Text));
        Assert.Equal(said, Said);
        Assert.Equal("[\"-25 in\",\"0 in\",\"5 in\"]", Kept("winch", "w8"));
    }

    [Fact]
    public void A_kept_place_is_the_option_stated_anew_and_can_be_taken_back()
    {
        var page = Page();
        Pick(page, "Winch: drum");
        page.Find("#place-x").Input("6 ft 3 in");
        page.Find(".place-form").Submit();
        Assert.Equal("[\"6 ft 3 in\",\"0 in\",\"5 in\"]", Kept("winch", "w8"));
        Assert.Equal("2016 lb", Row(page, "Front axle")[0]);
        Assert.Equal("75 in", Place(page)[0]);
        Assert.Empty(page.FindAll(".place-knock"));
        Assert.Contains("Ana stated “8,000 lb” for Winch", page.Find(".note.said").TextContent, StringComparison.Ordinal);
        Press(page, "Undo mine");
        Assert.Equal("2080 lb", Row(page, "Front axle")[0]);
        Assert.Equal("-25 in", Place(page)[0]);
    }

    [Fact]
    public void A_drag_shows_its_loads_and_a_drop_waits_to_be_kept()
    {
        var page = Page();
        Tell(page, $"pick|side|{Drum}");
        Tell(page, $"drag|side|{Drum}|0|0.5");
        Assert.Equal("2064 lb", Row(page, "Front axle")[0]);
        Assert.Equal(["0 in", "0 in", "19.5 in"], Place(page)); // 0.5 m is 19.69 in: to the nearest half inch
        Tell(page, $"drop|plan|{Drum}|1.905|0.254");
        Assert.Equal(["75 in", "10 in", "19.5 in"], Place(page));
        Assert.Equal("[\"-25 in\",\"0 in\",\"5 in\"]", Kept("winch", "w8"));
        Press(page, "Keep place");
        Assert.Equal("[\"75 in\",\"10 in\",\"19.5 in\"]", Kept("winch", "w8"));
    }

    /// <summary>Its right side down by 64 lb at 30 in of half a track of 30 in: the whole of it onto the right wheels.</summary>
    [Fact]
    public void A_move_across_goes_from_the_left_wheels_to_the_right_ones()
    {
        var page = Page();
        Pick(page, "Winch: drum");
        page.Find("#place-y").Input("30 in");
        var (left, right) = (Row(page, "Front left wheel")[0], Row(page, "Front right wheel")[0]);
        Assert.NotEqual("1040 lb", left);
        Assert.Equal(2080, int.Parse(left.Split(' ')[0]) + int.Parse(right.Split(' ')[0]));
        Assert.True(int.Parse(right.Split(' ')[0]) > int.Parse(left.Split(' ')[0]));
    }

    [Theory]
    [InlineData(MeasureSystem.UsCustomary, "nudge|x|1", "-24.5 in")]
    [InlineData(MeasureSystem.UsCustomary, "nudge|x|-10", "-30 in")]
    [InlineData(MeasureSystem.Metric, "nudge|x|1", "-625 mm")]
    public void Arrow_keys_move_by_half_an_inch_or_ten_millimeters(MeasureSystem measure, string word, string x)
    {
        var page = Page(measure: measure);
        Pick(page, "Winch: drum");
        Tell(page, word);
        Assert.Equal(x, Place(page)[0]);
        Tell(page, "back");
        Assert.Equal(measure == MeasureSystem.Metric ? "-635 mm" : "-25 in", Place(page)[0]);
        Assert.Equal("2080 lb", Row(Page(), "Front axle")[0]);
    }

    [Fact]
    public void Enter_on_the_mark_keeps_the_place()
    {
        var page = Page(measure: MeasureSystem.Metric);
        Pick(page, "Winch: drum");
        Tell(page, "nudge|z|2");
        Tell(page, "keep");
        // What nobody touched is as exact as it was stated: 25 in are 635 mm.
        Assert.Equal("[\"-635 mm\",\"0 mm\",\"147 mm\"]", Kept("winch", "w8"));
    }

    [Fact]
    public void What_is_not_understood_stands_beside_its_field_and_nothing_is_written()
    {
        var page = Page();
        Pick(page, "Winch: drum");
        page.Find("#place-z").Input("high up");
        Assert.Equal("true", page.Find("#place-z").GetAttribute("aria-invalid"));
        Assert.Null(page.Find("#place-x").GetAttribute("aria-invalid"));
        Assert.Contains("high up", page.Find("#place-z-error").TextContent, StringComparison.Ordinal);
        page.Find(".place-form").Submit();
        Assert.Equal("[\"-25 in\",\"0 in\",\"5 in\"]", Kept("winch", "w8"));
        Assert.Equal("high up", Place(page)[2]);
    }

    [Fact]
    public void A_mass_without_a_place_is_put_where_the_drawing_is_pressed()
    {
        var page = Page("?in=working&load=loaded&against=nothing");
        Pick(page, "tools");
        Assert.Equal(["", "", ""], Place(page));
        Tell(page, "spot|side|1.27|0.508");
        Assert.Equal(["50 in", "0 in", "20 in"], Place(page));
        Assert.Equal("2230 lb", Row(page, "Front axle")[0]); // 2080 + half of 200 and of 100
        Press(page, "Keep place");
        Assert.Equal("""["50 in","0 in","20 in"]""", Aboard("loaded")["items"]![1]!["at"]!.ToJsonString());
        Assert.Contains("Ana said who and what is aboard when loaded", page.Find(".note.said").TextContent, StringComparison.Ordinal);
        Tell(page, "spot|side|0|0");
        Assert.Equal("50 in", Place(page)[0]);
    }

    [Fact]
    public void What_somebody_else_said_meanwhile_is_a_conflict_and_not_written_over()
    {
        var page = Page();
        Pick(page, "Winch: drum");
        page.Find("#place-x").Input("75 in");
        var body = Crossmember.Builds.Drafting.StatedBody.Of(View.Entries, "winch", "w8")!;
        body["title"] = "Ben's winch";
        Assert.IsType<AppendOutcome.Appended>(Desk.Append([Desk.Stating.State("bracken", "winch", "w8", body, View.Seen("slots/winch/options/w8"), new("Ben", "there"))], Arrival.Online)[0]);
        page.WaitForAssertion(() => Assert.Contains("Somebody has decided", page.Find(".news").TextContent, StringComparison.Ordinal));
        page.Find(".place-form").Submit();
        Assert.Contains("Ben's winch", page.Find("[role=alertdialog]").TextContent, StringComparison.Ordinal);
        Assert.Equal("75 in", Place(page)[0]);
        Press(page, "Keep theirs");
        page.Find(".place-form").Submit();
        Assert.Equal("[\"75 in\",\"0 in\",\"5 in\"]", Kept("winch", "w8"));
        Assert.Equal("Ben's winch", (string?)Crossmember.Builds.Drafting.StatedBody.Of(View.Entries, "winch", "w8")!["title"]);
    }

    [Fact]
    public void The_picked_mark_alone_can_be_reached_in_the_drawing_and_says_what_it_is()
    {
        var page = Page();
        Assert.Empty(page.FindAll(".mark[tabindex]"));
        Pick(page, "Winch: drum");
        var mark = page.Find(".wide .mark.picked[data-view=side]");
        Assert.Equal("0", mark.GetAttribute("tabindex"));
        Assert.StartsWith("1 Winch: drum, 64 lb, 25 in ahead of the front axle, on the center line, 5 in over the frame datum; put on, from the side", mark.GetAttribute("aria-label"), StringComparison.Ordinal);
        Press(page, "Done");
        Assert.Empty(page.FindAll(".place-form"));
    }

    [Theory]
    [InlineData("")]
    [InlineData("drag|side|slots/winch/options/w8/drum|x|0")]
    [InlineData("drag|side|slots/other/options/w8/drum|1|0")]
    [InlineData("drag|side|slots/winch/options/w8/drum|1e9|0")]
    [InlineData("nudge|q|1")]
    [InlineData("keep")]
    [InlineData("back")]
    public void Words_that_mean_nothing_do_nothing(string word)
    {
        var page = Page();
        var said = Said;
        Tell(page, word);
        Assert.Empty(page.FindAll(".place-form"));
        Assert.Equal(said, Said);
    }
}
