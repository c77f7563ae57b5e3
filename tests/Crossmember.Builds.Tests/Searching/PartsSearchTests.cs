using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Searching;
using Crossmember.Builds.Tests.Evaluation;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Searching;

/// <summary>The search against the plain way: every combination worked out as a whole sheet, one after the other.</summary>
public sealed class PartsSearchTests
{
    private const string Top = """
        "weighings":[{"date":"2026-01-10","axles":{"front":"1065 kg","rear":"1085 kg"},"wheelbase":"2560 mm","condition":"empty","fitted":{}}],
        "conditions":{"empty":[],"loaded":[{"id":"load","mass":"400 kg","at":["2 m","0 m","0.8 m"]}]},
        "stock":[{"id":"g456","title":"Gears, 4.56","each":"310.00 USD","option":{"parameters":{"axle.rear.ratio":"4.56"}}},
                 {"id":"g488","title":"Gears, 4.88","each":"330.00 USD","option":{"parameters":{"axle.rear.ratio":"4.88"}}},
                 {"id":"sold","title":"Gears, 5.13","each":"9.00 USD","onHand":0,"option":{"parameters":{"axle.rear.ratio":"5.13"}}},
                 {"id":"lamp","title":"Lamp","each":"9.00 USD"}],
        """;

    private const string Slots = """
        ,{"id":"facts","parent":"vehicle","title":"Facts","options":[{"id":"as-found","parameters":{
          "gearbox.1.ratio":"5.15","gearbox.2.ratio":"2.6","gearbox.3.ratio":"1.6","gearbox.4.ratio":1,"gearbox.5.ratio":"0.8","transfer.high.ratio":1,"transfer.low.ratio":"2.28",
          "duty.cruise-speed":"70 mph","vehicle.drag-area":"1.45 m2","wheel.*.*.tire.size":"31x10.50R15"}}]}
        ,{"id":"engine","parent":"vehicle","title":"Engine","options":[
          {"id":"as-found","masses":[],"parameters":{"engine.idle-speed":"700 rpm","engine.redline":"2600 rpm","engine.torque-curve":[["800 rpm","190 N m"],["1800 rpm","230 N m"],["4000 rpm","170 N m"]]}},
          {"id":"lively","class":"replace","originality":0,"masses":[],"prices":[{"id":"p","count":2,"each":"700.00 USD","category":"parts"}],
           "parameters":{"engine.redline":"4600 rpm","engine.peak-torque":"330 N m","engine.peak-power":"110 kW"}},
          {"id":"weak","class":"replace","originality":0,"masses":[],"parameters":{"engine.redline":"4600 rpm","engine.torque-curve":[["800 rpm","60 N m"],["4000 rpm","50 N m"]]}},
          {"id":"nameless","class":"replace","originality":0,"masses":[]}]}
        ,{"id":"gears","parent":"vehicle","title":"Gears","options":[{"id":"as-found","masses":[],"parameters":{"axle.rear.ratio":"3.73"}},
          {"id":"deep","class":"replace","originality":0,"masses":[],"parameters":{"axle.rear.ratio":"4.11"},"requires":[{"slot":"engine","options":["as-found","lively"]}]},
          {"id":"counted","class":"replace","originality":0,"masses":[]}]}
        ,{"id":"rear","parent":"vehicle","title":"Rear axle","options":[{"id":"as-found","masses":[{"id":"axle","mass":"120 kg","at":["2.56 m","0 m","0 m"]}],"parameters":{"axle.rear.shaft.diameter":"33 mm"}},
          {"id":"other","class":"replace","originality":0,"masses":[{"id":"axle","mass":"120 kg","at":["2.56 m","0 m","0 m"]}],"parameters":{"axle.rear.shaft.diameter":"38 mm","axle.rear.ratio":"3.9"}}]}
        """;

    private static readonly Opened s_truck = Opened.Vehicle(Slots, top: Top);

    private static readonly SearchGoal s_goal = new(
        i => i.Calculation.Id.StartsWith("driveline.", StringComparison.Ordinal), i => i.Calculation.Id.StartsWith("driveline.", StringComparison.Ordinal),
        ("driveline.cruise", "engineSpeed"), ("driveline.top-speed", "topSpeed"), slot => slot == "rear");

    private static PartsSearch Search() => new(s_truck.Sheet(), s_goal, page => page == "Driveline");

