using Crossmember.Engineering.Brakes.Chain;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Chain;

public class LockUpTests
{
    // Derived: no valve, grip 0.4: front at 2.781 MPa, 0.3389 g, the rear using 0.2396; efficiency 0.847. A valve of 3.5 MPa is still asleep there.
    [Fact]
    public void On_a_wet_road_the_front_is_first()
    {
        foreach (var rig in new[] { Truck.Plain, Truck.Valved })
        {
            var at = LockUp.On(0.4, rig, Truck.Load);
            Assert.Equal(LocksFirst.Front, at.Axle);
            Assert.Equal(2.781, at.Pressure / 1e6, 0.0006);
            Assert.Equal(0.3389, at.Deceleration, 0.00006);
            Assert.Equal(0.2396, at.RearUse, 0.00006);
            Assert.Equal(0.847, at.Efficiency(0.4), 0.0006);
        }
    }

    // Derived: grip 0.8 without a valve: the REAR at 5.915 MPa and 0.7381 g, efficiency 0.923. Going on to the front's lock at 6.960 MPa and 0.871 g would be more than the road gives.
    [Fact]
    public void On_a_dry_road_without_a_valve_the_rear_is_first_and_not_the_later_front()
    {
        var at = LockUp.On(0.8, Truck.Plain, Truck.Load);
        Assert.Equal(LocksFirst.Rear, at.Axle);
        Assert.Equal(5.915, at.Pressure / 1e6, 0.0006);
        Assert.Equal(0.7381, at.Deceleration, 0.00006);
        Assert.Equal(0.923, at.Efficiency(0.8), 0.0006);
        Assert.Equal(6.960, LockUp.FrontAt(0.8, Truck.Plain, Truck.Load) / 1e6, 0.0006);
    }

    // Derived: with the valve the front at 6.650 MPa, rear pressure 4.603 MPa, 0.7532 g, rear use 0.6200, efficiency 0.9415.
    [Fact]
    public void A_valve_puts_the_front_first_again()
    {
        var at = LockUp.On(0.8, Truck.Valved, Truck.Load);
        Assert.Equal(LocksFirst.Front, at.Axle);
        Assert.Equal(6.650, at.Pressure / 1e6, 0.0006);
        Assert.Equal(4.603, Truck.Valved.Valves.Rear(at.Pressure) / 1e6, 0.0006);
        Assert.Equal(0.7532, at.Deceleration, 0.00006);
        Assert.Equal(0.6200, at.RearUse, 0.00006);
        Assert.Equal(0.9415, at.Efficiency(0.8), 0.00006);
    }

    // Derived: one axle alone, grip 0.8: 0.5430 and 0.3112; grip 0.4: 0.2355 and 0.1719. The closed form, and the other axle dead.
    [Theory]
    [InlineData(0.8, 0.5430, 0.3112)]
    [InlineData(0.4, 0.2355, 0.1719)]
    public void With_one_axle_dead_the_other_locks_where_the_closed_form_says(double grip, double front, double rear)
    {
        Assert.Equal(front, Truck.Load.FrontOnly(grip), 0.00006);
        Assert.Equal(rear, Truck.Load.RearOnly(grip), 0.00006);
        Assert.Equal(front, LockUp.On(grip, Truck.Plain with { Rear = AxleForce.None }, Truck.Load).Deceleration, 0.00006);
        Assert.Equal(rear, LockUp.On(grip, Truck.Plain with { Front = AxleForce.None }, Truck.Load).Deceleration, 0.00006);
    }

    // Inputs printed in an exercise of automobile theory (exercise 4.3, front share 0.38, 4080 kg, 3.95 m, 2.10 m, 0.845 m), result derived: the rear first at 0.5376, efficiency 0.672; putting
    // z = 0.8 into the efficiency's curve, 0.581, is a wrong answer. Front circuit lost 0.3632, rear lost 0.4520.
    [Fact]
    public void A_loaded_truck_with_too_much_at_the_rear_always_locks_there()
    {
        Loading load = new(4080 * Loading.Gravity, 3.95, 2.10, 0.845);
        Rig rig = new(new(0.38e-3, 0), new(0.62e-3, 0), Valves.None);
        var at = LockUp.On(0.8, rig, load);
        Assert.Equal(LocksFirst.Rear, at.Axle);
        Assert.Equal(0.5376, at.Deceleration, 0.00006);
        Assert.Equal(0.672, at.Efficiency(0.8), 0.0006);
        Assert.Equal(0.3632, load.RearOnly(0.8), 0.00006);
        Assert.Equal(0.4520, load.FrontOnly(0.8), 0.00006);
        foreach (var grip in new[] { 0.1, 0.2, 0.5, 1 }) Assert.Equal(LocksFirst.Rear, LockUp.On(grip, rig, load).Axle);
    }

