using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;

namespace Crossmember.Engineering.Tests.Driveline;

/// <summary>Whole curves against another language, and what is drawn and what is not.</summary>
/// <remarks>
/// The numbers were made before the test by plain Python 3, by another road: force from power over speed, road speed from turns of the wheel, top speed by halving.
/// <code>
/// from math import *
/// lbf, mph, m, f, A, rho = 0.45359237 * 9.80665, 0.44704, 1950, 0.016, 1.62, 1.2
/// engine = [(800, 205), (1600, 258), (2400, 249), (3800, 181)]
/// for i in (5.83, 3.02, 1.66, 1.0):
///     print([(round(v / mph, 4), round(0.85 * T * n * pi / 30 / v / lbf, 3)) for n, T in engine for v in [n / 60 / (i * 4.1) * 2.5565]])
/// for g in (0, 0.4):
///     c, s = 1 / sqrt(1 + g * g), g / sqrt(1 + g * g)
///     print([round((m * 9.80665 * (f * c + s) + rho * A * (k * mph) ** 2 / 2) / lbf, 3) for k in (0, 20, 40, 60)])
/// lo, hi = 1.0, 200.0
/// for _ in range(99):
///     v = (lo + hi) / 2; n = v / 2.5565 * 60 * 4.1; T = 249 + (181 - 249) * (n - 2400) / 1400
///     lo, hi = (v, hi) if 0.85 * T * n * pi / 30 &gt; v * (m * 9.80665 * f + rho * A * v * v / 2) else (lo, v)
/// print(round(lo / mph, 4), round(lo / 2.5565 * 60 * 4.1, 2))
/// </code>
/// </remarks>
public class PullCurveTests
{
    private const string Engine = """[["800 rpm","205 N m"],["1600 rpm","258 N m"],["2400 rpm","249 N m"],["3800 rpm","181 N m"]]""";
    private static readonly string s_radius = (2556.5 / (2 * Math.PI)).ToString("R", CultureInfo.InvariantCulture) + " mm";

    public static TheoryData<string, double[], double[]> Gears => new()
    {
        { "gear 1", [3.19, 6.3799, 9.5699, 15.1523], [2301.298, 2896.268, 2795.235, 2031.878] },
        { "gear 2", [6.1581, 12.3162, 18.4743, 29.251], [1192.096, 1500.296, 1447.961, 1052.534] },
        { "gear 3", [11.2033, 22.4066, 33.6099, 53.2157], [655.258, 824.666, 795.899, 578.545] },
        { "gear 4", [18.5975, 37.195, 55.7925, 88.3381], [394.734, 496.787, 479.457, 348.521] },
    };

    [Theory]
    [MemberData(nameof(Gears))]
    public void Pull_of_every_gear_is_that_of_the_other_language(string gear, double[] mph, double[] pounds)
    {
        var curve = Named(Pulls(), gear);
        Assert.Equal(("mph", "lbf"), ((string)curve["x"]!["unit"]!, (string)curve["y"]!["unit"]!));
        Agree(mph, Values(curve, "x"), 0.00005);
        Agree(pounds, Values(curve, "y"), 0.0005);
    }

    [Theory]
    [InlineData("road load, level", new[] { 68.784, 86.252, 138.655, 225.992 })]
    [InlineData("road load, 40 % grade", new[] { 1660.478, 1677.946, 1730.349, 1817.686 })]
    public void Road_load_at_four_speeds_is_that_of_the_other_language(string name, double[] pounds)
    {
        // The line has 41 points to the speed at which the longest gear ends; the four are read off the formula's own parabola through three of them.
        var curve = Named(Pulls(), name);
        double[] x = Values(curve, "x"), y = Values(curve, "y");
        Assert.Equal(41, x.Length);
        double[] at = [0, 20, 40, 60];
        Agree(pounds, [.. at.Select(v => Parabola(x, y, v))], 0.0005);
    }

    [Fact]
    public void Top_speed_is_that_of_the_other_language()
    {
        var r = Door.Run("driveline.top-speed", Vehicle(""" "transferRatios":{"high":1,"low":"2.15"} """));
        r.Gives("topSpeed", 83.0335, 0.00005);
        r.Gives("engineSpeed", 3571.81, 0.005);
    }

    [Fact]
    public void The_grip_limit_is_level_and_told()
    {
        var r = Pulls();
        var curve = Named(r, "grip limit");
        Assert.All(Values(curve, "y"), y => Assert.Equal(0.7 * 1950 / 0.45359237, y, 1e-6));
        r.Gives("gripLimit", 0.7 * 1950 / 0.45359237, 1e-6);
        r.Gives("fastest", Values(curve, "x")[^1], 1e-9);
    }

