using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>The circle a vehicle turns in, at the lock its stops allow.</summary>
/// <remarks>
/// Formula:  R = L / sin outer; circle 2 (R + s); wall to wall 2 sqrt((L + o)^2 + (R cos outer - B / 2 + W / 2)^2)
/// Valid:    slow turn without slip; the outer wheel's angle at the stop
/// Source:   geometry, docs/derivations/turning.md
/// Example:  L 2.560 m, B 1.30 m, inner 33 deg, scrub 85 mm -> R 5.834 m, circle 11.84 m
/// </remarks>
public sealed class TurningCircle() : Calculation<TurningCircle.Inputs, TurningCircle.Result>(new()
{
    Id = "steering.turning-circle",
    Version = 1,
    Title = "Turning circle",
    Purpose = "What room the vehicle takes to turn round: what a longer wheelbase, stops set in for larger tires, and a bumper with a winch cost.",
    Formula = "R = L / sin outer; circle of the outer tire's center 2 (R + scrub); wall to wall 2 sqrt((L + overhang)^2 + (R cos outer - B / 2 + W / 2)^2)",
    Validity = "A slow turn on firm ground at the lock of the steering stops, rear axle not steered, no four-wheel drive wound up. Where the two wheels do not agree "
        + "on a center, the truth lies between the circles of both. Tires that slip make it larger, by a tenth on loose ground.",
    Sources = ["Geometry of a turn, derived (docs/derivations/turning.md)"],
    Trends =
    [
        new("wheelbase", "kingpinRadius", '+', 70, 200), new("outerAngle", "kingpinRadius", '-', 10, 45), new("scrub", "tireCircle", '+', 0, 6),
        new("overhang", "wallCircle", '+', 10, 60), new("cornerWidth", "wallCircle", '+', 50, 90), new("kingpinDistance", "wallCircle", '-', 40, 80),
        new("innerAngle", "idealRadius", '-', 10, 45),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["kingpinDistance"] = "1.30 m", ["wheelbase"] = "2.560 m", ["innerAngle"] = "33 deg", ["scrub"] = "85 mm" },
            new Dictionary<string, double> { ["kingpinRadius"] = 19.140, ["tireCircle"] = 38.84, ["idealRadius"] = 19.140 }, 0.0005,
            "outer 26.03 deg; 2.560 / sin 26.03 = 5.834 m; 2 (5.834 + 0.085) = 11.84 m, by hand", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["kingpinDistance"] = "50 in", ["wheelbase"] = "100 in", ["innerAngle"] = "34 deg", ["outerAngle"] = "30 deg", ["scrub"] = "3 in", ["overhang"] = "30 in", ["cornerWidth"] = "70 in",
            },
            new Dictionary<string, double> { ["kingpinRadius"] = 16.667, ["wallCircle"] = 37.440 }, 0.0003,
            "R = 200 in; corner 130 in ahead of the rear axle and 200 cos 30 - 25 + 35 = 183.2 in out: hypotenuse 224.64 in, by hand", Provenance.Derived),
    ],
    Cautions = ["The stops on the axle must end the lock, not the box, a tire on the frame, or a joint at its limit: set them before the vehicle moves under its own power."],
})
{
    public sealed record Inputs(
        [Input("wheelbase", "in", MoreThan = 0, Low = 60, High = 260, Measure = HowToMeasureSteering.Wheelbase)] Length Wheelbase,
        [Input("distance between the kingpins", "in", MoreThan = 0, Low = 30, High = 100, Measure = HowToMeasureSteering.KingpinDistance)] Length KingpinDistance,
        [Input("angle of the inner wheel at the stop", "deg", MoreThan = 0, Low = 5, High = 50, Measure = HowToMeasureSteering.InnerAngle)] Angle InnerAngle,
        [Input("angle of the outer wheel at the stop; else the one that belongs to the inner", "deg", MoreThan = 0, Low = 5, High = 50,
            Measure = HowToMeasureSteering.OuterAngle)] Angle? OuterAngle,
        [Input("tread center outboard of the kingpin's axis, at the ground", "in", Low = -3, High = 8,
            Measure = "half the front track less half the distance of the kingpin axes where they meet the ground: sight down the kingpin, or hang a plumb line off its center "
                + "and take its inclination into account")] Length? Scrub,
        [Input("foremost corner ahead of the front axle", "in", AtLeast = 0, High = 100, Measure = "tape from the hub center forward to the bumper's outermost corner")] Length? Overhang,
        [Input("width over the foremost corners", "in", MoreThan = 0, Low = 30, High = 100, Measure = "tape across the bumper, corner to corner")] Length? CornerWidth);

    public sealed record Result(
        [Output("radius of the outer kingpin", "ft")] Length KingpinRadius,
        [Output("radius of the outer kingpin if the outer wheel agreed with the inner one", "ft")] Length IdealRadius,
        [Output("circle of the outer tire's center, across; unknown without the scrub", "ft")] Length? TireCircle,
        [Output("wall to wall, across; unknown without the bumper's corners", "ft")] Length? WallCircle);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double L = x.Wheelbase.Meters, B = x.KingpinDistance.Meters; // m
        if (x.InnerAngle.Degrees >= 90 || x.OuterAngle?.Degrees >= 90)
        {
            w.Caution("No front wheel turns through a right angle: read the turn plates again.");
            return null;
        }
        double ideal = TurnGeometry.Outer(x.InnerAngle.Radians, B, L), outer = x.OuterAngle?.Radians ?? ideal; // rad
        if (x.OuterAngle is null) w.Line("outer", "arccot(cot inner + B / L)", $"arccot(cot {x.InnerAngle.Degrees} + {B} / {L})", TurnGeometry.Degrees(outer), "deg");
        double R = L / Math.Sin(outer), idealR = L / Math.Sin(ideal); // m
        w.Line("R", "L / sin outer", $"{L} / sin {TurnGeometry.Degrees(outer)}", R, "m");
        if (Math.Abs(R - idealR) > 0.05 * Math.Max(R, idealR))
            w.Caution($"The two wheels do not agree on a center: by the inner one the radius would be {100 * Math.Abs(idealR - R) / R:0} % {(idealR < R ? "less" : "more")}. The truth lies between.");
        double? tire = null, wall = null; // m
        if (x.Scrub is { } scrub)
        {
            tire = 2 * (R + scrub.Meters);
            w.Line("circle", "2 (R + s)", $"2 x ({R} + {scrub.Meters})", tire.Value, "m");
        }
        if (x.Overhang is { } o && x.CornerWidth is { } W)
        {
            var across = (R * Math.Cos(outer)) + ((W.Meters - B) / 2);
            wall = 2 * Math.Sqrt(((L + o.Meters) * (L + o.Meters)) + (across * across));
            w.Line("wall", "2 sqrt((L + o)^2 + (R cos outer - B / 2 + W / 2)^2)", $"2 sqrt(({L} + {o.Meters})^2 + {across}^2)", wall.Value, "m");
        }
        return new(Length.FromMeters(R), Length.FromMeters(idealR), Of(tire), Of(wall));
    }

    private static Length? Of(double? meters) => meters is { } m ? Length.FromMeters(m) : null;
}
