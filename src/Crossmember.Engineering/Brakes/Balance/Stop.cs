using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Brakes.Limits;
using Crossmember.Engineering.Calculations;
using UnitsNet;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>Leg force for the stop that a rule asks, and the way to a stop with all the leg that it allows.</summary>
/// <remarks>
/// Formula:  pedal force of the pressure that brakes with d m; s = A v + v2/(2 d) as the rule counts it, else v tb/2 + v2/(2 d) - d tb2/24
/// Valid:    cold brakes, level road, no engine braking; the driver holds the first axle just short of locking; the driver's own delay is not counted
/// Source:   statics; docs/derivations/brake-balance.md; what is asked in brake-rules.csv
/// Example:  2100 kg with a booster of 70 kPa: 6.43 m/s2 takes 5.70 MPa and 154 N
/// </remarks>
public sealed class Stop() : Calculation<Stop.Inputs, Stop.Result>(new()
{
    Id = "brakes.stop",
    Version = 1,
    Title = "Stop with cold brakes",
    Purpose = "What the leg must do for the stop that the chosen rule asks, or for a hard stop where there is none; and how soon it stands with all the leg that the rule allows.",
    Formula = "p: F(p) = d m; pedal force by booster and master cylinder; s = A v + v^2/(2 d) with the rule's own A, else v tb/2 + v^2/(2 d) - d tb^2/24",
    Validity = "Cold brakes, level road, no engine braking, no driver's delay but what the rule counts. The driver holds the wheels just short of locking: with a rear axle that locks first nobody can.",
    Sources = ["Statics, derived", "The rules' own figures, each with its source, in brake-rules.csv"],
    Checks =
    [
        new("effort", Sense.AtMost, "Does a leg make the stop that is asked?", "valveKnee", "valveSlope"),
        new("distance", Sense.AtMost, "Does it stop within the distance that is asked?", "valveKnee", "valveSlope"),
    ],
    Trends =
    [
        new("total", "pedalForce", '+', 1500, 3500), new("frontForce", "pedalForce", '-', 8000, 20000), new("rearForce", "pedalForce", '-', 3000, 9000), new("frontThreshold", "pedalForce", '+', 0, 0.5),
        new("rearThreshold", "pedalForce", '+', 0, 1), new("valveKnee", "pedalForce", '-', 2, 5), new("valveSlope", "pedalForce", '-', 0.1, 0.9),
        new("jumpIn", "pedalForce", '-', 0.3, 1), new("kneePressure", "pedalForce", '-', 6, 10), new("cutIn", "pedalForce", '+', 0, 60), new("knee", "pedalForce", '+', 150, 300),
    ],
    NoTrends =
    [
        new("centerX", "only where it caps what the road takes"), new("height", "likewise"), new("wheelbase", "likewise"), new("grip", "caps what is reached; below the cap it changes nothing"),
        new("deadLoss", "of a dead booster; only drawn here"), new("frontLostPressure", "of a lost circuit; only drawn here"), new("rearLostPressure", "of a lost circuit; only drawn here"), new("buildUp", "counts only where the rule does not state its own delay"),
        new("plainPressure", "counts above the booster's knee only"), new("metering", "holds the front off at the first touch only"), new("rearShare", "works as more force, an earlier knee and a lower threshold at the rear"), new("braking", "stands in where no rule asks a deceleration"),
    ],
    Examples =
    [
        new(StopExample, new Dictionary<string, double> { ["pressure"] = 5.698, ["pedalForce"] = 154.2 }, 0.001, "6.43 m/s2 with a booster of 70 kPa and a rear valve, by hand; docs/derivations/brake-balance.md", Provenance.Derived),
    ],
    Cautions = BrakeCautions.Stopping,
})
{
    private static Dictionary<string, string> StopExample => new()
    {
        ["frontForce"] = "12642.9 N", ["frontThreshold"] = "0 MPa", ["rearForce"] = "5442.7 N", ["rearThreshold"] = "0.4 MPa", ["valve"] = "fixed", ["valveKnee"] = "3.5 MPa", ["valveSlope"] = "0.35",
        ["metering"] = "0 MPa", ["total"] = "2100 kg", ["centerX"] = "1.248 m", ["height"] = "0.76 m", ["wheelbase"] = "2.6 m", ["grip"] = "0.8", ["rule"] = "R13-H", ["cutIn"] = "22.556 N", ["jumpIn"] = "0.67 MPa",
        ["knee"] = "172.932 N", ["kneePressure"] = "6.4129 MPa", ["plainPressure"] = "3.3975 MPa", ["deadLoss"] = "0.38286 MPa",
    };

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
        [Input(How.Rule, OneOf = [BrakeRule.Truck105, BrakeRule.Car135, BrakeRule.Car13H, BrakeRule.Car13, BrakeRule.Van13, BrakeRule.None], Measure = How.HowRule)] string Rule,
        [Input("hard stop to look at where no rule asks one, share of g", MoreThan = 0, High = 1, Default = 0.6, Measure = "0.6 is a hard stop on dry pavement")] Ratio Braking,
        [Input(How.Grip, MoreThan = 0, Low = 0.1, High = 1.1, Default = 0.7, Measure = How.HowGrip)] Ratio Grip,
        [Input("time in which the brakes come up", "s", AtLeast = 0, High = 2, Default = 0.36, Measure = "0.3 to 0.4 s with a quick foot; a booster on a long hose takes longer; not used where the rule states its own delay")] Duration BuildUp,
        [Input("pedal force at which the booster begins", "N", AtLeast = 0, Measure = How.HowPedal)] Force CutIn,
        [Input("line pressure just above it", "MPa", AtLeast = 0, Measure = How.HowPedal)] Pressure JumpIn,
        [Input("pedal force at which the booster runs out", "N", AtLeast = 0, Measure = How.HowPedal)] Force Knee,
        [Input("line pressure there", "MPa", AtLeast = 0, Measure = How.HowPedal)] Pressure KneePressure,
        [Input("line pressure at 100 lbf of pedal by leg alone", "MPa", MoreThan = 0, Measure = How.HowPedal)] Pressure PlainPressure,
        [Input("line pressure that the spring of a dead booster takes", "MPa", AtLeast = 0, Measure = How.HowPedal)] Pressure DeadLoss,
        [Input("how the circuits are split, for the lines with one lost", OneOf = [Failure.One, Failure.FrontRear, Failure.Diagonal], Measure = "follow the lines from the master cylinder: which wheels hang on which outlet")] string? Circuits,
        [Input("whether the rear valve opens when the front circuit is lost; taken as no where nothing is said", OneOf = ["yes", "no"], Measure = "read the valve's papers")] string? Bypass,
        [Input("kind of master cylinder; a single one is one circuit", OneOf = [Failure.SingleMaster, "tandem", "stepped", "twin"], Measure = "count its outlets: one bore with one outlet is single")] string? MasterKind,
        [Input("line pressure in the rear circuit at which the pedal or the stroke ends with the front one lost, for its line", "MPa", AtLeast = 0, Measure = How.HowLost)] Pressure? FrontLostPressure,
        [Input("line pressure in the front circuit at which the pedal or the stroke ends with the rear one lost, for its line", "MPa", AtLeast = 0, Measure = How.HowLost)] Pressure? RearLostPressure);

    public sealed record Result(
        [Output("line pressure for the deceleration asked", "MPa")] Pressure? Pressure,
        [Output("pedal force for it", "N")] Force? PedalForce,
        [Output("deceleration in g with all the leg that is allowed, at most what the road takes")] Ratio? AtMost,
        [Output("way to a stop with it, from the rule's speed", "m")] Length? Distance);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (Given.Loading(x.Total, x.CenterX, x.Height, x.Wheelbase) is not { } load) return null;
        if (Given.Valves(x.Valve, x.ValveKnee, x.ValveSlope, x.Metering) is not { } valves) return new(null, null, null, null);
        var rig = Given.Rig(Given.Axle(x.FrontForce, x.FrontThreshold), Given.Axle(x.RearForce, x.RearThreshold), valves, x.RearShare);
        var pedal = PedalFigures.Line(x.CutIn, x.JumpIn, x.Knee, x.KneePressure, x.PlainPressure, x.DeadLoss)!.Value;
        var asked = StopAsked.Of(x.Rule, x.Braking.DecimalFractions);
        double z = asked.Deceleration / Loading.Gravity, mu = x.Grip.DecimalFractions;
        var first = LockUp.On(mu, rig, load);
        var reached = Reached.Of(rig.TotalAt(pedal.Pressure(asked.MostForce)) / load.Weight, first.Deceleration);
        var line = rig.Pressure(z * load.Weight);
        double? force = line is { } p ? pedal.Force(p) : null;
        double? way = reached.Z > 0 ? asked.Way(reached.Z * Loading.Gravity, x.BuildUp.Seconds) : null;
        double? bare = asked.Row?.Bare is { } least && rig.Pressure(least * x.Total.Kilograms) is { } atLeast ? pedal.Force(atLeast) : null;
        if (line is { } pressure && force is { } newtons)
        {
            w.Line("p", "F(p) = d m", $"{asked.Deceleration} x {x.Total.Kilograms}", pressure / 1e6, "MPa");
            w.Line("Fp", "pedal force for p", $"{pressure / 1e6} MPa", newtons, "N");
        }
        w.Line("z", "F(p) / W with all the leg, at most the first lock", $"{asked.MostForce} N, grip {mu}", reached.Z, "1");
        if (way is { } meters && asked.Row?.Linear is { } a) w.Line("s", "A v + v^2/(2 d), A v with v in km/h", $"{a} x {asked.Speed * 3.6} + {asked.Speed}^2 / (2 x {reached.Z * Loading.Gravity})", meters, "m");
        else if (way is { } told) w.Line("s", "v tb/2 + v^2/(2 d) - d tb^2/24", $"v {asked.Speed}, d {reached.Z * Loading.Gravity}, tb {x.BuildUp.Seconds}", told, "m");
        var good = reached.Capped && mu < StopAsked.TestRoad ? Reached.Of(reached.Brakes, LockUp.On(StopAsked.TestRoad, rig, load).Deceleration) : reached;
        asked.Answer(w, force, bare, way, good.Z > 0 ? asked.Way(good.Z * Loading.Gravity, x.BuildUp.Seconds) : null, reached, mu);
        if (w.Shown) StopCurves.Draw(w, rig, load, pedal, mu, x);
        return new(line is { } l ? UnitsNet.Pressure.FromPascals(l) : null, force is { } f ? Force.FromNewtons(f) : null, Ratio.FromDecimalFractions(reached.Z), way is { } s ? Length.FromMeters(s) : null);
    }
}
