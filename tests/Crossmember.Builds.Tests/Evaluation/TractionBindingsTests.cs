using Crossmember.Builds.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Pull, speed and climbing through the sheet: a light truck on 31 in tires, on 33 in, regeared, and with an engine nobody knows.</summary>
public sealed class TractionBindingsTests
{
    private const string Weighed = """
        "weighings":[{"date":"2026-01-10","axles":{"front":"1065 kg","rear":"1085 kg"},"wheelbase":"2560 mm","condition":"empty","fitted":{}}],
        "conditions":{"empty":[],"loaded":[{"id":"load","mass":"400 kg","at":["2 m","0 m","0.8 m"]}]},
        """;

    private const string Slots = """
        ,{"id":"facts","parent":"vehicle","title":"Facts","options":[{"id":"as-found","parameters":{
          "gearbox.1.ratio":"5.15","gearbox.2.ratio":"2.6","gearbox.3.ratio":"1.6","gearbox.4.ratio":1,"gearbox.5.ratio":"0.8","transfer.high.ratio":1,"transfer.low.ratio":"2.28",
          "duty.cruise-speed":"60 mph","vehicle.drag-area":"1.45 m2"}}]}
        ,{"id":"engine","parent":"vehicle","title":"Engine","options":[
          {"id":"as-found","masses":[],"parameters":{"engine.idle-speed":"700 rpm","engine.redline":"4000 rpm","engine.torque-curve":[["800 rpm","190 N m"],["1800 rpm","230 N m"],["4000 rpm","170 N m"]]}},
          {"id":"figures","class":"replace","originality":0,"masses":[],"parameters":{"engine.peak-torque":"330 N m","engine.peak-power":"110 kW"}},
          {"id":"nameless","class":"replace","originality":0,"masses":[]}]}
        ,{"id":"gears","parent":"vehicle","title":"Gears","options":[{"id":"as-found","masses":[],"parameters":{"axle.rear.ratio":"3.73"}},
          {"id":"deep","class":"replace","originality":0,"masses":[],"parameters":{"axle.rear.ratio":"4.11"}}]}
        ,{"id":"tires","parent":"vehicle","title":"Tires","options":[{"id":"as-found","masses":[],"parameters":{"wheel.*.*.tire.size":"31x10.50R15"}},
          {"id":"big","class":"replace","originality":0,"masses":[],"parameters":{"wheel.*.*.tire.size":"33x10.50R15"}}]}
        """;

    private const string Scenarios = """
        {"id":"working","base":null,"choices":{}},{"id":"tall","base":"working","choices":{"tires":"big"}},{"id":"regeared","base":"tall","choices":{"gears":"deep"}},
        {"id":"figures","base":"working","choices":{"engine":"figures"}},{"id":"nameless","base":"working","choices":{"engine":"nameless"}},
        {"id":"quarry","base":"working","choices":{},"whatIf":{"duty.grade":"0.75"}},{"id":"measured","base":"tall","choices":{},"whatIf":{"wheel.rear.*.tire.rolling-circumference":"2500 mm"}}
        """;

    private static readonly Opened s_truck = Opened.Vehicle(Slots, Scenarios, Weighed);

    // 230 N m x 0.8 x 3.73 x 0.85 / re at the peak; re = 3.05 D / (2 pi): larger tires take 31 / 33 of the pull, 4.11 for 3.73 gives 1.1019 of it back.
    [Fact]
    public void Larger_tires_cost_pull_and_a_lower_axle_brings_it_back()
    {
        const string peak = "driveline.tractive-effort[gear=5,range=high]";
        Assert.Equal(230 * 0.8 * 3.73 * 0.85 / (3.05 * 31 * 0.0254 / (2 * Math.PI)), Told("working", peak, "peakForce"), 1e-6);
        Assert.Equal(31.0 / 33, Told("tall", peak, "peakForce") / Told("working", peak, "peakForce"), 1e-9);
        Assert.Equal(31.0 / 33 * 4.11 / 3.73, Told("regeared", peak, "peakForce") / Told("working", peak, "peakForce"), 1e-9);
        const string cruise = "driveline.cruise-pull[condition=loaded]";
        Assert.True(Told("tall", cruise, "surplus") < Told("working", cruise, "surplus"));
        Assert.True(Told("regeared", cruise, "surplus") > Told("working", cruise, "surplus"));
    }

    // 2500 mm on the ground instead of 3.05 x 33 in = 2556.5 mm.
    [Fact]
    public void A_measured_rolling_circumference_carries_into_the_pull() =>
        Assert.Equal(2556.51 / 2500, Told("measured", "driveline.tractive-effort[gear=1,range=low]", "peakForce") / Told("tall", "driveline.tractive-effort[gear=1,range=low]", "peakForce"), 1e-6);

