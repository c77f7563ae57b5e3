using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using System.Text;

namespace Crossmember.Documents.Tests.Curves;

/// <summary>Lines that only help to read the others, and points that are marked.</summary>
public sealed class GuideAndSpotTests
{
    private static PlottedCurve Curve(string name, double[] x, double[] y) => new(name, "front", "1", x, "rear", "1", y);

    private static CurveChart Chart(bool compared = false)
    {
        PlottedCurve[] curves = [Curve("ideal", [0, 0.4, 0.8], [0, 0.2, 0.1]), Curve("0.4 g", [0, 0.4], [0.4, 0]) with { IsGuide = true }, Curve("first lock", [0.5], [0.15])];
        return CurveChart.Of("Shared", new("now", curves), compared ? new("then", curves) : null, MeasureSystem.UsCustomary).Single();
    }

    [Fact]
    public void A_guide_is_named_at_its_end_and_stands_in_no_key_and_no_table()
    {
        var chart = Chart();
        Assert.DoesNotContain("0.4 g", CurveTable.Of(chart).Curves);
        Assert.DoesNotContain("0.4 g", CurveWords.Describe(chart), StringComparison.Ordinal);
        var drawn = CurveSvg.ForPage(chart, PictureSize.Wide(chart));
        Assert.Single(System.Text.RegularExpressions.Regex.Matches(drawn, "0.4 g</text>"));
        Assert.Equal(2, System.Text.RegularExpressions.Regex.Count(drawn, "ideal</text>"));
    }

    [Fact]
    public void A_point_is_told_by_where_it_is()
    {
        var chart = Chart();
        Assert.Equal(["ideal"], CurveTable.Of(chart).Curves);
        Assert.Contains("first lock: 0.5, 0.15.", CurveWords.Describe(chart), StringComparison.Ordinal);
        Assert.Contains("first lock,now,0.5,0.15", Encoding.UTF8.GetString(CurveCsv.Write(chart)), StringComparison.Ordinal);
    }

    [Fact]
    public void Compared_with_another_side_a_guide_stands_once_and_a_point_twice()
    {
        var chart = Chart(compared: true);
        Assert.Single(chart.Lines, l => l.IsGuide);
        Assert.Equal(2, chart.Spots.Count());
        Assert.NotEmpty(CurvePng.Write(chart, PictureSize.Narrow(chart)));
    }
}
