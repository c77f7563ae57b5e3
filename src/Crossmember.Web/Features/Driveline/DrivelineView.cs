using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Web.Features.Figures;

namespace Crossmember.Web.Features.Driveline;

/// <summary>What one side, and the side it is compared with, say of the driveline.</summary>
public sealed class DrivelineView(OpenBuild open, ShopFacts shop, string scenario, string? against)
{
    private const string Area = "driveline.";

    /// <summary>Calculations that draw curves over road speed, in the order they are looked at.</summary>
    private static readonly string[] s_drawn = ["driveline.speed-curves", "driveline.tractive-curves"];

    public OpenBuild Open => open;

    public Build Build => open.Build;

    public Sheet Now { get; } = open.Sheet(scenario, shop)!;

    public Sheet? Then { get; } = against is null || against == scenario ? null : open.Sheet(against, shop);

    /// <summary>What a side can be compared with: what is approved first, then as it was found, then the other what-ifs.</summary>
    public static IReadOnlyList<string> Sides(OpenBuild open, string scenario) =>
        [.. new[] { open.Approval is null ? null : Option.Approved, Option.AsFound }.Concat(open.Build.Scenarios.Keys).OfType<string>().Where(s => s != scenario)];

    public IReadOnlyList<string> Ranges => [.. Members("range")];

    /// <summary>Heaviest first: what carries the most climbs the least.</summary>
    public IReadOnlyList<string> Conditions => [.. Members("condition").OrderByDescending(c => Now.Key($"mass.{c}.total")?.Value is { IsNumber: true } mass ? mass.Number : 0)];

    /// <summary>The curves of a range of the transfer case, the vehicle loaded as in a condition.</summary>
    public IReadOnlyList<(CurveChart Chart, CurveFiles Files)> Charts(string? range, string? condition, MeasureSystem measure) =>
    [
        .. from calculation in s_drawn
           from state in Instances(Now)
           where state.Instance.Calculation.Id == calculation && Belongs(state, range, condition)
           from drawn in SheetCurves.Of(Now, Then, state.Instance.Id, measure)!.Select((chart, i) => (chart, i))
           select (drawn.chart, new CurveFiles(Build.Id, state.Instance.Id, Now.Scenario, Then?.Scenario, measure, drawn.i + 1)),
    ];

    /// <summary>In rad/s; null where nobody said.</summary>
    public double? Redline => Now.Key("engine.redline")?.Value is { IsNumber: true } redline ? redline.Number : null;

    /// <summary>One number that a calculation gives on both sides, in SI.</summary>
    public Compared Number(string calculation, string output, string members = "") => new(One(Now, calculation, output, members), One(Then, calculation, output, members));

    public IReadOnlyList<GearRow> Gears(string range) =>
    [
        .. Members("gear").Select(gear => (Gear: gear, At: $"[gear={gear},range={range}]"))
            .Where(g => Now.Instance(Area + "overall-ratio" + g.At) is not null)
            .Select(g => new GearRow(g.Gear, Number(Area + "overall-ratio", "ratio", g.At), Number(Area + "road-speed", "roadSpeed", g.At), Number(Area + "engine-speed", "engineSpeed", g.At))),
    ];

    /// <summary>Every check of the driveline, worst first.</summary>
    public IReadOnlyList<SheetFinding> Findings =>
        [.. Instances(Now).SelectMany(Sheet.FindingsOf).OrderByDescending(f => f.Finding.Verdict).ThenBy(f => f.Id, StringComparer.Ordinal)];

    /// <summary>What the driveline's calculations lack, what lacks it most first.</summary>
    public IReadOnlyList<Lacking> Missing =>
    [
        .. from state in Instances(Now)
           from missing in Lacks(state)
           let pattern = Now.Plan.Catalogue.ParameterOf(state.Instance.Calculation.Id, missing.Input) is { } p ? Now.Plan.Catalogue.Table.All.FirstOrDefault(t => t.Text == Family(p)) : null
           group state.Instance.Calculation.About.Title by (What: pattern?.Meaning ?? state.Instance.Calculation.InputSpecs[state.Instance.Calculation.InputIndex(missing.Input)].About.Meaning,
               Key: pattern?.Text ?? missing.Input, How: pattern?.Measure is { Length: > 0 } how ? how : missing.Measure) into g
           orderby g.Distinct().Count() descending, g.Key.Key
           select new Lacking(g.Key.What, g.Key.Key, g.Key.How, [.. g.Distinct().Order(StringComparer.Ordinal)]),
    ];

    public IReadOnlyList<AxleRatioOption> AxleRatios => AxleRatioOption.Of(Now, Number(Area + "restoring-ratio", "axleRatio").Now);

    /// <summary>An input that the arithmetic can do without is missed only where a check needs it, or where nothing else explains an answer that is not there.</summary>
    private static IEnumerable<MissingInput> Lacks(InstanceState state)
    {
        var (calculation, outcome) = (state.Instance.Calculation, state.Outcome);
        bool Waited(MissingInput m) => calculation.About.Checks.Any(c => c.Needs.Contains(m.Input) && outcome.Findings.Any(f => f.Check == c.Id && f.Verdict == Verdict.Unknown));
        var needed = outcome.Missing.Where(m => !calculation.InputSpecs[calculation.InputIndex(m.Input)].Optional || Waited(m)).ToList();
        return needed.Count > 0 || outcome.Outputs.All(o => !o.IsAbsent) ? needed : outcome.Missing.Where(m => !StandsIn(state, m.Input));
    }

    /// <summary>A peak figure is asked for only where the curve it stands in for is not known.</summary>
    private static bool StandsIn(InstanceState state, string input) =>
        input is "peakTorque" or "peakPower" && state.Instance.Calculation.InputIndex("torqueCurve") is >= 0 and var curve && !state.Inputs[curve].IsAbsent;

    private static IEnumerable<InstanceState> Instances(Sheet sheet) => sheet.Instances.OfType<InstanceState>().Where(i => i.Instance.Calculation.Id.StartsWith(Area, StringComparison.Ordinal));

    private IEnumerable<string> Members(string set) => Now.Plan.Space.MembersIn(set).Where(m => Now.Alive[m]).Select(m => Now.Plan.Space.Member(m).Member);

    /// <summary>Sets that an instance has no part in do not matter.</summary>
    private bool Belongs(InstanceState state, string? range, string? condition) =>
        state.Instance.Members.Select(Now.Plan.Space.Member).All(m => m.Member == (m.Set switch { "range" => range, "condition" => condition, _ => m.Member }));

    private static double? One(Sheet? sheet, string calculation, string output, string members) =>
        sheet?.Instance(calculation + members) is { } state && state.Instance.Calculation.OutputIndex(output) is >= 0 and var o && state.Outcome.Outputs[o] is { IsNumber: true } value ? value.Number : null;

    /// <summary>A binding names a member or a star where the table names the set.</summary>
    private string Family(string key) => Now.Plan.Catalogue.Table.Of(key.Replace("{", "", StringComparison.Ordinal).Replace("}", "", StringComparison.Ordinal))?.Text ?? key;
}

/// <summary>A number on both sides, in SI; null where it is not known or there is no such side.</summary>
public readonly record struct Compared(double? Now, double? Then);

/// <summary>A gear in one range: its overall ratio, road speed at the redline, engine speed at cruise.</summary>
public sealed record GearRow(string Gear, Compared Ratio, Compared AtRedline, Compared AtCruise);

/// <summary>Something that is not known, and what waits for it.</summary>
public sealed record Lacking(string What, string Key, string How, IReadOnlyList<string> Waiting);
