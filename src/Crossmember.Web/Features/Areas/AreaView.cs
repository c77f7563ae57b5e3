using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Figures;

namespace Crossmember.Web.Features.Areas;

/// <summary>What one side, and the side it is compared with, say of one part of the engineering.</summary>
/// <param name="prefixes">Ids of its calculations; with a full stop at the end: how they begin.</param>
public class AreaView(OpenBuild open, ShopFacts shop, string scenario, string? against, params string[] prefixes)
{
    public OpenBuild Open => open;

    public Build Build => open.Build;

    public Sheet Now { get; } = open.Sheet(scenario, shop)!;

    public Sheet? Then { get; } = against is null || against == scenario ? null : open.Sheet(against, shop);

    /// <summary>What a side can be compared with: what is approved first, then as it was found, then the other what-ifs.</summary>
    public static IReadOnlyList<string> Sides(OpenBuild open, string scenario) =>
        [.. new[] { open.Approval is null ? null : Option.Approved, Option.AsFound }.Concat(open.Build.Scenarios.Keys).OfType<string>().Where(s => s != scenario)];

    /// <summary>Heaviest first: what carries the most climbs the least.</summary>
    public IReadOnlyList<string> Conditions => [.. Members("condition").OrderByDescending(c => Now.Key($"mass.{c}.total")?.Value is { IsNumber: true } mass ? mass.Number : 0)];

    /// <summary>Every check of the area, worst first.</summary>
    public IReadOnlyList<SheetFinding> Findings =>
        [.. Instances(Now).SelectMany(Sheet.FindingsOf).Concat(Now.ModelFindings.Where(f => prefixes.Any(p => f.Id.StartsWith(p, StringComparison.Ordinal)))).OrderByDescending(f => f.Finding.Verdict).ThenBy(f => f.Id, StringComparer.Ordinal)];

    /// <summary>Its calculations with their instances, in the order of the catalogue's ids.</summary>
    public IReadOnlyList<IGrouping<Calculation, InstanceState>> Calculations =>
        [.. Instances(Now).GroupBy(i => i.Instance.Calculation).OrderBy(g => g.Key.Id, StringComparer.Ordinal)];

    /// <summary>The same instance on the side compared with.</summary>
    public InstanceState? Past(InstanceState now) => Then?.Instance(now.Instance.Id);

    /// <summary>The curves it draws on both sides.</summary>
    public IReadOnlyList<(CurveChart Chart, CurveFiles Files)> Charts(InstanceState state, MeasureSystem measure) =>
        [.. (SheetCurves.Of(Now, Then, state.Instance.Id, measure) ?? []).Select((chart, i) => (chart, new CurveFiles(Build.Id, state.Instance.Id, Now.Scenario, Then?.Scenario, measure, i + 1)))];

    /// <summary>The curves of all instances of a calculation, together where they are drawn over the same axes.</summary>
    public IReadOnlyList<(CurveChart Chart, CurveFiles Files)> Together(string calculation, MeasureSystem measure) =>
        [.. (SheetCurves.Of(Now, Then, calculation, measure) ?? []).Select((chart, i) => (chart, new CurveFiles(Build.Id, calculation, Now.Scenario, Then?.Scenario, measure, i + 1)))];

    /// <summary>What its calculations lack, what lacks it most first.</summary>
    public IReadOnlyList<Lacking> Missing =>
    [
        .. from state in Instances(Now)
           where IsAsked(state)
           from missing in Lacks(state)
           let pattern = Now.Plan.Catalogue.ParameterOf(state.Instance.Calculation.Id, missing.Input) is { } p ? Now.Plan.Catalogue.Table.All.FirstOrDefault(t => t.Text == Family(p)) : null
           group state.Instance.Calculation.About.Title by (What: pattern?.Meaning ?? state.Instance.Calculation.InputSpecs[state.Instance.Calculation.InputIndex(missing.Input)].About.Meaning,
               Key: pattern?.Text ?? missing.Input, How: pattern?.Measure is { Length: > 0 } how ? how : missing.Measure) into g
           orderby g.Distinct().Count() descending, g.Key.Key
           select new Lacking(g.Key.What, g.Key.Key, g.Key.How, [.. g.Distinct().Order(StringComparer.Ordinal)]),
    ];

    /// <summary>An input that is a peak figure is asked for only where the curve it stands in for is not known.</summary>
    protected virtual bool StandsIn(InstanceState state, string input) => false;

    /// <summary>Whether nothing of it waits, so that what it lacks matters to nobody.</summary>
    protected virtual bool IsAnswered(InstanceState state) => state.Outcome.Outputs.All(o => !o.IsAbsent);

    /// <summary>Whether what it lacks is asked for at all.</summary>
    protected virtual bool IsAsked(InstanceState state) => true;

    protected IEnumerable<InstanceState> Instances(Sheet sheet) =>
        sheet.Instances.OfType<InstanceState>().Where(i => prefixes.Any(p => p.EndsWith('.') ? i.Instance.Calculation.Id.StartsWith(p, StringComparison.Ordinal) : i.Instance.Calculation.Id == p));

    protected IEnumerable<string> Members(string set) => Now.Plan.Space.MembersIn(set).Where(m => Now.Alive[m]).Select(m => Now.Plan.Space.Member(m).Member);

    /// <summary>An input that the arithmetic can do without is missed only where a check needs it, or where nothing else explains an answer that is not there.</summary>
    private IEnumerable<MissingInput> Lacks(InstanceState state)
    {
        var (calculation, outcome) = (state.Instance.Calculation, state.Outcome);
        bool Waited(MissingInput m) => calculation.About.Checks.Any(c => c.Needs.Contains(m.Input) && outcome.Findings.Any(f => f.Check == c.Id && f.Verdict == Verdict.Unknown));
        var needed = outcome.Missing.Where(m => !calculation.InputSpecs[calculation.InputIndex(m.Input)].Optional || Waited(m)).ToList();
        return needed.Count > 0 || IsAnswered(state) ? needed : outcome.Missing.Where(m => !StandsIn(state, m.Input));
    }

    /// <summary>A binding names a member or a star where the table names the set.</summary>
    private string Family(string key) => Now.Plan.Catalogue.Table.Of(key.Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal))?.Text ?? key;
}

/// <summary>Something that is not known, and what waits for it.</summary>
public sealed record Lacking(string What, string Key, string How, IReadOnlyList<string> Waiting);
