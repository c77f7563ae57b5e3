using System.Text.Json.Nodes;
using Crossmember.Builds.Drafting;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.Drafting;

/// <summary>A new place is one word more in what was stated; everything else stays as it was written.</summary>
public sealed class PlacedBodyTests
{
    private static readonly string[] s_at = ["3 ft", "-2 in", "16 in"];

    private readonly List<Entry> _entries = [];

    private void Say(EntryKind kind, string subject, string payload) =>
        _entries.Add(new(new Stating(TimeProvider.System).Say("b", kind, subject, JsonNode.Parse(payload)!, null, new("Ana", "here")), "", _entries.Count + 1, default, default, default));

    private static readonly Build s_build = new()
    {
        Id = "b",
        Slots = [new() { Id = "winch", Title = "Winch", Options = [new() { Id = "w9" }, new() { Id = "w12" }] }],
    };

    private JsonObject? Placed(MassRef which) => PlacedBody.Of(s_build, _entries, which, s_at);

    private static void Same(string expected, JsonNode? actual) => Assert.True(JsonNode.DeepEquals(JsonNode.Parse(expected), actual), actual?.ToJsonString());

    private void Winches()
    {
        Say(EntryKind.OptionStated, "slots/winch/options/w9", """{"title":"Nine","note":"kept","masses":[{"id":"drum","mass":"92 lb","at":["1 in","2 in","3 in"],"basis":"vendor","note":"as sold"},{"id":"rope","mass":"9 lb"}]}""");
        Say(EntryKind.OptionStated, "slots/winch/options/w12", """{"title":"Twelve","like":"w9","masses":[{"id":"rope","mass":"12 lb"}]}""");
    }

    [Fact]
    public void Only_the_place_of_that_item_is_another()
    {
        Winches();
        Same("""{"title":"Nine","note":"kept","masses":[{"id":"drum","mass":"92 lb","at":["3 ft","-2 in","16 in"],"basis":"vendor","note":"as sold"},{"id":"rope","mass":"9 lb"}]}""", Placed(MassRef.Of("winch", "w9", "drum")));
    }

    [Fact]
    public void What_is_only_inherited_is_stated_on_the_option_itself()
    {
        Winches();
        Same("""{"title":"Twelve","like":"w9","masses":[{"id":"rope","mass":"12 lb"},{"id":"drum","mass":"92 lb","at":["3 ft","-2 in","16 in"],"basis":"vendor","note":"as sold"}]}""", Placed(MassRef.Of("winch", "w12", "drum")));
    }

    [Fact]
    public void The_latest_word_counts_and_what_was_taken_back_does_not()
    {
        Winches();
        Say(EntryKind.OptionStated, "slots/winch/options/w9", """{"title":"Nine","masses":[{"id":"drum","mass":"95 lb"}]}""");
        Assert.Equal("95 lb", (string?)Placed(MassRef.Of("winch", "w9", "drum"))!["masses"]![0]!["mass"]);
        var last = _entries[^1].Fact;
        _entries.Add(new(new Stating(TimeProvider.System).Undo(last, null, new("Ana", "here")), "", 4, default, default, default));
        Assert.Equal("92 lb", (string?)Placed(MassRef.Of("winch", "w9", "drum"))!["masses"]![0]!["mass"]);
    }

    [Fact]
    public void Who_is_aboard_is_placed_in_the_list_of_their_condition()
    {
        Say(EntryKind.ConditionStated, "conditions/touring", """{"items":[{"id":"driver","mass":"190 lb"},{"id":"dog","mass":"40 lb","at":["0 in","0 in","0 in"]}]}""");
        Same("""{"items":[{"id":"driver","mass":"190 lb","at":["3 ft","-2 in","16 in"]},{"id":"dog","mass":"40 lb","at":["0 in","0 in","0 in"]}]}""", Placed(MassRef.Aboard("touring", "driver")));
        Assert.Null(Placed(MassRef.Aboard("touring", "cat")));
        Assert.Null(Placed(MassRef.Aboard("empty", "driver")));
    }

    [Fact]
    public void What_nobody_stated_has_no_place()
    {
        Winches();
        Assert.Null(Placed(MassRef.Of("winch", "w9", "motor")));
        Assert.Null(Placed(MassRef.Of("winch", "w15", "drum")));
        Assert.Null(Placed(MassRef.Of("hoist", "w9", "drum")));
    }

    [Fact]
    public void The_payload_is_one_that_the_reader_of_bodies_takes()
    {
        Winches();
        var faults = new Faults();
        var read = new OptionReader(ParameterTable.Shipped).Read(new(System.Text.Json.JsonSerializer.SerializeToElement(Placed(MassRef.Of("winch", "w12", "drum"))), "", faults), "w12");
        Assert.Equal(0.9144, read.Masses!.Value[1].At!.Value.X, 12);
    }

    [Fact]
    public void One_condition_more_leaves_the_rest_of_the_opening_as_it_was()
    {
        Say(EntryKind.BuildOpened, "build", """{"title":"T","created":"2026-01-01T00:00:00.000Z","sets":{"gear":["1"],"condition":["empty"]},"note":"n"}""");
        Same("""{"title":"T","created":"2026-01-01T00:00:00.000Z","sets":{"gear":["1"],"condition":["empty","touring"]},"note":"n"}""", StatedCondition.Opened(_entries, "touring"));
    }

    [Fact]
    public void A_build_without_sets_gets_them_with_its_first_condition()
    {
        Say(EntryKind.BuildOpened, "build", """{"title":"T"}""");
        Same("""{"title":"T","sets":{"condition":["empty"]}}""", StatedCondition.Opened(_entries, "empty"));
        Assert.Null(StatedCondition.Opened([], "empty"));
    }
}
