using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Searching;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.Searching;

/// <summary>The search for brakes on the demo's truck, against whole sheets of the same combinations.</summary>
public sealed class BrakeSearchTests
{
    private static readonly (Build Build, ShopFacts Shop) s_truck = Read();

    private static readonly EvaluationPlan s_plan = new(Catalogue.Shipped, s_truck.Build);

    private static readonly Sheet s_carried = s_plan.Evaluate(s_truck.Build, s_truck.Shop, s_truck.Build.Scenarios["carried"]);

    private static readonly (PartsSearch Search, SearchResult Result) s_found = Found(s_carried);

    [Fact]
    public void What_passes_and_what_is_refused_is_what_whole_sheets_say()
    {
        var (search, result) = s_found;
        var random = new Random(7);
        int passed = 0, refused = 0;
        for (var i = 0; i < 60; i++)
        {
            List<Candidate> chosen = [.. search.Places.Select(p => p.Candidates[p.IsStock && random.Next(3) > 0 ? 0 : random.Next(p.Candidates.Count)])];
            var why = result.WhyNot(chosen);
            // A part beside an option that has no such part is no combination: nothing refused it, and it is not counted either.
            if (!GoTogether(search, chosen)) continue;
            var sheet = s_plan.Evaluate(s_truck.Build, s_truck.Shop, search.AsScenario(chosen));
            var no = sheet.Instances.OfType<InstanceState>().Where(s => BrakeSearch.Goal().Judges(s.Instance)).SelectMany(Sheet.FindingsOf).Any(f => f.Finding.Verdict == Verdict.Fail);
            Assert.True(no == why is not null, $"{string.Join(" | ", chosen.Select(c => c.Option ?? c.Stock ?? "own"))}: the sheet says {(no ? "no" : "good")}, the search {why ?? "good"}");
            if (no) refused++;
            else passed++;
        }
        Assert.True(passed > 2 && refused > 2, $"{passed} passed, {refused} refused");
    }

    [Fact]
    public void Sets_whose_rear_wheels_lock_first_come_after_all_others()
    {
        Assert.True(s_found.Result.Best[0].Margin >= 0);
        Assert.Equal(s_found.Result.Best.Select(b => b.Margin is null or < 0).Order(), s_found.Result.Best.Select(b => b.Margin is null or < 0));
        Assert.All(s_found.Result.Best, b => Assert.True(b.Effort > 0));
    }

    [Fact]
    public void The_discs_on_the_old_master_fall_out_and_the_finding_is_named()
    {
        var (search, result) = s_found;
        Candidate Of(string slot, string option) => search.Places.First(p => p.Slot == slot).Candidates.First(c => c.Option == option);
        List<Candidate> chosen = [.. search.Places.Select(p => p.Slot switch
        {
            "axle.front.brakes" => Of(p.Slot, "discs-18"),
            "brakes.hydraulics" => Of(p.Slot, "single-new"),
            _ => p.Candidates[0],
        })];
        Assert.NotNull(result.WhyNot(chosen));
        Assert.Contains(result.Reasons, r => r.Finding == result.WhyNot(chosen) && r.Text.Length > 20);
    }

    // Grip holds no such hill at all, whatever brakes are chosen: that refuses nobody.
    [Fact]
    public void A_no_that_no_part_can_move_refuses_nobody_and_is_told_apart()
    {
        var steep = new Scenario("steep", null, "carried", System.Collections.Immutable.ImmutableSortedDictionary<string, string>.Empty,
            [new("duty.parking-grade", new Stated(Value.Of(0.6), "0.6", Basis.Assumed, null))]);
        var (_, result) = Found(s_plan.Evaluate(s_truck.Build, s_truck.Shop, steep));
        Assert.Contains(result.Standing, f => f.Id.StartsWith("brakes.parking[", StringComparison.Ordinal) && f.Id.EndsWith("/facing-down", StringComparison.Ordinal));
        Assert.True(result.Passed > 0);
    }

    [Fact]
    public void Twice_the_same_search_gives_twice_the_same_order() =>
        Assert.Equal(s_found.Result.Best.Select(b => string.Join('|', b.Chosen.Select(c => c.Title))), Found(s_carried).Result.Best.Select(b => string.Join('|', b.Chosen.Select(c => c.Title))));

    private static bool GoTogether(PartsSearch search, List<Candidate> chosen)
    {
        var stated = chosen.Where(c => c.Option is not null).SelectMany(c => c.Values.Select(v => v.Key)).ToHashSet();
        return chosen.Where(c => c.Stock is not null).All(c => c.Values.All(v => stated.Contains(v.Key))) && search.Places.Count == chosen.Count;
    }

    private static (PartsSearch Search, SearchResult Result) Found(Sheet sheet)
    {
        var search = BrakeSearch.Of(sheet);
        return (search, search.Run(20));
    }

    private static (Build, ShopFacts) Read()
    {
        var faults = new Faults();
        using var stream = typeof(BrakeSearchTests).Assembly.GetManifestResourceStream("packhorse.json")!;
        var bytes = new byte[stream.Length];
        stream.ReadExactly(bytes);
        var file = BuildFile.Read(bytes, Catalogue.Shipped, faults);
        Assert.True(file is not null, string.Join('\n', faults.List));
        return (file!.Build, file.Shop);
    }
}
