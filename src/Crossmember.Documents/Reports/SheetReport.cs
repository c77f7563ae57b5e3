using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Curves;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Reports;

/// <summary>The master sheet of one what-if in a few pages: what is in trouble first, then what it rests on.</summary>
public static class SheetReport
{
    /// <summary>Calculations that draw curves over road speed, in the order they are looked at.</summary>
    private static readonly string[] s_drawn = ["driveline.speed-curves", "driveline.tractive-curves"];

    public static Document Of(Sheet sheet, Imprint imprint)
    {
        var title = sheet.Build.Title.Length > 0 ? sheet.Build.Title : sheet.Build.Id;
        var scenario = ShopWords.Scenario(sheet.Scenario, sheet.Build);
        var measure = imprint.Measure;
        List<Block> blocks =
        [
            new Block.Heading(1, title),
            new Block.Facts(
            [
                new("Phase", sheet.Build.Phase ?? "not said"), new("What-if", scenario), new("As of", imprint.AsOf(sheet)), new("Made", imprint.Printed),
                .. sheet.Build.Stopped is { } stopped ? new Named[] { new("Work is stopped", stopped) } : [],
            ]),
            .. TotalBlocks.Headlines(sheet, measure),
            .. FindingBlocks.Of(sheet, measure),
            .. ItemBlocks.Of(sheet, measure),
            .. Curves(sheet, measure),
            .. TotalBlocks.Breakdown(sheet.Totals),
            .. FindingBlocks.Good(sheet),
            new Block.Heading(2, "Cautions"),
            new Block.Notice("Caution", [ShopWords.Caution, .. Cautions(sheet).Select(c => (Text)c)]),
        ];
        return new($"{title}, {scenario}", $"{title} · master sheet · {scenario}", imprint.Foot(sheet), imprint.Made, blocks);
    }

    /// <summary>Every range of the transfer case, the vehicle loaded as heavily as it is ever meant to be.</summary>
    private static IEnumerable<Block> Curves(Sheet sheet, MeasureSystem measure)
    {
        var heaviest = Members(sheet, "condition").OrderByDescending(c => sheet.Key($"mass.{c}.total")?.Value is { IsNumber: true } mass ? mass.Number : 0).FirstOrDefault();
        var charts = from calculation in s_drawn
                     from state in sheet.Instances.OfType<InstanceState>()
                     where state.Instance.Calculation.Id == calculation && state.Instance.Members.Select(sheet.Plan.Space.Member).All(m => m.Set != "condition" || m.Member == heaviest)
                     from chart in SheetCurves.Of(sheet, null, state.Instance.Id, measure)!
                     select chart;
        var first = true;
        foreach (var chart in charts)
        {
            if (first) yield return new Block.Heading(2, "How it pulls and turns");
            first = false;
            yield return new Block.Figure($"{chart.Title}. Its numbers stand in the report of that calculation.", new Picture.Curves(chart));
        }
    }

    private static IEnumerable<string> Members(Sheet sheet, string set) => sheet.Plan.Space.MembersIn(set).Where(m => sheet.Alive[m]).Select(m => sheet.Plan.Space.Member(m).Member);

    /// <summary>What the calculations of this sheet say must be looked at by somebody qualified, each once.</summary>
    private static IEnumerable<string> Cautions(Sheet sheet) => sheet.Instances.OfType<InstanceState>().SelectMany(i => i.Instance.Calculation.About.Cautions).Distinct(StringComparer.Ordinal);
}
