using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>Engine speed drawn over road speed, one line for each gear of a range.</summary>
/// <remarks>
/// Formula:  n = 30 v G / (pi re), G = gear x transfer x axle ratio (n rpm, v m/s, re m)
/// Valid:    no slip in tires, clutch or converter; drawn from idle to redline only
/// Source:   geometry, docs/derivations/rolling-wheel.md
/// Example:  4.11 direct, 406.88 mm: 65 mph at 2803 rpm
/// </remarks>
public sealed class SpeedCurves() : Calculation<SpeedCurves.Inputs, SpeedCurves.Result>(new()
{
    Id = "driveline.speed-curves",
    Version = 1,
    Title = "Engine speed over road speed",
    Purpose = "Every gear of a range in one picture: where to shift, how far the gears lie apart, and how fast the vehicle goes at the redline.",
    Formula = "n = 30 v G / (pi re), one straight line for each gear from idle to redline",
    Validity = "No slip in tires, clutch or converter; on the rolling radius of the loaded tire, so the engine turns about 3 % faster here than by the "
        + "nominal tire diameter. "
        + "Without the idle speed the lines begin at standstill, where in truth the clutch slips.",
    Sources = ["Geometry of a rolling wheel, derived"],
    Trends =
    [
        new("redline", "fastest", '+', 2000, 8000), new("rollingRadius", "fastest", '+', 11, 24), new("axleRatio", "fastest", '-', 2.5, 6),
        new("gearRatios", "fastest", '-', 0.6, 7), new("transferRatio", "fastest", '-', 1, 5), new("idleSpeed", "slowest", '+', 300, 1500),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["gearRatios"] = """{"3":"1.5","4":"1"}""", ["axleRatio"] = "4.11", ["rollingRadius"] = "406.88 mm", ["redline"] = "2803 rpm", ["idleSpeed"] = "700 rpm",
            },
            new Dictionary<string, double> { ["fastest"] = 65, ["slowest"] = 10.82 }, 0.0005,
            "65 mph on a rolling circumference of 3.05 x 33 in is 2803 rpm; 65 x 700 / 2803 / 1.5; by hand", Provenance.Derived),
    ],
})
{
    public sealed record Inputs(
        [Input("gearbox ratios", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatios)] Members<Ratio> GearRatios,
        [Input("transfer case ratio in this range", MoreThan = 0, Low = 0.7, High = 6, Default = 1, Measure = HowToMeasure.TransferRatio)] Ratio TransferRatio,
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio,
        [Input("rolling radius of the driven tires", "in", MoreThan = 0, Low = 9, High = 30, Measure = HowToMeasurePull.RollingRadius)] Length RollingRadius,
        [Input("idle speed of the engine", "rpm", MoreThan = 0, High = 2000, Measure = HowToMeasurePull.IdleSpeed)] RotationalSpeed? IdleSpeed,
        [Input("redline of the engine", "rpm", MoreThan = 0, Measure = HowToMeasure.Redline)] RotationalSpeed Redline);

    public sealed record Result(
        [Output("road speed at the redline in the longest gear", "mph")] Speed Fastest,
        [Output("road speed at idle in the lowest gear", "mph")] Speed? Slowest);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        Gearing Geared(Ratio gear) => GearSet.Of(gear, x.TransferRatio, x.AxleRatio, x.RollingRadius, Ratio.FromDecimalFractions(1));
        Gearing longest = Geared(x.GearRatios.Longest()), lowest = Geared(x.GearRatios.Lowest());
        double redline = x.Redline.RadiansPerSecond, idle = x.IdleSpeed?.RadiansPerSecond ?? 0; // rad/s
        double v = longest.RoadSpeed(redline), least = lowest.RoadSpeed(idle); // m/s
        w.Line("v", "pi n re / (30 G)", $"pi x {x.Redline.RevolutionsPerMinute} x {longest.Radius} / (30 x {longest.Ratio})", v, "m/s");
        if (x.IdleSpeed is { } slow)
            w.Line("v idle", "pi n re / (30 G)", $"pi x {slow.RevolutionsPerMinute} x {lowest.Radius} / (30 x {lowest.Ratio})", least, "m/s");
        if (w.Shown && idle < redline)
            foreach (var (name, gear) in x.GearRatios.Items) w.Curve(Line($"gear {name}", Geared(gear), idle, redline));
        return new(Speed.FromMetersPerSecond(v), x.IdleSpeed is null ? null : Speed.FromMetersPerSecond(least));
    }

    /// <summary>Engine speeds in rad/s.</summary>
    private static PlottedCurve Line(string name, Gearing gearing, double from, double to)
    {
        double[] ends = [from, to];
        return new(name, "road speed", "mph", [.. ends.Select(n => Speed.FromMetersPerSecond(gearing.RoadSpeed(n)).MilesPerHour)],
            "engine speed", "rpm", [.. ends.Select(n => n * 30 / Math.PI)]);
    }
}
