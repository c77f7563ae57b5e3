using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How the heat of brakes is tied to the master sheet: what an axle's iron holds once, drives and stops in every loading condition.</summary>
internal static class HeatBindings
{
    private const string Wheel = "wheel.{axle}.*.brake.", Axle = "axle.{axle}.brake.", Every = "axle.*.brake.", Front = "wheel.front.*.brake.", Rear = "wheel.rear.*.brake.", Pedal = "brakes.pedal.";

    private static readonly string[] s_axles = ["axle", "condition"];

    private static readonly (string, string)[] s_rig =
    [
        ("mass", "mass.{condition}.total"), ("forces", Every + "force"), ("thresholds", Every + "threshold"), ("valve", "brakes.valve.kind"), ("valveKnee", "brakes.{condition}.valve-knee"),
        ("valveSlope", "brakes.valve.slope"),
        ("metering", "brakes.metering.pressure"), ("rearShare", Pedal + "rear-share"),
    ];

    private static readonly (string, string)[] s_iron = [("heatMass", Axle + "heat-mass"), ("rotorShare", Axle + "rotor-share")];
    private static readonly (string, string)[] s_air = [("kind", Wheel + "kind"), ("cooling", Axle + "cooling"), ("coolingArea", Axle + "cooling-area"), ("lining", Wheel + "lining")];
    private static readonly (string, string)[] s_weather = [("startTemperature", "duty.brake-temperature"), ("airTemperature", "duty.air-temperature")];
    private static readonly (string, string)[] s_road =
        [("rollingResistance", "vehicle.rolling-resistance"), ("dragArea", "vehicle.drag-area"), ("airDensity", "duty.air-density"), ("enginePower", "duty.descent.engine-power")];

    private static readonly (string, string)[] s_hill = [("grade", "duty.descent.grade"), ("length", "duty.descent.length"), ("speed", "duty.descent.speed")];
    private static readonly (string, string) s_braking = ("deceleration", "duty.braking");

    public static IReadOnlyList<Binding> All { get; } =
    [
        Bind("brakes.heat-store", ["axle"],
            [("kind", Wheel + "kind"), ("rotorDiameter", Wheel + "rotor-diameter"), ("rotorThickness", Wheel + "rotor-thickness"), ("rotorVented", Wheel + "rotor-vented"),
             ("padOuterDiameter", Wheel + "pad-outer-diameter"), ("padInnerDiameter", Wheel + "pad-inner-diameter"), ("padArea", Wheel + "pad-area"), ("rotorMass", Wheel + "rotor-mass"),
             ("drumDiameter", Wheel + "drum-diameter"), ("liningWidth", Wheel + "lining-width"), ("drumMass", Wheel + "drum-mass"), ("coolingTime", Wheel + "cooling-time")],
            [("mass", Axle + "heat-mass"), ("sweptArea", Axle + "swept-area"), ("depth", Axle + "heat-depth"), ("liningArea", Axle + "lining-area"), ("rotorShare", Axle + "rotor-share"),
             ("cooling", Axle + "cooling"), ("coolingArea", Axle + "cooling-area")]),
        Bind("brakes.stop-heat", s_axles,
            [.. s_rig, ("axle", "{axle}"), s_braking, ("speed", "duty.stop-speed"), .. s_iron, ("sweptArea", Axle + "swept-area"), ("depth", Axle + "heat-depth")]),
        Bind("brakes.repeated-stops", s_axles,
            [.. s_rig, ("axle", "{axle}"), s_braking, .. s_iron, .. s_air, .. s_weather, ("from", "duty.stops.from"), ("to", "duty.stops.to"), ("count", "duty.stops.count"),
             ("interval", "duty.stops.interval")]),
        Bind("brakes.descent", s_axles, [.. s_rig, ("axle", "{axle}"), .. s_hill, .. s_road, .. s_iron, .. s_air, .. s_weather]),
        Bind("brakes.drive-heat", ["condition"], [.. s_rig, .. s_road, .. s_hill, .. s_weather, .. OfDrive()],
            [("frontHotShare", "axle.front.{condition}.brake-hot-share"), ("rearHotShare", "axle.rear.{condition}.brake-hot-share")]),
    ];

    private static (string, string)[] OfDrive() =>
    [
        s_braking, ("frontKind", Front + "kind"), ("rearKind", Rear + "kind"), ("heatMasses", Every + "heat-mass"), ("rotorShares", Every + "rotor-share"), ("cooling", Every + "cooling"),
        ("coolingAreas", Every + "cooling-area"), ("liningAreas", Every + "lining-area"), ("frontLetters", Front + "friction-letters"), ("rearLetters", Rear + "friction-letters"),
        ("frontSensitivity", Front + "friction-sensitivity"), ("rearSensitivity", Rear + "friction-sensitivity"), ("frontLining", Front + "lining"), ("rearLining", Rear + "lining"),
        ("speedProfile", "duty.profile.speed"), ("heightProfile", "duty.profile.height"), ("stopsCount", "duty.stops.count"), ("stopsFrom", "duty.stops.from"), ("stopsTo", "duty.stops.to"),
        ("interval", "duty.stops.interval"), ("fluidGrade", "brakes.fluid.grade"), ("fluidState", "brakes.fluid.state"), ("centerX", "mass.{condition}.center-x"),
        ("centerHeight", "mass.{condition}.center-height"), ("wheelbase", "vehicle.wheelbase"), ("grip", "duty.grip"), ("cutIn", Pedal + "cut-in"), ("jumpIn", Pedal + "jump-in"),
        ("knee", Pedal + "knee"), ("kneePressure", Pedal + "knee-pressure"), ("plainPressure", Pedal + "plain-pressure"), ("deadLoss", Pedal + "dead-loss"),
    ];
}
