using Crossmember.Engineering.Brakes.Balance;
using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Tests.Brakes.Chain;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Balance;

public class DistributionTests
{
    // Derived: curves cross at 0.6675 with the rear's threshold; without it (beta L - b) / h = 0.6126 (beta 0.69906); with the valve at 0.975.
    [Theory]
    [InlineData("none", "0.4 MPa", 0.6675, "caution")]
    [InlineData("none", "0 MPa", 0.6126, "caution")]
    [InlineData("fixed", "0.4 MPa", 0.975, "pass")]
    public void Thresholds_and_valve_move_the_crossover(string valve, string threshold, double z, string verdict)
    {
        var r = Door.Run("brakes.distribution", Sheet.Of(valve, ("rearThreshold", threshold)));
        r.Gives("crossover", z, z > 0.9 ? 0.0006 : 0.00006);
        Assert.Equal(verdict, r.Verdict("order"));
    }

    // Inputs printed in exercise 4.3 of automobile theory: the crossover would lie at -0.413, so the rear is first from the start.
    [Fact]
    public void A_negative_crossover_is_the_rear_first_from_the_start()
    {
        Loading load = new(4080 * Loading.Gravity, 3.95, 2.10, 0.845);
        Assert.Equal(-0.413, ((0.38 * 3.95) - (3.95 - 2.10)) / 0.845, 0.0006);
        Assert.Equal(0, Crossing.Of(new(new(0.38e-3, 0), new(0.62e-3, 0), Valves.None), load, 1.2));
        var r = Door.Run("brakes.distribution", Sheet.Of("none", ("frontForce", "3800 N"), ("rearForce", "6200 N"), ("rearThreshold", "0 MPa"), ("total", "4080 kg"), ("centerX", "2.1 m"), ("height", "0.845 m"), ("wheelbase", "3.95 m")));
        r.Gives("crossover", 0, 1e-12);
        Assert.StartsWith("From 0.15 g on the rear axle", r.Finding("order")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.DoesNotContain("any road", r.Finding("order")["text"]!.GetValue<string>(), StringComparison.Ordinal); // below 0.15 g nobody looked
    }

    // Derived: ideal split of the truck: z 0.4 0.25477 and 0.14523 of the weight (63.69 % front), z 0.8 0.60308 and 0.19692; the square-root form gives the same to 1e-9.
    [Theory]
    [InlineData(0.4, 0.25477, 0.14523)]
    [InlineData(0.8, 0.60308, 0.19692)]
    public void The_ideal_split_and_its_square_root_form(double z, double front, double rear)
    {
        var load = Truck.Load;
        double f = load.IdealFront(z) / load.Weight, r = load.IdealRear(z) / load.Weight, b = load.Wheelbase - load.Behind, h = load.Height;
        Assert.Equal(front, f, 0.000006);
        Assert.Equal(rear, r, 0.000006);
        Assert.Equal(r, Math.Sqrt((b * b / (4 * h * h)) + (load.Wheelbase / h * f)) - (b / (2 * h)) - f, 1e-9);
    }

    [Fact]
    public void Ideal_forces_use_both_axles_alike_and_add_up() =>
        Gen.Select(Truck.AnyLoad, Gen.Double[0.05, 1]).Sample((load, z) =>
        {
            Assert.Equal(z, load.IdealFront(z) / load.Front(z), 1e-12);
            Assert.Equal(z * load.Weight, load.IdealFront(z) + load.IdealRear(z), 1e-9 * load.Weight);
        });

    // On either side of the crossover the two uses lie the other way round, whatever the rig.
    [Fact]
    public void Just_above_the_crossover_the_rear_uses_more() =>
        Gen.Select(Truck.AnyRig, Truck.AnyLoad).Sample((rig, load) =>
        {
            if (Crossing.Of(rig, load, 1.2) is not { } z || z <= 0.151 || z > Math.Min(1.19, load.Behind / load.Height) - 0.01) return;
            if (Utilization.At(z - 1e-4, rig, load) is { } below) Assert.True(below.Front >= below.Rear - 1e-6, $"{rig} {load} {z}");
            if (Utilization.At(z + 1e-4, rig, load) is { } above) Assert.True(above.Front <= above.Rear + 1e-6, $"{rig} {load} {z}");
        });

    // Between 0.15 g and the crossover the front is over the rear everywhere: nothing was jumped over.
    [Fact]
    public void Below_the_crossover_the_front_uses_more_all_the_way() =>
        Gen.Select(Truck.AnyRig, Truck.AnyLoad).Sample((rig, load) =>
        {
            if (Crossing.Of(rig, load, 1.2) is not { } end) return;
            for (var z = 0.15; z < end - 1e-6; z += 0.01)
                if (Utilization.At(z, rig, load) is { } use) Assert.True(use.Front >= use.Rear - 1e-9, $"{rig} {load} {z} of {end}");
        }, iter: 300);

    [Fact]
    public void Both_pictures_are_drawn_with_the_rules_limit()
    {
        var curves = Door.Run("brakes.distribution", Sheet.Of("fixed", ("rule", "R13-N1")))["curves"]!.AsArray().Select(c => c!["name"]!.GetValue<string>()).ToList();
        Assert.Superset(new HashSet<string> { "ideal", "installed", "0.8 g", "front", "rear", "both alike", "limit, both axles", "limit, rear instead" }, curves.ToHashSet());
    }
}
