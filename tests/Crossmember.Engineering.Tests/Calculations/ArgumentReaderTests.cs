using System.Text;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Engineering.Tests.Calculations;

/// <summary>The input of <c>calc run</c> as the format page describes it; the exit code and the printing are the command line's.</summary>
public class ArgumentReaderTests
{
    [Theory]
    [InlineData("""{"roadSpeed":"65 mph","tireDiameter":"33 in","axleRatio":4.11,"gearRatio":1}""")]
    [InlineData("""{"roadSpeed":{"value":"65 mph"},"tireDiameter":{"value":"33 in","basis":"measured"},"axleRatio":{"value":4.11,"basis":"published"},"gearRatio":"1"}""")]
    [InlineData("""{"note":"as found","roadSpeed":"65 mph","tireDiameter":"33 in","axleRatio":"4.11","gearRatio":1,"transferRatio":null,"redline":null}""")]
    [InlineData("""{"gearRatio":1,"transferRatio":1,"axleRatio":"411 %","tireDiameter":"2 ft 9 in","roadSpeed":"65 mph"}""")]
    public void Text_bare_number_and_value_with_basis_mean_the_same(string input) => Door.Run("driveline.engine-speed", input).Gives("engineSpeed", 2721, 0.5);

    [Fact]
    public void What_is_given_beats_the_default() =>
        Door.Run("driveline.engine-speed", """{"roadSpeed":"65 mph","tireDiameter":"33 in","axleRatio":4.11,"gearRatio":1,"transferRatio":2}""").Gives("engineSpeed", 2 * 2721, 1);

    [Fact]
    public void What_is_missing_is_no_fault_but_unknown_and_says_how_to_get_it()
    {
        var r = Door.Run("driveline.engine-speed", """{"roadSpeed":"65 mph"}""");
        Assert.Null(r.Number("engineSpeed"));
        Assert.Equal("rpm", r["outputs"]!["engineSpeed"]!["unit"]!.GetValue<string>());
        Assert.Equal(["tireDiameter", "axleRatio", "gearRatio", "redline"], r["missing"]!.AsArray().Select(m => m!["input"]!.GetValue<string>()));
        Assert.All(r["missing"]!.AsArray(), m => Assert.NotEmpty(m!["measure"]!.GetValue<string>()));
        Assert.Equal("unknown", r.Verdict("redline"));
    }

    [Theory]
    [InlineData("""{"tyreDiameter":"33 in"}""", "/tyreDiameter", "tireDiameter")]
    [InlineData("""{"roadSpeed":"65 mhp"}""", "/roadSpeed", "mph")]
    [InlineData("""{"roadSpeed":65}""", "/roadSpeed", "1 mph")]
    [InlineData("""{"axleRatio":-4}""", "/axleRatio", "must be more than 0")]
    [InlineData("""{"tireDiameter":"0 in"}""", "/tireDiameter", "must be more than 0 in")]
    [InlineData("""{"axleRatio":1e300}""", "/axleRatio", "beyond anything on a vehicle")]
    [InlineData("""{"axleRatio":1e999}""", "/axleRatio", "plain number")]
    [InlineData("""{"axleRatio":true}""", "/axleRatio", "write a number")]
    [InlineData("""{"axleRatio":{"value":4,"basis":"hearsay"}}""", "/axleRatio/basis", "measured")]
    [InlineData("""{"axleRatio":{"basis":"measured"}}""", "/axleRatio/value", "required")]
    [InlineData("""{"axleRatio":{"value":4,"basics":"measured"}}""", "/axleRatio/basics", "basis")]
    [InlineData("""{"axleRatio":4,"axleRatio":5}""", "/axleRatio", "keep one")]
    [InlineData("[]", "", "{ ... }")]
    public void A_fault_is_located_and_says_what_would_be_right(string input, string path, string right)
    {
        var fault = Assert.Single(Door.Faults("driveline.engine-speed", input));
        Assert.Equal(path, fault.Path);
        Assert.Contains(right, fault.Right);
    }

