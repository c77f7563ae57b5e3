using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Wheels;

/// <summary>Standing on a grade: 2100 kg, wheelbase 2.600, center 1.248 behind the front axle and 0.760 m high, on 375 mm.</summary>
public class ParkingTests
{
    private const string Parts = ""","strutRatio":"5","leverRatio":"7","cableEfficiency":"0.8","factor":"2.3","drumDiameter":"254 mm","operation":"hand" """;

    // Derived by hand: F = 2100 x 9.80665 x sin(atan G); k = F L / (W (a cos +- h sin)).
    [Theory]
    [InlineData(0.2, 4038.8, 757.3, 0.3714, 0.4745)]
    [InlineData(0.3, 5917.6, 1109.6, 0.5285, 0.7647)]
    public void Grip_and_torque_at_the_rear_axle_by_hand(double grade, double force, double torque, double up, double down)
    {
        var r = Run("rear", grade);
        r.Gives("force", force, 0.05);
        r.Gives("torque", torque, 0.05);
        r.Gives("useUp", up, 0.00005);
        r.Gives("useDown", down, 0.00005);
    }

    // Derived: grip 0.6: mu a / (L - mu h) = 34.9 % up, mu a / (L + mu h) = 24.5 % down. A driveline drum behind 4.10 on 30 %: 541.2 N m.
    [Fact]
    public void Steepest_grades_and_a_driveline_drum_by_hand()
    {
        var r = Run("rear", 0.2);
        r.Gives("steepestUp", 0.349, 0.0005);
        r.Gives("steepestDown", 0.245, 0.0005);
        Run("driveline", 0.3, ""","axleRatio":"4.10" """).Gives("torque", 541.2, 0.05);
    }

    // On the steepest grade the grip used is the grip there is, at either axle and either way round.
    [Fact]
    public void On_the_steepest_grade_all_grip_is_used() =>
        Gen.Select(Gen.Double[0.3, 0.8], Gen.Double[1.0, 1.5], Gen.Double[0.5, 1.0], Gen.Bool).Sample((grip, a, h, front) =>
        {
            JsonObject At(double grade) => Run(front ? "front" : "rear", grade, grip: grip, a: a, h: h);
            var r = At(0.1);
            double up = r.Number("steepestUp")!.Value, down = r.Number("steepestDown")!.Value;
            if (up < (2.6 - a) / h) At(up).Gives("useUp", grip, 1e-9);
            if (down < a / h) At(down).Gives("useDown", grip, 1e-9);
        }, iter: 60);

    // A vehicle turned end for end and braked at the other axle is the same vehicle.
    [Fact]
    public void Turned_end_for_end_it_is_the_same() =>
        Gen.Select(Gen.Double[0.05, 0.4], Gen.Double[1.0, 1.6], Gen.Double[0.5, 1.0]).Sample((grade, a, h) =>
        {
            JsonObject rear = Run("rear", grade, a: a, h: h), front = Run("front", grade, a: 2.6 - a, h: h);
            Assert.Equal(rear.Number("useUp")!.Value, front.Number("useDown")!.Value, 1e-9);
            Assert.Equal(rear.Number("steepestDown")!.Value, front.Number("steepestUp")!.Value, 1e-9);
        }, iter: 40);

    // Loads of both axles summed are the weight's share square to the slope: the use of the braked axle, by moments about the other one.
    [Fact]
    public void Use_by_moments_about_the_other_axle() =>
        Gen.Select(Gen.Double[0.05, 0.4], Gen.Double[1.0, 1.6], Gen.Double[0.5, 1.0]).Sample((grade, a, h) =>
        {
            double th = Math.Atan(grade), W = 2100 * 9.80665, rearUp = ((W * Math.Cos(th) * a) + (W * Math.Sin(th) * h)) / 2.6;
            Run("rear", grade, a: a, h: h).Gives("useUp", W * Math.Sin(th) / rearUp, 1e-9);
            Run("front", grade, a: a, h: h).Gives("useUp", W * Math.Sin(th) / ((W * Math.Cos(th)) - rearUp), 1e-9);
        }, iter: 40);

    [Theory]
    [InlineData(0.2, 0.6, "pass", "pass")]
    [InlineData(0.3, 0.6, "pass", "fail")]
    [InlineData(0.4, 0.6, "fail", "fail")]
    public void Grip_decides_each_way_round(double grade, double grip, string up, string down)
    {
        var r = Run("rear", grade, grip: grip);
        Assert.Equal(up, r.Verdict("facing-up"));
        Assert.Equal(down, r.Verdict("facing-down"));
    }

    // By hand: 2 x 757.3 / (2.3 x 0.127 x 5 x 7 x 0.8) = 185.2 N. On the driveline 4038.8 x 0.375 / 4.10 = 369.4 N m, one brake: 45.2 N.
    [Fact]
    public void Pull_at_the_lever_by_hand()
    {
        Run("rear", 0.2, Parts).Gives("effort", 185.2, 0.05);
        Run("driveline", 0.2, Parts + ""","axleRatio":"4.10" """).Gives("effort", 45.16, 0.05);
        Assert.Contains("jacked up", Run("driveline", 0.2, Parts)["cautions"]!.ToJsonString());
    }

