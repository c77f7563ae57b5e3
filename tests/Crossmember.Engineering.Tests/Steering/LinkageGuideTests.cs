using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;
using static Crossmember.Engineering.Tests.Steering.LinkagePlane;

namespace Crossmember.Engineering.Tests.Steering;

/// <summary>Where springs, links and track bars carry the axle, seen by the steer they make.</summary>
public class LinkageGuideTests
{
    // Independent: the exact path of a leaf bent to one even curvature, x = a sin(t) / t, z = a (1 - cos t) / t, against the arc of three quarters, by way of the steer:
    // a lengthwise link and an upright kingpin, solved by the cosine rule with the exact place of the axle. Within 100 mm of travel the place differs by less than 1 mm on half
    // leaves of 500 to 700 mm: less than 0.3 deg on an arm of 200 mm.
    [Fact]
    public void The_arc_of_a_leaf_is_near_the_exact_one() =>
        Gen.Select(Gen.Double[500, 700], Gen.Double[-40, 60], Gen.Double[-100, 100], Gen.Bool).Sample((leaf, rise, travel, ahead) =>
        {
            double level = Exact(leaf, rise), way = ahead ? 1 : -1; // the eye ahead pulls the axle forward when it leaves the flat
            var moved = way * (Exact(leaf, rise - travel) - level);
            var r = Bump((-750, -450, -20), (0, -450, -120), 1300, 200, Rest($"\"guideKind\":\"leaf\",\"guideX\":\"{-way * level:R} mm\",\"guideRise\":\"{rise:R} mm\"", travel));
            Assert.Equal(CosineRule(moved, travel), r.Number(travel >= 0 ? "atBump" : "atDroop")!.Value, 0.3);
        }, iter: 100);

    /// <summary>Level distance from eye to clamp of a half leaf whose eye stands a height over the clamp.</summary>
    private static double Exact(double length, double height)
    {
        double low = 0, high = 1; // angle over the leaf; the height grows with it
        for (var i = 0; i < 60; i++)
        {
            var t = (low + high) / 2;
            if (length * (1 - Math.Cos(t)) / Math.Max(t, 1e-9) > Math.Abs(height)) high = t;
            else low = t;
        }
        return length * Math.Sin(low) / Math.Max(low, 1e-9);
    }

    /// <summary>Degrees, left positive, with the axle at a place: circle about the kingpin at (moved, -650), radius 200, link to (-750, -450).</summary>
    private static double CosineRule(double moved, double travel)
    {
        double px = -750 - moved, py = 200, h = travel - 100, length = Math.Sqrt((750 * 750) + (100 * 100)); // from the kingpin; height of arm over pitman ball
        double flat = Math.Sqrt((px * px) + (py * py)), cosine = ((200 * 200) + (flat * flat) + (h * h) - (length * length)) / (2 * 200 * flat);
        return (Math.Atan2(py, px) - Math.Acos(cosine) - (Math.PI / 2)) / Deg; // the ball starts square to the vehicle, at 90 deg
    }

    // A link is followed exactly: the same by the cosine rule with the axle on its circle.
    [Fact]
    public void A_link_carries_the_axle_on_its_circle() =>
        Gen.Select(Gen.Double[-900, -400], Gen.Double[-80, 80], Gen.Double[-100, 100]).Sample((fixedX, rise, travel) =>
        {
            var moved = Math.Sqrt((fixedX * fixedX) + (rise * rise) - Math.Pow(travel - rise, 2)) + fixedX;
            var r = Bump((-750, -450, -20), (0, -450, -120), 1300, 200, Rest($"\"guideKind\":\"links\",\"guideX\":\"{fixedX:R} mm\",\"guideRise\":\"{rise:R} mm\"", travel));
            Assert.Equal(CosineRule(moved, travel), r.Number(travel >= 0 ? "atBump" : "atDroop")!.Value, 1e-6);
        }, iter: 100);

    // Invariant: a cross drag link parallel to the track bar and as long is carried along by it. The axle otherwise goes straight up and down.
    [Fact]
    public void A_drag_link_like_the_track_bar_does_not_steer() =>
        Gen.Select(Gen.Double[500, 1000], Gen.Double[-80, 80], Gen.Double[60, 200], Gen.Double[0, 10]).Sample((across, rise, ax, inclination) =>
        {
            var r = Bump((ax, 480 - across, -120 + rise), (ax, 480, -120), 1300, 200,
                "\"rideHeight\":\"215 mm\",\"bumpTravel\":\"80 mm\",\"droopTravel\":\"90 mm\",\"guideKind\":\"links\",\"guideX\":\"0 mm\",\"guideRise\":\"0 mm\",\"caster\":\"3 deg\","
                + $"\"inclination\":\"{inclination:R} deg\"" + Bar(across, rise));
            r.Gives("total", 0, 1e-6);
        }, iter: 50);

