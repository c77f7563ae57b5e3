using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How pedal, booster, master cylinder, fluid and readings are tied to the master sheet. All other brake numbers read the six keys of the pedal line only.</summary>
internal static class PedalBindings
{
    private const string Pedal = "brakes.pedal.", Master = "brakes.master.", Booster = "brakes.booster.", Gauge = "brakes.gauge.", Test = "brakes.test.", Wheel = "wheel.{axle}.{side}.brake.";

    private static readonly (string, string)
        s_ratio = ("pedalRatio", Pedal + "ratio"), s_hard = ("hardPressure", "duty.hard-pressure"), s_foot = ("pedalForce", "duty.pedal-force"), s_altitude = ("altitude", "duty.altitude");

    private static readonly (string, string)[] s_master =
    [
        ("masterKind", Master + "kind"), ("masterBore", Master + "bore"), ("largeBore", Master + "large-bore"), ("frontBore", Master + "front-bore"), ("rearBore", Master + "rear-bore"),
        ("frontArm", Master + "bar-front-distance"), ("rearArm", Master + "bar-rear-distance"),
    ];

    private static readonly (string, string)[] s_booster =
    [
        ("boosterKind", Booster + "kind"), ("diaphragm", Booster + "diaphragm-diameter"), ("secondDiaphragm", Booster + "second-diaphragm-diameter"), ("rod", Booster + "rod-diameter"),
        ("cutIn", Booster + "cut-in"), ("jumpIn", Booster + "jump-in"), ("gain", Booster + "gain"),
    ];

    private static readonly (string, string)[] s_line =
    [
        ("cutIn", Pedal + "cut-in"), ("jumpIn", Pedal + "jump-in"), ("knee", Pedal + "knee"), ("kneePressure", Pedal + "knee-pressure"), ("plainPressure", Pedal + "plain-pressure"), ("deadLoss", Pedal + "dead-loss"),
    ];

