using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>Engine speed at cruise, in the longest gearing the vehicle has.</summary>
/// <remarks>
/// Formula:  n = 60 v G / (pi D), G = axle x smallest gear x smallest transfer ratio (n rpm, v m/s, D m)
/// Valid:    no slip; with the nominal D a loaded radial tire makes the engine turn about 3 % faster
/// Source:   geometry, docs/derivations/rolling-wheel.md
/// Example:  65 mph, 33 in, 4.11, direct top, direct high range -> 2721 rpm
/// </remarks>
public sealed class Cruise() : Calculation<Cruise.Inputs, Cruise.Result>(new()
{
    Id = "driveline.cruise",
    Version = 1,
    Title = "Engine speed at cruise",
    Purpose = "Whether the vehicle cruises at the speed the customer asked for without working its engine too hard, in the longest gear and range it has.",
    Formula = "n = 60 v G / (pi D), G = axle ratio x smallest gear ratio x smallest transfer ratio",
    Validity = "No slip in tires, clutch or converter. With the nominal tire diameter the result is up to about 3 % below what a loaded radial tire gives. "
        + "Whether the engine has the power for that speed in that gear is another question.",
    Sources = ["Geometry of a rolling wheel, derived"],
    Checks = [new("redline", Sense.AtMost, "Does the engine stay below its redline at cruise?", "redline")],
    Trends =
    [
        new("cruiseSpeed", "engineSpeed", '+', 5, 100), new("tireDiameter", "engineSpeed", '-', 24, 44), new("axleRatio", "engineSpeed", '+', 2.5, 6),
        new("gearRatios", "engineSpeed", '+', 0.6, 7), new("transferRatios", "engineSpeed", '+', 1, 5),
    ],
    NoTrends = [new("redline", "only compared with the result")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["cruiseSpeed"] = "65 mph", ["tireDiameter"] = "33 in", ["axleRatio"] = "4.11",
                ["gearRatios"] = """{"1":"3.1","2":"1.6","3":"1"}""", ["transferRatios"] = """{"high":"1","low":"2.4"}""",
            },
            new Dictionary<string, double> { ["engineSpeed"] = 2721 }, 0.0002, "Rolling wheel without slip, worked by hand to 1 rpm", Provenance.Derived),
    ],
})
{
    public sealed record Inputs(
        [Input("cruise speed", "mph", AtLeast = 0, High = 150, Measure = HowToMeasure.CruiseSpeed)] Speed CruiseSpeed,
        [Input("overall tire diameter", "in", MoreThan = 0, Low = 20, High = 60, Measure = HowToMeasure.TireDiameter)] Length TireDiameter,
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio,
        [Input("gearbox ratios", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatios)] Members<Ratio> GearRatios,
        [Input("transfer case ratios", MoreThan = 0, Low = 0.7, High = 6, Measure = HowToMeasure.TransferRatios)] Members<Ratio> TransferRatios,
        [Input("redline of the engine", "rpm", MoreThan = 0, Measure = HowToMeasure.Redline)] RotationalSpeed? Redline);

    public sealed record Result([Output("engine speed at cruise", "rpm")] RotationalSpeed EngineSpeed);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double v = x.CruiseSpeed.MetersPerSecond, D = x.TireDiameter.Meters; // m/s, m
        double gear = x.GearRatios.Items.Min(g => g.Value.DecimalFractions), transfer = x.TransferRatios.Items.Min(t => t.Value.DecimalFractions);
        var axle = x.AxleRatio.DecimalFractions;
        var G = axle * gear * transfer;
        var n = RollingWheel.EngineSpeed(v, G, D); // rpm
        w.Line("G", "axle x smallest gear x smallest transfer", $"{axle} x {gear} x {transfer}", G, "1");
        w.Line("n", "60 v G / (pi D)", $"60 x {v} x {G} / (pi x {D})", n, "rpm");
        if (x.Redline is { } redline)
            w.AtMost("redline", n, redline.RevolutionsPerMinute, "rpm",
                $"{n:0} rpm cruising at {x.CruiseSpeed.MilesPerHour:0.#} mph against a redline of {redline.RevolutionsPerMinute:0} rpm.");
        return new(RotationalSpeed.FromRevolutionsPerMinute(n));
    }
}
