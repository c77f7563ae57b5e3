using Crossmember.Engineering.Calculations;

namespace Crossmember.Cli.Tests;

public sealed class CalcTests
{
    private const string Input = """{"roadSpeed":"65 mph","tireDiameter":"33 in","axleRatio":4.1,"gearRatio":1,"redline":"4000 rpm"}""";

    [Fact]
    public void The_example_of_the_format_page_gives_its_numbers()
    {
        using var place = new Place();
        var used = place.Run(Input, ["calc", "run", "driveline.engine-speed", "--json"]);
        Assert.Equal(0, used.Code);
        Assert.Equal("", used.Error);
        Assert.Equal("crossmember.result/1", (string?)used.Json["format"]);
        Assert.Equal(2714.5, (double)used.Json["outputs"]!["engineSpeed"]!["value"]!, 0.05);
        var finding = used.Json["findings"]![0]!;
        Assert.Equal(("driveline.engine-speed/redline", "pass", "at-most"), ((string?)finding["id"], (string?)finding["verdict"], (string?)finding["sense"]));
        Assert.Equal(0.3214, (double)finding["margin"]!, 0.00005);
    }

    [Fact]
    public void A_file_and_standard_input_are_the_same()
    {
        using var place = new Place();
        var file = place.File("in.json", Input);
        Assert.Equal(place.Run(Input, ["calc", "run", "driveline.engine-speed", "-", "--json"]).Out, place.Run("calc", "run", "driveline.engine-speed", file, "--json").Out);
    }

    [Fact]
    public void A_failing_finding_is_exit_1_and_the_result_is_still_there()
    {
        using var place = new Place();
        var used = place.Run(Input.Replace("4000", "2500", StringComparison.Ordinal), ["calc", "run", "driveline.engine-speed", "--json"]);
        Assert.Equal(1, used.Code);
        Assert.Equal("fail", (string?)used.Json["findings"]![0]!["verdict"]);
    }

    [Fact]
    public void A_missing_input_is_unknown_and_names_what_to_measure()
    {
        using var place = new Place();
        var used = place.Run("""{"roadSpeed":"65 mph"}""", ["calc", "run", "driveline.engine-speed", "--json"]);
        Assert.Equal(0, used.Code);
        Assert.Null((double?)used.Json["outputs"]!["engineSpeed"]!["value"]);
        Assert.Contains(used.Json["missing"]!.AsArray(), m => (string?)m!["input"] == "axleRatio" && ((string)m["measure"]!).Length > 10);
    }

    [Theory]
    [InlineData("""{"roadSpeed":"65 furlong"}""", "/roadSpeed")]
    [InlineData("""{"roadSped":"65 mph"}""", "/roadSped")]
    [InlineData("""{"tireDiameter":"-3 in"}""", "/tireDiameter")]
    [InlineData("""{"axleRatio":"4,1"}""", "/axleRatio")]
    [InlineData("""{"roadSpeed":""", "")]
    public void A_fault_is_exit_2_with_its_place_on_both_outputs(string input, string path)
    {
        using var place = new Place();
        var file = place.File("in.json", input);
        var used = place.Run("calc", "run", "driveline.engine-speed", file, "--json");
        Assert.Equal(2, used.Code);
        Assert.Equal("crossmember.faults/1", (string?)used.Json["format"]);
        Assert.Equal((file, path), ((string?)used.Json["faults"]![0]!["file"], (string?)used.Json["faults"]![0]!["path"]));
        Assert.StartsWith($"{file}: {(path.Length == 0 ? "/" : path)}: ", used.Error, StringComparison.Ordinal);
        Assert.Contains("; ", used.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_calculation_is_listed_described_and_runs_its_own_examples()
    {
        using var place = new Place();
        Assert.Equal(CalculationList.All.Select(c => c.Id), place.Run("calc", "list", "--json").Json["calculations"]!.AsArray().Select(c => (string?)c!["id"]));
        foreach (var c in CalculationList.All)
        {
            var described = place.Run("calc", "describe", c.Id, "--json").Json;
            foreach (var example in described["examples"]!.AsArray())
            {
                var result = place.Run(example!["input"]!.ToJsonString(), ["calc", "run", c.Id, "--json"]).Json;
                foreach (var (output, want) in example["outputs"]!.AsObject())
                    Assert.Equal((double)want!["value"]!, (double)result["outputs"]![output]!["value"]!, (Math.Abs((double)want["value"]!) * (double)example["tolerance"]!) + 1e-12);
            }
            Assert.Contains(c.About.Title, place.Run("calc", "describe", c.Id).Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Inputs_are_tied_to_the_sheet_in_the_description()
    {
        using var place = new Place();
        var inputs = place.Run("calc", "describe", "driveline.cruise", "--json").Json["inputs"]!.AsArray();
        Assert.Equal("gearbox.*.ratio", (string?)inputs.Single(i => (string?)i!["name"] == "gearRatios")!["parameter"]);
    }

    [Fact]
    public void A_misspelt_id_names_the_nearest()
    {
        using var place = new Place();
        var used = place.Run("calc", "run", "driveline.engin-speed");
        Assert.Equal(2, used.Code);
        Assert.Contains("driveline.engine-speed", used.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void For_people_the_working_can_be_followed()
    {
        using var place = new Place();
        var text = place.Run(Input, ["calc", "run", "driveline.engine-speed"]).Out;
        Assert.Contains("good: ", text, StringComparison.Ordinal);
        Assert.Contains("n = 60 v G / (pi D)", text, StringComparison.Ordinal);
    }
}
