using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Templates;
using Crossmember.Builds.Tests.Journal;
using Crossmember.Builds.Workshop;

namespace Crossmember.Builds.Tests.Workshop;

/// <summary>A new build is one batch that the rules accept, and takes nothing of another vehicle that was measured or found on it.</summary>
public sealed class StartingBuildsTests
{
    private static readonly Speaker s_ana = new("ana", "bench");
    private readonly Builds.Journal.Journal _journal;
    private readonly Stating _stating = new(TimeProvider.System);
    private readonly StartingBuilds _starting;

    public StartingBuildsTests()
    {
        _journal = new(new MemoryJournalStore(), TimeProvider.System, new AppendRules(Catalogue.Shipped));
        _starting = new(_stating, TimeProvider.System);
    }

    private Build Written(IReadOnlyList<Fact> facts)
    {
        Assert.All(_journal.Append(facts, Arrival.Online), o => Assert.True(o is AppendOutcome.Appended, o.ToString()));
        return Folded(facts[0].Stream);
    }

    private Build Folded(string id) => new StreamFold(Catalogue.Shipped.Table, Lifts.Current).Build(id, _journal.Store.Read(id)).Build;

    public static TheoryData<string> Templates => [.. TemplateReader.Shipped.Select(t => t.Id)];

    [Theory]
    [MemberData(nameof(Templates))]
    public void A_template_becomes_a_build_in_one_batch(string id)
    {
        var template = TemplateReader.Shipped.Single(t => t.Id == id);
        var facts = _starting.FromTemplate(template, "heron", "Heron", 5, 2, s_ana);
        Assert.Single(facts.Select(f => f.Batch).Distinct());
        var build = Written(facts);
        Assert.Equal("Heron", build.Title);
        Assert.Equal("Heron", build.Find(Slot.Root)!.Title);
        Assert.Equal(template.Items.Select(i => i.Id), build.Slots.Select(s => s.Id));
        Assert.Equal(["working"], build.Scenarios.Keys);
        Assert.Equal(["1", "2", "3", "4", "5"], build.Sets.Of("gear"));
        Assert.Equal(new Membership("gear", "*"), Assert.Single(build.Find("gearbox")!.Governs));
        // Nothing is known of it yet, and it can be worked out all the same.
        Assert.All(new EvaluationPlan(Catalogue.Shipped, build).Evaluate(build, new(), build.Scenarios["working"]).Findings(), f => Assert.NotEqual(Engineering.Calculations.Verdict.Fail, f.Finding.Verdict));
    }

    [Fact]
    public void An_empty_build_is_a_vehicle_and_a_what_if()
    {
        var build = Written(_starting.FromTemplate(ItemTemplate.Empty, "bare", "Bare", 4, 2, s_ana));
        Assert.Equal([Slot.Root], build.Slots.Select(s => s.Id));
        Assert.Equal("Bare", build.Slots[0].Title);
    }

    [Fact]
    public void A_build_that_is_here_already_is_not_opened_again()
    {
        Written(_starting.FromTemplate(ItemTemplate.Empty, "bare", "Bare", 4, 2, s_ana));
        Assert.Contains(_journal.Append(_starting.FromTemplate(ItemTemplate.Empty, "bare", "Another", 4, 2, s_ana), Arrival.Online), o => o is AppendOutcome.Conflict);
    }

    [Fact]
    public void From_a_build_that_is_here_come_items_and_options_and_nothing_of_the_vehicle_itself()
    {
        Model();
        var build = Written(_starting.FromBuild(_journal.Store.Read("old"), true, "new-one", "Second", s_ana));
        Assert.Equal(["vehicle", "tires", "axle"], build.Slots.Select(s => s.Id));
        Assert.Equal("Second", build.Find(Slot.Root)!.Title);
        Assert.Equal(["1", "2"], build.Sets.Of("gear"));
        Assert.Empty(build.Weighings);
        Assert.All(build.Slots, s => Assert.Null(s.Grade));
        Assert.All(build.Slots, s => Assert.Empty(s.Noted));
        var tires = build.Find("tires")!;
        Assert.Empty(tires.Find(Option.AsFound)!.Parameters);
        var set = tires.Find("at33")!;
        Assert.Equal(["wheel.*.*.tire.size"], set.Parameters.Select(p => p.Key)); // the measured circumference stays behind
        Assert.Null(set.Overrides); // what it overrode was measured
        Assert.Equal(["given"], set.Masses!.Value.Select(m => m.Id));
        Assert.Equal((310m, (string?)null), (set.Prices!.Value[0].Each!.Value.Amount, set.Prices.Value[0].Quote));
        Assert.Null(set.Fits);
    }

    [Fact]
    public void Without_options_only_the_items_come()
    {
        Model();
        var build = Written(_starting.FromBuild(_journal.Store.Read("old"), false, "new-one", "Second", s_ana));
        Assert.All(build.Slots, s => Assert.Equal([Option.AsFound], s.Options.Select(o => o.Id)));
    }

    [Fact]
    public void The_facts_say_nothing_that_was_measured_anywhere()
    {
        Model();
        var said = string.Join('\n', _starting.FromBuild(_journal.Store.Read("old"), true, "x", "X", s_ana).Select(f => f.Payload!.ToJsonString()));
        foreach (var own in new[] { "measured", "worn", "2640 mm", "33.4", "Q-77", "tried on", "41 kg" }) Assert.DoesNotContain(own, said, StringComparison.Ordinal);
    }

    private void Model()
    {
        var seen = new LastOnSubject();
        void Say(EntryKind kind, string subject, string payload)
        {
            var fact = _stating.Say("old", kind, subject, JsonNode.Parse(payload)!, kind.Nature == EntryNature.Log ? null : seen.On(subject), s_ana);
            Assert.IsType<AppendOutcome.Appended>(_journal.Append([fact], Arrival.Online)[0]);
            if (kind.Nature == EntryNature.State) seen.Add(subject, fact.Id);
        }
        var opening = _starting.FromTemplate(ItemTemplate.Empty, "old", "First", 2, 1, s_ana);
        Written(opening);
        foreach (var f in opening) seen.Add(f.Subject, f.Id);
        Say(EntryKind.SlotDefined, "slots/tires", """{"parent":"vehicle","title":"Tires","weight":1}""");
        Say(EntryKind.SlotDefined, "slots/axle", """{"parent":"vehicle","title":"Axle","weight":3}""");
        Say(EntryKind.OptionStated, "slots/tires/options/as-found", """{"class":"keep","parameters":{"wheel.*.*.tire.size":{"value":"31x10.50R15LT","basis":"published"}}}""");
        Say(EntryKind.OptionStated, "slots/tires/options/at33", """
            {"title":"33 in","class":"upgrade","originality":0.2,"fits":["tried on the front left"],"overrides":["wheel.*.*.tire.rolling-circumference"],
             "parameters":{"wheel.*.*.tire.size":{"value":"33x10.50R15LT","basis":"vendor"},"wheel.*.*.tire.rolling-circumference":{"value":"2640 mm","basis":"measured"}},
             "masses":[{"id":"given","mass":"31 kg","basis":"vendor"},{"id":"weighed","mass":"41 kg","basis":"measured"}],
             "prices":[{"id":"set","count":5,"each":"310.00 USD","category":"parts","quote":"Q-77"}]}
            """);
        Say(EntryKind.SlotGraded, "slots/tires/grade", """{"grade":"D","findings":["worn to the cords"]}""");
        Say(EntryKind.ValueNoted, "slots/tires/options/at33/values/wheel.front.left.tire.diameter", """{"value":"33.4 in","basis":"measured"}""");
    }
}
