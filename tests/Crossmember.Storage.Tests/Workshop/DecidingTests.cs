using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;

namespace Crossmember.Storage.Tests.Workshop;

public sealed class DecidingTests
{
    private const string Choice = "scenarios/tall/choices/axle.rear";

    [Fact]
    public void A_choice_changes_the_sheet_and_taking_it_back_restores_it()
    {
        using var s = new ShopWithABuild();
        var before = Ratio(s);
        var choice = s.Shop.Deciding.Choose("hauler", "tall", "axle.rear", "deep", s.Shop.Deciding.LastOn("hauler", Choice), "lead", "test");
        Assert.IsType<AppendOutcome.Appended>(s.Append(choice));
        Assert.Equal(4.88, Ratio(s));
        Assert.IsType<AppendOutcome.Appended>(s.Append(s.Shop.Deciding.Undo(choice, choice.Id, "lead", "test")));
        Assert.Equal(before, Ratio(s));
    }

    [Fact]
    public void Two_people_on_one_value_the_second_sees_both_and_nothing_is_lost()
    {
        using var s = new ShopWithABuild();
        var seen = s.Shop.Deciding.LastOn("hauler", Choice);
        var mine = s.Shop.Deciding.Choose("hauler", "tall", "axle.rear", "deep", seen, "lead", "tablet");
        var theirs = s.Shop.Deciding.Choose("hauler", "tall", "axle.rear", "none", seen, "owner", "desk");
        Assert.IsType<AppendOutcome.Appended>(s.Append(mine));
        var conflict = Assert.IsType<AppendOutcome.Conflict>(s.Append(theirs));
        Assert.Equal(mine.Id, conflict.Last!.Fact.Id);
        Assert.Equal(seen, conflict.Seen);
        Assert.Equal(4.88, Ratio(s));
        // Having seen the other's word, the second may still have the last one.
        Assert.IsType<AppendOutcome.Appended>(s.Append(theirs with { Id = Guid.CreateVersion7(), After = mine.Id }));
    }

    [Fact]
    public void Approving_keeps_what_was_shown_and_the_ripple_since_then()
    {
        using var s = new ShopWithABuild();
        Approve(s, "tall");
        var faults = new Faults();
        Assert.Empty(s.Shop.Comparing(s.Open()).Ripple("approved@", "approved", faults)!.Rows);
        s.Say("option.stated", "slots/tires/options/at33", JsonNode.Parse("""{"class":"upgrade","originality":0.2,"parameters":{"wheel.*.*.tire.size":"35x12.50R15LT"}}"""));
        var rows = s.Shop.Comparing(s.Open()).Ripple("approved@", "approved", faults)!.Rows;
        Assert.Empty(faults.List);
        Assert.Contains(rows, r => r is { Kind: RowKind.Parameter, Id: "wheel.rear.left.tire.size", From.Text: "33x10.50R15LT", To.Text: "35x12.50R15LT" });
        Assert.Contains(rows, r => r is { Kind: RowKind.Cost, Id: "parts", State: RowState.Gone });
    }

    [Fact]
    public void What_was_shown_can_be_worked_out_again()
    {
        using var s = new ShopWithABuild();
        var shown = Deciding.Shown(s.Open().Sheet("tall", s.Shelf.Shop())!, s.Open().Build.Position);
        Approve(s, "tall");
        var approval = s.Open().Approval!;
        Assert.Equal(shown, approval.Shown);
        var then = new OpenBuild(s.Shelf.At("hauler", approval.BuildPosition), s.Shelf.Catalogue);
        Assert.Equal(shown, Deciding.Shown(then.Sheet("tall", s.Shelf.ShopAt(approval.ShopPosition))!, approval.BuildPosition));
    }

