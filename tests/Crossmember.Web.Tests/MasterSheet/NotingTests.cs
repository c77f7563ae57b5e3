using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Tests.MasterSheet;

/// <summary>Somebody measures something and writes it down.</summary>
public sealed class NotingTests : SheetPages
{
    private const string Check = "tires.service-description[axle=rear,side=left]/speed", Key = "wheel.*.*.tire.service-description";

    private Verdict Says(string id) => Sheet.Findings().Single(f => f.Id == id).Finding.Verdict;

    [Fact]
    public void A_noted_value_changes_the_sheet_and_turns_the_check_that_waited_for_it()
    {
        var page = Page("tires", Key);
        Assert.Equal(Verdict.Unknown, Says(Check));
        Note(page, "104Q");
        Assert.Equal(Verdict.Pass, Says(Check));
        Assert.Contains("Ana noted 104Q", page.Find(".note.said").TextContent, StringComparison.Ordinal);
        Assert.Contains("4 checks say something else now", Text(page.Find(".turns")), StringComparison.Ordinal);
        Assert.Contains("don't know → good", Text(page.Find(".turns li")), StringComparison.Ordinal);
        Assert.Contains("measured Ana", Text(page.Find("[data-key-name='wheel.front.left.tire.service-description']")), StringComparison.Ordinal);
        Assert.Equal("", page.Find("#note-value").GetAttribute("value") ?? "");
    }

