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
        Steps = [.. Needed(moving, goal).Select(m => new SearchStep(m.Instance, m.Base, m.Mask, Places, goal))];
    }

    public Sheet Sheet { get; }

    public SearchGoal Goal { get; }

    public SearchPlace[] Places { get; }

    /// <summary>In publishing order.</summary>
    public SearchStep[] Steps { get; }

    /// <summary>How many ways there are to take one candidate at every place.</summary>
    public long Count => Places.Aggregate(1L, (n, p) => n * p.Candidates.Count);

    public static IEnumerable<int> KeysOf(InputSource source) => source.Key >= 0 ? [source.Key] : source.Map is { } map ? map.Select(m => m.Key) : [];

    private static IEnumerable<(Instance Instance, InstanceState Base, uint Mask)> Needed(List<(Instance Instance, InstanceState Base, uint Mask)> moving, SearchGoal goal)
    {
        var wanted = new HashSet<int>();
        var needed = new bool[moving.Count];
        for (var i = moving.Count - 1; i >= 0; i--)
        {
            var instance = moving[i].Instance;
            needed[i] = goal.Judges(instance) || instance.Calculation.Id == goal.Effort.Calculation || instance.Publishes.Any(wanted.Contains);
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

    public SearchStep(Instance instance, InstanceState before, uint mask, SearchPlace[] places, SearchGoal goal)
    {
        Instance = instance;
        Level = 31 - System.Numerics.BitOperations.LeadingZeroCount(mask);
        Places = [.. Enumerable.Range(0, places.Length).Where(p => (mask >> p & 1) != 0)];
        Judged = goal.Judges(instance);
        IsMargin = goal.IsMargin(instance);
        Effort = instance.Calculation.Id == goal.Effort.Calculation ? instance.Calculation.OutputIndex(goal.Effort.Output) : -1;
        var kept = Places.Aggregate(1L, (n, p) => n * places[p].Candidates.Count);
        // One that every place up to its own moves never comes twice to the same candidates.
        Kept = kept <= MostKept && Places.Length <= Level ? (int)kept : 0;
        KnownBefore = [.. before.Outcome.Findings.Select(f => f.Verdict != Verdict.Unknown)];
        Raised = [.. before.Outcome.Findings.Select(f => instance.Binding.Does(f.Check))];
    }

    public Instance Instance { get; }

    /// <summary>The last place that moves it: from there on it stands.</summary>
    public int Level { get; }

    /// <summary>The places that move it.</summary>
    public int[] Places { get; }

    public bool Judged { get; }

    public bool IsMargin { get; }

    /// <summary>The output that tells the effort, or -1.</summary>
    public int Effort { get; }

    /// <summary>How many outcomes are worth keeping; 0 none.</summary>
    public int Kept { get; }

    /// <summary>By finding: whether the sheet as it stands knows it; not knowing then is no fault of the candidates.</summary>
    public bool[] KnownBefore { get; }

    public bool[] Raised { get; }
}
