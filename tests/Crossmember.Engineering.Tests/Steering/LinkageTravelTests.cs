using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;
using static Crossmember.Engineering.Tests.Steering.LinkagePlane;

namespace Crossmember.Engineering.Tests.Steering;

/// <summary>The linkage from lock to lock: level linkages are four-bars, for which there is a closed form.</summary>
public class LinkageTravelTests
{
    // Independent: Freudenstein's equation, R1 cos(out) - R2 cos(in) + R3 = cos(in - out), solved in closed form by the half angle of the output.
    [Fact]
    public void A_level_drag_link_is_a_four_bar() =>
        Gen.Select(Gen.Double[-300, 300], Gen.Double[-200, 500], Gen.Double[100, 200], Gen.Double[-1.3, 1.3], Gen.Double[100, 220], Gen.Double[-0.8, 0.8]).Sample((px, py, pitman, swung, arm, splay) =>
        {
            (double X, double Y) P = (px, py), E = (px + (pitman * Math.Cos(swung)), py + (pitman * Math.Sin(swung))), S = (arm * Math.Cos(splay), -650 + (arm * Math.Sin(splay)));
            if (S.Y >= 0) return;
            var r = Travel(P, E, S, 1300, 25);
            if (r["curves"]!.AsArray().Count == 0) return;
            var (box, wheel) = Curve(r, 0);
            // From the box's shaft to the kingpin is the ground; angles count from it.
            double gx = -px, gy = -650 - py, ground = Math.Atan2(gy, gx), d = Math.Sqrt((gx * gx) + (gy * gy));
            var rod = Math.Sqrt(Math.Pow(E.X - S.X, 2) + Math.Pow(E.Y - S.Y, 2));
            var outWas = splay - ground;
            for (var i = 0; i < box.Length; i++)
                Assert.True(new[] { 1, -1 }.Any(way => Freudenstein(d, pitman, rod, arm, swung - ground + (way * box[i] * Deg)).Any(o => Near(o - outWas, wheel[i] * Deg))),
                    $"box {box[i]}: {wheel[i]}");
        }, iter: 200);

    // The same for the tie rod: both steering arms and the tie rod are a four-bar with the axle for its ground.
    [Fact]
    public void A_level_tie_rod_is_a_four_bar() =>
        Gen.Select(Gen.Double[100, 220], Gen.Double[-200, 200]).Sample((back, off) =>
        {
            var tie = 1300 + off;
            var r = Steered(back, tie);
            // Where the closed form stays well off a dead center over the whole lock, a fail would be wrong.
            var sure = Enumerable.Range(-30, 61).All(lockTo => Reaches(back, tie, lockTo));
            if (sure) Assert.NotEqual("fail", r.Verdict("scrub"));
            if (r.Verdict("scrub") == "fail") return;
            var (_, near) = Curve(r, r["curves"]!.AsArray().Count - 2);
            var (_, far) = Curve(r, r["curves"]!.AsArray().Count - 1);
            double arm = Math.Sqrt((back * back) + (off * off / 4)), splay = Math.Atan2(off / 2, back); // outward is positive
            for (var i = 0; i < near.Length; i++)
            {
                // Ground from the left kingpin to the right one, along y; the left arm's angle from it when straight is 90 deg and its splay.
                double input = Math.PI / 2 + splay - (near[i] * Deg), output = Math.PI / 2 - splay - (far[i] * Deg);
                Assert.Contains(Freudenstein(1300, arm, tie, arm, input), o => Near(o, output));
            }
        }, iter: 50);

