using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Brakes;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Reports;
using Crossmember.Documents.Tests.Brakes;
using Crossmember.Documents.Tests.Paper;
using Crossmember.Documents.Wording;
using Crossmember.Engineering.Quantities;
using Crossmember.Tests.Brakes;

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
        Assert.All(table.Rows.Where(r => r.Cells[4].Plain == "tube"), r => Assert.EndsWith("____", r.Cells[6].Plain, StringComparison.Ordinal));
    }

    [Fact]
    public void The_calculation_sheet_has_every_input_once_every_result_and_the_working_of_the_heaviest_loading()
    {
        var sheet = GaugeSheetTests.Truck(BrakedTruck.Discs);
        var document = BrakesReport.Of(sheet, Demo.Imprint());
        var tables = document.Blocks.OfType<Block.Table>().ToList();
        var inputs = tables.Single(t => t.Columns[0].Title == "value").Rows.Select(r => (What: r.Cells[0].Plain, Is: r.Cells[1].Plain, From: r.Cells[2].Plain)).ToList();
        Assert.Contains(inputs, i => i.What.StartsWith("Pedal ratio", StringComparison.Ordinal) && i.Is == "6" && i.From.StartsWith("measured: What stops it", StringComparison.Ordinal));
        Assert.Contains(inputs, i => i.What.StartsWith("Bore of the wheel cylinder", StringComparison.Ordinal) && i.Is == "1 in");
        Assert.Contains(inputs, i => i.Is == "2.94 in");
        Assert.Equal(inputs.Count, inputs.Distinct().Count());
        Assert.All((string[])["Line pressure at the pedal force", "Torque of one wheel's brake at"], made => Assert.DoesNotContain(inputs, i => i.What.StartsWith(made, StringComparison.Ordinal)));
        var calculations = sheet.Instances.OfType<InstanceState>().Where(i => i.Instance.Id.StartsWith("brakes.", StringComparison.Ordinal) && i.Outcome.Outputs.Any(o => !o.IsAbsent)).Select(i => i.Instance.Calculation.Id).Distinct();
        Assert.Equal(calculations.Count(), tables.Count(t => t.Columns[0].Title == "what comes out"));
        Assert.Contains(tables, t => t.Caption == "Working, touring");
        Assert.DoesNotContain(tables, t => t.Caption == "Working, empty");
        Assert.Contains(tables, t => t.Caption == "Working, front left, front right");
    }

    [Fact]
    public void Its_numbers_are_those_of_the_sheet_read_back_from_paper()
    {
        var sheet = GaugeSheetTests.Truck(BrakedTruck.Discs);
        using var read = ReadBack.Written(BrakesReport.Of(sheet, Demo.Imprint()), PageSize.Letter);
        var letters = string.Concat(read.Words);
        foreach (var condition in (string[])["empty", "touring"])
        {
            var stop = sheet.Instance($"brakes.stop[condition={condition}]")!;
            var force = stop.Outcome.Outputs[stop.Instance.Calculation.OutputIndex("pedalForce")].Number;
            Assert.Contains(Display.Show(force, Dimension.Force, MeasureSystem.UsCustomary).Replace(" ", "", StringComparison.Ordinal), letters, StringComparison.Ordinal);
        }
        Assert.InRange(read.Pages.Count, 10, 40);
    }

    [Fact]
    public void Two_circuits_and_one_give_the_lines_that_they_need()
    {
        static List<string> Circuits(string scenario) => [.. BrakeLine.Of(GaugeSheetTests.Truck(scenario)).Select(l => l.Circuit).Distinct()];
        Assert.Equal(["only"], Circuits(BrakedTruck.Drums));
        Assert.Equal(["front", "rear"], Circuits(BrakedTruck.Discs));
        var crossed = BrakeLine.Of(GaugeSheetTests.Truck(BrakedTruck.Drums, ("brakes.circuits", "diagonal")));
        Assert.All(crossed.GroupBy(l => l.Circuit), g => Assert.Equal(2, g.Count(l => l.To.EndsWith(" brake", StringComparison.Ordinal))));
        Assert.All((string[])["left front brake", "right front brake", "left rear brake", "right rear brake"], w => Assert.Single(crossed, l => l.To == w));
    }
}
