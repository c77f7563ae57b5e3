using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Areas;

namespace Crossmember.Web.Tests.Areas;

public sealed class FigureTextTests
{
    private static readonly OutputSpec s_height = CalculationList.Find("mass.center-of-gravity")!.OutputSpecs.Single(o => o.Name == "height");

    /// <summary>0.8723 m are 34.34 in; a centimetre and a half are 0.59 in: two figures of the doubt, and as many decimals of the value (JCGM 100:2008, 7.2.6).</summary>
    [Theory]
    [InlineData(0.8723, null, MeasureSystem.UsCustomary, "34.34 in", null)]
    [InlineData(0.8723, 0.015, MeasureSystem.UsCustomary, "34.34 in", "± 0.59")]
    [InlineData(0.8723, 0.015, MeasureSystem.Metric, "872 mm", "± 15")]
    [InlineData(0.8723, 1e-7, MeasureSystem.Metric, "872.3 mm", null)]
    public void A_value_is_told_as_far_as_it_is_known(double si, double? spread, MeasureSystem measure, string value, string? doubt) =>
        Assert.Equal((value, doubt), FigureText.Of(s_height, Value.Of(si), spread, measure));

    [Fact]
    public void What_is_not_known_is_not_told() => Assert.Equal(("don't know", null), FigureText.Of(s_height, default, null, MeasureSystem.Metric));
}
