using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Brakes.Limits;
using Crossmember.Engineering.Calculations;
using UnitsNet;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>Which axle locks first on a road, and what the brakes have made of it by then.</summary>
/// <remarks>
/// Formula:  least line pressure with F = mu N at an axle; efficiency z / mu
/// Valid:    two axles, level road, grip alike at all wheels, no anti-lock system; after the first lock nothing is said
/// Source:   statics; DARCOM-P 706-358 (1976), ch. 8; docs/derivations/brake-balance.md
/// Example:  2100 kg, no valve, grip 0.8: the rear at 5.915 MPa and 0.7381 g, efficiency 0.923
/// </remarks>
public sealed class LockOrder() : Calculation<LockOrder.Inputs, LockOrder.Result>(new()
{
    Id = "brakes.lock-order",
    Version = 1,
    Title = "First axle to lock",
    Purpose = "Which wheels lock first on a dry, a wet and an icy road, at what deceleration, line pressure and leg force, and how much of the road's grip is used by then.",
    Formula = "F = mu N at the axle that gets there with less pressure; efficiency z / mu",
    Validity = "Two axles on a level road, equal grip left and right, no anti-lock system, tires whose grip does not fall with load. Grip of 0.1, 0.2, 0.4, 0.6 and 0.8 besides the one given; how much of it is used from 0.2 on, as rules ask.",
    Sources = ["Statics, derived", "DARCOM-P 706-358, Analysis and Design of Automotive Brake Systems (1976), ch. 8 (quantities)", "Demand on the efficiency: UN Regulation 13 Annex 10 and 13-H Annex 5, from memory; common practice where no rule asks"],
    Checks =
    [
        new("front-first", null, "Do the front wheels lock before the rear ones on every road looked at?", "valveKnee", "valveSlope"),
        new("efficiency", Sense.AtLeast, "Is enough of the road's grip used before an axle locks?", "valveKnee", "valveSlope"),
    ],
    Trends = [new("grip", "deceleration", '+', 0.2, 1), new("grip", "pressure", '+', 0.2, 1), new("plainPressure", "pedalForce", '-', 1, 4), new("valveKnee", "deceleration", '+', 1.5, 3.5), new("valveSlope", "deceleration", '+', 0.1, 0.45)],
    NoTrends =
    [
        new("frontForce", "more force at one axle brings its own lock nearer and helps until then"), new("frontThreshold", "likewise"), new("rearForce", "likewise"), new("rearThreshold", "likewise"),
        new("metering", "holds the front off at the first touch only"), new("rearShare", "works as more force, an earlier knee and a lower threshold at the rear"), new("total", "a heavier vehicle needs more pressure; what share of the grip is used depends on valve and thresholds"),
        new("centerX", "moves load from the axle that gains to the one that loses"), new("height", "moves load forward in braking"), new("wheelbase", "likewise"),
        new("cutIn", "told of the pedal line"), new("jumpIn", "told of the pedal line"), new("knee", "told of the pedal line"), new("kneePressure", "told of the pedal line"),
        new("deadLoss", "told of the pedal line; of a dead booster only"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["frontForce"] = "12642.9 N", ["frontThreshold"] = "0 MPa", ["rearForce"] = "5442.7 N", ["rearThreshold"] = "0.4 MPa", ["valve"] = "fixed", ["valveKnee"] = "3.5 MPa", ["valveSlope"] = "0.35",
                ["metering"] = "0 MPa", ["total"] = "2100 kg", ["centerX"] = "1.248 m", ["height"] = "0.76 m", ["wheelbase"] = "2.6 m", ["grip"] = "0.8", ["cutIn"] = "0 N", ["jumpIn"] = "0 MPa",
                ["knee"] = "0 N", ["kneePressure"] = "0 MPa", ["plainPressure"] = "4 MPa", ["deadLoss"] = "0 MPa",
            },
            new Dictionary<string, double> { ["deceleration"] = 0.7532, ["pressure"] = 6.650, ["efficiency"] = 0.9415, ["rearUse"] = 0.6200 }, 0.0003, "Front first with a valve, by three routes; docs/derivations/brake-balance.md", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["frontForce"] = "12642.9 N", ["frontThreshold"] = "0 MPa", ["rearForce"] = "5442.7 N", ["rearThreshold"] = "0.4 MPa", ["valve"] = "none", ["metering"] = "0 MPa", ["total"] = "2100 kg",
                ["centerX"] = "1.248 m", ["height"] = "0.76 m", ["wheelbase"] = "2.6 m", ["grip"] = "0.8",
            },
            new Dictionary<string, double> { ["deceleration"] = 0.7381, ["pressure"] = 5.915, ["efficiency"] = 0.923 }, 0.0005, "The rear first without one, by three routes; docs/derivations/brake-balance.md", Provenance.Derived),
    ],
    Cautions = BrakeCautions.Balance,
})
{
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
        [Input(How.Grip, MoreThan = 0, Low = 0.1, High = 1.1, Default = 0.7, Measure = How.HowGrip)] Ratio Grip,
        [Input(How.Rule, OneOf = [BrakeRule.Truck105, BrakeRule.Car135, BrakeRule.Car13H, BrakeRule.Car13, BrakeRule.Van13, BrakeRule.None], Measure = How.HowRule)] string? Rule,
        [Input("pedal force at which the booster begins", "N", AtLeast = 0, Measure = How.HowPedal)] Force? CutIn,
        [Input("line pressure just above it", "MPa", AtLeast = 0, Measure = How.HowPedal)] Pressure? JumpIn,
        [Input("pedal force at which the booster runs out", "N", AtLeast = 0, Measure = How.HowPedal)] Force? Knee,
        [Input("line pressure there", "MPa", AtLeast = 0, Measure = How.HowPedal)] Pressure? KneePressure,
        [Input("line pressure at 100 lbf of pedal by leg alone", "MPa", MoreThan = 0, Measure = How.HowPedal)] Pressure? PlainPressure,
        [Input("line pressure that the spring of a dead booster takes", "MPa", AtLeast = 0, Measure = How.HowPedal)] Pressure? DeadLoss);

    public sealed record Result(
        [Output("axle that locks first on this road: front, rear or neither")] string? First,
        [Output("deceleration in g when the first axle locks")] Ratio? Deceleration,
        [Output("line pressure then", "MPa")] Pressure? Pressure,
        [Output("pedal force then", "N")] Force? PedalForce,
        [Output("share of the road's grip used then")] Ratio? Efficiency,
        [Output("grip that the rear axle uses then")] Ratio? RearUse,
        [Output("least share of the grip used on any of the roads looked at, from grip 0.2 on")] Ratio? LeastEfficiency);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (Given.Loading(x.Total, x.CenterX, x.Height, x.Wheelbase) is not { } load) return null;
        if (Given.Valves(x.Valve, x.ValveKnee, x.ValveSlope, x.Metering) is not { } valves) return new(null, null, null, null, null, null, null);
        var rig = Given.Rig(Given.Axle(x.FrontForce, x.FrontThreshold), Given.Axle(x.RearForce, x.RearThreshold), valves, x.RearShare);
        var pedal = PedalFigures.Line(x.CutIn, x.JumpIn, x.Knee, x.KneePressure, x.PlainPressure, x.DeadLoss);
        var mu = x.Grip.DecimalFractions;
        var lock_ = LockUp.On(mu, rig, load);
        if (lock_.Axle == LocksFirst.Neither) return null;
        double? force = pedal?.Force(lock_.Pressure);
        w.Line("p", "least p with F = mu N at an axle", $"{(lock_.Axle == LocksFirst.Rear ? "rear" : "front")}, mu {mu}", lock_.Pressure / 1e6, "MPa");
        w.Line("z", "(Ff + Fr) / W", $"({rig.FrontAt(lock_.Pressure)} + {rig.RearAt(lock_.Pressure)}) / {load.Weight}", lock_.Deceleration, "1");
        w.Line("efficiency", "z / mu", $"{lock_.Deceleration} / {mu}", lock_.Efficiency(mu), "1");
        if (force is { } newtons) w.Line("F", "pedal force for p", $"{lock_.Pressure / 1e6} MPa", newtons, "N");
        var least = LockFindings.Answer(w, mu, x.Rule, lock_, force, rig, load);
        if (w.Shown) LockFindings.Draw(w, rig, load);
        return new(LockFindings.Name(lock_.Axle), Ratio.FromDecimalFractions(lock_.Deceleration), UnitsNet.Pressure.FromPascals(lock_.Pressure), force is { } f ? Force.FromNewtons(f) : null,
            Ratio.FromDecimalFractions(lock_.Efficiency(mu)), double.IsFinite(lock_.RearUse) ? Ratio.FromDecimalFractions(lock_.RearUse) : null, Ratio.FromDecimalFractions(least));
    }
}
