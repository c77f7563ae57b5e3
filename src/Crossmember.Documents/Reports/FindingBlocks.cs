using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>What the checks of a sheet say, worst first, and what would settle those that do not know.</summary>
internal static class FindingBlocks
{
    /// <param name="about">Which findings are told; null: all.</param>
    public static IEnumerable<Block> Of(Sheet sheet, MeasureSystem measure, Func<SheetFinding, bool>? about = null)
    {
        var findings = sheet.Findings().Where(f => about?.Invoke(f) ?? true).ToList();
        var names = new RowNames(sheet.Plan, sheet.Build);
        yield return new Block.Heading(2, "What is in trouble");
        if (findings.Where(f => f.Finding.Verdict == Verdict.Fail).ToList() is { Count: > 0 } fails) yield return Listed(fails, names, measure);
        else yield return new Block.Paragraph($"No check says {ShopWords.Of(Verdict.Fail)} here.");
        if (findings.Where(f => f.Finding.Verdict == Verdict.Caution).ToList() is { Count: > 0 } watch)
        {
            yield return new Block.Heading(2, "To watch");
            yield return Listed(watch, names, measure);
        }
        if (findings.Where(f => f.Finding.Verdict == Verdict.Unknown).ToList() is not { Count: > 0 } unknown) yield break;
        yield return new Block.Heading(2, "Not known yet");
        // Of a part of the sheet the findings themselves name what is missing.
        IReadOnlyList<Unsettled> needed = about is null ? Unsettled.Of(sheet) : [];
        if (needed.Count > 0)
            yield return new Block.Table("What would settle it", [new("what"), new("the quickest way", Share: 1.4), new("checks waiting", true)],
                [.. needed.Select(u => new Row([ShopWords.Sentence(u.Meaning), ShopWords.Sentence(u.Measure), u.Checks.ToString(null, null)]))]);
        yield return Listed(unknown, names, measure);
    }

    /// <summary>What is well needs no sentence, only its name.</summary>
    /// <param name="about">Which findings are told; null: all.</param>
    public static IEnumerable<Block> Good(Sheet sheet, Func<SheetFinding, bool>? about = null)
    {
        var names = new RowNames(sheet.Plan, sheet.Build);
        var good = sheet.Findings().Where(f => f.Finding.Verdict == Verdict.Pass && (about?.Invoke(f) ?? true)).Select(f => names.Finding(f.Id)).GroupBy(n => n.Title).ToList();
        if (good.Count == 0) yield break;
        yield return new Block.Heading(2, "What is good");
        yield return new Block.Table("", [new("verdict"), new("check"), new("where")], [.. good.Select(g => new Row([Run.Of(Verdict.Pass), g.Key, Places(g)]))]);
    }

    private static Block.Table Listed(IReadOnlyList<SheetFinding> findings, RowNames names, MeasureSystem measure) => new("", [new("verdict"), new("check"), new("what it says", Share: 1.6), new("value and limit", true)],
        [.. findings.GroupBy(f => (f.Finding.Verdict, f.Finding.Text)).Select(g => One([.. g], names, measure))]);

    private static Row One(IReadOnlyList<SheetFinding> same, RowNames names, MeasureSystem measure)
    {
        var first = same[0].Finding;
        var named = same.Select(f => names.Finding(f.Id)).ToList();
        var where = Places(named);
        return new([Run.Of(first.Verdict), where.Length > 0 ? new Text(Run.Strong(named[0].Title), Run.Hint($" {where}")) : Run.Strong(named[0].Title),
            Sentences.InMeasures(ShopWords.Brief(first.Text), measure, first.Exact), Shown.Compared(first, measure, "\n") ?? ""]);
    }

    private static string Places(IEnumerable<RowName> names) => string.Join("; ", names.Select(n => n.Where).Where(w => w.Length > 0).Distinct());
}
