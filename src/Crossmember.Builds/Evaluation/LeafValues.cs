using System.Collections.Immutable;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>Puts what-ifs and the statements of options in effect into the sheet: which wins, what adds, what conflicts.</summary>
internal sealed class LeafValues(KeySpace space, bool[] alive, CompiledOption?[] inEffect, KeyState[] keys, ModelFindings findings, EvaluationPlan plan)
{
    public void State(ImmutableArray<KeyValuePair<string, Stated>> whatIf)
    {
        for (var k = 0; k < keys.Length; k++) keys[k].PlusMinus = keys[k].PublishedPlusMinus = double.NaN;
        Try(whatIf);
        foreach (var (key, contenders) in Contenders())
            if (keys[key].Source == Source.None)
                Settle(key, contenders);
    }

    private void Try(ImmutableArray<KeyValuePair<string, Stated>> whatIf)
    {
        // Fewer stars win: write the broad ones first and let the exact ones follow.
        foreach (var (pattern, stated) in whatIf.OrderByDescending(w => KeyChecks.Stars(w.Key)))
            foreach (var key in space.Expand(pattern))
                if (Lives(key))
                    Put(key, stated, Source.WhatIf);
    }

    private SortedDictionary<int, List<(int Slot, Stated Stated)>> Contenders()
    {
        var all = new SortedDictionary<int, List<(int, Stated)>>();
        for (var slot = 0; slot < inEffect.Length; slot++)
            foreach (var (key, stated) in inEffect[slot]?.Values ?? [])
            {
                if (!Lives(key)) continue;
                if (!all.TryGetValue(key, out var list)) all.Add(key, list = []);
                list.Add((slot, stated));
            }
        return all;
    }

    private bool Lives(int key) => Array.TrueForAll(space.MembersOf(key), m => alive[m]);

    private void Settle(int key, List<(int Slot, Stated Stated)> contenders)
    {
        if (contenders.Count == 1)
        {
            Put(key, contenders[0].Stated, Source.Option);
            return;
        }
        if (space.PatternOf(key).Merge == Merge.Sum)
        {
            Add(key, contenders);
            return;
        }
        var overriding = contenders.Where(c => inEffect[c.Slot]!.Overrides.Contains(key)).ToList();
        if (overriding.Count == 1)
        {
            Put(key, overriding[0].Stated, Source.Option);
            return;
        }
        (keys[key].Source, keys[key].Exists) = (Source.Conflict, true);
        findings.Conflict(key, [.. contenders.Select(c => c.Slot)]);
    }

    private void Add(int key, List<(int Slot, Stated Stated)> contenders)
    {
        // In the order of slot names, so that the sum does not depend on the order of the file.
        var ordered = contenders.OrderBy(c => plan.SlotNames[c.Slot], StringComparer.Ordinal).Select(c => c.Stated).ToList();
        var spreads = ordered.Select(s => s.PlusMinus).OfType<double>().ToList();
        Put(key, new(Value.Of(ordered.Sum(s => s.Value.Number)), string.Join(" + ", ordered.Select(s => s.Typed)), ordered.Max(s => s.Basis),
            spreads.Count == 0 ? null : Math.Sqrt(spreads.Sum(s => s * s))), Source.Option);
    }

    private void Put(int key, Stated stated, Source source)
    {
        ref var k = ref keys[key];
        (k.Value, k.Source, k.Basis, k.Typed, k.PlusMinus, k.Exists) = (stated.Value, source, stated.Basis, stated.Typed, stated.PlusMinus ?? double.NaN, true);
    }
}
