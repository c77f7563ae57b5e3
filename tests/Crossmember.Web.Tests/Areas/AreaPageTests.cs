using AngleSharp.Dom;
using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Areas;

namespace Crossmember.Web.Tests.Areas;

/// <summary>The parts of the vehicle over the demo's truck.</summary>
public sealed class AreaPageTests() : ShopPages(Demo())
{
    private static string Demo()
    {
        using var stream = typeof(AreaPageTests).Assembly.GetManifestResourceStream("demo/packhorse.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    public static TheoryData<string> Parts => [.. VehicleArea.All.Select(a => a.Path).Where(p => p.Length > 0)];

    private Sheet Sheet(string scenario = "working") => BuildView.Of(Desk, "packhorse")!.Sheet(scenario);

    private IRenderedComponent<AreaPage> Page(string part, string query = "?in=working&against=as-found&load=touring", MeasureSystem measure = MeasureSystem.UsCustomary, string id = "packhorse")
    {
        Nav.NavigateTo($"builds/{id}/vehicle/{part}{query}");
        return Render<AreaPage>(p => p.Add(d => d.Id, id).Add(d => d.Part, part).AddCascadingValue(Ana with { Measure = measure }));
    }

    private static string Text(IElement e) => string.Join(' ', e.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [Theory, MemberData(nameof(Parts))]
    public void Every_check_of_the_part_in_this_loading_stands_on_it_once(string part)
    {
        var area = VehicleArea.Find(part)!;
        var page = Page(part);
        var expected = Sheet().Findings().Where(f => area.Prefixes.Any(p => f.Id.StartsWith(p, StringComparison.Ordinal)) && !f.Id.Contains("condition=empty", StringComparison.Ordinal)).Select(f => f.Id).Order(StringComparer.Ordinal).ToList();
        Assert.NotEmpty(expected);
        Assert.Equal(expected, page.FindAll(".checks li").SelectMany(l => l.GetAttribute("title")!.Split(", ")).Order(StringComparer.Ordinal));
        Assert.Equal(page.FindAll(".checks li").Count(l => l.QuerySelector(".pass") is not null), page.FindAll(".good-ones .checks li").Count);
    }

    [Theory, MemberData(nameof(Parts))]
    public void Cautions_and_the_way_to_the_other_parts_stand_on_every_one(string part)
    {
        var page = Page(part);
        Assert.Contains("Caution", Text(page.Find(".caution-line")), StringComparison.Ordinal);
        Assert.Equal(VehicleArea.All.Count, page.FindAll(".areas a").Count);
        Assert.Equal(VehicleArea.Find(part)!.Title, Text(page.Find(".areas a[aria-current=page]")));
    }

    [Theory]
    [InlineData("touring")]
    [InlineData("empty")]
    public void The_tip_angles_drawn_are_those_of_the_sheet(string load)
    {
        var page = Page("tipping", $"?in=working&against=nothing&load={load}");
        var told = page.FindAll(".tip b").Select(Text).ToList();
        var expected = new[] { "side-slope", "facing-up", "facing-down" }.Select(k => $"{Sheet().Key($"stability.{load}.{k}")!.Value.Value.Number * 180 / Math.PI:0.0}°");
        Assert.Equal(expected, told);
    }

    [Fact]
    public void Figures_are_those_of_the_sheet_and_of_the_side_compared_with()
    {
        var cells = Page("springs").FindAll("table.results").Select(t => (Label: t.ParentElement!.GetAttribute("aria-label")!, Table: t)).First(t => t.Label.StartsWith("Ride height", StringComparison.Ordinal)).Table.QuerySelectorAll("tbody tr");
        var row = cells.First(r => Text(r.Children[0]).Contains("over", StringComparison.Ordinal));
        double Inches(string scenario, string axle) => Sheet(scenario).Key($"axle.{axle}.touring.ride-height")!.Value.Value.Number / 0.0254;
        double[] Read(int column) => [.. System.Text.RegularExpressions.Regex.Matches(Text(row.Children[column]), @"(?<![±\d.] ?)\d+\.?\d*(?= in)").Select(m => double.Parse(m.Value, System.Globalization.CultureInfo.InvariantCulture))];
        Assert.Equal(Inches("working", "front"), Read(1)[0], 0.006);
        Assert.Equal(Inches("as-found", "front"), Read(1)[1], 0.006);
        Assert.Equal(Inches("working", "rear"), Read(2)[0], 0.006);
    }

    [Fact]
    public void Every_loading_at_once_shows_a_column_for_each()
    {
        var one = Page("tipping").FindAll("table.results thead th").Count;
        var all = Page("tipping", "?in=working&load=every").FindAll("table.results thead th");
        Assert.True(all.Count > one);
        Assert.Contains(all, h => Text(h) == "empty");
        Assert.Contains(all, h => Text(h) == "touring");
    }

    [Fact]
    public void Curves_are_drawn_where_a_calculation_draws_them()
    {
        var page = Page("steering");
        Assert.NotEmpty(page.FindAll("figure.curves svg"));
        Assert.All(page.FindAll("figure.curves .files a"), a => Assert.Contains("api/builds/packhorse/curves/steering.", a.GetAttribute("href")!, StringComparison.Ordinal));
    }

    [Fact]
    public void An_unknown_part_or_build_says_so()
    {
        Assert.Contains("no part", Page("wings").Find("h1").TextContent, StringComparison.Ordinal);
        Assert.Contains("no build", Page("springs", id: "nobody").Find("h1").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void Metric_readers_get_metric_figures() => Assert.DoesNotContain(" lb", Text(Page("tipping", measure: MeasureSystem.Metric).Find(".results-all")), StringComparison.Ordinal);
}
