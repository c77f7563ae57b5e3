using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>Road speed at an engine speed, no slip: engine speed at a road speed turned around.</summary>
/// <remarks>
/// Formula:  v = n pi D / (60 G), G = axle x gear x transfer ratio (v m/s, n rpm, D m)
/// Valid:    no tire or clutch slip, no torque converter; with the nominal D about 3 % above what a loaded radial tire gives
/// Source:   geometry, docs/derivations/rolling-wheel.md
/// Example:  1680.7 rpm, 30 in, overall 10:1 -> 15 mph
/// </remarks>
public sealed class RoadSpeed() : Calculation<RoadSpeed.Inputs, RoadSpeed.Result>(new()
{
    Id = "driveline.road-speed",
    Version = 1,
    Title = "Road speed at an engine speed",
    Purpose = "How fast the vehicle goes in a gear at an engine speed: speed at the redline, walking speed in low range, and the spacing of the gears.",
    Formula = "v = n pi D / (60 G), G = axle ratio x gear ratio x transfer ratio",
    Validity = "No slip in tires, clutch or converter. With the nominal tire diameter the result is up to about 3 % above what a loaded radial tire gives. "
        + "It says what the gearing allows, not what the engine has power for.",
    Sources = ["Geometry of a rolling wheel, derived"],
    Trends =
    [
        new("engineSpeed", "roadSpeed", '+', 500, 6000), new("tireDiameter", "roadSpeed", '+', 24, 44), new("axleRatio", "roadSpeed", '-', 2.5, 6),
        new("gearRatio", "roadSpeed", '-', 0.6, 7), new("transferRatio", "roadSpeed", '-', 1, 5),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["engineSpeed"] = "1680.7 rpm", ["tireDiameter"] = "30 in", ["axleRatio"] = "10", ["gearRatio"] = "1" },
            new Dictionary<string, double> { ["roadSpeed"] = 15 }, 0.00006,
            "Rolling wheel of 15 in radius, overall 10:1, worked by hand to 0.1 rpm", Provenance.Derived),
    ],
    Cautions = ["A speed the gears allow is no speed the tires, brakes and steering are fit for: compare with the speed symbol of the tires."],
})
{
    public sealed record Inputs(
        [Input("engine speed", "rpm", AtLeast = 0, High = 12000, Measure = "read the tachometer, or choose the speed to look at")] RotationalSpeed EngineSpeed,
        [Input("overall tire diameter", "in", MoreThan = 0, Low = 20, High = 60, Measure = HowToMeasure.TireDiameter)] Length TireDiameter,
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio,
        [Input("gearbox ratio in this gear", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatio)] Ratio GearRatio,
        [Input("transfer case ratio in this range", MoreThan = 0, Low = 0.7, High = 6, Default = 1, Measure = HowToMeasure.TransferRatio)] Ratio TransferRatio);

    public sealed record Result([Output("road speed", "mph")] Speed RoadSpeed);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double n = x.EngineSpeed.RevolutionsPerMinute, D = x.TireDiameter.Meters; // rpm, m
        double axle = x.AxleRatio.DecimalFractions, gear = x.GearRatio.DecimalFractions, transfer = x.TransferRatio.DecimalFractions;
        var G = axle * gear * transfer;
        var v = RollingWheel.RoadSpeed(n, G, D); // m/s
        w.Line("G", "axle x gear x transfer", $"{axle} x {gear} x {transfer}", G, "1");
        w.Line("v", "n pi D / (60 G)", $"{n} x pi x {D} / (60 x {G})", v, "m/s");
        return new(Speed.FromMetersPerSecond(v));
    }
}
