using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Lift;

/// <summary>Travels of several conditions: the worst of all counts, whatever their order.</summary>
public class TravelTests
{
    // Empty hangs at 150 + 100 = 250 mm, loaded at 120 + 140 = 260: the loaded one counts, 210 mm of drop with 100 and 150 mm on the floor.
    [Theory]
    [InlineData("""{"empty":"150 mm","loaded":"120 mm"}""", """{"empty":"100 mm","loaded":"140 mm"}""")]
    [InlineData("""{"empty":"150 mm","loaded":"120 mm"}""", """{"loaded":"140 mm","empty":"100 mm"}""")]
    public void Travels_go_by_their_conditions_and_not_by_order(string heights, string droop) =>
        Door.Run("lift.hose-length", $$"""
            {"rideHeights":{{heights}},"droopTravel":{{droop}},"frameHeight":"0 mm","axleHeight":"50 mm","along":"100 mm","across":"150 mm"}
            """).Gives("straight", Math.Sqrt((100 * 100) + (150 * 150) + (210 * 210)), 1e-9);

    // The farthest from the height as built counts for a track bar, up or down: 150 as built, 130 loaded, 200 empty.
    [Fact]
    public void The_condition_farthest_from_the_height_as_built_counts()
    {
        var r = Door.Run("lift.trackbar-shift", """{"length":"800 mm","endHeight":"50 mm","originalRideHeight":"150 mm","rideHeights":{"loaded":"130 mm","empty":"200 mm"}}""");
        r.Gives("lift", 50, 1e-9);
        r.Gives("shift", Math.Sqrt(640000 - 2500) - Math.Sqrt(640000 - 10000), 1e-9);
    }

    // Toward the end of its travel a short bar no longer reaches: told, and no wander.
    [Fact]
    public void A_bar_that_binds_in_droop_is_told()
    {
        var r = Door.Run("lift.trackbar-shift", """
            {"length":"120 mm","endHeight":"50 mm","originalRideHeight":"150 mm","rideHeights":{"empty":"150 mm"},"droopTravel":{"empty":"100 mm"}}
            """);
        Assert.Null(r.Number("wander"));
        Assert.Contains("the axle would bind there", r["cautions"]!.ToJsonString());
        Assert.Empty(r["curves"]!.AsArray());
    }

    [Fact]
    public void Without_the_height_as_built_the_angles_still_stand()
    {
        var r = Door.Run("lift.pinion-angle", """{"rideHeight":"200 mm","outputHeight":"20 mm","pinionHeight":"60 mm","run":"1000 mm","outputSlope":"2 deg","pinionAngle":"2 deg"}""");
        Assert.Null(r.Number("lift"));
        r.Gives("caseAngle", 7.0903, 5e-5);
    }

    // More travel never asks for less: of slip, of a hose, of a joint.
    [Fact]
    public void More_droop_never_asks_for_less() =>
        Gen.Select(Gen.Double[0, 150], Gen.Double[0.1, 60]).Sample((droop, more) =>
        {
            JsonObject less = Shaft(droop), far = Shaft(droop + more);
            Assert.True(far.Number("goesOut") >= less.Number("goesOut") - 0.05); // looked at in 200 steps
            Assert.True(far.Number("steepest") >= less.Number("steepest"));
            Assert.True(far.Number("splinesLeft") <= less.Number("splinesLeft") + 0.05);
            Assert.Equal(less.Number("lengthAtRide"), far.Number("lengthAtRide"));
        }, iter: 100);

    // The curve is what the answer was read from: its ends are the ends of the travel, its first point the length at bump.
    [Fact]
    public void The_curve_runs_from_bump_to_droop()
    {
        var curve = Shaft(100)["curves"]![0]!;
        double[] x = [.. curve["x"]!["values"]!.AsArray().Select(v => v!.GetValue<double>() * 25.4)], y = [.. curve["y"]!["values"]!.AsArray().Select(v => v!.GetValue<double>() * 25.4)];
        Assert.Equal(120, x[0], 1e-9);
        Assert.Equal(300, x[^1], 1e-9);
        Assert.Equal(1004.9745, y[0], 5e-5); // plain Python, as beside the shafts
        Assert.Equal(1011.0527, y[^1], 5e-5);
    }

    private static JsonObject Shaft(double droop) => Door.Run("lift.shaft-travel", $$"""
        {"run":"1000 mm","tapedHeight":"200 mm","outputHeight":"20 mm","pinionHeight":"60 mm","arcRadius":"450 mm","arcHeight":"-150 mm","arcSide":"toward the case","engaged":"90 mm",
         "rideHeights":{"empty":"200 mm"},"bumpTravel":{"empty":"80 mm"},"droopTravel":{"empty":"{{droop:R}} mm"} }
        """);
}
