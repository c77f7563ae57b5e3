using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Places;

/// <summary>How it is known where an item sits.</summary>
public enum PlacedBy { Masses, MassesAsFound, Usual, Parent }

/// <summary>An item with its place on the vehicle, or with the reason why it has none.</summary>
/// <param name="At">In the axes of the sheet: x rear from the front axle, y right, z up from the frame datum, m.</param>
/// <param name="By">Null where it has no place.</param>
public sealed record PlacedItem(Slot Item, Place? At, PlacedBy? By, string Why)
{
    public bool IsPlaced => At is not null;
}

/// <summary>Puts the items of a sheet on the vehicle, for drawing.</summary>
public static class Placing
{
    /// <summary>Every item once, in the order of the build.</summary>
    public static IReadOnlyList<PlacedItem> Of(Sheet sheet, VehicleSize size)
    {
        var placed = new Dictionary<string, PlacedItem>(StringComparer.Ordinal);
        foreach (var slot in sheet.Build.Slots) Place(slot, sheet, size, placed, 0);
        return [.. sheet.Build.Slots.Select(s => placed[s.Id])];
    }

    /// <summary>The center of what is listed with a place; items without a mass count alike where none has one.</summary>
    public static Place? Center(IEnumerable<MassItem> masses)
    {
        var there = masses.Where(m => m is { At: not null, Drop: false }).ToList();
        if (there.Count == 0) return null;
        var weighed = there.Where(m => m.Kilograms > 0).ToList();
        var counted = weighed.Count > 0 ? weighed.Select(m => (At: m.At!.Value, Weight: m.Kilograms!.Value)).ToList() : [.. there.Select(m => (m.At!.Value, 1.0))];
        var whole = counted.Sum(c => c.Weight);
        return new(counted.Sum(c => c.At.X * c.Weight) / whole, counted.Sum(c => c.At.Y * c.Weight) / whole, counted.Sum(c => c.At.Z * c.Weight) / whole);
    }

    private static PlacedItem Place(Slot slot, Sheet sheet, VehicleSize size, Dictionary<string, PlacedItem> placed, int depth)
    {
        if (placed.TryGetValue(slot.Id, out var known)) return known;
        return placed[slot.Id] = Found(slot, sheet, size, placed, depth);
    }

    private static PlacedItem Found(Slot slot, Sheet sheet, VehicleSize size, Dictionary<string, PlacedItem> placed, int depth)
    {
        if (slot.Id == Slot.Root) return new(slot, null, null, "the vehicle itself");
        var body = ResolvedOption.Of(slot, sheet.Choices[slot.Id]).Body;
        if (body.Id == Option.None) return new(slot, null, null, "left off");
        if (body.Class == OptionClass.None) return new(slot, null, null, "nothing is there");
        if (Center(body.Masses ?? []) is { } center) return new(slot, center, PlacedBy.Masses, "where its masses are stated");
        if (Center(slot.Find(Option.AsFound)?.Masses ?? []) is { } before) return new(slot, before, PlacedBy.MassesAsFound, "where it was as found");
        if (ItemPlaces.Of(slot) is { } usual) return new(slot, At(usual, size), PlacedBy.Usual, "drawing only, not a measurement");
        var parent = depth < sheet.Build.Slots.Length && slot.Parent is { } p && sheet.Build.Find(p) is { } above ? Place(above, sheet, size, placed, depth + 1) : null;
        return parent is { At: { } at } ? new(slot, at, PlacedBy.Parent, $"with {parent.Item.Title}; drawing only, not a measurement") : new(slot, null, null, "nobody has said where it sits");
    }

    private static Place At(UsualPlace usual, VehicleSize size) =>
        new(usual.Along * size.Wheelbase.Meters, usual.Across * size.Track.Meters / 2, usual.Height * size.Wheelbase.Meters);
}
