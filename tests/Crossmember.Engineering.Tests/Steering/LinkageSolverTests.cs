using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;
using static Crossmember.Engineering.Tests.Steering.LinkagePlane;

namespace Crossmember.Engineering.Tests.Steering;

/// <summary>The drag link through suspension travel, against other methods and what must hold whatever the points.</summary>
public class LinkageSolverTests
{
    // Independent: plain Python 3, another algorithm (secant steps from the neighbouring answer, quaternions instead of axis and angle, arcs by secant as well):
    //   def rot(v,k,a): w,(x,y,z)=cos(a/2),[sin(a/2)*c for c in k]; return (q * v * conjugate(q))[1:]
    //   K=(0,h*B/2,-ride); k=(tan(caster),-h*tan(inclination),1)/norm; L=dist(pitman,arm)
    //   dx, dy: secant on hypot(level+d,rise+t)-hypot(level,rise); leaf: level=sqrt(R*R-h*h), R=.75*(e+2*h*h/(3*e))
    //   turn: secant on dist(K+rot(arm-K,k,a)+(dx,dy,t),pitman)-L from 0 and 1e-4; steer: degrees(atan2(-s.x,s.y)), s=rot((0,1,0),k,turn)
    [Theory]
    [InlineData(80, -0.200632)]
    [InlineData(-80, -0.298689)]
    public void A_lengthwise_link_over_a_leading_arm(double travel, double steer)
    {
        var r = Bump((-700, -450, 0), (150, -450, -120), 1300, 180, $"\"rideHeight\":\"180 mm\",{Travel(travel)},\"guideKind\":\"links\",\"guideX\":\"-700 mm\",\"guideRise\":\"100 mm\",\"caster\":\"3 deg\",\"inclination\":\"7 deg\"");
        r.Gives(travel > 0 ? "atBump" : "atDroop", steer, 5e-7);
    }

    [Theory]
    [InlineData(60, true, -1.945350)]
    [InlineData(-90, true, 2.788709)]
    [InlineData(-40, true, 1.239386)]
    [InlineData(60, false, -2.583909)]
    [InlineData(-90, false, 6.712984)]
    public void A_cross_link_on_leaf_springs_with_and_without_a_track_bar(double travel, bool bar, double steer)
    {
        var r = Bump((100, 420, 60), (170, -480, -90), 1300, 200, $"\"rideHeight\":\"200 mm\",{Travel(travel)},\"guideKind\":\"leaf\",\"guideX\":\"-560 mm\",\"guideRise\":\"30 mm\",\"caster\":\"4 deg\",\"inclination\":\"8 deg\""
            + (bar ? $",\"barLength\":\"{Math.Sqrt((900 * 900) + (60 * 60)):R} mm\",\"barEndHeight\":\"40 mm\",\"originalRideHeight\":\"180 mm\",\"barFrameSide\":\"right\"" : ""));
        r.Gives(travel > 0 ? "atBump" : "atDroop", steer, 5e-7);
    }

    // Independent: with an upright kingpin the ball's circle lies level, and where it meets the sphere about the pitman ball is a cosine rule:
    // |c - P|^2 + r^2 + 2 r |flat| cos(angle) = L^2. Nothing is solved by steps here.
    [Fact]
    public void An_upright_kingpin_agrees_with_the_cosine_rule() =>
        Gen.Select(Gen.Double[-900, 900], Gen.Double[-700, 700], Gen.Double[-150, 150], Gen.Double[-250, 250], Gen.Double[-250, -50], Gen.Double[-120, 120]).Sample((px, py, pz, ax, az, t) =>
        {
            (double X, double Y, double Z) P = (px, py, pz), A = (ax, -500, az);
            var r = Bump(P, A, 1300, 200, $"\"rideHeight\":\"200 mm\",{Travel(t)},\"guideKind\":\"links\",\"guideX\":\"0 mm\",\"guideRise\":\"0 mm\",\"caster\":\"0 deg\",\"inclination\":\"0 deg\"");
            double radius = Math.Sqrt((ax * ax) + (150 * 150)), flat = Math.Sqrt((px * px) + Math.Pow(py + 650, 2)), rise = az + t - pz;
            var length = Math.Sqrt(Math.Pow(px - ax, 2) + Math.Pow(py + 500, 2) + Math.Pow(pz - az, 2));
            var cosine = ((radius * radius) + (flat * flat) + (rise * rise) - (length * length)) / (2 * radius * flat);
            var told = r.Number(t >= 0 ? "atBump" : "atDroop");
            if (Math.Abs(Math.Abs(cosine) - 1) < 1e-9) return; // on a dead center
            if (Math.Abs(cosine) > 1)
            {
                Assert.Null(told);
                Assert.Equal("fail", r.Verdict("closes"));
                return;
            }
            if (told is not { } steer) return; // parted on the way
            double toward = Math.Atan2(py + 650, px), start = Math.Atan2(150, ax);
            double one = toward + Math.Acos(cosine), other = toward - Math.Acos(cosine);
            var best = new[] { one, other }.Min(a => Math.Abs(Math.IEEERemainder(a - start - (steer * Deg), 2 * Math.PI)));
            Assert.Equal(0, best, 1e-6);
        }, iter: 300);

