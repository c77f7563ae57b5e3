using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Driveline;

public class ShaftTorqueTests
{
    private const double PoundFoot = 4.4482216152605 * 0.3048, Ksi = 6.894757293168361; // N m, MPa

    private const string Engine = """
        "torqueCurve":[["1200 rpm","290 N m"],["2000 rpm","330 N m"],["4000 rpm","250 N m"]],"gearRatios":{"4":"1","1":"5.15"},"transferRatios":{"low":"2.28","high":"1"}
        """;

    // Derived: 330 x 5.15 x 2.28 x 0.85 = 3294 N m (efficiency of an all-gear train: US Army TM 9-8000, par. 29-14). Grip 0.7, 0.40688 m, 4.11:
    // the whole 2150 kg make 1461 N m at both propeller shafts together, 55 % of it 803.6 N m at one. Tolerance 0.5 % down to the last digit printed.
    [Theory]
    [InlineData(2150, 1461, 0.5)]
    [InlineData(1182.5, 803.6, 0.05)]
    public void Propeller_shaft_torque_at_stall_and_at_the_limit_of_grip(double load, double grip, double tolerance)
    {
        var r = Propshaft($$"""{{Engine}},"axleLoads":{"touring":"{{load}} kg"}""");
        r.Gives("stallTorque", 3294 / PoundFoot, 0.5 / PoundFoot);
        r.Gives("gripTorque", grip / PoundFoot, tolerance / PoundFoot);
        Assert.Equal(r.Number("gripTorque"), r.Number("torque"));
        Assert.Contains("Tp", r["working"]!.AsArray().Select(l => l!["symbol"]!.GetValue<string>()));
    }

    [Fact]
    public void The_curve_counts_with_its_highest_point_and_stands_above_a_stated_torque()
    {
        double Stall(string engine) => Door.Run("driveline.propshaft-torque", $$"""
            {"axleRatio":4.11,"gearRatios":{"1":5.15},"transferRatios":{"low":2.28},{{engine}} }
            """).Number("stallTorque")!.Value;
        Assert.Equal(Stall(""" "peakTorque":"330 N m" """), Stall(""" "peakTorque":"100 N m","torqueCurve":[["1200 rpm","290 N m"],["2000 rpm","330 N m"],["4000 rpm","250 N m"]] """), 1e-9);
        // A converter that doubles the torque at stall doubles the stall case.
        Assert.Equal(2 * Stall(""" "peakTorque":"330 N m" """), Stall(""" "peakTorque":"330 N m","converterRatio":2 """), 1e-9);
    }

    [Fact]
    public void The_heaviest_condition_and_the_lowest_gearing_count_whatever_their_order()
    {
        var loads = """ "axleLoads":{"empty":"800 kg","touring":"1182.5 kg","bare":"700 kg"} """;
        Assert.Equal(803.6 / PoundFoot, Propshaft($"{Engine},{loads}").Number("torque")!.Value, 0.05 / PoundFoot);
    }

    // Invariant: what the shaft turns in is what the wheel pays out, T x omega = F x v, with the shaft speed of another calculation.
    [Fact]
    public void Power_in_the_shaft_is_pull_times_speed() =>
        Gen.Select(Gen.Double[300, 3000], Gen.Double[2.5, 6], Gen.Double[0.3, 0.5], Gen.Double[0.2, 1], Gen.Double[5, 40]).Sample((load, axle, re, mu, v) =>
        {
            var torque = PoundFoot * Door.Run("driveline.propshaft-torque", $$"""
                {"axleRatio":{{axle:R}},"axleLoads":{"a":"{{load:R}} kg"},"rollingRadius":"{{re:R}} m","grip":{{mu:R}} }
                """).Number("gripTorque")!.Value;
            var turns = Door.Run("driveline.propshaft-critical-speed", $$"""
                {"length":"1 m","tubeDiameter":"3 in","tubeWall":"2 mm","cruiseSpeed":"{{v:R}} m/s","axleRatio":{{axle:R}},"rollingRadius":"{{re:R}} m"}
                """).Number("cruiseShaftSpeed")!.Value * Math.PI / 30;
            Assert.Equal(mu * load * 9.80665 * v, torque * turns, 1e-9 * torque * turns);
        }, iter: 50);

