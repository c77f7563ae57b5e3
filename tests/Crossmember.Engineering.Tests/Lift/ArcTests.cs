using System.Numerics;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Lift;

/// <summary>Shafts, track bars and hoses over the travel of their axle.</summary>
/// <remarks>
/// The shafts were worked before the test by plain Python 3, by another road: the arm turned by halving until the axle lies at each height, then coordinates of both joints.
/// <code>
/// def shaft(run, h0, zt, zp, R, zc, side, h):
///     def axle(height):
///         lo, hi = -pi / 2, pi / 2
///         for _ in range(200):
///             a = (lo + hi) / 2
///             if zc - R * sin(a) > -height: lo = a
///             else: hi = a
///         return side * R * cos(a), zc - R * sin(a)
///     case = axle(h0)[0] - run, zt; x, z = axle(h)
///     return hypot(x - case[0], case[1] - z - zp), degrees(atan2(case[1] - z - zp, x - case[0]))
/// L = [shaft(*args, h0 - 0.08 + 0.18 * i / 200) for i in range(201)]
/// </code>
/// </remarks>
public class ArcTests
{
    [Theory]
    [InlineData(1000, 200, 20, 60, 450, -150, "toward the case", 1012.7191, 7.7446, 0.9056, 14.9015)]
    [InlineData(1320, 165, -50, 80, 480, -60, "toward the case", 1320.4639, 27.7485, 11.2702, 5.9944)]
    [InlineData(787, 150, -60, 50, 420, -50, "away from the case", 788.0159, 11.5888, 49.3681, 9.6243)]
    public void Coordinates_of_both_joints_give_the_same(double run, double height, double output, double pinion, double radius, double middle, string side, double length, double goesIn, double goesOut, double steepest)
    {
        var r = Travel($""" "run":"{run} mm","outputHeight":"{output} mm","pinionHeight":"{pinion} mm","arcRadius":"{radius} mm","arcHeight":"{middle} mm","arcSide":"{side}" """, height);
        r.Gives("lengthAtRide", length, 5e-5);
        r.Gives("goesIn", goesIn, 5e-5);
        r.Gives("goesOut", goesOut, 5e-5);
        r.Gives("steepest", steepest, 5e-5);
        r.Gives("splinesLeft", 90 - goesOut, 5e-5);
    }

    // A shaft whose pinion joint swings about the very point that the other joint is in keeps its length, whatever the travel.
    [Fact]
    public void A_shaft_about_the_middle_of_its_arc_keeps_its_length() =>
        Gen.Select(Gen.Double[400, 1500], Gen.Double[-100, 200], Gen.Double[100, 300]).Sample((radius, middle, height) =>
        {
            var d = middle + height;
            if (Math.Abs(d) + 100 > radius) return;
            var run = Math.Sqrt((radius * radius) - (d * d));
            var r = Travel($""" "run":"{run:R} mm","outputHeight":"{middle:R} mm","pinionHeight":"0 mm","arcRadius":"{radius:R} mm","arcHeight":"{middle:R} mm","arcSide":"toward the case" """, height);
            r.Gives("lengthAtRide", radius, 1e-6);
            r.Gives("goesIn", 0, 1e-6);
            r.Gives("goesOut", 0, 1e-6);
        }, iter: 100);

    // The first shaft goes in by 7.7 and out by 0.9 mm and reaches 14.9 deg; half an inch spare, a spline diameter engaged: common practice, no source.
    [Theory]
    [InlineData("bottom", """ "slipIn":"21 mm" """, "pass")]
    [InlineData("bottom", """ "slipIn":"20 mm" """, "caution")]
    [InlineData("bottom", """ "slipIn":"7 mm" """, "fail")]
    [InlineData("apart", """ "engaged":"37 mm" """, "pass")]
    [InlineData("apart", """ "engaged":"30 mm" """, "caution")]
    [InlineData("apart", """ "engaged":"18 mm" """, "caution")] // less than half a diameter, but in: practice, no fail
    [InlineData("apart", """ "engaged":"0 mm" """, "fail")]
    [InlineData("joint", """ "jointLimit":"15 deg" """, "pass")]
    [InlineData("joint", """ "jointLimit":"14 deg" """, "caution")]
    [InlineData("joint", """ "jointLimit":"12 deg" """, "fail")]
    public void What_the_shaft_can_do_is_held_against_the_travel(string check, string limit, string verdict)
    {
        var r = Travel($""" "run":"1000 mm","outputHeight":"20 mm","pinionHeight":"60 mm","arcRadius":"450 mm","arcHeight":"-150 mm","arcSide":"toward the case",{limit} """, 200,
            limit.Contains("engaged") ? "" : """ "engaged":"90 mm", """);
        Assert.Equal(verdict, r.Verdict(check));
    }

