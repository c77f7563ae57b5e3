using Crossmember.Documents.Paper;
using Crossmember.Documents.Reports;
using Crossmember.Documents.Tests.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Tests.Reports;

public sealed class BrakesReportTests
{
    private static Document Report(string build, string scenario = "working", MeasureSystem measure = MeasureSystem.UsCustomary) => BrakesReport.Of(Demo.Sheet(build, scenario), Demo.Imprint(measure));

    private static string Words(Document document, PageSize size)
    {
        using var read = ReadBack.Written(document, size);
        return string.Join(' ', read.Words);
    }

    [Theory]
    [InlineData("packhorse", MeasureSystem.UsCustomary)]
    [InlineData("steading", MeasureSystem.Metric)]
    public void Every_sheet_that_goes_to_the_vehicle_is_in_it_on_either_paper(string build, MeasureSystem measure)
    {
        var document = Report(build, measure: measure);
        foreach (var size in (PageSize[])[PageSize.A4, PageSize.Letter])
        {
            var words = Words(document, size);
            Assert.All((string[])["Brakes can kill", "Line schedule", "Filling and bleeding", "Bedding in", "Gauge sheet", "Road-test sheet", "compressed air", "asbestos"], w => Assert.Contains(w, words, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Each_step_and_test_stands_on_paper_word_for_word()
    {
        var words = string.Concat(Words(Report("packhorse"), PageSize.Letter).Split(' '));
        var all = BrakeWords.Bleeding.Concat(BrakeWords.Bedding(MeasureSystem.UsCustomary)).Concat(BrakeWords.GaugeSteps).Concat(BrakeWords.RoadCautions).Concat(BrakeWords.LineCautions)
            .Concat(BrakeWords.RoadTest(MeasureSystem.UsCustomary).SelectMany(t => new[] { t.Test, t.Good }));
        // A cell goes on where the next one begins on paper: each word is looked for.
        Assert.All(all.SelectMany(s => s.Split(' ')).Distinct(), w => Assert.Contains(w, words, StringComparison.Ordinal));
    }

    [Fact]
    public void Speeds_to_drive_are_round_in_either_measure()
    {
        Assert.Contains("20 mph", BrakeWords.RoadTest(MeasureSystem.UsCustomary)[3].Test, StringComparison.Ordinal);
        Assert.DoesNotContain(BrakeWords.RoadTest(MeasureSystem.Metric), t => t.Test.Contains("mph", StringComparison.Ordinal));
        Assert.DoesNotContain(BrakeWords.Bedding(MeasureSystem.Metric), t => t.Contains("mph", StringComparison.Ordinal));
    }

    [Fact]
    public void The_lines_of_the_sheet_are_listed_with_the_hoses_it_knows()
    {
        var table = Report("packhorse").Blocks.OfType<Block.Table>().Single(t => t.Columns[0].Title == "no.");
        var hoses = table.Rows.Where(r => r.Cells[4].Plain == "hose").Select(r => (To: r.Cells[3].Plain, Length: r.Cells[6].Plain)).ToList();
        Assert.Contains(hoses, h => h.To == "left front brake" && h.Length.EndsWith(" in", StringComparison.Ordinal));
        Assert.Contains(hoses, h => h.To == "tee on the rear axle" && h.Length == "12 in");
        Assert.All(table.Rows.Where(r => r.Cells[4].Plain == "tube"), r => Assert.Equal("________", r.Cells[6].Plain));
    }
}
