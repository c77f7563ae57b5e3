using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How what follows from a lift or another axle is tied to the master sheet.</summary>
/// <remarks>The working angles found here are those by geometry; the measured ones are stated and judged with the shaft. Neither hides the other.</remarks>
internal static class LiftBindings
{
    private const string Axle = "axle.{axle}.", Propshaft = "axle.{axle}.propshaft.", Hose = "axle.{axle}.hose.", Built = "original-ride-height";

    private static readonly (string, string)[] s_shaft =
    [
        ("run", Propshaft + "run"), ("outputHeight", Propshaft + "output-height"), ("pinionHeight", Propshaft + "pinion-height"), ("outputSlope", Propshaft + "output-slope"),
        ("pinionAngle", Axle + "pinion-angle"),
    ];

    private static readonly (string, string) s_heights = ("rideHeights", Axle + "*.ride-height"), s_bump = ("bumpTravel", Axle + "*.bump-travel"),
        s_full = ("fullBumpTravel", Axle + "*.full-bump-travel"),
        s_droop = ("droopTravel", Axle + "*.droop-travel");

    public static IReadOnlyList<Binding> All { get; } =
    [
        // The steepness of joints is judged where the working angles were measured; here it is told beside what a wedge would do.
        Bind("lift.pinion-angle", ["axle", "condition"],
            [.. s_shaft, ("rideHeight", Axle + "{condition}.ride-height"), ("originalRideHeight", Axle + Built), ("joints", Propshaft + "joints")], raises: ["difference"]),
        Bind("lift.caster-change", ["condition"],
            [("frontRideHeight", "axle.front.{condition}.ride-height"), ("originalFrontHeight", "axle.front." + Built), ("rearRideHeight", "axle.rear.{condition}.ride-height"),
             ("originalRearHeight", "axle.rear." + Built), ("wheelbase", "vehicle.wheelbase"), ("originalCaster", "axle.front.original-caster"),
             ("armLength", "axle.front.radius-arm.length"), ("pivotHeight", "axle.front.radius-arm.pivot-height"), ("pivotSide", "axle.front.radius-arm.side"),
             ("shackleChange", "axle.front.shackle.change"), ("eyeSpan", "leaf.front.eye-span"), ("guide", "axle.front.guide.kind"), ("shackleEnd", "axle.front.shackle.end"), ("wedge", "axle.front.wedge")]),
        Bind("lift.trackbar-shift", ["axle"],
            [s_heights, s_bump, s_full, s_droop, ("length", Axle + "trackbar.length"), ("leafSpan", "leaf.{axle}.eye-span"), ("endHeight", Axle + "trackbar.end-height"), ("originalRideHeight", Axle + Built)]),
        Bind("lift.shaft-travel", ["axle"],
            [.. s_shaft, s_heights, s_bump, s_full, s_droop, ("tapedHeight", Propshaft + "taped-height"), ("arcRadius", Propshaft + "arc-radius"), ("arcHeight", Propshaft + "arc-height"),
             ("arcSide", Propshaft + "arc-side"), ("slipIn", Propshaft + "slip-in"), ("engaged", Propshaft + "splines-engaged"), ("splineDiameter", Propshaft + "spline-diameter"),
             ("jointLimit", Propshaft + "joint-limit")]),
        Bind("lift.hose-length", ["axle"],
            [s_heights, s_droop, ("frameHeight", Hose + "frame-height"), ("axleHeight", Hose + "axle-height"), ("along", Hose + "along"), ("across", Hose + "across"),
             ("knuckleAlong", Hose + "knuckle-along"), ("knuckleAcross", Hose + "knuckle-across"), ("lock", Hose + "lock"), ("length", Hose + "length")]),
    ];
}
