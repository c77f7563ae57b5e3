using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using static Crossmember.Engineering.Tests.Steering.LinkagePlane;

namespace Crossmember.Engineering.Tests.Steering;

/// <summary>Whole linkages with leaning kingpins and every lie of the box's shaft, from lock to lock, against another method.</summary>
/// <remarks>
/// Independent: plain Python 3, another algorithm: secant steps on the length of drag link and tie rod from the neighbouring answer, every quarter of a degree of the box's shaft
/// (no bracket, no dead centers), quaternions for turns, 60 halvings to the lock:
///   kingpin = (tan(caster), -h*tan(inclination), 1)/norm; arm(f) = K + rot(S-K, kingpin, f); ball(th) = pivot + rot(E-pivot, shaft, th)
///   f: secant on dist(arm(f), ball(th)) - L; g: secant on dist(K2 + rot(T2-K2, kingpin2, g), K + rot(T1-K, kingpin, f)) - tie rod
///   steer: degrees(atan2(-s.x, s.y)), s = rot((0,1,0), kingpin, f)
/// </remarks>
public class LinkageLeaningTests
{
    private const double Tolerance = 2e-6; // deg, six decimals printed

    private sealed record Case(string Shaft, double[] Pivot, double[] Pitman, double[] Arm, double Caster, double Inclination, double[] Tie, double Inner, double Outer);

    // Locks: the drag link's wheel goes Outer turning to the far side of the vehicle and Inner turning to its own.
    private static readonly Dictionary<string, Case> s_cases = new()
    {
        ["upright"] = new("upright", [-150, -420, -75], [-315, -420, -90], [-180, 620, -125], 2.5, 7.5, [165, -165, 1205], 28, 30),
        ["across"] = new("across", [-600, -430, 20], [-600, -450, -140], [150, -440, -110], 4, 8, [165, -165, 1205], 31, 27),
        ["lengthwise"] = new("lengthwise", [120, -400, 40], [100, -400, -120], [-175, 560, -100], 3, 6, [-160, -165, 1330], 28, 30),
    };

    [Theory]
    [InlineData("upright", 32.053003, 31.146080)]
    [InlineData("across", 46.923351, 27.191138)]
    [InlineData("lengthwise", 36.047661, 36.407075)]
    public void The_box_turns_so_far_to_the_locks(string which, double left, double right)
    {
        var r = Run(which);
        r.Gives("boxLeft", left, Tolerance);
        r.Gives("boxRight", right, Tolerance);
    }

    // Turn of the box's shaft, drag link's wheel, other wheel; the curve counts the shaft by the side the wheel goes to.
    [Theory]
    [InlineData("upright", 10, 9.274624, 9.608025)]
    [InlineData("upright", 20, -18.182385, -16.985362)]
    [InlineData("across", 10, 8.103775, 7.873735)]
    [InlineData("across", 20, -19.012325, -20.496389)]
    [InlineData("lengthwise", 10, -8.009093, -7.833210)]
    [InlineData("lengthwise", 20, 16.384545, 17.198673)]
    public void Both_wheels_on_the_way(string which, double box, double near, double far)
    {
        var r = Run(which);
        var last = r["curves"]!.AsArray().Count - 1;
        var (x, wheel) = Curve(r, last - 1);
        var (_, other) = Curve(r, last);
        var at = Array.FindIndex(x, v => Math.Abs(v - Math.CopySign(box, near)) < 1e-9);
        Assert.True(at >= 0);
        Assert.Equal(near, wheel[at], Tolerance);
        Assert.Equal(far, other[at], Tolerance);
    }

    [Theory]
    [InlineData("upright", 30, 34.567228)]
    [InlineData("across", -27, -30.373350)]
    [InlineData("lengthwise", 30, 33.188863)]
    public void The_other_wheel_at_a_lock(string which, double near, double far)
    {
        var r = Run(which);
        var last = r["curves"]!.AsArray().Count - 1;
        var (_, wheel) = Curve(r, last - 1);
        var (_, other) = Curve(r, last);
        var at = near > 0 ? wheel.Length - 1 : 0;
        Assert.Equal(near, wheel[at], 1e-6);
        Assert.Equal(far, other[at], 1e-5);
    }

    // The error told is that of the worst point of the curve: outer less ideal outer for the inner, cot outer = cot inner + B / L.
    [Theory]
    [InlineData("upright")]
    [InlineData("across")]
    [InlineData("lengthwise")]
    public void The_error_is_the_worst_of_the_curve(string which)
    {
        var r = Run(which);
        var last = r["curves"]!.AsArray().Count - 1;
        var (_, wheel) = Curve(r, last - 1);
        var (_, other) = Curve(r, last);
        var worst = wheel.Zip(other).Where(p => Math.Abs(p.First) > 1e-6).Select(p =>
        {
            // Left is positive: turning left the left wheel is the inner one. The drag link is on the right in two of the cases.
            var onRight = s_cases[which].Arm[1] > 0;
            double left = onRight ? p.Second : p.First, right = onRight ? p.First : p.Second;
            double inner = Math.Abs(p.First > 0 ? left : right) * Deg, outer = Math.Abs(p.First > 0 ? right : left) * Deg;
            return (outer - Math.Atan(1 / ((1 / Math.Tan(inner)) + (1270 / 3200.4)))) / Deg;
        }).MaxBy(Math.Abs);
        r.Gives("scrub", worst, 1e-6);
    }

    // By work: what the box's shaft turns against, without loss, is in the ratio of the speeds. Near straight ahead the ratio told is that of one degree either way on the curve.
    [Theory]
    [InlineData("upright")]
    [InlineData("across")]
    [InlineData("lengthwise")]
    public void The_ratio_is_the_slope_of_the_curve(string which)
    {
        var r = Run(which);
        var (x, wheel) = Curve(r, r["curves"]!.AsArray().Count - 2);
        var middle = Array.FindIndex(x, v => Math.Abs(v) < 1e-9);
        r.Gives("ratio", (x[middle + 1] - x[middle - 1]) / (wheel[middle + 1] - wheel[middle - 1]), 1e-9);
    }

    private static JsonObject Run(string which)
    {
        var c = s_cases[which];
        return Door.Run("steering.linkage-travel", $$"""
            {"pitmanShaft":"{{c.Shaft}}","pivotX":"{{c.Pivot[0]}} mm","pivotY":"{{c.Pivot[1]}} mm","pivotZ":"{{c.Pivot[2]}} mm","pitmanX":"{{c.Pitman[0]}} mm","pitmanY":"{{c.Pitman[1]}} mm",
             "pitmanZ":"{{c.Pitman[2]}} mm","armX":"{{c.Arm[0]}} mm","armY":"{{c.Arm[1]}} mm","armZ":"{{c.Arm[2]}} mm","kingpinDistance":"1270 mm","pointsRideHeight":"152 mm",
             "caster":"{{c.Caster:R}} deg","inclination":"{{c.Inclination:R}} deg","tieRodX":"{{c.Tie[0]}} mm","tieRodZ":"{{c.Tie[1]}} mm","tieRodLength":"{{c.Tie[2]}} mm","wheelbase":"126 in",
             "innerAngles":{"left":"{{c.Inner}} deg","right":"{{c.Inner}} deg"},"outerAngles":{"left":"{{c.Outer}} deg","right":"{{c.Outer}} deg"} }
            """);
    }
}
