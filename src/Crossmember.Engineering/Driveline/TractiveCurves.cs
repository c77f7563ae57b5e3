using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>Force at the wheels drawn over road speed for every gear of a range, with road load and the limit of grip.</summary>
/// <remarks>
/// Formula:  F = T(n) G eta / re over v = pi n re / (30 G); road load m g (f cos th + sin th) + rho CdA v^2 / 2; grip mu m g
/// Valid:    full load, clutch fast; drawn from idle to redline and over the known torque curve only
/// Source:   docs/derivations/road-load.md
/// Example:  330 N m at 2000 rpm, 4.11 direct, 0.85, 406.88 mm -> 2833 N at 20.7 m/s
/// </remarks>
public sealed class TractiveCurves() : Calculation<TractiveCurves.Inputs, TractiveCurves.Result>(new()
{
    Id = "driveline.tractive-curves",
    Version = 1,
    Title = "Pull over road speed",
    Purpose = "Pull of every gear against what the road asks, in one picture: where a gear runs out of breath, which hill needs a lower one, and where "
        + "grip ends before the engine does.",
    Formula = "F = T(n) G eta / re over v = pi n re / (30 G) for every gear; road load m g (f cos th + sin th) + rho CdA v^2 / 2 on the level and on the "
        + "grade; grip mu m g",
    Validity = "Engine warm and at full load, clutch fast or converter locked up, still air. Nothing is drawn below idle, over the redline or beyond the "
        + "measured torque. "
        + "The grip line is that of all wheels driven on the level; on a grade the ground takes less.",
    Sources =
    [
        "Balance of pull and road load, derived", "US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-15 (efficiency 0.85)",
        "Grip of tires on the ground: common practice, no source",
    ],
    Trends =
    [
        new("efficiency", "largestPull", '+', 0.7, 1), new("gearRatios", "largestPull", '+', 0.6, 7), new("transferRatio", "largestPull", '+', 1, 5),
        new("axleRatio", "largestPull", '+', 2.5, 6), new("rollingRadius", "largestPull", '-', 11, 24), new("mass", "gripLimit", '+', 500, 6000), new("grip", "gripLimit", '+', 0.1, 1),
    ],
    NoTrends =
    [
        new("torqueCurve", "has many points"), new("idleSpeed", "cuts the curve only where it lies above its first point"),
        new("redline", "cuts the curve only where it lies below its last point"), new("rollingResistance", "only drawn"), new("dragArea", "only drawn"),
        new("airDensity", "only drawn"), new("grade", "only drawn"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["torqueCurve"] = """[["1000 rpm","250 N m"],["2000 rpm","330 N m"],["4000 rpm","260 N m"]]""", ["gearRatios"] = """{"1":"5.15","4":"1"}""", ["axleRatio"] = "4.11",
                ["rollingRadius"] = "406.88 mm", ["mass"] = "2150 kg", ["dragArea"] = "1.45 m2", ["grade"] = "0.4",
            },
            new Dictionary<string, double> { ["largestPull"] = 3280.4, ["fastest"] = 92.76, ["gripLimit"] = 3318.0 }, 0.0002,
            "14592 N in first, 41.47 m/s at 4000 rpm in direct, 0.7 x 2150 x 9.80665 = 14759 N; by hand", Provenance.Derived),
    ],
})
{
    public sealed record Inputs(
        [Input(HowToMeasurePull.TheTorqueCurve, "rpm", CurveUnit = "N m", Measure = HowToMeasurePull.TorqueCurve)] Curve TorqueCurve,
        [Input("share of the engine's torque that reaches the wheels", MoreThan = 0, Low = 0.6, High = 1, Default = 0.85, Measure = HowToMeasurePull.Efficiency)]
        Ratio Efficiency,
        [Input("gearbox ratios", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatios)] Members<Ratio> GearRatios,
        [Input("transfer case ratio in this range", MoreThan = 0, Low = 0.7, High = 6, Default = 1, Measure = HowToMeasure.TransferRatio)] Ratio TransferRatio,
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio,
        [Input("rolling radius of the driven tires", "in", MoreThan = 0, Low = 9, High = 30, Measure = HowToMeasurePull.RollingRadius)] Length RollingRadius,
        [Input("idle speed of the engine", "rpm", MoreThan = 0, High = 2000, Measure = HowToMeasurePull.IdleSpeed)] RotationalSpeed? IdleSpeed,
        [Input("redline of the engine", "rpm", MoreThan = 0, Measure = HowToMeasure.Redline)] RotationalSpeed? Redline,
        [Input("mass of the vehicle", "kg", MoreThan = 0, Low = 300, High = 20000, Measure = HowToMeasurePull.Mass)] UnitsNet.Mass Mass,
        [Input("rolling resistance as a share of weight", MoreThan = 0, Low = 0.005, High = 0.5, Default = 0.015, Measure = HowToMeasurePull.RollingResistance)]
        Ratio RollingResistance,
        [Input("drag coefficient times frontal area; without it no road load is drawn", "m2", MoreThan = 0, Low = 0.3, High = 8, Measure = HowToMeasurePull.DragArea)] Area? DragArea,
        [Input("density of the air", "kg/m3", MoreThan = 0, Low = 0.6, High = 1.5, Default = 1.2, Measure = HowToMeasurePull.AirDensity)] Density AirDensity,
        [Input("grip of the tires, as a share of the load on them", MoreThan = 0, Low = 0.1, High = 1.1, Default = 0.7, Measure = HowToMeasurePull.Grip)]
        Ratio Grip,
        [Input("grade to draw the road load for", MoreThan = 0, High = 1.2, Measure = HowToMeasurePull.Grade)] Ratio? Grade);

    public sealed record Result(
        [Output("largest force at the wheels in the lowest gear", "lbf")] Force? LargestPull,
        [Output("road speed where the longest gear ends", "mph")] Speed? Fastest,
        [Output("force all tires hold on the level", "lbf")] Force GripLimit);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double weight = x.Mass.Kilograms * Resistance.Gravity, mu = x.Grip.DecimalFractions, hold = mu * weight; // N
        w.Line("grip", "mu m g", $"{mu} x {x.Mass.Kilograms} x {Resistance.Gravity}", hold, "N");
        var full = new FullLoad(x.TorqueCurve, x.IdleSpeed, x.Redline);
        if (!full.Pulls)
        {
            w.Caution(PeakTorque.Nothing(full));
            return new(null, null, Force.FromNewtons(hold));
        }
        Gearing lowest = Geared(x, x.GearRatios.Lowest()), longest = Geared(x, x.GearRatios.Longest());
        double T = full.Peak.Torque, F = lowest.Force(T), n = full.Points[^1].Speed, v = longest.RoadSpeed(n); // N m, N, rad/s, m/s
        w.Line("F", "T G eta / re", $"{T} x {lowest.Ratio} x {lowest.Efficiency} / {lowest.Radius}", F, "N");
        w.Line("v", "pi n re / (30 G)", $"pi x {n * 30 / Math.PI} x {longest.Radius} / (30 x {longest.Ratio})", v, "m/s");
        if (w.Shown) Draw(x, w, full, Speed.FromMetersPerSecond(v), Force.FromNewtons(hold));
        return new(Force.FromNewtons(F), Speed.FromMetersPerSecond(v), Force.FromNewtons(hold));
    }

    private static void Draw(Inputs x, Worksheet w, FullLoad full, Speed fastest, Force hold)
    {
        var end = fastest.MetersPerSecond;
        foreach (var (name, gear) in x.GearRatios.Items) w.Curve(PullCurves.Of($"gear {name}", Geared(x, gear), full));
        if (x.DragArea is { } drag)
        {
            var road = new Resistance(x.Mass.Kilograms, x.RollingResistance.DecimalFractions, drag.SquareMeters, x.AirDensity.KilogramsPerCubicMeter);
            w.Curve(PullCurves.RoadLoad("road load, level", road, 0, end));
            if (x.Grade is { } grade) w.Curve(PullCurves.RoadLoad($"road load, {grade.Percent:0.#} % grade", road, Math.Atan(grade.DecimalFractions), end));
        }
        w.Curve(PullCurves.Level("grip limit", hold.Newtons, end));
    }

    private static Gearing Geared(Inputs x, Ratio gear) => GearSet.Of(gear, x.TransferRatio, x.AxleRatio, x.RollingRadius, x.Efficiency);
}
