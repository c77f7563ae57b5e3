using Crossmember.Builds.Places;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Reports;
using Crossmember.Documents.Tests.Paper;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Tests.Reports;

public sealed class MassReportTests
{
    private static Document Report(string build, string scenario = "working", MeasureSystem measure = MeasureSystem.UsCustomary) => MassReport.Of(Demo.Sheet(build, scenario), Demo.Imprint(measure));

    /// <summary>Packhorse as wished: 6,900 lb touring, 3,101 and 3,799 on the axles, of which the rear may carry 3,300 (115 %); 4,350 lb on the scale.</summary>
    [Fact]
    public void The_loads_of_the_demo_truck_stand_in_it_as_its_story_has_them()
    {
        using var read = ReadBack.Written(Report("packhorse"), PageSize.Letter);
        var letters = string.Concat(read.Words);
        Assert.All((string[])["6900lb", "3101lb", "3799lb", "3300lb", "115%", "4350lb"], t => Assert.Contains(t, letters, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("packhorse", "working")]
    [InlineData("packhorse", "as-found")]
    [InlineData("steading", "working")]
    public void The_paper_and_the_page_have_the_same_numbers(string build, string scenario)
    {
        var document = Report(build, scenario);
        document = document with { Blocks = [.. document.Blocks.Where(b => b is not Block.Figure)] };
        using var paper = ReadBack.Written(document, PageSize.A4);
        var main = HtmlTests.Parse(document).QuerySelector("main")!;
        foreach (var cell in main.QuerySelectorAll("th, td, dt, dd, li, p, h1, h2, h3, br")) cell.Insert(AngleSharp.Dom.AdjacentPosition.AfterEnd, " ");
        var onPage = ReadBack.Numbers(main.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ToHashSet();
        Assert.Equal(onPage.Order(StringComparer.Ordinal), ReadBack.Numbers(paper.Words).Distinct().Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Every_entry_of_the_ledger_has_its_row_and_the_axles_add_up()
    {
        var sheet = Demo.Sheet("packhorse");
        var lines = LedgerLines.Of(sheet, "touring");
        Assert.True(lines.All.Count >= 40, $"{lines.All.Count}");
        var table = Report("packhorse", measure: MeasureSystem.Metric).Blocks.OfType<Block.Table>().Where(t => t.Columns[0].Title == "entry").MaxBy(t => t.Rows.Count)!;
        Assert.Equal(lines.All.Count + 1, table.Rows.Count);
        var together = table.Rows[^1].Cells.Select(c => string.Concat(c.Runs.Select(r => r.Words))).ToList();
        Assert.Equal(("3130 kg", "1406 kg", "1723 kg"), (together[2], together[4], together[5]));
    }

    [Fact]
    public void Without_a_weighing_it_says_what_to_do_and_guesses_nothing()
    {
        using var read = ReadBack.Written(Report("steading"), PageSize.A4);
        var words = string.Join(' ', read.Words);
        Assert.Contains("never yet", words, StringComparison.Ordinal);
        Assert.Contains("don't know", words, StringComparison.Ordinal);
    }

    [Fact]
    public void The_cautions_of_what_tips_and_lifts_stand_in_it()
    {
        using var read = ReadBack.Written(Report("packhorse"), PageSize.A4);
        Assert.Contains("never a safe slope", string.Join(' ', read.Words), StringComparison.Ordinal);
    }
}
