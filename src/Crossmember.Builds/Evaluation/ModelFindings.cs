using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>The findings of the model itself; every id of theirs is made here.</summary>
internal sealed class ModelFindings(EvaluationPlan plan)
{
    /// <summary>Gap beyond which a stated and a calculated value of unknown uncertainty differ. Common practice, no source.</summary>
    private const double UsualGap = 0.02;

    private readonly SortedDictionary<string, SheetFinding> _all = new(StringComparer.Ordinal);

    public IReadOnlyList<SheetFinding> Sorted() => [.. _all.Values];

    public void Conflict(int key, IReadOnlyList<int> slots)
    {
        var name = plan.Space.KeyName(key);
        var leaves = new Bits(plan.LeafCount);
        leaves.Add(key);
        var who = string.Join(" and ", slots.Select(s => plan.SlotNames[s]).Order(StringComparer.Ordinal));
        Add($"model/conflict[{name}]", Verdict.Fail, $"{who} both state {name}; until one of them overrides it, or a what-if settles it, it has no value.", leaves);
    }

    public void OfChoices(Build build, Choices choices, CompiledOption?[] inEffect)
    {
        foreach (var (taken, by) in choices.TakenBy)
            if (choices.Chosen.TryGetValue(taken, out var chosen) && chosen is not (Option.None or Option.AsFound))
                Add($"model/takes[{taken}]", Verdict.Fail, $"{by} takes the place of {taken}, but {chosen} is chosen there: leave it off or choose another {by}.", Leaves(taken, by));
        foreach (var option in inEffect.OfType<CompiledOption>())
            foreach (var need in option.Body.Requires ?? [])
                if (!need.Options.Contains(choices[need.Slot].Id))
                    Add($"model/requires[{option.Slot.Id},{need.Slot}]", Verdict.Fail,
                        $"{option.Slot.Id}: {option.Body.Id} needs {need.Slot} to be {string.Join(" or ", need.Options)}; it is {choices[need.Slot].Id}.",
                        Leaves(option.Slot.Id, need.Slot));
    }

    /// <summary>Where a stated value hides a calculated one, the two should agree within what is known of both.</summary>
    public void OfDifferences(KeyState[] keys)
    {
        for (var key = 0; key < keys.Length; key++)
        {
            ref readonly var k = ref keys[key];
            if (k.Source != Source.Option || !k.Value.IsNumber || !k.Published.IsNumber) continue;
            double stated = k.Value.Number, published = k.Published.Number;
            double u1 = Known(k.PlusMinus), u2 = Known(k.PublishedPlusMinus);
            var allowed = u1 + u2 > 0 ? 2 * Math.Sqrt((u1 * u1) + (u2 * u2)) : UsualGap * Math.Abs(stated);
            if (Math.Abs(stated - published) <= allowed) continue;
            var pattern = plan.Space.PatternOf(key);
            var name = plan.Space.KeyName(key);
            var leaves = new Bits(plan.LeafCount);
            leaves.Add(key);
            leaves.Unite(k.PublishedRestsOn!);
            var unit = pattern.Unit!;
            _all[$"model/differs[{name}]"] = new($"model/differs[{name}]", new($"differs[{name}]", Verdict.Caution,
                $"{name} is stated as {k.Typed}, but works out at {Engineering.Quantities.Figures.Short(pattern.Told(published))} {unit}: measure it again or correct what it is worked from.",
                pattern.Told(stated), null, unit.Code, null, null), leaves);
        }
    }

    public void OfTotals(Totals totals)
    {
        if (totals.Mass.Kilograms is null)
        {
            var leaves = new Bits(plan.LeafCount);
            foreach (var slot in totals.Mass.Missing) leaves.Add(plan.SlotLeaf(plan.SlotId(slot)));
            Add("model/mass", Verdict.Unknown, totals.Mass.Weighed
                ? $"The vehicle's mass is not known: weigh the old and the new part of {string.Join(", ", totals.Mass.Missing)}, or say what it is surely below."
                : "The vehicle's mass is not known: put both axles on a scale and note what was fitted and on board.", leaves);
        }
        foreach (var trade in totals.Unrated)
            Add($"model/rate[{trade}]", Verdict.Unknown, $"The shop has no hourly rate for {trade}: its hours are in no sum of money.", new(plan.LeafCount));
        foreach (var slot in totals.Foreign)
            Add($"model/currency[{slot}]", Verdict.Unknown, $"{slot} is priced in another currency than {totals.CostTotal.Currency}: that price is in no sum of money until it is converted.", Leaves(slot));
    }

    /// <summary>Readings that cannot be or are odd, and what the ledger expected of a later weighing.</summary>
    public void OfWeighings(Ledger ledger, IReadOnlyList<ScaleComparison> comparisons)
    {
        if (ledger.Weighed is not { } weighed) return;
        foreach (var (what, verdict, text) in weighed.Findings) Add($"model/weighing[{weighed.Weighing.Date},{what}]", verdict, text, new(plan.LeafCount));
        foreach (var c in comparisons) Add($"model/scale[{c.Date}]", c.Agrees ? Verdict.Pass : Verdict.Caution, c.Text, new(plan.LeafCount));
    }

    private static double Known(double spread) => double.IsNaN(spread) ? 0 : spread;

    private Bits Leaves(params string[] slots)
    {
        var leaves = new Bits(plan.LeafCount);
        foreach (var slot in slots) leaves.Add(plan.SlotLeaf(plan.SlotId(slot)));
        return leaves;
    }

    private void Add(string id, Verdict verdict, string text, Bits leaves) =>
        _all[id] = new(id, new(id["model/".Length..], verdict, text, null, null, null, null, null), leaves);
}
