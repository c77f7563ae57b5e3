namespace Crossmember.Cli.Tests;

public sealed class SheetTests : IDisposable
{
    private readonly Place _place = new();

    public SheetTests() => _place.Run("demo", "--out", _place.Folder);

    private string Demo => Path.Combine(_place.Folder, "packhorse.json");

    [Fact]
    public void The_tool_finds_the_demos_traps_by_itself()
    {
        var findings = _place.Run("check", Demo, "--json").Json["findings"]!.AsArray().ToDictionary(f => (string)f!["id"]!, f => (string)f!["verdict"]!);
        Assert.Equal("fail", findings["driveline.ratio-mismatch/mismatch"]);
        Assert.Equal("fail", findings["mass.axle-load[axle=rear,condition=touring]/rating"]);
        Assert.Equal("caution", findings["driveline.speedometer/legal"]);
        Assert.DoesNotContain("unknown", findings.Values);
    }

    [Fact]
    public void Saving_on_tires_and_engine_is_found_out()
    {
        var findings = _place.Run("check", Demo, "--scenario", "thrift", "--json").Json["findings"]!.AsArray().ToDictionary(f => (string)f!["id"]!);
        Assert.Equal("fail", (string?)findings["tires.load[axle=rear,condition=touring,side=right]/rating"]!["verdict"]);
        Assert.Equal("unknown", (string?)findings["driveline.cruise/redline"]!["verdict"]);
        Assert.Contains("redline of the engine is missing", (string?)findings["driveline.cruise/redline"]!["text"], StringComparison.Ordinal);
    }

    [Fact]
    public void A_ripple_starts_with_what_flipped()
    {
        var rows = _place.Run("ripple", Demo, "--from", "working", "--to", "carried", "--json").Json["rows"]!.AsArray();
        Assert.Equal("flipped", (string?)rows[0]!["state"]);
        var flipped = rows.TakeWhile(r => (string?)r!["state"] == "flipped").ToList();
        Assert.Equal(flipped.Count, rows.Count(r => (string?)r!["state"] == "flipped"));
        Assert.Contains(flipped, r => (string?)r!["id"] == "mass.axle-load[axle=rear,condition=touring]/rating" && r["because"]!.AsArray().Any(b => (string?)b == "axle.rear.rating"));
    }

    [Theory]
    [InlineData("check", "--scenario", "wrking")]
    [InlineData("ripple", "--from", "approved", "--to", "working")]
    [InlineData("ripple", "--from", "approved@", "--to", "working")]
    [InlineData("ripple", "--from", "working", "--to", "nothing")]
    public void A_scenario_that_is_not_there_is_a_fault_that_lists_what_is(string command, params string[] words)
    {
        var used = _place.Run([command, Demo, .. words]);
        Assert.Equal(2, used.Code);
        Assert.Contains("carried", used.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_name_the_scenario_is_working_or_the_only_one()
    {
        Assert.Equal("working", (string?)_place.Run("check", Demo, "--json").Json["scenario"]);
        var two = _place.File("two.json", File.ReadAllText(Demo).Replace("\"id\": \"working\"", "\"id\": \"doing\"", StringComparison.Ordinal).Replace("\"base\": \"working\"", "\"base\": \"doing\"", StringComparison.Ordinal));
        var used = _place.Run("check", two);
        Assert.Equal(2, used.Code);
        Assert.Contains("asked, carried, discs, doing, faster, patrol, thrift", used.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void For_people_findings_come_in_shop_words()
    {
        var text = _place.Run("check", Demo).Out;
        Assert.True(text.IndexOf("no (", StringComparison.Ordinal) < text.IndexOf("good (", StringComparison.Ordinal));
        Assert.Contains("four-wheel drive on hard ground", text, StringComparison.Ordinal);
        Assert.Contains("qualified or licensed", text, StringComparison.Ordinal);
        Assert.Contains("no (", _place.Run("ripple", Demo, "--from", "working", "--to", "carried").Out, StringComparison.Ordinal);
    }

    public void Dispose() => _place.Dispose();
}
