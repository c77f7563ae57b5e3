using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Steering;

public class EffortTests
{
    private const double PoundFoot = 0.45359237 * 9.80665 * 0.3048, Gravity = 9.80665;

    // Derived from a formula recalled: 5500 N a wheel, 200 kPa, 0.8 -> 243.2 N m a wheel; two wheels, 16:1, 0.75, rim radius 0.20 m -> 202.7 N.
    [Fact]
    public void Standing_wheels_by_hand()
    {
        var r = Parking(5500, 5500, 200, 0.8);
        r.Gives("wheelTorque", 243.2 / PoundFoot, 0.05 / PoundFoot);
        r.Gives("torque", 486.4 / PoundFoot, 0.1 / PoundFoot);
        Hand(486.4, 16, 0.75, 0.40).Gives("force", 202.7, 0.05);
    }

    // Barton and Fieldhouse, Automotive Chassis Engineering, ch. 2, example E2.1: 594 N m of scrub a wheel at 1200 kg, friction 0.58, by a radius of gyration of 87 mm
    // of a contact of 250 mm by 250 mm with the kingpin 25 mm off its middle. A contact of that area carries the load at W / 0.0625 m2.
    [Fact]
    public void A_published_example_by_another_way_lies_within_a_tenth()
    {
        const double W = 1200 * 9.81;
        var told = Parking(W, W, W / 0.0625 / 1000, 0.58).Number("wheelTorque")!.Value * PoundFoot;
        Assert.Equal(594, told, 59.4);
    }

    // Independent: friction mu p acting evenly over a round contact of area W / p turns at two thirds of its radius: (2/3) mu W sqrt(W / (pi p)), 1.128 times the
    // formula. Summed here over rings.
    [Fact]
    public void A_round_contact_with_even_pressure_is_a_fixed_share_more() =>
        Gen.Select(Gen.Double[1000, 12000], Gen.Double[100, 500], Gen.Double[0.2, 1]).Sample((W, p, mu) =>
        {
            double R = Math.Sqrt(W / (p * 1000 * Math.PI)), T = 0; // m, N m
            const int rings = 2000;
            for (var i = 0; i < rings; i++)
            {
                var r = (i + 0.5) * R / rings;
                T += mu * p * 1000 * r * 2 * Math.PI * r * (R / rings);
            }
            Assert.Equal(2 / Math.Sqrt(Math.PI), T / (Parking(W, W, p, mu).Number("wheelTorque")!.Value * PoundFoot), 1e-5);
        }, iter: 30);

    [Fact]
    public void Twice_the_load_takes_two_root_two_and_half_the_pressure_root_two() =>
        Gen.Select(Gen.Double[1000, 8000], Gen.Double[150, 500]).Sample((W, p) =>
        {
            double T(double load, double pressure) => Parking(load, load, pressure, 0.7).Number("torque")!.Value;
            Assert.Equal(2 * Math.Sqrt(2), T(2 * W, p) / T(W, p), 1e-9);
            Assert.Equal(Math.Sqrt(2), T(W, p / 2) / T(W, p), 1e-9);
        }, iter: 30);

    // What the hand does at the rim comes out at the kingpins, less the loss: F R dA eta = T dA / i.
    [Fact]
    public void Work_at_the_rim_is_work_at_the_wheels_and_the_loss() =>
        Gen.Select(Gen.Double[50, 2000], Gen.Double[10, 35], Gen.Double[0.4, 1], Gen.Double[0.3, 0.6], Gen.Double[1, 10]).Sample((T, i, eta, D, assist) =>
        {
            var r = Hand(T, i, eta, D, assist);
            Assert.Equal(T, r.Number("forceUnassisted")!.Value * D / 2 * i * eta, 1e-9 * T);
            Assert.Equal(assist, r.Number("forceUnassisted")!.Value / r.Number("force")!.Value, 1e-9);
        }, iter: 50);

