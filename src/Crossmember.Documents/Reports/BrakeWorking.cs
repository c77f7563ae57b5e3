using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>The calculation sheet of the brakes: everything that goes in, once; what comes out, side by side; the working of the heaviest loading.</summary>
internal sealed class BrakeWorking(Sheet sheet, MeasureSystem measure, string? heaviest)
{
    private const string Area = "brakes.";

    private readonly RowNames _names = new(sheet.Plan, sheet.Build);
    private readonly SheetInputs _inputs = new(sheet, measure);

    public IReadOnlyList<InstanceState> Instances { get; } = [.. sheet.Instances.OfType<InstanceState>().Where(i => i.Instance.Id.StartsWith(Area, StringComparison.Ordinal))];

    public IEnumerable<Block> Blocks()
    {
        yield return new Block.Heading(2, "What goes in");
        yield return Inputs();
        foreach (var group in Instances.Where(i => i.Outcome.Outputs.Any(o => !o.IsAbsent)).GroupBy(i => i.Instance.Calculation).OrderBy(g => g.Key.Id, StringComparer.Ordinal))
        {
            yield return new Block.Heading(2, group.Key.About.Title);
            yield return new Block.Paragraph(new Text($"{group.Key.About.Purpose} ", Run.Strong("Formula: "), group.Key.About.Formula, Run.Hint($" ({group.Key.Id}, method version {group.Key.About.Version})")));
            List<(InstanceState First, string Where)> alike = [.. group.GroupBy(Result).Select(g => (g.First(), string.Join(", ", g.Select(Where).Where(w => w.Length > 0))))];
            yield return Outputs(group.Key, alike);
            foreach (var (state, where) in alike.Where(a => IsShown(a.First)))
                if (CaseBlocks.Working(state.Shown(), where.Length > 0 ? $"Working, {where}" : "Working") is { } working) yield return working;
        }
    }

    /// <summary>Values that no calculation of the brakes makes, by what they mean; what is the same in several places stands once.</summary>
    private Block.Table Inputs()
    {
        var made = Instances.SelectMany(i => i.Instance.Publishes).ToHashSet();
        var keys = Instances.SelectMany(i => i.Instance.Inputs).SelectMany(s => s.Map is { } map ? map.Select(m => m.Key) : s.Key >= 0 ? [s.Key] : (IEnumerable<int>)[])
            .Where(k => !made.Contains(k) && sheet.Keys[k].Exists && !sheet.Keys[k].Value.IsAbsent).Distinct().Order();
        return new("", [new("value", Share: 1.6), new("is", true), new("where from", Share: 1.4)],
        [
            .. keys.Select(k => (Name: _names.Key(sheet.Plan.Space.KeyName(k)), Value: Told(k), From: _inputs.WhereFrom(k))).GroupBy(k => (k.Name.Title, k.Value, k.From))
                .Select(g => new Row([new Text(g.Key.Title, Run.Hint(Places([.. g.Select(k => k.Name.Where).Where(w => w.Length > 0)]))), g.Key.Value, g.Key.From])),
        ]);
    }

    private Block.Table Outputs(Calculation calculation, List<(InstanceState First, string Where)> columns) =>
        new("", [new("what comes out", Share: 1.6), .. columns.Select(c => new Column(c.Where.Length > 0 ? c.Where : "value", true))],
        [
            .. calculation.OutputSpecs.Select((spec, i) => (Spec: spec, I: i)).Where(o => columns.Exists(c => !c.First.Outcome.Outputs[o.I].IsAbsent))
                .Select(o => new Row([ShopWords.Sentence(o.Spec.About.Meaning.Split(';')[0]), .. columns.Select(c => (Text)Values.Tell(o.Spec, c.First.Outcome.Outputs[o.I], measure))])),
        ]);

    private string Told(int key)
    {
        var state = sheet.Keys[key];
        return Shown.Value(state.Value, sheet.Plan.Space.PatternOf(key), state.Source is Source.Option or Source.WhatIf ? state.Typed : null, measure);
    }

    /// <summary>Both sides of an axle, as a rule: the same numbers stand once.</summary>
    private string Result(InstanceState state) => $"{Members(state, "condition")}/{Members(state, "axle")}/" + string.Join('|', state.Instance.Calculation.OutputSpecs.Select((s, i) => Values.Tell(s, state.Outcome.Outputs[i], measure)));

    private bool IsShown(InstanceState state) => Members(state, "condition") is var of && (of.Length == 0 || of == heaviest);

    private string Members(InstanceState state, string set) => string.Concat(state.Instance.Members.Select(sheet.Plan.Space.Member).Where(m => m.Set == set).Select(m => m.Member));

    private string Where(InstanceState state) => _names.Finding(state.Instance.Id + "/").Where;

    private static string Places(List<string> places) => places.Count == 0 ? "" : places.Count > 2 ? $" in all {places.Count} places" : $" {string.Join(" and ", places)}";
}