    // 803.6 N m are 592.7 lb-ft.
    [Theory]
    [InlineData("600 lbf ft", "pass")]
    [InlineData("590 lbf ft", "fail")]
    public void The_lower_torque_is_held_against_the_joint(string rating, string verdict)
    {
        var r = Propshaft($$"""{{Engine}},"axleLoads":{"touring":"1182.5 kg"},"jointRating":"{{rating}}" """);
        Assert.Equal(verdict, r.Verdict("joint-rating"));
        Assert.Contains("what the ground can hold", r.Finding("joint-rating")["text"]!.GetValue<string>());
    }

    // With one of the two cases known the shaft sees no more than it: enough to pass, not enough to fail.
    [Theory]
    [InlineData("2500 lbf ft", "pass")]
    [InlineData("2400 lbf ft", "unknown")]
    public void The_engine_alone_can_pass_a_joint_and_cannot_fail_it(string rating, string verdict)
    {
        var r = Door.Run("driveline.propshaft-torque", $$"""{"axleRatio":"4.11",{{Engine}},"jointRating":"{{rating}}"}""");
        Assert.Equal(verdict, r.Verdict("joint-rating"));
        r.Gives("torque", 3294 / PoundFoot, 0.5 / PoundFoot);
    }

    [Fact]
    public void With_neither_engine_nor_load_the_answer_says_what_is_missing()
    {
        var finding = Door.Run("driveline.propshaft-torque", """{"axleRatio":"4.11","jointRating":"900 lbf ft"}""").Finding("joint-rating");
        Assert.Equal("unknown", finding["verdict"]!.GetValue<string>());
        Assert.Contains("the engine's torque with all gear", finding["text"]!.GetValue<string>());
    }

    // Derived: at both wheels the engine gives the propeller shaft's torque times the axle ratio, the ground 0.7 x 1182.5 x 9.80665 x 0.40688 = 3302.8 N m.
    [Fact]
    public void An_open_differential_halves_what_a_locked_one_may_put_on_one_shaft()
    {
        var r = Axle($$"""{{Engine}},"axleLoads":{"touring":"1182.5 kg"}""");
        r.Gives("stallTorque", 3293.63 * 4.11 / PoundFoot, 0.1);
        r.Gives("lockedTorque", 3302.8 / PoundFoot, 0.05);
        r.Gives("openTorque", 1651.4 / PoundFoot, 0.05);
        Assert.Null(r.Number("openShear"));
    }

