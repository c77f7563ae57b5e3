using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How springs, ride height, ride and roll are tied to the master sheet.</summary>
/// <remarks>
/// The sets leaf, coil and torsion have members named by axle: what is not fitted has no instance and asks nothing. An axle reads its own member by name,
/// so that whatever carries it gives one rate at the wheel.
/// </remarks>
internal static class SpringBindings
{
    private const string Axle = "axle.{axle}.", Here = "axle.{axle}.{condition}.", Spring = "axle.{axle}.spring.", Leaf = "leaf.{leaf}.", Coil = "coil.{coil}.",
        Torsion = "torsion.{torsion}.", WheelRate = "axle.{axle}.wheel-rate", Unsprung = "axle.{axle}.unsprung-mass", Ratio = "axle.{axle}.spring.motion-ratio",
        Original = "axle.{axle}.original-ride-height", Load = "axle.{axle}.{condition}.load", Radius = "axle.{axle}.loaded-radius",
        Carrying = "axle.{axle}.{condition}.carrying-rate", Relief = "axle.{axle}.{condition}.spring-relief";

    private static readonly (string, string)[] s_helper = [("helperRate", "axle.{axle}.helper.rate"), ("helperClearance", "axle.{axle}.helper.clearance")];

    public static IReadOnlyList<Binding> All { get; } = [.. Springs(), .. Axles(), .. Standing(), .. Together()];

    private static IEnumerable<Binding> Springs() =>
    [
        Bind("springs.leaf-pack", ["leaf"],
            [("eyeSpan", Leaf + "eye-span"), ("clampLength", Leaf + "clamp-length"), ("leaves", Leaf + "leaves"), ("fullLength", Leaf + "full-length"), ("width", Leaf + "width"),
             ("thickness", Leaf + "thickness"), ("nipped", Leaf + "nipped"), ("stressLimit", Leaf + "stress-limit")], [("rate", Leaf + "rate"), ("loadAtLimit", Leaf + "load-at-limit")],
            raises: ["dimensions"]),
        Bind("springs.shackle", ["leaf"],
            [("rate", Leaf + "rate"), ("length", Leaf + "eye-span"), ("freeArch", Leaf + "free-arch"), ("load", Leaf + "shackle-load"), ("shackleAngle", Leaf + "shackle-angle"),
             ("shackleLength", Leaf + "shackle-length")], [("installedRate", Leaf + "installed-rate")]),
        Bind("springs.coil", ["coil"],
            [("wire", Coil + "wire"), ("outsideDiameter", Coil + "outside-diameter"), ("turns", Coil + "turns"), ("ends", Coil + "ends"), ("freeLength", Coil + "free-length"),
             ("stressLimit", Coil + "stress-limit"), ("axleLoads", "axle.{coil}.*.load"), ("unsprungMass", "axle.{coil}.unsprung-mass"),
             ("motionRatio", "axle.{coil}.spring.motion-ratio")], [("rate", Coil + "rate")]),
        Bind("springs.torsion-bar", ["torsion"],
            [("barLength", Torsion + "bar-length"), ("barDiameter", Torsion + "bar-diameter"), ("armLength", Torsion + "arm-length"), ("armAngle", Torsion + "arm-angle"),
             ("load", Torsion + "load"), ("stressLimit", Torsion + "stress-limit")], [("rate", Torsion + "rate")]),
    ];

    private static IEnumerable<Binding> Axles() =>
    [
        // Few weigh twice: what contradicts itself there is told with the rate at the wheel, and its absence asks nothing.
        Bind("springs.rate-from-heights", ["axle"],
            [("lightLoad", Spring + "height-load"), ("lightHeight", Spring + "height"), ("heavyLoad", Spring + "second-load"), ("heavyHeight", Spring + "second-height")],
            [("rate", Spring + "measured-rate")], raises: []),
        Bind("springs.wheel-rate", ["axle"],
            [("axle", "{axle}"), ("springRate", Spring + "rate"), ("leafRate", "leaf.{axle}.rate"), ("installedRate", "leaf.{axle}.installed-rate"), ("coilRate", "coil.{axle}.rate"),
             ("torsionRate", "torsion.{axle}.rate"), ("measuredRate", Spring + "measured-rate"), ("height", Spring + "height"), ("secondHeight", Spring + "second-height"),
             ("motionRatio", Ratio),
             ("padRate", Spring + "pad-rate"), .. s_helper], [("rate", WheelRate)]),
        Bind("springs.loaded-radius", ["axle"], [("diameter", Axle + "tire-diameter"), ("measured", "wheel.{axle}.*.tire.loaded-radius")], [("radius", Radius)]),
        Bind("springs.restore", ["axle"],
            [("loads", "axle.{axle}.*.load"), ("unsprungMass", Unsprung), ("tolerance", "duty.height-tolerance"), ("wheelRate", WheelRate), ("originalHeight", Original),
             ("presentHeights", "axle.{axle}.*.ride-height"), ("presentRates", "axle.{axle}.*.carrying-rate"), ("leafRate", "leaf.{axle}.rate"), ("leaves", "leaf.{axle}.leaves"), ("fullLength", "leaf.{axle}.full-length"),
             ("thickness", "leaf.{axle}.thickness")]),
    ];

