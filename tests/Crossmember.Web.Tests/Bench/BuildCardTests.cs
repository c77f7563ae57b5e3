using System.Globalization;
using AngleSharp.Dom;
using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Bench;
using Crossmember.Web.Features;
using Microsoft.AspNetCore.Components;

namespace Crossmember.Web.Tests.Bench;

/// <summary>The card with the values of a build: the sheet's own numbers, where each is from, and what is tried against them.</summary>
public sealed class BuildCardTests : BenchShop
{
    private const string Direct = "driveline.engine-speed[gear=4,range=high]", CruiseWhatIf = "scenarios/working/what-ifs/duty.cruise-speed";

    private Sheet Sheet => BuildView.Of(Desk, "bracken")!.Sheet("working");

    private IReadOnlyList<Entry> WhatIfs => [.. BuildView.Of(Desk, "bracken")!.Entries.Where(e => e.Fact.Kind == EntryKind.WhatIfSet.Name)];

    private static IElement Input(IRenderedComponent<IComponent> page, string name) => page.Find($"[data-input='{name}']");

    private static double Number(IRenderedComponent<IComponent> page, string output) => double.Parse(Output(page, output).GetAttribute("value")!, CultureInfo.InvariantCulture);

    [Fact]
    public void Every_instance_shows_the_numbers_of_the_sheet_to_the_last_figure()
    {
        var states = Sheet.Instances.OfType<InstanceState>().ToList();
        Assert.True(states.Count > 50);
        foreach (var state in states)
        {
            using var card = BuildCard(state.Instance.Id, measure: MeasureSystem.Metric);
            var calculation = state.Instance.Calculation;
            for (var i = 0; i < calculation.OutputSpecs.Count; i++)
                Assert.Equal(state.Outcome.Outputs[i].IsNumber ? calculation.OutputSpecs[i].Unit!.FromSi(state.Outcome.Outputs[i].Number).ToString("R", CultureInfo.InvariantCulture) : state.Outcome.Outputs[i].Text ?? "",
                    Output(card, calculation.OutputSpecs[i].Name).GetAttribute("value"));
            Assert.Equal(state.Shown().Working.Select(l => l.Substituted), card.FindAll(".put-in").Select(l => l.TextContent));
            Assert.Equal(calculation.InputSpecs.Count, card.FindAll(".in-build").Count);
            Assert.All(card.FindAll("form input, form select, form textarea"), f => Assert.True(card.FindAll($"label[for='{f.Id}']") is [{ TextContent.Length: > 0 }], f.OuterHtml));
        }
    }

    [Fact]
    public void Each_input_tells_its_value_where_from_and_leads_to_what_states_it()
    {
        using var card = BuildCard(Direct);
        Assert.Equal("4.1 measured Final drives, as found", Words(Input(card, "axleRatio").QuerySelector(".stands")!));
        Assert.Equal("builds/bracken/decisions?item=final-drives&in=working", Input(card, "axleRatio").QuerySelector("a")!.GetAttribute("href"));
        Assert.Contains("calculated: tire diameter of an axle", Words(Input(card, "tireDiameter").QuerySelector(".stands")!), StringComparison.Ordinal);
        Assert.Equal("builds/bracken/bench/tires.axle-diameter%5Baxle%3Drear%5D?in=working", Input(card, "tireDiameter").QuerySelector("a")!.GetAttribute("href"));
        Assert.Contains("the build keeps no such value", Words(Input(card, "redline")), StringComparison.Ordinal);
    }

    [Fact]
    public void Masses_come_from_the_weighing_and_the_place_a_card_is_for_is_no_field()
    {
        using var card = BuildCard("mass.axle-load[axle=rear,condition=empty]");
        Assert.Contains("from the weighing and the masses of the items", Words(Input(card, "total")), StringComparison.Ordinal);
        Assert.Empty(Input(card, "axle").QuerySelectorAll("input, select"));
        Assert.Equal(["front (empty)", "rear (empty)"], card.FindAll("#which option").Select(o => o.TextContent));
    }

    [Fact]
    public void A_calculation_opens_its_instance_that_is_worst_off_and_another_can_be_picked()
    {
        using var card = BuildCard("driveline.engine-speed");
        Assert.Equal(8, card.FindAll("#which option").Count);
        card.Find("#which").Change(Direct);
        Assert.EndsWith(BenchAddress.Of("bracken", "working", Direct), Nav.Uri, StringComparison.Ordinal);
    }