    [Fact]
    public void One_reading_finds_every_fault() =>
        Assert.Equal(["/roadSpeed", "/tireDiameter", "/gear"],
            Door.Faults("driveline.engine-speed", """{"roadSpeed":"65","tireDiameter":"-1 in","gear":1}""").Select(f => f.Path));

    [Theory]
    [InlineData("""{"gearRatios":[5,4]}""", "/gearRatios")]
    [InlineData("""{"gearRatios":{}}""", "/gearRatios")]
    [InlineData("""{"gearRatios":{"1":"5.15","2":"two"}}""", "/gearRatios/2")]
    [InlineData("""{"gearRatios":{"1":{"value":-1}}}""", "/gearRatios/1/value")]
    [InlineData("""{"gearRatios":{"value":{"1":0},"basis":"measured"}}""", "/gearRatios/value/1")]
    public void Faults_in_a_map_name_the_member(string input, string path) => Assert.Equal(path, Assert.Single(Door.Faults("driveline.crawl-ratio", input)).Path);

    [Theory]
    [InlineData("""{"1":"5.15","2":1}""")]
    [InlineData("""{"1":{"value":"5.15","basis":"measured"},"2":1}""")]
    [InlineData("""{"value":{"1":"5.15","2":1},"basis":"published"}""")]
    [InlineData("""{"value":{"value":"5.15"},"2":1}""")] // a member may be called value
    [InlineData("""{"note":"counted","value":"5.15"}""")]
    public void A_map_takes_bare_values_and_values_with_basis(string gears) =>
        Door.Run("driveline.crawl-ratio", $$"""{"gearRatios":{{gears}},"transferRatios":{"low":"2.28"},"axleRatio":"4.11"}""").Gives("crawlRatio", 48.26, 0.005);

    [Theory]
    [InlineData("\"flat\"", "/curve")]
    [InlineData("[]", "/curve")]
    [InlineData("""[["1000 rpm","1 N m"]]""", "/curve")]
    [InlineData("""[["1000 rpm","1 N m"],["1000 rpm","2 N m"]]""", "/curve")]
    [InlineData("""[["1000 rpm","1 N m"],["2000 rpm"]]""", "/curve/1")]
    [InlineData("""[["1000 rpm","1 N m"],["2000 rpm","2 m"]]""", "/curve/1/1")]
    public void Faults_in_a_curve_name_the_point(string curve, string path)
    {
        var faults = new Faults();
        Assert.Null(ArgumentReader.Read(new Probe(), Encoding.UTF8.GetBytes($$"""{"curve":{{curve}}}"""), faults));
        Assert.Equal(path, Assert.Single(faults.List).Path);
    }

    [Theory]
    [InlineData("""{"\ud800":1}""")]
    [InlineData("""{"roadSpeed":"\ud800"}""")]
    [InlineData("""{"roadSpeed":{"value":"65 mph","basis":"\udc00"}}""")]
    [InlineData("""{"roadSpeed":"65 mph\u0000"}""")]
    public void Half_a_character_is_a_fault_and_no_accident(string input) => Assert.NotEmpty(Door.Faults("driveline.engine-speed", input));

    [Fact]
    public void No_text_whatever_makes_the_door_throw() =>
        Gen.Select(Gen.OneOf(Gen.String, Gen.String[Gen.Char["{}[]\",:0123456789.-+eEinmph\\ud8/ "], 0, 60]), Gen.Int[0, 3]).Sample((text, wrap) =>
        {
            var input = wrap switch
            {
                0 => text,
                1 => $$"""{"roadSpeed":{{text}}}""",
                2 => "{\"roadSpeed\":" + System.Text.Json.JsonSerializer.Serialize(text) + "}",
                _ => $$"""{"{{text}}":"65 mph"}""",
            };
            var faults = new Faults();
            var arguments = ArgumentReader.Read(CalculationList.Find("driveline.engine-speed")!, Encoding.UTF8.GetBytes(input), faults);
            return arguments is null == faults.Any;
        }, iter: 5000);
}
