using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.MasterSheet;

/// <summary>An item as the tree shows it.</summary>
/// <param name="Worst">The worst that a check says in which it has a part; null where none has anything to do with it.</param>
/// <param name="Missing">How many values checks wait for at it.</param>
/// <param name="HasChildren">Whether it can be folded.</param>
public sealed record ItemRow(Slot Item, int Depth, string Chosen, string Class, Verdict? Worst, bool IsOpen, string Mass, int Missing, bool HasChildren)
{
    public static IReadOnlyList<ItemRow> Of(Sheet sheet, ItemMarks marks, SheetLines lines, MeasureSystem measure)
    {
        var worst = ItemVerdicts.Of(sheet);
        return [.. Decisions.ItemTree.InOrder(sheet.Build).Select(r => Row(r.Slot, r.Depth, sheet, marks, lines, worst, measure))];
    }

    /// <summary>Mass of the option in effect as it is stated.</summary>
    public static string MassOf(Option body, MeasureSystem measure) => body switch
    {
        { Masses: { Length: > 0 } items } => items.Any(m => m.Kilograms is null) ? Words.DontKnow : Shown.Mass(items.Sum(m => m.Kilograms!.Value), measure),
        { MassBelow: { } below } => $"under {Shown.Mass(below, measure)}",
        _ => "",
    };

    private static ItemRow Row(Slot slot, int depth, Sheet sheet, ItemMarks marks, SheetLines lines, IReadOnlyDictionary<string, Verdict> worst, MeasureSystem measure)
    {
        var body = ResolvedOption.Of(slot, sheet.Choices[slot.Id]).Body;
        return new(slot, depth, Words.OptionTitle(slot, body.Id), body.Id == Option.None ? "left off" : Words.Of(body.Class), worst.TryGetValue(slot.Id, out var verdict) ? verdict : null,
            marks.IsUndecided(slot.Id), MassOf(body, measure), lines.Missing(slot.Id).Count, sheet.Build.Slots.Any(s => s.Parent == slot.Id));
    }
}
