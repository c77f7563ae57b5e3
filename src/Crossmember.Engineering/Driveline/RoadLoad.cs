using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>Force and power that a steady speed asks of the wheels.</summary>
/// <remarks>
/// Formula:  R = m g (f cos th + sin th) + rho CdA v^2 / 2, P = R v; tan th = grade (m kg, g 9.80665 m/s2, rho kg/m3, CdA m2, v m/s)
/// Valid:    steady speed, still air, straight road; f the same at every speed
/// Source:   docs/derivations/road-load.md
/// Example:  2150 kg, f 0.015, CdA 1.45 m2, 100 km/h -> 316.3 + 671.3 N, 27.43 kW
/// </remarks>
public sealed class RoadLoad() : Calculation<RoadLoad.Inputs, RoadLoad.Result>(new()
{
    Id = "driveline.road-load",
    Version = 1,
    Title = "Road load",
    Purpose = "What the vehicle asks of its wheels to keep a speed: tires rolling, air pushed aside, and the grade. Weight counts on hills and soft "
        + "ground, height and width on the highway.",
    Formula = "R = m g (f cos th + sin th) + rho CdA v^2 / 2; power = R v; tan th = grade",
    Validity = "Steady speed on a straight road in still air; add a head wind to the speed for the air alone. The rolling share f is taken the same at "
        + "every speed: "
        + "above 70 mph tires take more. Power is that at the wheels: the engine must give more by what the gears take.",
    Sources = ["Statics and dynamic pressure, derived", "Standard acceleration of free fall 9.80665 m/s2, CGPM 1901"],
    Trends =
    [
        new("speed", "total", '+', 5, 100), new("mass", "rolling", '+', 500, 6000), new("rollingResistance", "total", '+', 0.008, 0.2),
        new("dragArea", "total", '+', 0.4, 4), new("airDensity", "total", '+', 0.7, 1.4), new("grade", "gradeForce", '+', 0.01, 1),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["speed"] = "100 km/h", ["mass"] = "2150 kg", ["rollingResistance"] = "0.015", ["dragArea"] = "1.45 m2" },
            new Dictionary<string, double> { ["rolling"] = 71.10, ["air"] = 150.91, ["power"] = 36.784 }, 0.0002,
            "316.3 N, 671.3 N and 27.43 kW at the wheels, by hand: 4.4482 N to the lbf, 745.70 W to the hp", Provenance.Derived),
        new(new Dictionary<string, string> { ["speed"] = "10 mph", ["mass"] = "10000 lb", ["grade"] = "0.05", ["dragArea"] = "2 m2" },
            new Dictionary<string, double> { ["gradeForce"] = 499.4 }, 0.0001,
            "10,000 lb x sin(atan 0.05) by hand; the rule of one per cent of the weight for each per cent of grade gives 500", Provenance.Derived),
    ],
    Cautions = ["Coast-down trials belong on an empty straight road, in both directions, with one person driving and another one reading."],
})
{
    public sealed record Inputs(
        [Input("road speed", "mph", AtLeast = 0, High = 150, Measure = HowToMeasure.CruiseSpeed)] Speed Speed,
        [Input("mass of the vehicle", "kg", MoreThan = 0, Low = 300, High = 20000, Measure = HowToMeasurePull.Mass)] UnitsNet.Mass Mass,
        [Input("rolling resistance as a share of weight", MoreThan = 0, Low = 0.005, High = 0.5, Default = 0.015, Measure = HowToMeasurePull.RollingResistance)]
        Ratio RollingResistance,
        [Input("drag coefficient times frontal area", "m2", MoreThan = 0, Low = 0.3, High = 8, Measure = HowToMeasurePull.DragArea)] Area? DragArea,
        [Input("density of the air", "kg/m3", MoreThan = 0, Low = 0.6, High = 1.5, Default = 1.2, Measure = HowToMeasurePull.AirDensity)] Density AirDensity,
        [Input("grade of the road, level where none is given", AtLeast = 0, High = 1.2, Measure = HowToMeasurePull.Grade)] Ratio? Grade);

    public sealed record Result(
        [Output("rolling resistance", "lbf")] Force Rolling,
        [Output("air resistance; unknown without the drag area", "lbf")] Force? Air,
        [Output("grade resistance", "lbf")] Force GradeForce,
        [Output("road load, all together", "lbf")] Force? Total,
        [Output("power at the wheels", "hp")] Power? Power);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double v = x.Speed.MetersPerSecond, m = x.Mass.Kilograms, f = x.RollingResistance.DecimalFractions; // m/s, kg
        double grade = x.Grade?.DecimalFractions ?? 0, th = Math.Atan(grade); // rise over run, rad
        double drag = x.DragArea?.SquareMeters ?? 0, rho = x.AirDensity.KilogramsPerCubicMeter; // m2, kg/m3
        var r = new Resistance(m, f, drag, rho);
        double rolling = r.OfRolling(th), air = r.OfAir(v), up = r.OfGrade(th); // N
        w.Line("th", "atan(grade)", $"atan({grade})", th * 180 / Math.PI, "deg");
        w.Line("Rr", "m g f cos th", $"{m} x {Resistance.Gravity} x {f} x cos({th * 180 / Math.PI})", rolling, "N");
        w.Line("Rg", "m g sin th", $"{m} x {Resistance.Gravity} x sin({th * 180 / Math.PI})", up, "N");
        if (x.DragArea is null) return new(Force.FromNewtons(rolling), null, Force.FromNewtons(up), null, null);
        var R = rolling + up + air; // N
        w.Line("Ra", "rho CdA v^2 / 2", $"{rho} x {drag} x {v}^2 / 2", air, "N");
        w.Line("R", "Rr + Rg + Ra", $"{rolling} + {up} + {air}", R, "N");
        w.Line("P", "R v", $"{R} x {v}", R * v, "W");
        return new(Force.FromNewtons(rolling), Force.FromNewtons(air), Force.FromNewtons(up), Force.FromNewtons(R), Power.FromWatts(R * v));
    }
}
