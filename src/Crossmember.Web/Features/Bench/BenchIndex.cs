using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.Bench;

/// <summary>One instance in the list: for what it is, its worst verdict, the number that tells most.</summary>
/// <param name="Worst">Null where it raises no check.</param>
public sealed record BenchLine(string Id, string Where, Verdict? Worst, string Headline);

/// <summary>A calculation with its instances in a build, worst first.</summary>
/// <param name="Tells">What the numbers of the lines are.</param>
public sealed record BenchGroup(Calculation Calculation, string Tells, IReadOnlyList<BenchLine> Lines)
{
    public Verdict? Worst => Lines.Max(l => l.Worst);
}

/// <summary>A calculation that has no instance in a build, and why.</summary>
public sealed record BenchUnused(Calculation Calculation, string Why);

/// <summary>Everything that can be worked out of a build: trouble first.</summary>
public sealed record BenchIndex(IReadOnlyList<BenchGroup> Groups, IReadOnlyList<BenchUnused> Unused)
{
    public static BenchIndex Of(Sheet sheet, MeasureSystem measure)
    {
        var groups = sheet.Instances.OfType<InstanceState>().GroupBy(i => i.Instance.Calculation)
            .Select(g => Group(g.Key, [.. g], sheet, measure)).OrderByDescending(g => Rank(g.Worst)).ThenBy(g => g.Calculation.About.Title, StringComparer.Ordinal).ToList();
        var used = groups.Select(g => g.Calculation).ToHashSet();
        return new(groups, [.. CalculationList.All.Where(c => !used.Contains(c)).Select(c => new BenchUnused(c, Why(c, sheet)))]);
    }

    /// <summary>The instances of a calculation, in the order of the build's sets.</summary>
    public static IReadOnlyList<InstanceState> Instances(Sheet sheet, string calculation) =>
        [.. sheet.Instances.OfType<InstanceState>().Where(i => i.Instance.Calculation.Id == calculation)];

    /// <summary>The place that an instance is for, in words; empty where there is but one.</summary>
    public static string Where(Sheet sheet, Instance instance) =>
        new RowNames(sheet.Plan, sheet.Build).Finding(instance.Id + "/").Where is var where && where is ['(', .. var only, ')'] ? only : where;

    public static Verdict? Worst(InstanceState state) => Sheet.FindingsOf(state).Select(f => (Verdict?)f.Finding.Verdict).Max();

    private static BenchGroup Group(Calculation calculation, IReadOnlyList<InstanceState> states, Sheet sheet, MeasureSystem measure)
    {
        // The first output, or where no instance knows it the first that one knows: all lines tell the same thing.
        var told = Math.Max(0, Enumerable.Range(0, calculation.OutputSpecs.Count).ToList().FindIndex(o => states.Any(s => !s.Outcome.Outputs[o].IsAbsent)));
        var spec = calculation.OutputSpecs[told];
        return new(calculation, spec.About.Meaning, [.. states.Select(s => new BenchLine(s.Instance.Id, Where(sheet, s.Instance), Worst(s), OutputText.Of(spec, s.Outcome.Outputs[told], measure)))
            .OrderByDescending(l => Rank(l.Worst))]);
    }

    private static int Rank(Verdict? verdict) => verdict is { } v ? (int)v : -1;

    private static string Why(Calculation calculation, Sheet sheet)
    {
        if (sheet.Plan.Catalogue.Bindings.FirstOrDefault(b => b.Calculation == calculation) is not { } binding) return "it reads nothing from a build: use it by itself";
        var lacking = binding.ForEach.Where(set => !sheet.Plan.Space.MembersIn(set).Any(m => sheet.Alive[m])).ToList();
        return lacking.Count > 0 ? $"there is no {string.Join(" and no ", lacking)} in this {Words.WhatIf}" : $"nothing it is for is on the vehicle in this {Words.WhatIf}";
    }
}
