using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Curves;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Wording;

namespace Crossmember.Documents.Reports;

/// <summary>The brakes on paper: what the checks say, the calculation sheet with its working, and the sheets that go to the vehicle: lines, bleeding, gauges, road test.</summary>
public static class BrakesReport
{
    private const string Area = "brakes.";

    /// <summary>Whose curves are drawn: the balance with every loading in one picture, the rest for the heaviest.</summary>
    private static readonly string[] s_together = ["brakes.distribution", "brakes.pedal-line"], s_heaviest = ["brakes.stop", "brakes.drive-heat"];

    public static Document Of(Sheet sheet, Imprint imprint)
    {
        var title = sheet.Build.Title.Length > 0 ? sheet.Build.Title : sheet.Build.Id;
        var scenario = ShopWords.Scenario(sheet.Scenario, sheet.Build);
        var measure = imprint.Measure;
        var conditions = sheet.Build.Sets.Of("condition").OrderBy(c => sheet.Key($"mass.{c}.total") is { Value.IsNumber: true } m ? m.Value.Number : 0).ToList();
        var heaviest = conditions is [.., var last] ? last : null;
        var working = new BrakeWorking(sheet, measure, heaviest);
        var charts = s_together.Concat(s_heaviest.Select(d => $"{d}[condition={heaviest}]")).SelectMany(d => SheetCurves.Of(sheet, null, d, measure) ?? []).ToList();
        List<Block> blocks =
        [
            new Block.Heading(1, $"Brakes: {title}"),
            new Block.Facts([new("What-if", scenario), new("As of", imprint.AsOf(sheet)), new("Made", imprint.Printed), new("Judged by", sheet.Key("brakes.rule")?.Value.Text ?? "no rule picked yet")]),
            new Block.Notice("Caution", [BrakeWords.Caution]),
            .. FindingBlocks.Of(sheet, measure, f => f.Id.StartsWith(Area, StringComparison.Ordinal)),
            .. FindingBlocks.Good(sheet, f => f.Id.StartsWith(Area, StringComparison.Ordinal)),
            .. charts.Count == 0 ? Array.Empty<Block>() : [new Block.Heading(2, "How it stops"), .. charts.Select(c => new Block.Figure(c.Title, new Picture.Curves(c)))],
            .. working.Blocks(),
            .. BrakeSheets.Lines(sheet, measure),
            .. BrakeSheets.Bleeding(measure),
            .. BrakeSheets.Gauges(sheet, conditions, measure),
            .. BrakeSheets.RoadTest(measure),
            new Block.NewPage(),
            new Block.Heading(2, "Cautions of the calculations"),
            new Block.Notice("Caution", [.. working.Instances.SelectMany(i => i.Instance.Calculation.About.Cautions).Append(ShopWords.Caution).Distinct(StringComparer.Ordinal).Select(c => (Text)c)]),
        ];
        return new($"{title}, {scenario}, brakes", $"{title} · brakes · {scenario}", imprint.Foot(sheet), imprint.Made, blocks);
    }
}
