using System.Globalization;
using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Reports;
using Crossmember.Documents.Tests.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Tests.Reports;

public sealed class SheetReportTests
{
    public static TheoryData<string, string> Sheets => [.. Demo.Builds.SelectMany(b => Demo.File(b).Build.Scenarios.Keys.Append("as-found").Select(s => (b, s)))];

    private static Document Report(string build, string scenario = "working", MeasureSystem measure = MeasureSystem.UsCustomary) => SheetReport.Of(Demo.Sheet(build, scenario), Demo.Imprint(measure));

    /// <summary>Everything except figures: what stands as text in both forms.</summary>
    private static Document WithoutFigures(Document document) => document with { Blocks = [.. document.Blocks.Where(b => b is not Block.Figure)] };

    [Theory, MemberData(nameof(Sheets))]
    public void The_paper_and_the_page_of_every_demo_sheet_have_the_same_numbers(string build, string scenario)
    {
        var document = WithoutFigures(Report(build, scenario));
        using var paper = ReadBack.Written(document, PageSize.Letter);
        var main = HtmlTests.Parse(document).QuerySelector("main")!;
        foreach (var cell in main.QuerySelectorAll("th, td, dt, dd, li, p, h1, h2, h3, br")) cell.Insert(AngleSharp.Dom.AdjacentPosition.AfterEnd, " ");
        var onPage = ReadBack.Numbers(main.TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ToHashSet();
        Assert.NotEmpty(onPage);
        Assert.Equal(onPage.Order(StringComparer.Ordinal), ReadBack.Numbers(paper.Words).Distinct().Order(StringComparer.Ordinal));
    }

    [Theory, MemberData(nameof(Sheets))]
    public void Every_item_finding_and_total_stands_in_it(string build, string scenario)
    {
        var sheet = Demo.Sheet(build, scenario);
        using var read = ReadBack.Written(SheetReport.Of(sheet, Demo.Imprint()), PageSize.Letter);
        var words = string.Join(' ', read.Words);
        var letters = string.Concat(read.Words);
        void Stands(string text) => Assert.Contains(text.Replace(" ", "", StringComparison.Ordinal), letters, StringComparison.Ordinal);
        Assert.All(sheet.Build.Slots, s => Assert.All(s.Title.Split(' '), w => Assert.Contains(w, words, StringComparison.Ordinal)));
        Assert.Equal(sheet.Findings().Where(f => f.Finding.Verdict == Verdict.Fail).Select(f => f.Finding.Text).Distinct().Count(), read.Words.Count(w => w == "no") - Spoken(sheet, "no"));
        Stands(Shown.Money(sheet.Totals.CostTotal));
        Stands(Shown.Hours(sheet.Totals.HoursTotal));
        foreach (var verdict in Enum.GetValues<Verdict>()) Stands($"{ShopWords.Of(verdict)} {sheet.Findings().Count(f => f.Finding.Verdict == verdict)}");
        Assert.Contains("Caution", words, StringComparison.Ordinal);
    }

    /// <summary>How often a word stands elsewhere than as a verdict: counted in the blocks, before they are set.</summary>
    private static int Spoken(Sheet sheet, string word)
    {
        var texts = SheetReport.Of(sheet, Demo.Imprint()).Blocks.SelectMany(TextsOf);
        return texts.SelectMany(t => t.Runs).Where(r => r.Mark is null).SelectMany(r => r.Words.Split(' ', '\n')).Count(w => w == word) + 1; // and once in the tally
    }

    private static IEnumerable<Text> TextsOf(Block block) => block switch
    {
        Block.Heading h => [h.Words],
        Block.Paragraph p => [p.Text],
        Block.Bullets b => b.Items,
        Block.Notice n => n.Items,
        Block.Facts f => f.Items.SelectMany(i => (Text[])[i.Name, i.Value]),
        Block.Table t => t.Rows.SelectMany(r => r.Cells),
        Block.Figure f => [f.Caption],
        _ => [],
    };

    /// <summary>The Packhorse's axle: 3,300 lb, which the weighed vehicle with the camper exceeds; the demo guide tells the story.</summary>
    [Fact]
    public void The_worst_stands_on_the_first_page_in_the_readers_measures()
    {
        using var us = ReadBack.Written(Report("packhorse"), PageSize.Letter);
        var first = string.Join(' ', ReadBack.Body(us.Pages[0]));
        Assert.True(first.IndexOf("in trouble", StringComparison.Ordinal) < first.IndexOf("3300 lb", StringComparison.Ordinal), first);
        using var metric = ReadBack.Written(Report("packhorse", measure: MeasureSystem.Metric));
        var same = string.Join(' ', ReadBack.Body(metric.Pages[0]));
        Assert.Contains("1496.9 kg", same, StringComparison.Ordinal); // 3300 lb x 0.45359237
        Assert.DoesNotContain(" lb", same, StringComparison.Ordinal);
    }

    [Fact]
    public void It_says_which_build_which_what_if_and_as_of_when()
    {
        var sheet = Demo.Sheet("packhorse");
        var words = string.Join(' ', HtmlTests.Parse(SheetReport.Of(sheet, Demo.Imprint())).QuerySelectorAll("dl.facts")[0].TextContent.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        Assert.Contains(ShopWords.Scenario("working", sheet.Build), words, StringComparison.Ordinal);
        Assert.Contains("deciding", words, StringComparison.Ordinal);
        Assert.Contains($"entry {sheet.Build.Position} of the build", words, StringComparison.Ordinal);
        Assert.Contains("2026-11-25", words, StringComparison.Ordinal);
        Assert.Contains("2026-11-26 12:00 UTC", words, StringComparison.Ordinal);
        Assert.Contains("a build file", string.Join(' ', SheetReport.Of(sheet, Demo.Imprint() with { FromFile = true }).Foot), StringComparison.Ordinal);
    }

    [Fact]
    public void Where_something_is_not_known_it_says_what_would_settle_it()
    {
        var sheet = Demo.Sheet("steading");
        var needed = Unsettled.Of(sheet);
        Assert.NotEmpty(needed);
        using var read = ReadBack.Written(SheetReport.Of(sheet, Demo.Imprint()), PageSize.Letter);
        var letters = string.Concat(read.Words);
        Assert.All(needed, u => Assert.Contains(ShopWords.Sentence(u.Measure).Replace(" ", "", StringComparison.Ordinal), letters, StringComparison.Ordinal));
    }

    [Fact]
    public void A_value_has_where_it_is_from_beside_it()
    {
        var page = HtmlTests.Parse(Report("packhorse"));
        var row = page.QuerySelectorAll("tr").Single(r => r.QuerySelector("th")?.TextContent == "Rear ring and pinion");
        Assert.Contains("4.27", row.TextContent, StringComparison.Ordinal);
        Assert.Contains("(measured)", row.TextContent, StringComparison.Ordinal);
    }

    [Fact]
    public void The_driveline_is_drawn_where_it_is_known_and_left_out_where_not()
    {
        Assert.Contains(Report("packhorse").Blocks, b => b is Block.Figure { Picture: Picture.Curves });
        Assert.DoesNotContain(Report("steading").Blocks, b => b is Block.Figure { Picture: Picture.Curves });
    }

    [Fact]
    public void Originality_is_a_bar_whose_filled_part_is_the_share()
    {
        var sheet = Demo.Sheet("packhorse");
        var bar = Report("packhorse").Blocks.OfType<Block.Figure>().Select(f => f.Picture).OfType<Picture.Drawn>().Single().Drawing;
        var boxes = bar.Shapes.OfType<Shape.Path>().Select(p => p.Points.Max(s => s.X) - p.Points.Min(s => s.X)).ToList();
        Assert.Equal(sheet.Totals.Originality!.Value, boxes[0] / boxes[1], 9);
    }

    [Fact]
    public void The_same_sheet_is_the_same_bytes_whatever_culture_writes_it()
    {
        Assert.Equal(ReadBack.Bytes(Report("packhorse")), ReadBack.Bytes(Report("packhorse")));
        var (document, before) = (Report("packhorse"), CultureInfo.CurrentCulture);
        var first = ReadBack.Bytes(document, PageSize.Letter);
        var page = ReadBack.Html(document);
        try
        {
            CultureInfo.CurrentCulture = new CultureInfo("") { NumberFormat = { NumberDecimalSeparator = ",", NumberGroupSeparator = "." } };
            Assert.Equal(first, ReadBack.Bytes(document, PageSize.Letter));
            Assert.Equal(page, ReadBack.Html(document));
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
        }
    }
}
