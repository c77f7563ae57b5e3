using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>How the shipped calculations are tied to the master sheet.</summary>
public static class ShippedBindings
{
    private const string Cruise = "duty.cruise-speed", RearTire = "axle.rear.tire-diameter", RearRatio = "axle.rear.ratio";
    private const string Gear = "gearbox.{gear}.ratio", Range = "transfer.{range}.ratio", Gears = "gearbox.*.ratio", Ranges = "transfer.*.ratio";
    private const string Total = "mass.{condition}.total", MomentX = "mass.{condition}.moment-x", MomentY = "mass.{condition}.moment-y", Wheelbase = "vehicle.wheelbase";
    private const string Wheel = "wheel.{axle}.{side}.";

    public static IReadOnlyList<Binding> All { get; } =
    [
        .. Tires(), .. Driveline(), .. Mass(), .. ShaftBindings.All, .. TractionBindings.All, .. StabilityBindings.All, .. SpringBindings.All, .. SteeringBindings.All, .. RecoveryBindings.All, .. LiftBindings.All,
        .. WheelBrakeBindings.All, .. PedalBindings.All, .. BalanceBindings.All, .. HeatBindings.All,
    ];

    private static IEnumerable<Binding> Tires() =>
    [
        Bind("tires.dimensions", ["axle", "side"], [("size", Wheel + "tire.size")], [("diameter", Wheel + "tire.diameter"), ("width", Wheel + "tire.width")]),
        Bind("tires.service-description", ["axle", "side"],
            [("serviceDescription", Wheel + "tire.service-description"), ("cruiseSpeed", Cruise)], [("loadRating", Wheel + "tire.load-rating")]),
        Bind("tires.axle-diameter", ["axle"], [("diameters", "wheel.{axle}.*.tire.diameter")], [("diameter", "axle.{axle}.tire-diameter")]),
        Bind("tires.load", ["axle", "side", "condition"], [("load", Wheel + "{condition}.load"), ("rating", Wheel + "tire.load-rating")]),
    ];

    private static IEnumerable<Binding> Driveline() =>
    [
        Bind("driveline.overall-ratio", ["gear", "range"], [("gearRatio", Gear), ("transferRatio", Range), ("axleRatio", RearRatio)]),
        Bind("driveline.crawl-ratio", [],
            [("gearRatios", Gears), ("transferRatios", Ranges), ("axleRatio", RearRatio), ("idleSpeed", "engine.idle-speed"), ("tireDiameter", RearTire)]),
        // In a sheet the gears are looked at for their speeds; the redline is judged once, at cruise.
        Bind("driveline.engine-speed", ["gear", "range"],
            [("roadSpeed", Cruise), ("tireDiameter", RearTire), ("axleRatio", RearRatio), ("gearRatio", Gear), ("transferRatio", Range)], raises: []),
        Bind("driveline.road-speed", ["gear", "range"],
            [("engineSpeed", "engine.redline"), ("tireDiameter", RearTire), ("axleRatio", RearRatio), ("gearRatio", Gear), ("transferRatio", Range)]),
        Bind("driveline.cruise", [],
            [("cruiseSpeed", Cruise), ("tireDiameter", RearTire), ("axleRatio", RearRatio), ("gearRatios", Gears), ("transferRatios", Ranges), ("redline", "engine.redline")]),
        Bind("driveline.speedometer", [],
            [("tireDiameter", RearTire), ("axleRatio", RearRatio), ("speedometerTireDiameter", "speedometer.tire-diameter"),
             ("speedometerAxleRatio", "speedometer.axle-ratio"), ("indicatedSpeed", "speedometer.check-speed")]),
        Bind("driveline.restoring-ratio", [],
            [("tireDiameter", RearTire), ("originalTireDiameter", "vehicle.original.tire-diameter"),
             ("originalAxleRatio", "vehicle.original.axle-ratio"), ("currentAxleRatio", RearRatio)]),
        Bind("driveline.ratio-mismatch", [],
            [("frontRatio", "axle.front.ratio"), ("rearRatio", RearRatio), ("frontTireDiameter", "axle.front.tire-diameter"), ("rearTireDiameter", RearTire)]),
    ];

    private static IEnumerable<Binding> Mass() =>
    [
        Bind("mass.axle-load", ["axle", "condition"],
            [("total", Total), ("momentX", MomentX), ("wheelbase", Wheelbase), ("axle", "{axle}"), ("rating", "axle.{axle}.rating")],
            [("load", "axle.{axle}.{condition}.load")]),
        Bind("mass.wheel-load", ["axle", "side", "condition"],
            [("total", Total), ("momentX", MomentX), ("momentY", MomentY), ("wheelbase", Wheelbase), ("track", "axle.{axle}.track"), ("axle", "{axle}"), ("side", "{side}")],
            [("load", Wheel + "{condition}.load")]),
        Bind("mass.center-of-gravity", ["condition"],
            [("total", Total), ("momentX", MomentX), ("momentY", MomentY), ("momentZ", "mass.{condition}.moment-z"), ("wheelbase", Wheelbase),
             ("frontDatumHeight", "axle.front.{condition}.datum-height"), ("rearDatumHeight", "axle.rear.{condition}.datum-height")],
            [("centerX", "mass.{condition}.center-x"), ("centerY", "mass.{condition}.center-y"), ("centerZ", "mass.{condition}.center-z"), ("height", "mass.{condition}.center-height")]),
        // What is wrong with a reading is said once, of the weighing itself.
        Bind("mass.corner-weights", [],
            [("frontLeft", "weighing.front.left.reading"), ("frontRight", "weighing.front.right.reading"), ("rearLeft", "weighing.rear.left.reading"),
             ("rearRight", "weighing.rear.right.reading"), ("wheelbase", "weighing.wheelbase"), ("frontTrack", "weighing.front.track"), ("rearTrack", "weighing.rear.track")], raises: []),
        Bind("mass.center-of-gravity-height", [],
            [("wheelbase", "weighing.wheelbase"), ("mass", "weighing.total"), ("frontLevel", "weighing.scale-axle.level"), ("frontRaised", "weighing.scale-axle.raised"),
             ("raise", "weighing.lifted-axle.lift"), ("wheelRadiusFront", "weighing.scale-axle.wheel-radius"), ("wheelRadiusRear", "weighing.lifted-axle.wheel-radius"),
             ("readingError", "weighing.reading-error")], raises: []),
    ];

    internal static Binding Bind(
        string calculation, string[] forEach, (string Input, string Pattern)[] inputs, (string Output, string Pattern)[]? publishes = null, string[]? raises = null) =>
        new(CalculationList.Find(calculation) ?? throw new InvalidOperationException($"there is no calculation {calculation}"), forEach,
            inputs.ToDictionary(i => i.Input, i => i.Pattern), (publishes ?? []).ToDictionary(p => p.Output, p => p.Pattern), raises);
}
