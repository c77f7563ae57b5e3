using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Driveline;

public class GradeabilityTests
{
    private const double Gravity = 9.80665;

    // US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-15: tractive factor 0.75 (to two decimals) and drawbar pull 1970 lb of a 2,625 lb 4x4 truck;
    // with 1,000 lb of load "approximately 0.55" and the same pull. The manual rounds the ratio to 36.7, lets no wheel slip and takes nothing off for rolling.
    [Theory]
    [InlineData("2625 lb", 0.75, 0.005)]
    [InlineData("3625 lb", 0.55, 0.01)]
    public void Tractive_factor_and_drawbar_pull_of_the_army_manual(string weight, double factor, double tolerance)
    {
        var r = Climb($$"""
            "peakTorque":"79 lbf ft","gearRatios":{"1":"2.798"},"transferRatios":{"high":"1","low":"2.43"},"axleRatio":"5.38","rollingRadius":"1.25 ft",
            "mass":"{{weight}}","grip":"0.8"
            """);
        r.Gives("tractiveFactor", factor, tolerance);
        r.Gives("drawbarPull", 1970, 0.005 * 2625);
    }

    // Derived: 48.26 x 330 x 0.85 / 0.40688 = 33.27 kN on 2150 kg: F/mg = 1.578, no slope takes as much; mu 0.7, f 0.02: 68 % = 34.2 deg. High range 21.1665: 14.592 kN.
    [Fact]
    public void In_low_range_grip_governs()
    {
        var r = Truck("5.15", "2.28");
        r.Gives("tractiveFactor", 1.578, 0.0005);
        Assert.Null(r.Number("torqueGrade"));
        r.Gives("climbableGrade", 68, 0.005);
        r.Gives("climbAngle", 34.2, 0.05);
        Assert.Equal("grip", r["outputs"]!["governs"]!["value"]!.GetValue<string>());
        r.Gives("highRangeGrade", 68, 0.005);
    }

    // Derived: 14.592 kN -> sin th + 0.02 cos th = 0.69206 -> 42.64 deg = 92.1 %; the small-angle shortcut F/mg - f says only 67.2 %.
    [Fact]
    public void In_first_of_high_range_the_exact_grade_is_far_over_the_shortcut()
    {
        var r = Truck("5.15", "1");
        r.Gives("torqueGrade", 92.1, 0.1);
        Assert.Equal(42.64, Math.Atan(r.Number("torqueGrade")!.Value / 100) * 180 / Math.PI, 0.05);
        Assert.Equal(67.2, 100 * (r.Number("tractiveFactor")!.Value - 0.02), 0.05);
    }

    // Derived: 2833 N on 21,084 N -> 11.53 %, shortcut 11.44 %.
    [Fact]
    public void In_direct_torque_governs()
    {
        var r = Truck("1", "1");
        r.Gives("torqueGrade", 11.53, 0.1);
        r.Gives("climbableGrade", r.Number("torqueGrade")!.Value, 0);
        Assert.Equal("torque", r["outputs"]!["governs"]!["value"]!.GetValue<string>());
        Assert.Equal(11.44, 100 * (r.Number("tractiveFactor")!.Value - 0.02), 0.005);
    }

    // Direct alone, 2.28 in low range: 0.30640 of the weight is sin th + 0.02 cos th at 29.99 %, worked by hand; high range is the 11.53 % of direct.
    [Fact]
    public void Each_range_has_its_own_grade()
    {
        var r = Truck("1", "2.28");
        r.Gives("climbableGrade", 29.99, 0.005);
        r.Gives("highRangeGrade", 11.53, 0.005);
    }

    // Derived on a handbook rule (rolling on good concrete 1.5 %: common practice, no source): motor torque 1000 lb in, reduction 12, radius 15 in, 10,000 lb, no losses:
    // 8.0 - 1.5 = 6.5 % by the shortcut. The exact grade differs by less than 0.03 at so small a slope.
    [Fact]
    public void Grade_of_a_hydraulic_drive_by_the_handbook_rule() =>
        Climb(""" "peakTorque":"1000 lbf in","gearRatios":{"1":"12"},"transferRatios":{"high":"1"},"axleRatio":"1","rollingRadius":"15 in","mass":"10000 lb","efficiency":1 """)
            .Gives("torqueGrade", 6.5, 0.03);

