using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How wheel brakes, the layout of the brakes and the parking brake are tied to the master sheet.</summary>
/// <remarks>A brake factor stated by a maker hides the one worked out, and torque and parking brake then go by it.</remarks>
internal static class WheelBrakeBindings
{
    private const string Wheel = "wheel.{axle}.{side}.brake.", Axle = "axle.{axle}.brake.", Rear = "wheel.rear.*.brake.", Parking = "brakes.parking.";

    private static readonly string[] s_eachWheel = ["axle", "side"];

    private static readonly (string, string) s_kind = ("kind", Wheel + "kind"), s_drum = ("drumDiameter", Wheel + "drum-diameter"), s_radius = ("loadedRadius", "axle.{axle}.loaded-radius"),
        s_residualFront = ("residualFront", "brakes.residual.front"), s_residualRear = ("residualRear", "brakes.residual.rear");

    public static IReadOnlyList<Binding> All { get; } =
    [
        Bind("brakes.factor", s_eachWheel,
            [s_kind, ("friction", Wheel + "friction"), ("drumKind", Wheel + "drum-kind"), s_drum, ("anchorDistance", Wheel + "shoe-anchor-distance"), ("actuatorDistance", Wheel + "shoe-actuator-distance"),
             ("linkDistance", Wheel + "shoe-link-distance"), ("anchorSpread", Wheel + "shoe-anchor-spread"), ("liningStart", Wheel + "lining-start"), ("liningEnd", Wheel + "lining-end"),
             ("frictionLetters", Wheel + "friction-letters")],
            [("factor", Wheel + "factor"), ("reverseFactor", Wheel + "reverse-factor"), ("sensitivity", Wheel + "friction-sensitivity")]),
        Bind("brakes.wheel-torque", s_eachWheel,
            [s_kind, ("factor", Wheel + "factor"), ("caliper", Wheel + "caliper"), ("pistons", Wheel + "pistons"), ("pistonDiameter", Wheel + "piston-diameter"), ("caliperBore", Wheel + "caliper-bore"),
             ("rotorDiameter", Wheel + "rotor-diameter"), ("padOuter", Wheel + "pad-outer-diameter"), ("padInner", Wheel + "pad-inner-diameter"), s_drum, ("cylinderBore", Wheel + "cylinder-bore")],
            [("torque", Wheel + "torque")]),
        Bind("brakes.wheel-drag", s_eachWheel,
            [s_kind, ("axle", "{axle}"), ("releasePressure", Wheel + "release-pressure"), ("discRelease", "brakes.disc-release"), ("drumRelease", "brakes.drum-release"), s_residualFront, s_residualRear,
             ("torque", Wheel + "torque"), s_radius, ("cruiseSpeed", "duty.cruise-speed")],
            [("threshold", Wheel + "threshold")]),
        Bind("brakes.axle-force", ["axle"],
            [("torques", "wheel.{axle}.*.brake.torque"), ("thresholds", "wheel.{axle}.*.brake.threshold"), s_radius, ("sensitivities", "wheel.{axle}.*.brake.friction-sensitivity")],
            [("force", Axle + "force"), ("threshold", Axle + "threshold")]),
        Bind("brakes.layout", [],
            [("kinds", "wheel.*.*.brake.kind"), ("circuits", "brakes.circuits"), ("master", "brakes.master.kind"), ("thresholds", "wheel.*.*.brake.threshold"), s_residualFront, s_residualRear, ("metering", "brakes.metering.pressure"), ("masterFor", "brakes.master.made-for"),
             ("fluid", "brakes.fluid.grade"), ("parking", Parking + "kind")]),
        Bind("brakes.parking", ["condition"],
            [("kind", Parking + "kind"), ("total", "mass.{condition}.total"), ("centerX", "mass.{condition}.center-x"), ("height", "mass.{condition}.center-height"), ("wheelbase", "vehicle.wheelbase"),
             ("grade", "duty.parking-grade"), ("grip", "duty.grip"), ("loadedRadius", "axle.rear.loaded-radius"), ("frontRadius", "axle.front.loaded-radius"), ("axleRatio", "axle.rear.ratio"),
             ("factor", Parking + "factor"), ("drumDiameter", Parking + "drum-diameter"), ("wheelFactors", Rear + "factor"), ("wheelReverseFactors", Rear + "reverse-factor"), ("wheelDrumKinds", Rear + "drum-kind"), ("wheelDrums", Rear + "drum-diameter"),
             ("strutRatio", Parking + "strut-ratio"), ("leverRatio", Parking + "lever-ratio"), ("cableEfficiency", Parking + "cable-efficiency"), ("operation", Parking + "operation"), ("rule", "brakes.rule")],
            [("effort", "brakes.{condition}.parking-effort"), ("steepestUp", "brakes.{condition}.parking-grade-up"), ("steepestDown", "brakes.{condition}.parking-grade-down")]),
    ];
}