    // 16 x 1651.4 N m / (pi 0.032^3) = 256.7 MPa = 37.2 ksi with an open differential, 513.3 MPa = 74.5 ksi on one shaft of a locked one.
    [Theory]
    [InlineData("75 ksi", "pass")]
    [InlineData("74 ksi", "caution")]
    [InlineData("37.3 ksi", "caution")]
    [InlineData("37.1 ksi", "fail")]
    public void A_shaft_that_stands_an_open_differential_alone_gets_a_caution(string strength, string verdict)
    {
        var r = Axle($$"""{{Engine}},"axleLoads":{"touring":"1182.5 kg"},"shaftDiameter":"32 mm","shearStrength":"{{strength}}" """);
        r.Gives("openShear", 256.7 / Ksi, 0.05 / Ksi);
        r.Gives("lockedShear", 513.3 / Ksi, 0.1 / Ksi);
        Assert.Equal(verdict, r.Verdict("shear"));
        Assert.Equal(verdict == "caution", r.Finding("shear")["text"]!.GetValue<string>().Contains("locker or spool", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("2500 lbf ft", "pass")]
    [InlineData("1300 lbf ft", "caution")]
    [InlineData("1200 lbf ft", "fail")]
    public void The_joint_of_a_front_axle_shaft_is_judged_the_same_way(string rating, string verdict) =>
        Assert.Equal(verdict, Axle($$"""{{Engine}},"axleLoads":{"touring":"1182.5 kg"},"jointRating":"{{rating}}" """).Verdict("joint-rating"));

    [Fact]
    public void What_the_ground_holds_alone_does_not_fail_a_shaft() =>
        Assert.Equal("unknown", Axle(""" "axleLoads":{"touring":"1182.5 kg"},"shaftDiameter":"32 mm","shearStrength":"30 ksi" """).Verdict("shear"));

    // Derived: 186.8 MPa at 3294 N m in a tube of 76.2 mm and 2.1 mm wall. Tolerance 0.5 %: half of the last digit is 0.03 %.
    [Fact]
    public void Shear_in_a_propeller_shaft_tube() =>
        Door.Run("driveline.propshaft-shear", """{"torque":"3294 N m","tubeDiameter":"76.2 mm","tubeWall":"2.1 mm"}""").Gives("shearStress", 186.8 / Ksi, 0.1 / Ksi);

    // Independent: stress grows with the radius, tau = T R / (sum of r^2 dA) over 20,000 rings; the sum is exact to about 1e-8.
    [Fact]
    public void Shear_agrees_with_the_sum_over_rings() =>
        Gen.Select(Gen.Double[20, 100], Gen.Double[0.02, 0.5], Gen.Double[10, 5000]).Sample((D, share, T) =>
        {
            double R = D / 2000, r0 = R * (1 - (2 * share)), step = (R - r0) / 20_000, J = 0; // m
            for (var i = 0; i < 20_000; i++)
            {
                var r = r0 + ((i + 0.5) * step);
                J += r * r * 2 * Math.PI * r * step;
            }
            var tau = Door.Run("driveline.propshaft-shear", $$"""{"torque":"{{T:R}} N m","tubeDiameter":"{{D:R}} mm","tubeWall":"{{D * share:R}} mm"}""").Number("shearStress")!.Value * Ksi * 1e6;
            Assert.Equal(T * R / J, tau, 1e-6 * tau);
        }, iter: 20);

    // A tube whose wall is half its diameter is a solid shaft: 16 T / (pi d^3), as for an axle shaft.
    [Fact]
    public void A_tube_without_a_hole_is_a_solid_shaft() =>
        Door.Run("driveline.propshaft-shear", """{"torque":"1651.4 N m","tubeDiameter":"32 mm","tubeWall":"16 mm"}""").Gives("shearStress", 256.7 / Ksi, 0.05 / Ksi);

    [Fact]
    public void A_wall_of_more_than_half_the_diameter_has_no_answer_and_says_so()
    {
        var r = Door.Run("driveline.propshaft-shear", """{"torque":"1000 N m","tubeDiameter":"2 in","tubeWall":"1.1 in","shearStrength":"40 ksi"}""");
        Assert.Null(r.Number("shearStress"));
        Assert.Equal("unknown", r.Verdict("shear"));
        Assert.Contains(r["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("no such tube", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("0.059 in", true)] // 3 in is 51 walls
    [InlineData("0.065 in", false)]
    public void A_tube_that_may_wrinkle_is_said_to(string wall, bool thin) =>
        Assert.Equal(thin, Door.Run("driveline.propshaft-shear", $$"""{"torque":"1000 N m","tubeDiameter":"3 in","tubeWall":"{{wall}}"}""")["cautions"]!.AsArray()
            .Any(c => c!.GetValue<string>().Contains("wrinkle", StringComparison.Ordinal)));

    private static JsonObject Propshaft(string rest) => Door.Run("driveline.propshaft-torque", $$"""{"axleRatio":"4.11","rollingRadius":"406.88 mm",{{rest}} }""");

    private static JsonObject Axle(string rest) => Door.Run("driveline.axle-shaft-torque", $$"""{"axleRatio":"4.11","rollingRadius":"406.88 mm",{{rest}} }""");
}