    [Fact]
    public void Undo_takes_it_back_and_the_check_does_not_know_again()
    {
        var page = Page("tires", Key);
        Note(page, "104Q");
        page.FindAll(".pick button").Single(b => b.TextContent == "Undo mine").Click();
        Assert.Equal(Verdict.Unknown, Says(Check));
        Assert.Contains("good → don't know", Text(page.Find(".turns li")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("engine.torque-curve", "800 rpm, 165 lbf ft")]
    [InlineData("brakes.gauge.front", "20 lbf, 112 psi")]
    [InlineData("brakes.gauge.deceleration", "20 lbf, 0.3")]
    [InlineData("duty.profile.speed", "300 ft, 25 mph")]
    public void A_curve_is_asked_for_with_an_example_in_its_own_units(string key, string example) =>
        Assert.Equal(example, Page("engine", key).Find("textarea#note-value").GetAttribute("placeholder"));

    [Theory]
    [InlineData("axles", "axle.front.track", "58", null, "note-error", "unit")]
    [InlineData("axles", "axle.front.track", "", null, "note-error", "nothing is written")]
    [InlineData("axles", "axle.front.track", "-3 in", null, "note-error", "more than 0")]
    [InlineData("axles", "axle.front.track", "58 in", "a bit", "spread-error", "not a number")]
    [InlineData("engine", "engine.torque-curve", "1,500 rpm, 165 lbf ft\n3600 rpm, 175 lbf ft", null, "note-error", "write 1500, not 1,500")]
    [InlineData("engine", "engine.torque-curve", "1500 rpm; 165,5 lbf ft\n3600 rpm; 175 lbf ft", null, "note-error", "write 165.5, not 165,5")]
    [InlineData("engine", "engine.torque-curve", "800 rpm, 165 lbf ft", null, "note-error", "two or more pairs")]
    public void What_is_not_understood_stands_beside_its_field_and_what_was_typed_stays(string item, string key, string value, string? spread, string where, string wrong)
    {
        var position = View.Build.Position;
        var page = Page(item == "axles" ? "vehicle" : item, key);
        Note(page, value, spread);
        Assert.Contains(wrong, page.Find("#" + where).TextContent, StringComparison.OrdinalIgnoreCase);
        var field = page.Find(where == "note-error" ? "#note-value" : "#note-spread");
        Assert.Equal("true", field.GetAttribute("aria-invalid"));
        Assert.Equal(where, field.GetAttribute("aria-describedby"));
        Assert.Equal(value, page.Find("#note-value").GetAttribute("value") ?? "");
        Assert.Equal(position, View.Build.Position);
    }

    [Fact]
    public void A_curve_is_written_a_point_on_a_line()
    {
        Note(Page("engine", "engine.torque-curve"), "800 rpm, 165 lbf ft\n2000 rpm; 198 lbf ft\n3600 rpm = 175 lbf ft");
        Assert.Equal(3, Sheet.Key("engine.torque-curve")!.Value.Value.Curve!.Points.Count);
    }

    [Fact]
    public void A_tolerance_is_kept_and_shown()
    {
        var page = Page("vehicle", "axle.front.track");
        Note(page, "58 in", "1/8 in");
        Assert.Equal(0.003175, Sheet.Key("axle.front.track")!.Value.PlusMinus, 9);
        Assert.Contains("± 1/8 in", page.Find("[data-key-name='axle.front.track']").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_note_lies_above_what_the_option_says_and_dropping_it_brings_that_back()
    {
        var page = Page("final-drives", "axle.*.ratio");
        Note(page, "4.09");
        Assert.Equal(4.09, Sheet.Key("axle.rear.ratio")!.Value.Value.Number);
        page.Find("[data-key-name='axle.front.ratio'] .acts button").Click();
        page.FindAll(".more button").Single(b => b.TextContent == "Drop it").Click();
        Assert.Equal(4.1, Sheet.Key("axle.rear.ratio")!.Value.Value.Number);
    }

    [Fact]
    public void Somebody_elses_wrong_figure_is_put_right_in_its_place_and_taking_that_back_restores_theirs()
    {
        Ben("final-drives", "axle.*.ratio", "4.9");
        var page = Page("final-drives");
        page.Find("[data-key-name='axle.front.ratio'] .acts button").Click();
        page.FindAll(".more button").Single(b => b.TextContent == "It was wrong").Click();
        Assert.Equal("4.9", page.Find("#note-value").GetAttribute("value"));
        Note(page, "4.09");
        Assert.Equal(4.09, Sheet.Key("axle.rear.ratio")!.Value.Value.Number);
        Assert.Equal(["Ana", "Ben"], Said("axle.rear.ratio").Take(2).Select(w => w.Entry.Fact.Person));
        page.FindAll(".pick button").Single(b => b.TextContent == "Undo mine").Click();
        Assert.Equal(4.9, Sheet.Key("axle.rear.ratio")!.Value.Value.Number);
    }

    [Fact]
    public void That_nobody_really_knows_hides_what_the_option_says()
    {
        var page = Page("final-drives");
        page.Find("[data-key-name='axle.front.ratio'] .acts button").Click();
        page.FindAll(".more button").Single(b => b.TextContent == "Nobody really knows it").Click();
        Assert.True(Sheet.Key("axle.rear.ratio")!.Value.Value.IsAbsent);
        Assert.Contains("Final drive ratio of the axle", page.Find(".wanted").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Two_who_note_the_same_value_see_both_and_pick()
    {
        var page = Page("final-drives", "axle.*.ratio");
        Ben("final-drives", "axle.*.ratio", "4.08");
        page.WaitForAssertion(() => Assert.Contains("Somebody has decided what you are looking at", page.Find(".news").TextContent, StringComparison.Ordinal));
        Note(page, "4.09");
        var clash = page.Find("[role=alertdialog]");
        Assert.Contains("Ben noted 4.08", Text(clash), StringComparison.Ordinal);
        Assert.Contains("Ana noted 4.09", Text(clash), StringComparison.Ordinal);
        Assert.Equal("4.09", page.Find("#note-value").GetAttribute("value"));
        page.FindAll("[role=alertdialog] button").Single(b => b.TextContent == "Use mine").Click();
        Assert.Equal(4.09, Sheet.Key("axle.rear.ratio")!.Value.Value.Number);
    }

    [Fact]
    public void The_most_wanted_value_of_an_item_stands_first_in_its_form()
    {
        var page = Page("tires");
        var wanted = page.Find("#note-key optgroup");
        Assert.Equal("Checks wait for it", wanted.GetAttribute("label"));
        Assert.Equal(Key, wanted.QuerySelector("option")!.GetAttribute("value"));
        Assert.Contains("Read the sidewall behind the size", page.Find(".way-hint").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void What_the_survey_found_is_kept_with_its_grade()
    {
        var page = Page("engine");
        page.Find("#grade").Input("C");
        page.Find("#found").Input("no. 3 low on compression\n\n12 psi at idle");
        page.FindAll("form")[^1].Submit();
        Assert.Equal(("C", "no. 3 low on compression|12 psi at idle"), (View.Build.Find("engine")!.Grade, string.Join('|', View.Build.Find("engine")!.Findings)));
        Assert.Contains("grade C", Text(page.Find(".sheet-tree a[title=engine]")), StringComparison.Ordinal);
    }

    [Fact]
    public void Taking_back_a_correction_of_a_correction_restores_the_one_before_it()
    {
        Ben("final-drives", "axle.*.ratio", "4.9");
        var first = View.Entries[^1].Fact;
        var speaker = new Crossmember.Builds.Workshop.Speaker("Ana", "here");
        foreach (var value in (string[])["4.8", "4.7"])
            Desk.Append([Desk.Stating.PutRight(first, Crossmember.Builds.Workshop.Stating.Noted(value, Basis.Measured, null), View.Seen(first.Subject), speaker)], Crossmember.Builds.Journal.Arrival.Online);
        var last = View.Entries[^1].Fact;
        var lines = new Crossmember.Builds.Journal.WordLines(View.Entries);
        Assert.Equal("4.8", lines.Beneath(last.Id)!["value"]!.GetValue<string>());
        Assert.Null(lines.Beneath(first.Id));
    }

    /// <summary>What was said last is taken back first, wherever it stands; what was taken back is not put back by the next press.</summary>
    [Fact]
    public void Undo_pressed_again_and_again_goes_back_word_by_word()
    {
        var page = Page("final-drives", "axle.*.ratio");
        Note(page, "4.5");
        page = Page("engine", "engine.redline");
        Note(page, "3300 rpm");
        var first = View.Entries[^2].Fact;
        Assert.IsType<Crossmember.Builds.Journal.AppendOutcome.Appended>(Desk.Append([Desk.Stating.PutRight(first,
            Crossmember.Builds.Workshop.Stating.Noted("4.6", Basis.Measured, null), View.Seen(first.Subject), new("Ana", "here"))], Crossmember.Builds.Journal.Arrival.Online)[0]);
        (double Ratio, double Redline) Now() => (Sheet.Key("axle.rear.ratio")!.Value.Value.Number, Math.Round(Sheet.Key("engine.redline")!.Value.Value.Number * 30 / Math.PI));
        void Undo() => page.FindAll("button").First(b => b.TextContent == "Undo mine").Click();
        page = Page("engine");
        Assert.Equal((4.6, 3300), Now());
        Undo();
        Assert.Equal((4.5, 3300), Now());
        Undo();
        Assert.Equal((4.5, 3200), Now());
        Undo();
        Assert.Equal((4.1, 3200), Now());
        Assert.True(page.FindAll("button").First(b => b.TextContent == "Undo mine").HasAttribute("disabled"));
    }

    /// <summary>Noted twice and the second taken back: what stands is the first, and that is what Drop it drops.</summary>
    [Fact]
    public void Drop_it_drops_the_word_that_stands()
    {
        var page = Page("final-drives", "axle.*.ratio");
        Note(page, "4.5");
        Note(page, "4.6");
        page.FindAll("button").First(b => b.TextContent == "Undo mine").Click();
        Assert.Equal(4.5, Sheet.Key("axle.rear.ratio")!.Value.Value.Number);
        page = Page("final-drives");
        page.Find("[data-key-name='axle.front.ratio'] .acts button").Click();
        page.FindAll(".more button").Single(b => b.TextContent == "Drop it").Click();
        Assert.Equal(4.1, Sheet.Key("axle.rear.ratio")!.Value.Value.Number);
    }

    [Theory]
    [InlineData("33 by 12", true)]
    [InlineData("235/85R16", false)]
    public void A_text_that_no_calculation_can_read_is_kept_and_said_to_be_so(string typed, bool unread)
    {
        var page = Page("tires", "wheel.*.*.tire.size");
        Note(page, typed);
        Assert.Equal(typed, Sheet.Key("wheel.rear.left.tire.size")!.Value.Value.Text);
        Assert.Equal(unread, page.Find(".note.said").TextContent.Contains("no calculation can read it", StringComparison.Ordinal));
    }

    /// <summary>A note changes which values are most wanted, and so the order of the list: what it shows must stay what is written next.</summary>
    [Fact]
    public void After_a_note_the_list_is_made_anew_and_shows_the_value_that_is_in_hand()
    {
        var page = Page("tires", "wheel.*.*.tire.service-description");
        var before = page.FindAll("#note-key option").Select(o => o.GetAttribute("value")).ToList();
        Note(page, "108S");
        Assert.NotEqual(before, page.FindAll("#note-key option").Select(o => o.GetAttribute("value")));
        Assert.Equal("wheel.*.*.tire.service-description", page.Find("#note-key").GetAttribute("value"));
    }
}
