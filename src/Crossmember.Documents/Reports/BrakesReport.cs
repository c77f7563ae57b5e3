using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Curves;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>The brakes on paper: what the checks say, every calculation with its working, and the sheets that go to the vehicle: lines, bleeding, gauges, road test.</summary>
public static class BrakesReport
{
    private const string Area = "brakes.";

    /// <summary>Whose curves are drawn, every loading in one picture.</summary>
    private static readonly string[] s_drawn = ["brakes.distribution", "brakes.pedal-line", "brakes.stop", "brakes.drive-heat"];

    public static Document Of(Sheet sheet, Imprint imprint)
    {
        var title = sheet.Build.Title.Length > 0 ? sheet.Build.Title : sheet.Build.Id;
        var scenario = ShopWords.Scenario(sheet.Scenario, sheet.Build);
        var measure = imprint.Measure;
        var conditions = sheet.Build.Sets.Of("condition").OrderBy(c => sheet.Key($"mass.{c}.total") is { Value.IsNumber: true } m ? m.Value.Number : 0).ToList();
        List<Block> blocks =
        [
            new Block.Heading(1, $"Brakes: {title}"),
            new Block.Facts([new("What-if", scenario), new("As of", imprint.AsOf(sheet)), new("Made", imprint.Printed), new("Judged by", sheet.Key("brakes.rule")?.Value.Text ?? "no rule picked yet")]),
            new Block.Notice("Caution", [BrakeWords.Caution]),
            .. FindingBlocks.Of(sheet, measure, f => f.Id.StartsWith(Area, StringComparison.Ordinal)),
            .. s_drawn.SelectMany(d => SheetCurves.Of(sheet, null, d, measure) ?? []).Select(c => new Block.Figure(c.Title, new Picture.Curves(c))),
            .. Working(sheet, measure),
            .. BrakeSheets.Lines(sheet, measure),
            .. BrakeSheets.Bleeding(measure),
            .. BrakeSheets.Gauges(sheet, conditions, measure),
            .. BrakeSheets.RoadTest(measure),
            new Block.Heading(2, "Cautions of the calculations"),
            new Block.Notice("Caution", [.. Instances(sheet).SelectMany(i => i.Instance.Calculation.About.Cautions).Append(ShopWords.Caution).Distinct(StringComparer.Ordinal).Select(c => (Text)c)]),
        ];
        return new($"{title}, {scenario}, brakes", $"{title} \u00b7 brakes \u00b7 {scenario}", imprint.Foot(sheet), imprint.Made, blocks);
    }

    /// <summary>Inputs, working and results of every calculation, in the order of the catalogue.</summary>
    private static IEnumerable<Block> Working(Sheet sheet, MeasureSystem measure)
    {
        foreach (var group in Instances(sheet).Where(i => i.Outcome.Outputs.Any(o => !o.IsAbsent)).GroupBy(i => i.Instance.Calculation).OrderBy(g => g.Key.Id, StringComparer.Ordinal))
        {
            yield return new Block.Heading(2, group.Key.About.Title);
            yield return new Block.Paragraph(group.Key.About.Purpose);
            yield return new Block.Paragraph(new Text(Run.Strong("Formula: "), group.Key.About.Formula));
            foreach (var state in group)
            {
                var one = Case.Of(sheet, state, measure);
                if (one.Where.Length > 0) yield return new Block.Heading(3, ShopWords.Sentence(one.Where));
                foreach (var block in CaseBlocks.Sheet(one, measure)) yield return block;
            }
        }
    }

    private static IEnumerable<InstanceState> Instances(Sheet sheet) => sheet.Instances.OfType<InstanceState>().Where(i => i.Instance.Id.StartsWith(Area, StringComparison.Ordinal));
}
