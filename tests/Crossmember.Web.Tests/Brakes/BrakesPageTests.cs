using AngleSharp.Dom;
using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Brakes;

namespace Crossmember.Web.Tests.Brakes;

/// <summary>The brakes of the demo's truck, part by part.</summary>
public sealed class BrakesPageTests() : ShopPages(Demo())
{
    private static string Demo()
    {
        using var stream = typeof(BrakesPageTests).Assembly.GetManifestResourceStream("demo/packhorse.json")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }

    public static TheoryData<string> Parts => [.. BrakeArea.All.Select(a => a.Path)];

    private Sheet Sheet(string scenario = "working") => BuildView.Of(Desk, "packhorse")!.Sheet(scenario);

    private IRenderedComponent<BrakesPage> Page(string part, string query = "?in=working&against=as-found", MeasureSystem measure = MeasureSystem.UsCustomary, string id = "packhorse")
    {
        Nav.NavigateTo($"builds/{id}/brakes/{part}{query}");
        return Render<BrakesPage>(p => p.Add(d => d.Id, id).Add(d => d.Part, part.Length == 0 ? null : part).AddCascadingValue(Ana with { Measure = measure }));
    }

    private static string Text(IElement e) => string.Join(' ', e.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void Every_calculation_of_the_brakes_belongs_to_one_part()
    {
        var listed = BrakeArea.All.Where(a => a.Path.Length > 0).SelectMany(a => a.Calculations).Order(StringComparer.Ordinal);
        Assert.Equal(CalculationList.All.Select(c => c.Id).Where(c => c.StartsWith("brakes.", StringComparison.Ordinal)).Order(StringComparer.Ordinal), listed);
        Assert.All(BrakeArea.All, a => Assert.Subset(a.Calculations.Append("brakes.").ToHashSet(), a.Drawn.ToHashSet()));
    }

    [Fact]
    public void Every_check_of_the_brakes_stands_on_the_overview_once()
    {
        var expected = Sheet().Findings().Where(f => f.Id.StartsWith("brakes.", StringComparison.Ordinal)).Select(f => f.Id).Order(StringComparer.Ordinal);
        Assert.Equal(expected, Page("").FindAll(".checks li").SelectMany(l => l.GetAttribute("title")!.Split(", ")).Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Parts))]
    public void The_caution_and_the_way_to_every_other_part_stand_on_each(string part)
    {
        var page = Page(part);
        Assert.Contains("Brakes can kill", Text(page.Find(".caution-line")), StringComparison.Ordinal);
        Assert.Equal(BrakeArea.All.Count, page.FindAll(".areas a").Count);
        Assert.Equal(BrakeArea.Find(part)!.Title, Text(page.Find(".areas a[aria-current=page]")));
        Assert.All(page.FindAll(".areas a"), a => Assert.Contains("in=working&against=as-found", a.GetAttribute("href")!, StringComparison.Ordinal));
    }

    [Fact]
    public void What_it_rests_on_stands_with_where_it_is_from_and_a_way_to_note_it()
    {
        var page = Page("");
        var grip = page.FindAll(".rests-on tr").Single(r => r.QuerySelector("th[title='duty.grip']") is not null);
        Assert.Contains("usual value", Text(grip), StringComparison.Ordinal);
        Assert.Matches("sheet\\?item=.*&in=working&key=duty.grip#note$", grip.QuerySelector("a.button")!.GetAttribute("href")!);
    }

    [Fact]
    public void An_unknown_part_or_build_says_so()
    {
        Assert.Contains("no part", Page("wings").Find("h1").TextContent, StringComparison.Ordinal);
        Assert.Contains("no build", Page("heat", id: "nobody").Find("h1").TextContent, StringComparison.Ordinal);
    }
}
