using Crossmember.Engineering.Tests.Calculations;

namespace Crossmember.Engineering.Tests.Brakes.Balance;

public class LockOrderTests
{
    // Derived: without a valve on grip 0.8 the rear at 5.915 MPa; the leg has 154.2 N at 5.698 MPa and so some more here: (5.915 - 0.67) / (6.4129 - 0.67) of the way from 22.6 to 172.9 N.
    [Fact]
    public void Rear_first_is_a_caution_with_its_leg_force()
    {
        var r = Door.Run("brakes.lock-order", Sheet.WithPedal("none", ("grip", "0.8")));
        r.Gives("deceleration", 0.7381, 0.00006);
        r.Gives("pressure", 5.915, 0.0006);
        r.Gives("pedalForce", 22.556 + (150.376 * (5.915 - 0.67) / (6.4129 - 0.67)), 0.1);
        Assert.Equal("rear", r["outputs"]!["first"]!["value"]?.GetValue<string>() ?? r["outputs"]!["first"]!["text"]!.GetValue<string>());
        Assert.Equal("caution", r.Verdict("front-first"));
        Assert.Contains("swaps ends", r.Finding("front-first")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // On the given wet road the front is first, on the dry one it is not: that is said too.
    [Fact]
    public void A_good_answer_on_the_given_road_does_not_hide_another()
    {
        var r = Door.Run("brakes.lock-order", Sheet.WithPedal("none", ("grip", "0.4")));
        r.Gives("efficiency", 0.847, 0.0006);
        Assert.Equal("caution", r.Verdict("front-first"));
        Assert.Contains("on roads with grip 0.8 the rear", r.Finding("front-first")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("pass", Door.Run("brakes.lock-order", Sheet.WithPedal("fixed", ("grip", "0.4"))).Verdict("front-first"));
    }

    // A metering valve of 0.9 MPa holds the front off while strong rear drums already lock on ice: F = 9000 / 6.895 x (0.9 - 0.4) = 653 N at the rear, whose load of about 9,600 N holds 960 N;
    // up to 1.1 MPa the front has 2 (p - 0.9) only. On every other road the front is first.
    [Fact]
    public void Wet_ice_is_looked_at_too()
    {
        var r = Door.Run("brakes.lock-order", Sheet.WithPedal("fixed", ("grip", "0.7"), ("metering", "0.9 MPa"), ("rearForce", "9000 N"), ("valveKnee", "2 MPa"), ("valveSlope", "0.1")));
        Assert.Equal("caution", r.Verdict("front-first"));
        Assert.Contains("on roads with grip 0.1 the rear", r.Finding("front-first")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // Only a rule that asks is called one: with dead rear brakes it is furthest off on grip 0.6, where 0.1 + 0.85 x 0.4 = 0.44 is 73 %; by UN Regulation 13-H on 0.4, 0.1 + 0.7 x 0.2 = 0.24, 60 %.
    [Theory]
    [InlineData(null, "73 % is good practice.")]
    [InlineData("571.135", "73 % is good practice.")]
    [InlineData("R13-M1", "the rule asks 73 %. Local law")]
    [InlineData("R13-H", "the rule asks 60 %. Local law")]
    public void A_rule_is_named_only_where_one_asks(string? rule, string says)
    {
        var r = Door.Run("brakes.lock-order", Sheet.WithPedal("none", ("grip", "0.8"), ("rearForce", "0 N"), ("rule", rule)));
        Assert.Contains(says, r.Finding("efficiency")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("caution", r.Verdict("efficiency"));
        if (rule is null or "571.135") Assert.StartsWith("common practice", r.Finding("efficiency")["source"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // With dead rear brakes on a dry road 0.543 of 0.8 is used: 68 % where 76 % is asked.
    [Fact]
    public void Too_little_of_the_road_is_a_caution()
    {
        var r = Door.Run("brakes.lock-order", Sheet.WithPedal("none", ("grip", "0.8"), ("rearForce", "0 N")));
        r.Gives("efficiency", 0.5430 / 0.8, 0.0002);
        Assert.Equal("caution", r.Verdict("efficiency"));
        Assert.Equal("pass", Door.Run("brakes.lock-order", Sheet.WithPedal("fixed", ("grip", "0.8"))).Verdict("efficiency"));
    }

    [Fact]
    public void Without_a_pedal_line_all_but_the_leg_is_told()
    {
        var r = Door.Run("brakes.lock-order", Sheet.Of("fixed", ("grip", "0.8")));
        r.Gives("deceleration", 0.7532, 0.00006);
        Assert.Null(r.Number("pedalForce"));
        Assert.DoesNotContain("on the pedal", r.Finding("front-first")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }
}
