using Bunit;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Driveline;
using Crossmember.Web.Features.Layout;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.DependencyInjection;

namespace Crossmember.Web.Tests.Driveline;

/// <summary>The page over a store of its own, without a browser.</summary>
public sealed class DrivelinePageTests : BunitContext
{
    private readonly DrivelineShop _shop = new();

    public DrivelinePageTests()
    {
        JSInterop.Mode = JSRuntimeMode.Loose;
        Services.AddSingleton(_shop.Desk);
        SetRendererInfo(new RendererInfo("Server", true));
    }

    protected override void Dispose(bool disposing)
    {
        base.Dispose(disposing);
        _shop.Dispose();
    }

    private NavigationManager Nav => Services.GetRequiredService<NavigationManager>();

    private IRenderedComponent<DrivelinePage> Page(string query = "", MeasureSystem measure = MeasureSystem.UsCustomary, string id = "bracken")
    {
        Nav.NavigateTo($"builds/{id}/driveline{query}");
        return Render<DrivelinePage>(p => p.Add(d => d.Id, id).AddCascadingValue(new Viewer("Ana", "here", measure, true, true)));
    }

    private static string Words(AngleSharp.Dom.IElement e) => string.Join(' ', e.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));

    [Fact]
    public void It_compares_the_usual_what_if_with_what_was_found()
    {
        var page = Page();
        Assert.Equal("working", page.Find("#what-if option[selected]").GetAttribute("value"));
        Assert.Equal("as-found", page.Find("#against option[selected]").GetAttribute("value"));
        Assert.Contains(page.FindAll("figcaption"), c => Words(c) == "Engine speed over road speed, high range: solid working, dashed as found");
    }

    /// <summary>6.4 x 4.1 = 26.24; 3200 rpm on 33 in at 336.135 rpm in / mph: 11.97 mph, and on 28.88 in 10.5 mph; by hand.</summary>
    [Theory]
    [InlineData(MeasureSystem.UsCustomary, "12 mph was 10.5 mph")]
    [InlineData(MeasureSystem.Metric, "19.3 km/h was 16.9 km/h")]
    public void The_gearing_table_tells_every_gear_of_both_ranges(MeasureSystem measure, string atRedline)
    {
        var page = Page(measure: measure);
        Assert.Equal(["high range", "low range"], page.FindAll(".gearing .range").Select(Words));
        var rows = page.FindAll(".gearing tbody tr:not(.range)");
        Assert.Equal(8, rows.Count);
        Assert.Equal(["1", "26.24", atRedline], rows[0].Children.Take(3).Select(Words));
    }

    [Fact]
    public void The_range_can_be_switched()
    {
        var page = Page();
        Assert.Equal("true", page.Find(".switch button").GetAttribute("aria-pressed"));
        page.FindAll(".switch button")[1].Click();
        Assert.EndsWith("builds/bracken/driveline?in=working&against=as-found&range=low", Nav.Uri, StringComparison.Ordinal);
        page.WaitForAssertion(() => Assert.Contains("low range", page.Find("figcaption").TextContent, StringComparison.Ordinal));
        Assert.Equal(["false", "true"], page.FindAll(".switch button").Select(b => b.GetAttribute("aria-pressed")));
    }

    [Fact]
    public void Compared_with_nothing_no_line_is_dashed()
    {
        var page = Page("?against=nothing");
        Assert.Empty(page.FindAll(".was"));
        Assert.DoesNotContain("stroke-dasharray", page.Markup, StringComparison.Ordinal);
        Assert.All(page.FindAll(".files a"), a => Assert.DoesNotContain("against", a.GetAttribute("href")!, StringComparison.Ordinal));
    }

    [Fact]
    public void An_axle_ratio_leads_to_its_item_on_Decisions()
    {
        var row = Page().FindAll("[aria-label='Axle ratios to choose from'] tbody tr")[0];
        Assert.Equal("Final drives: 4.88 gears", Words(row.QuerySelector("a")!));
        Assert.Equal("builds/bracken/decisions?item=final-drives&in=working", row.QuerySelector("a")!.GetAttribute("href"));
        Assert.Equal(["4.88", "+4.6 %"], row.Children.Skip(1).Select(Words));
    }

    [Fact]
    public void Checks_bear_a_word_and_a_shape_and_what_is_missing_how_to_get_it()
    {
        var page = Page();
        Assert.NotEmpty(page.FindAll(".checks .verdict svg"));
        Assert.Contains(page.FindAll(".missing li"), l => Words(l).StartsWith("warm idle speed: read a tachometer", StringComparison.Ordinal));
    }

    [Fact]
    public void What_somebody_decides_elsewhere_shows_at_once()
    {
        var page = Page();
        var view = Features.BuildView.Of(_shop.Desk, "bracken")!;
        _shop.Desk.Append([_shop.Desk.Deciding.Choose("bracken", "working", "final-drives", "short", view.Seen("scenarios/working/choices/final-drives"), "Ben", "there")], Builds.Journal.Arrival.Online);
        page.WaitForAssertion(() => Assert.StartsWith("31.23", Words(page.FindAll(".gearing tbody tr:not(.range)")[0].Children[1]), StringComparison.Ordinal)); // 6.4 x 4.88
    }

    [Fact]
    public void A_build_that_is_not_there_is_said_to_be_so() => Assert.Contains("There is no build “nobody”", Page(id: "nobody").Find("h1").TextContent, StringComparison.Ordinal);

    [Fact]
    public void A_caution_stands_where_the_work_can_hurt_someone() => Assert.Contains("qualified", Page().Find(".caution-line").TextContent, StringComparison.Ordinal);
}