    private static IEnumerable<Binding> Standing() =>
    [
        Bind("springs.axle-capacity", ["axle", "condition"],
            [("load", Load), ("unsprungMass", Unsprung), ("motionRatio", Ratio), ("rating", Spring + "rating"), ("relief", Relief), ("helperRate", "axle.{axle}.helper.rate"),
             ("wheelRate", WheelRate)], [("springLoad", Here + "spring-load")]),
        // What a leaf carries hangs on the ride height and that on the leaf's rate: stress and arch are told after both, not with the rate.
        Bind("springs.leaf-load", ["leaf", "condition"],
            [("load", "axle.{leaf}.{condition}.spring-load"), ("rate", Leaf + "rate"), ("stressLimit", Leaf + "stress-limit"), ("loadAtLimit", Leaf + "load-at-limit"),
             ("freeArch", Leaf + "free-arch"), ("relief", "axle.{leaf}.{condition}.spring-relief"), ("helperRate", "axle.{leaf}.helper.rate")]),
        Bind("springs.ride-height", ["axle", "condition"],
            [("load", Load), ("heightLoad", Spring + "height-load"), ("height", Spring + "height"), ("wheelRate", WheelRate), .. s_helper, ("bumpClearance", Axle + "bump-stop.clearance"),
             ("bumpRate", Axle + "bump-stop.rate"), ("bumpSquash", Axle + "bump-stop.squash"), ("droop", Spring + "droop"), ("loadedRadius", Radius), ("originalHeight", Original)],
            [("rideHeight", Here + "ride-height"), ("datumHeight", Here + "datum-height"), ("bumpTravel", Here + "bump-travel"), ("fullBumpTravel", Here + "full-bump-travel"), ("droopTravel", Here + "droop-travel"),
             ("springRate", Here + "spring-rate"), ("carryingRate", Carrying), ("relief", Relief)]),
        Bind("springs.roll-stiffness", ["axle", "condition"],
            [("wheelRate", WheelRate), ("springBase", Spring + "base"), ("bar", Axle + "anti-roll-bar"), ("carryingRate", Carrying), ("helperRate", "axle.{axle}.helper.rate")],
            [("rollStiffness", Here + "roll-stiffness")]),
        Bind("springs.frequency", ["axle", "condition"],
            [("load", Load), ("unsprungMass", Unsprung), ("wheelRate", WheelRate), ("springRate", Here + "spring-rate"), ("tireRate", Axle + "tire-rate")],
            [("frequency", Here + "ride-frequency")]),
    ];

    private static IEnumerable<Binding> Together() =>
    [
        Bind("springs.flat-ride", ["condition"],
            [("frontFrequency", "axle.front.{condition}.ride-frequency"), ("rearFrequency", "axle.rear.{condition}.ride-frequency"), ("wheelbase", "vehicle.wheelbase"),
             ("cruiseSpeed", "duty.cruise-speed")]),
        Bind("springs.rake", ["condition"],
            [("frontHeight", "axle.front.{condition}.datum-height"), ("rearHeight", "axle.rear.{condition}.datum-height"), ("wheelbase", "vehicle.wheelbase"),
             ("originalFront", "axle.front.original-ride-height"), ("originalRear", "axle.rear.original-ride-height")]),
        Bind("springs.body-roll", ["condition"],
            [("centerHeight", "mass.{condition}.center-height"), ("lateral", "duty.lateral"), .. Both("Load", ".{condition}.load"), .. Both("Unsprung", ".unsprung-mass"),
             .. Both("Stiffness", ".{condition}.roll-stiffness"), .. Both("RollCenter", ".roll-center-rise"), .. Both("DatumHeight", ".{condition}.datum-height"), .. Both("Track", ".track"),
             .. Both("Radius", ".loaded-radius")],
            [("rollPerGee", "vehicle.{condition}.roll-per-g"), ("shiftPerGee", "vehicle.{condition}.shift-per-g"), ("liftAt", "vehicle.{condition}.wheel-lift")]),
    ];

    private static (string, string)[] Both(string input, string key) => [("front" + input, "axle.front" + key), ("rear" + input, "axle.rear" + key)];
}
