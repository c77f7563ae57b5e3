using Crossmember.Builds.Evaluation;

namespace Crossmember.Web.Features.Brakes;

/// <summary>A part of the Brakes page: which calculations stand on it, and which of them draw.</summary>
/// <param name="Path">Last part of its address; empty: the overview.</param>
/// <param name="Drawn">Calculations whose curves stand on top.</param>
/// <param name="Settings">Keys that the part rests on: shown with where they are from.</param>
/// <param name="Calculations">What belongs to the part.</param>
public sealed record BrakeArea(string Path, string Title, string Term, string Lead, IReadOnlyList<string> Drawn, IReadOnlyList<string> Settings, params string[] Calculations)
{
    /// <summary>Whether every loading is drawn in one picture until somebody picks one: a balance that is right for one may be wrong for the other.</summary>
    public bool Together => Path == "balance";

    /// <summary>Checks that belong to another part and decide here too: a brake on the driveline lets go when a wheel is jacked.</summary>
    public IEnumerable<SheetFinding> Borrowed(Sheet sheet) =>
        Path == "parking" && sheet.Instance("brakes.layout") is { } layout ? Sheet.FindingsOf(layout).Where(f => f.Finding.Check == "parking") : [];

    /// <summary>What it rests on, without what nothing asks for: the makings of a booster or a valve that is not there.</summary>
    public IReadOnlyList<string> Applying(Sheet sheet)
    {
        bool unboosted = IsNone(sheet, "brakes.booster.kind"), valveless = IsNone(sheet, "brakes.valve.kind"), noParking = IsNone(sheet, "brakes.parking.kind");
        return [.. Settings.Where(k => !(unboosted && (k.StartsWith("brakes.gauge.dead", StringComparison.Ordinal) || IsMaking(k, "brakes.booster."))) && !(valveless && IsMaking(k, "brakes.valve.")) && !(noParking && IsMaking(k, "brakes.parking.")))];
    }

    private static bool IsNone(Sheet sheet, string kind) => sheet.Key(kind)?.Value.Text == "none";

    private static bool IsMaking(string key, string of) => key.StartsWith(of, StringComparison.Ordinal) && !key.EndsWith(".kind", StringComparison.Ordinal);

    public static IReadOnlyList<BrakeArea> All { get; } =
    [
        new("", "Overview", "the headline verdicts of the brakes",
            "Which end locks first, how hard the leg must push, what is left when something fails, and whether they stay cool enough.", [],
            ["brakes.rule", "duty.pedal-force", "duty.grip", "duty.parking-grade", "duty.hard-pressure", "duty.altitude", "brakes.booster.vacuum", "brakes.fluid.grade", "brakes.fluid.state"], "brakes."),
        new("balance", "Balance", "brake-force distribution, adhesion utilisation, order of locking",
            "How braking is shared between the axles, against the share that would use all of the grip. Above the ideal line the rear locks first, and a vehicle whose rear locks first turns round.",
            ["brakes.distribution", "brakes.lock-order"], ["brakes.rule", "duty.grip", "brakes.valve.kind", "brakes.valve.knee", "brakes.valve.slope", "brakes.metering.pressure"],
            "brakes.distribution", "brakes.adhesion", "brakes.lock-order", "brakes.best-valve", "brakes.valve-knee", "brakes.bias-bar", "brakes.axle-force"),
        new("pedal", "Pedal", "line pressure, booster, deceleration and travel over pedal force",
            "What a leg makes of it: pressure and deceleration over the force on the pedal, how far the pedal goes, and what a larger or smaller master cylinder would trade.",
            ["brakes.pedal-line", "brakes.stop", "brakes.pedal-travel"], ["duty.pedal-force", "brakes.pedal.ratio", "brakes.pedal.efficiency", "brakes.pedal.floor-travel", "brakes.master.bore", "brakes.booster.kind", "brakes.booster.vacuum", "duty.altitude"],
            "brakes.line-pressure", "brakes.pedal-line", "brakes.booster-reserve", "brakes.pedal-travel", "brakes.wheel-volume", "brakes.stop"),
        new("failures", "Failures", "booster dead, one circuit lost",
            "The same foot with the booster dead, the front circuit lost, the rear circuit lost, side by side.", ["brakes.stop"], ["brakes.rule", "duty.pedal-force", "duty.grip", "brakes.circuits", "brakes.valve.bypass"],
            "brakes.failure"),
        new("heat", "Heat", "temperatures in a stop, in repeated stops, on a descent, on a drive",
            "What one stop, many stops and a long hill make of discs, drums and fluid. Temperatures may be a third off: they show which end is short of iron or air, and a thermometer after a drive tells the rest.", ["brakes.drive-heat", "brakes.descent", "brakes.repeated-stops", "brakes.stop-heat"], ["duty.stop-speed", "duty.stops.count", "duty.stops.from", "duty.stops.to", "duty.stops.interval", "duty.descent.grade", "duty.descent.length", "duty.descent.speed", "duty.descent.engine-power", "duty.brake-temperature",
             "duty.air-temperature", "brakes.fluid.grade", "brakes.fluid.state"],
            "brakes.stop-heat", "brakes.repeated-stops", "brakes.descent", "brakes.drive-heat", "brakes.heat-store"),
        new("parking", "Parking", "holding on a grade, both ways",
            "Which hill the parking brake holds, facing up and facing down, by the hand and by the grip of its axle.", [], ["brakes.rule", "duty.parking-grade", "duty.grip", "brakes.parking.kind", "brakes.parking.lever-ratio", "brakes.parking.cable-efficiency"],
            "brakes.parking"),
        new("wheels", "Wheels", "torque and brake factor of every wheel, and whether the parts suit each other",
            "What each wheel makes of a pressure, how much it changes when the lining does, and whether discs, drums, master cylinder and valves belong together. Left and right should be alike.", [], ["brakes.disc-release", "brakes.drum-release", "brakes.residual.front", "brakes.residual.rear"],
            "brakes.layout", "brakes.wheel-torque", "brakes.factor", "brakes.wheel-drag"),
        new("gauge", "Gauge", "measured pressures and decelerations against the sheet",
            "What gauges and the road said, against what the sheet expects. Print the gauge sheet, write the readings down, note them here.", ["brakes.gauge-check"],
            ["brakes.gauge.front", "brakes.gauge.rear", "brakes.gauge.dead-front", "brakes.gauge.dead-rear", "brakes.gauge.deceleration", "brakes.gauge.mass", "brakes.test.speed", "brakes.test.distance"], "brakes.gauge-check", "brakes.road-test"),
    ];

    public static BrakeArea? Find(string? path) => All.FirstOrDefault(a => a.Path == (path ?? ""));
}
