using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;

namespace Crossmember.Engineering.Tests.Brakes.Balance;

public class FailureTests
{
    // Derived: booster dead, 500 N, 4.142 m/s2 (0.4223 g): over the 2.44 asked.
    [Fact]
    public void A_dead_booster_leaves_the_leg()
    {
        var r = Lost("fixed", "no");
        r.Gives("boosterDead", 4.142, 0.0015);
        Assert.Equal("pass", r.Verdict("booster-dead"));
    }

    // Derived: front lost at 500 N: with the valve acting 1.877 m/s2, under 2.44; by-passed the rear's grip caps 3.199 at 3.052 m/s2 on grip 0.8, and the cap is told.
    [Fact]
    public void The_valve_in_the_rear_line_costs_the_emergency_stop()
    {
        var acting = Lost("fixed", "no");
        acting.Gives("frontLost", 1.877, 0.001);
        Assert.Equal("caution", acting.Verdict("front-lost"));
        var passed = Lost("fixed", "yes");
        passed.Gives("frontLost", 3.052, 0.0006);
        Assert.Equal("pass", passed.Verdict("front-lost"));
        Assert.Contains("0.31 g, all that the road takes (the brakes would make 0.33 g)", passed.Finding("front-lost")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // Derived: 0.1 v + v2 / (25.92 d) of 1.877 m/s2 is 215.5 m from 100 km/h, over the 168 m of 49 CFR 571.135: from memory, a caution.
    [Fact]
    public void The_same_by_571_135()
    {
        Assert.Equal(215.5, 10 + (10000 / (25.92 * 1.877)), 0.06);
        var r = Lost("fixed", "no", ("rule", "571.135"));
        Assert.Equal("caution", r.Verdict("front-lost"));
        Assert.Equal("pass", r.Verdict("rear-lost"));
    }

    // Derived: rear lost, 8.911 MPa on the front alone 0.793 g, capped by its grip of 0.8 at 0.5430 g.
    [Fact]
    public void With_the_rear_lost_the_front_does_it_alone() => Lost("fixed", "no").Gives("rearLost", 0.5430 * 9.80665, 0.001);

    // One circuit: nothing left, by its nature and whatever the rule.
    [Fact]
    public void One_circuit_leaves_nothing()
    {
        var r = Lost("none", "no", ("circuits", "one"), ("rule", "none"));
        foreach (var check in new[] { "front-lost", "rear-lost", "hose" }) Assert.Equal("fail", r.Verdict(check));
        r.Gives("frontLost", 0, 1e-12);
        Assert.Equal("pass", r.Verdict("booster-dead"));
    }

    // Derived: a diagonal split keeps half of both: (1833.7 x 8.911 + 789.4 x (5.394 - 0.4)) / 2 over the weight is 0.4924 g; half of the wheels on grip 0.8 lock first at 0.3181 g (5.508 MPa, 5050 + 1501 N):
    // front use 2 Ff' / Nf with the load moved by the deceleration that half makes.
    [Fact]
    public void A_diagonal_split_keeps_half_of_both_and_pulls()
    {
        var r = Lost("fixed", "no", ("circuits", "diagonal"), ("grip", "1.1"));
        double w = 2100 * 9.80665, half = ((1833.69 * 8.911) + (789.4 * (5.394 - 0.4))) / 2 / w;
        Assert.Equal(0.4924, half, 0.00006);
        Assert.Contains("the brakes would make 0.49 g", r.Finding("front-lost")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.True(r.Number("frontLost") / 9.80665 < half - 0.01); // the road ends it first
        Lost("fixed", "no", ("circuits", "diagonal"), ("grip", "0.8")).Gives("frontLost", 0.3181 * 9.80665, 0.001);
        // Second method: a march of the pressure with wheel loads by hand.
        double line = 0, z = 0;
        for (; line < 8.911; line += 0.0005)
        {
            double f = 1833.69 * line / 2, rear = line <= 3.5 ? line : 3.5 + (0.35 * (line - 3.5)), b = 789.4 * Math.Max(0, rear - 0.4) / 2;
            z = (f + b) / w;
            if (f >= 1.1 * w * (1.352 + (z * 0.76)) / 2.6 / 2 || b >= 1.1 * w * (1.248 - (z * 0.76)) / 2.6 / 2) break;
        }
        r.Gives("frontLost", z * 9.80665, 0.01);
        r.Gives("rearLost", r.Number("frontLost")!.Value, 1e-12);
        Assert.Contains("pulls to one side", r.Finding("front-lost")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // The rows of 49 CFR 571.105 for a lost circuit could not be read: a quarter of g stands in, and that is said; 1.877 m/s2 is less, and so a burst front hose is looked at too.
    [Fact]
    public void Where_a_rule_could_not_be_read_practice_stands_in_and_says_so()
    {
        var r = Lost("fixed", "no", ("rule", "571.105"));
        Assert.Equal("caution", r.Verdict("front-lost"));
        Assert.Equal("caution", r.Verdict("hose"));
        Assert.Contains("could not be read: a quarter of g is common practice. Local law", r.Finding("front-lost")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("pass", Lost("fixed", "yes", ("rule", "571.105")).Verdict("hose"));
    }

    // A single cylinder has one outlet: lines split behind it do not make two circuits.
    [Fact]
    public void A_single_cylinder_is_one_circuit_whatever_its_lines()
    {
        var r = Lost("none", "no", ("masterKind", "single"));
        foreach (var check in new[] { "front-lost", "rear-lost", "hose" }) Assert.Equal("fail", r.Verdict(check));
        Assert.Contains("A single master cylinder feeds one circuit", r.Finding("front-lost")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        r.Gives("rearLost", 0, 0);
        Assert.NotEqual("fail", Lost("none", "no", ("masterKind", "tandem")).Verdict("rear-lost"));
    }

    // Derived: with the pedal down at 2 MPa the rear alone makes 789.4 x (2 - 0.4) N: 0.601 m/s2, the front alone 1833.7 x 2 N: 1.746 m/s2; at 0.4 MPa the drums do nothing, and that fails by any rule.
    // Where the leg ends first the floor changes nothing.
    [Fact]
    public void The_floor_ends_what_a_leg_can_do()
    {
        var r = Lost("none", "no", ("frontLostPressure", "2 MPa"), ("rearLostPressure", "2 MPa"));
        r.Gives("frontLost", 789.4 * 1.6 / 2100, 0.0003);
        r.Gives("rearLost", 1833.7 * 2 / 2100, 0.0003);
        Assert.Equal("caution", r.Verdict("rear-lost"));
        Assert.Contains("at 2.0 MPa: more leg makes no more", r.Finding("rear-lost")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        // On a bar the rear circuit has 0.8 of the front's pressure; what ends it is told in its own.
        var bar = Lost("none", "no", ("rearShare", "0.8"), ("frontLostPressure", "2 MPa"));
        bar.Gives("frontLost", 789.4 * 1.6 / 2100, 0.0003);
        Assert.Contains("at 2.0 MPa", bar.Finding("front-lost")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        var nothing = Lost("none", "no", ("frontLostPressure", "0.4 MPa"), ("rule", "none"));
        Assert.Equal("fail", nothing.Verdict("front-lost"));
        Assert.Equal(Lost("none", "no").Number("frontLost"), Lost("none", "no", ("frontLostPressure", "12 MPa")).Number("frontLost"));
        var half = Lost("none", "no", ("circuits", "diagonal"), ("rearLostPressure", "2 MPa"));
        half.Gives("rearLost", ((1833.7 * 2) + (789.4 * 1.6)) / 2 / 2100, 0.0003);
        Assert.True(half.Number("frontLost") > half.Number("rearLost"));
    }

    [Fact]
    public void Without_a_booster_none_can_fail()
    {
        var r = Lost("none", "no", ("knee", "0 N"), ("cutIn", "0 N"), ("jumpIn", "0 MPa"), ("kneePressure", "0 MPa"), ("deadLoss", "0 MPa"));
        Assert.Equal("There is no booster to fail.", r.Finding("booster-dead")["text"]!.GetValue<string>());
    }

    [Fact]
    public void It_asks_how_the_circuits_are_split_and_for_the_rule()
    {
        Assert.Contains("follow the lines", Lost("none", "no", ("circuits", null)).Finding("hose")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains("pick the rule", Lost("none", "no", ("rule", null)).Finding("hose")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    private static JsonObject Lost(string valve, string bypass, params (string Input, string? Value)[] instead) =>
        Door.Run("brakes.failure", Sheet.WithPedal(valve, [("bypass", bypass), ("grip", "0.8"), ("rule", "R13-H"), ("circuits", "front-rear"), .. instead]));
}
