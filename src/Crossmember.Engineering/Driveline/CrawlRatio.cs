using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>Crawl ratio: the overall ratio in the lowest gear and range, and the walking speed it gives at idle.</summary>
/// <remarks>
/// Formula:  C = largest gear ratio x largest transfer ratio x axle ratio; v = n pi D / (60 C) (v m/s, n rpm, D m)
/// Valid:    gear trains in series, no slip
/// Source:   US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-14 (product of ratios); docs/derivations/rolling-wheel.md
/// Example:  5.15 x 2.28 x 4.11 = 48.26
/// </remarks>
public sealed class CrawlRatio() : Calculation<CrawlRatio.Inputs, CrawlRatio.Result>(new()
{
    Id = "driveline.crawl-ratio",
    Version = 1,
    Title = "Crawl ratio",
    Purpose = "How slowly and strongly the vehicle can be driven over obstacles: the lowest gear in the lowest range, and the walking speed at idle.",
    Formula = "C = largest gear ratio x largest transfer ratio x axle ratio; crawl speed v = n pi D / (60 C)",
    Validity = "Gear trains in series, none slipping; reverse is not a gear here. "
        + "With the nominal tire diameter the speed is up to about 3 % high on a loaded radial tire.",
    Sources = ["US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-14", "Geometry of a rolling wheel, derived"],
    Trends =
    [
        new("gearRatios", "crawlRatio", '+', 2, 8), new("transferRatios", "crawlRatio", '+', 1, 5), new("axleRatio", "crawlRatio", '+', 2.5, 6),
        new("idleSpeed", "crawlSpeed", '+', 400, 1500), new("tireDiameter", "crawlSpeed", '+', 24, 44),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["gearRatios"] = """{"1":"5.15","2":"2.72","3":"1.64","4":"1"}""", ["transferRatios"] = """{"high":"1","low":"2.28"}""",
                ["axleRatio"] = "4.11", ["idleSpeed"] = "700 rpm", ["tireDiameter"] = "33 in",
            },
            new Dictionary<string, double> { ["crawlRatio"] = 48.26, ["crawlSpeed"] = 1.424 }, 0.0004,
            "Product worked by hand to two decimals; speed as inch rule 700 x 33 / (336.135 x 48.26)", Provenance.Derived),
    ],
    Cautions =
    [
        "In the lowest gear and range the axle shafts, joints and propeller shafts can see more torque than they carry: "
        + "have them checked against the torque limit of grip and of the engine before a deeper ratio is fitted.",
    ],
})
{
    public sealed record Inputs(
        [Input("gearbox ratios", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatios)] Members<Ratio> GearRatios,
        [Input("transfer case ratios", MoreThan = 0, Low = 0.7, High = 6, Measure = HowToMeasure.TransferRatios)] Members<Ratio> TransferRatios,
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio,
        [Input("idle speed of the engine", "rpm", MoreThan = 0, High = 2000,
            Measure = "read a tachometer with the engine warm and in neutral")] RotationalSpeed? IdleSpeed,
        [Input("overall tire diameter", "in", MoreThan = 0, Low = 20, High = 60, Measure = HowToMeasure.TireDiameter)] Length? TireDiameter);

    public sealed record Result(
        [Output("crawl ratio")] Ratio CrawlRatio,
        [Output("road speed at idle in the lowest gear and range", "mph")] Speed? CrawlSpeed);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double gear = x.GearRatios.Items.Max(g => g.Value.DecimalFractions), transfer = x.TransferRatios.Items.Max(t => t.Value.DecimalFractions);
        var axle = x.AxleRatio.DecimalFractions;
        var C = gear * transfer * axle;
        w.Line("C", "largest gear x largest transfer x axle", $"{gear} x {transfer} x {axle}", C, "1");
        if (x.IdleSpeed is not { } idle || x.TireDiameter is not { } diameter) return new(Ratio.FromDecimalFractions(C), null);
        double n = idle.RevolutionsPerMinute, D = diameter.Meters; // rpm, m
        var v = RollingWheel.RoadSpeed(n, C, D); // m/s
        w.Line("v", "n pi D / (60 C)", $"{n} x pi x {D} / (60 x {C})", v, "m/s");
        return new(Ratio.FromDecimalFractions(C), Speed.FromMetersPerSecond(v));
    }
}
