using Crossmember.Documents.Curves;
using Crossmember.Documents.Tests.Brakes;
using Crossmember.Engineering.Quantities;
using Crossmember.Tests.Brakes;

namespace Crossmember.Documents.Tests.Curves;

/// <summary>All instances of one calculation in one picture.</summary>
public sealed class TogetherTests
{
    [Fact]
    public void Every_loading_bears_its_name_and_what_is_alike_stands_once()
    {
        var charts = SheetCurves.Of(GaugeSheetTests.Truck(BrakedTruck.Discs, ("brakes.rule", "R13-N1")), null, "brakes.distribution", MeasureSystem.UsCustomary)!;
        Assert.Equal(2, charts.Count);
        Assert.Equal(["ideal, empty", "ideal, touring", "installed, empty", "installed, touring"], charts[0].Curves.Select(l => l.Name).Order(StringComparer.Ordinal));
        Assert.Equal(["0.2 g", "0.4 g", "0.6 g", "0.8 g", "1.0 g"], charts[0].Lines.Where(l => l.IsGuide).Select(l => l.Name));
        Assert.Equal(2, charts[0].Spots.Count());
        Assert.Single(charts[1].Lines, l => l.Name == "limit, both axles");
        Assert.NotEqual(charts[0].Title, charts[1].Title);
    }

    [Fact]
    public void One_of_them_alone_has_no_name_of_its_loading()
    {
        var sheet = GaugeSheetTests.Truck(BrakedTruck.Discs);
        var one = SheetCurves.Of(sheet, null, "brakes.distribution[condition=touring]", MeasureSystem.UsCustomary)![0];
        var both = SheetCurves.Of(sheet, null, "brakes.distribution", MeasureSystem.UsCustomary)![0];
        Assert.Equal(one.Curves.Single(l => l.Name == "ideal").Y, both.Curves.Single(l => l.Name == "ideal, touring").Y);
    }

    /// <summary>The ideal line and its first lock by hand: both axles at the same grip z use all of it, Fr / W = z (a - z h) / L; statics, DARCOM-P 706-358 (1976), p. 142.</summary>
    [Fact]
    public void The_first_lock_lies_on_the_installed_line_and_under_the_ideal_one_where_the_front_locks_first()
    {
        var chart = SheetCurves.Of(GaugeSheetTests.Truck(BrakedTruck.Discs), null, "brakes.distribution[condition=touring]", MeasureSystem.Metric)![0];
        var (spot, installed, ideal) = (chart.Spots.Single(), chart.Curves.Single(l => l.Name == "installed"), chart.Curves.Single(l => l.Name == "ideal"));
        Assert.Equal(installed.At(spot.X[0])!.Value, spot.Y[0], 0.003);
        Assert.True(spot.Y[0] < ideal.At(spot.X[0]));
    }

    [Fact]
    public void What_is_no_calculation_is_null() => Assert.Null(SheetCurves.Of(GaugeSheetTests.Truck(BrakedTruck.Discs), null, "brakes.nothing", MeasureSystem.Metric));
}
