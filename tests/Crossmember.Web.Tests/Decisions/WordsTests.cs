using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Ripples;
using Crossmember.Engineering.Calculations;
using Crossmember.Web.Features;
using Crossmember.Web.Features.Builds;
using Crossmember.Web.Features.Decisions;
using Crossmember.Web.Features.Writing;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Workshop;

namespace Crossmember.Web.Tests.Decisions;

public sealed class WordsTests
{
    private static Fact Fact(string kind, string subject, JsonNode? payload, Guid? corrects = null) =>
        new(Guid.Parse("01900000-0000-7000-8000-000000000001"), "bracken", kind, 1, DateTimeOffset.UnixEpoch, "Ana", "tablet", subject, null, corrects, null, payload);

    [Theory]
    [InlineData("Springs and U-bolts", "springs and U-bolts")]
    [InlineData("U-bolts", "U-bolts")]
    [InlineData("Front ring and pinion", "front ring and pinion")]
    [InlineData("", "")]
    public void A_title_in_a_sentence_keeps_what_is_a_word_by_itself(string title, string within) => Assert.Equal(within, Words.Within(title));

    [Theory]
    [InlineData("Not known: axle ratio is missing (read the tag); redline is missing (ask).", "Not known: axle ratio is missing; redline is missing.")]
    [InlineData("The rear axle (touring) carries 1724 kg.", "The rear axle (touring) carries 1724 kg.")]
    public void What_is_missing_is_told_briefly_and_all_else_as_it_stands(string text, string brief) => Assert.Equal(brief, Words.Brief(text));

    [Fact]
    public void Entries_are_told_as_sentences()
    {
        string Say(Fact f) => EntryWords.Say(f, Bracken.Build, _ => Fact("choice.made", "scenarios/working/choices/tires", new JsonObject { ["option"] = "at33" }));
        Assert.Equal("chose “33 in all-terrain” for Tires, in working", Say(Fact("choice.made", "scenarios/working/choices/tires", new JsonObject { ["option"] = "at33" })));
        Assert.Equal("left Heater off, in working", Say(Fact("choice.made", "scenarios/working/choices/heater", new JsonObject { ["option"] = "none" })));
        Assert.Equal("went back to the base for Tires, in working", Say(Fact("choice.made", "scenarios/working/choices/tires", new JsonObject { ["option"] = null })));
        Assert.Equal("tried 70 mph for “speed the vehicle is to cruise at”, in working", Say(Fact("what-if.set", "scenarios/working/what-ifs/duty.cruise-speed", new JsonObject { ["value"] = "70 mph" })));
        Assert.Equal("noted 33x10.50R15LT for “tire size as on the sidewall” rear left on Tires", Say(Fact("value.noted", "slots/tires/options/at33/values/wheel.rear.left.tire.size", new JsonObject { ["value"] = "33x10.50R15LT" })));
        Assert.Equal("dropped the tried value of no.such.key, in working", Say(Fact("what-if.set", "scenarios/working/what-ifs/no.such.key", new JsonObject { ["value"] = null })));
        Assert.Equal("approved “working”; the owner said yes", Say(Fact("scenario.approved", "approved", new JsonObject { ["scenario"] = "working", ["by"] = "the owner" })));
        Assert.Equal("approved “working”; the owner said yes by phone", Say(Fact("scenario.approved", "approved", new JsonObject { ["scenario"] = "working", ["by"] = "the owner", ["how"] = "by phone" })));
        Assert.Equal("moved the vehicle to mock-up", Say(Fact("phase.entered", "phase", new JsonObject { ["phase"] = "mock-up" })));
        Assert.Equal("took back: chose “33 in all-terrain” for Tires, in working", Say(Fact("choice.made", "scenarios/working/choices/tires", null, Guid.NewGuid())));
    }

    [Theory]
    [InlineData(RowKind.Result, "driveline.engine-speed[gear=4,range=high].engineSpeed", "gear 4, high range")]
    [InlineData(RowKind.Finding, "tires.load[axle=rear,condition=empty,side=left]/rating", "rear left (empty)")]
    [InlineData(RowKind.Parameter, "axle.front.ratio", "front")]
    [InlineData(RowKind.Finding, "model/requires[tires,final-drives]", "Tires, Final drives")]
    [InlineData(RowKind.Mass, "tires/set", "Tires: set")]
    public void Rows_say_where_in_the_order_people_say_it(RowKind kind, string id, string where) =>
        Assert.Equal(where, new RowNames(Bracken.Plan, Bracken.Build).Of(new(kind, id, RowState.Changed, null, null, [])).Where);

    [Fact]
    public void A_check_that_appears_with_a_no_counts_as_a_verdict_that_changes()
    {
        RippleRow Row(RowState state, Verdict? from, Verdict? to) =>
            new(RowKind.Finding, "a/b", state, from is { } f ? new(null, null, null, f) : null, to is { } t ? new(null, null, null, t) : null, []);
        Assert.True(RippleGroups.IsWorse(Row(RowState.Appeared, null, Verdict.Fail)));
        Assert.False(RippleGroups.ChangesVerdict(Row(RowState.Appeared, null, Verdict.Pass)));
        Assert.True(RippleGroups.ChangesVerdict(Row(RowState.Gone, Verdict.Unknown, null)));
        Assert.False(RippleGroups.IsWorse(Row(RowState.Gone, Verdict.Unknown, null)));
        Assert.False(RippleGroups.ChangesVerdict(Row(RowState.Moved, Verdict.Fail, Verdict.Fail)));
    }

    [Fact]
    public void Trouble_goes_back_to_the_items_that_have_a_part_in_it()
    {
        var marks = ItemMarks.Of(Bracken.With(("final-drives", "short")), Bracken.Working);
        Assert.Equal(Verdict.Fail, marks.Worst("final-drives"));
        Assert.Null(marks.Worst("heater"));
        Assert.True(marks.IsUndecided("tires"));
        Assert.False(marks.IsUndecided("heater")); // nothing to choose there but to leave it off
        var redline = Bracken.With(("final-drives", "short")).Findings().First();
        Assert.Equal("final-drives", marks.WhereToSettle(redline));
    }

    [Fact]
    public void A_build_in_trouble_names_the_worst_and_where_to_settle_it()
    {
        var build = Bracken.Build with { Scenarios = Bracken.Build.Scenarios.SetItem("working", Bracken.Working with { Choices = Bracken.Working.Choices.Add("final-drives", "short") }) };
        var glance = BuildGlance.Of(new OpenBuild(new StreamState(build, [], [], []), Catalogue.Shipped), Bracken.File.Shop);
        Assert.Equal(Verdict.Fail, glance.State);
        Assert.Equal(1, glance.Fails);
        Assert.Contains("redline of 3200 rpm", glance.Worst!.Text, StringComparison.Ordinal);
        Assert.Equal("final-drives", glance.Item);
        Assert.Contains("1 check says no", glance.Next, StringComparison.Ordinal);
    }
}
