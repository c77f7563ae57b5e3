using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>Engine speed at a road speed, no slip.</summary>
/// <remarks>
/// Formula:  n = 60 v G / (pi D), G = axle x gear x transfer ratio (n rpm, v m/s, D m)
/// Valid:    no tire or clutch slip, no torque converter; D is the nominal diameter: on a loaded radial tire the engine turns about 3 %
///           faster than this (rolling circumference 3.05 D instead of 3.14 D).
/// Source:   geometry, docs/derivations/rolling-wheel.md; worked example in docs/checks.md
/// Example:  65 mph, 33 in, 4.11 direct -> 2721 rpm
/// </remarks>
public sealed class EngineSpeed() : Calculation<EngineSpeed.Inputs, EngineSpeed.Result>(new()
{
    Id = "driveline.engine-speed",
    Version = 1,
    Title = "Engine speed at a road speed",
    Purpose = "What the engine turns at a road speed in a gear: comfort, noise and life on the road, and what larger tires or another axle ratio change.",
    Formula = "n = 60 v G / (pi D), G = axle ratio x gear ratio x transfer ratio",
    Validity = "No slip in tires, clutch or converter. With the nominal tire diameter the result is up to about 3 % below what a loaded radial tire gives.",
    Sources = ["Geometry of a rolling wheel, derived"],
    Checks = [new("redline", Sense.AtMost, "Does the engine stay below its redline?", "redline")],
    Trends =
    [
        new("roadSpeed", "engineSpeed", '+', 5, 100), new("tireDiameter", "engineSpeed", '-', 24, 44), new("axleRatio", "engineSpeed", '+', 2.5, 6),
        new("gearRatio", "engineSpeed", '+', 0.6, 7), new("transferRatio", "engineSpeed", '+', 1, 5),
    ],
    NoTrends = [new("redline", "only compared with the result")],
    Examples =
    [
        new(new Dictionary<string, string> { ["roadSpeed"] = "65 mph", ["tireDiameter"] = "33 in", ["axleRatio"] = "4.11", ["gearRatio"] = "1" },
            new Dictionary<string, double> { ["engineSpeed"] = 2721 }, 0.0002, "Rolling wheel without slip, worked by hand to 1 rpm", Provenance.Derived),
        new(new Dictionary<string, string> { ["roadSpeed"] = "15 mph", ["tireDiameter"] = "30 in", ["axleRatio"] = "10", ["gearRatio"] = "1" },
            new Dictionary<string, double> { ["engineSpeed"] = 1680.7 }, 0.00006,
            "Rolling wheel of 15 in radius, overall 10:1, worked by hand to 0.1 rpm", Provenance.Derived),
    ],
})
{
    public sealed record Inputs(
        [Input("road speed", "mph", AtLeast = 0, High = 150, Measure = HowToMeasure.CruiseSpeed)] Speed RoadSpeed,
        [Input("overall tire diameter", "in", MoreThan = 0, Low = 20, High = 60, Measure = HowToMeasure.TireDiameter)] Length TireDiameter,
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio,
        [Input("gearbox ratio in this gear", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatio)] Ratio GearRatio,
        [Input("transfer case ratio in this range", MoreThan = 0, Low = 0.7, High = 6, Default = 1, Measure = HowToMeasure.TransferRatio)] Ratio TransferRatio,
        [Input("redline of the engine", "rpm", MoreThan = 0, Measure = HowToMeasure.Redline)] RotationalSpeed? Redline);

    public sealed record Result([Output("engine speed", "rpm")] RotationalSpeed EngineSpeed);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double v = x.RoadSpeed.MetersPerSecond, D = x.TireDiameter.Meters; // m/s, m
        double axle = x.AxleRatio.DecimalFractions, gear = x.GearRatio.DecimalFractions, transfer = x.TransferRatio.DecimalFractions;
        var G = axle * gear * transfer;
        var n = RollingWheel.EngineSpeed(v, G, D); // rpm
        w.Line("G", "axle x gear x transfer", $"{axle} x {gear} x {transfer}", G, "1");
        w.Line("n", "60 v G / (pi D)", $"60 x {v} x {G} / (pi x {D})", n, "rpm");
        if (x.Redline is { } redline)
            w.AtMost("redline", n, redline.RevolutionsPerMinute, "rpm",
                $"{n:0} rpm at {x.RoadSpeed.MilesPerHour:0.#} mph against a redline of {redline.RevolutionsPerMinute:0} rpm.");
        return new(RotationalSpeed.FromRevolutionsPerMinute(n));
    }
}
