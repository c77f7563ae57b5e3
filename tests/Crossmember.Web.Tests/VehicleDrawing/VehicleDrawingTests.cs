using Bunit;
using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features;
using Crossmember.Web.Features.VehicleDrawing;
using Crossmember.Web.Tests.Api;
using Crossmember.Web.Tests.MasterSheet;
using Drawing = Crossmember.Web.Features.VehicleDrawing.VehicleDrawing;

namespace Crossmember.Web.Tests.VehicleDrawing;

/// <summary>The vehicle with its items marked, as it stands on a page.</summary>
public sealed class VehicleDrawingTests : BunitContext
{
    private static readonly Sheet s_sheet = DemoShop.Sheet("packhorse", "working");

    private IRenderedComponent<Drawing> Page(string? selected = null, bool noList = false) => Render<Drawing>(p => p
        .Add(d => d.Sheet, s_sheet).Add(d => d.Address, i => $"at/{i}").Add(d => d.Here, "here").Add(d => d.Selected, selected).Add(d => d.NoList, noList));

    [Fact]
    public void The_list_beside_names_every_item_with_its_verdict_as_a_word()
    {
        var page = Page();
        var vehicle = DrawnVehicle.Of(s_sheet);
        Assert.Equal(vehicle.Items.Select(i => i.Drawn.Title), page.FindAll(".placed-list a").Select(a => a.TextContent));
        Assert.Equal(vehicle.Items.Count(i => i.Drawn.Verdict is not null), page.FindAll(".placed-list .verdict").Count);
        Assert.Equal(vehicle.Unplaced.Count, page.FindAll(".unplaced li").Count);
    }

    [Theory]
    [InlineData(".wide")]
    [InlineData(".narrow")]
    public void Each_mark_leads_to_its_item_or_to_its_row_in_the_list(string part)
    {
        var page = Page();
        var rows = page.FindAll(".placed-list li").Select(l => "here#" + l.Id).ToHashSet();
        var items = DrawnVehicle.Of(s_sheet).Items.Select(i => "at/" + i.Drawn.Id).ToHashSet();
        Assert.All(page.FindAll($"{part} svg a"), a => Assert.True(rows.Contains(a.GetAttribute("href")!) || items.Contains(a.GetAttribute("href")!), a.GetAttribute("href")));
    }

    [Fact]
    public void Without_its_list_no_mark_leads_to_a_row() => Assert.DoesNotContain("#place", Page("engine", noList: true).Markup, StringComparison.Ordinal);

    /// <summary>The rear axle carries more than its tag says, and the worst of its checks counts.</summary>
    [Fact]
    public void The_worst_finding_colours_an_item()
    {
        var worst = ItemVerdicts.Of(s_sheet);
        Assert.Equal(Verdict.Fail, worst["axle.rear"]);
        Assert.All(DrawnVehicle.Of(s_sheet).Items, i => Assert.Equal(worst.TryGetValue(i.Drawn.Id, out var v) ? v : null, i.Drawn.Verdict));
    }

    [Fact]
    public void An_item_at_which_something_is_missing_does_not_know() => Assert.Equal(Verdict.Unknown, ItemVerdicts.Of(DemoShop.Sheet("steading", "working"))["engine"]);

    [Theory]
    [InlineData(MeasureSystem.UsCustomary, "wheelbase 10 ft 6 in")]
    [InlineData(MeasureSystem.Metric, "wheelbase 3200 mm")]
    public void The_caption_says_what_is_known_in_the_readers_measures(MeasureSystem measure, string said) =>
        Assert.Contains(said, DrawnVehicle.Of(s_sheet).Caption(measure), StringComparison.Ordinal);

    [Fact]
    public void The_caption_says_what_is_only_assumed() =>
        Assert.Contains("assumed for the drawing: frame over the ground", DrawnVehicle.Of(DemoShop.Sheet("steading", "working")).Caption(MeasureSystem.UsCustomary), StringComparison.Ordinal);

    [Fact]
    public async Task The_file_is_a_drawing_by_itself_and_an_unknown_what_if_is_answered()
    {
        await using var desk = await new Desk().WithBracken();
        var (status, body) = await desk.Get("/api/builds/bracken/drawing.svg?in=working");
        Assert.Equal(200, status);
        Assert.StartsWith("<svg", body.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal(400, (await desk.Get("/api/builds/bracken/drawing.svg?in=nowhere")).Status);
        Assert.Equal(404, (await desk.Get("/api/builds/nobody/drawing.svg")).Status);
    }
}
