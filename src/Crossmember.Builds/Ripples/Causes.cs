using System.Collections.Immutable;
using Crossmember.Builds.Evaluation;

namespace Crossmember.Builds.Ripples;

/// <summary>Which leaves and slots differ between two sheets: the candidates for every <c>because</c>.</summary>
internal sealed class Causes
{
    private readonly Sheet _from, _to;
    private readonly EvaluationPlan _plan;
    private readonly Bits _values;
    private readonly Bits _choices;

    public Causes(Sheet from, Sheet to)
    {
        (_from, _to, _plan) = (from, to, from.Plan);
        (_values, _choices) = (new(_plan.LeafCount), new(_plan.LeafCount));
        for (var k = 0; k < from.Keys.Length; k++)
            if (!SameValue(from.Keys[k], to.Keys[k]))
            {
                _values.Add(k);
                _choices.Add(k);
            }
        for (var s = 0; s < _plan.SlotNames.Length; s++)
        {
            if (!SameMass(from.InEffect[s], to.InEffect[s])) _values.Add(_plan.SlotLeaf(s));
            if (from.InEffect[s]?.Body.Id != to.InEffect[s]?.Body.Id) _choices.Add(_plan.SlotLeaf(s));
        }
    }

    /// <summary>Differing leaves that either side rests on.</summary>
    public IReadOnlyList<string> OfValues(Bits? a, Bits? b) => Names(a, b, _values);

    /// <summary>The same for findings of the model, which rest on choices.</summary>
    public IReadOnlyList<string> OfChoices(Bits? a, Bits? b) => Names(a, b, _choices);

    /// <summary>Slots whose own contribution, as a function tells it, differs.</summary>
    public IReadOnlyList<string> OfSlots<T>(Func<CompiledOption, T> contribution)
    {
        var list = new List<string>();
        for (var s = 0; s < _plan.SlotNames.Length; s++)
            if (!Same(_from.InEffect[s], _to.InEffect[s], contribution))
                list.Add("slot:" + _plan.SlotNames[s]);
        list.Sort(StringComparer.Ordinal);
        return list;
    }

    /// <summary>Slots whose masses differ, known or not.</summary>
    public IReadOnlyList<string> OfMasses() =>
        [.. Enumerable.Range(0, _plan.SlotNames.Length).Where(s => _values.Has(_plan.SlotLeaf(s))).Select(s => "slot:" + _plan.SlotNames[s]).Order(StringComparer.Ordinal)];

    /// <summary>For an instance on one side only: its differing leaves; where no value differs, the slots that make its members exist.</summary>
    public IReadOnlyList<string> OfExistence(Bits? a, Bits? b, int[] members)
    {
        var leaves = OfValues(a, b);
        return leaves.Count > 0 ? leaves : OfSlots(o => string.Join(',', o.Governs.Where(members.Contains).Order()));
    }

    private List<string> Names(Bits? a, Bits? b, Bits mask)
    {
        var names = ((a ?? b)?.InEither(a is null ? null : b, mask) ?? []).Select(_plan.LeafName).ToList();
        names.Sort(StringComparer.Ordinal);
        return names;
    }

    /// <summary>A key without a value that exists on one side only differs as well: it is what that side lacks.</summary>
    private static bool SameValue(in KeyState a, in KeyState b) =>
        (a.Value == b.Value && (a.Exists == b.Exists || !a.Value.IsAbsent)) || (a.Value.IsNumber && b.Value.IsNumber && !Ripple.Differ(a.Value.Number, b.Value.Number));

    private static bool SameMass(CompiledOption? a, CompiledOption? b) =>
        ReferenceEquals(a, b) || (a is not null && b is not null && a.Body.MassBelow == b.Body.MassBelow
            && (a.Body.Masses, b.Body.Masses) switch
            {
                (null, null) => a.Resolved.Root == b.Resolved.Root,
                ({ } x, { } y) => SlotChanges.SameItems(x, y),
                _ => false,
            });

    private static bool Same<T>(CompiledOption? a, CompiledOption? b, Func<CompiledOption, T> contribution) =>
        ReferenceEquals(a, b) || (a is null || b is null ? a is null && b is null : EqualityComparer<T>.Default.Equals(contribution(a), contribution(b)));

    /// <summary>The lines of a list as one comparable text.</summary>
    public static string Text<TItem>(ImmutableArray<TItem>? lines, Func<TItem, string> line) => lines is not { } list ? "" : string.Join('\n', list.Select(line).Order(StringComparer.Ordinal));

    /// <summary>What a slot puts into a price category.</summary>
    public static string Prices(CompiledOption o, string? category) =>
        Text<Slots.PriceLine>(o.Body.Prices is { } lines ? [.. lines.Where(p => category is null || p.Category == category)] : null, p => $"{p.Id} {p.Count} {p.Each} {p.Category}");

    /// <summary>What a slot puts into a trade's hours.</summary>
    public static string Hours(CompiledOption o, string? trade) =>
        Text<Slots.HoursLine>(o.Body.Hours is { } lines ? [.. lines.Where(h => trade is null || h.Trade == trade)] : null, h => $"{h.Trade} {h.Hours?.Mean:R}");

    public static double Originality(CompiledOption o) => o.Slot.Weight * (o.Body.Originality ?? 0);
}
