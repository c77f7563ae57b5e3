using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>The torque it takes to turn standing front wheels on dry ground.</summary>
/// <remarks>
/// Formula:  T = mu / 3 sqrt(W^3 / p) for each wheel (W N, p Pa)
/// Valid:    an estimate: standing wheel on dry ground, turned about the middle of its contact; jacking of kingpin and caster left out
/// Source:   empirical formula for standing tires, from memory; why it has this form: docs/derivations/steering-effort.md
/// Example:  5500 N, 200 kPa, 0.8 -> 243.2 N m for each wheel
/// </remarks>
public sealed class ParkingEffort() : Calculation<ParkingEffort.Inputs, ParkingEffort.Result>(new()
{
    Id = "steering.parking-effort",
    Version = 1,
    Title = "Torque to turn standing wheels",
    Purpose = "What the steering must turn at worst, standing on dry ground: winch, bumper and soft wide tires raise it fast.",
    Formula = "T = mu / 3 x sqrt(W^3 / p) for each wheel",
    Validity = "An estimate, good to a third either way: a standing wheel turned about the middle of its contact. Wheels set far out roll a little and turn easier with the "
        + "brakes off, harder with them on. Kingpin inclination and caster lift the vehicle as the wheels turn: a few per cent more, left out here. Friction of "
        + "kingpins and a locked front axle are left out too.",
    Sources =
    [
        "Empirical formula for the turning torque of a standing tire, from memory (docs/derivations/steering-effort.md)",
        "Barton and Fieldhouse, Automotive Chassis Engineering, ch. 2, example E2.1: jacking 28 and 42 N m beside 594 N m of scrub in a van",
    ],
    Trends = [new("loads", "torque", '+', 200, 1500), new("pressure", "torque", '-', 15, 80), new("grip", "torque", '+', 0.2, 1)],
    Examples =
    [
        new(new Dictionary<string, string> { ["loads"] = """{"left":"560.844 kg","right":"560.844 kg"}""", ["pressure"] = "200 kPa", ["grip"] = "0.8" },
            new Dictionary<string, double> { ["wheelTorque"] = 179.4, ["torque"] = 358.7 }, 0.0005,
            "5500 N on each wheel: 0.8 / 3 x sqrt(5500^3 / 200000) = 243.2 N m, by hand from the formula recalled", Provenance.Derived),
    ],
    Cautions =
    [
        "Do not wind the wheels standing against a curb or a stop: it loads box, joints and rail more than driving does.",
        SteeringRatio.BoxMounting,
    ],
})
{
    public sealed record Inputs(
        [Input("load on each front wheel", "kg", MoreThan = 0, Low = 100, High = 2000, Measure = HowToMeasureSteering.Loads)] Members<UnitsNet.Mass> Loads,
        [Input("inflation pressure of the front tires", "psi", MoreThan = 0, Low = 10, High = 120, Measure = HowToMeasureSteering.Pressure)] Pressure Pressure,
        [Input("grip of the tires, as a share of the load on them", MoreThan = 0, Low = 0.1, High = 1.1, Default = 0.7, Measure = HowToMeasureSteering.Grip)] Ratio Grip);

    public sealed record Result(
        [Output("torque at the heavier wheel", "lbf ft")] Torque WheelTorque,
        [Output("torque at all front wheels together", "lbf ft")] Torque Torque);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double p = x.Pressure.Pascals, mu = x.Grip.DecimalFractions, total = 0, most = 0; // Pa, N m
        foreach (var (side, load) in x.Loads.Items)
        {
            var T = StandingTire.Torque(load.Kilograms * StandingTire.Gravity, p, mu);
            w.Line($"T {side}", "mu / 3 sqrt(W^3 / p)", $"{mu} / 3 x sqrt({load.Kilograms * StandingTire.Gravity}^3 / {p})", T, "N m");
            total += T;
            most = Math.Max(most, T);
        }
        w.Line("T", "sum", $"over {x.Loads.Items.Count} wheels", total, "N m");
        return new(UnitsNet.Torque.FromNewtonMeters(most), UnitsNet.Torque.FromNewtonMeters(total));
    }
}
