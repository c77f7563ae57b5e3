using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Places;
using Crossmember.Documents.Vehicle;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.VehicleDrawing;

/// <summary>A sheet's items on its vehicle: numbered from front to rear, with what each check says in the words of the desk.</summary>
/// <param name="Items">Those with a place, by number.</param>
/// <param name="Unplaced">Those without, with the reason.</param>
public sealed record DrawnVehicle(VehicleShape Shape, IReadOnlyList<(DrawnItem Drawn, PlacedItem Placed)> Items, IReadOnlyList<PlacedItem> Unplaced, VehicleSize Size)
{
    public static DrawnVehicle Of(Sheet sheet)
    {
        var size = VehicleSize.Of(sheet);
        var placed = Placing.Of(sheet, size);
        var worst = ItemVerdicts.Of(sheet);
        var ordered = placed.Where(p => p.IsPlaced).OrderBy(p => p.At!.Value.X).ThenBy(p => p.Item.Id, StringComparer.Ordinal);
        return new(new(size.Wheelbase.Meters, size.TireDiameter.Meters, size.Track.Meters, size.DatumHeight.Meters),
            [.. ordered.Select((p, i) => (Item(p, i + 1, worst.TryGetValue(p.Item.Id, out var verdict) ? verdict : null), p))], [.. placed.Where(p => !p.IsPlaced)], size);
    }

    /// <summary>What the drawing rests on, and what of it is only ours.</summary>
    public string Caption(MeasureSystem measure) => $"{Resting(Size, measure)} The body is only hinted at: do not measure in it.";

    /// <summary>The lengths that a vehicle is drawn from.</summary>
    public static string Resting(VehicleSize size, MeasureSystem measure)
    {
        (string Name, KnownLength Length)[] lengths = [("wheelbase", size.Wheelbase), ("tires", size.TireDiameter), ("track", size.Track), ("frame over the ground", size.DatumHeight)];
        var known = lengths.Where(l => l.Length.Known).Select(l => $"{l.Name} {About(l.Length.Meters, measure)}").ToList();
        var assumed = lengths.Where(l => !l.Length.Known).Select(l => l.Name).ToList();
        return $"Drawn from {(known.Count > 0 ? string.Join(", ", known) : "nothing that is known")}{(assumed.Count > 0 ? $"; assumed for the drawing: {string.Join(", ", assumed)}" : "")}.";
    }

    /// <summary>To the half inch or the centimeter: a drawing shows no more.</summary>
    private static string About(double meters, MeasureSystem measure)
    {
        var step = measure == MeasureSystem.Metric ? 0.01 : 0.0127;
        return Display.Show(Math.Round(meters / step) * step, Dimension.Length, measure);
    }

    private static DrawnItem Item(PlacedItem placed, int number, Verdict? worst)
    {
        var at = placed.At!.Value;
        return new(placed.Item.Id, number, placed.Item.Title, at.X, at.Y, at.Z, worst, worst is { } verdict ? Words.Of(verdict) : "no check");
    }
}