    // Squeezing its stop by 25.4 mm the axle goes on from 80 to 105.4 mm of bump: a second pass over the points of the arc (Length in plain coordinates) finds the slip that takes.
    [Fact]
    public void A_stop_that_squeezes_takes_more_slip_and_an_unknown_one_passes_nothing()
    {
        const string shaft = """ "run":"1000 mm","outputHeight":"20 mm","pinionHeight":"60 mm","arcRadius":"450 mm","arcHeight":"-150 mm","arcSide":"toward the case","slipIn":"40 mm" """;
        JsonObject touching = Travel(shaft, 200, """ "engaged":"90 mm", """, ""), solid = Travel(shaft, 200, """ "engaged":"90 mm", """, ""","fullBumpTravel":{"empty":"105.4 mm"} """);
        // Axle center over its arc's middle at 150 mm under the datum: 200 mm of ride height puts it 50 mm under, 105.4 mm of bump 55.4 mm over it.
        double x0 = 1000, x1 = x0 + Math.Sqrt((450.0 * 450) - (55.4 * 55.4)) - Math.Sqrt((450.0 * 450) - (50.0 * 50)), d0 = 20 + 200 - 60, d1 = d0 - 105.4;
        Assert.Equal(Math.Sqrt((x0 * x0) + (d0 * d0)) - Math.Sqrt((x1 * x1) + (d1 * d1)), solid.Number("goesIn")!.Value, 1e-6);
        Assert.True(solid.Number("goesIn") > touching.Number("goesIn"));
        Assert.Equal(("caution", "pass"), (touching.Verdict("bottom"), solid.Verdict("bottom")));
        Assert.Contains("That is when the bump stop touches", touching.Finding("bottom")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("fail", Travel(shaft.Replace("40 mm", "5 mm", StringComparison.Ordinal), 200, """ "engaged":"90 mm", """, "").Verdict("bottom"));
    }

    // A bar of 800 mm, level as built: 60 mm of gap and 30 of squash wander as far as 90 mm of travel do.
    [Fact]
    public void A_track_bar_is_followed_until_the_stop_is_solid()
    {
        JsonObject Run(string bump) => Door.Run("lift.trackbar-shift",
            $$"""{"length":"800 mm","endHeight":"0 mm","originalRideHeight":"150 mm","rideHeights":{"empty":"150 mm"},{{bump}},"droopTravel":{"empty":"20 mm"} }""");
        JsonObject touching = Run(""" "bumpTravel":{"empty":"60 mm"} """), solid = Run(""" "bumpTravel":{"empty":"60 mm"},"fullBumpTravel":{"empty":"90 mm"} """);
        solid.Gives("wander", 800 - Math.Sqrt(640000 - 8100), 1e-6);
        touching.Gives("wander", 800 - Math.Sqrt(640000 - 3600), 1e-6);
        Assert.Contains("How far the bump stop squeezes is not known", touching["cautions"]!.ToJsonString());
        Assert.DoesNotContain("squeezes", solid["cautions"]!.ToJsonString());
    }

    [Fact]
    public void An_arc_that_cannot_be_is_told()
    {
        var r = Travel(""" "run":"1000 mm","outputHeight":"20 mm","pinionHeight":"60 mm","arcRadius":"150 mm","arcHeight":"-100 mm","arcSide":"toward the case" """, 200);
        Assert.Null(r.Number("goesOut"));
        Assert.Contains("cannot swing that far", r["cautions"]!.ToJsonString());
        Assert.Equal("unknown", r.Verdict("bottom"));
    }

    // Python by sine and cosine of the bar's angle: R cos(asin(d0 / R)) - R cos(asin(d / R)).
    [Theory]
    [InlineData(800, 50, 100, 12.6243)]
    [InlineData(800, 50, -100, 0)]
    [InlineData(820, 120, 60, 11.1720)]
    [InlineData(820, -40, 75, -0.2289)]
    public void A_track_bar_swings_on_a_circle(double length, double end, double lift, double shift) => Bar(length, end, lift).Gives("shift", shift, 5e-5);

    // The bar keeps its length: rise and width of it, squared, add up to the same before and after.
    [Fact]
    public void The_bar_keeps_its_length() =>
        Gen.Select(Gen.Double[600, 1000], Gen.Double[-200, 200], Gen.Double[-200, 200]).Sample((R, d0, lift) =>
        {
            double width = Math.Sqrt((R * R) - (d0 * d0)) - Bar(R, d0, lift).Number("shift")!.Value;
            Assert.Equal(R * R, (width * width) + ((d0 + lift) * (d0 + lift)), 1e-6 * R * R);
        }, iter: 200);

    // From 60 mm under to 100 mm over level the bar wanders by 800 - sqrt(640,000 - 10,000) = 6.275 mm, though its ends differ by less.
    [Fact]
    public void A_bar_that_comes_level_on_the_way_wanders_by_its_turning_point()
    {
        var r = Door.Run("lift.trackbar-shift", """
            {"length":"800 mm","endHeight":"0 mm","originalRideHeight":"150 mm","rideHeights":{"empty":"150 mm"},"bumpTravel":{"empty":"60 mm"},"droopTravel":{"empty":"100 mm"}}
            """);
        r.Gives("wander", 6.2746, 1e-4);
        Assert.Equal(41, r["curves"]![0]!["x"]!["values"]!.AsArray().Count);
    }

    [Theory]
    [InlineData(800, 50, 40, "pass")]
    [InlineData(800, 50, 100, "caution")]
    [InlineData(100, 50, 100, "fail")]
    [InlineData(0, 50, 100, "pass")]
    public void A_quarter_inch_off_the_middle_is_told(double length, double end, double lift, string verdict) => Assert.Equal(verdict, Bar(length, end, lift).Verdict("shift"));

    [Theory]
    [InlineData(""" "length":"800 mm", """, "unknown", "tape the heights of both ends")]
    [InlineData("", "unknown", "0 where leaf springs hold the axle sideways")]
    [InlineData(""" "length":"0 mm", """, "pass", "No track bar.")]
    [InlineData(""" "leafSpan":"44 in", """, "pass", "leaf springs hold the axle sideways")]
    public void Without_a_bar_or_its_ends_it_says_so(string members, string verdict, string says)
    {
        var r = Door.Run("lift.trackbar-shift", $$"""{ {{members}}"rideHeights":{"empty":"150 mm"} }""");
        Assert.Equal(verdict, r.Verdict("shift"));
        Assert.Contains(says, r.Finding("shift")["text"]!.GetValue<string>());
    }

    // Python with complex numbers: |k + e (cos t + i sin t)| and the drop, for both locks.
    [Theory]
    [InlineData(100, 150, 0, 0, 0, 200, 269.2582)]
    [InlineData(60, 180, -90, 40, 30, 230, 346.8684)]
    [InlineData(-40, 120, 70, -30, 35, 310, 340.1093)]
    public void A_hose_in_space(double kx, double ky, double ex, double ey, double degrees, double drop, double straight)
    {
        var r = Hose(kx, ky, ex, ey, degrees, drop - 100, "400 mm");
        r.Gives("straight", straight, 5e-5);
        r.Gives("wanted", straight + Math.Max(25.4, straight / 10), 1e-4);
    }

    // No lock is never farther than some lock; the hose is no shorter than its parts in any one direction.
    [Fact]
    public void Locks_only_lengthen_what_is_wanted() =>
        Gen.Select(Gen.Double[-200, 200], Gen.Double[0, 300], Gen.Double[-120, 120], Gen.Double[-120, 120], Gen.Double[0, 45]).Sample((kx, ky, ex, ey, degrees) =>
        {
            var straight = Hose(kx, ky, ex, ey, degrees, 50, "400 mm").Number("straight")!.Value;
            Complex k = new(kx, ky), e = new(ex, ey);
            Assert.True(straight >= 150 - 1e-9);
            Assert.True(straight <= Math.Sqrt(Math.Pow(k.Magnitude + e.Magnitude, 2) + (150 * 150)) + 1e-9);
            var mirrored = Hose(-kx, ky, -ex, ey, degrees, 50, "400 mm").Number("straight")!.Value;
            Assert.Equal(straight, mirrored, 1e-9); // the other side of the vehicle: left lock for right lock
        }, iter: 200);

    // 269.26 mm straight, 296.18 with a tenth of slack.
    [Theory]
    [InlineData("297 mm", "pass")]
    [InlineData("296 mm", "caution")]
    [InlineData("269 mm", "fail")]
    public void A_hose_needs_slack(string length, string verdict) => Assert.Equal(verdict, Hose(100, 150, 0, 0, 0, 100, length).Verdict("length"));

    private const string Squeezed = ""","fullBumpTravel":{"empty":"80 mm"} """;

    private static JsonObject Travel(string members, double height, string engaged = """ "engaged":"90 mm", """, string? full = null) => Door.Run("lift.shaft-travel", $$"""
        { {{members}},{{engaged}}"tapedHeight":"{{height:R}} mm","splineDiameter":"35 mm","outputSlope":"2 deg","pinionAngle":"2 deg",
         "rideHeights":{"empty":"{{height:R}} mm"},"bumpTravel":{"empty":"80 mm"},"droopTravel":{"empty":"100 mm"}{{full ?? Squeezed}}{{(members.Contains("slipIn") ? "" : ""","slipIn":"40 mm" """)}} }
        """);

    private static JsonObject Bar(double length, double end, double lift) => Door.Run("lift.trackbar-shift",
        $$"""{"length":"{{length:R}} mm","endHeight":"{{end:R}} mm","originalRideHeight":"150 mm","rideHeights":{"empty":"{{150 + lift:R}} mm"} }""");

    private static JsonObject Hose(double kx, double ky, double ex, double ey, double degrees, double height, string length) => Door.Run("lift.hose-length", $$"""
        {"rideHeights":{"empty":"100 mm"},"droopTravel":{"empty":"{{height:R}} mm"},"frameHeight":"30 mm","axleHeight":"30 mm","along":"{{kx:R}} mm","across":"{{ky:R}} mm",
         "knuckleAlong":"{{ex:R}} mm","knuckleAcross":"{{ey:R}} mm","lock":"{{degrees:R}} deg","length":"{{length}}"}
        """);
}
