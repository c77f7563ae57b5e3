using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Folding;

/// <summary>Which entries of a stream still matter to the build: a year of work folds as fast as what it left standing. A snapshot keeps this list.</summary>
public static class LivingEntries
{
    private static readonly EntryKind[] s_each = [EntryKind.WeighingTaken, EntryKind.ScenarioApproved, EntryKind.ScenarioOpened, EntryKind.ScenarioDropped];

    /// <summary>
    /// Of the kinds that replace, the last on its subject; the first as well, because a first mention fixes the place in a list and lets others refer to it.
    /// What was said of an item before it was defined is passed over by the fold, so the first mention after that counts too.
    /// Logs add to projections, not to the build; weighings and approvals all count, and so does every opening and dropping of a scenario, because dropping forgets.
    /// </summary>
    public static IReadOnlyList<Standing> Of(IReadOnlyList<Standing> standing)
    {
        var first = new Dictionary<(string, string, bool), int>();
        var last = new Dictionary<(string, string), int>();
        var living = new SortedSet<int>();
        var defined = new HashSet<string>(StringComparer.Ordinal);
        for (var i = 0; i < standing.Count; i++)
        {
            var fact = standing[i].Fact;
            if (EntryKind.Find(fact.Kind) is not { } kind || s_each.Contains(kind)) living.Add(i);
            else if (kind.Nature == EntryNature.State)
            {
                if (kind == EntryKind.SlotDefined) defined.Add(fact.Subject);
                first.TryAdd((fact.Kind, fact.Subject, defined.Contains(SlotOf(fact.Subject))), i);
                last[(fact.Kind, fact.Subject)] = i;
            }
        }
        living.UnionWith(first.Values);
        living.UnionWith(last.Values);
        return [.. living.Select(i => standing[i])];
    }

    /// <summary>Corrections travel with what they correct.</summary>
    public static IReadOnlyList<long> Sequences(IReadOnlyList<Standing> living) =>
        [.. living.SelectMany(s => s.CorrectedAt.Insert(0, s.Entry.Sequence)).Order()];

    private static string SlotOf(string subject) => subject.Split('/') is [var head, var slot, ..] ? $"{head}/{slot}" : subject;
}
