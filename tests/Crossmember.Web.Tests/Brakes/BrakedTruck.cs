using System.Text.Json.Nodes;

namespace Crossmember.Tests.Brakes;

/// <summary>The demo's truck with brakes of the tests' own, invented: drums all round on one circuit and a leg alone, or discs in front with two circuits, a booster and a rear valve.</summary>
internal static class BrakedTruck
{
    public const string Drums = "drums", Discs = "discs";

    private static readonly string[] s_ours = ["brakes.", "duty.pedal-force", "duty.altitude", "duty.hard-pressure", "duty.parking-grade"];

    private static readonly (string Key, JsonNode Value)[] s_common =
    [
        ("brakes.pedal.ratio", 6), ("brakes.pedal.efficiency", 0.9), ("brakes.master.efficiency", 0.97), ("brakes.pedal.floor-travel", "6.5 in"), ("brakes.pedal.free-play", "0.25 in"), ("brakes.rule", "571.105"),
        ("duty.altitude", "0 ft"), ("brakes.fluid.grade", "DOT 3"), ("brakes.fluid.volume", "180 cm3"), ("brakes.parking.kind", "rear"), ("brakes.parking.lever-ratio", 6), ("brakes.parking.strut-ratio", 3.2),
        ("brakes.parking.operation", "hand"), ("brakes.metering.pressure", "0 psi"), ("brakes.residual.rear", "10 psi"), .. Drum("rear", "1 in"),
    ];

    private static readonly (string Key, JsonNode Value)[] s_drums =
    [
        ("brakes.master.kind", "single"), ("brakes.master.bore", "1 in"), ("brakes.master.stroke", "1.4 in"), ("brakes.circuits", "one"), ("brakes.booster.kind", "none"), ("brakes.valve.kind", "none"),
        ("brakes.residual.front", "10 psi"), ("brakes.master.made-for", "drums"), ("brakes.fluid.state", "old"), .. Drum("front", "1.125 in"),
    ];

    private static readonly (string Key, JsonNode Value)[] s_discs =
    [
        ("brakes.master.kind", "tandem"), ("brakes.master.bore", "1.125 in"), ("brakes.master.stroke", "1.5 in"), ("brakes.master.front-stroke", "0.75 in"), ("brakes.master.rear-stroke", "0.7 in"),
        ("brakes.circuits", "front-rear"), ("brakes.booster.kind", "vacuum"), ("brakes.booster.diaphragm-diameter", "9 in"), ("brakes.booster.rod-diameter", "1 in"), ("brakes.booster.vacuum", "17 inHg"),
        ("brakes.valve.kind", "fixed"), ("brakes.valve.knee", "450 psi"), ("brakes.valve.slope", 0.35), ("brakes.valve.bypass", "yes"), ("brakes.residual.front", "0 psi"), ("brakes.master.made-for", "disc and drum"),
        ("brakes.fluid.state", "new"), ("wheel.front.*.brake.kind", "disc"), ("wheel.front.*.brake.friction", 0.38), ("wheel.front.*.brake.caliper", "sliding"), ("wheel.front.*.brake.pistons", 1),
        ("wheel.front.*.brake.piston-diameter", "2.94 in"), ("wheel.front.*.brake.rotor-diameter", "11.75 in"), ("wheel.front.*.brake.pad-outer-diameter", "11.6 in"),
        ("wheel.front.*.brake.pad-inner-diameter", "7.6 in"), ("wheel.front.*.brake.rotor-thickness", "1.18 in"), ("wheel.front.*.brake.rotor-mass", "22 lb"), ("wheel.front.*.brake.rotor-vented", "vented"),
        ("wheel.front.*.brake.pad-clearance", "0.004 in"), ("wheel.front.*.brake.give", "0.014 in"), ("wheel.front.*.brake.pad-area", "60 cm2"), ("wheel.front.*.brake.lining", "semi-metallic"),
        ("wheel.front.*.brake.friction-letters", "FF"),
    ];

    /// <param name="demo">The demo's truck; what it says of brakes itself is taken out.</param>
    /// <param name="also">Further values in both what-ifs.</param>
    public static string Of(string demo, params (string Key, JsonNode Value)[] also)
    {
        var build = JsonNode.Parse(demo)!;
        foreach (var option in build["slots"]!.AsArray().SelectMany(s => s!["options"]!.AsArray()))
            if (option!["parameters"] is JsonObject stated) Strip(stated);
        foreach (var scenario in build["scenarios"]!.AsArray())
            if (scenario!["whatIf"] is JsonObject tried) Strip(tried);
        build["slots"]!.AsArray().Add(new JsonObject
        {
            ["id"] = "stopping", ["parent"] = "vehicle", ["title"] = "What stops it", ["weight"] = 0,
            ["options"] = new JsonArray(Option("as-found", "keep", [.. s_common, .. s_drums, .. also]), Option("with-discs", "upgrade", [.. s_common, .. s_discs, .. also])),
        });
        foreach (var (id, option) in new[] { (Drums, "as-found"), (Discs, "with-discs") })
        {
            if (build["scenarios"]!.AsArray().FirstOrDefault(s => (string?)s!["id"] == id) is { } old) build["scenarios"]!.AsArray().Remove(old);
            build["scenarios"]!.AsArray().Add(new JsonObject { ["id"] = id, ["title"] = id, ["base"] = "working", ["choices"] = new JsonObject { ["stopping"] = option } });
        }
        return build.ToJsonString();
    }

    private static void Strip(JsonObject stated)
    {
        foreach (var key in stated.Select(p => p.Key).Where(k => s_ours.Any(o => k.StartsWith(o, StringComparison.Ordinal)) || k.Contains(".brake.", StringComparison.Ordinal)).ToList()) stated.Remove(key);
    }

    private static JsonObject Option(string id, string what, IEnumerable<(string Key, JsonNode Value)> values)
    {
        var stated = new JsonObject();
        foreach (var (key, value) in values) stated[key] = new JsonObject { ["value"] = value.DeepClone(), ["basis"] = "measured" };
        return new() { ["id"] = id, ["title"] = id, ["class"] = what, ["originality"] = 0.5, ["masses"] = new JsonArray(), ["parameters"] = stated };
    }

    private static (string, JsonNode)[] Drum(string axle, string bore) =>
    [
        .. new (string, JsonNode)[]
        {
            ("kind", "drum"), ("drum-kind", "leading-trailing"), ("friction", 0.36), ("drum-diameter", "11 in"), ("lining-width", "2 in"), ("cylinder-bore", bore), ("cylinders", 1), ("shoe-anchor-distance", "4.6 in"),
            ("shoe-actuator-distance", "4.6 in"), ("shoe-clearance", "0.02 in"), ("give", "0.012 in"), ("drum-mass", "32 lb"), ("lining", "organic"), ("friction-letters", "FE"),
        }.Select(v => ($"wheel.{axle}.*.brake.{v.Item1}", v.Item2)),
    ];
}
