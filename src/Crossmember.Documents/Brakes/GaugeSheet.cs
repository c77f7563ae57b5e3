using System.Globalization;
using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Brakes;

/// <summary>What two gauges should show at the bleeders, for a set of pedal forces.</summary>
/// <param name="Condition">The loading that the rear figures hold for; null where the build has none.</param>
/// <param name="FollowsLoad">Whether another loading gives other figures behind.</param>
/// <param name="RestFront">Pressure that a residual valve holds with the pedal up, Pa; 0 without one.</param>
public sealed record GaugeSheet(string? Condition, bool FollowsLoad, bool Boosted, IReadOnlyList<GaugeRow> Rows, double RestFront, double RestRear)
{
    /// <summary>Round forces in the reader's unit: light, as in town, hard, and the most that the bench asks of lines.</summary>
    private static readonly double[] s_pounds = [10, 20, 40, 60, 80, 100, 125], s_newtons = [50, 100, 200, 300, 400, 500, 550];

    public static GaugeSheet Of(Sheet sheet, string? condition, MeasureSystem measure)
    {
        double? Number(string key) => sheet.Key(key) is { Value.IsNumber: true } k ? k.Value.Number : null;
        var valve = sheet.Key("brakes.valve.kind")?.Value.Text;
        var forces = measure == MeasureSystem.Metric ? s_newtons : [.. s_pounds.Select(p => Units.Require("lbf").ToSi(p))];
        var line = LineOf(Number);
        var valves = ValvesOf(Number, valve, condition);
        var held = (Front: Number("brakes.residual.front") ?? 0, Rear: Number("brakes.residual.rear") ?? 0);
        var share = Number("brakes.pedal.rear-share") ?? 1;
        return new(condition, valve == "load-sensing", line is { Boosted: true }, [.. forces.Select(f => Row(f, line, valves, share, held))], held.Front, held.Rear);
    }

    /// <summary>As a gauge is read: whole pounds per square inch and pounds, or kilopascals and newtons; large pressures to the nearest ten.</summary>
    public static string Told(double si, Dimension dimension, MeasureSystem measure)
    {
        var unit = Display.Customary(dimension, measure);
        var number = unit.FromSi(si);
        return $"{(dimension == Dimension.Pressure && number >= 100 ? 10 * Math.Round(number / 10) : Math.Round(number)).ToString("#,0", CultureInfo.InvariantCulture)} {Display.Symbol(unit)}";
    }

    private static GaugeRow Row(double force, PedalLine? line, Valves? valves, double rearShare, (double Front, double Rear) held)
    {
        if (line is not { } l) return new(force, null, null, null, null);
        double? Front(double p) => Math.Max(held.Front, valves?.Front(p) ?? p);
        double? Rear(double p) => valves is { } v ? Math.Max(held.Rear, v.Rear(p * rearShare)) : null;
        return new(force, Front(l.Pressure(force)), Rear(l.Pressure(force)), Front(l.DeadPressure(force)), Rear(l.DeadPressure(force)));
    }

    /// <summary>Null where the sheet does not know how pedal force becomes pressure.</summary>
    private static PedalLine? LineOf(Func<string, double?> number) => number("brakes.pedal.plain-pressure") is not { } plain ? null
        : new(plain / PedalLine.ReferenceForce, number("brakes.pedal.cut-in") ?? 0, number("brakes.pedal.jump-in") ?? 0, number("brakes.pedal.knee") ?? 0, number("brakes.pedal.knee-pressure") ?? 0, number("brakes.pedal.dead-loss") ?? 0);

    /// <summary>Null where a valve is there and its knee is not known: then nothing is told of the rear.</summary>
    private static Valves? ValvesOf(Func<string, double?> number, string? kind, string? condition)
    {
        var metering = number("brakes.metering.pressure") ?? 0;
        if (kind is null or "none") return Valves.None with { Metering = metering };
        return condition is not null && number($"brakes.{condition}.valve-knee") is { } knee && number("brakes.valve.slope") is { } slope ? new(knee, slope, metering) : null;
    }
}

/// <summary>One pedal force and the pressures it should make, in SI; null where the sheet does not know.</summary>
/// <param name="DeadFront">With the booster emptied; the same without a booster.</param>
public sealed record GaugeRow(double Pedal, double? Front, double? Rear, double? DeadFront, double? DeadRear);