    // Closed form without thresholds: z_front = mu b / (beta L - mu h), z_rear = mu a / ((1 - beta) L + mu h); the lesser is first.
    [Fact]
    public void Without_thresholds_it_is_the_closed_form() =>
        Gen.Select(Truck.AnyLoad, Gen.Double[0.2, 0.95], Gen.Double[0.1, 1]).Sample((load, beta, mu) =>
        {
            var at = LockUp.On(mu, new(new(beta * 1e-3, 0), new((1 - beta) * 1e-3, 0), Valves.None), load);
            double b = load.Wheelbase - load.Behind, under = (beta * load.Wheelbase) - (mu * load.Height);
            double front = under > 0 ? mu * b / under : double.PositiveInfinity, rear = mu * load.Behind / (((1 - beta) * load.Wheelbase) + (mu * load.Height));
            Assert.Equal(Math.Min(front, rear), at.Deceleration, 1e-9);
            if (Math.Abs(front - rear) > 1e-9) Assert.Equal(front < rear ? LocksFirst.Front : LocksFirst.Rear, at.Axle);
        });

    [Fact]
    public void The_first_lock_never_uses_more_than_the_road_gives_and_a_march_finds_it_too() =>
        Gen.Select(Truck.AnyRig, Truck.AnyLoad, Gen.Double[0.1, 1]).Sample((rig, load, mu) =>
        {
            var at = LockUp.On(mu, rig, load);
            if (at.Axle == LocksFirst.Neither) return;
            Assert.True(at.Efficiency(mu) <= 1 + 1e-9, $"{rig} {load} {mu}: {at}");
            Assert.Equal(March(mu, rig, load), at.Pressure / 1e6, 2e-3 + (1e-3 * at.Pressure / 1e6));
            Assert.True(at.FrontUse <= mu + 1e-9 && at.RearUse <= mu + 1e-9);
        }, iter: 300);

    // Center of gravity on the ground moves no load: each axle locks by its static share.
    [Fact]
    public void With_no_height_static_shares_decide()
    {
        var flat = Truck.Load with { Height = 1e-9 };
        var at = LockUp.On(0.5, new(new(1e-3, 0), new(1e-3, 0), Valves.None), flat);
        Assert.Equal(LocksFirst.Rear, at.Axle); // 48 % of the load and half of the force
        Assert.Equal(0.5 * 0.48 / 0.5, at.Deceleration, 1e-6);
    }

    // Seen in a mirror, front is rear and the load moves the other way.
    [Fact]
    public void Mirrored_the_axles_change_places() =>
        Gen.Select(Truck.AnyRig, Truck.AnyLoad, Gen.Double[0.1, 0.9]).Sample((rig, load, mu) =>
        {
            if (double.IsFinite(rig.Valves.Knee) || rig.Valves.Metering > 0) return; // valves stand before one axle only
            Loading mirrored = load with { Behind = load.Wheelbase - load.Behind, Height = -load.Height };
            LockPoint at = LockUp.On(mu, rig, load), other = LockUp.On(mu, new(rig.Rear, rig.Front, Valves.None), mirrored);
            Assert.Equal(at.Deceleration, other.Deceleration, 1e-9);
            Assert.Equal(at.Axle, other.Axle switch { LocksFirst.Front => LocksFirst.Rear, LocksFirst.Rear => LocksFirst.Front, var both => both });
        });

    [Fact]
    public void Brakes_that_make_no_force_lock_nothing_but_lift_nothing_either() =>
        Assert.Equal(LocksFirst.Neither, LockUp.On(0.5, new(AxleForce.None, AxleForce.None, Valves.None), Truck.Load).Axle);

    /// <summary>Pressure in MPa in small steps until an axle's force is over its grip, in a hundred thousand steps at most.</summary>
    private static double March(double mu, Rig rig, Loading load)
    {
        const double Step = 1000; // Pa
        for (double p = 0; p < 4e8; p += Step + (p / 2000))
        {
            double f = rig.FrontAt(p), r = rig.RearAt(p), z = (f + r) / load.Weight;
            if (f >= mu * load.Front(z) || r >= mu * load.Rear(z)) return p / 1e6;
        }
        return double.NaN;
    }
}
