using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How turning, effort, linkage and clearance of the steering are tied to the master sheet.</summary>
/// <remarks>
/// The points of the linkage are measured once, at one ride height; what depends on how the vehicle stands runs over the conditions, whose ride height the springs tell.
/// </remarks>
internal static class SteeringBindings
{
    private const string Lock = "steering.lock.", Pitman = "steering.pitman.", Arm = "steering.arm.", Survey = "steering.survey.", Box = "steering.box.", Pump = "steering.pump.";
    private const string Front = "axle.front.", Condition = "axle.front.{condition}.", Guide = "axle.front.guide.";

    private static readonly (string, string) s_kingpins = ("kingpinDistance", "steering.kingpin-distance"), s_wheelbase = ("wheelbase", "vehicle.wheelbase"),
        s_assist = ("assistFactor", "steering.assist-factor"), s_measured = ("pointsRideHeight", "steering.points.ride-height"), s_ride = ("rideHeight", Condition + "ride-height"),
        s_bump = ("bumpTravel", Condition + "bump-travel"), s_full = ("fullBumpTravel", Condition + "full-bump-travel"), s_inner = ("innerAngles", Lock + "*.inner-angle"), s_outer = ("outerAngles", Lock + "*.outer-angle");

    private static readonly (string, string)[] s_arms = [("boxRatio", Box + "ratio"), ("pitmanLength", Pitman + "length"), ("armLength", Arm + "length")];
    private static readonly (string, string)[] s_lean = [("caster", Front + "caster"), ("inclination", "steering.kingpin-inclination")];

    private static readonly (string, string)[] s_balls =
    [
        ("pitmanX", Pitman + "end-x"), ("pitmanY", Pitman + "end-y"), ("pitmanZ", Pitman + "end-z"), ("armX", Arm + "ball-x"), ("armY", Arm + "ball-y"), ("armZ", Arm + "ball-z"), s_measured,
    ];

    public static IReadOnlyList<Binding> All { get; } = [.. Turning(), .. Effort(), .. Linkage(), .. Wheels()];

    private static IEnumerable<Binding> Turning() =>
    [
        Bind("steering.ackermann", ["side"], [s_kingpins, s_wheelbase, ("innerAngle", Lock + "{side}.inner-angle"), ("outerAngle", Lock + "{side}.outer-angle")]),
        Bind("steering.turning-circle", ["side"],
            [s_kingpins, s_wheelbase, ("innerAngle", Lock + "{side}.inner-angle"), ("outerAngle", Lock + "{side}.outer-angle"), ("scrub", "steering.scrub"),
             ("overhang", "vehicle.front-corner.ahead"), ("cornerWidth", "vehicle.front-corner.width")]),
        Bind("steering.ratio", [], [("turns", "steering.turns"), s_inner, s_outer, .. s_arms], [("ratio", "steering.ratio")]),
    ];

    private static IEnumerable<Binding> Effort() =>
    [
        Bind("steering.parking-effort", ["condition"],
            [("loads", "wheel.front.*.{condition}.load"), ("pressure", Front + "tire-pressure"), ("grip", "duty.parking-grip")], [("torque", "steering.{condition}.kingpin-torque")]),
        Bind("steering.hand-effort", ["condition"],
            [("kingpinTorque", "steering.{condition}.kingpin-torque"), ("ratio", "steering.ratio"), ("efficiency", "steering.efficiency"), ("rimDiameter", "steering.wheel-diameter"), s_assist]),
        // Judged once, by the heaviest condition; rim speed, leak and efficiencies of the pump keep their usual figures.
        Bind("steering.pump-demand", [],
            [s_assist, ("kingpinTorques", "steering.*.kingpin-torque"), .. s_arms, ("pistonBore", Box + "piston-bore"), ("pistonLead", Box + "piston-lead"),
             ("displacement", Pump + "displacement"), ("driveRatio", Pump + "drive-ratio"), ("idleSpeed", "engine.idle-speed"), ("flowLimit", Pump + "flow-limit"),
             ("reliefPressure", Pump + "relief-pressure")]),
    ];

    private static IEnumerable<Binding> Linkage() =>
    [
        Bind("steering.drag-link-angle", [], [.. s_balls, ("rideHeights", "axle.front.*.ride-height")]),
        Bind("steering.bump-steer", ["condition"],
            [.. s_balls, s_kingpins, .. s_lean, s_ride, s_bump, s_full, ("droopTravel", Condition + "droop-travel"), ("guideKind", Guide + "kind"), ("guideX", Guide + "fixed-x"),
             ("guideRise", Guide + "fixed-rise"), ("barLength", Front + "trackbar.length"), ("barEndHeight", Front + "trackbar.end-height"),
             ("originalRideHeight", Front + "original-ride-height"), ("barFrameSide", Front + "trackbar.frame-side")]),
        Bind("steering.linkage-travel", [],
            [.. s_balls, s_kingpins, .. s_lean, s_wheelbase, s_inner, s_outer, ("pitmanShaft", Pitman + "shaft"), ("pivotX", Pitman + "pivot-x"), ("pivotY", Pitman + "pivot-y"),
             ("pivotZ", Pitman + "pivot-z"), ("tieRodX", "steering.tie-rod.x"), ("tieRodZ", "steering.tie-rod.z"), ("tieRodLength", "steering.tie-rod.length"),
             ("boxTurns", Box + "turns"), ("boxRatio", Box + "ratio")],
            [("pitmanLength", Pitman + "length"), ("armLength", Arm + "length")]),
    ];

    private static IEnumerable<Binding> Wheels() =>
    [
        Bind("steering.caster-trail", [],
            [("caster", Front + "caster"), ("loadedRadius", Front + "loaded-radius"), ("rollingRadius", Front + "rolling-radius"), ("offset", "steering.kingpin-offset"), s_assist]),
        Bind("steering.toe", [],
            [("toe", Front + "toe"), ("measuredDiameter", Front + "toe-diameter"), ("fittedDiameter", Front + "tire-diameter"), ("wantedToe", Front + "wanted-toe"),
             ("wantedDiameter", "vehicle.original.tire-diameter"), ("tolerance", Front + "toe-tolerance")]),
        Bind("steering.clearance", [],
            [("surveyDiameter", Survey + "tire-diameter"), ("surveyWidth", Survey + "tire-width"), ("surveyOffset", Survey + "offset"), ("fittedDiameter", Front + "tire-diameter"),
             ("widths", "wheel.front.*.tire.width"), ("offsets", "wheel.front.*.offset"), s_inner, ("lockGap", Survey + "lock-gap"), ("fenderGap", Survey + "fender-gap"),
             ("linkageGap", Survey + "linkage-gap"), ("linkageShare", Survey + "linkage-share"), ("surveyRideHeight", "steering.points.ride-height"), ("rideHeights", "axle.front.*.ride-height"),
             ("bumpTravels", "axle.front.*.bump-travel"), ("fullBumpTravels", "axle.front.*.full-bump-travel")]),
    ];
}
