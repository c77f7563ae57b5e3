using Crossmember.Engineering.Brakes.Limits;
using Crossmember.Engineering.Calculations;
using UnitsNet;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>How the braking force is shared between the axles, against what their loads would take.</summary>
/// <remarks>
/// Formula:  ideal Ff = z (b + z h) / L, Fr = z (a - z h) / L of the weight; installed: the forces of the brakes over line pressure; alike where A + B z = z (b + z h) / L on a straight piece
/// Valid:    two axles, level road, grip alike at all wheels, no engine braking
/// Source:   statics; symbols as in DARCOM-P 706-358 (1976), p. 142; docs/derivations/brake-balance.md
/// Example:  2100 kg, wheelbase 2.6 m, center 1.248 m behind the front axle and 0.76 m high: front first up to 0.6675 g
/// </remarks>
public sealed class Distribution() : Calculation<Distribution.Inputs, Distribution.Result>(new()
{
    Id = "brakes.distribution",
    Version = 1,
    Title = "Brake force front and rear",
    Purpose = "Which axle brakes beyond its share and from where on: the installed forces against those that the axles' loads would take, and the grip that each axle uses.",
    Formula = "ideal: Ff = z W (b + z h) / L, Fr = z W (a - z h) / L; grip used f = F / N at each deceleration z",
    Validity = "Two axles on a level road, equal grip left and right, friction of the linings the same hot and cold, no engine braking. Looked at from 0.15 g up to 1.2 g or until the rear lifts.",
    Sources = ["Statics, derived", "DARCOM-P 706-358, Analysis and Design of Automotive Brake Systems (1976), p. 142 (symbols)"],
    Checks = [new("order", null, "Does the front axle use more of its grip than the rear, as far as people brake?", "valveKnee", "valveSlope")],
    Trends =
    [
        new("frontForce", "crossover", '+', 11000, 15000), new("rearForce", "crossover", '-', 5000, 7000), new("valveKnee", "crossover", '-', 2.6, 5), new("valveSlope", "crossover", '-', 0.3, 0.8),
        new("rearThreshold", "crossover", '+', 0.1, 1), new("centerX", "crossover", '+', 1.2, 1.3), new("frontThreshold", "crossover", '-', 0, 0.3), new("total", "crossover", '-', 1800, 2800),
    ],
    NoTrends =
    [
        new("metering", "holds the front off at the first touch only; higher up it changes nothing"), new("rearShare", "works as more force, an earlier knee and a lower threshold at the rear"), new("height", "a higher load takes more from the rear, but also makes the front's grip last longer"),
        new("wheelbase", "moves the front's load as well as how much of it moves"), new("grip", "only says where the first lock is marked"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["frontForce"] = "12642.9 N", ["frontThreshold"] = "0 MPa", ["rearForce"] = "5442.7 N", ["rearThreshold"] = "0.4 MPa", ["valve"] = "none", ["metering"] = "0 MPa",
                ["total"] = "2100 kg", ["centerX"] = "1.248 m", ["height"] = "0.76 m", ["wheelbase"] = "2.6 m",
            },
            new Dictionary<string, double> { ["crossover"] = 0.6675 }, 0.0002, "Root of ff = fr with the rear's threshold, worked by hand in docs/derivations/brake-balance.md", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["frontForce"] = "12642.9 N", ["frontThreshold"] = "0 MPa", ["rearForce"] = "5442.7 N", ["rearThreshold"] = "0.4 MPa", ["valve"] = "fixed", ["valveKnee"] = "3.5 MPa", ["valveSlope"] = "0.35",
                ["metering"] = "0 MPa", ["total"] = "2100 kg", ["centerX"] = "1.248 m", ["height"] = "0.76 m", ["wheelbase"] = "2.6 m",
            },
            new Dictionary<string, double> { ["crossover"] = 0.975 }, 0.0006, "The same with a rear valve of 3.5 MPa and slope 0.35", Provenance.Derived),
    ],
    Cautions = BrakeCautions.Balance,
})
{
    private const double MostZ = 1.2, ShareAt = 0.5;

    public sealed record Inputs(
        [Input(How.FrontForce, "N", AtLeast = 0, High = 60000, Measure = How.Forces)] Force FrontForce,
        [Input(How.FrontThreshold, "MPa", AtLeast = 0, High = 2, Measure = How.Thresholds)] Pressure FrontThreshold,
        [Input(How.RearForce, "N", AtLeast = 0, High = 60000, Measure = How.Forces)] Force RearForce,
        [Input(How.RearThreshold, "MPa", AtLeast = 0, High = 2, Measure = How.Thresholds)] Pressure RearThreshold,
        [Input(How.Valve, OneOf = [How.NoValve, How.FixedValve, How.AdjustableValve, How.LoadValve], Measure = How.ValveKind)] string Valve,
        [Input(How.Knee, "MPa", AtLeast = 0, High = 20, Measure = How.HowKnee)] Pressure? ValveKnee,
        [Input(How.Slope, AtLeast = 0, High = 1, Measure = How.HowSlope)] Ratio? ValveSlope,
        [Input(How.Metering, "MPa", AtLeast = 0, High = 2, Default = 0, Measure = How.HowMetering)] Pressure Metering,
        [Input(How.RearShare, MoreThan = 0, Low = 0.2, High = 3, Default = 1, Measure = How.HowRearShare)] Ratio RearShare,
        [Input(How.Total, "kg", MoreThan = 0, Measure = How.HowTotal)] UnitsNet.Mass Total,
        [Input(How.CenterX, "m", MoreThan = 0, Low = 0.3, High = 6, Measure = How.HowCenter)] Length CenterX,
        [Input(How.Height, "m", MoreThan = 0, Low = 0.3, High = 2, Measure = How.HowHeight)] Length Height,
        [Input(How.Wheelbase, "m", MoreThan = 0, Low = 1.2, High = 8, Measure = How.HowWheelbase)] Length Wheelbase,
        [Input(How.Rule, OneOf = [BrakeRule.Truck105, BrakeRule.Car135, BrakeRule.Car13H, BrakeRule.Car13, BrakeRule.Van13, BrakeRule.None], Measure = How.HowRule)] string? Rule,
        [Input(How.Grip, MoreThan = 0, Low = 0.1, High = 1.1, Default = 0.7, Measure = How.HowGrip)] Ratio Grip);

    public sealed record Result(
        [Output("deceleration in g up to which the front axle uses more of its grip than the rear, looked at up to 1.2 g; 0 where the rear does from 0.15 g on")] Ratio? Crossover,
        [Output("share of the braking force at the front axle at 0.5 g")] Ratio? FrontShare,
        [Output("the share that would use both axles' grip alike at 0.5 g")] Ratio? IdealShare);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (Given.Loading(x.Total, x.CenterX, x.Height, x.Wheelbase) is not { } load) return null;
        var ideal = load.IdealFront(ShareAt) / (load.Weight * ShareAt);
        if (Given.Valves(x.Valve, x.ValveKnee, x.ValveSlope, x.Metering) is not { } valves) return new(null, null, Ratio.FromDecimalFractions(ideal));
        var rig = Given.Rig(Given.Axle(x.FrontForce, x.FrontThreshold), Given.Axle(x.RearForce, x.RearThreshold), valves, x.RearShare);
        var crossing = Crossing.Of(rig, load, MostZ);
        double? share = rig.Pressure(ShareAt * load.Weight) is { } line ? rig.FrontAt(line) / (ShareAt * load.Weight) : null;
        w.Line("Ff / F", "z (b + z h) / L / z", $"({load.Wheelbase - load.Behind} + {ShareAt} x {load.Height}) / {load.Wheelbase}", ideal, "1");
        if (share is { } s) w.Line("installed", "Ff / F at 0.5 g", $"{s * ShareAt * load.Weight} / {ShareAt * load.Weight}", s, "1");
        if (crossing is not { } z) return new(null, share is { } one ? Ratio.FromDecimalFractions(one) : null, Ratio.FromDecimalFractions(ideal));
        w.Line("z", "A + B z = z (b + z h) / L", $"front and rear use alike", z, "1");
        w.Answer("order", z < AdhesionRule.High ? Verdict.Caution : Verdict.Pass, z <= 0
            ? "From 0.15 g on the rear axle uses more of its grip than the front: braked so, its wheels lock first and the vehicle swaps ends."
            : z < AdhesionRule.High ? $"From 0.15 to {z:0.00} g the front axle uses more of its grip, above it the rear: braked harder, the rear wheels lock first and the vehicle swaps ends."
            : $"The front axle uses more of its grip than the rear from 0.15 to {z:0.00} g: its wheels lock first and it stays straight.", z, "1", AdhesionRule.Practice);
        if (w.Shown) DistributionCurves.Draw(w, rig, load, x.Rule, x.Grip.DecimalFractions);
        return new(Ratio.FromDecimalFractions(z), share is { } both ? Ratio.FromDecimalFractions(both) : null, Ratio.FromDecimalFractions(ideal));
    }
}