    [Fact]
    public void Without_the_track_bar_the_same_link_steers()
    {
        const string travel = "\"rideHeight\":\"200 mm\",\"bumpTravel\":\"80 mm\",\"droopTravel\":\"90 mm\",\"guideKind\":\"links\",\"guideX\":\"0 mm\",\"guideRise\":\"0 mm\"";
        var r = Bump((150, -320, -60), (150, 480, -120), 1300, 200, travel);
        Assert.True(r.Number("total") > 0.5);
        Assert.Contains("track bar", Bump((150, -320, 60), (150, 480, -120), 1300, 200, travel).Finding("gradient")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // The arm points across, along the link: a dead center, where no number could be trusted. One that leans into it on the way is told with the height.
    [Fact]
    public void An_arm_along_the_link_is_a_dead_center_and_a_finding()
    {
        const string travel = "\"rideHeight\":\"200 mm\",\"bumpTravel\":\"20 mm\",\"droopTravel\":\"20 mm\",\"guideKind\":\"links\",\"guideX\":\"0 mm\",\"guideRise\":\"0 mm\",\"inclination\":\"0 deg\",\"caster\":";
        var r = Bump((0, -75, -120), (0, 480, -120), 1300, 200, travel + "\"0 deg\"");
        Assert.Equal("fail", r.Verdict("closes"));
        Assert.Contains("in line with the steering arm", r.Finding("closes")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Null(r.Number("gradient"));
        // A little off it, but the axle's travel tips link and leaning kingpin against each other until it is reached.
        var leaning = Bump((25, -75, -120), (25, 480, -120), 1300, 200, travel.Replace("20 mm", "300 mm", StringComparison.Ordinal)
            + "\"3 deg\"" + Bar(555, 0));
        Assert.Contains("dead center", leaning.Finding("closes")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Null(leaning.Number("total"));
    }

    [Fact]
    public void A_track_bar_that_is_only_known_by_half_is_left_out_and_that_is_said()
    {
        const string travel = "\"rideHeight\":\"200 mm\",\"bumpTravel\":\"80 mm\",\"droopTravel\":\"90 mm\",\"guideKind\":\"links\",\"guideX\":\"0 mm\",\"guideRise\":\"0 mm\"";
        JsonObject At(string more) => Bump((150, -320, -60), (150, 480, -120), 1300, 200, travel + more);
        JsonObject half = At(",\"barLength\":\"800 mm\""), none = At(",\"barLength\":\"0 mm\"");
        Assert.Equal(At("").Number("total"), half.Number("total"));
        Assert.Contains(half["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("track bar", StringComparison.Ordinal));
        Assert.DoesNotContain(none["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("track bar", StringComparison.Ordinal));
    }

    [Fact]
    public void A_track_bar_shorter_than_its_ends_are_high_is_a_finding()
    {
        var r = Bump((150, -320, -60), (150, 480, -120), 1300, 200, Rest("\"guideKind\":\"links\",\"guideX\":\"0 mm\",\"guideRise\":\"0 mm\"", 50)
            + ",\"barLength\":\"100 mm\",\"barEndHeight\":\"120 mm\",\"originalRideHeight\":\"200 mm\",\"barFrameSide\":\"left\"");
        Assert.Equal("fail", r.Verdict("closes"));
        Assert.Contains("track bar", r.Finding("closes")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Null(r.Number("gradient"));
    }

    /// <summary>A track bar from the left rail to an axle end so far to the right of it and so much lower; the ride height as built was 30 mm less.</summary>
    private static string Bar(double across, double rise) =>
        $",\"barLength\":\"{Math.Sqrt((across * across) + (rise * rise)):R} mm\",\"barEndHeight\":\"{rise - 30:R} mm\",\"originalRideHeight\":\"170 mm\",\"barFrameSide\":\"left\"";

    private static string Rest(string guide, double t) =>
        $"\"rideHeight\":\"200 mm\",\"bumpTravel\":\"{Math.Max(0, t):R} mm\",\"droopTravel\":\"{Math.Max(0, -t):R} mm\",\"caster\":\"0 deg\",\"inclination\":\"0 deg\",{guide}";
}
