using Crossmember.Engineering.Brakes.Chain;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Chain;

/// <summary>Statics of the chain, held against other ways of writing the same truck.</summary>
public class ChainTests
{
    // Derived: static loads of 2100 kg with 52 % in front, g 9.80665.
    [Fact]
    public void Axles_carry_their_share_at_rest()
    {
        Assert.Equal(10708.9, Truck.Load.Front(0), 0.05);
        Assert.Equal(9885.1, Truck.Load.Rear(0), 0.05);
    }

    // Derived: the truck's printed rows, no valve and valve: line pressure in MPa and grip used, four decimals. Read off the product, then by another formulation: the four equations
    // of force and moment solved together at that pressure.
    [Theory]
    [InlineData(0.15, 1.298, 0.2050, 0.0789, 1.298, 0.2050, 0.0789)]
    [InlineData(0.30, 2.476, 0.3627, 0.2028, 2.476, 0.3627, 0.2028)]
    [InlineData(0.50, 4.046, 0.5408, 0.4186, 4.179, 0.5585, 0.3832)]
    [InlineData(0.60, 4.831, 0.6186, 0.5576, 5.155, 0.6600, 0.4630)]
    [InlineData(0.70, 5.616, 0.6901, 0.7260, 6.131, 0.7533, 0.5596)]
    [InlineData(0.80, 6.401, 0.7561, 0.9345, 7.107, 0.8394, 0.6793)]
    public void Grip_used_agrees_with_the_printed_rows_and_with_four_equations(double z, double p, double front, double rear, double pv, double frontValved, double rearValved)
    {
        foreach (var (rig, line, f, r) in new[] { (Truck.Plain, p, front, rear), (Truck.Valved, pv, frontValved, rearValved) })
        {
            var use = Utilization.At(z, rig, Truck.Load)!.Value;
            Assert.Equal(line, use.Pressure / 1e6, 0.0006);
            Assert.Equal(f, use.Front, 0.00006);
            Assert.Equal(r, use.Rear, 0.00006);
            var (ff, fr, nf, nr) = FourEquations(rig, Truck.Load, use.Pressure);
            Assert.Equal(use.Front, ff / nf, 1e-9);
            Assert.Equal(use.Rear, fr / nr, 1e-9);
            Assert.Equal(z, (ff + fr) / Truck.Load.Weight, 1e-9);
        }
    }

    [Fact]
    public void Forces_add_up_to_mass_times_deceleration_for_any_vehicle() =>
        Gen.Select(Truck.AnyRig, Truck.AnyLoad, Gen.Double[0.01, 1]).Sample((rig, load, z) =>
        {
            if (Utilization.At(z, rig, load) is not { } use) return;
            Assert.Equal(z * load.Weight, (use.Front * load.Front(z)) + (use.Rear * load.Rear(z)), 1e-6 * load.Weight);
            Assert.Equal(load.Weight, load.Front(z) + load.Rear(z), 1e-9 * load.Weight);
        });

    [Fact]
    public void The_pressure_found_is_the_least_that_brakes_so_hard() =>
        Gen.Select(Truck.AnyRig, Gen.Double[1, 30000]).Sample((rig, force) =>
        {
            if (rig.Pressure(force) is not { } p) return;
            Assert.Equal(force, rig.TotalAt(p), 1e-6 * force);
            Assert.True(rig.TotalAt(p * (1 - 1e-6)) < force);
        });

    // Derived: the rear at 8.911 MPa behind a valve of 3.5 MPa and slope 0.35 has 5.394 MPa; a limiter holds its knee.
    [Fact]
    public void A_valve_holds_back_what_lies_over_its_knee()
    {
        Assert.Equal(5.394, Truck.Valved.Valves.Rear(8.911e6) / 1e6, 0.0005);
        Assert.Equal(8.911, Truck.Valved.Valves.Bypassed().Rear(8.911e6) / 1e6, 1e-9);
        Assert.Equal(3.5e6, new Valves(3.5e6, 0, 0).Rear(9e6));
        Assert.Equal(2e6, new Valves(3.5e6, 0, 0).Rear(2e6));
    }

