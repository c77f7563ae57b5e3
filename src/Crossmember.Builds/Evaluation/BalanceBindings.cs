using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How balance, lock order, stopping and failures of the brakes are tied to the master sheet, in every loading condition.</summary>
internal static class BalanceBindings
{
    private const string Valve = "brakes.valve.", Pedal = "brakes.pedal.", ConditionKnee = "brakes.{condition}.valve-knee";

    private static readonly string[] s_each = ["condition"];

    private static readonly (string, string)[] s_axles =
    [
        ("frontForce", "axle.front.brake.force"), ("frontThreshold", "axle.front.brake.threshold"), ("rearForce", "axle.rear.brake.force"), ("rearThreshold", "axle.rear.brake.threshold"),
        ("metering", "brakes.metering.pressure"), ("wheelbase", "vehicle.wheelbase"), ("valve", Valve + "kind"), ("valveSlope", Valve + "slope"),
        ("rearShare", Pedal + "rear-share"),
    ];

    private static readonly (string, string)[] s_rig =
        [.. s_axles, ("valveKnee", ConditionKnee), ("total", "mass.{condition}.total"), ("centerX", "mass.{condition}.center-x"), ("height", "mass.{condition}.center-height")];

    private static readonly (string, string)[] s_pedal =
    [
        ("cutIn", Pedal + "cut-in"), ("jumpIn", Pedal + "jump-in"), ("knee", Pedal + "knee"), ("kneePressure", Pedal + "knee-pressure"), ("plainPressure", Pedal + "plain-pressure"),
        ("deadLoss", Pedal + "dead-loss"),
    ];

    private static readonly (string, string)[] s_lost =
    [
        ("circuits", "brakes.circuits"), ("bypass", Valve + "bypass"), ("masterKind", "brakes.master.kind"), ("frontLostPressure", Pedal + "front-lost-pressure"), ("rearLostPressure", Pedal + "rear-lost-pressure"),
    ];

    private static readonly (string, string) s_rule = ("rule", "brakes.rule"), s_grip = ("grip", "duty.grip"), s_buildUp = ("buildUp", "duty.brake-build-up");

    public static IReadOnlyList<Binding> All { get; } =
    [
        Bind("brakes.valve-knee", s_each,
            [("kind", Valve + "kind"), ("knee", Valve + "knee"), ("heavyKnee", Valve + "heavy-knee"), ("lightLoad", Valve + "light-load"), ("heavyLoad", Valve + "heavy-load"),
             ("rearLoad", "axle.rear.{condition}.load")],
            [("knee", ConditionKnee)]),
        Bind("brakes.distribution", s_each, [.. s_rig, s_rule, s_grip], [("crossover", "brakes.{condition}.crossover")]),
        Bind("brakes.adhesion", s_each, [.. s_rig, s_rule]),
        Bind("brakes.lock-order", s_each, [.. s_rig, .. s_pedal, s_rule, s_grip]),
        Bind("brakes.stop", s_each, [.. s_rig, .. s_pedal, s_rule, s_grip, s_buildUp, ("braking", "duty.braking"), .. s_lost]),
        // What a burst hose takes is told of each end already: raised once.
        Bind("brakes.failure", s_each, [.. s_rig, .. s_pedal, s_rule, s_grip, .. s_lost], raises: ["booster-dead", "front-lost", "rear-lost"]),
        Bind("brakes.best-valve", [],
            [.. s_axles, ("totals", "mass.*.total"), ("centersX", "mass.*.center-x"), ("heights", "mass.*.center-height"), ("fittedKnees", "brakes.*.valve-knee")],
            [("knee", "brakes.best-valve.knee"), ("slope", "brakes.best-valve.slope")]),
    ];
}
