using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>How far the outer wheel should turn for the inner one, and how far it does.</summary>
/// <remarks>
/// Formula:  cot outer = cot inner + B / L (B kingpin distance, L wheelbase)
/// Valid:    slow turn without slip, rear axle not steered; both angles from straight ahead
/// Source:   geometry, docs/derivations/turning.md; toe-out on turns: US Army TM 9-8000, par. 33-17
/// Example:  B 60 in, L 100 in: outer 20 deg, inner 25.0 deg
/// </remarks>
public sealed class AckermannAngles() : Calculation<AckermannAngles.Inputs, AckermannAngles.Result>(new()
{
    Id = "steering.ackermann",
    Version = 1,
    Title = "Toe-out on turns",
    Purpose = "Whether the two front wheels roll about one point at full lock or scrub against each other: bent or wrong steering arms show here first.",
    Formula = "cot outer = cot inner + B / L; error = measured outer - ideal outer",
    Validity = "A slow turn, where tires roll almost without slip. Linkages of solid axles keep to it near straight ahead and leave it toward full lock; "
        + "a few degrees too much outer angle there are usual. B is the distance of the kingpins, not of the treads: with the treads the answer is up to 2 deg off.",
    Sources =
    [
        "Geometry of a turn, derived (docs/derivations/turning.md)",
        "US Army TM 9-8000, Principles of Automotive Vehicles, par. 33-17: toe-out is told as degrees over 20 of the inner wheel with the outer at 20",
        "Limit of 4 deg at full lock: common practice, no source",
    ],
    Checks = [new("error", Sense.AtMost, "Does the outer wheel follow the inner one closely enough?", "outerAngle")],
    Trends =
    [
        new("kingpinDistance", "idealOuter", '-', 35, 80), new("wheelbase", "idealOuter", '+', 70, 200), new("innerAngle", "idealOuter", '+', 6, 49),
        new("outerAngle", "error", '+', 6, 49),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["kingpinDistance"] = "60 in", ["wheelbase"] = "100 in", ["innerAngle"] = "25 deg" },
            new Dictionary<string, double> { ["innerAtTwenty"] = 25.0, ["idealOuter"] = 20.0 }, 0.002, "cot 20 - 0.60 = 2.147 = cot 24.97 deg, by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["kingpinDistance"] = "1.30 m", ["wheelbase"] = "2.560 m", ["innerAngle"] = "33 deg", ["outerAngle"] = "28 deg" },
            new Dictionary<string, double> { ["idealOuter"] = 26.03, ["error"] = 1.97 }, 0.003, "cot 33 + 1.30 / 2.56 = 2.0477 = cot 26.03 deg, by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "A steering arm that was bent must be replaced: it is never heated and bent back. Have steering parts passed by a qualified person.",
        "Set the stops so that tire, joint and box all have room left at full lock; check with the axle at full bump and full droop.",
    ],
})
{
    /// <summary>Degrees; common practice, no source.</summary>
    private const double Allowed = 4;

    public sealed record Inputs(
        [Input("distance between the kingpins", "in", MoreThan = 0, Low = 30, High = 100, Measure = HowToMeasureSteering.KingpinDistance)] Length KingpinDistance,
        [Input("wheelbase", "in", MoreThan = 0, Low = 60, High = 260, Measure = HowToMeasureSteering.Wheelbase)] Length Wheelbase,
        [Input("angle of the wheel on the inside of the turn", "deg", MoreThan = 0, Low = 5, High = 50, Measure = HowToMeasureSteering.InnerAngle)] Angle InnerAngle,
        [Input("angle of the wheel on the outside at the same time", "deg", MoreThan = 0, Low = 5, High = 50, Measure = HowToMeasureSteering.OuterAngle)] Angle? OuterAngle);

    public sealed record Result(
        [Output("outer angle at which both wheels roll about one point", "deg")] Angle IdealOuter,
        [Output("inner angle that belongs to an outer one of 20 deg: toe-out on turns as handbooks tell it", "deg")] Angle? InnerAtTwenty,
        [Output("measured less ideal outer angle: positive turns out too far and scrubs", "deg")] Angle? Error);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double B = x.KingpinDistance.Meters, L = x.Wheelbase.Meters, i = x.InnerAngle.Degrees; // m, m, deg
        if (i >= 90 || x.OuterAngle?.Degrees >= 90)
        {
            w.Caution("No front wheel turns through a right angle: read the turn plates again.");
            return null;
        }
        var ideal = TurnGeometry.Degrees(TurnGeometry.Outer(x.InnerAngle.Radians, B, L));
        w.Line("outer", "arccot(cot inner + B / L)", $"arccot(cot {i} + {B} / {L})", ideal, "deg");
        var twenty = TurnGeometry.Degrees(TurnGeometry.Inner(Math.PI / 9, B, L));
        w.Line("inner at 20", "arccot(cot 20 - B / L)", $"arccot(cot 20 - {B} / {L})", twenty, "deg");
        double? error = x.OuterAngle?.Degrees - ideal;
        if (error is { } e)
        {
            w.Line("error", "outer - ideal", $"{x.OuterAngle!.Value.Degrees} - {ideal}", e, "deg");
            w.AtMost("error", Math.Abs(e), Allowed, "deg", Told(i, x.OuterAngle!.Value.Degrees, ideal, e), "common practice, no source", beyond: Verdict.Caution);
        }
        if (w.Shown) w.Curve(Ideal(B, L));
        return new(Angle.FromDegrees(ideal), twenty < 90 ? Angle.FromDegrees(twenty) : null, error is { } d ? Angle.FromDegrees(d) : null);
    }

    private static string Told(double inner, double outer, double ideal, double error)
    {
        var says = $"With the inner wheel at {inner:0.#} deg the outer one stands at {outer:0.#} deg; {ideal:0.#} deg would roll without scrub.";
        return Math.Abs(error) <= Allowed ? says
            : $"{says} {Math.Abs(error):0.#} deg is more than a sound linkage leaves: look for a bent or wrong steering arm, and at the tie rod's length.";
    }

    private static PlottedCurve Ideal(double B, double L)
    {
        double[] inner = [.. Enumerable.Range(0, 46).Select(d => (double)d)];
        return new("rolls without scrub", "inner wheel", "deg", inner, "outer wheel", "deg", [.. inner.Select(d => TurnGeometry.Degrees(TurnGeometry.Outer(d * Math.PI / 180, B, L)))]);
    }
}
