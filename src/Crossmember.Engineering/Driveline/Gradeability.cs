using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>The steepest grade climbed slowly in the lowest gear and range: what torque allows, what grip allows, and which governs.</summary>
/// <remarks>
/// Formula:  torque: sin th + f cos th = F / (m g), F = T G eta / re; grip, all wheels driven: tan th = mu - f; grade = tan th
/// Valid:    slow steady climb, air left out, all wheels driven and pulling alike, clutch fast, firm even ground
/// Source:   docs/derivations/road-load.md; US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-15
/// Example:  330 N m, 48.26, 0.85, 406.88 mm, 2150 kg -> no limit by torque; mu 0.7, f 0.02 -> 68 % = 34.2 deg
/// </remarks>
public sealed class Gradeability() : Calculation<Gradeability.Inputs, Gradeability.Result>(new()
{
    Id = "driveline.gradeability",
    Version = 1,
    Title = "Steepest climb",
    Purpose = "How steep a grade the vehicle climbs in its lowest gear and range, and whether the engine or the grip of the tires ends it: gears beyond "
        + "what the tires hold only load the shafts.",
    Formula = "torque: sin th + f cos th = T G eta / (re m g); grip with all wheels driven: tan th = mu - f; grade = 100 tan th %, the lower of both",
    Validity = "Slow steady climb straight up firm even ground, all wheels driven and pulling alike, clutch fast, air resistance left out. Stalling, "
        + "starting on the grade, "
        + "a slipping clutch or converter, wheelspin on ruts and rocks and tipping over are not in it. The usual shortcut F / (m g) - f understates a "
        + "steep grade and is not used.",
    Sources =
    [
        "Statics on a slope, derived", "US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-15 (tractive factor, drawbar pull; efficiency 0.85)",
        "Grip of tires on the ground: common practice, no source",
    ],
    Checks = [new("grade", Sense.AtLeast, "Does it climb the grade the customer wants?", "grade")],
    Trends =
    [
        new("peakTorque", "tractiveFactor", '+', 50, 1000), new("efficiency", "tractiveFactor", '+', 0.7, 1), new("gearRatios", "tractiveFactor", '+', 0.6, 7),
        new("transferRatios", "tractiveFactor", '+', 1, 5), new("axleRatio", "tractiveFactor", '+', 2.5, 6), new("rollingRadius", "tractiveFactor", '-', 11, 24),
        new("mass", "tractiveFactor", '-', 500, 6000), new("rollingResistance", "gripGrade", '-', 0.008, 0.2), new("grip", "gripGrade", '+', 0.1, 1),
    ],
    NoTrends =
    [
        new("torqueCurve", "has many points"), new("idleSpeed", "cuts the curve only where it lies above its first point"),
        new("redline", "cuts the curve only where it lies below its last point"), new("grade", "only compared with the result"),
    ],
    Examples =
    [
        new(Case("330 N m", "5.15", "2.28", "4.11", "406.88 mm", "2150 kg", "0.02"),
            new Dictionary<string, double> { ["tractiveFactor"] = 1.578, ["gripGrade"] = 68, ["climbableGrade"] = 68, ["climbAngle"] = 34.2, ["highRangeGrade"] = 68 }, 0.001,
            "330 x 48.26 x 0.85 / 0.40688 = 33.27 kN on 21.08 kN of weight; 0.7 - 0.02 by hand", Provenance.Derived),
        new(Case("330 N m", "1", "1", "4.11", "406.88 mm", "2150 kg", "0.02"),
            new Dictionary<string, double> { ["torqueGrade"] = 11.53, ["climbableGrade"] = 11.53 }, 0.001,
            "2833 N on 21.08 kN: sin th + 0.02 cos th = 0.13438 by hand; the shortcut gives 11.44 %", Provenance.Derived),
        new(Case("79 lbf ft", "2.798", "2.43", "5.38", "15 in", "2625 lb", "0.015", "0.8"),
            new Dictionary<string, double> { ["tractiveFactor"] = 0.75, ["drawbarPull"] = 1970 }, 0.0067,
            "US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-15, 1/4-ton 4x4 truck: 0.75 and 1970 lb as printed; "
            + "it rounds the ratio to 36.7 and lets no wheel slip", Provenance.Published),
    ],
    Cautions =
    [
        "A grade the vehicle can climb may still tip it over backward or sideways, and it must be held and backed down again by its brakes: this number is "
            + "no permission to try it.",
        "Never turn on a steep grade. Trials belong to trained drivers with a spotter, on ground that has been walked first.",
        "In the lowest gear the wheels or the shafts end the climb before the engine does: have joints and shafts checked against it.",
    ],
})
{
    public sealed record Inputs(
        [Input(HowToMeasurePull.TheTorqueCurve, "rpm", CurveUnit = "N m", Measure = HowToMeasurePull.TorqueCurve)] Curve? TorqueCurve,
        [Input("largest torque of the engine, used where no curve is known", "N m", MoreThan = 0, Low = 20, High = 3000, Measure = HowToMeasurePull.PeakTorque)]
        Torque? PeakTorque,
        [Input("share of the engine's torque that reaches the wheels", MoreThan = 0, Low = 0.6, High = 1, Default = 0.85, Measure = HowToMeasurePull.Efficiency)]
        Ratio Efficiency,
        [Input("gearbox ratios", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatios)] Members<Ratio> GearRatios,
        [Input("transfer case ratios", MoreThan = 0, Low = 0.7, High = 6, Measure = HowToMeasure.TransferRatios)] Members<Ratio> TransferRatios,
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio,
        [Input("rolling radius of the driven tires", "in", MoreThan = 0, Low = 9, High = 30, Measure = HowToMeasurePull.RollingRadius)] Length RollingRadius,
        [Input("idle speed of the engine", "rpm", MoreThan = 0, High = 2000, Measure = HowToMeasurePull.IdleSpeed)] RotationalSpeed? IdleSpeed,
        [Input("redline of the engine", "rpm", MoreThan = 0, Measure = HowToMeasure.Redline)] RotationalSpeed? Redline,
        [Input("mass of the vehicle", "kg", MoreThan = 0, Low = 300, High = 20000, Measure = HowToMeasurePull.Mass)] UnitsNet.Mass Mass,
        [Input("rolling resistance as a share of weight", MoreThan = 0, Low = 0.005, High = 0.5, Default = 0.015, Measure = HowToMeasurePull.RollingResistance)]
        Ratio RollingResistance,
        [Input("grip of the tires, as a share of the load on them", MoreThan = 0, Low = 0.1, High = 1.1, Default = 0.7, Measure = HowToMeasurePull.Grip)]
        Ratio Grip,
        [Input("grade the customer wants to climb", MoreThan = 0, High = 1.2, Measure = HowToMeasurePull.Grade)] Ratio? Grade);

    public sealed record Result(
        [Output("tractive factor: pull at the wheels for each unit of weight")] Ratio? TractiveFactor,
        [Output("drawbar pull: tractive factor times weight, no more than the tires hold, nothing taken off for rolling", "lbf")] Force? DrawbarPull,
        [Output("grade that torque allows; unknown where torque sets no limit", "%")] Ratio? TorqueGrade,
        [Output("grade that grip allows, all wheels driven", "%")] Ratio GripGrade,
        [Output("steepest grade climbed", "%")] Ratio? ClimbableGrade,
        [Output("the same as an angle", "deg")] Angle? ClimbAngle,
        [Output("what governs: torque or grip")] string? Governs,
        [Output("steepest grade climbed in the lowest gear of the longest range", "%")] Ratio? HighRangeGrade);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double m = x.Mass.Kilograms, f = x.RollingResistance.DecimalFractions, mu = x.Grip.DecimalFractions; // kg
        double grip = mu - f, weight = m * Resistance.Gravity; // rise over run, N
        w.Line("grip", "mu - f", $"{mu} - {f}", 100 * grip, "%");
        var full = x.TorqueCurve is { } curve ? new FullLoad(curve, x.IdleSpeed, x.Redline) : null;
        if (PeakTorque.Of(full, x.PeakTorque, w, "grade") is not { } T) return new(null, null, null, Ratio.FromDecimalFractions(grip), null, null, null, null);
        var low = GearSet.Of(x.GearRatios.Lowest(), x.TransferRatios.Lowest(), x.AxleRatio, x.RollingRadius, x.Efficiency);
        var high = GearSet.Of(x.GearRatios.Lowest(), x.TransferRatios.Longest(), x.AxleRatio, x.RollingRadius, x.Efficiency);
        double F = low.Force(T), q = F / weight; // N
        w.Line("F", "T G eta / re", $"{T} x {low.Ratio} x {low.Efficiency} / {low.Radius}", F, "N");
        w.Line("q", "F / (m g)", $"{F} / ({m} x {Resistance.Gravity})", q, "1");
        w.Line("D", "smaller of F and mu m g", $"smaller of {F} and {mu} x {weight}", Math.Min(F, mu * weight), "N");
        var torque = Climbed(q, f);
        if (torque is { } t) w.Line("torque", "tan(asin(q / sqrt(1 + f^2)) - atan f)", $"tan(asin({q} / sqrt(1 + {f}^2)) - atan {f})", 100 * t, "%");
        var climb = Math.Min(torque ?? grip, grip);
        var governs = torque < grip ? "torque" : "grip";
        if (x.Grade is { } wanted) Judge(w, climb, wanted, governs);
        var inHigh = Math.Min(Climbed(high.Force(T) / weight, f) ?? grip, grip);
        return new(Ratio.FromDecimalFractions(q), Force.FromNewtons(Math.Min(F, mu * weight)), torque is { } g ? Ratio.FromDecimalFractions(g) : null,
            Ratio.FromDecimalFractions(grip), Ratio.FromDecimalFractions(climb), Angle.FromRadians(Math.Atan(climb)), governs, Ratio.FromDecimalFractions(inHigh));
    }

    /// <summary>Rise over run; null where torque sets no limit.</summary>
    private static double? Climbed(double q, double f) => Resistance.Slope(q, f) is { } th ? Math.Tan(th) : null;

    private static void Judge(Worksheet w, double climb, Ratio wanted, string governs)
    {
        var end = governs == "grip" ? "the grip of the tires" : "the torque of the engine";
        w.AtLeast("grade", 100 * climb, wanted.Percent, "%", climb <= 0
            ? $"It does not even move off on the level: {end} is less than rolling takes; {wanted.Percent:0.#} % was asked for."
            : $"Climbs {100 * climb:0.#} % ({Math.Atan(climb) * 180 / Math.PI:0.#} deg) in the lowest gear and range, and {end} ends it; {wanted.Percent:0.#} % was asked for.");
    }

    private static Dictionary<string, string> Case(string torque, string gear, string transfer, string axle, string radius, string mass, string rolling,
        string grip = "0.7") => new()
        {
            ["peakTorque"] = torque, ["gearRatios"] = $$"""{"1":"{{gear}}"}""", ["transferRatios"] = $$"""{"high":"1","low":"{{transfer}}"}""", ["axleRatio"] = axle,
            ["rollingRadius"] = radius, ["mass"] = mass, ["rollingResistance"] = rolling, ["grip"] = grip,
        };
}