    // Invariant: rebuilt from the steer that is told, the drag link is as long as before, to 1e-9 of itself, at every point of the curve.
    [Fact]
    public void The_drag_link_keeps_its_length_over_the_whole_curve() =>
        Gen.Select(Gen.Double[-900, -400], Gen.Double[-100, 150], Gen.Double[100, 250], Gen.Double[-200, -100], Gen.Double[-800, -400], Gen.Double[-60, 60]).Sample((px, pz, ax, az, gx, gr) =>
        {
            var r = Bump((px, -450, pz), (ax, -450, az), 1300, 200, $"\"rideHeight\":\"200 mm\",\"bumpTravel\":\"80 mm\",\"droopTravel\":\"80 mm\",\"guideKind\":\"links\",\"guideX\":\"{gx:R} mm\",\"guideRise\":\"{gr:R} mm\",\"caster\":\"0 deg\",\"inclination\":\"0 deg\"");
            var (rise, steer) = Curve(r, 0);
            var length = Math.Sqrt(Math.Pow(px - ax, 2) + Math.Pow(pz - az, 2));
            for (var i = 0; i < rise.Length; i++)
            {
                double turn = steer[i] * Deg, forward = Math.Sqrt((gx * gx) + (gr * gr) - Math.Pow(rise[i] - gr, 2)) + gx; // the axle's way along
                double x = (ax * Math.Cos(turn)) - (200 * Math.Sin(turn)) + forward, y = -650 + (ax * Math.Sin(turn)) + (200 * Math.Cos(turn)), z = az + rise[i];
                Assert.Equal(length, Math.Sqrt(Math.Pow(x - px, 2) + Math.Pow(y + 450, 2) + Math.Pow(z - pz, 2)), 1e-8 * length);
            }
        }, iter: 50);

    // Invariant: a drag link equal and parallel to the axle's own arm makes a parallelogram with it: the arm's ball moves as the axle does, and nothing steers.
    [Fact]
    public void Equal_and_parallel_arms_do_not_steer() =>
        Gen.Select(Gen.Double[500, 900], Gen.Double[-100, 100], Gen.Double[100, 250], Gen.Double[-5, 10], Gen.Double[0, 12]).Sample((arm, rise, ax, caster, inclination) =>
        {
            var r = Bump((ax - arm, -450, -100 + rise), (ax, -450, -100), 1300, 200, $"\"rideHeight\":\"230 mm\",\"bumpTravel\":\"60 mm\",\"fullBumpTravel\":\"90 mm\",\"droopTravel\":\"90 mm\",\"guideKind\":\"links\",\"guideX\":\"{-arm:R} mm\",\"guideRise\":\"{rise:R} mm\","
                + $"\"caster\":\"{caster:R} deg\",\"inclination\":\"{inclination:R} deg\"");
            r.Gives("total", 0, 1e-6);
            r.Gives("offCenter", 0, 1e-6);
            Assert.Equal(("pass", "pass", "pass"), (r.Verdict("closes"), r.Verdict("gradient"), r.Verdict("total")));
        }, iter: 50);