    /// <summary>Double the road speed, double the engine speed.</summary>
    [Fact]
    public void What_is_tried_is_marked_and_stands_against_the_build_until_it_is_dropped()
    {
        using var card = BuildCard(Direct);
        var build = Number(card, "engineSpeed");
        Write(card, "#in-roadSpeed", "130");
        Assert.Equal(2 * build, Number(card, "engineSpeed"), 9);
        Assert.Equal($"in the build {OutputText.Of(Sheet.Instance(Direct)!.Instance.Calculation.OutputSpecs[0], Sheet.Instance(Direct)!.Outcome.Outputs[0], MeasureSystem.UsCustomary)}", Words(card.Find(".answer .was")));
        Assert.Contains("tried here", Input(card, "roadSpeed").TextContent, StringComparison.Ordinal);
        Assert.Equal("""{"roadSpeed":"130 mph"}""", Sent);
        Assert.Empty(WhatIfs);
        card.Find("[aria-label='Drop what is tried: road speed']").Click();
        Assert.Equal((build, null), (Number(card, "engineSpeed"), Sent));
        Assert.Empty(card.FindAll(".was"));
    }

    [Theory]
    [InlineData(MeasureSystem.Metric, "&measure=metric")]
    [InlineData(MeasureSystem.UsCustomary, "&measure=us")]
    public void Paper_of_a_card_comes_in_the_measures_of_the_screen(MeasureSystem measure, string asked)
    {
        using var card = BuildCard(Direct, measure: measure);
        IReadOnlyList<string> Papers(IRenderedComponent<IComponent> page) => [.. page.FindAll(".files a").Select(a => a.GetAttribute("href")!).Where(h => h.Contains("/report/", StringComparison.Ordinal))];
        Assert.Equal(2, Papers(card).Count);
        Assert.All(Papers(card), h => Assert.EndsWith(asked, h, StringComparison.Ordinal));
        Write(card, "#in-roadSpeed", "130");
        Assert.All(Papers(card), h => Assert.StartsWith("api/report/", h, StringComparison.Ordinal));
        Assert.All(Papers(card), h => Assert.EndsWith(asked, h, StringComparison.Ordinal));
        using var alone = Card("driveline.engine-speed", measure: measure);
        Assert.Equal(2, Papers(alone).Count);
        Assert.All(Papers(alone), h => Assert.EndsWith(asked, h, StringComparison.Ordinal));
    }

    [Fact]
    public void One_member_of_a_map_can_be_tried_and_the_others_stay_the_builds()
    {
        using var card = BuildCard("driveline.crawl-ratio");
        Write(card, "#in-gearRatios-0", "7");
        Assert.Equal(7 * 2.03 * 4.1, Number(card, "crawlRatio"), 9);
        card.Find("[aria-label='Use as what-if: gearbox ratios, 1']").Click();
        Assert.Equal("scenarios/working/what-ifs/gearbox.1.ratio", Assert.Single(WhatIfs).Fact.Subject);
    }

    [Fact]
    public void Use_as_what_if_writes_exactly_one_entry_and_undo_takes_it_back()
    {
        using var card = BuildCard(Direct);
        var build = Number(card, "engineSpeed");
        Write(card, "#in-roadSpeed", "70");
        card.Find("[aria-label='Use as what-if: road speed']").Click();
        var entry = Assert.Single(WhatIfs);
        Assert.Equal((CruiseWhatIf, "70 mph", "Ana"), (entry.Fact.Subject, (string?)entry.Fact.Payload!["value"], entry.Fact.Person));
        Assert.Equal(build * 70 / 65, Number(card, "engineSpeed"), 6);
        Assert.Equal("70 mph assumed tried in this what-if", Words(Input(card, "roadSpeed").QuerySelector(".stands")!));
        Assert.Equal(("", null), (card.Find("#in-roadSpeed").GetAttribute("value") ?? "", Sent));
        card.Find(".head .pick button").Click();
        Assert.Contains("took back", card.Find(".note.said").TextContent, StringComparison.Ordinal);
        Assert.Equal(build, Number(card, "engineSpeed"));
        Assert.DoesNotContain(Corrections.Effective(BuildView.Of(Desk, "bracken")!.Entries), s => s.Fact.Kind == EntryKind.WhatIfSet.Name && s.Payload is not null);
    }

    [Fact]
    public void What_the_build_refuses_stays_in_the_field_with_the_reason()
    {
        using var card = BuildCard(Direct);
        Write(card, "#in-roadSpeed", "0 mph"); // standing still can be worked out; cruising at it cannot
        card.Find("[aria-label='Use as what-if: road speed']").Click();
        Assert.Contains("must be more than 0", card.Find(".note.error").TextContent, StringComparison.Ordinal);
        Assert.Equal("0 mph", card.Find("#in-roadSpeed").GetAttribute("value"));
        Assert.Empty(WhatIfs);
    }

