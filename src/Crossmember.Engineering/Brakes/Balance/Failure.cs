using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Brakes.Limits;
using Crossmember.Engineering.Calculations;
using UnitsNet;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>What is left of the brakes with one thing lost.</summary>
/// <remarks>
/// Formula:  deceleration of what still gets pressure at the rule's pedal force, at most where its axle locks: front alone mu b / (L - mu h), rear alone mu a / (L + mu h)
/// Valid:    as far as pedal and master cylinder still have way for the other circuit, where the pressure at its end is known; a front-rear split loses one axle, a diagonal one half of both
/// Source:   statics; docs/derivations/brake-balance.md; what is asked in brake-rules.csv
/// Example:  2100 kg, 500 N, front circuit lost with the rear valve acting: 1.877 m/s2
/// </remarks>
public sealed class Failure() : Calculation<Failure.Inputs, Failure.Result>(new()
{
    Id = "brakes.failure",
    Version = 1,
    Title = "Brakes with something lost",
    Purpose = "What a leg can still do with the booster dead, with the front or the rear circuit lost, and with a burst hose: the reason for two circuits and for a by-pass in the rear valve.",
    Formula = "z = F(p) / W of what is left, at most mu b / (L - mu h) front alone, mu a / (L + mu h) rear alone",
    Validity = "A cylinder with stroke enough for the circuit that is left, or the pressure known at which the pedal or the stroke ends. A single cylinder is one circuit. The failed circuit makes no force. With a diagonal split half of each axle is left. Level road, cold brakes.",
    Sources = ["Statics, derived", "The rules' own figures, each with its source, in brake-rules.csv"],
    Checks =
    [
        new("booster-dead", Sense.AtLeast, "Does it stop with a dead booster?", "valveKnee", "valveSlope"),
        new("front-lost", Sense.AtLeast, "Does it stop with the front circuit lost?", "valveKnee", "valveSlope"),
        new("rear-lost", Sense.AtLeast, "Does it stop with the rear circuit lost?", "valveKnee", "valveSlope"),
        new("hose", null, "What is left when a hose bursts?", "valveKnee", "valveSlope"),
    ],
    Trends =
    [
        new("plainPressure", "boosterDead", '+', 1, 4), new("deadLoss", "boosterDead", '-', 0, 2), new("total", "rearLost", '-', 3300, 5000), new("rearForce", "frontLost", '+', 3000, 7000),
        new("valveKnee", "frontLost", '+', 1, 5), new("valveSlope", "frontLost", '+', 0.1, 0.8), new("rearThreshold", "frontLost", '-', 0.1, 1), new("frontForce", "rearLost", '+', 3000, 5000),
        new("frontLostPressure", "frontLost", '+', 0.5, 3), new("rearLostPressure", "rearLost", '+', 0.5, 3),
    ],
    NoTrends =
    [
        new("frontThreshold", "against the front's force small at a hard push"), new("metering", "holds the front off at the first touch only"), new("rearShare", "works as more force, an earlier knee and a lower threshold at the rear"), new("centerX", "only where it caps what the road takes"),
        new("height", "likewise"), new("wheelbase", "likewise"), new("grip", "caps what is reached; below the cap it changes nothing"), new("cutIn", "told of the pedal line"),
        new("jumpIn", "told of the pedal line"), new("knee", "told of the pedal line"), new("kneePressure", "told of the pedal line"),
    ],
    Examples =
    [
        new(With("no", "fixed"), new Dictionary<string, double> { ["boosterDead"] = 4.142, ["frontLost"] = 1.877 }, 0.001, "Dead booster, and a lost front circuit with the rear valve acting, by hand; docs/derivations/brake-balance.md", Provenance.Derived),
        new(With("yes", "fixed"), new Dictionary<string, double> { ["frontLost"] = 3.052 }, 0.001, "With a by-pass 3.199 m/s2 by the brakes, 3.052 by the rear axle's grip of 0.8", Provenance.Derived),
    ],
    Cautions = BrakeCautions.Stopping,
})
{
    private static Dictionary<string, string> With(string bypass, string valve) => new()
    {
        ["frontForce"] = "12642.9 N", ["frontThreshold"] = "0 MPa", ["rearForce"] = "5442.7 N", ["rearThreshold"] = "0.4 MPa", ["valve"] = valve, ["valveKnee"] = "3.5 MPa", ["valveSlope"] = "0.35",
        ["bypass"] = bypass, ["metering"] = "0 MPa", ["total"] = "2100 kg", ["centerX"] = "1.248 m", ["height"] = "0.76 m", ["wheelbase"] = "2.6 m", ["grip"] = "0.8", ["rule"] = "R13-H",
        ["circuits"] = "front-rear", ["cutIn"] = "22.556 N", ["jumpIn"] = "0.67 MPa", ["knee"] = "172.932 N", ["kneePressure"] = "6.4129 MPa", ["plainPressure"] = "3.3975 MPa", ["deadLoss"] = "0.38286 MPa",
    };

    public const string One = "one", FrontRear = "front-rear", Diagonal = "diagonal", SingleMaster = "single";

    public sealed record Inputs(
        [Input(How.FrontForce, "N", AtLeast = 0, High = 60000, Measure = How.Forces)] Force FrontForce,
        [Input(How.FrontThreshold, "MPa", AtLeast = 0, High = 2, Measure = How.Thresholds)] Pressure FrontThreshold,
        [Input(How.RearForce, "N", AtLeast = 0, High = 60000, Measure = How.Forces)] Force RearForce,
        [Input(How.RearThreshold, "MPa", AtLeast = 0, High = 2, Measure = How.Thresholds)] Pressure RearThreshold,
        [Input(How.Valve, OneOf = [How.NoValve, How.FixedValve, How.AdjustableValve, How.LoadValve], Measure = How.ValveKind)] string Valve,
        [Input(How.Knee, "MPa", AtLeast = 0, High = 20, Measure = How.HowKnee)] Pressure? ValveKnee,
        [Input(How.Slope, AtLeast = 0, High = 1, Measure = How.HowSlope)] Ratio? ValveSlope,
        [Input("whether the rear valve opens when the front circuit is lost; taken as no where nothing is said", OneOf = ["yes", "no"], Measure = "read the valve's papers")] string? Bypass,
        [Input(How.Metering, "MPa", AtLeast = 0, High = 2, Default = 0, Measure = How.HowMetering)] Pressure Metering,
        [Input(How.RearShare, MoreThan = 0, Low = 0.2, High = 3, Default = 1, Measure = How.HowRearShare)] Ratio RearShare,
        [Input(How.Total, "kg", MoreThan = 0, Measure = How.HowTotal)] UnitsNet.Mass Total,
        [Input(How.CenterX, "m", MoreThan = 0, Low = 0.3, High = 6, Measure = How.HowCenter)] Length CenterX,
        [Input(How.Height, "m", MoreThan = 0, Low = 0.3, High = 2, Measure = How.HowHeight)] Length Height,
        [Input(How.Wheelbase, "m", MoreThan = 0, Low = 1.2, High = 8, Measure = How.HowWheelbase)] Length Wheelbase,
        [Input(How.Rule, OneOf = [BrakeRule.Truck105, BrakeRule.Car135, BrakeRule.Car13H, BrakeRule.Car13, BrakeRule.Van13, BrakeRule.None], Measure = How.HowRule)] string Rule,
        [Input("how the circuits are split", OneOf = [One, FrontRear, Diagonal], Measure = "follow the lines from the master cylinder: which wheels hang on which outlet")] string Circuits,
        [Input("kind of master cylinder; taken as one that feeds the circuits as they are split where nothing is said", OneOf = [SingleMaster, "tandem", "stepped", "twin"], Measure = "count its outlets: one bore with one outlet is single")]
        string? MasterKind,
        [Input("line pressure in the rear circuit at which the pedal or the stroke ends with the front one lost; no end where nothing is said", "MPa", AtLeast = 0, Measure = How.HowLost)] Pressure? FrontLostPressure,
        [Input("line pressure in the front circuit at which the pedal or the stroke ends with the rear one lost; no end where nothing is said", "MPa", AtLeast = 0, Measure = How.HowLost)] Pressure? RearLostPressure,
        [Input(How.Grip, MoreThan = 0, Low = 0.1, High = 1.1, Default = 0.7, Measure = How.HowGrip)] Ratio Grip,
        [Input("pedal force at which the booster begins", "N", AtLeast = 0, Measure = How.HowPedal)] Force CutIn,
        [Input("line pressure just above it", "MPa", AtLeast = 0, Measure = How.HowPedal)] Pressure JumpIn,
        [Input("pedal force at which the booster runs out", "N", AtLeast = 0, Measure = How.HowPedal)] Force Knee,
        [Input("line pressure there", "MPa", AtLeast = 0, Measure = How.HowPedal)] Pressure KneePressure,
        [Input("line pressure at 100 lbf of pedal by leg alone", "MPa", MoreThan = 0, Measure = How.HowPedal)] Pressure PlainPressure,
        [Input("line pressure that the spring of a dead booster takes", "MPa", AtLeast = 0, Measure = How.HowPedal)] Pressure DeadLoss);

    public sealed record Result(
        [Output("deceleration with a dead booster; all of it where there is none", "m/s2")] Acceleration? BoosterDead,
        [Output("deceleration with the front circuit lost, or one half of a diagonal split", "m/s2")] Acceleration? FrontLost,
        [Output("deceleration with the rear circuit lost, or the other half", "m/s2")] Acceleration? RearLost);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (Given.Loading(x.Total, x.CenterX, x.Height, x.Wheelbase) is not { } load) return null;
        if (Given.Valves(x.Valve, x.ValveKnee, x.ValveSlope, x.Metering) is not { } valves) return new(null, null, null);
        var rig = Given.Rig(Given.Axle(x.FrontForce, x.FrontThreshold), Given.Axle(x.RearForce, x.RearThreshold), valves, x.RearShare);
        var pedal = PedalFigures.Line(x.CutIn, x.JumpIn, x.Knee, x.KneePressure, x.PlainPressure, x.DeadLoss)!.Value;
        var asked = new FailureAsked(x.Rule);
        var single = x.MasterKind == SingleMaster;
        var circuits = single ? One : x.Circuits;
        var share = x.RearShare.DecimalFractions; // the rear circuit's own pressure is told; forces go by the front's
        var left = Left.Of(rig, load, pedal, asked.Force("assist-failed"), asked.Force("circuit-failed"), x.Grip.DecimalFractions, circuits, x.Bypass == "yes",
            x.FrontLostPressure?.Pascals / share ?? double.PositiveInfinity, x.RearLostPressure?.Pascals ?? double.PositiveInfinity);
        left = left with { FrontFloor = left.FrontFloor * share };
        w.Line("z booster dead", "F(p) / W, at most the first lock", $"{pedal.DeadPressure(asked.Force("assist-failed")) / 1e6} MPa", left.BoosterDead.Z, "1");
        if (circuits == Diagonal) w.Line("z half lost", "F(p) / (2 W), at most the first lock of half the wheels", $"{left.FrontLost.Brakes}", left.FrontLost.Z, "1");
        else if (circuits == FrontRear)
        {
            w.Line("z front lost", "Fr(p) / W, at most mu a / (L + mu h)", $"{left.FrontLost.Brakes}, {load.RearOnly(x.Grip.DecimalFractions)}", left.FrontLost.Z, "1");
            w.Line("z rear lost", "Ff(p) / W, at most mu b / (L - mu h)", $"{left.RearLost.Brakes}, {load.FrontOnly(x.Grip.DecimalFractions)}", left.RearLost.Z, "1");
        }
        FailureFindings.Answer(w, asked, left, circuits, single && x.Circuits != One, pedal.Boosted, x.Valve != How.NoValve && x.Bypass != "yes");
        return new(Of(left.BoosterDead), Of(left.FrontLost), Of(left.RearLost));
    }

    private static Acceleration? Of(in Reached reached) => double.IsFinite(reached.Z) ? Acceleration.FromMetersPerSecondSquared(reached.Z * Loading.Gravity) : null;
}
