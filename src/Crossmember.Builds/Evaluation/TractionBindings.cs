using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How pull, road load, speed and climbing are tied to the master sheet.</summary>
internal static class TractionBindings
{
    private const string Gears = "gearbox.*.ratio", Ranges = "transfer.*.ratio", Range = "transfer.{range}.ratio";
    private const string Cruise = "duty.cruise-speed", Grade = "duty.grade", Idle = "engine.idle-speed", Redline = "engine.redline", Mass = "mass.{condition}.total";

    private static readonly (string, string)[] s_wheels = [("axleRatio", "axle.rear.ratio"), ("rollingRadius", "axle.rear.rolling-radius")];
    private static readonly (string, string)[] s_engine = [("torqueCurve", "engine.torque-curve"), ("efficiency", "driveline.efficiency")];
    private static readonly (string, string) s_rolling = ("rollingResistance", "vehicle.rolling-resistance"), s_grip = ("grip", "duty.grip");
    private static readonly (string, string)[] s_road = [s_rolling, ("dragArea", "vehicle.drag-area"), ("airDensity", "duty.air-density")];

    public static IReadOnlyList<Binding> All { get; } = [.. InEveryGear(), .. InEveryCondition(), .. Drawn()];

    private static IEnumerable<Binding> InEveryGear() =>
    [
        // A low gear always beats the level road and a long one need not: what that means is judged at cruise.
        Bind("driveline.tractive-effort", ["gear", "range"],
            [.. s_engine, .. s_wheels, .. s_road, ("peakTorque", "engine.peak-torque"), ("gearRatio", "gearbox.{gear}.ratio"), ("transferRatio", Range),
             ("idleSpeed", Idle), ("redline", Redline), ("masses", "mass.*.total")], raises: []),
    ];

    private static IEnumerable<Binding> InEveryCondition() =>
    [
        Bind("driveline.road-load", ["condition"], [.. s_road, ("speed", Cruise), ("mass", Mass)]),
        Bind("driveline.top-speed", ["condition"],
            [.. s_engine, .. s_wheels, .. s_road, ("cruiseSpeed", Cruise), ("peakPower", "engine.peak-power"), ("gearRatios", Gears), ("transferRatios", Ranges),
             ("idleSpeed", Idle), ("redline", Redline), ("mass", Mass)]),
        Bind("driveline.cruise-pull", ["condition"],
            [.. s_engine, .. s_wheels, .. s_road, ("cruiseSpeed", Cruise), ("gearRatios", Gears), ("transferRatios", Ranges), ("mass", Mass)]),
        Bind("driveline.gradeability", ["condition"],
            [.. s_engine, .. s_wheels, s_rolling, s_grip, ("peakTorque", "engine.peak-torque"), ("gearRatios", Gears), ("transferRatios", Ranges),
             ("idleSpeed", Idle), ("redline", Redline), ("mass", Mass), ("grade", Grade)]),
        Bind("driveline.traction-limit", ["condition"],
            [s_rolling, s_grip, ("frontLoad", "axle.front.{condition}.load"), ("rearLoad", "axle.rear.{condition}.load"), ("grade", Grade),
             ("height", "mass.{condition}.center-height"), ("wheelbase", "vehicle.wheelbase")]),
    ];

    private static IEnumerable<Binding> Drawn() =>
    [
        Bind("driveline.speed-curves", ["range"], [.. s_wheels, ("gearRatios", Gears), ("transferRatio", Range), ("idleSpeed", Idle), ("redline", Redline)]),
        Bind("driveline.tractive-curves", ["condition", "range"],
            [.. s_engine, .. s_wheels, .. s_road, s_grip, ("gearRatios", Gears), ("transferRatio", Range), ("idleSpeed", Idle), ("redline", Redline),
             ("mass", Mass), ("grade", Grade)]),
    ];
}
