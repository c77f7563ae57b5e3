using Crossmember.Documents.Curves;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Tests.Curves;

public sealed class CurveTableTests
{
    /// <summary>In direct gear 45 rpm for each mph now and 54 then: worked by hand.</summary>
    [Fact]
    public void It_reads_both_sides_at_round_values()
    {
        var table = CurveTable.Of(Gears.Compared());
        Assert.Equal(["gear 1", "gear 2", "gear 3", "gear 4"], table.Curves);
        Assert.Equal(Enumerable.Range(0, 15).Select(i => 5.0 * i), table.Rows.Select(r => r.X)); // 71.1 mph in steps of five
        var at30 = table.Rows.Single(r => r.X == 30).Readings;
        Assert.Equal(30 * 45, at30[3].Now!.Value, 6);
        Assert.Equal(30 * 54, at30[3].Then!.Value, 6);
        Assert.Null(at30[0].Now); // gear 1 ends at 3200 / (45 x 6.4) = 11.1 mph
    }

    [Fact]
    public void It_says_where_each_curve_is_highest()
    {
        var highest = CurveTable.Of(Gears.Compared()).Highest;
        Assert.Equal((3200.0 / 45, 3200), highest[3].Now!.Value);
        Assert.Equal((3200.0 / 54, 3200), highest[3].Then!.Value);
        var pull = CurveTable.Of(CurveChart.Of("Pull", new("now", [Gears.Pull]), null, MeasureSystem.UsCustomary)[0]);
        Assert.Equal((10, 4500), pull.Highest[0].Now!.Value);
        Assert.Null(pull.Highest[0].Then);
    }

    [Theory]
    [InlineData(0, 80, 10, 9)]
    [InlineData(0, 79, 5, 16)]
    [InlineData(-20, 20, 5, 9)]
    [InlineData(0, 0.9, 0.1, 10)]
    [InlineData(3, 3, 3, 1)]
    public void Steps_are_round_and_stay_within_the_curves(double from, double to, double second, int rows)
    {
        var chart = CurveChart.Of("Pull", new("now", [Gears.Pull with { X = [from, to], Y = [0, 1] }]), null, MeasureSystem.UsCustomary)[0];
        var xs = CurveTable.Of(chart).Rows.Select(r => r.X).ToList();
        Assert.Equal(rows, xs.Count);
        Assert.Equal(second, rows == 1 ? xs[0] : xs[1] - xs[0], 9);
        Assert.All(xs, x => Assert.InRange(x, from - 1e-9, to + 1e-9));
    }
}
