using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How rolling tires, propeller shafts and axle shafts are tied to the master sheet.</summary>
/// <remarks>
/// One instance an axle, not one for every condition as well: a shaft is judged once, by the heaviest condition, so that a sheet in which nobody
/// has measured a shaft yet shows seven unknown answers an axle and a line for each thing to measure, and no more.
/// </remarks>
internal static class ShaftBindings
{
    private const string Tire = "wheel.{axle}.{side}.tire.", Axle = "axle.{axle}.", Propshaft = "axle.{axle}.propshaft.", Shaft = "axle.{axle}.shaft.";

    private static readonly (string, string)[] s_twist =
    [
        ("axleRatio", Axle + "ratio"), ("torqueCurve", "engine.torque-curve"), ("peakTorque", "engine.peak-torque"), ("gearRatios", "gearbox.*.ratio"),
        ("transferRatios", "transfer.*.ratio"), ("converterRatio", "gearbox.converter-ratio"), ("efficiency", "driveline.efficiency"), ("axleLoads", Axle + "*.load"),
        ("rollingRadius", Axle + "rolling-radius"), ("grip", "duty.grip"),
    ];

    private static readonly (string, string)[] s_tube = [("tubeDiameter", Propshaft + "tube-diameter"), ("tubeWall", Propshaft + "tube-wall")];

    public static IReadOnlyList<Binding> All { get; } = [.. RollingTires(), .. Torques(), .. Turning()];

    private static IEnumerable<Binding> RollingTires() =>
    [
        // A measured circumference is stated under the key this publishes and hides it; what is far off is then told as a difference.
        Bind("tires.rolling", ["axle", "side"], [("diameter", Tire + "diameter"), ("loadedRadius", Tire + "loaded-radius")],
            [("rollingCircumference", Tire + "rolling-circumference")], raises: []),
        Bind("tires.axle-rolling-radius", ["axle"], [("circumferences", "wheel.{axle}.*.tire.rolling-circumference")], [("rollingRadius", Axle + "rolling-radius")]),
    ];

    private static IEnumerable<Binding> Torques() =>
    [
        Bind("driveline.propshaft-torque", ["axle"], [.. s_twist, ("jointRating", Propshaft + "joint-rating")], [("torque", Propshaft + "torque")]),
        // Joints give way before tubes, and hardly a shop has the tube's papers: the stress is told, not judged.
        Bind("driveline.propshaft-shear", ["axle"], [.. s_tube, ("torque", Propshaft + "torque")], raises: []),
        Bind("driveline.axle-shaft-torque", ["axle"],
            [.. s_twist, ("shaftDiameter", Shaft + "diameter"), ("shearStrength", Shaft + "shear-strength"), ("jointRating", Shaft + "joint-rating")]),
    ];

    private static IEnumerable<Binding> Turning() =>
    [
        // What an overdrive could do at redline is told; the speed that the vehicle is built for is judged.
        Bind("driveline.propshaft-critical-speed", ["axle"],
            [.. s_tube, ("length", Propshaft + "length"), ("cruiseSpeed", "duty.cruise-speed"), ("axleRatio", Axle + "ratio"), ("rollingRadius", Axle + "rolling-radius"),
             ("redline", "engine.redline"), ("gearRatios", "gearbox.*.ratio"), ("transferRatios", "transfer.*.ratio")], raises: ["cruise"]),
        Bind("driveline.joint-fluctuation", ["axle"], [("angle", Propshaft + "transfer-angle")]),
        Bind("driveline.joint-angles", ["axle"],
            [("transferAngle", Propshaft + "transfer-angle"), ("axleAngle", Propshaft + "axle-angle"), ("yokeOffset", Propshaft + "yoke-offset")]),
    ];
}
