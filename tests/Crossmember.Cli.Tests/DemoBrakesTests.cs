using System.Text.Json.Nodes;

namespace Crossmember.Cli.Tests;

/// <summary>The brakes of the demo's truck, by the command line: as found, the first conversion chosen, and the next one. Figures by hand; the vehicle is invented.</summary>
public sealed class DemoBrakesTests : IDisposable
{
    private readonly Place _place = new();

    public DemoBrakesTests() => _place.Run("demo", "--out", Folder);

    private string Folder => Path.Combine(_place.Folder, "demo");

    private string Truck => Path.Combine(Folder, "packhorse.json");

    /// <summary>
    /// 60 lbf x 6.2 x 0.9 x 0.97 on a bore of 1 in (0.7854 in2): 413.5 psi, 2.851 MPa. Discs: 2 x 0.40 x 4379.7 mm2 x 124.46 mm at 6.8948 MPa are 3006.7 N m a wheel,
    /// twice that on 398.145 mm 15,104 N; 0.06895 - 0.02 MPa left by the drums' valve drag 3006.7 x 0.04895 / 6.8948 = 21.35 N m.
    /// </summary>
    [Fact]
    public void Pressure_force_and_drag_are_those_of_a_hand_calculator()
    {
        Assert.Equal(2.851, Result("as-found", "brakes.line-pressure", "pressure"), 0.0005);
        Assert.Equal(15104, Result("discs", "brakes.axle-force[axle=front]", "force"), 1.0);
        Assert.Equal(21.35, Result("discs", "brakes.wheel-drag[axle=front,side=left]", "drag"), 0.01);
        Assert.Equal(0, Result("carried", "brakes.wheel-drag[axle=front,side=left]", "drag"));
    }

    [Theory]
    [InlineData("as-found", "front-lost", "rear-lost", "front-lost", "rear-lost", "circuits")]
    [InlineData("working", "front-lost", "rear-lost", "front-lost", "rear-lost", "circuits", "distance", "effort", "distance", "effort")]
    [InlineData("discs", "front-lost", "rear-lost", "front-lost", "rear-lost", "circuits", "residual-front", "lets-go", "lets-go")]
    [InlineData("carried")]
    [InlineData("patrol")]
    public void What_the_brakes_say_no_to(string scenario, params string[] checks) =>
        Assert.Equal(checks, Brakes(scenario, "fail").OrderBy(i => i, StringComparer.Ordinal).Select(i => i[(i.IndexOf('/', StringComparison.Ordinal) + 1)..]));

    [Fact]
    public void The_readings_of_the_truck_as_found_are_explained_by_its_pedal()
    {
        var gauge = Findings("as-found").Single(f => (string?)f!["id"] == "brakes.gauge-check/readings")!;
        Assert.Equal("caution", (string?)gauge["verdict"]);
        Assert.Contains("pedal efficiency 0.72 instead of 0.90", (string?)gauge["text"], StringComparison.Ordinal);
    }

    /// <summary>A plan has no gauge in it yet: the only thing that is not known.</summary>
    [Theory]
    [InlineData("carried")]
    [InlineData("patrol")]
    public void Of_a_plan_only_the_gauge_is_missing(string scenario) => Assert.Equal(["brakes.gauge-check/readings"], Brakes(scenario, "unknown"));

    [Fact]
    public void The_ripple_to_the_next_choice_turns_every_no_of_the_first()
    {
        var rows = _place.Run("ripple", Truck, "--from", "discs", "--to", "carried", "--json").Json["rows"]!.AsArray();
        foreach (var no in Brakes("discs", "fail"))
        {
            var row = rows.Single(r => (string?)r!["id"] == no)!;
            Assert.Equal(("flipped", "pass"), ((string?)row["state"], (string?)row["to"]!["verdict"]));
        }
    }

    /// <summary>The discs on the old master fall out, the chosen brakes are among what passes, and everything refused is refused by a finding that is named.</summary>
    [Fact]
    public void The_search_finds_brakes_that_pass_and_says_what_refused_the_others()
    {
        var used = _place.Run("brakes", "search", Truck, "--scenario", "carried", "--best", "3", "--rejected", "5", "--json");
        Assert.Equal(0, used.Code);
        var found = used.Json;
        Assert.Equal("crossmember.search/1", (string?)found["format"]);
        Assert.True((long)found["passed"]! > 0 && (long)found["combinations"]! > (long)found["passed"]!);
        Assert.Equal(3, found["best"]!.AsArray().Count);
        Assert.All(found["best"]!.AsArray(), b => Assert.True((double)b!["margin"]! >= 0 && (double)b["pedalForce"]!["value"]! > 0));
        Assert.Contains(found["refused"]!.AsArray(), r => ((string)r!["finding"]!).StartsWith("brakes.", StringComparison.Ordinal) && ((string)r["text"]!).Length > 20);
        Assert.Equal(5, found["rejected"]!.AsArray().Count);
        Assert.Contains("a qualified brake engineer reviews them", _place.Run("brakes", "search", Truck, "--scenario", "carried").Out, StringComparison.Ordinal);
    }

    public void Dispose() => _place.Dispose();

    private IEnumerable<string> Brakes(string scenario, string verdict) =>
        Findings(scenario).Where(f => (string?)f!["verdict"] == verdict).Select(f => (string)f!["id"]!).Where(i => i.StartsWith("brakes.", StringComparison.Ordinal));

    private JsonArray Findings(string scenario) => Check(scenario)["findings"]!.AsArray();

    private double Result(string scenario, string instance, string output) => (double)Check(scenario)["results"]![instance]![output]!["value"]!;

    private JsonNode Check(string scenario) => _place.Run("check", Truck, "--scenario", scenario, "--json").Json;
}
