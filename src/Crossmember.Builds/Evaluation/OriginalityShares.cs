using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>What becomes of the old vehicle: one class of options with the share of the weight that it holds.</summary>
/// <param name="Share">Of the weight of all items, 0 to 1.</param>
public sealed record OriginalityShare(OptionClass Class, double Share, IReadOnlyList<Slot> Items);

/// <summary>The vehicle parted by what is done to its items, each counted by its weight.</summary>
public static class OriginalityShares
{
    /// <summary>In the order of <see cref="OptionClass"/>; classes that hold no weight are left out. None where no item has a weight.</summary>
    public static IReadOnlyList<OriginalityShare> Of(Sheet sheet)
    {
        var weighed = sheet.Build.Slots.Where(s => s.Weight > 0).ToList();
        var whole = weighed.Sum(s => s.Weight);
        return [.. weighed.GroupBy(s => ClassOf(sheet, s)).OrderBy(g => g.Key).Select(g => new OriginalityShare(g.Key, g.Sum(s => s.Weight) / whole, [.. g]))];
    }

    /// <summary>An option that does not say what it does is taken for another part: nothing is called kept that nobody called so.</summary>
    private static OptionClass ClassOf(Sheet sheet, Slot slot) => sheet.InEffect[sheet.Plan.SlotId(slot.Id)]?.Body.Class ?? OptionClass.Replace;
}
