using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Curves;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>A calculation on paper: everything a person needs to follow it with a hand calculator, years later.</summary>
public static class CalculationReport
{
    /// <summary>One that stands alone.</summary>
    public static Document Of(Case only, Imprint imprint) => Compose([only], null, imprint);

    /// <summary>Instances of one calculation in a sheet.</summary>
    public static Document Of(IReadOnlyList<Case> cases, Sheet sheet, Imprint imprint) => Compose(cases, sheet, imprint);

    private static Document Compose(IReadOnlyList<Case> cases, Sheet? sheet, Imprint imprint)
    {
        var about = cases[0].Calculation.About;
        var name = sheet is null ? about.Title : $"{about.Title}: {BuildName(sheet)}";
        var blocks = new List<Block> { new Block.Heading(1, about.Title), Facts(about, cases, sheet, imprint), new Block.Paragraph(about.Purpose) };
        if (cases.Count > 1) blocks.AddRange(CaseBlocks.Formula(about));
        foreach (var one in cases)
        {
            if (cases.Count > 1) blocks.Add(new Block.Heading(2, one.Where.Length > 0 ? ShopWords.Sentence(one.Where) : one.Id));
            blocks.AddRange(CaseBlocks.Of(one, cases.Count == 1, imprint.Measure));
        }
        blocks.AddRange(Method(about));
        return new(name, sheet is null ? $"Calculation · {about.Title}" : $"{BuildName(sheet)} · {about.Title} · {ShopWords.Scenario(sheet.Scenario, sheet.Build)}", imprint.Foot(sheet), imprint.Made, blocks);
    }

    private static string BuildName(Sheet sheet) => sheet.Build.Title.Length > 0 ? sheet.Build.Title : sheet.Build.Id;

    private static Block.Facts Facts(Description about, IReadOnlyList<Case> cases, Sheet? sheet, Imprint imprint)
    {
        var facts = new List<Named> { new("Calculation", cases.Count == 1 ? cases[0].Id : about.Id), new("Method version", about.Version.ToString(null, null)) };
        if (sheet is not null)
        {
            facts.Add(new("Build", BuildName(sheet)));
            facts.Add(new("What-if", ShopWords.Scenario(sheet.Scenario, sheet.Build)));
            if (cases is [{ Where.Length: > 0 } one]) facts.Add(new("For", one.Where));
            facts.Add(new("As of", imprint.AsOf(sheet)));
        }
        facts.Add(new("Made", imprint.Printed));
        return new(facts);
    }

    private static IEnumerable<Block> Method(Description about)
    {
        yield return new Block.Heading(2, "Where it holds");
        yield return new Block.Paragraph(about.Validity);
        yield return new Block.Heading(2, "Sources");
        yield return new Block.Bullets([.. about.Sources.Select(s => (Text)s)]);
        yield return new Block.Notice("Caution", [.. about.Cautions.Append(ShopWords.Caution).Select(c => (Text)c)]);
    }
}

/// <summary>The parts of a report that belong to one case.</summary>
internal static class CaseBlocks
{
    /// <param name="alone">Whether it is the only one of its calculation, so that its formula stands within it.</param>
    public static IEnumerable<Block> Of(Case one, bool alone, MeasureSystem measure)
    {
        yield return Inputs(one);
        if (alone)
            foreach (var block in Formula(one.Calculation.About)) yield return block;
        if (Working(one.Outcome, "Working") is { } working) yield return working;
        yield return Outputs(one, measure);
        if (one.Findings.Count > 0) yield return Findings(one, measure);
        foreach (var block in Curves(one, alone ? 2 : 3, measure)) yield return block;
        if (one.Lacking.ToList() is { Count: > 0 } missing)
            yield return new Block.Table("Not known, and how to get it", [new("input"), new("the quickest way")], [.. missing.Select(m => new Row([Meaning(one, m.Input), ShopWords.Sentence(m.Measure)]))]);
        if (one.Outcome.Cautions.Except(one.Calculation.About.Cautions).ToList() is { Count: > 0 } own)
            yield return new Block.Notice("Caution, for these numbers", [.. own.Select(c => (Text)Sentences.InMeasures(ShopWords.Sentence(c), measure))]);
    }

    public static IEnumerable<Block> Formula(Description about) => [new Block.Heading(2, "Formula"), new Block.Paragraph(about.Formula)];

    private static Block.Table Inputs(Case one) => new("What goes in", [new("input"), new("value", true), new("where from")],
        [.. one.Inputs.Select(i => new Row([ShopWords.Sentence(i.Spec.About.Meaning), i.Value, i.WhereFrom]))]);

    /// <summary>Null where there is none.</summary>
    public static Block.Table? Working(Outcome outcome, string caption) => outcome.Working.Count == 0 ? null
        : new(caption, [new("symbol"), new("formula"), new("numbers put in"), new("gives", true)],
            [.. outcome.Working.Select(l => new Row([Run.Strong(l.Symbol), l.Formula, l.Substituted, Values.WithUnit(l.Value, l.Unit)]))]);

    private static string Meaning(Case one, string input) => ShopWords.Sentence(one.Calculation.InputSpecs[one.Calculation.InputIndex(input)].About.Meaning);

    private static Block.Table Outputs(Case one, MeasureSystem measure) => new("What comes out", [new("output"), new("value", true), new("as worked out", true)],
        [.. one.Calculation.OutputSpecs.Select((spec, i) => new Row([ShopWords.Sentence(spec.About.Meaning), Run.Strong(Values.Tell(spec, one.Outcome.Outputs[i], measure) + Spread(one, i, measure)), Values.AsFixed(spec, one.Outcome.Outputs[i])]))]);

    private static string Spread(Case one, int output, MeasureSystem measure) =>
        one.Spread?[output] is { } s && s > 0 && double.IsFinite(s) && one.Outcome.Outputs[output].IsNumber && one.Calculation.OutputSpecs[output].Dimension is { } dimension && dimension != Dimension.Temperature
            ? $" ± {Values.Spread(s, dimension, measure)}" : "";

    private static Block.Table Findings(Case one, MeasureSystem measure) => new("What the checks say", [new("verdict"), new("check"), new("what it says"), new("value and limit", true)],
        [.. one.Findings.OrderByDescending(f => f.Verdict).Select(f => new Row([Run.Of(f.Verdict), Asks(one, f), Said(f, measure), Shown.Compared(f, measure, "\n") ?? ""]))]);

    private static string Asks(Case one, Finding finding) => ShopWords.Sentence(one.Calculation.About.Checks.FirstOrDefault(c => c.Id == finding.Check)?.Asks ?? finding.Check);

    private static Text Said(Finding finding, MeasureSystem measure) => finding.Source is { Length: > 0 } source
        ? new Text(Sentences.InMeasures(finding.Text, measure, finding.Exact) + " ", Run.Hint($"Limit from: {source}")) : Sentences.InMeasures(finding.Text, measure, finding.Exact);

    private static IEnumerable<Block> Curves(Case one, int level, MeasureSystem measure)
    {
        var charts = CurveChart.Of(one.Calculation.About.Title, new("", one.Outcome.Curves), null, measure);
        if (charts.Count == 0) yield break;
        yield return new Block.Heading(level, "Curves");
        foreach (var chart in charts)
        {
            yield return new Block.Figure($"{chart.Title}: {chart.Y.Title} against {chart.X.Title}", new Picture.Curves(chart));
            yield return CurveBlocks.Table(chart);
        }
    }
}