    // On the grade that comes out, the force along the slope is the pull again: two ways to one balance, sines and cosines instead of the closed form.
    [Fact]
    public void On_the_grade_found_the_forces_balance() =>
        Gen.Select(Gen.Double[20, 600], Gen.Double[0.6, 6], Gen.Double[500, 6000], Gen.Double[0.005, 0.4]).Sample((torque, gear, kg, f) =>
        {
            var r = Climb($$"""
                "peakTorque":"{{torque:R}} N m","gearRatios":{"1":{{gear:R}} },"transferRatios":{"high":1},"axleRatio":"4","rollingRadius":"400 mm",
                "mass":"{{kg:R}} kg","rollingResistance":{{f:R}}
                """);
            double pull = torque * gear * 4 * 0.85 / 0.4, weight = kg * Gravity;
            if (r.Number("torqueGrade") is not { } percent)
            {
                Assert.True(pull > weight * Math.Sqrt(1 + (f * f)) * (1 - 1e-12));
                return;
            }
            var th = Math.Atan(percent / 100);
            Assert.Equal(pull, weight * (Math.Sin(th) + (f * Math.Cos(th))), 1e-9 * weight);
            // The shortcut takes the sine for the tangent: over the exact force, so under the exact grade, wherever the vehicle climbs at all.
            if (percent > 0) Assert.True((pull / weight) - f < percent / 100);
        }, iter: 200);

    // On the steepest grade that grip allows, the tires hold exactly what slope and rolling take: mu N = m g (sin th + f cos th).
    [Fact]
    public void On_the_grade_that_grip_allows_the_tires_hold_just_enough() =>
        Gen.Select(Gen.Double[0.1, 1.1], Gen.Double[0.005, 0.09]).Sample((mu, f) =>
        {
            var r = Climb($$"""
                "peakTorque":"500 N m","gearRatios":{"1":6},"transferRatios":{"high":1},"axleRatio":"4","rollingRadius":"400 mm","mass":"900 kg",
                "grip":{{mu:R}},"rollingResistance":{{f:R}}
                """);
            var th = Math.Atan(r.Number("gripGrade")!.Value / 100);
            Assert.Equal(mu * Math.Cos(th), Math.Sin(th) + (f * Math.Cos(th)), 1e-12);
        }, iter: 100);

    [Theory]
    [InlineData("0.4", "pass")]
    [InlineData("0.68", "pass")]
    [InlineData("0.7", "fail")]
    public void The_wanted_grade_is_held_against_the_lowest_gear_of_the_lowest_range(string wanted, string verdict)
    {
        var r = Truck("5.15", "2.28", $$""" ,"grade":"{{wanted}}" """);
        Assert.Equal(verdict, r.Verdict("grade"));
        Assert.Contains("the grip of the tires ends it", r.Finding("grade")["text"]!.GetValue<string>());
    }

    // On ice, mu 0.01 is less than the 0.02 that rolling takes: the wheels spin on the level. With 1 N m the engine stalls there: 101 N against 422 N.
    [Theory]
    [InlineData(""" ,"grip":"0.01","grade":"0.1" """, "the grip of the tires is less than rolling takes")]
    [InlineData(""" ,"grade":"0.1" """, "the torque of the engine is less than rolling takes")]
    public void What_does_not_move_off_on_the_level_is_told_so(string more, string says)
    {
        var r = Truck("5.15", "2.28", more, more.Contains("grip") ? "330 N m" : "1 N m");
        Assert.Equal("fail", r.Verdict("grade"));
        Assert.True(r.Number("climbableGrade") < 0);
        Assert.Contains(says, r.Finding("grade")["text"]!.GetValue<string>());
    }

    // The curve's own peak counts, 330 N m at 2000 rpm, and a stated peak does not speak against it.
    [Fact]
    public void A_curve_beats_a_stated_peak()
    {
        const string rest = """ "gearRatios":{"1":1},"transferRatios":{"high":1},"axleRatio":"4.11","rollingRadius":"406.88 mm","mass":"2150 kg","rollingResistance":"0.02" """;
        var curve = Climb($""" "torqueCurve":[["1000 rpm","250 N m"],["2000 rpm","330 N m"],["4000 rpm","260 N m"]],"peakTorque":"500 N m",{rest}""");
        curve.Gives("torqueGrade", 11.53, 0.1);
        Assert.Equal(Climb($""" "peakTorque":"330 N m",{rest}""").Number("torqueGrade"), curve.Number("torqueGrade"));
    }

    [Fact]
    public void Without_torque_the_limit_of_grip_still_stands()
    {
        var r = Climb(""" "gearRatios":{"1":1},"transferRatios":{"high":1},"axleRatio":"4.11","rollingRadius":"16 in","mass":"2150 kg","grade":"0.4" """);
        r.Gives("gripGrade", 68.5, 1e-9);
        Assert.Null(r.Number("climbableGrade"));
        Assert.Equal("unknown", r.Verdict("grade"));
        Assert.Contains("full-load torque curve of the engine is missing", r.Finding("grade")["text"]!.GetValue<string>());
    }

    private static JsonObject Truck(string gear, string low, string more = "", string torque = "330 N m") => Climb($$"""
        "peakTorque":"{{torque}}","gearRatios":{"2":"1","1":"{{gear}}"},"transferRatios":{"low":"{{low}}","high":"1"},"axleRatio":"4.11","rollingRadius":"406.88 mm",
        "mass":"2150 kg","rollingResistance":"0.02"{{more}}
        """);

    private static JsonObject Climb(string members) => Door.Run("driveline.gradeability", $$"""{ {{members}} }""");
}
