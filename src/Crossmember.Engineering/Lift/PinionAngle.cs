using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Lift;

/// <summary>Slope of a propeller shaft at a ride height, the working angles of its joints, and the shim that sets the pinion right.</summary>
/// <remarks>
/// Formula:  drop = zt + h - zp; s = atan(drop / run); joints |s - o| and |s - p|; two single joints: shim = o - p; double joint at the case: shim = s - p
/// Valid:    side view, shaft straight seen from above; the pinion keeps its angle as the axle moves
/// Source:   docs/derivations/lift.md; US Army TM 5-4210-230-14 and P-1, propeller shaft: ends within 3 deg
/// Example:  drop 160 mm in 1000 mm, output 2 deg down, pinion 5 deg up -> shaft 9.09 deg, joints 7.09 and 4.09 deg, shim 3 deg nose down
/// </remarks>
public sealed class PinionAngle() : Calculation<PinionAngle.Inputs, PinionAngle.Result>(new()
{
    Id = "lift.pinion-angle",
    Version = 1,
    Title = "Pinion angle after a change of height",
    Purpose = "A lift tilts the propeller shaft and leaves output and pinion where they pointed: what the joints then work at, and which wedge under the springs evens them out.",
    Formula = "s = atan((zt + h - zp) / run); joints |s - o|, |s - p|; shim for single joints o - p, for a double joint at the case s - p",
    Validity = "Side view, with the shaft straight seen from above and the pinion keeping its angle as the axle moves. Under power leaf springs wind up and point the pinion up by a degree or two: "
        + "with a double joint it is set that much lower at rest (common practice, no source).",
    Sources =
    [
        "Geometry, derived (docs/derivations/lift.md)",
        "US Army TM 5-4210-230-14 and P-1, propeller shaft: working angles of both ends within 3 deg of each other, flanges parallel within 1 deg",
        "Working angles up to 8 deg on the road, a double joint's pinion within 1 deg of the shaft: common practice, no source",
    ],
    Checks =
    [
        new("difference", Sense.AtMost, "Do the joints even each other out?"),
        new("working", Sense.AtMost, "Are the working angles small enough for the road?"),
    ],
    Trends = [new("rideHeight", "shaftSlope", '+', 100, 400), new("outputHeight", "shaftSlope", '+', -200, 200), new("pinionHeight", "shaftSlope", '-', 0, 150), new("originalRideHeight", "lift", '-', 50, 300)],
    NoTrends =
    [
        new("run", "flattens the shaft whichever way it slopes"), new("outputSlope", "moves both joints and the shim with it"), new("pinionAngle", "opens or closes its joint by the side it lies on"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["rideHeight"] = "200 mm", ["originalRideHeight"] = "150 mm", ["outputHeight"] = "20 mm", ["pinionHeight"] = "60 mm", ["run"] = "1000 mm", ["outputSlope"] = "2 deg", ["pinionAngle"] = "5 deg",
            },
            new Dictionary<string, double> { ["lift"] = 50, ["shaftSlope"] = 9.0903, ["caseAngle"] = 7.0903, ["axleAngle"] = 4.0903, ["difference"] = 3, ["shim"] = -3 }, 0.0001,
            "atan(160 / 1000) = 9.0903 deg by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Wedges under leaf springs must be of steel, held by a longer center bolt, and the U-bolts new and torqued again after the first drive. On a front axle a wedge moves the caster by as much.",
        "Turn the shaft by hand through bump, droop and full lock with the wheels off the ground before the first drive; have a driveline shop look at what binds or comes near its limit.",
    ],
})
{
    internal const string Single = "single joints", Double = "double joint at the case";

    private const string Manual = "US Army TM 5-4210-230-14 and P-1, propeller shaft", Practice = "common practice, no source";

    public sealed record Inputs(
        [Input("ride height: frame datum over the axle center", "mm", Measure = HowToMeasureLift.RideHeight)] Length RideHeight,
        [Input("ride height as the vehicle was built", "mm", Measure = HowToMeasureLift.Original)] Length? OriginalRideHeight,
        [Input("joint at the transfer case over the frame datum", "mm", Measure = HowToMeasureLift.OutputHeight)] Length OutputHeight,
        [Input("joint at the pinion over the axle center", "mm", Measure = HowToMeasureLift.PinionHeight)] Length PinionHeight,
        [Input("level distance between both joints", "mm", MoreThan = 0, Low = 150, High = 3000, Measure = HowToMeasureLift.Run)] Length Run,
        [Input("slope of the transfer case output, positive down toward the axle", "deg", AtLeast = -30, High = 30, Measure = HowToMeasureLift.OutputSlope)] Angle OutputSlope,
        [Input("angle of the pinion, positive nose up", "deg", AtLeast = -30, High = 45, Measure = HowToMeasureLift.PinionAngle)] Angle PinionAngle,
        [Input("joints of the shaft; single joints where nothing is said", OneOf = [Single, Double])] string? Joints);

    public sealed record Result(
        [Output("lift over the height as built", "mm")] Length? Lift,
        [Output("slope of the shaft, positive down toward the axle", "deg")] Angle ShaftSlope,
        [Output("working angle at the transfer case", "deg")] Angle CaseAngle,
        [Output("working angle at the axle", "deg")] Angle AxleAngle,
        [Output("difference of both ends; of a double joint the angle at the axle", "deg")] Angle Difference,
        [Output("wedge that sets it right, positive turns the nose up", "deg")] Angle Shim);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double drop = x.OutputHeight.Millimeters + x.RideHeight.Millimeters - x.PinionHeight.Millimeters, run = x.Run.Millimeters; // mm
        double s = Math.Atan(drop / run) * 180 / Math.PI, o = x.OutputSlope.Degrees, p = x.PinionAngle.Degrees; // deg
        var twin = x.Joints == Double;
        double atCase = Math.Abs(s - o), atAxle = Math.Abs(s - p), apart = twin ? atAxle : Math.Abs(atCase - atAxle), shim = (twin ? s : o) - p; // deg
        w.Line("drop", "zt + h - zp", $"{x.OutputHeight.Millimeters} + {x.RideHeight.Millimeters} - {x.PinionHeight.Millimeters}", drop, "mm");
        w.Line("s", "atan(drop / run)", $"atan({drop} / {run})", s, "deg");
        w.Line("case", "|s - o|", $"|{s} - {o}|", atCase, "deg");
        w.Line("axle", "|s - p|", $"|{s} - {p}|", atAxle, "deg");
        if (twin) w.Line("shim", "s - p", $"{s} - {p}", shim, "deg");
        else w.Line("shim", "o - p", $"{o} - {p}", shim, "deg");
        Judge(w, atCase, atAxle, apart, shim, twin);
        Length? lift = x.OriginalRideHeight is { } built ? x.RideHeight - built : null;
        return new(lift, Angle.FromDegrees(s), Angle.FromDegrees(atCase), Angle.FromDegrees(atAxle), Angle.FromDegrees(apart), Angle.FromDegrees(shim));
    }

    private static void Judge(Worksheet w, double atCase, double atAxle, double apart, double shim, bool twin)
    {
        var told = twin ? $"The pinion points {atAxle:0.0} deg off the shaft." : $"The joints work at {atCase:0.0} deg at the transfer case and {atAxle:0.0} deg at the axle, {apart:0.0} deg apart.";
        var cure = $" A wedge of {Math.Abs(shim):0.0} deg turning the pinion's nose {(shim > 0 ? "up" : "down")} {(twin ? "points it at the case" : "makes output and pinion parallel")}.";
        // The manual's rule is for two single joints; where a double joint's pinion points is practice.
        w.AtMost("difference", apart, 3, "deg", told + (apart > 1 ? cure : ""), twin ? Practice : Manual, watch: 1, beyond: twin ? Verdict.Caution : Verdict.Fail);
        double most = twin ? atAxle : Math.Max(atCase, atAxle);
        w.AtMost("working", most, 8, "deg", $"The steeper {(twin ? "single " : "")}joint works at {most:0.0} deg" + (most > 8 ? ": it wears and shakes on the road; a double joint, or less lift." : "."),
            Practice, beyond: Verdict.Caution);
    }
}
