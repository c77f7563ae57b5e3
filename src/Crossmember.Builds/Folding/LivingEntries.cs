using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Folding;

/// <summary>Which entries of a stream still matter to the build: a year of work folds as fast as what it left standing. A snapshot keeps this list.</summary>
public static class LivingEntries
{
    /// <summary>
    /// Of the kinds that replace, the last on its subject; the first as well, because a first mention fixes the place in a list and lets others refer to it.
    /// Logs add to projections, not to the build; weighings and approvals all count.
    /// </summary>
    public static IReadOnlyList<Standing> Of(IReadOnlyList<Standing> standing)
    {
        var first = new Dictionary<(string, string), int>();
        var last = new Dictionary<(string, string), int>();
        var living = new SortedSet<int>();
        for (var i = 0; i < standing.Count; i++)
        {
            var fact = standing[i].Fact;
            if (EntryKind.Find(fact.Kind) is not { } kind || kind == EntryKind.WeighingTaken || kind == EntryKind.ScenarioApproved) living.Add(i);
            else if (kind.Nature == EntryNature.State)
            {
                first.TryAdd((fact.Kind, fact.Subject), i);
                last[(fact.Kind, fact.Subject)] = i;
            }
        }
        living.UnionWith(first.Values);
        living.UnionWith(last.Values);
        return [.. living.Select(i => standing[i])];
    }

    /// <summary>A correction travels with what it corrects.</summary>
    public static IReadOnlyList<long> Sequences(IReadOnlyList<Standing> living) =>
        [.. living.SelectMany(s => s.Correction is { } c ? [s.Entry.Sequence, c.Sequence] : new[] { s.Entry.Sequence }).Order()];
}
