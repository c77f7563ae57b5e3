using Crossmember.Documents.Curves;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Tests.Curves;

public sealed class CurveChartTests
{
    /// <summary>International mile of 1609.344 m and pound-force of 0.45359237 kg x 9.80665 m/s2 (NIST SP 811, 2008, appendix B.8).</summary>
    [Fact]
    public void Axes_are_told_in_the_readers_units()
    {
        var us = Assert.Single(CurveChart.Of("Pull", new("now", [Gears.Pull]), null, MeasureSystem.UsCustomary));
        Assert.Equal(("road speed (mph)", "force at the wheels (lbf)"), (us.X.Title, us.Y.Title));
        Assert.Equal(Gears.Pull.Y, us.Lines[0].Y);
        var metric = Assert.Single(CurveChart.Of("Pull", new("now", [Gears.Pull]), null, MeasureSystem.Metric));
        Assert.Equal(("road speed (km/h)", "force at the wheels (N)"), (metric.X.Title, metric.Y.Title));
        Assert.Equal(10 * 1.609344, metric.Lines[0].X[1], 9);
        Assert.Equal(4500 * 0.45359237 * 9.80665, metric.Lines[0].Y[1], 6);
    }

    [Fact]
    public void A_share_keeps_its_percent_and_a_bare_number_has_no_unit()
    {
        var chart = Assert.Single(CurveChart.Of("Slip", new("now", [new("slip", "slip", "%", [0, 10], "grip", "1", [0, 0.7])]), null, MeasureSystem.Metric));
        Assert.Equal(("slip (%)", "grip"), (chart.X.Title, chart.Y.Title));
        Assert.Equal([0, 10], chart.Lines[0].X);
    }

    [Fact]
    public void Curves_of_one_name_bear_one_mark_on_both_sides_and_what_stands_now_lies_on_top()
    {
        var chart = Gears.Compared();
        Assert.Equal(8, chart.Lines.Count);
        Assert.All(chart.Lines.GroupBy(l => l.Name), g => Assert.Single(g.Select(l => l.Mark).Distinct()));
        Assert.Equal(4, chart.Lines.Select(l => l.Mark).Distinct().Count());
        Assert.Equal([true, true, true, true, false, false, false, false], chart.Lines.Select(l => l.Then));
        Assert.Equal(("working", "as found"), (chart.Now, chart.Then));
    }

    [Fact]
    public void Curves_over_other_axes_are_another_chart()
    {
        var charts = CurveChart.Of("Driveline", new("now", [Gears.Gear(1, 45), Gears.Pull]), new("then", [Gears.Pull with { YUnit = "N" }]), MeasureSystem.UsCustomary);
        Assert.Equal(["engine speed (rpm)", "force at the wheels (lbf)"], charts.Select(c => c.Y.Title));
        Assert.Equal([null, "then"], charts.Select(c => c.Then));
        Assert.Equal(4500 / (0.45359237 * 9.80665), charts[1].Lines.Single(l => l.Then).Y[1], 9);
    }

    [Fact]
    public void A_curve_that_cannot_be_drawn_is_left_out()
    {
        var broken = Gears.Pull with { Name = "gear 2", Y = [1, double.NaN, 3] };
        Assert.Equal("gear 1", Assert.Single(Assert.Single(CurveChart.Of("Pull", new("now", [broken, Gears.Pull]), null, MeasureSystem.UsCustomary)).Lines).Name);
        Assert.Empty(CurveChart.Of("Pull", new("now", [broken]), null, MeasureSystem.UsCustomary));
    }

    [Theory]
    [InlineData(5, 4000)]
    [InlineData(7.5, 4250)]
    [InlineData(14, 3300)]
    [InlineData(15, 3000)]
    public void Between_its_points_a_line_is_straight(double x, double y) =>
        Assert.Equal(y, CurveChart.Of("Pull", new("now", [Gears.Pull]), null, MeasureSystem.UsCustomary)[0].Lines[0].At(x)!.Value, 9);

    [Theory]
    [InlineData(4.99)]
    [InlineData(15.01)]
    public void Beyond_its_ends_a_line_says_nothing(double x) => Assert.Null(CurveChart.Of("Pull", new("now", [Gears.Pull]), null, MeasureSystem.UsCustomary)[0].Lines[0].At(x));

    [Fact]
    public void Signs_that_no_drawing_can_hold_are_taken_out_of_names()
    {
        var chart = Assert.Single(CurveChart.Of("a\u0001b\nc", new("x\ud800y", [Gears.Pull]), null, MeasureSystem.UsCustomary));
        Assert.Equal(("ab c", "xy"), (chart.Title, chart.Now));
    }
}
