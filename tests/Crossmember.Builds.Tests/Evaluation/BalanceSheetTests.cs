using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Balance of the brakes through the sheet: a weighed truck, stated forces, three rear valves to choose from.</summary>
public sealed class BalanceSheetTests
{
    private const string Slots = """
        ,{"id":"brakes","parent":"vehicle","title":"Brakes","options":[{"id":"as-found","parameters":{"axle.front.brake.force":"12642.9 N","axle.rear.brake.force":"5442.7 N",
          "axle.front.brake.threshold":"0 MPa","axle.rear.brake.threshold":"0 MPa","axle.*.*.datum-height":"0 mm","brakes.metering.pressure":"0 MPa","brakes.rule":"R13-M1","brakes.circuits":"front-rear",
          "brakes.pedal.cut-in":"22.556 N","brakes.pedal.jump-in":"0.67 MPa","brakes.pedal.knee":"172.932 N","brakes.pedal.knee-pressure":"6.4129 MPa","brakes.pedal.plain-pressure":"3.3975 MPa",
          "brakes.pedal.dead-loss":"0.38286 MPa"}}]}
        ,{"id":"valve","parent":"vehicle","title":"Valve","options":[
          {"id":"as-found","masses":[],"parameters":{"brakes.valve.kind":"none"}},
          {"id":"fixed","class":"upgrade","originality":0,"masses":[],"parameters":{"brakes.valve.kind":"fixed","brakes.valve.knee":"3 MPa","brakes.valve.slope":"0.3"}},
          {"id":"ungauged","class":"upgrade","originality":0,"masses":[],"parameters":{"brakes.valve.kind":"fixed"}},
          {"id":"sensing","class":"upgrade","originality":0,"masses":[],"parameters":{"brakes.valve.kind":"load-sensing","brakes.valve.knee":"2 MPa","brakes.valve.heavy-knee":"6 MPa","brakes.valve.light-load":"800 kg",
            "brakes.valve.heavy-load":"1400 kg","brakes.valve.slope":"0.3"}}]}
        """;

    private const string Scenarios = """
        {"id":"working","base":null,"choices":{}},{"id":"fixed","base":null,"choices":{"valve":"fixed"}},{"id":"ungauged","base":null,"choices":{"valve":"ungauged"}},{"id":"sensing","base":null,"choices":{"valve":"sensing"}},
        {"id":"single","base":null,"choices":{},"whatIf":{"brakes.master.kind":"single"}},{"id":"floor","base":null,"choices":{},"whatIf":{"brakes.pedal.front-lost-pressure":"0 MPa"}}
        """;

    private static readonly Opened s_truck = Opened.Vehicle(Slots, Scenarios, """
        "weighings":[{"date":"2026-01-10","axles":{"front":"1092 kg","rear":"1008 kg"},"wheelbase":"2560 mm","height":"0.76 m","datumHeight":"0 m","condition":"empty","fitted":{}}],
        """);

    // By hand: front share 12642.9 / 18085.6 = 0.69906; b = 1092 / 2100 x 2.56 = 1.3312 m; (0.69906 x 2.56 - 1.3312) / 0.76 = 0.6031.
    [Fact]
    public void The_crossover_is_published_by_condition() => Assert.Equal(0.6031, Opened.Told(s_truck.Sheet(), "brakes.empty.crossover"), 0.0001);

    // By hand: 2 + 4 x (1008 - 800) / 600 MPa.
    [Fact]
    public void A_load_sensing_valve_takes_the_axles_own_load()
    {
        Assert.Equal(2 + (4 * 208 / 600.0), Opened.Told(s_truck.Sheet("sensing"), "brakes.empty.valve-knee"), 1e-9);
        Assert.Equal(3, Opened.Told(s_truck.Sheet("fixed"), "brakes.empty.valve-knee"), 1e-9);
        Assert.True(s_truck.Sheet().Key("brakes.empty.valve-knee")!.Value.Value.IsAbsent);
    }

    [Theory]
    [InlineData("working", "brakes.adhesion[condition=empty]/front-first", Verdict.Fail)]
    [InlineData("fixed", "brakes.adhesion[condition=empty]/front-first", Verdict.Pass)]
    [InlineData("ungauged", "brakes.adhesion[condition=empty]/front-first", Verdict.Unknown)]
    [InlineData("ungauged", "brakes.valve-knee[condition=empty]/knee", Verdict.Unknown)]
    [InlineData("working", "brakes.valve-knee[condition=empty]/knee", Verdict.Pass)]
    [InlineData("working", "brakes.lock-order[condition=empty]/front-first", Verdict.Caution)]
    [InlineData("fixed", "brakes.lock-order[condition=empty]/front-first", Verdict.Pass)]
    [InlineData("working", "brakes.stop[condition=empty]/effort", Verdict.Pass)]
    [InlineData("working", "brakes.failure[condition=empty]/booster-dead", Verdict.Pass)]
    [InlineData("working", "brakes.best-valve/needed", Verdict.Caution)]
    [InlineData("fixed", "brakes.best-valve/needed", Verdict.Pass)]
    [InlineData("single", "brakes.failure[condition=empty]/front-lost", Verdict.Fail)]
    [InlineData("floor", "brakes.failure[condition=empty]/front-lost", Verdict.Fail)]
    public void A_valve_flips_what_it_should(string scenario, string finding, Verdict verdict) =>
        Assert.Equal(verdict, s_truck.Sheet(scenario).Findings().Single(f => f.Id == finding).Finding.Verdict);

    // A burst hose is told of each end already, and no stop is asked for before there is a vehicle to drive.
    [Theory]
    [InlineData("working")]
    [InlineData("single")]
    public void What_is_told_elsewhere_is_not_raised_again(string scenario)
    {
        var ids = s_truck.Sheet(scenario).Findings().Select(f => f.Id).ToList();
        Assert.DoesNotContain("brakes.failure[condition=empty]/hose", ids);
        Assert.DoesNotContain(ids, i => i.StartsWith("brakes.road-test", StringComparison.Ordinal));
        Assert.Single(ids, "brakes.failure[condition=empty]/rear-lost");
    }

    // The heat of an axle rests on the valve: ungauged, it is not known.
    [Fact]
    public void The_heat_of_a_valve_that_nobody_gauged_is_unknown()
    {
        var found = s_truck.Sheet("ungauged").Findings().Single(f => f.Id == "brakes.drive-heat[condition=empty]/iron").Finding;
        Assert.Equal(Verdict.Unknown, found.Verdict);
    }

    // What a valve still unknown leaves open is asked of the builder by its own name.
    [Fact]
    public void The_gauge_is_named_where_the_knee_is_missing() =>
        Assert.Contains("gauge at a front and a rear bleeder", s_truck.Sheet("ungauged").Findings().Single(f => f.Id == "brakes.stop[condition=empty]/effort").Finding.Text, StringComparison.Ordinal);
}