    // UN Regulation No. 79, category N1, from memory: 200 N in order, 300 N with the assist lost.
    [Theory]
    [InlineData(479, 1, "pass", "pass", "no assist")]
    [InlineData(481, 1, "caution", "pass", "Too heavy")]
    [InlineData(961, 1, "caution", "pass", "Most people cannot")]
    [InlineData(481, 5, "pass", "pass", "up to 300 N")]
    [InlineData(721, 5, "pass", "caution", "where 300 N is allowed")]
    public void Forces_are_held_against_the_limits_and_are_never_more_than_a_caution(double torque, double assist, string parking, string lost, string says)
    {
        var r = Hand(torque, 16, 0.75, 0.40, assist); // F = T / 2.4
        Assert.Equal((parking, lost), (r.Verdict("parking"), r.Verdict("assist-lost")));
        Assert.Contains(says, r.Finding("parking")["text"]!.GetValue<string>() + r.Finding("assist-lost")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // Nobody said whether it is powered: no pass as manual, and no guess. The pull without assist is statics and stands: 486.4 N m gives 202.7 N.
    [Fact]
    public void Steering_that_nobody_stated_is_not_taken_for_manual()
    {
        var r = Door.Run("steering.hand-effort", """{"kingpinTorque":"486.4 N m","ratio":16,"efficiency":0.75,"rimDiameter":"0.40 m"}""");
        Assert.Equal(("unknown", "unknown"), (r.Verdict("parking"), r.Verdict("assist-lost")));
        Assert.Null(r.Number("force"));
        r.Gives("forceUnassisted", 202.7, 0.05);
        Assert.Contains("1 for a manual box", r.Finding("parking")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        var pump = Door.Run("steering.pump-demand", """{"kingpinTorques":{"touring":"650 N m"}}""");
        Assert.Equal(("unknown", "unknown"), (pump.Verdict("flow"), pump.Verdict("pressure")));
        Assert.Contains("1 for a manual box", pump.Finding("flow")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // Derived: bore 3 in, 15 mm a turn: 68.405 cm3; at 75 rpm 5.1304 L/min and 1 of leak. 650 N m through arms of 6 and 7 in and 0.9: 619.05 N m at the box;
    // 2 pi 619.05 / (16 x 68.405 cm3) = 3.554 MPa and 0.3 of back pressure.
    [Fact]
    public void Flow_and_pressure_by_hand()
    {
        var r = Pump("16 cm3", "700 rpm", "8 MPa");
        r.Gives("flowNeeded", 6.130, 0.0005);
        r.Gives("flowAtIdle", 10.08, 0.005);
        r.Gives("pressureNeeded", 3.854, 0.0005);
        Assert.Equal(("pass", "pass"), (r.Verdict("flow"), r.Verdict("pressure")));
    }

    // 16 cm3 gives 10.08 L/min at 700 rpm; 6.13 L/min is 426 rpm. The limiter caps it whatever the engine does.
    [Theory]
    [InlineData("16 cm3", "430 rpm", "", "pass")]
    [InlineData("16 cm3", "420 rpm", "", "caution")]
    [InlineData("16 cm3", "3000 rpm", ",\"flowLimit\":\"6.1 L/min\"", "caution")]
    [InlineData("16 cm3", "350 rpm", ",\"driveRatio\":1.3", "pass")]
    public void Flow_at_idle_is_judged(string displacement, string idle, string more, string verdict) => Assert.Equal(verdict, Pump(displacement, idle, "8 MPa", more).Verdict("flow"));

    [Theory]
    [InlineData("3.9 MPa", "pass")]
    [InlineData("3.8 MPa", "caution")]
    public void Relief_pressure_is_judged(string relief, string verdict) => Assert.Equal(verdict, Pump("16 cm3", "700 rpm", relief).Verdict("pressure"));

    // No loss anywhere: pressure times flow is torque at the kingpins times their speed. n / i at the pitman shaft, times pitman / arm at the wheel.
    [Fact]
    public void Without_losses_hydraulic_power_is_power_at_the_wheels() =>
        Gen.Select(Gen.Double[100, 2000], Gen.Double[3, 10], Gen.Double[3, 10], Gen.Double[10, 30], Gen.Double[1.5, 4], Gen.Double[8, 25]).Sample((T, pitman, arm, i, bore, lead) =>
        {
            var r = Door.Run("steering.pump-demand", $$"""
                {"assistFactor":5,"kingpinTorques":{"c":"{{T:R}} N m"},"pitmanLength":"{{pitman:R}} in","armLength":"{{arm:R}} in","boxRatio":{{i:R}},"pistonBore":"{{bore:R}} in","pistonLead":"{{lead:R}} mm",
                 "rimSpeed":"60 rpm","leak":"0 L/min","backPressure":"0 MPa","linkageEfficiency":1}
                """);
            var hydraulic = r.Number("flowNeeded")!.Value / 60e3 * r.Number("pressureNeeded")!.Value * 1e6; // W
            Assert.Equal(T * (2 * Math.PI / i) * (pitman / arm), hydraulic, 1e-9 * hydraulic);
        }, iter: 50);

    [Fact]
    public void The_heaviest_condition_counts_and_manual_steering_has_no_pump()
    {
        var two = Pump("16 cm3", "700 rpm", "8 MPa", "", """{"empty":"400 N m","touring":"650 N m"}""");
        Assert.Equal(Pump("16 cm3", "700 rpm", "8 MPa").Number("pressureNeeded"), two.Number("pressureNeeded"));
        var manual = Door.Run("steering.pump-demand", """{"assistFactor":1}""");
        Assert.Equal(("pass", "pass"), (manual.Verdict("flow"), manual.Verdict("pressure")));
        Assert.Null(manual.Number("flowNeeded"));
        var blank = Door.Run("steering.pump-demand", """{"assistFactor":4}""");
        Assert.Contains("bore", blank.Finding("flow")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_effort_points_at_the_rail_behind_the_box()
    {
        foreach (var id in (string[])["steering.ratio", "steering.parking-effort", "steering.hand-effort", "steering.pump-demand", "steering.linkage-travel"])
            Assert.Contains(Engineering.Calculations.CalculationList.Find(id)!.About.Cautions, c => c.Contains("rails crack", StringComparison.Ordinal));
    }

    private static JsonObject Parking(double left, double right, double kilopascals, double grip) => Door.Run("steering.parking-effort",
        $$"""{"loads":{"left":"{{left / Gravity:R}} kg","right":"{{right / Gravity:R}} kg"},"pressure":"{{kilopascals:R}} kPa","grip":{{grip:R}}}""");

    private static JsonObject Hand(double torque, double ratio, double efficiency, double rim, double assist = 1) => Door.Run("steering.hand-effort",
        $$"""{"kingpinTorque":"{{torque:R}} N m","ratio":{{ratio:R}},"efficiency":{{efficiency:R}},"rimDiameter":"{{rim:R}} m","assistFactor":{{assist:R}}}""");

    private static JsonObject Pump(string displacement, string idle, string relief, string more = "", string torques = """{"touring":"650 N m"}""") => Door.Run("steering.pump-demand", $$"""
        {"assistFactor":5,"kingpinTorques":{{torques}},"pitmanLength":"6 in","armLength":"7 in","boxRatio":16,"pistonBore":"3 in","pistonLead":"15 mm",
         "displacement":"{{displacement}}","idleSpeed":"{{idle}}","reliefPressure":"{{relief}}"{{more}}}
        """);
}