    [Fact]
    public void It_chooses_between_the_items_that_state_something_and_stock_that_states_the_same()
    {
        var places = Search().Places;
        Assert.Equal(["engine", "gears", "rear", "axle.rear.ratio"], places.Select(p => p.Slot));
        Assert.Equal(["as-found", "lively", "weak"], places[0].Candidates.Select(c => c.Option));
        Assert.Equal([null, "g456", "g488"], places[3].Candidates.Select(c => c.Stock));
        Assert.Equal(1400m, places[0].Candidates[1].Cost);
        Assert.Equal(120, places[2].Candidates[0].UnsprungMass);
    }

    [Fact]
    public void Every_combination_has_the_verdict_of_its_own_whole_sheet()
    {
        var search = Search();
        var result = search.Run(1000, TestContext.Current.CancellationToken);
        var best = result.Best.Select(b => string.Join('|', b.Chosen.Select(c => c.Option ?? c.Stock))).ToHashSet();
        int offered = 0, passed = 0;
        foreach (var chosen in All(search.Places, []))
        {
            var sheet = s_truck.Plan.Evaluate(s_truck.Build, s_truck.Shop, search.AsScenario(chosen));
            var stock = chosen.Any(c => c.Stock is not null);
            // Both rear axle and gears state a ratio: the sheet calls it a conflict, and a part of the stock list settles it as a what-if does. The search does not.
            var conflict = chosen[2].Option == "other";
            var no = conflict || sheet.ModelFindings.Any(f => f.Finding.Verdict == Verdict.Fail) || sheet.Instances.OfType<InstanceState>().Where(i => s_goal.Judges(i.Instance)).SelectMany(Sheet.FindingsOf)
                .Any(f => f.Finding.Verdict == Verdict.Fail || (f.Finding.Verdict == Verdict.Unknown && s_truck.Sheet().Findings().First(b => b.Id == f.Id).Finding.Verdict != Verdict.Unknown));
            offered++;
            if (!no) passed++;
            var name = string.Join('|', chosen.Select(c => c.Option ?? c.Stock));
            Assert.True(best.Contains(name) == !no, $"{name}: the sheet says {(no ? "no" : "good")}, the search {result.WhyNot(chosen) ?? "good"}");
            Assert.Equal(!no, result.WhyNot(chosen) is null);
            if (!no && stock) Assert.Equal(Opened.Told(sheet, "axle.rear.ratio"), chosen[3].Stock == "g456" ? 4.56 : 4.88, 1e-12);
        }
        Assert.Equal((offered, passed), ((int)result.Offered, (int)result.Passed));
        Assert.InRange(passed, 1, offered - 1);
    }

    [Fact]
    public void The_finding_that_refused_is_named_with_a_sentence_and_an_example()
    {
        var result = Search().Run(5, TestContext.Current.CancellationToken);
        Assert.Contains(result.Reasons, r => r.Finding == "driveline.cruise/redline" && r.Text.Contains("rpm", StringComparison.Ordinal));
        Assert.Contains(result.Reasons, r => r.Finding == "model/requires[gears,engine]");
        Assert.Contains(result.Reasons, r => r.Finding == "model/conflict[axle.rear.ratio]");
        Assert.Equal(result.Offered - result.Passed, result.Reasons.Sum(r => r.Count));
        Assert.Equal(result.Offered - result.Passed, result.Rejected().Count());
        Assert.All(result.Rejected(), r => Assert.Equal(r.Finding, result.WhyNot(r.Chosen)));
    }

    [Fact]
    public void The_best_come_by_what_there_is_to_watch_and_then_by_the_sum_of_their_places()
    {
        var best = Search().Run(1000, TestContext.Current.CancellationToken).Best;
        double Places(Combination c) => best.Count(o => o.Effort < c.Effort) + best.Count(o => o.Margin > c.Margin) + best.Count(o => o.Cost < c.Cost) + best.Count(o => o.UnsprungMass < c.UnsprungMass);
        Assert.Equal(best.OrderBy(b => b.Watch).ThenBy(Places).Select(b => (b.Watch, Places(b))), best.Select(b => (b.Watch, Places(b))));
        Assert.True(best.Select(b => b.Effort).Distinct().Count() > 1);
    }

    private static IEnumerable<List<Candidate>> All(IReadOnlyList<SearchPlace> places, List<Candidate> so) =>
        so.Count == places.Count ? [so] : places[so.Count].Candidates.SelectMany(c => All(places, [.. so, c]));
}
