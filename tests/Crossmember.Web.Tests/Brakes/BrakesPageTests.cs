using AngleSharp.Dom;
using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Tests.Brakes;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Brakes;

namespace Crossmember.Web.Tests.Brakes;

/// <summary>The brakes of the demo's truck, part by part.</summary>
public sealed class BrakesPageTests() : ShopPages(BrakedTruck.Of(Demo()))
{
    private static string Demo()
    {
        using var stream = typeof(BrakesPageTests).Assembly.GetManifestResourceStream("demo/packhorse.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    public static TheoryData<string> Parts => [.. BrakeArea.All.Select(a => a.Path)];

    private Sheet Sheet(string scenario = BrakedTruck.Discs) => BuildView.Of(Desk, "packhorse")!.Sheet(scenario);

    private IRenderedComponent<BrakesPage> Page(string part, string query = "?in=discs&against=drums", MeasureSystem measure = MeasureSystem.UsCustomary, string id = "packhorse")
    {
        Nav.NavigateTo($"builds/{id}/brakes/{part}{query}");
        return Render<BrakesPage>(p => p.Add(d => d.Id, id).Add(d => d.Part, part.Length == 0 ? null : part).AddCascadingValue(Ana with { Measure = measure }));
    }

    private static string Text(IElement e) => string.Join(' ', e.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void Every_calculation_of_the_brakes_belongs_to_one_part()
    {
        var listed = BrakeArea.All.Where(a => a.Path.Length > 0).SelectMany(a => a.Calculations).Order(StringComparer.Ordinal).ToList();
        Assert.Equal(CalculationList.All.Select(c => c.Id).Where(c => c.StartsWith("brakes.", StringComparison.Ordinal)).Order(StringComparer.Ordinal), listed);
        Assert.All(BrakeArea.All.SelectMany(a => a.Drawn), d => Assert.Contains(d, listed));
    }

    [Fact]
    public void Every_check_of_the_brakes_stands_on_the_overview_once()
    {
        var expected = Sheet().Findings().Where(f => f.Id.StartsWith("brakes.", StringComparison.Ordinal)).Select(f => f.Id).Order(StringComparer.Ordinal).ToList();
        Assert.True(expected.Count > 60, $"{expected.Count}");
        Assert.Equal(expected, Page("").FindAll(".checks li").SelectMany(l => l.GetAttribute("title")!.Split(", ")).Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Parts))]
    public void The_caution_and_the_way_to_every_other_part_stand_on_each(string part)
    {
        var page = Page(part);
        Assert.Contains("Brakes can kill", Text(page.Find(".caution-line")), StringComparison.Ordinal);
        Assert.Superset(BrakeArea.All.Select(a => a.Title).ToHashSet(), page.FindAll(".areas a").Select(Text).ToHashSet());
        Assert.Equal(BrakeArea.Find(part)!.Title, Text(page.Find(".areas a[aria-current=page]")));
        Assert.All(page.FindAll(".areas a"), a => Assert.Contains("in=discs", a.GetAttribute("href")!, StringComparison.Ordinal));
    }

    [Fact]
    public void What_it_rests_on_stands_with_where_it_is_from_and_a_way_to_note_it()
    {
        var page = Page("");
        var grip = page.FindAll(".rests-on tr").Single(r => r.QuerySelector("th[title='duty.grip']") is not null);
        Assert.Contains("usual value", Text(grip), StringComparison.Ordinal);
        Assert.Matches("sheet\\?item=.*&in=discs&key=duty.grip#note$", grip.QuerySelector("a.button")!.GetAttribute("href")!);
    }

    [Fact]
    public void An_unknown_part_or_build_says_so()
    {
        Assert.Contains("no part", Page("wings").Find("h1").TextContent, StringComparison.Ordinal);
        Assert.Contains("no build", Page("heat", id: "nobody").Find("h1").TextContent, StringComparison.Ordinal);
    }

    private double Number(string key, string scenario = BrakedTruck.Discs) => Sheet(scenario).Key(key)!.Value.Value.Number;

    private double Output(string instance, string output, string scenario = BrakedTruck.Discs)
    {
        var state = Sheet(scenario).Instance(instance)!;
        return state.Outcome.Outputs[state.Instance.Calculation.OutputIndex(output)].Number;
    }

    [Fact]
    public void The_headlines_have_the_numbers_and_verdicts_of_the_sheet_for_every_loading()
    {
        var rows = Page("").FindAll(".glance tbody tr").ToDictionary(r => Text(r.Children[0]), r => r);
        foreach (var (load, column) in new[] { ("empty", 1), ("touring", 2) })
        {
            var locks = Text(rows["Which end locks first"].Children[column]);
            Assert.Contains($"at {Output($"brakes.lock-order[condition={load}]", "deceleration"):0.00} g", locks, StringComparison.Ordinal);
            Assert.Contains($"{Output($"brakes.lock-order[condition={load}]", "pedalForce") / 4.4482216:0} lbf", locks, StringComparison.Ordinal);
            Assert.Contains($"leaves {Output($"brakes.failure[condition={load}]", "frontLost") / 9.80665:0.00} g", Text(rows["Front circuit lost"].Children[column]), StringComparison.Ordinal);
            Assert.Contains("was 0.00 g", Text(rows["Front circuit lost"].Children[column]), StringComparison.Ordinal);
            var worst = Sheet().Findings().Where(f => f.Id.StartsWith($"brakes.drive-heat[condition={load}]", StringComparison.Ordinal)).Max(f => f.Finding.Verdict);
            Assert.Contains(Words.Of(worst), Text(rows["Long hill and stops"].Children[column]), StringComparison.Ordinal);
        }
        Assert.Equal("2", rows["Pedal left"].Children[1].GetAttribute("colspan"));
        Assert.Equal(Headline.All.Select(h => h.Title).Where(rows.ContainsKey), rows.Keys);
    }

    [Fact]
    public void Every_headline_asks_a_calculation_that_is_there_for_what_it_gives()
    {
        foreach (var headline in Headline.All)
        {
            var calculation = Assert.Single(CalculationList.All, c => c.Id == headline.Calculation);
            Assert.All(headline.Figures, f => Assert.True(calculation.OutputIndex(f.Output) >= 0, f.Output));
            Assert.All(headline.Checks, k => Assert.Contains(calculation.About.Checks, c => c.Id == k));
            Assert.Contains(BrakeArea.Find(headline.Part)!.Calculations, c => c == headline.Calculation);
        }
    }

    [Fact]
    public void What_the_same_foot_makes_with_something_lost_stands_side_by_side()
    {
        var rows = Page("failures").FindAll(".bars tbody tr");
        Assert.Equal(8, rows.Count);
        string[] expected = [.. new[] { "empty", "touring" }.SelectMany(c => (double[])[Output($"brakes.stop[condition={c}]", "atMost"), .. new[] { "boosterDead", "frontLost", "rearLost" }.Select(o => Output($"brakes.failure[condition={c}]", o) / 9.80665)]).Select(z => $"{z:0.00} g")];
        Assert.Equal(expected, rows.Select(r => Text(r.QuerySelector("td.figure")!).Split(" was")[0]));
        Assert.All(rows, r => Assert.NotNull(r.QuerySelector(".verdict")));
    }

    [Fact]
    public void The_balance_is_drawn_with_every_loading_in_one_picture_and_can_be_saved()
    {
        var page = Page("balance", "?in=discs&against=nothing");
        var pictures = page.FindAll("figure.curves");
        Assert.Contains("over front braking force", Text(pictures[0].QuerySelector("figcaption")!), StringComparison.Ordinal);
        Assert.All((string[])["ideal, empty", "ideal, touring", "0.4 g", "first lock at 0.7, touring"], n => Assert.Contains(n, pictures[0].InnerHtml, StringComparison.Ordinal));
        Assert.All(pictures[0].QuerySelectorAll(".files a"), a => Assert.Contains("api/builds/packhorse/curves/brakes.distribution.", a.GetAttribute("href")!, StringComparison.Ordinal));
        Assert.Contains("brakes.distribution%5Bcondition%3Dempty%5D", Page("balance", "?in=discs&against=nothing&load=empty").FindAll("figure.curves")[0].InnerHtml, StringComparison.Ordinal);
    }

    [Fact]
    public void Wheels_tell_the_torques_of_the_sheet()
    {
        var wheels = Page("wheels").FindAll(".bars tbody tr");
        Assert.Equal(4, wheels.Count);
        Assert.StartsWith($"{Number("wheel.front.left.brake.torque") / 1.3558179:N0} lbf", Text(wheels[0].QuerySelector("td.figure")!), StringComparison.Ordinal);
        Assert.Contains("disc", Text(wheels[0]), StringComparison.Ordinal);
        Assert.Contains("drum, leading-trailing", Text(wheels[3]), StringComparison.Ordinal);
    }

    [Fact]
    public void What_belongs_to_the_other_kind_of_brake_is_not_missed()
    {
        Assert.DoesNotContain("pads sweep", Page("wheels").Markup, StringComparison.Ordinal);
        Assert.DoesNotContain("bearing of the bar", Page("balance").Markup, StringComparison.Ordinal);
    }

    [Fact]
    public void The_gauge_sheet_has_the_pressures_of_the_gauge_part_and_room_to_write()
    {
        Nav.NavigateTo("builds/packhorse/brakes/gauge-sheet?in=discs");
        var sheet = Render<GaugeSheetPage>(p => p.Add(d => d.Id, "packhorse").AddCascadingValue(Ana));
        Assert.Equal(Figures(Page("gauge")), Figures(sheet));
        Assert.Equal(4, sheet.FindAll(".gauge-rows tbody tr")[0].QuerySelectorAll(".blank").Length);
        Assert.Contains("compressed air", Text(sheet.Find(".caution-line")), StringComparison.Ordinal);
        static List<string> Figures(IRenderedComponent<Microsoft.AspNetCore.Components.IComponent> page) => [.. page.FindAll(".gauge-rows td.figure").Select(Text)];
    }

    [Fact]
    public void The_hills_drawn_are_those_of_the_sheet() =>
        Assert.Equal(new[] { "up", "down" }.Select(w => $"{100 * Number($"brakes.touring.parking-grade-{w}"):0} %"), Page("parking").FindAll(".tip b").Select(Text));

    [Theory, MemberData(nameof(Parts))]
    public void Metric_readers_get_metric_figures_in_tables(string part) =>
        Assert.DoesNotMatch(@"\d (psi|lbf|ft)\b", string.Join(' ', Page(part, measure: MeasureSystem.Metric).FindAll("table.results td, .glance td, .bars td, .gauge-rows td").Select(Text)));
}
