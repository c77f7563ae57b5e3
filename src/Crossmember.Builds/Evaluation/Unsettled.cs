using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>One thing nobody knows yet, how to find it out, and how many checks wait for it.</summary>
/// <param name="What">A key pattern, or <c>mass</c>.</param>
public sealed record Unsettled(string What, string Meaning, string Measure, int Checks)
{
    /// <summary>What would settle the sheet's unknown checks, the one that most of them wait for first.</summary>
    public static IReadOnlyList<Unsettled> Of(Sheet sheet)
    {
        var waiting = new Dictionary<string, HashSet<string>>(StringComparer.Ordinal);
        void Add(string what, string finding) => (waiting.TryGetValue(what, out var set) ? set : waiting[what] = new(StringComparer.Ordinal)).Add(finding);
        foreach (var state in sheet.Instances.OfType<InstanceState>())
            foreach (var f in Sheet.FindingsOf(state).Where(f => f.Finding.Verdict == Verdict.Unknown))
            {
                foreach (var leaf in f.RestsOn.Items().Where(l => l < sheet.Keys.Length && sheet.Keys[l].Value.IsAbsent)) Add(sheet.Plan.Space.PatternOf(leaf).Text, f.Id);
                if (sheet.Totals.Mass.Kilograms is null && RestsOnMass(sheet, state)) Add("mass", f.Id);
            }
        return [.. waiting.Select(w => Told(sheet, w.Key, w.Value.Count)).OrderByDescending(u => u.Checks).ThenBy(u => u.What, StringComparer.Ordinal)];
    }

    /// <summary>Through the ledger, or through a load that comes of it.</summary>
    private static bool RestsOnMass(Sheet sheet, InstanceState state) => state.Instance.Inputs.Any(i => i.Key >= 0 && sheet.Keys[i.Key].Value.IsAbsent
        && (sheet.Plan.Space.PatternOf(i.Key).IsLedger || sheet.Plan.Space.PatternOf(i.Key).Text.EndsWith(".load", StringComparison.Ordinal)));

    private static Unsettled Told(Sheet sheet, string what, int checks)
    {
        if (what == "mass") return new(what, "the vehicle's mass", sheet.ModelFindings.FirstOrDefault(f => f.Id == "model/mass")?.Finding.Text ?? "weigh it", checks);
        var pattern = sheet.Plan.Catalogue.Table.All.First(p => p.Text == what);
        return new(what, pattern.Meaning, pattern.Measure, checks);
    }
}
