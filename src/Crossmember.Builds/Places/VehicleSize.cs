using Crossmember.Builds.Evaluation;

namespace Crossmember.Builds.Places;

/// <summary>A length that a drawing needs, m, and whether the sheet knows it or we assumed it.</summary>
public readonly record struct KnownLength(double Meters, bool Known);

/// <summary>The few lengths that a vehicle is drawn from; what the sheet does not say is in usual proportion to the wheelbase.</summary>
/// <param name="DatumHeight">Frame datum plane over the ground.</param>
public sealed record VehicleSize(KnownLength Wheelbase, KnownLength TireDiameter, KnownLength Track, KnownLength DatumHeight)
{
    /// <summary>Ours, for a drawing only: a wheelbase of 110 in, and the rest as shares of it.</summary>
    private const double UsualWheelbase = 2.794, TireShare = 0.27, TrackShare = 0.52, DatumShare = 0.17;

    public static VehicleSize Of(Sheet sheet)
    {
        var weighing = sheet.Build.Weighings.OrderBy(w => w.Date, StringComparer.Ordinal).LastOrDefault();
        var wheelbase = Or(Number(sheet, "vehicle.wheelbase") ?? weighing?.Wheelbase, UsualWheelbase);
        return new(wheelbase, Or(Mean(sheet, "axle.*.tire-diameter") ?? Mean(sheet, "wheel.*.*.tire.diameter"), wheelbase.Meters * TireShare),
            Or(Mean(sheet, "axle.*.track"), wheelbase.Meters * TrackShare), Or(Mean(sheet, "axle.*.*.datum-height") ?? weighing?.DatumHeight, wheelbase.Meters * DatumShare));
    }

    private static KnownLength Or(double? known, double assumed) => known is > 0 ? new(known.Value, true) : new(assumed, false);

    private static double? Number(Sheet sheet, string key) => sheet.Key(key) is { Value.IsNumber: true } state ? state.Value.Number : null;

    private static double? Mean(Sheet sheet, string pattern)
    {
        var known = sheet.Plan.Space.Expand(pattern).Select(k => sheet.Keys[k]).Where(k => k is { Exists: true, Value.IsNumber: true }).Select(k => k.Value.Number).ToList();
        return known.Count > 0 ? known.Average() : null;
    }
}