    [Fact]
    public void A_scenario_with_a_what_if_cannot_be_approved_by_any_door()
    {
        using var s = new ShopWithABuild();
        Assert.IsType<AppendOutcome.Appended>(s.Say("what-if.set", "scenarios/working/what-ifs/axle.rear.ratio", new JsonObject { ["value"] = 4.1 }));
        Assert.NotNull(Deciding.Obstacle(s.Open().Build, "tall"));
        var payload = JsonNode.Parse("""{"scenario":"tall","choices":{"tires":"at33"},"build":1,"shop":1,"methods":{},"shown":"","by":"customer"}""");
        var refused = Assert.IsType<AppendOutcome.Refused>(s.Say("scenario.approved", "approved", payload));
        Assert.Contains("what-ifs", refused.Fault.Wrong, StringComparison.Ordinal);
        Assert.IsType<AppendOutcome.Appended>(s.Say("what-if.set", "scenarios/working/what-ifs/axle.rear.ratio", new JsonObject { ["value"] = null }));
        Approve(s, "tall");
    }

    [Theory]
    [InlineData("choice.made", "scenarios/approved/choices/tires", """{"option":"at33"}""", "cannot be edited")]
    [InlineData("choice.made", "scenarios/nowhere/choices/tires", """{"option":"at33"}""", "no scenario")]
    [InlineData("choice.made", "scenarios/tall/choices/tires", """{"option":"at44"}""", "no option")]
    [InlineData("scenario.dropped", "scenarios/working", "{}", "no scenario 'working'")]
    [InlineData("scenario.opened", "scenarios/working", """{"base":"tall"}""", "its own base")]
    [InlineData("scenario.opened", "scenarios/approved", """{"base":null}""", "reserved")]
    [InlineData("value.noted", "slots/tyres/options/as-found/values/axle.rear.ratio", """{"value":4}""", "no item")]
    [InlineData("value.noted", "slots/tires/options/as-found/values/axle.rear.ratoi", """{"value":4}""", "no parameter")]
    [InlineData("value.noted", "slots/axle.rear/options/as-found/values/axle.rear.ratio", """{"value":"four"}""", "four")]
    [InlineData("value.noted", "slots/axle.rear/options/as-found/values/axle.middle.ratio", """{"value":4}""", "middle")]
    [InlineData("hours.logged", "slots/tires/hours", """{"trade":"technician","hours":30}""", "hours")]
    [InlineData("note.written", "slots/nothing/notes", """{"text":"loose"}""", "no item")]
    public void What_does_not_hold_together_is_refused_and_nothing_is_written(string kind, string subject, string payload, string says)
    {
        using var s = new ShopWithABuild();
        var head = s.Shelf.Store.Head("hauler");
        var refused = Assert.IsType<AppendOutcome.Refused>(s.Say(kind, subject, JsonNode.Parse(payload)));
        Assert.Contains(says, refused.Fault.Wrong, StringComparison.Ordinal);
        Assert.Equal(head.Sequence, s.Shelf.Store.Head("hauler").Sequence);
    }

    [Fact]
    public void A_measured_value_survives_a_new_body_of_the_option()
    {
        using var s = new ShopWithABuild();
        Assert.IsType<AppendOutcome.Appended>(s.Say("value.noted", "slots/axle.rear/options/deep/values/axle.rear.ratio", JsonNode.Parse("""{"value":4.9,"basis":"measured"}""")));
        Assert.IsType<AppendOutcome.Appended>(s.Say("option.stated", "slots/axle.rear/options/deep", JsonNode.Parse("""{"class":"replace","originality":0.5,"parameters":{"axle.rear.ratio":5.13}}""")));
        Assert.IsType<AppendOutcome.Appended>(s.Say("choice.made", Choice, new JsonObject { ["option"] = "deep" }));
        Assert.Equal(4.9, Ratio(s));
    }

    private static double Ratio(ShopWithABuild s) => s.Open().Sheet("tall", s.Shelf.Shop())!.Key("axle.rear.ratio")!.Value.Value.Number;

    private static void Approve(ShopWithABuild s, string scenario)
    {
        var open = s.Open();
        var fact = s.Shop.Deciding.Approve(open, open.Sheet(scenario, s.Shelf.Shop())!, "customer", s.Shop.Deciding.LastOn("hauler", "approved"), "lead", "test");
        Assert.IsType<AppendOutcome.Appended>(s.Append(fact));
    }
}
