using System.Text;
using Crossmember.Builds.Evaluation;
using Crossmember.Documents.Paper;
using Crossmember.Documents.Reports;
using Crossmember.Documents.Tests.Paper;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Documents.Tests.Reports;

public sealed class CalculationReportTests
{
    public static TheoryData<string> Calculations => [.. CalculationList.All.Select(c => c.Id)];

    private static Case Given(string id, string input, MeasureSystem measure = MeasureSystem.UsCustomary) => Case.Given(CalculationList.Find(id)!, Encoding.UTF8.GetBytes(input), measure, new Faults())!;

    private static Case FirstExample(string id)
    {
        var calculation = CalculationList.Find(id)!;
        return Given(id, CatalogueJson.InputOf(calculation.About.Examples[0]).ToJsonString());
    }

    /// <summary>The numbers of the first published example, as <c>calc run</c> prints them.</summary>
    [Theory, MemberData(nameof(Calculations))]
    public void Every_calculation_prints_its_first_example_with_each_number_that_comes_out(string id)
    {
        var one = FirstExample(id);
        using var read = ReadBack.Written(CalculationReport.Of(one, Demo.Imprint()), PageSize.Letter);
        var numbers = ReadBack.Numbers(read.Words).ToHashSet();
        var outputs = one.Calculation.OutputSpecs.Zip(one.Outcome.Outputs).Where(o => o.Second.IsNumber).ToList();
        Assert.All(outputs, o => Assert.Contains(Figures.Short(o.First.Unit!.FromSi(o.Second.Number)).TrimStart('-'), numbers));
        Assert.True(outputs.Count > 0 || one.Outcome.Outputs.Any(o => !o.IsAbsent), id);
    }

    [Theory, MemberData(nameof(Calculations))]
    public void Every_calculation_says_all_that_a_reader_needs_years_later(string id)
    {
        var one = FirstExample(id);
        using var read = ReadBack.Written(CalculationReport.Of(one, Demo.Imprint(MeasureSystem.Metric)));
        var letters = string.Concat(read.Words);
        var about = one.Calculation.About;
        void Stands(string text) => Assert.Contains(Documents.Paper.Pdf.Typesetter.Printable(text).Replace(" ", "", StringComparison.Ordinal), letters, StringComparison.Ordinal);
        Stands(id);
        Stands($"Method version {about.Version}".Replace("Method version", "", StringComparison.Ordinal));
        Stands(about.Title);
        Stands(about.Formula);
        Stands(about.Validity);
        Assert.All(about.Sources, Stands);
        Assert.All(one.Outcome.Working, l => Stands(l.Symbol));
        Assert.All(one.Outcome.Cautions.Where(about.Cautions.Contains), Stands);
        Stands("Caution");
    }

    [Fact]
    public void Where_each_input_is_from_stands_beside_it()
    {
        var one = Given("driveline.engine-speed", """{"roadSpeed":{"value":"65 mph","basis":"measured"},"tireDiameter":"33 in","axleRatio":4.1,"gearRatio":1}""");
        var from = one.Inputs.ToDictionary(i => i.Spec.Name, i => i.WhereFrom);
        Assert.Equal("measured", from["roadSpeed"]);
        Assert.Equal("given, nobody said where from", from["axleRatio"]);
        Assert.Equal("assumed: default of the calculation", from["transferRatio"]);
        Assert.Equal("not given", from["redline"]);
        Assert.Equal("65 mph", one.Inputs.Single(i => i.Spec.Name == "roadSpeed").Value);
    }

