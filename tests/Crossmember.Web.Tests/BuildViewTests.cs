using System.Text;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Decisions;
using Crossmember.Web.Features.Writing;

namespace Crossmember.Web.Tests;

/// <summary>What one person sees at one position, over a store of its own.</summary>
public sealed class BuildViewTests : IDisposable
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-view-");
    private readonly OpenShop _shop;
    private readonly ShopDesk _desk;

    public BuildViewTests()
    {
        _shop = OpenShop.Open(_data.FullName, TimeProvider.System);
        _desk = new(_shop);
        Assert.NotNull(_desk.Import(Encoding.UTF8.GetBytes(Bracken.Json), new Faults()));
    }

    public void Dispose()
    {
        _shop.Dispose();
        _data.Delete(recursive: true);
    }

    private BuildView View => BuildView.Of(_desk, "bracken")!;

    private AppendOutcome Choose(BuildView seen, string item, string option) =>
        _desk.Append([_desk.Deciding.Choose("bracken", "working", item, option, seen.Seen($"scenarios/working/choices/{item}"), "ana", "test")], Arrival.Online)[0];

    [Fact]
    public void Looking_at_an_option_writes_nothing_and_equals_what_choosing_it_gives()
    {
        var before = View;
        var looked = before.KnockOn("working", "final-drives", "short").Rows;
        Assert.Equal(before.Build.Position, View.Build.Position);
        Choose(before, "final-drives", "short");
        var chosen = View.KnockOn("as-found", "working")!.Rows;
        Assert.Equal(looked.Select(r => (r.Kind, r.Id, r.State, r.From, r.To)), chosen.Select(r => (r.Kind, r.Id, r.State, r.From, r.To)));
    }

    [Fact]
    public void A_view_that_is_behind_meets_a_conflict_on_the_same_item_only()
    {
        var behind = View;
        Assert.IsType<AppendOutcome.Appended>(Choose(View, "tires", "at33"));
        Assert.IsType<AppendOutcome.Appended>(Choose(behind, "final-drives", "tall"));
        var mine = _desk.Deciding.Choose("bracken", "working", "tires", "none", behind.Seen("scenarios/working/choices/tires"), "ben", "test");
        var conflict = Assert.IsType<AppendOutcome.Conflict>(_desk.Append([mine], Arrival.Online)[0]);
        var insisted = new Clash(mine, conflict.Last).Insisted(TimeProvider.System);
        Assert.IsType<AppendOutcome.Appended>(_desk.Append(insisted, Arrival.Online)[0]);
        Assert.Equal("none", View.Build.Scenarios["working"].Choices["tires"]);
    }

    [Fact]
    public void Options_that_would_settle_a_no_are_named_with_what_they_spoil()
    {
        Choose(View, "final-drives", "short");
        var view = View;
        var sheet = view.Sheet("working");
        var redline = sheet.Findings().First();
        Assert.Equal(("driveline.cruise/redline", Verdict.Fail), (redline.Id, redline.Finding.Verdict));
        var remedies = view.Remedies("working", [redline])[redline.Id];
        // 65 mph by hand: 3102 rpm with 4.10, 2822 with 3.73; with 4.88 on 33 in tires still 3231, over 3200.
        Assert.Equal(["As found", "3.73 gears"], remedies.Select(r => r.Option));
        Assert.All(remedies, r => Assert.Equal(("final-drives", 0), (r.Item.Id, r.Worse)));
    }

    [Fact]
    public void What_a_look_spoils_is_answered_with_what_other_items_would_restore()
    {
        var restoring = View.Restoring("working", "final-drives", "short");
        Assert.Equal(View.KnockOn("working", "final-drives", "short").Rows.Where(RippleGroups.IsWorse).Select(r => r.Id).Order(StringComparer.Ordinal), restoring.Keys.Order(StringComparer.Ordinal));
        // 4.88 on 33 in tires still turns 3231 rpm at 65 mph, over 3200: tires alone restore nothing here, and going back on the gears is no answer.
        Assert.DoesNotContain(restoring["driveline.cruise/redline"], r => r.Item.Id is "final-drives" or "tires");
    }

    [Fact]
    public void A_caution_is_restored_only_by_what_makes_it_good()
    {
        foreach (var (key, value) in new[] { ("vehicle.original.tire-diameter", "29 in"), ("vehicle.original.axle-ratio", "4.1") })
            Assert.IsType<AppendOutcome.Appended>(_desk.Append([_desk.Deciding.TryOut("bracken", "working", key, value, View.Seen($"scenarios/working/what-ifs/{key}"), "ana", "test")], Arrival.Online)[0]);
        // By hand: 4.1 x 33 / 29 = 4.67, 13.8 % too tall with 4.10: a caution. 4.88 is deeper and good; 3.73 leaves the caution it is and restores nothing.
        var remedies = View.Restoring("working", "tires", "at33")["driveline.restoring-ratio/gearing"];
        Assert.Equal("4.88 gears", Assert.Single(remedies).Option);
    }

    [Fact]
    public void Against_the_approved_build_a_look_shows_everything_since_the_yes()
    {
        var view = View;
        Assert.IsType<AppendOutcome.Appended>(_desk.Append([_desk.Deciding.Approve(view.Open, view.Sheet("working"), "the owner", view.Seen("approved"), "ana", "test", "by phone")], Arrival.Online)[0]);
        Choose(View, "tires", "at33");
        var now = View;
        Assert.Equal("by phone", now.Open.Approval!.How);
        var sinceYes = now.KnockOn("working", "final-drives", "tall", "approved").Rows.Select(r => r.Id).ToHashSet();
        var alone = now.KnockOn("working", "final-drives", "tall").Rows.Select(r => r.Id).ToHashSet();
        Assert.Contains("wheel.rear.left.tire.size", sinceYes);
        Assert.DoesNotContain("wheel.rear.left.tire.size", alone);
    }

    [Fact]
    public void What_is_open_says_why_it_matters_now_most_pressing_first()
    {
        var view = View;
        var questions = OpenQuestion.Of(view.Sheet("working"), ItemMarks.Of(view.Sheet("working"), view.Build.Scenarios["working"]));
        Assert.Equal(["final-drives", "tires"], questions.Select(q => q.Item.Id).Where(i => i is "final-drives" or "tires"));
        var drives = questions.Single(q => q.Item.Id == "final-drives");
        Assert.Contains("up to 3 weeks to come", drives.Why);
        Assert.Contains("620.00 USD", drives.Why); // 2 x 310.00
        Assert.Equal(21 * 86400, drives.Lead);
        Choose(view, "final-drives", "tall");
        Assert.DoesNotContain(OpenQuestion.Of(View.Sheet("working"), ItemMarks.Of(View.Sheet("working"), View.Build.Scenarios["working"])), q => q.Item.Id == "final-drives");
    }

    [Fact]
    public void A_phase_that_is_entered_is_kept_and_a_wrong_one_refused()
    {
        Assert.IsType<AppendOutcome.Appended>(_desk.Append([_desk.Deciding.Enter("bracken", "assembly", View.Seen("phase"), "ana", "test")], Arrival.Online)[0]);
        Assert.Equal("assembly", View.Build.Phase);
        var refused = Assert.IsType<AppendOutcome.Refused>(_desk.Append([_desk.Deciding.Enter("bracken", "assembled", View.Seen("phase"), "ana", "test")], Arrival.Online)[0]);
        Assert.Contains("mock-up, assembly", refused.Fault.Right, StringComparison.Ordinal);
    }

    [Fact]
    public void What_a_check_compared_is_told_in_the_readers_units()
    {
        var rating = Bracken.With().Findings().Single(f => f.Id == "mass.axle-load[axle=front,condition=empty]/rating").Finding;
        Assert.Equal("2000 lb, at most 2500 lb", Shown.Compared(rating, MeasureSystem.UsCustomary));
        Assert.Equal("907.18 kg, at most 1134 kg", Shown.Compared(rating, MeasureSystem.Metric));
    }

    [Fact]
    public void Whoever_looks_hears_of_every_change_and_of_nothing_refused()
    {
        List<string> heard = [];
        _desk.Changed += heard.Add;
        Choose(View, "tires", "no-such");
        Assert.Empty(heard);
        Choose(View, "tires", "at33");
        Assert.Equal(["bracken"], heard);
    }

    [Fact]
    public void A_late_fact_from_a_queue_waits_and_can_be_taken_in_or_set_aside()
    {
        var behind = View;
        Choose(View, "tires", "at33");
        Fact Late() => _desk.Deciding.Choose("bracken", "working", "tires", "none", behind.Seen("scenarios/working/choices/tires"), "ben", "tablet");
        Assert.All(_desk.Append([Late()], Arrival.Queue), o => Assert.IsType<AppendOutcome.Held>(o));
        var held = Assert.Single(_desk.Held("bracken"));
        Assert.Null(_desk.SetAside("bracken", held.Fact.Id, "ana", "not now"));
        Assert.Empty(_desk.Held("bracken"));
        _desk.Append([Late()], Arrival.Queue);
        Assert.All(_desk.Release("bracken", Assert.Single(_desk.Held("bracken")).Fact.Id, "ana", "yes", View.Build.Position), o => Assert.IsType<AppendOutcome.Appended>(o));
        Assert.Equal("none", View.Build.Scenarios["working"].Choices["tires"]);
    }
}