    // 2150 kg and 2550 kg: rolling is 0.015 of the weight, and the air is the same for both.
    [Fact]
    public void Every_condition_has_its_own_road_load()
    {
        double empty = Told("working", "driveline.road-load[condition=empty]", "rolling"), loaded = Told("working", "driveline.road-load[condition=loaded]", "rolling");
        Assert.Equal(2150 * 9.80665 * 0.015, empty, 1e-6);
        Assert.Equal(2550.0 / 2150, loaded / empty, 1e-9);
        Assert.Equal(Told("working", "driveline.road-load[condition=empty]", "air"), Told("working", "driveline.road-load[condition=loaded]", "air"), 1e-12);
        // The heaviest condition counts in every gear.
        var gear = Sheet("working").Instance("driveline.tractive-effort[gear=4,range=high]")!;
        Assert.Equal(2550 * 9.80665 * 0.015 + (0.6 * 1.45 * Math.Pow(Told(gear, "speedAtPeak"), 2)), Told(gear, "roadLoad"), 1e-6);
    }

    [Fact]
    public void One_check_a_condition_asks_for_cruise_top_gear_and_grade()
    {
        var ids = Sheet("working").Findings().Select(f => f.Id).Where(Ours).Order(StringComparer.Ordinal);
        Assert.Equal(
            [
                "driveline.cruise-pull[condition=empty]/top-gear", "driveline.cruise-pull[condition=loaded]/top-gear",
                "driveline.gradeability[condition=empty]/grade", "driveline.gradeability[condition=loaded]/grade",
                "driveline.top-speed[condition=empty]/reaches-cruise", "driveline.top-speed[condition=loaded]/reaches-cruise",
            ], ids);
    }

    // Grip of 0.7 less 0.015 of rolling is 68.5 %: more than the usual 40 %, less than the 75 % of a quarry.
    [Fact]
    public void The_wanted_grade_is_forty_per_cent_until_somebody_says_otherwise()
    {
        Assert.Equal((Verdict.Pass, 40.0), Of("working", "driveline.gradeability[condition=loaded]/grade"));
        Assert.Equal((Verdict.Fail, 75.0), Of("quarry", "driveline.gradeability[condition=loaded]/grade"));
        Assert.Equal(Source.Default, Sheet("working").Key("duty.grade")!.Value.Source);
    }

    [Fact]
    public void Two_figures_of_an_engine_bound_the_speed_and_settle_the_climb()
    {
        Assert.Equal(Verdict.Caution, Of("figures", "driveline.top-speed[condition=loaded]/reaches-cruise").Verdict);
        Assert.Equal(Verdict.Pass, Of("figures", "driveline.gradeability[condition=loaded]/grade").Verdict);
        Assert.Equal(Verdict.Unknown, Of("figures", "driveline.cruise-pull[condition=loaded]/top-gear").Verdict);
    }

    [Fact]
    public void An_engine_nobody_knows_leaves_three_questions_that_say_what_to_get()
    {
        var sheet = Sheet("nameless");
        Assert.All(sheet.Findings().Where(f => Ours(f.Id)), f =>
        {
            Assert.Equal(Verdict.Unknown, f.Finding.Verdict);
            Assert.Contains("take the maker's curve, or a brake test", f.Finding.Text);
        });
        Assert.DoesNotContain(sheet.Instance("driveline.road-load[condition=empty]")!.Outcome.Outputs, o => o.IsAbsent);
        // What the ground takes does not ask for an engine: 0.7 x 1085 kg x g.
        Assert.Equal(0.7 * 1085 * 9.80665, Told("nameless", "driveline.traction-limit[condition=empty]", "rearForce"), 1e-6);
    }

    private static bool Ours(string finding) =>
        new[] { "driveline.cruise-pull", "driveline.gradeability", "driveline.top-speed", "driveline.tractive", "driveline.traction", "driveline.road-load", "driveline.speed-curves" }
            .Any(id => finding.StartsWith(id, StringComparison.Ordinal));

    private static Sheet Sheet(string scenario) => s_truck.Sheet(scenario);

    private static (Verdict Verdict, double? Limit) Of(string scenario, string finding)
    {
        var found = Sheet(scenario).Findings().Single(f => f.Id == finding).Finding;
        return (found.Verdict, found.Limit is { } limit ? Math.Round(limit, 9) : null);
    }

    private static double Told(string scenario, string instance, string output) => Told(Sheet(scenario).Instance(instance)!, output);

    private static double Told(InstanceState state, string output) => state.Outcome.Outputs[state.Instance.Calculation.OutputIndex(output)].Number;
}