    // Invariant: what turns the wheel by so much turns back by as much when the wheel drives: with shaft and kingpin changed about, the curve is the inverse one.
    [Fact]
    public void Driven_from_the_wheel_it_goes_the_same_way_back() =>
        Gen.Select(Gen.Double[100, 180], Gen.Double[-0.4, 0.4], Gen.Double[120, 220], Gen.Double[-0.4, 0.4]).Sample((pitman, swung, arm, splay) =>
        {
            (double X, double Y) P = (50, 100), K = (0, -650), E = (50 + (pitman * Math.Cos(swung)), 100 + (pitman * Math.Sin(swung))), S = (arm * Math.Cos(splay), -650 + (arm * Math.Sin(splay)));
            var there = Travel(P, E, S, 1300, 20);
            // Shifted so that the box's shaft stands where a left kingpin would: 3 m between the kingpins keeps every ball on the left.
            (double X, double Y) Shifted((double X, double Y) p) => (p.X - P.X, p.Y - P.Y - 1500);
            var back = Travel(Shifted(K), Shifted(S), Shifted(E), 3000, 15);
            var (box, wheel) = Curve(there, 0);
            var (drivenBox, drivenWheel) = Curve(back, 0);
            var middle = drivenBox.Zip(drivenWheel).Where(p => Math.Abs(p.First) < 14 && Math.Abs(p.First % 1) < 1e-6).ToList();
            Assert.NotEmpty(middle);
            foreach (var (steer, shaft) in middle) Assert.Equal(shaft, Between(wheel, box, steer), 0.02); // straight lines between whole degrees
        }, iter: 50);

    // A parallelogram of 150 mm arms: the wheel turns as the shaft does; at 30 deg one way the link that stands at atan(650 / 150) = 77.0 deg to the arms pulls at 47.0 deg.
    [Fact]
    public void Parallel_arms_turn_alike_and_pull_at_the_angle_left()
    {
        var r = Travel((150, 0), (300, 0), (150, -650), 1300, 30);
        r.Gives("boxLeft", 30, 1e-6);
        r.Gives("boxRight", 30, 1e-6);
        r.Gives("ratio", 1, 1e-9);
        r.Gives("transmission", 47.0, 0.05);
        Assert.Equal(("pass", "pass", "pass"), (r.Verdict("closes"), r.Verdict("transmission"), r.Verdict("even")));
    }

    // Mirror: the same linkage on the other side turns the box as far to the other lock.
    [Fact]
    public void A_mirrored_linkage_changes_left_and_right() =>
        Gen.Select(Gen.Double[-100, 200], Gen.Double[0, 400], Gen.Double[100, 250], Gen.Double[-60, 60]).Sample((px, py, arm, out1) =>
        {
            JsonObject one = Travel((px, py), (px + 150, py), (arm, -650 + out1), 1300, 25), other = Travel((px, -py), (px + 150, -py), (arm, 650 - out1), 1300, 25);
            Assert.Equal(one.Verdict("closes"), other.Verdict("closes"));
            Assert.Equal(one.Number("boxLeft") ?? 0, other.Number("boxRight") ?? 0, 1e-6);
            Assert.Equal(one.Number("transmission") ?? 0, other.Number("transmission") ?? 0, 1e-6);
        }, iter: 50);

    // A pitman arm of 40 mm on a steering arm of 150 mm turns it at most asin(40 / 150) or so: the lock of 30 deg is out of reach.
    [Fact]
    public void A_lock_out_of_reach_is_a_finding_and_gives_no_angle()
    {
        var r = Travel((150, 0), (190, 0), (150, -650), 1300, 30);
        Assert.Equal("fail", r.Verdict("closes"));
        Assert.Null(r.Number("boxLeft"));
        var says = r.Finding("closes")["text"]!.GetValue<string>();
        Assert.Contains("Turning left the wheel gets no farther than", says, StringComparison.Ordinal);
        Assert.Contains("dead center", says, StringComparison.Ordinal);
        Assert.Equal("unknown", r.Verdict("even"));
    }

