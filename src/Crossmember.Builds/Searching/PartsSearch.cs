using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Searching;

/// <summary>Every combination of what the build's options and the stock list offer, judged by the calculations of the sheet itself.</summary>
/// <remarks>
/// A combination is out where a finding fails, or is not known though the sheet as it stands knows it. What is left is ranked by the sum of its places by effort, margin, cost and unsprung mass.
/// Loads are those of the sheet; the first of them are worked out as whole sheets, one that fails there falls out after all, and those with the least to watch are told first.
/// </remarks>
public sealed class PartsSearch
{
    /// <summary>More than this is no longer looked at one by one.</summary>
    public const long MostCombinations = 5_000_000;

    /// <summary>So many times more than are told are worked out as whole sheets: of those, the ones with the least to watch are told.</summary>
    private const int Wider = 4;

    private readonly SearchPlan _plan;

    /// <param name="isPage">Which pages' keys the candidates may differ in.</param>
    public PartsSearch(Sheet sheet, SearchGoal goal, Func<string, bool> isPage) => _plan = new(sheet, goal, isPage);

    public IReadOnlyList<SearchPlace> Places => _plan.Places;

    /// <summary>How many ways there are to take one candidate at every place, those included that do not go together.</summary>
    public long Count => _plan.Count;

    /// <param name="best">How many of the best are worked out as whole sheets.</param>
    public SearchResult Run(int best, CancellationToken cancel = default)
    {
        if (_plan.Places.Length == 0 || Count > MostCombinations) return new(this, 0, 0, [], [], [.. Standing([])], [], Count > MostCombinations);
        var standing = new HashSet<string>(StringComparer.Ordinal);
        var all = Walk(standing, cancel);
        // What no choice moves refuses nobody: leave it out and go through them once more.
        for (var unmoved = _plan.Standing(all.Sights).ToList(); unmoved.Count > 0; unmoved = [.. _plan.Standing(all.Sights).Except(standing)])
        {
            standing.UnionWith(unmoved);
            all = Walk(standing, cancel);
        }
        var ranked = Ranking.Of([.. all.Kept.OrderBy(k => k.Index).Select(k => Found(k.Index, k.Effort, k.Margin))]);
        var (confirmed, fallen) = Confirm(ranked, best, standing, cancel);
        var notOffered = all.Rejected.GetValueOrDefault(SearchTally.NotOffered).Count;
        var reasons = all.Rejected.Where(r => r.Key != SearchTally.NotOffered).OrderByDescending(r => r.Value.Count).ThenBy(r => r.Key, StringComparer.Ordinal)
            .Select(r => new SearchReason(r.Key, r.Value.Count, Chosen(r.Value.First), Sentence(r.Key, r.Value.First)));
        return new(this, Count - notOffered, all.Kept.Count - fallen.Count, confirmed, [.. fallen, .. reasons], [.. Standing(standing)],
            [.. all.Ranges.Where(r => r.Killer != SearchTally.NotOffered).OrderBy(r => r.Index)], false);
    }

    private SearchTally Walk(IReadOnlySet<string> standing, CancellationToken cancel)
    {
        var all = new SearchTally(_plan.FindingCount);
        Parallel.For(0, SearchWalk.Beginnings(_plan), new ParallelOptions { CancellationToken = cancel }, () => new SearchWalk(_plan, standing),
            (beginning, _, walk) => { walk.From(beginning); return walk; }, walk => { lock (all) all.Add(walk.Tally); });
        return all;
    }

    /// <summary>The scenario that a combination is: choices over the sheet's own, parts of the stock list as what-ifs.</summary>
    public Scenario AsScenario(IReadOnlyList<Candidate> chosen, string id = "searched")
    {
        var own = _plan.Sheet.Build.Scenarios.GetValueOrDefault(_plan.Sheet.Scenario);
        var choices = _plan.Sheet.Choices.Chosen.ToDictionary(c => c.Key, c => c.Value);
        for (var p = 0; p < Places.Count; p++) if (chosen[p].Option is { } option) choices[Places[p].Slot] = option;
        var whatIf = Choices.WhatIf(_plan.Sheet.Build, own).Select(w => KeyValuePair.Create(w.Key, (Stated?)w.Value)).Concat(chosen.Where(c => c.Stock is not null).SelectMany(c => c.Stated)
            .Select(s => KeyValuePair.Create(s.Key, (Stated?)s.Value)));
        return new(id, null, null, System.Collections.Immutable.ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal, choices), [.. whatIf]);
    }

    /// <summary>The whole sheet of a combination.</summary>
    public Sheet SheetOf(IReadOnlyList<Candidate> chosen) => _plan.Sheet.Plan.Try(_plan.Sheet, AsScenario(chosen));

    internal IReadOnlyList<Candidate> Chosen(long index)
    {
        var chosen = new Candidate[Places.Count];
        for (var p = Places.Count - 1; p >= 0; p--) (index, chosen[p]) = (index / Places[p].Candidates.Count, Places[p].Candidates[(int)(index % Places[p].Candidates.Count)]);
        return chosen;
    }

    private Combination Found(long index, double effort, double margin)
    {
        var chosen = Chosen(index);
        return new(chosen, effort, double.IsFinite(margin) ? margin : null, chosen.Any(c => c.Cost is null) ? null : chosen.Sum(c => c.Cost!.Value), chosen.Any(c => c.UnsprungMass is null) ? null : chosen.Sum(c => c.UnsprungMass!.Value), null);
    }

    private (List<Combination> Kept, List<SearchReason> Fallen) Confirm(List<Combination> ranked, int best, HashSet<string> standing, CancellationToken cancel)
    {
        var (kept, fallen) = (new List<Combination>(), new List<SearchReason>());
        HashSet<string> stands = [.. Standing(standing).Select(f => f.Id)];
        foreach (var one in ranked)
        {
            if (kept.Count == best * Wider) break;
            cancel.ThrowIfCancellationRequested();
            var findings = Confirmed(SheetOf(one.Chosen), stands).ToList();
            var no = findings.Find(f => f.Finding.Verdict == Verdict.Fail);
            if (no is null) kept.Add(one with { Watch = findings.Count(f => f.Finding.Verdict == Verdict.Caution) });
            else fallen.Add(new(no.Id, 1, one.Chosen, no.Finding.Text));
        }
        return ([.. kept.OrderBy(k => k.Margin is null or < 0).ThenBy(k => k.Watch).Take(best)], fallen);
    }

    /// <summary>What decides on a whole sheet: everything that is confirmed, but for what says no whatever is chosen.</summary>
    private IEnumerable<SheetFinding> Confirmed(Sheet sheet, HashSet<string> standing) =>
        sheet.Instances.OfType<InstanceState>().Where(i => _plan.Goal.Confirms(i.Instance)).SelectMany(Sheet.FindingsOf).Where(f => !standing.Contains(f.Id));

    /// <summary>A no that stands whatever is chosen here.</summary>
    private IEnumerable<SheetFinding> Standing(HashSet<string> unmoved)
    {
        var moved = _plan.Steps.Select(s => s.Instance).ToHashSet();
        return _plan.Sheet.Instances.OfType<InstanceState>().Where(i => _plan.Goal.Confirms(i.Instance)).SelectMany(i => Sheet.FindingsOf(i).Where(f => f.Finding.Verdict == Verdict.Fail && (unmoved.Contains(f.Id) || !moved.Contains(i.Instance))));
    }

    private string Sentence(string finding, long index) => SheetOf(Chosen(index)).Findings().FirstOrDefault(f => f.Id == finding)?.Finding.Text ?? finding;
}
