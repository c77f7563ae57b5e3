using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Searching;

/// <summary>What of a sheet moves with the candidates: the instances between what they state and what is judged, each at the place that completes it.</summary>
/// <remarks>Everything else stands as the sheet has it, the loads of the axles too: candidates of a search differ by pounds, a vehicle weighs thousands.</remarks>
internal sealed class SearchPlan
{
    public SearchPlan(Sheet sheet, SearchGoal goal, Func<string, bool> isPage)
    {
        (Sheet, Goal) = (sheet, goal);
        var space = sheet.Plan.Space;
        HashSet<int> read = [.. sheet.Instances.OfType<InstanceState>().SelectMany(i => i.Instance.Inputs).SelectMany(KeysOf).Where(k => isPage(space.PatternOf(k).Page))];
        Places = [.. SearchPlaces.Of(sheet, read, goal)];
        if (Places.Length > MostPlaces) return;
        var mask = new uint[space.KeyCount];
        for (var p = 0; p < Places.Length; p++) foreach (var key in Places[p].Keys) mask[key] |= 1u << p;
        var moving = new List<(Instance Instance, InstanceState Base, uint Mask)>();
        for (var i = 0; i < sheet.Instances.Length; i++)
        {
            if (sheet.Instances[i] is not { } state) continue;
            var own = state.Instance.Inputs.SelectMany(KeysOf).Aggregate(0u, (m, k) => m | mask[k]);
            if (own == 0) continue;
            moving.Add((state.Instance, state, own));
            foreach (var key in state.Instance.Publishes) if (key >= 0) mask[key] |= own;
        }
        Steps = [.. Needed(moving, goal).Select(m => new SearchStep(m.Instance, m.Base, m.Mask, Places, goal, FindingCount += m.Base.Outcome.Findings.Count))];
    }

    /// <summary>Places are told apart by the bits of a word.</summary>
    private const int MostPlaces = 31;

    public Sheet Sheet { get; }

    public SearchGoal Goal { get; }

    public SearchPlace[] Places { get; }

    /// <summary>Findings of all steps, numbered one after the other.</summary>
    public int FindingCount { get; private set; }

    /// <summary>In publishing order.</summary>
    public SearchStep[] Steps { get; } = [];

    /// <summary>How many ways there are to take one candidate at every place.</summary>
    public long Count => Places.Length > MostPlaces ? long.MaxValue : (long)Math.Min(1e18, Places.Aggregate(1.0, (n, p) => n * p.Candidates.Count));

    public static IEnumerable<int> KeysOf(InputSource source) => source.Key >= 0 ? [source.Key] : source.Map is { } map ? map.Select(m => m.Key) : [];

    /// <summary>Ids of findings by their numbers, where they say no whatever is chosen.</summary>
    public IEnumerable<string> Standing(Sight[] sights) => Steps.SelectMany(s => s.Ids.Where((_, f) => sights[s.FirstFinding + f].Stands));

    private static IEnumerable<(Instance Instance, InstanceState Base, uint Mask)> Needed(List<(Instance Instance, InstanceState Base, uint Mask)> moving, SearchGoal goal)
    {
        var wanted = new HashSet<int>();
        var needed = new bool[moving.Count];
        for (var i = moving.Count - 1; i >= 0; i--)
        {
            var instance = moving[i].Instance;
            needed[i] = goal.Judges(instance) || instance.Calculation.Id == goal.Effort.Calculation || instance.Calculation.Id == goal.Margin.Calculation || instance.Publishes.Any(wanted.Contains);
            if (needed[i]) wanted.UnionWith(instance.Inputs.SelectMany(KeysOf));
        }
        return moving.Where((_, i) => needed[i]);
    }
}

/// <summary>One instance of a search.</summary>
internal sealed class SearchStep
{
    /// <summary>More outcomes than this are worked out again rather than kept.</summary>
    private const long MostKept = 1 << 16;

    public SearchStep(Instance instance, InstanceState before, uint mask, SearchPlace[] places, SearchGoal goal, int findingsSoFar)
    {
        (Instance, FirstFinding) = (instance, findingsSoFar - before.Outcome.Findings.Count);
        Level = 31 - System.Numerics.BitOperations.LeadingZeroCount(mask);
        Places = [.. Enumerable.Range(0, places.Length).Where(p => (mask >> p & 1) != 0)];
        Judged = goal.Judges(instance);
        (Effort, Margin) = (OutputOf(instance, goal.Effort), OutputOf(instance, goal.Margin));
        var kept = Places.Aggregate(1L, (n, p) => n * places[p].Candidates.Count);
        // One that every place up to its own moves never comes twice to the same candidates.
        Kept = kept <= MostKept && Places.Length <= Level ? (int)kept : 0;
        KnownBefore = [.. before.Outcome.Findings.Select(f => f.Verdict != Verdict.Unknown)];
        Ids = [.. before.Outcome.Findings.Select(f => $"{instance.Id}/{f.Check}")];
        Raised = [.. before.Outcome.Findings.Select(f => instance.Binding.Does(f.Check))];
    }

    public Instance Instance { get; }

    /// <summary>The last place that moves it: from there on it stands.</summary>
    public int Level { get; }

    /// <summary>The places that move it.</summary>
    public int[] Places { get; }

    public bool Judged { get; }

    /// <summary>The output that tells the effort, or -1.</summary>
    public int Effort { get; }

    /// <summary>The output that tells the margin, or -1.</summary>
    public int Margin { get; }

    /// <summary>How many outcomes are worth keeping; 0 none.</summary>
    public int Kept { get; }

    /// <summary>By finding: whether the sheet as it stands knows it; not knowing then is no fault of the candidates.</summary>
    public bool[] KnownBefore { get; }

    public bool[] Raised { get; }

    /// <summary>Number of its first finding among those of all steps.</summary>
    public int FirstFinding { get; }

    /// <summary>By finding: its id in the sheet.</summary>
    public string[] Ids { get; }

    private static int OutputOf(Instance instance, (string Calculation, string Output) named) => instance.Calculation.Id == named.Calculation ? instance.Calculation.OutputIndex(named.Output) : -1;
}
