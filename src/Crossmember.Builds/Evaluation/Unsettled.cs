using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>One thing nobody knows yet, how to find it out, and how many checks wait for it.</summary>
/// <param name="What">A key pattern, or <c>mass</c>.</param>
public sealed record Unsettled(string What, string Meaning, string Measure, int Checks)
{
    /// <summary>What the ledger is called among what is missing.</summary>
    public const string Mass = "mass";

    /// <summary>What would settle the sheet's unknown checks, the one that most of them wait for first.</summary>
    public static IReadOnlyList<Unsettled> Of(Sheet sheet)
    {
        var waiting = ByKey(sheet).GroupBy(w => sheet.Plan.Catalogue.Table.Of(w.Key)?.Text ?? w.Key, StringComparer.Ordinal)
            .Select(g => (What: g.Key, Checks: g.SelectMany(w => w.Value).Distinct(StringComparer.Ordinal).Count()));
        return [.. waiting.Select(w => Told(sheet, w.What, w.Checks)).OrderByDescending(u => u.Checks).ThenBy(u => u.What, StringComparer.Ordinal)];
    }

    /// <summary>By each single key that nobody states, or <see cref="Mass"/>: the ids of the findings that wait for it.</summary>
    public static IReadOnlyDictionary<string, IReadOnlySet<string>> ByKey(Sheet sheet)
    {
        var waiting = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        void Add(string what, string finding) => (waiting.TryGetValue(what, out var set) ? set : waiting[what] = new(StringComparer.Ordinal)).Add(finding);
        var publisher = sheet.Instances.OfType<InstanceState>().SelectMany(i => i.Instance.Publishes.Where(k => k >= 0).Select(k => (Key: k, State: i))).ToDictionary(p => p.Key, p => p.State);
        foreach (var state in sheet.Instances.OfType<InstanceState>())
        {
            foreach (var f in Sheet.FindingsOf(state).Where(f => f.Finding.Verdict == Verdict.Unknown))
            {
                foreach (var key in Roots(state, f.Finding.Check, publisher, sheet)) Add(sheet.Plan.Space.KeyName(key), f.Id);
                if (sheet.Totals.Mass.Kilograms is null && RestsOnMass(sheet, state)) Add(Mass, f.Id);
            }
        }
        return waiting.ToDictionary(w => w.Key, w => (IReadOnlySet<string>)w.Value, StringComparer.Ordinal);
    }

    /// <summary>Keys that somebody could state: what a check lacks, and where a calculation should have published that, what it lacks in turn. An optional input holds nothing up.</summary>
    private static IEnumerable<int> Roots(InstanceState state, string check, Dictionary<int, InstanceState> publisher, Sheet sheet)
    {
        var calculation = state.Instance.Calculation;
        var needs = calculation.About.Checks.FirstOrDefault(c => c.Id == check)?.Needs ?? [];
        var missing = state.Outcome.Missing.Select(m => calculation.InputIndex(m.Input)).ToList();
        var lacking = missing.Where(i => !calculation.InputSpecs[i].Optional || needs.Contains(calculation.InputSpecs[i].Name)).ToList();
        // Where one of several would do, none is indispensable by itself.
        if (lacking.Count == 0) lacking = calculation.About.Either is { Count: > 0 } either ? [.. missing.Where(i => either.Contains(calculation.InputSpecs[i].Name))] : missing;
        foreach (var key in lacking.SelectMany(i => KeysOf(state.Instance.Inputs[i])).Where(k => sheet.Keys[k] is { Exists: true, Value.IsAbsent: true } && !sheet.Plan.Space.PatternOf(k).IsLedger))
            if (!publisher.TryGetValue(key, out var source)) yield return key;
            else foreach (var deeper in Roots(source, "", publisher, sheet)) yield return deeper;
    }

    private static IEnumerable<int> KeysOf(InputSource source) => source.Map?.Select(m => m.Key) ?? (source.Key >= 0 ? [source.Key] : []);

    /// <summary>Through the ledger, or through a load that comes of it.</summary>
    private static bool RestsOnMass(Sheet sheet, InstanceState state) => state.Instance.Inputs.Any(i => i.Key >= 0 && sheet.Keys[i.Key].Value.IsAbsent
        && (sheet.Plan.Space.PatternOf(i.Key).IsLedger || sheet.Plan.Space.PatternOf(i.Key).Text.EndsWith(".load", StringComparison.Ordinal)));

    private static Unsettled Told(Sheet sheet, string what, int checks)
    {
        if (what == Mass) return new(what, "the vehicle's mass", sheet.ModelFindings.FirstOrDefault(f => f.Id == "model/mass")?.Finding.Text ?? "weigh it", checks);
        var pattern = sheet.Plan.Catalogue.Table.All.First(p => p.Text == what);
        return new(what, pattern.Meaning, pattern.Measure, checks);
    }
}