    [Fact]
    public void What_cannot_be_read_or_has_no_key_cannot_be_used_and_says_why()
    {
        using var card = BuildCard(Direct);
        Write(card, "#in-roadSpeed", "fast");
        Assert.NotNull(card.Find("[aria-label='Use as what-if: road speed']").GetAttribute("disabled"));
        Assert.Contains("not a number", card.Find("#in-roadSpeed-fault").TextContent, StringComparison.Ordinal);
        Write(card, "#in-redline", "3000");
        Assert.Contains("It cannot be used as a what-if: the build keeps no such value", Words(Input(card, "redline")), StringComparison.Ordinal);
        using var load = BuildCard("mass.axle-load[axle=rear,condition=empty]");
        Write(load, "#in-total", "5000 lb");
        Assert.Contains("It cannot be used as a what-if: it is made of the weighing", Words(Input(load, "total")), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_found_cannot_be_edited_but_tried()
    {
        using var card = BuildCard(Direct, "as-found");
        Write(card, "#in-roadSpeed", "70");
        Assert.NotEmpty(card.FindAll(".answer .was"));
        Assert.NotNull(card.Find("[aria-label='Use as what-if: road speed']").GetAttribute("disabled"));
        Assert.Contains("cannot be edited", card.Find("form .note").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void A_published_value_can_be_tried_as_a_what_if_that_hides_it()
    {
        using var card = BuildCard(Direct);
        Write(card, "#in-tireDiameter", "35");
        card.Find("[aria-label='Use as what-if: overall tire diameter']").Click();
        Assert.Equal("scenarios/working/what-ifs/axle.rear.tire-diameter", Assert.Single(WhatIfs).Fact.Subject);
        Assert.StartsWith("35 in", Words(Input(card, "tireDiameter").QuerySelector(".stands")!), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_people_who_try_the_same_value_see_both_and_pick()
    {
        using var card = BuildCard(Direct);
        Write(card, "#in-roadSpeed", "70");
        var view = BuildView.Of(Desk, "bracken")!;
        Desk.Append([Desk.Deciding.TryOut("bracken", "working", "duty.cruise-speed", "60 mph", view.Seen(CruiseWhatIf), "Ben", "there")], Arrival.Online);
        card.WaitForAssertion(() => Assert.Contains("Somebody has decided what you are looking at", card.Find(".news").TextContent, StringComparison.Ordinal));
        card.Find("[aria-label='Use as what-if: road speed']").Click();
        Assert.Contains("Ben tried 60 mph", Words(card.Find(".clash")), StringComparison.Ordinal);
        Assert.Single(WhatIfs);
        card.FindAll(".clash button")[1].Click();
        Assert.Equal(["60 mph", "70 mph"], WhatIfs.Select(w => (string)w.Fact.Payload!["value"]!));
    }

    [Fact]
    public void What_somebody_decides_elsewhere_shows_at_once()
    {
        using var card = BuildCard(Direct);
        var build = Number(card, "engineSpeed");
        var view = BuildView.Of(Desk, "bracken")!;
        Desk.Append([Desk.Deciding.Choose("bracken", "working", "final-drives", "short", view.Seen("scenarios/working/choices/final-drives"), "Ben", "there")], Arrival.Online);
        card.WaitForAssertion(() => Assert.Equal(build * 4.88 / 4.1, Number(card, "engineSpeed"), 6));
    }

    [Fact]
    public void The_card_leads_on_to_paper_files_and_the_bench_without_a_build()
    {
        using var card = BuildCard("driveline.speed-curves[range=high]");
        Assert.Contains("api/builds/bracken/report/calculation.pdf?in=working&instance=driveline.speed-curves%5Brange%3Dhigh%5D&measure=us", card.FindAll(".takeaway a").Select(a => a.GetAttribute("href")));
        Assert.Contains("api/builds/bracken/curves/driveline.speed-curves%5Brange%3Dhigh%5D.svg?in=working&measure=us", card.FindAll(".files a").Select(a => a.GetAttribute("href")));
        Write(card, "#in-axleRatio", "5");
        Assert.StartsWith("api/report/calculation.pdf?calculation=driveline.speed-curves&input=", card.Find(".takeaway a").GetAttribute("href")!, StringComparison.Ordinal);
        Assert.StartsWith("api/calc/driveline.speed-curves/curves.svg?input=", card.Find(".files a").GetAttribute("href")!, StringComparison.Ordinal);
        var input = Uri.UnescapeDataString(card.FindAll(".takeaway a")[2].GetAttribute("href")!.Split("?input=")[1]);
        var tried = Output(card, "fastest").GetAttribute("value");
        using var free = Card("driveline.speed-curves", input);
        Assert.Equal(tried, Output(free, "fastest").GetAttribute("value"));
    }

    [Theory]
    [InlineData("driveline.cruise[gear=1]", "is not worked out in")]
    [InlineData("nonsense", "is not worked out in")]
    public void An_instance_that_does_not_exist_is_said_to_be_so(string instance, string said) => Assert.Contains(said, BuildCard(instance).Markup, StringComparison.Ordinal);
}