    // The wheels' own drums stand in where the parking brake has none, the weaker way round; two leading shoes hold little backward.
    [Fact]
    public void The_rear_drums_count_the_weaker_way_round()
    {
        const string Drums = ""","strutRatio":"5","leverRatio":"7","cableEfficiency":"0.8","wheelFactors":{"left":"3","right":"3"},"wheelReverseFactors":{"left":"1.15","right":"1.2"},"wheelDrums":{"left":"254 mm","right":"254 mm"}""";
        Run("rear", 0.2, Drums).Gives("effort", 2 * 185.2, 0.1);
        Assert.Null(Run("front", 0.2, Drums).Number("effort"));
    }

    // A maker's factor of two leading shoes is forward only: backward they are two trailing ones.
    [Fact]
    public void Two_leading_shoes_need_their_factor_backward()
    {
        const string Drums = ""","strutRatio":"5","leverRatio":"7","cableEfficiency":"0.8","operation":"hand","wheelFactors":{"left":"3","right":"3"},"wheelDrums":{"left":"254 mm","right":"254 mm"}""";
        var r = Run("rear", 0.2, Drums + ""","wheelDrumKinds":{"left":"two-leading","right":"two-leading"}""");
        Assert.Null(r.Number("effort"));
        Assert.Equal("unknown", r.Verdict("effort"));
        Assert.Contains("backward is missing", r.Finding("effort")["text"]!.GetValue<string>());
        Run("rear", 0.2, Drums + ""","wheelDrumKinds":{"left":"leading-trailing","right":"leading-trailing"}""").Gives("effort", 185.2 * 2.3 / 3, 0.1);
        Run("rear", 0.2, Drums + ""","wheelDrumKinds":{"left":"two-leading","right":"two-leading"},"wheelReverseFactors":{"left":"1.15","right":"1.15"}""").Gives("effort", 2 * 185.2, 0.1);
    }

    // A drum inside a rear disc: the disc's factor is not its own.
    [Fact]
    public void The_factor_of_a_disc_is_none_of_the_drum_inside_it()
    {
        const string Inside = ""","strutRatio":"5","leverRatio":"7","cableEfficiency":"0.8","wheelFactors":{"left":"0.76","right":"0.76"},"wheelReverseFactors":{"left":"0.76","right":"0.76"}""";
        var r = Run("rear", 0.2, Inside + ""","drumDiameter":"190 mm","operation":"hand" """);
        Assert.Null(r.Number("effort"));
        Assert.Contains("parking brake's own drum is missing", r.Finding("effort")["text"]!.GetValue<string>());
        Run("rear", 0.2, Inside + ""","drumDiameter":"254 mm","factor":"2.3" """).Gives("effort", 185.2, 0.05);
    }

    // 400 N by hand and 500 N by foot, from memory: a caution and never more.
    [Theory]
    [InlineData("hand", 0.45, "pass")]
    [InlineData("hand", 0.49, "caution")]
    [InlineData("foot", 0.49, "pass")]
    [InlineData("foot", 0.65, "caution")]
    public void A_pull_too_hard_is_a_caution(string by, double grade, string verdict)
    {
        var parts = Parts.Replace("hand", by, StringComparison.Ordinal);
        Assert.Equal(verdict, Run("rear", grade, parts, grip: 1.2).Verdict("effort"));
    }

    [Theory]
    [InlineData("571.135", 0.6, "pass")]
    [InlineData("571.135", 0.45, "caution")] // 20 % facing down takes 0.4745
    [InlineData("571.105", 0.7, "caution")] // 30 % facing down takes 0.7647
    [InlineData("571.105", 0.8, "pass")]
    [InlineData("R13-N1", 0.45, "pass")] // 18 %
    [InlineData("none", 0.1, "pass")]
    public void The_picked_rule_is_a_caution_at_most(string rule, double grip, string verdict)
    {
        var r = Run("rear", 0.1, Parts + $$""","rule":"{{rule}}" """, grip: grip);
        Assert.Equal(verdict, r.Verdict("rule"));
    }

    [Fact]
    public void No_rule_needs_nothing_more() => Assert.Equal("pass", Run("rear", 0.1, ""","rule":"none" """).Verdict("rule"));

    [Fact]
    public void Without_a_parking_brake_nothing_holds()
    {
        var r = Run("none", 0.2);
        Assert.Equal("fail", r.Verdict("facing-up"));
        Assert.Equal("unknown", r.Verdict("effort"));
        Assert.Null(r.Number("steepestUp"));
    }

    [Fact]
    public void What_lacks_is_named_and_grip_is_answered_all_the_same()
    {
        var r = Run("driveline", 0.2);
        Assert.Equal("pass", r.Verdict("facing-up"));
        Assert.Equal("unknown", r.Verdict("effort"));
        Assert.Contains("axle ratio behind a driveline brake is missing", r.Finding("effort")["text"]!.GetValue<string>());
        Assert.Equal(["axleRatio", "factor", "drumDiameter", "strutRatio", "leverRatio", "operation", "rule"], r["missing"]!.AsArray().Select(m => m!["input"]!.GetValue<string>()));
        Assert.Contains("pick the rule", r["missing"]!.ToJsonString());
    }

    private static JsonObject Run(string kind, double grade, string more = "", double grip = 0.6, double a = 1.248, double h = 0.76) => Door.Run("brakes.parking", $$"""
        {"kind":"{{kind}}","total":"2100 kg","centerX":"{{a:R}} m","height":"{{h:R}} m","wheelbase":"2.6 m","grade":"{{grade:R}}","grip":"{{grip:R}}","loadedRadius":"375 mm","frontRadius":"375 mm"{{more}}}
        """);
}
