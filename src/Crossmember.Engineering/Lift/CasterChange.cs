using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Lift;

/// <summary>What a change of height does to the caster of the front axle, and the wedge that gives it back.</summary>
/// <remarks>
/// Formula:  caster = as built - atan((rear lift - front lift) / L) -+ (asin((d + f) / R) - asin(d / R)) +- atan(shackle change / eye span) + wedge
/// Valid:    solid axle; leaf springs keep their seat's angle to the line of their eyes; radius arms turn the axle with them
/// Source:   docs/derivations/lift.md
/// Example:  3.0 deg as built, front up 50, rear up 100 mm on 2560 mm -> 1.88 deg
/// </remarks>
public sealed class CasterChange() : Calculation<CasterChange.Inputs, CasterChange.Result>(new()
{
    Id = "lift.caster-change",
    Version = 1,
    Title = "Caster after a change of height",
    Purpose = "Nose-down rake, longer shackles and turning radius arms all take caster away, and with it the steering's will to come back: how much is left, and which wedge restores it.",
    Formula = "caster = as built - atan((fr - ff) / L) - arm turn (arms to the rear; + to the front) + atan(shackle change / eye span) (shackle behind; - ahead) + wedge",
    Validity = "Solid front axle, by geometry: bent axles, worn bushes and sagged springs are not in it, and a measured caster beats it. Leaf springs are taken to keep the axle's seat at its angle to the "
        + "line through their eyes: taller springs and blocks turn nothing, only rake and shackles do. What guides the axle must be stated, both figures of its radius arms or the span of its leaf springs: "
        + "without it only the rake is told.",
    Sources = ["Geometry, derived (docs/derivations/lift.md)", "At least 1 deg: common practice, no source"],
    Checks = [new("caster", Sense.AtLeast, "Is there caster left?", "originalCaster", "armLength", "pivotHeight", "eyeSpan")],
    Trends =
    [
        new("rearRideHeight", "change", '-', 200, 400), new("originalCaster", "caster", '+', 0, 8), new("wedge", "caster", '+', -6, 6), new("originalFrontHeight", "rake", '+', 100, 300),
        new("originalRearHeight", "rake", '-', 100, 300), new("frontRideHeight", "rake", '-', 100, 300),
    ],
    NoTrends =
    [
        new("wheelbase", "makes the rake less whichever way it goes"), new("armLength", "turns the axle one way or the other"), new("pivotHeight", "turns the axle one way or the other"),
        new("shackleChange", "turns the axle by the end the shackle is at"), new("eyeSpan", "makes the turn less whichever way it goes"),
    ],
    Examples =
    [
        new(Case(new() { ["eyeSpan"] = "44 in" }), new Dictionary<string, double> { ["caster"] = 1.881, ["rake"] = 1.119, ["wedgeNeeded"] = 1.119 }, 0.0005, "atan(50 / 2560) = 1.119 deg by hand", Provenance.Derived),
        new(Case(new() { ["armLength"] = "900 mm", ["pivotHeight"] = "50 mm", ["pivotSide"] = "behind" }),
            new Dictionary<string, double> { ["armTurn"] = -3.1946, ["caster"] = -1.3135 }, 0.0005, "asin(100 / 900) - asin(50 / 900) = 6.3794 - 3.1848 = 3.1946 deg by hand", Provenance.Derived),
        new(Case(new() { ["shackleChange"] = "1 in", ["eyeSpan"] = "44 in", ["shackleEnd"] = "ahead" }),
            new Dictionary<string, double> { ["shackleTurn"] = -1.302, ["caster"] = 0.579 }, 0.001, "atan(1 / 44) = 1.302 deg by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Steering that does not come back by itself is dangerous. Have caster, camber and toe measured on a rack after any change of height; local rules may ask for an inspection.",
        "A wedge that gives a front axle caster points its pinion down by as much: look at the shaft's angles together with it.",
    ],
})
{
    private const double Least = 1; // deg, common practice, no source

    private const string HowLong = "tape from the arm's pivot to the axle center", HowHigh = "tape the heights of both over level ground and take the difference",
        HowWide = "tape between both eyes along the main leaf's chord";

    public sealed record Inputs(
        [Input("front ride height", "mm", Measure = HowToMeasureLift.RideHeight)] Length FrontRideHeight,
        [Input("front ride height as built", "mm", Measure = HowToMeasureLift.Original)] Length OriginalFrontHeight,
        [Input("rear ride height", "mm", Measure = HowToMeasureLift.RideHeight)] Length RearRideHeight,
        [Input("rear ride height as built", "mm", Measure = HowToMeasureLift.Original)] Length OriginalRearHeight,
        [Input("wheelbase", "mm", MoreThan = 0, Low = 1200, High = 8000, Measure = "tape between the hub centers on both sides and take the mean")] Length Wheelbase,
        [Input("caster as built", "deg", AtLeast = -10, High = 15, Measure = "take it from the maker's handbook")] Angle? OriginalCaster,
        [Input("length of the radius arms; leave out for leaf springs", "mm", MoreThan = 0, Measure = HowLong)] Length? ArmLength,
        [Input("pivot of the arms over the axle center at the height as built", "mm", Measure = HowHigh)] Length? PivotHeight,
        [Input("side of the front axle with the arms' pivots; behind where nothing is said", OneOf = ["behind", "ahead"])] string? PivotSide,
        [Input("shackles longer than as built by", "mm", Measure = "tape the shackle between its bolts, and take the handbook's off")] Length? ShackleChange,
        [Input("leaf spring from eye to eye", "mm", MoreThan = 0, Measure = HowWide)] Length? EyeSpan,
        [Input("what guides the axle", OneOf = ["leaf", "links"], Measure = "look at it: leaf springs alone, or arms and links besides")] string? Guide,
        [Input("end of the front springs with the shackle; behind the axle where nothing is said", OneOf = ["behind", "ahead"])] string? ShackleEnd,
        [Input("wedge fitted, positive for more caster", "deg", AtLeast = -15, High = 15, Measure = "read it off the wedge, or put an angle finder on both faces")] Angle? Wedge);

    public sealed record Result(
        [Output("caster by geometry", "deg")] Angle? Caster,
        [Output("change of it against the vehicle as built, the wedge counted in", "deg")] Angle? Change,
        [Output("change of rake since it was built, positive nose down", "deg")] Angle Rake,
        [Output("turn by radius arms, positive for more caster", "deg")] Angle? ArmTurn,
        [Output("turn by longer shackles, positive for more caster", "deg")] Angle? ShackleTurn,
        [Output("wedge more that would give back the caster as built", "deg")] Angle? WedgeNeeded);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double front = (x.FrontRideHeight - x.OriginalFrontHeight).Meters, rear = (x.RearRideHeight - x.OriginalRearHeight).Meters, L = x.Wheelbase.Meters; // m
        double rake = Math.Atan((rear - front) / L) * 180 / Math.PI, wedge = x.Wedge?.Degrees ?? 0; // deg
        w.Line("rake", "atan((rear lift - front lift) / L)", $"atan(({rear} - {front}) / {L})", rake, "deg");
        double? arm = null, shackle = null; // deg
        if (x.ArmLength is { } R && x.PivotHeight is { } d)
        {
            double before = d.Meters / R.Meters, after = (d.Meters + front) / R.Meters;
            if (Math.Abs(before) > 1 || Math.Abs(after) > 1)
            {
                w.Caution("The radius arm is shorter than its pivot is high: measure arm and pivot again.");
                return null;
            }
            arm = (Math.Asin(after) - Math.Asin(before)) * 180 / Math.PI * (x.PivotSide == "ahead" ? 1 : -1);
            w.Line("arm", "asin((d + f) / R) - asin(d / R), less caster where the arms pivot behind", $"asin({after}) - asin({before})", arm.Value, "deg");
        }
        if (x.ShackleChange is { } longer && x.EyeSpan is { } span)
        {
            shackle = Math.Atan(longer.Meters / span.Meters) * 180 / Math.PI * (x.ShackleEnd == "ahead" ? -1 : 1);
            w.Line("shackle", "atan(change / eye span), less caster where the shackle is ahead", $"atan({longer.Meters} / {span.Meters})", shackle.Value, "deg");
        }
        if (Unguided(x) is { } missing)
        {
            w.Answer("caster", Verdict.Unknown, $"Not known: {missing}. Rake alone moves it by {-rake:0.0} deg.");
            return new(null, null, Angle.FromDegrees(rake), null, Of(shackle), null);
        }
        double change = -rake + (arm ?? 0) + (shackle ?? 0) + wedge; // deg
        w.Line("change", "-rake + arm + shackle + wedge", $"-({rake}) + ({arm ?? 0}) + ({shackle ?? 0}) + ({wedge})", change, "deg");
        if (x.OriginalCaster is { } built) Judge(w, built.Degrees + change, change);
        return new(x.OriginalCaster is { } c ? Angle.FromDegrees(c.Degrees + change) : null, Angle.FromDegrees(change), Angle.FromDegrees(rake), Of(arm), Of(shackle), Angle.FromDegrees(-change));
    }

    /// <summary>What is not stated of the axle's guide; null where enough is. Arms turn the axle far more than rake does: to leave them out is no answer.</summary>
    private static string? Unguided(Inputs x) => x switch
    {
        { ArmLength: not null, PivotHeight: not null } or { EyeSpan: not null } or { Guide: "leaf" } => null,
        { ArmLength: not null } => $"how high the radius arms' pivot lies over the axle ({HowHigh})",
        { PivotHeight: not null } => $"how long the radius arms are ({HowLong})",
        _ => $"what guides the front axle: length of its radius arms ({HowLong}) and height of their pivot, or its leaf springs from eye to eye ({HowWide})",
    };

    private static void Judge(Worksheet w, double caster, double change) =>
        w.AtLeast("caster", caster, Least, "deg", (caster < 0 ? $"By geometry no caster is left: the kingpins lean {-caster:0.0} deg forward, " : $"By geometry {caster:0.0} deg of caster are left, ")
            + $"{Math.Abs(change):0.0} deg {(change < 0 ? "less" : "more")} than as built."
            + (caster >= Least ? "" : change < 0 ? $" A wedge of {-change:0.0} deg more gives it back; have it measured." : " As built it had less still: have it measured before a wedge is bought."),
            "common practice, no source", beyond: Verdict.Caution);

    private static Angle? Of(double? degrees) => degrees is { } d ? Angle.FromDegrees(d) : null;

    private static Dictionary<string, string> Case(Dictionary<string, string> more) => new(more)
    {
        ["frontRideHeight"] = "200 mm", ["originalFrontHeight"] = "150 mm", ["rearRideHeight"] = "250 mm", ["originalRearHeight"] = "150 mm", ["wheelbase"] = "2560 mm", ["originalCaster"] = "3 deg",
    };
}
