using System.Globalization;
using Bunit;
using Crossmember.Builds.Files;
using Crossmember.Builds.Ripples;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Decisions;

namespace Crossmember.Web.Tests.Decisions;

public sealed class RipplePanelTests : BunitContext
{
    private IRenderedComponent<RipplePanel> Panel(IReadOnlyList<RippleRow> rows, MeasureSystem measure = MeasureSystem.UsCustomary, Func<string, string?>? sentence = null) => Render<RipplePanel>(p => p
        .Add(x => x.Rows, rows).Add(x => x.Plan, Bracken.Plan).Add(x => x.Build, Bracken.Build).Add(x => x.Measure, measure).Add(x => x.Sentence, sentence ?? (_ => null)));

    [Fact]
    public void Verdicts_that_change_stand_first_with_old_and_new_in_words()
    {
        var panel = Panel(Bracken.KnockOn(("final-drives", "short")).Rows, sentence: id => id == "driveline.cruise/redline" ? "It screams." : null);
        var first = panel.Find(".ripple > section");
        Assert.Equal("flips", first.ClassName);
        var flip = first.QuerySelector("li[data-ids='driveline.cruise/redline']")!;
        Assert.Equal(["good", "no"], flip.QuerySelectorAll(".verdict").Select(v => v.TextContent.Trim()));
        Assert.Contains("It screams.", flip.TextContent, StringComparison.Ordinal);
        Assert.Contains("final drive ratio of the axle", flip.QuerySelector(".because")!.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_row_of_the_library_is_shown_exactly_once()
    {
        var rows = Bracken.KnockOn(("tires", "at33"), ("final-drives", "tall")).Rows;
        var shown = Panel(rows).FindAll("[data-ids]").SelectMany(e => e.GetAttribute("data-ids")!.Split(' ')).Order(StringComparer.Ordinal);
        // Ids of elements may hold spaces; those of this build do not.
        Assert.Equal(rows.Select(r => r.Id).Order(StringComparer.Ordinal), shown);
    }

    [Fact]
    public void Numbers_carry_the_value_that_the_library_writes()
    {
        var ripple = Bracken.KnockOn(("final-drives", "tall"));
        var written = RippleJson.Of(ripple)["rows"]!.AsArray().Single(r => r!["id"]!.GetValue<string>() == "driveline.cruise.engineSpeed")!;
        var row = Panel(ripple.Rows).Find("tr[data-ids='driveline.cruise.engineSpeed']");
        double Number(string side) => double.Parse(row.QuerySelector($".{side} data")!.GetAttribute("value")!, CultureInfo.InvariantCulture);
        Assert.Equal(written["from"]!["value"]!.GetValue<double>(), Number("from"));
        Assert.Equal(written["to"]!["value"]!.GetValue<double>(), Number("to"));
        // By hand: n = 60 v G / (pi D), v = 65 mph, D = 15 in + 2 x 0.75 x 235 mm = 733.5 mm; ratios 4.10 and 3.73.
        Assert.Equal("3102 rpm", row.QuerySelector(".from")!.TextContent.Trim());
        Assert.Equal("2822.1 rpm", row.QuerySelector(".to")!.TextContent.Trim());
    }

    [Fact]
    public void Places_that_say_the_same_share_a_line()
    {
        var line = Panel(Bracken.KnockOn(("tires", "at33")).Rows).FindAll("tr[data-ids]").Single(r => r.GetAttribute("data-ids")!.Contains("wheel.front.left.tire.diameter", StringComparison.Ordinal));
        Assert.Equal(4, line.GetAttribute("data-ids")!.Split(' ').Length);
        Assert.Equal("front left; front right; rear left; rear right", line.QuerySelector(".where")!.TextContent);
    }

    [Fact]
    public void Kinds_are_told_apart_and_long_families_are_folded()
    {
        var panel = Panel(Bracken.KnockOn(("final-drives", "tall")).Rows);
        var headings = panel.FindAll(".ripple h3").Select(h => h.TextContent).ToList();
        Assert.Equal(headings.Distinct(), headings);
        Assert.Superset(new HashSet<string> { "Checks", "Values", "Results", "Cost", "Hours", "Originality" }, headings.ToHashSet());
        var few = Panel([.. Bracken.KnockOn(("final-drives", "tall")).Rows.Where(r => r.Kind != RowKind.Result || r.Id.StartsWith("driveline.engine-speed", StringComparison.Ordinal))]);
        Assert.All(few.FindAll("details.kind"), k => Assert.True(k.HasAttribute("open"))); // few lines: nothing is hidden
        // Four gears in two ranges.
        Assert.Contains(panel.FindAll("details summary"), s => s.TextContent.Contains("Engine speed", StringComparison.Ordinal) && s.TextContent.Contains("8 rows", StringComparison.Ordinal));
    }

    [Fact]
    public void Metric_readers_see_metric_numbers_of_the_same_value()
    {
        var ripple = Bracken.KnockOn(("tires", "at33"));
        string Cell(MeasureSystem m) => Panel(ripple.Rows, m).Find("tr[data-ids^='axle.front.tire-diameter'] .to").TextContent.Trim();
        Assert.Equal("33 in", Cell(MeasureSystem.UsCustomary));
        Assert.Equal("838.2 mm", Cell(MeasureSystem.Metric));
    }

    [Fact]
    public void Two_sides_that_agree_say_so() => Assert.Contains("Nothing changes", Panel([]).Markup, StringComparison.Ordinal);
}