    // Idle 1000 rpm and redline 3000 rpm lie inside the curve: 205 + 53 / 4 = 218.25 and 249 - 68 x 6/14 = 219.857 N m stand at the ends.
    [Fact]
    public void Nothing_is_drawn_below_idle_over_the_redline_or_beyond_the_curve()
    {
        var inside = Named(Pulls(""" ,"idleSpeed":"1000 rpm","redline":"3000 rpm" """), "gear 4");
        Agree([18.5975 * 1000 / 800, 37.195, 55.7925, 18.5975 * 3000 / 800], Values(inside, "x"), 0.0002);
        Agree([394.734 * 218.25 / 205, 496.787, 479.457, 394.734 * 219.85714 / 205], Values(inside, "y"), 0.001);
        Assert.Equal(Values(Named(Pulls(), "gear 4"), "x"), Values(Named(Pulls(""" ,"idleSpeed":"500 rpm","redline":"6000 rpm" """), "gear 4"), "x"));
    }

    [Fact]
    public void Without_drag_area_no_road_load_is_drawn_and_without_pull_nothing_is()
    {
        var bare = Door.Run("driveline.tractive-curves", $$"""{"torqueCurve":{{Engine}},"gearRatios":{"4":1},"axleRatio":"4.1","rollingRadius":"{{s_radius}}","mass":"1950 kg"}""");
        Assert.Equal(["gear 4", "grip limit"], bare["curves"]!.AsArray().Select(c => (string)c!["name"]!));
        var idle = Pulls(""" ,"redline":"700 rpm" """);
        Assert.Empty(idle["curves"]!.AsArray());
        Assert.Null(idle.Number("largestPull"));
        Assert.Contains(idle["cautions"]!.AsArray(), c => ((string)c!).Contains("800 to 3800 rpm"));
    }

    // Derived: 65 mph on 3.05 x 33 in is 2803 rpm in direct with 4.11 (half of the last digit); a straight line through the origin.
    [Fact]
    public void Speed_lines_are_rolling_wheels_from_idle_to_redline()
    {
        var radius = (3.05 * 33 / (2 * Math.PI)).ToString("R", CultureInfo.InvariantCulture) + " in";
        var r = Door.Run("driveline.speed-curves", $$"""{"gearRatios":{"1":"5.15","4":"1"},"axleRatio":"4.11","rollingRadius":"{{radius}}","idleSpeed":"700 rpm","redline":"4000 rpm"}""");
        Assert.Equal(["gear 1", "gear 4"], r["curves"]!.AsArray().Select(c => (string)c!["name"]!));
        double[] x = Values(Named(r, "gear 4"), "x"), y = Values(Named(r, "gear 4"), "y");
        Agree([700, 4000], y, 1e-9);
        Assert.All(x.Zip(y), p => Assert.Equal(2803, p.Second / p.First * 65, 0.5));
        Assert.All(x.Zip(Values(Named(r, "gear 1"), "x")), p => Assert.Equal(5.15, p.First / p.Second, 1e-9));
        r.Gives("fastest", x[1], 1e-9);
        r.Gives("slowest", Values(Named(r, "gear 1"), "x")[0], 1e-9);
    }

    [Fact]
    public void Without_idle_the_speed_lines_begin_at_standstill_and_an_idle_over_the_redline_draws_none()
    {
        JsonObject With(string idle) => Door.Run("driveline.speed-curves", $$"""{"gearRatios":{"4":"1"},"axleRatio":"4.11","rollingRadius":"16 in","redline":"4000 rpm"{{idle}}}""");
        Assert.Equal([0.0, 4000], Values(Named(With(""), "gear 4"), "y").Select(n => Math.Round(n, 9)));
        Assert.Null(With("").Number("slowest"));
        Assert.Empty(With(""","idleSpeed":"4500 rpm" """)["curves"]!.AsArray());
    }

    private static JsonObject Pulls(string more = "") => Door.Run("driveline.tractive-curves", Vehicle($""" "grade":"0.4"{more}"""));

    private static string Vehicle(string more) => $$"""
        {"torqueCurve":{{Engine}},"gearRatios":{"1":"5.83","2":"3.02","3":"1.66","4":"1"},"axleRatio":"4.1","rollingRadius":"{{s_radius}}",
         "mass":"1950 kg","rollingResistance":"0.016","dragArea":"1.62 m2",{{more}}}
        """;

    private static JsonObject Named(JsonObject result, string curve) => Assert.Single(result["curves"]!.AsArray(), c => (string)c!["name"]! == curve)!.AsObject();

    private static double[] Values(JsonObject curve, string axis) => [.. curve[axis]!["values"]!.AsArray().Select(v => v!.GetValue<double>())];

    private static void Agree(double[] expected, double[] actual, double tolerance)
    {
        Assert.Equal(expected.Length, actual.Length);
        Assert.All(expected.Zip(actual), p => Assert.Equal(p.First, p.Second, tolerance));
    }

    /// <summary>Through the first, middle and last point (Lagrange).</summary>
    private static double Parabola(double[] x, double[] y, double at)
    {
        int[] three = [0, x.Length / 2, x.Length - 1];
        return three.Sum(i => y[i] * three.Where(j => j != i).Aggregate(1.0, (p, j) => p * (at - x[j]) / (x[i] - x[j])));
    }
}