    // The stop touches after 60 mm and is solid after 90: steer at full bump is that at 90 mm; where the squash is not known it is told to the touching stop, and passes nothing.
    [Fact]
    public void Bump_goes_on_until_the_stop_is_solid()
    {
        JsonObject Run(string bump) => Bump((-700, -450, 0), (150, -450, -120), 1300, 180,
            $"\"rideHeight\":\"180 mm\",{bump},\"droopTravel\":\"80 mm\",\"guideKind\":\"links\",\"guideX\":\"-700 mm\",\"guideRise\":\"100 mm\",\"caster\":\"3 deg\",\"inclination\":\"7 deg\"");
        JsonObject touching = Run("\"bumpTravel\":\"60 mm\""), solid = Run("\"bumpTravel\":\"60 mm\",\"fullBumpTravel\":\"90 mm\""), gap = Run("\"bumpTravel\":\"90 mm\"");
        Assert.Equal(gap.Number("atBump"), solid.Number("atBump"));
        Assert.NotEqual(touching.Number("atBump"), solid.Number("atBump"));
        Assert.Equal(("pass", "pass"), (solid.Verdict("closes"), solid.Verdict("total")));
        Assert.Equal(("caution", "caution"), (touching.Verdict("closes"), touching.Verdict("total")));
        Assert.Contains("until the stop touches", touching.Finding("total")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // Invariant: seen in a mirror, left is right.
    [Fact]
    public void A_mirrored_linkage_steers_the_other_way() =>
        Gen.Select(Gen.Double[-900, 500], Gen.Double[-600, 600], Gen.Double[-100, 150], Gen.Double[80, 250], Gen.Double[-250, -100], Gen.Double[-600, 600]).Sample((px, py, pz, ax, az, gx) =>
        {
            JsonObject Run(int side) => Bump((px, side * py, pz), (ax, -side * 480, az), 1300, 200,
                $"\"rideHeight\":\"215 mm\",\"bumpTravel\":\"70 mm\",\"droopTravel\":\"60 mm\",\"guideKind\":\"leaf\",\"guideX\":\"{gx:R} mm\",\"guideRise\":\"20 mm\",\"caster\":\"4 deg\",\"inclination\":\"8 deg\"");
            JsonObject one = Run(1), other = Run(-1);
            Assert.Equal(one.Verdict("closes"), other.Verdict("closes"));
            foreach (var output in (string[])["atBump", "atDroop", "offCenter"])
                Assert.Equal(-(one.Number(output) ?? 0), other.Number(output) ?? 0, 1e-6);
            Assert.Equal(one.Number("total") ?? 0, other.Number("total") ?? 0, 1e-6);
        }, iter: 100);

    // Whatever the points: it follows the whole travel and says how much it steers, or it parts and says where and what to measure.
    [Fact]
    public void It_closes_or_says_where_it_does_not() =>
        Gen.Select(Gen.Double[-1200, 1200].Array[6], Gen.Double[-1000, 1000], Gen.Double[0, 300].Array[2], Gen.Double[-40, 40].Array[2]).Sample((p, gx, travel, lean) =>
        {
            var r = Bump((p[0], p[1], p[2]), (p[3], p[4], p[5]), 1300, 200, $"\"rideHeight\":\"220 mm\",\"bumpTravel\":\"{travel[0]:R} mm\",\"droopTravel\":\"{travel[1]:R} mm\",\"guideKind\":\"links\",\"guideX\":\"{gx:R} mm\","
                + $"\"guideRise\":\"50 mm\",\"caster\":\"{lean[0]:R} deg\",\"inclination\":\"{Math.Abs(lean[1]):R} deg\"");
            var says = r.Finding("closes")["text"]!.GetValue<string>();
            if (r.Verdict("closes") is "pass" or "caution") Assert.True(r.Number("total") >= 0); // a caution where a kingpin leans too far to be one
            else
            {
                Assert.Equal("fail", r.Verdict("closes"));
                Assert.Null(r.Number("total"));
                Assert.Contains("easure", says, StringComparison.Ordinal);
            }
        }, iter: 500);

    // Derived: upright kingpin, axle straight up and down. The ball's circle comes no nearer to the pitman ball than rho - r, level; the link of length L reaches it as long as the
    // height between them is under sqrt(L^2 - (rho - r)^2).
    [Fact]
    public void Where_circle_and_sphere_part_is_named_in_mm_of_travel()
    {
        const double px = -300, ax = -150;
        double rho = Math.Sqrt((px * px) + (200 * 200)), radius = Math.Sqrt((ax * ax) + (200 * 200)), length = Math.Sqrt((150 * 150) + (100 * 100));
        var most = Math.Sqrt((length * length) - Math.Pow(rho - radius, 2)); // height difference at which it parts
        var r = Bump((px, -450, 0), (ax, -450, -100), 1300, 200, "\"rideHeight\":\"200 mm\",\"bumpTravel\":\"50 mm\",\"droopTravel\":\"120 mm\",\"guideKind\":\"links\",\"guideX\":\"0 mm\",\"guideRise\":\"0 mm\",\"caster\":\"0 deg\",\"inclination\":\"0 deg\"");
        var says = r.Finding("closes")["text"]!.GetValue<string>();
        Assert.Equal("fail", r.Verdict("closes"));
        Assert.Contains($"At {most - 100:0} mm under ride height the ball at the steering arm parts from the drag link", says, StringComparison.Ordinal);
        Assert.Contains("too short", says, StringComparison.Ordinal);
        Assert.NotNull(r.Number("atBump"));
        Assert.Null(r.Number("atDroop"));
    }

    [Fact]
    public void An_axle_beyond_the_arc_of_its_link_is_named_and_not_the_drag_link()
    {
        var r = Bump((-700, -450, 0), (150, -450, -120), 1300, 180, "\"rideHeight\":\"180 mm\",\"bumpTravel\":\"200 mm\",\"droopTravel\":\"80 mm\",\"guideKind\":\"links\",\"guideX\":\"-100 mm\",\"guideRise\":\"0 mm\"");
        Assert.Contains("end of the arc of its spring or link", r.Finding("closes")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // 0.5 deg in 25 mm and 4 deg in all: common practice, no source. A lift of 75 mm on the same points steepens the link and worsens both.
    [Fact]
    public void A_lift_makes_it_worse()
    {
        JsonObject At(double ride) => Bump((-640, -450, -40), (160, -450, -150), 1300, 200,
            $"\"rideHeight\":\"{ride:R} mm\",\"bumpTravel\":\"90 mm\",\"droopTravel\":\"90 mm\",\"guideKind\":\"leaf\",\"guideX\":\"560 mm\",\"guideRise\":\"10 mm\"");
        JsonObject before = At(200), after = At(275);
        Assert.True(after.Number("gradient") > before.Number("gradient"));
        Assert.True(after.Number("total") > before.Number("total"));
        Assert.Equal("caution", after.Verdict("gradient"));
    }

    [Fact]
    public void Without_travel_the_gradient_is_told_and_the_total_is_not()
    {
        var r = Bump((-700, -450, 0), (150, -450, -120), 1300, 180, "\"rideHeight\":\"180 mm\",\"guideKind\":\"links\",\"guideX\":\"-700 mm\",\"guideRise\":\"100 mm\"");
        Assert.NotNull(r.Number("gradient"));
        Assert.Equal(("unknown", "pass"), (r.Verdict("total"), r.Verdict("gradient")));
    }

    // Derived: sqrt(32^2 + 4^2) = 32.249 in; 2 in lower axle: asin(6 / 32.249) = 10.7225 deg.
    [Theory]
    [InlineData(7, 7.125, "pass")]
    [InlineData(9, 10.7225, "caution")]
    [InlineData(6, 7.125, "pass")]
    public void The_drag_link_steepens_with_the_ride_height(double ride, double angle, string verdict)
    {
        var r = Angle(ride);
        r.Gives("angle", angle, 0.0005);
        Assert.Equal(verdict, r.Verdict("angle"));
    }

    [Fact]
    public void Balls_farther_over_each_other_than_the_link_is_long_are_a_finding()
    {
        var r = Angle(40);
        Assert.Null(r.Number("angle"));
        Assert.Equal("fail", r.Verdict("angle"));
    }

    private static JsonObject Angle(double ride) => Door.Run("steering.drag-link-angle", $$"""
        {"pitmanX":"-20 in","pitmanY":"-16 in","pitmanZ":"0 in","armX":"12 in","armY":"-16 in","armZ":"-4 in","pointsRideHeight":"7 in","rideHeights":{"empty":"{{ride:R}} in","touring":"7 in"} }
        """);

    private static string Travel(double t) => $"\"bumpTravel\":\"{Math.Max(0, t):R} mm\",\"droopTravel\":\"{Math.Max(0, -t):R} mm\"";
}