    public static IReadOnlyList<Binding> All { get; } =
    [
        // Both efficiencies come in as one, and what the booster adds as it arrives at the piston: the pressure told is that of the pedal line.
        Bind("brakes.line-pressure", [],
            [s_foot, s_ratio, ("pedalEfficiency", Pedal + "whole-efficiency"), ("boosterForce", Booster + "force"), ("masterBore", Master + "effective-bore")], [("pressure", "brakes.pressure")]),
        Bind("brakes.pedal-line", [],
            [s_ratio, ("pedalEfficiency", Pedal + "efficiency"), ("masterEfficiency", Master + "efficiency"), .. s_master, .. s_booster, ("boosterEfficiency", Booster + "efficiency"),
             ("returnSpring", Booster + "return-spring"), ("vacuum", Booster + "vacuum"), ("vacuumAltitude", Booster + "vacuum-altitude"), ("dutyAltitude", "duty.altitude"),
             ("boosterPressure", Booster + "pressure"), ("boosterPiston", Booster + "piston-diameter"), s_hard, s_foot],
            [.. s_line, ("boosterForce", Booster + "force"), ("rodForce", Master + "force"), ("wholeEfficiency", Pedal + "whole-efficiency"), ("effectiveBore", Master + "effective-bore"),
             ("rearShare", Pedal + "rear-share"), ("vacuumThere", Booster + "vacuum-there")]),
        Bind("brakes.booster-reserve", [],
            [s_ratio, ("pedalEfficiency", Pedal + "efficiency"), .. s_booster, ("efficiency", Booster + "efficiency"), ("vacuum", Booster + "vacuum-there"), s_altitude,
             ("shellVolume", Booster + "shell-volume"), ("reservoirVolume", Booster + "reservoir-volume"), ("stroke", Pedal + "light-stroke"), ("countedStrokes", Booster + "counted-strokes")]),
        Bind("brakes.bias-bar", [],
            [("barForce", Master + "force"), ("frontArm", Master + "bar-front-distance"), ("rearArm", Master + "bar-rear-distance"), ("frontBore", Master + "front-bore"), ("rearBore", Master + "rear-bore"),
             ("efficiency", Master + "efficiency"), ("wantedFrontShare", Master + "wanted-front-share")]),
        Bind("brakes.wheel-volume", ["axle", "side"],
            [("kind", Wheel + "kind"), ("pistonDiameter", Wheel + "piston-diameter"), ("pistons", Wheel + "pistons"), ("padClearance", Wheel + "pad-clearance"), ("knockBack", Wheel + "knock-back"),
             ("cylinderBore", Wheel + "cylinder-bore"), ("cylinders", Wheel + "cylinders"), ("drumKind", Wheel + "drum-kind"), ("shoeClearance", Wheel + "shoe-clearance"), ("give", Wheel + "give")],
            [("takeUp", Wheel + "take-up-volume"), ("full", Wheel + "full-volume")]),
        Bind("brakes.pedal-travel", [],
            [s_ratio, .. s_master, ("circuits", "brakes.circuits"), ("frontTakeUp", "wheel.front.*.brake.take-up-volume"), ("frontFull", "wheel.front.*.brake.full-volume"),
             ("rearTakeUp", "wheel.rear.*.brake.take-up-volume"), ("rearFull", "wheel.rear.*.brake.full-volume"), ("frontHoseLength", "axle.front.hose.length"), ("rearHoseLength", "axle.rear.hose.length"),
             ("frontHoses", "axle.front.brake.hose-count"), ("rearHoses", "axle.rear.brake.hose-count"), ("hoseBore", "brakes.hose-bore"), ("hoseGrade", "brakes.hose-grade"),
             ("frontSwell", "axle.front.brake.hose-expansion"), ("rearSwell", "axle.rear.brake.hose-expansion"), ("fluidVolume", "brakes.fluid.volume"), ("stiffness", "brakes.fluid.stiffness"),
             ("takeUp", Master + "take-up"), ("freePlay", Pedal + "free-play"), ("floorTravel", Pedal + "floor-travel"), ("masterStroke", Master + "stroke"), ("frontStroke", Master + "front-stroke"),
             ("rearStroke", Master + "rear-stroke"),
             ("frontThresholds", "wheel.front.*.brake.threshold"), ("rearThresholds", "wheel.rear.*.brake.threshold"), s_hard, .. s_line],
            [("travel", Pedal + "travel"), ("stroke", Pedal + "stroke"), ("reserveStroke", Pedal + "light-stroke"), ("floorPressureFrontLost", Pedal + "front-lost-pressure"),
             ("floorPressureRearLost", Pedal + "rear-lost-pressure")]),
        // The valve as it stands in the shop: bleeders are read on the empty vehicle.
        Bind("brakes.gauge-check", [],
            [.. s_line, ("rearShare", Pedal + "rear-share"), ("frontForce", "axle.front.brake.force"), ("frontThreshold", "axle.front.brake.threshold"), ("rearForce", "axle.rear.brake.force"),
             ("rearThreshold", "axle.rear.brake.threshold"), ("valveKind", "brakes.valve.kind"), ("valveKnee", "brakes.valve.knee"), ("valveSlope", "brakes.valve.slope"), ("metering", "brakes.metering.pressure"),
             ("heldFront", "brakes.residual.front"), ("heldRear", "brakes.residual.rear"), ("gaugeFront", Gauge + "front"), ("gaugeRear", Gauge + "rear"), ("gaugeDeadFront", Gauge + "dead-front"),
             ("gaugeDeadRear", Gauge + "dead-rear"), ("gaugeDeceleration", Gauge + "deceleration"), ("mass", Gauge + "mass"), ("error", Gauge + "error"), ("decelerationError", Gauge + "deceleration-error"),
             ("pedalEfficiency", Pedal + "efficiency"), s_ratio, ("bore", Master + "effective-bore"), ("vacuum", Booster + "vacuum"), ("lineVacuum", Booster + "vacuum-there")]),
        Bind("brakes.road-test", [],
            [("speed", Test + "speed"), ("beginDistance", Test + "begin-distance"), ("endDistance", Test + "end-distance"), ("wholeDistance", Test + "distance"), ("delay", Test + "delay"), ("buildUp", Test + "build-up")],
            // Before the vehicle is together there is no stop to ask for; the gauge sheet asks for readings once.
            [("deceleration", Test + "deceleration")], raises: []),
    ];
}
