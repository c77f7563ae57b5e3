using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>The largest force the engine makes at the wheels in one gear and range, and the road speed at which it makes it.</summary>
/// <remarks>
/// Formula:  F = T G eta / re, v = pi n re / (30 G); T largest full-load torque between idle and redline (N m), re m, n rpm
/// Valid:    full load, warm, clutch fast; a slipping clutch or a converter gives other forces below the speed shown
/// Source:   US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-15 (efficiency 0.85)
/// Example:  330 N m, 5.15 x 4.11, 0.85, 406.88 mm -> 14.592 kN
/// </remarks>
public sealed class TractiveEffort() : Calculation<TractiveEffort.Inputs, TractiveEffort.Result>(new()
{
    Id = "driveline.tractive-effort",
    Version = 1,
    Title = "Pull in a gear",
    Purpose = "How hard the wheels can push in a gear and range, at which road speed, and what is left of it over the road load: what larger tires take "
        + "and a lower axle ratio gives back.",
    Formula = "F = T G eta / re at the largest torque T between idle and redline; G = gear x transfer x axle ratio; road speed there = pi n re / (30 G)",
    Validity = "Engine at full load and warm, clutch fully engaged: a slipping clutch or a torque converter is left out. The tires may not hold the force: "
        + "the limit of grip is told apart. "
        + "A torque curve taken at the wheels has the losses in it already: efficiency 1 then. Road load is that of the heaviest condition on the level.",
    Sources = ["US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-15 (tractive factor; efficiency 0.85)", "Geometry of a rolling wheel, derived"],
    Checks = [new("road-load", Sense.AtLeast, "Does this gear pull more than the road load?", "masses", "dragArea")],
    Trends =
    [
        new("peakTorque", "peakForce", '+', 50, 1000), new("efficiency", "peakForce", '+', 0.7, 1), new("gearRatio", "peakForce", '+', 0.6, 7),
        new("transferRatio", "peakForce", '+', 1, 5), new("axleRatio", "peakForce", '+', 2.5, 6), new("rollingRadius", "peakForce", '-', 11, 24),
        new("masses", "surplus", '-', 500, 6000), new("rollingResistance", "surplus", '-', 0.008, 0.1), new("dragArea", "surplus", '-', 0.4, 4),
        new("airDensity", "surplus", '-', 0.7, 1.4),
    ],
    NoTrends =
    [
        new("torqueCurve", "has many points"), new("idleSpeed", "cuts the curve only where it lies above its first point"),
        new("redline", "cuts the curve only where it lies below its last point"),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["peakTorque"] = "330 N m", ["gearRatio"] = "5.15", ["axleRatio"] = "4.11", ["rollingRadius"] = "406.88 mm" },
            new Dictionary<string, double> { ["peakForce"] = 3280.4 }, 0.0001, "330 x 21.1665 x 0.85 / 0.40688 = 14592 N by hand, 4.4482 N to the lbf", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["torqueCurve"] = """[["1000 rpm","250 N m"],["2000 rpm","330 N m"],["4000 rpm","260 N m"]]""", ["gearRatio"] = "1", ["axleRatio"] = "4.11",
                ["rollingRadius"] = "406.88 mm", ["masses"] = """{"empty":"1900 kg","touring":"2150 kg"}""", ["dragArea"] = "1.45 m2",
            },
            new Dictionary<string, double> { ["peakForce"] = 637.0, ["speedAtPeak"] = 46.38, ["roadLoad"] = 155.2, ["surplus"] = 481.8 }, 0.0005,
            "330 x 4.11 x 0.85 / 0.40688 = 2833 N at 2000 rpm, 20.73 m/s; 316.3 + 0.87 x 20.73^2 = 690.3 N; by hand", Provenance.Derived),
    ],
    Cautions = ["Joints, shafts and axles must carry this force: have them checked against it before a lower gear, a stronger engine or larger tires are fitted."],
})
{
    public sealed record Inputs(
        [Input(HowToMeasurePull.TheTorqueCurve, "rpm", CurveUnit = "N m", Measure = HowToMeasurePull.TorqueCurve)] Curve? TorqueCurve,
        [Input("largest torque of the engine, used where no curve is known", "N m", MoreThan = 0, Low = 20, High = 3000, Measure = HowToMeasurePull.PeakTorque)]
        Torque? PeakTorque,
        [Input("share of the engine's torque that reaches the wheels", MoreThan = 0, Low = 0.6, High = 1, Default = 0.85, Measure = HowToMeasurePull.Efficiency)]
        Ratio Efficiency,
        [Input("gearbox ratio in this gear", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatio)] Ratio GearRatio,
        [Input("transfer case ratio in this range", MoreThan = 0, Low = 0.7, High = 6, Default = 1, Measure = HowToMeasure.TransferRatio)] Ratio TransferRatio,
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio,
        [Input("rolling radius of the driven tires", "in", MoreThan = 0, Low = 9, High = 30, Measure = HowToMeasurePull.RollingRadius)] Length RollingRadius,
        [Input("idle speed of the engine", "rpm", MoreThan = 0, High = 2000, Measure = HowToMeasurePull.IdleSpeed)] RotationalSpeed? IdleSpeed,
        [Input("redline of the engine", "rpm", MoreThan = 0, Measure = HowToMeasure.Redline)] RotationalSpeed? Redline,
        [Input("masses of the vehicle in its conditions; the heaviest counts", "kg", MoreThan = 0, Low = 300, High = 20000, Measure = HowToMeasurePull.Mass)]
        Members<UnitsNet.Mass>? Masses,
        [Input("rolling resistance as a share of weight", MoreThan = 0, Low = 0.005, High = 0.5, Default = 0.015, Measure = HowToMeasurePull.RollingResistance)]
        Ratio RollingResistance,
        [Input("drag coefficient times frontal area", "m2", MoreThan = 0, Low = 0.3, High = 8, Measure = HowToMeasurePull.DragArea)] Area? DragArea,
        [Input("density of the air", "kg/m3", MoreThan = 0, Low = 0.6, High = 1.5, Default = 1.2, Measure = HowToMeasurePull.AirDensity)] Density AirDensity);

    public sealed record Result(
        [Output("largest force at the wheels", "lbf")] Force? PeakForce,
        [Output("road speed at that force; unknown without a torque curve", "mph")] Speed? SpeedAtPeak,
        [Output("road load at that speed on the level, heaviest condition", "lbf")] Force? RoadLoad,
        [Output("what is left over the road load", "lbf")] Force? Surplus);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double gear = x.GearRatio.DecimalFractions, transfer = x.TransferRatio.DecimalFractions, axle = x.AxleRatio.DecimalFractions;
        double re = x.RollingRadius.Meters, eta = x.Efficiency.DecimalFractions; // m
        var gearing = new Gearing(gear * transfer * axle, re, eta);
        var full = x.TorqueCurve is { } curve ? new FullLoad(curve, x.IdleSpeed, x.Redline) : null;
        if (PeakTorque.Of(full, x.PeakTorque, w, "road-load") is not { } T) return new(null, null, null, null);
        var F = gearing.Force(T); // N
        w.Line("G", "gear x transfer x axle", $"{gear} x {transfer} x {axle}", gearing.Ratio, "1");
        w.Line("F", "T G eta / re", $"{T} x {gearing.Ratio} x {eta} / {re}", F, "N");
        if (full is null)
        {
            w.Answer("road-load", Verdict.Unknown, PeakTorque.NoCurve);
            return new(Force.FromNewtons(F), null, null, null);
        }
        double n = full.Peak.Speed, v = gearing.RoadSpeed(n); // rad/s, m/s
        w.Line("v", "pi n re / (30 G)", $"pi x {n * 30 / Math.PI} x {re} / (30 x {gearing.Ratio})", v, "m/s");
        Plot(w, gearing, full);
        if (x.Masses is not { } masses || x.DragArea is not { } drag) return new(Force.FromNewtons(F), Speed.FromMetersPerSecond(v), null, null);
        var road = new Resistance(masses.Items.Max(m => m.Value.Kilograms), x.RollingResistance.DecimalFractions, drag.SquareMeters, x.AirDensity.KilogramsPerCubicMeter);
        return Against(w, Force.FromNewtons(F), Speed.FromMetersPerSecond(v), road);
    }

    private static Result Against(Worksheet w, Force pull, Speed speed, Resistance road)
    {
        double v = speed.MetersPerSecond, R = road.Total(v); // m/s, N
        w.Line("R", "m g f + rho CdA v^2 / 2", $"{road.Weight} x {road.Rolling} + {road.AirDensity} x {road.DragArea} x {v}^2 / 2", R, "N");
        w.Line("surplus", "F - R", $"{pull.Newtons} - {R}", pull.Newtons - R, "N");
        var load = Force.FromNewtons(R);
        w.AtLeast("road-load", pull.PoundsForce, load.PoundsForce, "lbf",
            $"{pull.PoundsForce:0} lbf at {speed.MilesPerHour:0.#} mph, where the level road takes {load.PoundsForce:0} lbf.");
        return new(pull, speed, load, Force.FromNewtons(pull.Newtons - R));
    }

    private static void Plot(Worksheet w, Gearing gearing, FullLoad full)
    {
        if (w.Shown) w.Curve(PullCurves.Of("pull in this gear", gearing, full));
    }
}
