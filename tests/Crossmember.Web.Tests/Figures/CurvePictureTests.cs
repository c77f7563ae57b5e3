using Bunit;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Figures;

namespace Crossmember.Web.Tests.Figures;

public sealed class CurvePictureTests : BunitContext
{
    private static readonly PlottedCurve s_direct = new("gear 4", "road speed", "mph", [0, 80], "engine speed", "rpm", [0, 3200]); // 40 rpm for each mph

    private static readonly PlottedCurve s_deeper = s_direct with { X = [0, 64] }; // 50 rpm for each mph

    private static readonly CurveFiles s_files = new("bracken", "driveline.speed-curves[range=high]", "working", "as-found", MeasureSystem.UsCustomary);

    private static CurveChart Chart(bool compared, MeasureSystem measure = MeasureSystem.UsCustomary) =>
        CurveChart.Of("Engine speed over road speed, high range", new("Working", [s_direct]), compared ? new("as found", [s_deeper]) : null, measure)[0];

    private IRenderedComponent<CurvePicture> Picture(bool compared = true) => Render<CurvePicture>(p => p.Add(c => c.Chart, Chart(compared)).Add(c => c.Files, s_files));

    /// <summary>WAI-ARIA 1.2, role img, and WCAG 2.2, success criterion 1.1.1 Non-text Content.</summary>
    [Fact]
    public void Either_drawing_is_an_image_with_an_equivalent_in_words()
    {
        var drawings = Picture().FindAll("svg[role=img]");
        Assert.Equal(2, drawings.Count); // wide and narrow; the style sheet shows one
        Assert.All(drawings, d => Assert.Contains("gear 4, Working: from 0 mph to 80 mph, highest 3,200 rpm at 80 mph.", d.GetAttribute("aria-label")!, StringComparison.Ordinal));
    }

    [Fact]
    public void The_table_says_what_both_sides_say()
    {
        var picture = Picture();
        Assert.Equal(["road speed (mph)", "gear 4 rpm"], picture.FindAll("thead th").Select(h => h.TextContent));
        var rows = picture.FindAll("tbody tr").ToDictionary(r => r.Children[0].TextContent, r => r.Children[1].TextContent);
        Assert.Equal("2,400 was 3,000", rows["60"]);
        Assert.Equal("2,800 was -", rows["70"]); // the deeper gear ends at 64 mph
        Assert.Equal("3,200 at 80 was 3,200 at 64", rows["highest"]);
    }

    [Fact]
    public void Alone_nothing_was()
    {
        var picture = Picture(compared: false);
        Assert.Empty(picture.FindAll(".was"));
        Assert.DoesNotContain("dashed", picture.Find("figcaption").TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void It_can_be_saved_as_drawing_picture_and_table()
    {
        var links = Picture().FindAll(".files a");
        Assert.Equal(["SVG", "PNG", "CSV"], links.Select(l => l.TextContent));
        Assert.Equal("api/builds/bracken/curves/driveline.speed-curves%5Brange%3Dhigh%5D.svg?in=working&against=as-found&measure=us", links[0].GetAttribute("href"));
        Assert.All(links, l => Assert.True(l.HasAttribute("download")));
    }

    [Fact]
    public void Another_chart_is_drawn_and_the_same_is_kept()
    {
        var picture = Picture(compared: false);
        var before = picture.Find("svg").OuterHtml;
        picture.Render(p => p.Add(c => c.Chart, Chart(false, MeasureSystem.Metric)));
        Assert.NotEqual(before, picture.Find("svg").OuterHtml);
        Assert.Contains("road speed (km/h)", picture.Find("thead").TextContent, StringComparison.Ordinal);
    }
}