    [Fact]
    public void An_arm_in_line_with_the_link_has_no_lever()
    {
        // Kingpin at (0, -650), arm toward the pitman ball along one line.
        var r = Travel((150, 0), (0, 0), (0, -500), 1300, 30);
        Assert.Equal("fail", r.Verdict("closes"));
        Assert.Contains("no lever", r.Finding("closes")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // A box of 20:1 with 4 turns goes 360 x 4 / 20 / 2 = 36 deg from its middle.
    [Theory]
    [InlineData(4, 30, "pass")]
    [InlineData(3, 30, "caution")]
    public void A_box_that_ends_before_the_stops_takes_the_load(double turns, double lockTo, string verdict) =>
        Assert.Equal(verdict, Travel((150, 0), (300, 0), (150, -650), 1300, lockTo, $",\"boxTurns\":{turns:R},\"boxRatio\":20").Verdict("box"));

    // Arms that point at the middle of the rear axle keep near to the ideal, parallel ones do not: at 30 deg inner and 126 in wheelbase parallel arms are 7 deg off.
    [Fact]
    public void Arms_that_point_at_the_rear_axle_scrub_less()
    {
        JsonObject aimed = Steered(150, 1300 - (2 * 150 * 650 / 3200.4)), parallel = Steered(150, 1300);
        Assert.Equal("pass", aimed.Verdict("scrub"));
        Assert.Equal("caution", parallel.Verdict("scrub"));
        // Parallel: the outer angle is the inner one; cot 30 + 1300 / 3200.4 is cot 25.06 deg.
        parallel.Gives("scrub", 30 - (Math.Atan2(1, (1 / Math.Tan(30 * Deg)) + (1300 / 3200.4)) / Deg), 1e-3);
    }

    [Fact]
    public void A_tie_rod_that_does_not_reach_is_a_finding() => Assert.Equal("fail", Steered(600, 700).Verdict("scrub"));

    /// <summary>Whether the tie rod is well off a dead center (20 deg and more from being in line with the far arm) where the near wheel is turned by so much.</summary>
    private static bool Reaches(double back, double tie, double degrees)
    {
        double off = tie - 1300, arm = Math.Sqrt((back * back) + (off * off / 4)), splay = Math.Atan2(off / 2, back), input = (Math.PI / 2) + splay - (degrees * Deg);
        // Diagonal from the near ball to the far kingpin; the angle between tie rod and far arm by the cosine rule.
        double d2 = (1300 * 1300) + (arm * arm) - (2 * 1300 * arm * Math.Cos(input)), cosine = ((tie * tie) + (arm * arm) - d2) / (2 * tie * arm);
        return Math.Abs(cosine) < Math.Cos(20 * Deg);
    }

    /// <summary>The parallelogram with a tie rod behind the axle, locks of 30 deg, wheelbase 126 in.</summary>
    private static JsonObject Steered(double back, double length) =>
        Travel((150, 0), (300, 0), (150, -650), 1300, 30, $",\"tieRodX\":\"{back:R} mm\",\"tieRodZ\":\"-150 mm\",\"tieRodLength\":\"{length:R} mm\",\"wheelbase\":\"126 in\"");

    /// <summary>Output angles of a four-bar, both ways of putting it together; ground d, crank a, coupler b, rocker c.</summary>
    private static IEnumerable<double> Freudenstein(double d, double a, double b, double c, double input)
    {
        double R1 = d / a, R2 = d / c, R3 = ((a * a) - (b * b) + (c * c) + (d * d)) / (2 * a * c);
        // K1 cos(out) - K2 cos(in) + K3 = cos(in - out), with K1 = d / a, K2 = d / c; by t = tan(out / 2).
        double A = Math.Cos(input) - R1 - (R2 * Math.Cos(input)) + R3, B = -2 * Math.Sin(input), C = R1 - ((R2 + 1) * Math.Cos(input)) + R3;
        var root = (B * B) - (4 * A * C);
        if (root < 0) root = root > -1e-9 * B * B ? 0 : double.NaN;
        yield return 2 * Math.Atan2(-B + Math.Sqrt(root), 2 * A);
        yield return 2 * Math.Atan2(-B - Math.Sqrt(root), 2 * A);
    }

    private static bool Near(double a, double b) => Math.Abs(Math.IEEERemainder(a - b, 2 * Math.PI)) < 1e-6;

    /// <summary>y at x on straight lines between points with x rising or falling.</summary>
    private static double Between(double[] x, double[] y, double at)
    {
        for (var i = 1; i < x.Length; i++)
            if (Math.Min(x[i - 1], x[i]) <= at && at <= Math.Max(x[i - 1], x[i])) return y[i - 1] + ((y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]));
        return double.NaN;
    }
}
