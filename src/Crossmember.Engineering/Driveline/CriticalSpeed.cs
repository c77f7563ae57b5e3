using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>The speed at which a propeller shaft whirls, and how near the vehicle comes to it.</summary>
/// <remarks>
/// Formula:  n = 7.5 pi sqrt(E / rho) sqrt(D^2 + d^2) / L^2 (rpm, SI); shaft at the road: 60 v A / (2 pi re); at redline: n / (gear x range)
/// Valid:    uniform tube as a continuous beam on pinned ends, cross center to cross center; a mass lumped at mid-span would give 0.70 of it
/// Source:   docs/derivations/propeller-shaft.md; 65 to 75 %: common practice, no source
/// Example:  1250 mm, 76.2 mm, wall 2.1 mm, steel -> 8098 rpm
/// </remarks>
public sealed class CriticalSpeed() : Calculation<CriticalSpeed.Inputs, CriticalSpeed.Result>(new()
{
    Id = "driveline.propshaft-critical-speed",
    Version = 1,
    Title = "Critical speed of a propeller shaft",
    Purpose = "Up to which road speed a propeller shaft of this length and tube may turn: a longer shaft, a deeper axle ratio or an overdrive brings "
        + "it nearer to whirling.",
    Formula = "critical = 7.5 pi sqrt(E / rho) sqrt(D^2 + d^2) / L^2 (rpm; m, Pa, kg/m3); shaft on the road = 60 v A / (2 pi re); "
        + "at redline = redline / (smallest gear x smallest range)",
    Validity = "Continuous beam model: a uniform straight tube on pinned ends, L from cross center to cross center. Two-piece shafts: each piece by itself, "
        + "to the center bearing. Heavy weld yokes, slack joints and soft mounts lower it: run at most 65 to 75 % of it (common practice, no source). "
        + "Aluminum tube comes within 2 % of steel. "
        + "Some tables put the whole mass at mid-span and get 0.70 of this figure: do not compare the two.",
    Sources =
    [
        "Bending vibration of a uniform beam, derived (docs/derivations/propeller-shaft.md)",
        "SAE Universal Joint and Driveshaft Design Manual: 4.705e6 sqrt(D^2 + d^2) / L^2 in inches, 1 % lower, from memory, to be checked in the text",
        "65 to 75 % of it: common practice, no source",
    ],
    Checks =
    [
        new("cruise", Sense.AtMost, "Does the shaft stay well below its critical speed at cruise?", "cruiseSpeed", "axleRatio", "rollingRadius"),
        new("redline", Sense.AtMost, "And with the engine at its redline in the longest gearing?", "redline", "gearRatios", "transferRatios"),
    ],
    Trends =
    [
        new("length", "criticalSpeed", '-', 20, 70), new("tubeDiameter", "criticalSpeed", '+', 2, 4), new("tubeWall", "criticalSpeed", '-', 0.065, 0.25),
        new("modulus", "criticalSpeed", '+', 60, 220), new("density", "criticalSpeed", '-', 2500, 8000), new("cruiseSpeed", "cruiseShaftSpeed", '+', 20, 80),
        new("axleRatio", "cruiseShaftSpeed", '+', 2.5, 6), new("rollingRadius", "cruiseShaftSpeed", '-', 12, 22),
        new("redline", "redlineShaftSpeed", '+', 2500, 6500), new("gearRatios", "redlineShaftSpeed", '-', 0.6, 7),
        new("transferRatios", "redlineShaftSpeed", '-', 1, 5),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["length"] = "48 in", ["tubeDiameter"] = "3 in", ["tubeWall"] = "1/8 in", ["modulus"] = "29000 ksi", ["density"] = "0.2841 lb/in3",
            },
            new Dictionary<string, double> { ["criticalSpeed"] = 8262 }, 0.0006,
            "0.00883 slug/in3 = 0.2841 lb/in3; continuous beam 8262 rpm (an exercise answer of 5800 rpm in circulation is the mass lumped at "
                + "mid-span)", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["length"] = "1250 mm", ["tubeDiameter"] = "76.2 mm", ["tubeWall"] = "2.1 mm", ["cruiseSpeed"] = "65 mph", ["axleRatio"] = "4.11",
                ["rollingRadius"] = "406.88 mm", ["redline"] = "4800 rpm",
                ["gearRatios"] = """{"1":"4.02","5":"0.8"}""", ["transferRatios"] = """{"high":"1","low":"2.72"}""",
            },
            new Dictionary<string, double> { ["criticalSpeed"] = 8098, ["cruiseShaftSpeed"] = 2803, ["redlineShaftSpeed"] = 6000 }, 0.001,
            "The same formula by hand; 60 x 29.0576 x 4.11 / (2 pi 0.40688) = 2803 rpm; 4800 / 0.8 = 6000 rpm", Provenance.Derived),
    ],
    Cautions =
    [
        "A shaft that whirls bends, tears off its joints and comes through the floor within seconds: never try out where it begins. "
        + "Have the shaft balanced by a driveline shop and guard it with a loop.",
    ],
})
{
    private const double Watch = 0.65, Most = 0.75;

    private const string Practice = "common practice, no source; continuous beam model";

    public sealed record Inputs(
        [Input("length of the shaft from cross center to cross center", "in", MoreThan = 0, Low = 8, High = 90, Measure = HowToMeasureShafts.ShaftLength)]
        Length Length,
        [Input("outside diameter of the tube", "in", MoreThan = 0, Low = 1, High = 6, Measure = HowToMeasureShafts.TubeDiameter)] Length TubeDiameter,
        [Input("wall of the tube", "in", MoreThan = 0, Low = 0.049, High = 0.5, Measure = HowToMeasureShafts.TubeWall)] Length TubeWall,
        [Input("elastic modulus of the tube", "GPa", MoreThan = 0, Low = 60, High = 230, Default = 206, Measure = "206 GPa for any steel, 70 GPa for aluminum")]
        Pressure Modulus,
        [Input("density of the tube", "kg/m3", MoreThan = 0, Low = 1500, High = 8000, Default = 7850, Measure = "7850 kg/m3 for any steel, 2700 kg/m3 for aluminum")]
        Density Density,
        [Input("cruise speed", "mph", AtLeast = 0, High = 150, Measure = HowToMeasure.CruiseSpeed)] Speed? CruiseSpeed,
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio? AxleRatio,
        [Input("rolling radius of the axle's tires", "in", MoreThan = 0, Low = 9, High = 30, Measure = HowToMeasurePull.RollingRadius)] Length? RollingRadius,
        [Input("redline of the engine", "rpm", MoreThan = 0, Measure = HowToMeasure.Redline)] RotationalSpeed? Redline,
        [Input("gearbox ratios", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatios)] Members<Ratio>? GearRatios,
        [Input("transfer case ratios", MoreThan = 0, Low = 0.7, High = 6, Measure = HowToMeasure.TransferRatios)] Members<Ratio>? TransferRatios);

    public sealed record Result(
        [Output("critical speed of the shaft, continuous beam", "rpm")] RotationalSpeed CriticalSpeed,
        [Output("shaft speed at cruise", "rpm")] RotationalSpeed? CruiseShaftSpeed,
        [Output("shaft speed at redline in the longest gearing", "rpm")] RotationalSpeed? RedlineShaftSpeed,
        [Output("road speed at which the shaft reaches 65 % of its critical speed", "mph")] Speed? RoadSpeedLimit);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double L = x.Length.Meters, D = x.TubeDiameter.Meters, wall = x.TubeWall.Meters, d = D - (2 * wall); // m
        if (d < 0)
        {
            w.Caution("The wall is more than half the diameter: there is no such tube. Measure both again.");
            return null;
        }
        double E = x.Modulus.Pascals, rho = x.Density.KilogramsPerCubicMeter; // Pa, kg/m3
        var critical = 7.5 * Math.PI * Math.Sqrt(E / rho) * Math.Sqrt((D * D) + (d * d)) / (L * L); // rpm
        w.Line("d", "D - 2 wall", $"{D} - 2 x {wall}", d, "m");
        w.Line("nc", "7.5 pi sqrt(E / rho) sqrt(D^2 + d^2) / L^2", $"7.5 x pi x sqrt({E} / {rho}) x sqrt({D}^2 + {d}^2) / {L}^2", critical, "rpm");
        Speed? limit = null;
        double? cruise = null, redline = null; // rpm
        if (x.AxleRatio is { } axle && x.RollingRadius is { } radius)
        {
            double A = axle.DecimalFractions, re = radius.Meters; // m
            limit = Speed.FromMetersPerSecond(RollingWheel.RoadSpeed(Watch * critical, A, 2 * re));
            if (x.CruiseSpeed is { } v)
            {
                cruise = RollingWheel.EngineSpeed(v.MetersPerSecond, A, 2 * re);
                w.Line("n", "60 v A / (2 pi re)", $"60 x {v.MetersPerSecond} x {A} / (2 x pi x {re})", cruise.Value, "rpm");
            }
        }
        if (x.Redline is { } most && x.GearRatios is { } gears && x.TransferRatios is { } ranges)
        {
            double gear = gears.Longest().DecimalFractions, range = ranges.Longest().DecimalFractions;
            redline = most.RevolutionsPerMinute / (gear * range);
            w.Line("nr", "redline / (smallest gear x smallest range)", $"{most.RevolutionsPerMinute} / ({gear} x {range})", redline.Value, "rpm");
        }
        Judge(w, critical, cruise, redline, x.CruiseSpeed, limit);
        return new(RotationalSpeed.FromRevolutionsPerMinute(critical), Of(cruise), Of(redline), limit);
    }

    private static void Judge(Worksheet w, double critical, double? cruise, double? redline, Speed? at, Speed? limit)
    {
        var keep = limit is { } v ? $" Up to {v.MilesPerHour:0} mph it stays below 65 %." : "";
        if (cruise is { } n)
            w.AtMost("cruise", 100 * n / critical, 100 * Most, "%",
                $"At {at!.Value.MilesPerHour:0.#} mph the shaft turns {n:0} rpm, {100 * n / critical:0} % of its critical {critical:0} rpm.{keep}",
                Practice, watch: 100 * Watch);
        // Whether the vehicle ever gets there in its longest gearing is not known here: no more than a caution.
        if (redline is { } top)
            w.AtMost("redline", 100 * top / critical, 100 * Most, "%",
                $"At redline in the longest gearing the shaft would turn {top:0} rpm, {100 * top / critical:0} % of its critical {critical:0} rpm.{keep}", Practice,
                watch: 100 * Watch, beyond: Verdict.Caution);
    }

    private static RotationalSpeed? Of(double? rpm) => rpm is { } n ? RotationalSpeed.FromRevolutionsPerMinute(n) : null;
}
