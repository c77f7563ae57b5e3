using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>Whether the longest gear holds the cruise speed on the level, and the grade it still climbs at that speed without shifting down.</summary>
/// <remarks>
/// Formula:  surplus = T(n) G eta / re - (m g f + rho CdA v^2 / 2), n = 30 v G / (pi re); sin th + f cos th = (F - rho CdA v^2 / 2) / (m g)
/// Valid:    steady speed in still air, engine at full load, clutch or converter fast; torque straight between the points of its curve
/// Source:   docs/derivations/road-load.md
/// Example:  200 N m, 4.0 direct, 0.85, 400 mm, 2000 kg, CdA 1.5 m2, 25 m/s -> 1700 - 856.7 = 843.3 N left, 4.305 % grade
/// </remarks>
public sealed class CruisePull() : Calculation<CruisePull.Inputs, CruisePull.Result>(new()
{
    Id = "driveline.cruise-pull",
    Version = 1,
    Title = "Pull left at cruise",
    Purpose = "Whether the longest gear holds the cruise speed on the level, and how steep a hill it still takes there without shifting down: the first "
        + "thing that larger tires use up.",
    Formula = "surplus = T(n) G eta / re - (m g f + rho CdA v^2 / 2) at n = 30 v G / (pi re); grade from sin th + f cos th = (F - rho CdA v^2 / 2) / (m g)",
    Validity = "Steady speed in still air, longest gear and range, engine warm and at full load, clutch fast or converter locked up. Torque runs straight "
        + "between the points of its curve "
        + "and is not known beyond them. An engine kept at full load for hours may overheat: that is another question.",
    Sources = ["Balance of pull and road load, derived", "US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-15 (efficiency 0.85)"],
    Checks = [new("top-gear", Sense.AtLeast, "Does the longest gear hold the cruise speed on the level?")],
    Trends =
    [
        new("efficiency", "surplus", '+', 0.7, 1), new("mass", "grade", '-', 500, 6000), new("rollingResistance", "surplus", '-', 0.008, 0.05),
        new("dragArea", "surplus", '-', 0.4, 4), new("airDensity", "surplus", '-', 0.7, 1.4), new("cruiseSpeed", "surplus", '-', 45, 70),
        new("gearRatios", "pull", '+', 0.9, 1.6), new("transferRatios", "pull", '+', 1, 1.6), new("axleRatio", "pull", '+', 3, 6), new("rollingRadius", "pull", '-', 11, 20),
    ],
    NoTrends = [new("torqueCurve", "has many points")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["cruiseSpeed"] = "25 m/s", ["torqueCurve"] = """[["600 rpm","200 N m"],["6000 rpm","200 N m"]]""", ["gearRatios"] = """{"3":"1.5","4":"1"}""",
                ["transferRatios"] = """{"high":"1","low":"2"}""", ["axleRatio"] = "4", ["rollingRadius"] = "400 mm", ["mass"] = "2000 kg", ["dragArea"] = "1.5 m2",
            },
            new Dictionary<string, double> { ["engineSpeed"] = 2387.3, ["pull"] = 382.2, ["roadLoad"] = 192.6, ["surplus"] = 189.6, ["grade"] = 4.305 }, 0.001,
            "200 x 4 x 0.85 / 0.4 = 1700 N against 294.2 + 562.5 = 856.7 N; sin th + 0.015 cos th = 1137.5 / 19613 by hand", Provenance.Derived),
    ],
})
{
    public sealed record Inputs(
        [Input("cruise speed", "mph", MoreThan = 0, High = 150, Measure = HowToMeasure.CruiseSpeed)] Speed CruiseSpeed,
        [Input(HowToMeasurePull.TheTorqueCurve, "rpm", CurveUnit = "N m", Measure = HowToMeasurePull.TorqueCurve)] Curve TorqueCurve,
        [Input("share of the engine's torque that reaches the wheels", MoreThan = 0, Low = 0.6, High = 1, Default = 0.85, Measure = HowToMeasurePull.Efficiency)]
        Ratio Efficiency,
        [Input("gearbox ratios", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatios)] Members<Ratio> GearRatios,
        [Input("transfer case ratios", MoreThan = 0, Low = 0.7, High = 6, Measure = HowToMeasure.TransferRatios)] Members<Ratio> TransferRatios,
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio,
        [Input("rolling radius of the driven tires", "in", MoreThan = 0, Low = 9, High = 30, Measure = HowToMeasurePull.RollingRadius)] Length RollingRadius,
        [Input("mass of the vehicle", "kg", MoreThan = 0, Low = 300, High = 20000, Measure = HowToMeasurePull.Mass)] UnitsNet.Mass Mass,
        [Input("rolling resistance as a share of weight", MoreThan = 0, Low = 0.005, High = 0.5, Default = 0.015, Measure = HowToMeasurePull.RollingResistance)]
        Ratio RollingResistance,
        [Input("drag coefficient times frontal area", "m2", MoreThan = 0, Low = 0.3, High = 8, Measure = HowToMeasurePull.DragArea)] Area DragArea,
        [Input("density of the air", "kg/m3", MoreThan = 0, Low = 0.6, High = 1.5, Default = 1.2, Measure = HowToMeasurePull.AirDensity)] Density AirDensity);

    public sealed record Result(
        [Output("engine speed at cruise on the loaded tire", "rpm")] RotationalSpeed EngineSpeed,
        [Output("force at the wheels at full load", "lbf")] Force? Pull,
        [Output("road load on the level", "lbf")] Force RoadLoad,
        [Output("pull left over; negative: the gear does not hold the speed", "lbf")] Force? Surplus,
        [Output("grade still climbed at cruise in this gear; negative: the downgrade it needs; unknown where torque sets no limit", "%")] Ratio? Grade);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var top = GearSet.Of(x.GearRatios.Longest(), x.TransferRatios.Longest(), x.AxleRatio, x.RollingRadius, x.Efficiency);
        var road = new Resistance(x.Mass.Kilograms, x.RollingResistance.DecimalFractions, x.DragArea.SquareMeters, x.AirDensity.KilogramsPerCubicMeter);
        double v = x.CruiseSpeed.MetersPerSecond, speed = top.EngineSpeed(v), R = road.Total(v); // m/s, rad/s, N
        var n = RotationalSpeed.FromRadiansPerSecond(speed);
        w.Line("n", "30 v G / (pi re)", $"30 x {v} x {top.Ratio} / (pi x {top.Radius})", n.RevolutionsPerMinute, "rpm");
        w.Line("R", "m g f + rho CdA v^2 / 2", $"{road.Weight} x {road.Rolling} + {road.AirDensity} x {road.DragArea} x {v}^2 / 2", R, "N");
        var full = new FullLoad(x.TorqueCurve, null, null);
        if (full.At(speed) is not { } T)
        {
            w.Answer("top-gear", Verdict.Unknown,
                $"Not known: cruising turns the engine {n.RevolutionsPerMinute:0} rpm, and its torque is known from {full.Range}. Measure it there.");
            return new(n, null, Force.FromNewtons(R), null, null);
        }
        double F = top.Force(T), q = (F - road.OfAir(v)) / road.Weight; // N
        w.Line("F", "T G eta / re", $"{T} x {top.Ratio} x {top.Efficiency} / {top.Radius}", F, "N");
        w.Line("surplus", "F - R", $"{F} - {R}", F - R, "N");
        double? grade = Resistance.Slope(q, road.Rolling) is { } th ? Math.Tan(th) : null;
        if (grade is { } g) w.Line("grade", "sin th + f cos th = (F - Ra) / (m g)", $"sin th + {road.Rolling} cos th = {q}", 100 * g, "%");
        Judge(w, Force.FromNewtons(F), Force.FromNewtons(R), x.CruiseSpeed, grade);
        return new(n, Force.FromNewtons(F), Force.FromNewtons(R), Force.FromNewtons(F - R), grade is { } told ? Ratio.FromDecimalFractions(told) : null);
    }

    /// <summary>At most a caution: a lower gear may hold the speed, and whether any does is asked of the top speed.</summary>
    private static void Judge(Worksheet w, Force pull, Force road, Speed cruise, double? grade)
    {
        var says = $"{pull.PoundsForce:0} lbf in the longest gear at {cruise.MilesPerHour:0.#} mph, where the level road takes {road.PoundsForce:0} lbf";
        var climbs = grade is { } g ? $"; it still climbs {100 * g:0.#} % there" : "";
        w.AtLeast("top-gear", pull.PoundsForce, road.PoundsForce, "lbf",
            pull < road ? $"{says}: it must shift down to hold the speed." : $"{says}{climbs}.", beyond: Verdict.Caution);
    }
}
