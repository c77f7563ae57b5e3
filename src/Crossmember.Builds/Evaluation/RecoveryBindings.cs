using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How winches, rigging and recovery points are tied to the master sheet.</summary>
/// <remarks>
/// What hangs on a winch exists only where there is one. Blocks, bridle and shackle are judged once, by the weakest link; their own results tell the loads.
/// The two ends of the vehicle are called by its axles.
/// </remarks>
internal static class RecoveryBindings
{
    private const string Winch = "winch.{winch}.", Point = "recovery.{axle}.", Mass = "mass.{condition}.total", First = Winch + "first-layer-pull";

    private static readonly (string, string) s_first = ("linePull", First), s_sheave = ("sheaveResistance", "duty.sheave-resistance"), s_margin = ("margin", "duty.winch-margin");

    private static readonly (string, string)[] s_drum =
    [
        ("drumDiameter", Winch + "drum-diameter"), ("drumWidth", Winch + "drum-width"), ("ropeDiameter", Winch + "rope-diameter"), ("ropeLength", Winch + "rope-length"),
        ("minimumWraps", Winch + "minimum-wraps"),
    ];

    private static readonly (string, string)[] s_pull = [("mass", Mass), ("grade", "duty.recovery-grade"), ("ground", "duty.recovery-ground")];

    private static readonly (string, string)[] s_askew = [("upAngle", "duty.recovery-up-angle"), ("sideAngle", "duty.recovery-side-angle")];

    public static IReadOnlyList<Binding> All { get; } = [.. Pulls(), .. Gear(), .. Points()];

    private static IEnumerable<Binding> Pulls() =>
    [
        Bind("recovery.pull-needed", ["condition"], s_pull, [("pull", "recovery.{condition}.pull"), ("high", "recovery.{condition}.pull-high")]),
        Bind("recovery.winch-layers", ["winch"],
            [.. s_drum, ("linePull", Winch + "line-pull"), ("ratingLayer", Winch + "rating-layer"), ("flangeDiameter", Winch + "flange-diameter")],
            [("firstPull", First), ("fullPull", Winch + "full-drum-pull")]),
        Bind("recovery.winch-reach", ["winch", "condition"], [.. s_pull, s_margin, s_sheave, ("firstPull", First), ("fullPull", Winch + "full-drum-pull")]),
        Bind("recovery.purchase", ["winch", "condition"],
            [.. s_drum, s_margin, s_sheave, ("pull", "recovery.{condition}.pull"), ("high", "recovery.{condition}.pull-high"), ("firstPull", First),
             ("distance", "duty.recovery-distance")],
            [("fallLine", Winch + "{condition}.line-load"), ("firstLayerLoad", Winch + "{condition}.first-layer-load"), ("fullDrumLoad", Winch + "{condition}.full-drum-load"), ("ropeOut", Winch + "{condition}.rope-out")]),
        Bind("recovery.electrical-demand", ["winch"],
            [("lineLoads", Winch + "*.first-layer-load"), ("fullDrumLoads", Winch + "*.full-drum-load"), ("ropeOut", Winch + "*.rope-out"), ("drive", Winch + "drive"), ("currentCurve", Winch + "current-curve"),
             ("speedCurve", Winch + "speed-curve"), ("batteryCapacity", Winch + "battery-capacity"), ("chargingCurrent", Winch + "charging-current"),
             ("batteryShare", "duty.battery-share")],
            [("current", Winch + "current")]),
    ];

    private static IEnumerable<Binding> Gear() =>
    [
        Bind("recovery.block-load", ["winch"], [s_first, ("angle", "duty.block-angle"), ("ratedLoad", Winch + "block-rated-load")], raises: []),
        // A leg's load depends on a bridle that hardly a kit has: told, and only its angle judged.
        Bind("recovery.bridle", ["winch"], [("pull", First), ("angle", "duty.bridle-angle"), ("ratedLoad", Winch + "bridle-rated-load")], raises: ["angle"]),
        Bind("recovery.rope", ["winch"],
            [s_first, ("breakingForce", Winch + "rope-breaking-force"), ("ropeDiameter", Winch + "rope-diameter"), ("rope", Winch + "rope-material"),
             ("bend", Winch + "rope-bend")]),
        Bind("recovery.shackle", ["winch"],
            [s_first, ("ratedLoad", Winch + "shackle-rated-load"), ("pinSize", Winch + "shackle-size"), ("sideAngle", "duty.shackle-side-angle")], raises: []),
        Bind("recovery.winch-mount", ["winch"],
            [.. Bolts(Winch), .. s_askew, s_first, ("height", Winch + "line-height"), ("ahead", Winch + "line-ahead"), ("frameWall", Winch + "mount-wall"),
             ("frameYield", Winch + "mount-yield")],
            [("strength", Winch + "mount-strength")]),
        Bind("recovery.weakest-link", ["winch"],
            [s_first, ("breakingForce", Winch + "rope-breaking-force"), ("bend", Winch + "rope-bend"), ("shackleRatedLoad", Winch + "shackle-rated-load"),
             ("sideAngle", "duty.shackle-side-angle"), ("blockRatedLoad", Winch + "block-rated-load"), ("anchorRatedLoad", Winch + "anchor-rated-load"),
             ("blockAngle", "duty.block-angle"), ("mountStrength", Winch + "mount-strength")]),
        Bind("recovery.winch-on-axle", ["winch"],
            [("mass", Winch + "mass"), ("ahead", Winch + "ahead"), ("wheelbase", "vehicle.wheelbase"), ("wheelRate", "axle.front.wheel-rate")]),
    ];

    private static IEnumerable<Binding> Points() =>
    [
        Bind("recovery.point-bolts", ["axle"],
            [.. Bolts(Point), .. s_askew, ("height", Point + "height"), ("ahead", Point + "ahead"), ("frameWall", Point + "frame-wall"), ("frameYield", Point + "frame-yield")],
            [("strength", Point + "strength")]),
        Bind("recovery.point", ["axle"],
            [("kind", Point + "kind"), ("ratedLoad", Point + "rated-load"), ("boltStrength", Point + "strength"), ("masses", "mass.*.total"),
             ("factor", "duty.recovery-point-factor")]),
    ];

    private static (string, string)[] Bolts(string of) =>
    [
        ("boltCount", of + "bolt-count"), ("boltDiameter", of + "bolt-diameter"), ("boltPitch", of + "bolt-pitch"), ("boltGrade", of + "bolt-grade"),
        ("nearRow", of + "bolt-near-row"), ("farRow", of + "bolt-far-row"), ("gauge", of + "bolt-gauge"),
    ];
}
