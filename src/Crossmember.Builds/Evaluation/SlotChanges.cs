using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>What came off and what was put on between two states of a vehicle, slot by slot.</summary>
/// <param name="Missing">Slots whose change has no mass on one side.</param>
internal sealed record SlotChanges(IReadOnlyList<LedgerEntry> Entries, IReadOnlyList<string> Changed, IReadOnlyList<string> Missing)
{
    /// <param name="weighed">The state on the scale, at whose center of gravity "surely below" counts.</param>
    public static SlotChanges Between(EvaluationPlan plan, Build build, Moments weighed, Func<Slot, CompiledOption> fitted, Func<Slot, CompiledOption> chosen)
    {
        var entries = new List<LedgerEntry>();
        List<string> changed = [], missing = [];
        foreach (var slot in build.Slots.OrderBy(s => s.Id, StringComparer.Ordinal))
        {
            CompiledOption then = fitted(slot), now = chosen(slot);
            if (SameParts(then, now)) continue;
            changed.Add(slot.Id);
            // "Surely below" speaks of the change: it excuses the other side from being weighed.
            var excused = now.Body.MassBelow is not null || then.Body.MassBelow is not null;
            var unsaid = !excused && (Unsaid(now) || Unsaid(then));
            List<LedgerEntry> own = unsaid ? [] : [.. Change(then, now, weighed)];
            if (unsaid || own.Exists(e => double.IsNaN(e.Kilograms))) missing.Add(slot.Id);
            entries.AddRange(own);
        }
        return new(entries, changed, missing);
    }

    internal static bool SameItems(IReadOnlyList<MassItem> x, IReadOnlyList<MassItem> y) =>
        x.Count == y.Count && x.Select(i => (i.Id, i.Kilograms, i.At)).ToHashSet().SetEquals(y.Select(i => (i.Id, i.Kilograms, i.At)));

    private static bool Unsaid(CompiledOption option) => option.Body.Masses is null && option.Body.MassBelow is null;

    /// <summary>No change: the same option, the same items, or nothing said on either side of what is one part at root.</summary>
    private static bool SameParts(CompiledOption fitted, CompiledOption chosen)
    {
        if (ReferenceEquals(fitted, chosen)) return true;
        Option a = fitted.Body, b = chosen.Body;
        if (a.Masses is { } x && b.Masses is { } y) return a.MassBelow == b.MassBelow && SameItems(x, y);
        return a.Masses is null && b.Masses is null && a.MassBelow is null && b.MassBelow is null && fitted.Resolved.Root == chosen.Resolved.Root;
    }

    private static IEnumerable<LedgerEntry> Change(CompiledOption then, CompiledOption now, Moments weighed)
    {
        IReadOnlyList<MassItem> off = then.Body.Masses ?? [], on = now.Body.Masses ?? [];
        // An item that both sides list alike stays where it is: it moves nothing and its error cancels.
        foreach (var item in Without(off, on)) yield return LedgerEntry.Of(LedgerPart.CameOff, then.Slot.Id, then.Body.Id, item);
        if (then.Body.MassBelow is { } under) yield return LedgerEntry.Below(LedgerPart.CameOff, then.Slot.Id, then.Body.Id, under, weighed);
        foreach (var item in Without(on, off)) yield return LedgerEntry.Of(LedgerPart.PutOn, now.Slot.Id, now.Body.Id, item);
        if (now.Body.MassBelow is { } upTo) yield return LedgerEntry.Below(LedgerPart.PutOn, now.Slot.Id, now.Body.Id, upTo, weighed);
    }

    private static IEnumerable<MassItem> Without(IReadOnlyList<MassItem> items, IReadOnlyList<MassItem> others) =>
        items.Where(i => !others.Any(o => (o.Id, o.Kilograms, o.At) == (i.Id, i.Kilograms, i.At))).OrderBy(i => i.Id, StringComparer.Ordinal);
}
