using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Places;
using Crossmember.Builds.Slots;
using Crossmember.Documents.Vehicle;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.VehicleMass;

/// <summary>What a sheet says of the masses of the vehicle in one loading condition.</summary>
public sealed class MassView
{
    public MassView(Sheet sheet, string condition)
    {
        (Sheet, Condition) = (sheet, condition);
        Ledger = LedgerLines.Of(sheet, condition);
        Size = VehicleSize.Of(sheet);
        Shape = new(Size.Wheelbase.Meters, Size.TireDiameter.Meters, Size.Track.Meters, Size.DatumHeight.Meters);
        Masses = PlacedMass.Of(sheet, Ledger);
        Loads = LoadFigures.Of(sheet, condition);
        Center = CenterOf(sheet, condition, Size.DatumHeight.Meters);
    }

    public Sheet Sheet { get; }

    public string Condition { get; }

    public LedgerLines Ledger { get; }

    public VehicleSize Size { get; }

    public VehicleShape Shape { get; }

    /// <summary>From front to rear; those without a place last.</summary>
    public IReadOnlyList<PlacedMass> Masses { get; }

    public IReadOnlyList<LoadFigure> Loads { get; }

    /// <summary>Null where the sheet says nothing of it.</summary>
    public DrawnCenter? Center { get; }

    public double? Total => Number("total");

    /// <summary>m; the sheet's, else that of the weighing.</summary>
    public double? Wheelbase => Sheet.Key("vehicle.wheelbase") is { Value.IsNumber: true } known ? known.Value.Number : Ledger.Weighing?.Wheelbase;

    public PlacedMass? Find(MassRef? which) => which is null ? null : Masses.FirstOrDefault(m => m.Ref == which);

    /// <summary>The number of a mass in the list; those without a place have one too.</summary>
    public int NumberOf(PlacedMass mass) => Masses.TakeWhile(m => m.Ref != mass.Ref).Count() + 1;

    /// <summary>Conditions as the build orders them.</summary>
    public static IReadOnlyList<string> Conditions(Build build) => build.Sets.Of("condition");

    public static IReadOnlyList<string> Heaviest(Sheet sheet) => [.. Conditions(sheet.Build).OrderByDescending(c => sheet.Key($"mass.{c}.total") is { Value.IsNumber: true } total ? total.Value.Number : 0)];

    /// <param name="picked">Always drawn, whatever it is; numbers are those of the list that it is picked from.</param>
    public IReadOnlyList<DrawnMass> Drawn(MeasureSystem measure, IReadOnlyDictionary<MassRef, int>? numbers, bool all, MassRef? picked) =>
    [
        .. Masses.Where(m => m.At is not null && (all || m.Ref == picked || m.Standing is MassStanding.PutOn or MassStanding.Aboard))
            .Select(m => new DrawnMass(m.Ref.Key, numbers?.GetValueOrDefault(m.Ref) ?? NumberOf(m), m.Kilograms, m.At!.Value, (MassShape)m.Standing, Says(m, measure))),
    ];

    public IReadOnlyList<DrawnLoad> DrawnLoads(MeasureSystem measure) =>
        [.. Loads.Select(l => new DrawnLoad(l.Axle, l.Side, MassText.Load(l.Kilograms, measure), l.Share is { } share ? $"{MassText.Share(share)} of {(l.Side is null ? "axle" : "tire")}" : "", l.Verdict))];

    public static string Says(PlacedMass mass, MeasureSystem measure) =>
        $"{mass.Title}, {MassText.Load(mass.Kilograms, measure)}, {MassText.Place(mass.At, measure)}; {MassText.Of(mass.Standing)}";

    private double? Number(string what) => Sheet.Key($"mass.{Condition}.{what}") is { Value.IsNumber: true } known ? known.Value.Number : null;

    /// <summary>Only what the sheet works out: nothing is guessed for the drawing.</summary>
    private static DrawnCenter? CenterOf(Sheet sheet, string condition, double datumHeight)
    {
        (double? Value, double? Spread) Told(string what) => sheet.Key($"mass.{condition}.{what}") is not { Value.IsNumber: true } key ? (null, null) : (key.Value.Number, key.PlusMinus > 0 ? key.PlusMinus : null);
        var (x, y, z, height) = (Told("center-x"), Told("center-y"), Told("center-z"), Told("center-height"));
        if (z.Value is null && height.Value is { } over) z = (over - datumHeight, height.Spread);
        return x.Value is null && y.Value is null && z.Value is null ? null : new(x.Value, y.Value, z.Value, x.Spread, y.Spread, z.Spread);
    }
}
