using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.JournalSamples;

/// <summary>A sample of every payload shape ever written, kept for ever as <c>kind@schema.json</c>: each must still fold.</summary>
public sealed class JournalSampleTests
{
    private static readonly string s_folder = Path.Combine(AppContext.BaseDirectory, "JournalSamples");

    public static TheoryData<string> Samples => [.. Directory.GetFiles(s_folder, "*@*.json").Select(f => Path.GetFileNameWithoutExtension(f)).Order(StringComparer.Ordinal)];

    [Fact]
    public void Every_kind_has_a_sample_of_every_schema() =>
        Assert.Equal(EntryKind.All.SelectMany(k => Enumerable.Range(1, k.Schema).Select(s => $"{k.Name}@{s}")).Order(StringComparer.Ordinal), Samples.Select(s => s.Data).Order(StringComparer.Ordinal));

    [Theory]
    [MemberData(nameof(Samples))]
    public void Each_still_folds(string sample)
    {
        var (kind, schema) = (sample.Split('@')[0], int.Parse(sample.Split('@')[1], null));
        var json = JsonNode.Parse(File.ReadAllText(Path.Combine(s_folder, sample + ".json")))!;
        string subject = (string)json["subject"]!;
        Assert.True(Subject.Fits(subject, EntryKind.Find(kind)!.Subject), subject);
        var lifted = Assert.IsType<Lifted.Readable>(Lifts.Current.Lift(kind, schema, json["payload"]!));
        var payload = JsonSerializer.SerializeToElement(lifted.Payload);
        var faults = new Faults();
        if (EntryKind.Find(kind)!.Subject.Split('/')[0] is "shop" or "trades" or "tax" or "milestones" or "stock" or "people" or "rounding")
        {
            var shop = new ShopFold();
            shop.Apply(kind, subject, payload, "", 9, faults);
            Assert.Equal(9, shop.ToShop().Position);
        }
        else
        {
            var before = Ground(kind);
            var fold = new BuildFold(before, ParameterTable.Shipped);
            fold.Apply(kind, subject, payload, "", 9, faults);
            // Logs leave the build as it is; all others leave their mark.
            if (EntryKind.Find(kind) is { Nature: EntryNature.State } || kind == "weighing.taken") Assert.NotEqual(Told(before), Told(fold.ToBuild()));
        }
        Assert.Empty(faults.List);
    }

    [Theory]
    [InlineData("seat.warmed", 1)]
    [InlineData("choice.made", 99)]
    public void What_a_later_program_wrote_opens_for_reading_only_and_is_named(string kind, int schema)
    {
        var fact = new Fact(Guid.CreateVersion7(), "b", kind, schema, DateTimeOffset.UnixEpoch, "lead", "test", "scenarios/working/choices/tires", null, null, null, new JsonObject { ["option"] = "at33" });
        var entry = Stamp.On(Head.Empty, fact, FactText.Write(fact), DateTimeOffset.UnixEpoch);
        var state = new StreamFold(ParameterTable.Shipped, Lifts.Current).Build("b", [entry]);
        var unreadable = Assert.Single(state.Unreadable);
        Assert.Equal((kind, schema), (unreadable.Kind, unreadable.Schema));
    }

    /// <summary>What each sample stands on.</summary>
    private static Build Ground(string kind)
    {
        var fold = new BuildFold("b", ParameterTable.Shipped);
        void Say(string k, string subject, string json) => fold.Apply(k, subject, JsonDocument.Parse(json).RootElement, "", 1, new());
        if (kind == "build.opened") return fold.ToBuild();
        Say("build.opened", "build", """{"title":"Ground","sets":{"condition":["empty"]}}""");
        Say("slot.defined", "slots/vehicle", """{"parent":null,"title":"Vehicle"}""");
        if (kind != "slot.defined") Say("slot.defined", "slots/tires", """{"parent":"vehicle","title":"Tires"}""");
        if (kind == "customer.erased") Say("customer.recorded", "customer", """{"record":"5b0c1c1e-6f0e-4a5e-9d0a-0d6a4be3a111"}""");
        if (kind == "value.noted") Say("option.stated", "slots/tires/options/at33", """{"class":"upgrade","originality":0}""");
        if (kind != "scenario.opened") Say("scenario.opened", "scenarios/working", """{"base":null}""");
        return fold.ToBuild();
    }

    private static string Told(Build build) => JsonSerializer.Serialize(new
    {
        build.Title, Sets = build.Sets.Ordered, build.Stopped, build.Phase, build.Archived, build.Customer, build.Documents, build.Approvals.Length, Weighings = build.Weighings.Length, Conditions = build.Conditions.Values.Sum(c => c.Items.Length),
        Slots = build.Slots.Select(s => new { s.Id, s.Title, s.Grade, Noted = s.Noted.Length, Options = s.Options.Select(o => o.Id + o.Class) }),
        Scenarios = build.Scenarios.Values.Select(s => new { s.Id, s.Title, s.Choices, WhatIf = s.WhatIf.Length }),
    });
}
