using Crossmember.Builds.Places;
using Crossmember.Web.Features.Areas;

namespace Crossmember.Web.Tests.Areas;

/// <summary>At the slope where it tips, the weight is drawn straight over the lower wheels: the picture shows what the number says.</summary>
public sealed class TipDrawingTests
{
    private static readonly VehicleSize s_size = new(new(3.2, true), new(0.8, true), new(1.45, true), new(0.5, true));

    [Theory]
    [InlineData(0.85, 0)]
    [InlineData(0.7, 0.1)]
    [InlineData(1.1, 0.2)]
    public void Across_a_slope_the_weight_stands_over_the_lower_wheels(double h, double perG)
    {
        // The root of (T/2 - s sin th) cos th = h sin th, by walking.
        var th = 0.0;
        while (((s_size.Track.Meters / 2) - (perG * Math.Sin(th))) * Math.Cos(th) > h * Math.Sin(th)) th += 1e-5;
        var drawn = TipDrawing.Across(s_size, th, 0.1, perG * Math.Sin(th), h);
        Assert.Equal(drawn.Foot.X, drawn.Weight.X, 0.15);
        Assert.True(drawn.Weight.Y < drawn.Foot.Y);
    }

    [Theory]
    [InlineData(1.4, 0.8)]
    [InlineData(1.9, 1.0)]
    public void Along_a_slope_as_well_both_ways(double arm, double h)
    {
        foreach (var facingUp in new[] { true, false })
        {
            var drawn = TipDrawing.Along(s_size, Math.Atan(arm / h), arm, h, facingUp);
            Assert.Equal(drawn.Foot.X, drawn.Weight.X, 0.15);
        }
    }

    [Fact]
    public void On_a_lesser_slope_the_weight_stands_uphill_of_them()
    {
        var drawn = TipDrawing.Across(s_size, 0.3, 0, 0, 0.8);
        Assert.True(drawn.Weight.X < drawn.Foot.X - 1);
    }
}
