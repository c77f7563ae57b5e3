using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>The highest speed the vehicle holds on the level, in the gear that holds it, and what stops it there.</summary>
/// <remarks>
/// Formula:  largest v in any gear with F(v) >= m g f + rho CdA v^2 / 2 and engine speed within curve and redline; without a curve the lower of
///           eta P = v (m g f + rho CdA v^2 / 2) and the redline in the longest gear, which is an upper bound
/// Valid:    level road, still air, warm engine at full load, clutch fast
/// Source:   docs/derivations/road-load.md
/// Example:  110 kW, 0.85, 2150 kg, f 0.015, CdA 1.45 m2 -> 45.0 m/s = 162.0 km/h
/// </remarks>
public sealed class TopSpeed() : Calculation<TopSpeed.Inputs, TopSpeed.Result>(new()
{
    Id = "driveline.top-speed",
    Version = 1,
    Title = "Top speed",
    Purpose = "How fast the vehicle can be held on the level, in which gear, and whether power or the redline stops it: whether it reaches the cruise the "
        + "customer asked for at all.",
    Formula = "largest v with T G eta / re >= m g f + rho CdA v^2 / 2, engine within torque curve and redline, best gear; by power alone eta P = v (m g f "
        + "+ rho CdA v^2 / 2)",
    Validity = "Level road, still air, engine warm and at full load, clutch or converter not slipping. Torque runs straight between the points of its "
        + "curve and is not known beyond them. "
        + "Where only the power is known, the result is an upper bound: the gears may not let the engine make its power at that speed. Tires, brakes and "
        + "steering may allow far less.",
    Sources = ["Balance of pull and road load, derived", "US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-15 (efficiency 0.85)"],
    Checks = [new("reaches-cruise", Sense.AtLeast, "Does the vehicle reach the cruise speed asked for?", "cruiseSpeed")],
    Trends =
    [
        new("peakPower", "powerSpeed", '+', 20, 400), new("efficiency", "powerSpeed", '+', 0.7, 1), new("mass", "powerSpeed", '-', 500, 6000),
        new("rollingResistance", "powerSpeed", '-', 0.008, 0.1), new("dragArea", "powerSpeed", '-', 0.4, 4), new("airDensity", "powerSpeed", '-', 0.7, 1.4),
        new("redline", "redlineSpeed", '+', 2000, 8000), new("axleRatio", "redlineSpeed", '-', 2.5, 6), new("rollingRadius", "redlineSpeed", '+', 11, 24),
        new("gearRatios", "redlineSpeed", '-', 0.6, 7), new("transferRatios", "redlineSpeed", '-', 1, 5),
    ],
    NoTrends = [new("torqueCurve", "has many points"), new("idleSpeed", "cuts the curve only where it lies above its first point"), new("cruiseSpeed", "only compared with the result")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["peakPower"] = "110 kW", ["gearRatios"] = """{"1":"4","2":"1"}""", ["transferRatios"] = """{"high":"1"}""", ["axleRatio"] = "3.5", ["rollingRadius"] = "406.88 mm",
                ["redline"] = "6000 rpm", ["mass"] = "2150 kg", ["dragArea"] = "1.45 m2",
            },
            new Dictionary<string, double> { ["topSpeed"] = 100.66, ["powerSpeed"] = 100.66, ["redlineSpeed"] = 163.4 }, 0.001,
            "0.85 x 110 kW = 45.0 x (316.3 + 0.87 x 45.0^2), 162.0 km/h; 2 pi x 0.40688 x 100 / 3.5 = 73.04 m/s at the redline; by hand", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["torqueCurve"] = """[["1000 rpm","200 N m"],["4000 rpm","200 N m"]]""", ["gearRatios"] = """{"3":"1.5","4":"1"}""", ["transferRatios"] = """{"high":"1","low":"2"}""",
                ["axleRatio"] = "4", ["rollingRadius"] = "400 mm", ["redline"] = "3600 rpm", ["mass"] = "2000 kg", ["dragArea"] = "1.5 m2", ["cruiseSpeed"] = "70 mph",
            },
            new Dictionary<string, double> { ["topSpeed"] = 84.33, ["engineSpeed"] = 3600 }, 0.0002,
            "Pull 200 x 4 x 0.85 / 0.4 = 1700 N outlasts 294.2 + 0.9 x 37.70^2 = 1573 N at the redline, 37.70 m/s; by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "What the engine can reach is no speed to drive: speed symbol of the tires, brakes, steering and propeller shafts set lower limits, and local law "
            + "another.",
        "Speed trials belong on a closed course.",
    ],
})
{
    public sealed record Inputs(
        [Input("cruise speed asked for", "mph", MoreThan = 0, High = 150, Measure = HowToMeasure.CruiseSpeed)] Speed? CruiseSpeed,
        [Input(HowToMeasurePull.TheTorqueCurve, "rpm", CurveUnit = "N m", Measure = HowToMeasurePull.TorqueCurve)] Curve? TorqueCurve,
        [Input("largest power of the engine, used where no curve is known", "hp", MoreThan = 0, Low = 5, High = 2000, Measure = HowToMeasurePull.PeakPower)]
        Power? PeakPower,
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
        [Input("drag coefficient times frontal area", "m2", MoreThan = 0, Low = 0.3, High = 8, Measure = HowToMeasurePull.DragArea)] Area DragArea,
        [Input("density of the air", "kg/m3", MoreThan = 0, Low = 0.6, High = 1.5, Default = 1.2, Measure = HowToMeasurePull.AirDensity)] Density AirDensity);

    public sealed record Result(
        [Output("highest speed held on the level", "mph")] Speed? TopSpeed,
        [Output("engine speed there", "rpm")] RotationalSpeed? EngineSpeed,
        [Output("gear that holds it")] string? Gear,
        [Output("range that holds it")] string? Range,
        [Output("what stops it: power, redline, or the end of the torque curve")] string? LimitedBy,
        [Output("speed at which the largest power is used up: what the best gearing would reach", "mph")] Speed? PowerSpeed,
        [Output("speed at the redline in the longest gear", "mph")] Speed? RedlineSpeed);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var road = new Resistance(x.Mass.Kilograms, x.RollingResistance.DecimalFractions, x.DragArea.SquareMeters, x.AirDensity.KilogramsPerCubicMeter);
        var gears = x.Gearings();
        var longest = gears.MinBy(g => g.Gearing.Ratio).Gearing;
        var redline = x.Redline is { } limit ? longest.RoadSpeed(limit.RadiansPerSecond) : (double?)null; // m/s
        if (redline is { } vr) w.Line("vr", "pi n re / (30 G)", $"pi x {x.Redline!.Value.RevolutionsPerMinute} x {longest.Radius} / (30 x {longest.Ratio})", vr, "m/s");
        var full = x.TorqueCurve is { } curve ? new FullLoad(curve, x.IdleSpeed, x.Redline) : null;
        var power = full is null ? x.PeakPower is { } stated ? (double)stated.Watts : null : full.Pulls ? full.PeakPower : (double?)null; // W
        if (power is not { } P)
        {
            w.Answer("reaches-cruise", Verdict.Unknown, full is null ? PeakTorque.NoCurve : PeakTorque.Nothing(full));
            return new(null, null, null, null, null, null, TopSpeedAnswer.Told(redline));
        }
        var eta = x.Efficiency.DecimalFractions;
        var vp = road.SpeedForPower(eta * P); // m/s
        w.Line("vp", "eta P = v (m g f + rho CdA v^2 / 2)", $"{eta} x {P} = v x ({road.Weight} x {road.Rolling} + {road.AirDensity} x {road.DragArea} x v^2 / 2)", vp, "m/s");
        var answer = full is null ? TopSpeedAnswer.ByPower(vp, redline, longest) : TopSpeedAnswer.ByCurve(gears, full, road);
        answer.Write(w, road, x.CruiseSpeed);
        return new(TopSpeedAnswer.Told(answer.Speed), answer.EngineSpeed, answer.Gear, answer.Range, answer.LimitedBy, TopSpeedAnswer.Told(vp), TopSpeedAnswer.Told(redline));
    }
}