    // A metering valve of 0.8 MPa: nothing up to it, caught up at twice as much, never more than the line.
    [Fact]
    public void A_metering_valve_catches_up()
    {
        var valves = Valves.None with { Metering = 0.8e6 };
        Assert.Equal(0, valves.Front(0.8e6));
        Assert.Equal(0.8e6, valves.Front(1.2e6), 1e-6);
        Assert.Equal(1.6e6, valves.Front(1.6e6), 1e-6);
        Assert.Equal(3e6, valves.Front(3e6), 1e-6);
    }

    // A rear circuit at 0.7 of the front's pressure: every figure of the rig as with the two pressures written out.
    [Fact]
    public void A_weaker_rear_circuit_is_seen_from_the_front() =>
        Gen.Select(Truck.AnyRig, Gen.Double[0.3, 1.5], Gen.Double[0, 15]).Sample((rig, share, line) =>
        {
            var seen = rig.RearSeen(share);
            Assert.Equal(rig.Rear.At(rig.Valves.Rear(share * line * 1e6)), seen.RearAt(line * 1e6), 1e-6);
            Assert.Equal(rig.FrontAt(line * 1e6), seen.FrontAt(line * 1e6), 1e-9);
        });

    // Derived: 70 kPa: knee at 172.9 N and 6.413 MPa; 500 N 8.911 MPa, dead 3.436; 48 kPa: 120.6 N and 4.413 MPa, 500 N 7.311.
    [Theory]
    [InlineData(70_000, 172.9, 6.413, 8.911)]
    [InlineData(48_000, 120.6, 4.413, 7.311)]
    public void The_pedal_line_has_its_knee_where_the_booster_runs_out(double vacuum, double knee, double pressure, double hard)
    {
        var pedal = Truck.Pedal(vacuum);
        Assert.Equal(knee, pedal.Knee, 0.05);
        Assert.Equal(pressure, pedal.Pressure(pedal.Knee) / 1e6, 0.0006);
        Assert.Equal(hard, pedal.Pressure(500) / 1e6, 0.0006);
        Assert.Equal(3.436, pedal.DeadPressure(500) / 1e6, 0.0006);
    }

    [Fact]
    public void Force_and_pressure_of_the_pedal_are_each_others_way_back() =>
        Gen.Select(Gen.Double[20_000, 90_000], Gen.Double[0.8, 12]).Sample((vacuum, line) =>
        {
            var pedal = Truck.Pedal(vacuum);
            Assert.Equal(line, pedal.Pressure(pedal.Force(line * 1e6)) / 1e6, 1e-9);
            Assert.Equal(line, pedal.DeadPressure(pedal.DeadForce(line * 1e6)) / 1e6, 1e-9);
        });

    /// <summary>Ff, Fr, Nf, Nr out of: both forces by the pressure, the sum of the loads, and moments about the rear contact; by elimination with pivots.</summary>
    private static (double Ff, double Fr, double Nf, double Nr) FourEquations(in Rig rig, in Loading load, double line)
    {
        double[][] m =
        [
            [1, 0, 0, 0, rig.Front.PerPascal * Math.Max(0, rig.Valves.Front(line) - rig.Front.Threshold)],
            [0, 1, 0, 0, rig.Rear.PerPascal * Math.Max(0, rig.Valves.Rear(line) - rig.Rear.Threshold)],
            [0, 0, 1, 1, load.Weight],
            [-load.Height, -load.Height, load.Wheelbase, 0, load.Weight * (load.Wheelbase - load.Behind)],
        ];
        for (var c = 0; c < 4; c++)
        {
            var pivot = Enumerable.Range(c, 4 - c).MaxBy(r => Math.Abs(m[r][c]));
            (m[c], m[pivot]) = (m[pivot], m[c]);
            for (var r = 0; r < 4; r++)
            {
                if (r == c) continue;
                var times = m[r][c] / m[c][c];
                for (var k = c; k < 5; k++) m[r][k] -= times * m[c][k];
            }
        }
        return (m[0][4] / m[0][0], m[1][4] / m[1][1], m[2][4] / m[2][2], m[3][4] / m[3][3]);
    }
}
