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