    /// <summary>60 x 65 mph x 4.1 / (pi x 33 in): 65 x 1609.344 / 60 m/min over the circumference, by hand 2714.5 rpm; the formats page prints the same.</summary>
    [Fact]
    public void The_worked_example_of_the_format_page_stands_on_paper_as_it_stands_there()
    {
        var one = Given("driveline.engine-speed", """{"roadSpeed":"65 mph","tireDiameter":"33 in","axleRatio":4.1,"gearRatio":1,"redline":"2500 rpm"}""");
        using var read = ReadBack.Written(CalculationReport.Of(one, Demo.Imprint()), PageSize.Letter);
        var words = string.Join(' ', read.Words);
        Assert.Contains("2714.5 rpm", words, StringComparison.Ordinal);
        Assert.Contains("60 v G / (pi D)", words, StringComparison.Ordinal);
        Assert.Contains("60 x 29.058 x 4.1 / (pi x 0.8382)", words, StringComparison.Ordinal);
        Assert.Contains("no Does the engine stay below its redline?", words, StringComparison.Ordinal);
        Assert.Contains("at most 2500 rpm", words, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_input_is_named_with_how_to_get_it()
    {
        var one = Given("driveline.engine-speed", """{"roadSpeed":"65 mph"}""");
        using var read = ReadBack.Written(CalculationReport.Of(one, Demo.Imprint()), PageSize.Letter);
        var letters = string.Concat(read.Words);
        Assert.Contains("Not known, and how to get it".Replace(" ", "", StringComparison.Ordinal), letters, StringComparison.Ordinal);
        Assert.NotEmpty(one.Lacking);
        Assert.All(one.Lacking, m => Assert.Contains(m.Measure.Replace(" ", "", StringComparison.Ordinal)[1..20], letters, StringComparison.Ordinal));
        Assert.Contains("don't know", string.Join(' ', read.Words), StringComparison.Ordinal);
    }

    [Fact]
    public void An_instance_names_the_items_that_its_inputs_are_from()
    {
        var one = Assert.Single(Cases.Of(Demo.Sheet("packhorse"), "driveline.engine-speed[gear=4,range=high]", MeasureSystem.UsCustomary, new Faults())!);
        Assert.Equal("gear 4, high range", one.Where);
        var from = one.Inputs.ToDictionary(i => i.Spec.Name, i => i.WhereFrom);
        Assert.StartsWith("measured: Rear ring and pinion", from["axleRatio"], StringComparison.Ordinal);
        Assert.StartsWith("calculated: ", from["tireDiameter"], StringComparison.Ordinal);
        Assert.Equal("4.27", one.Inputs.Single(i => i.Spec.Name == "axleRatio").Value);
        Assert.Empty(one.Findings); // in a sheet this calculation raises no check: the one of cruise speed does
    }

    /// <summary>The vehicle and the camper on it both state the drag area; the camper overrides.</summary>
    [Fact]
    public void A_value_that_overrides_another_is_told_as_the_one_it_is_from()
    {
        var one = Cases.Of(Demo.Sheet("packhorse"), "driveline.tractive-curves", MeasureSystem.UsCustomary, new Faults())![0];
        Assert.StartsWith("assumed: Camper body", one.Inputs.Single(i => i.Spec.Name == "dragArea").WhereFrom, StringComparison.Ordinal);
    }

    [Fact]
    public void A_plain_id_gives_every_instance_that_exists()
    {
        var sheet = Demo.Sheet("packhorse");
        var cases = Cases.Of(sheet, "driveline.engine-speed", MeasureSystem.UsCustomary, new Faults())!;
        Assert.Equal(sheet.Instances.OfType<InstanceState>().Count(i => i.Instance.Calculation.Id == "driveline.engine-speed"), cases.Count);
        using var read = ReadBack.Written(CalculationReport.Of(cases, sheet, Demo.Imprint()), PageSize.Letter);
        var words = string.Join(' ', read.Words);
        foreach (var where in (string[])["Gear 1, high range", "Gear 4, low range"]) Assert.Contains(where, words, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("driveline.engine-speed[gear=9,range=high]", "driveline.engine-speed[gear=")]
    [InlineData("driveline.engin-speed", "driveline.engine-speed")]
    [InlineData("tires.dimensions[axle=middle]", "tires.dimensions")]
    public void A_name_that_leads_nowhere_names_the_nearest(string name, string nearest)
    {
        var faults = new Faults();
        Assert.Null(Cases.Of(Demo.Sheet("packhorse"), name, MeasureSystem.UsCustomary, faults));
        Assert.Contains(nearest, Assert.Single(faults.List).Right, StringComparison.Ordinal);
    }

    [Fact]
    public void A_calculation_with_curves_draws_them_and_lists_them()
    {
        var document = CalculationReport.Of(FirstExample("driveline.speed-curves"), Demo.Imprint());
        Assert.Single(document.Blocks.OfType<Block.Figure>());
        var table = document.Blocks.OfType<Block.Table>().Single(t => t.Caption.StartsWith("Engine speed over road speed", StringComparison.Ordinal));
        Assert.Equal(["gear 3", "gear 4"], table.Columns.Skip(1).Select(c => c.Title));
        Assert.Equal("2,803 at 65", table.Rows[^1].Cells[2].Plain); // the example: 4.11 direct, 65 mph at 2803 rpm
    }

    [Theory]
    [InlineData(0.11226, "0.11")]
    [InlineData(20, "20")]
    [InlineData(1234.6, "1235")]
    public void An_uncertainty_has_the_figures_it_deserves(double spread, string told) => Assert.Equal(told, Values.Spread(spread, Dimension.Dimensionless, MeasureSystem.Metric));
}
