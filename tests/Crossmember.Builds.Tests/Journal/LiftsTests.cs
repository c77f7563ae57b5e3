using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Tests.Journal;

public class LiftsTests
{
    private static readonly EntryKind s_kind = new("thing.said", 3, EntryNature.State, "things/{thing}", "for this test");

    private static readonly Lifts s_lifts = new(
        name => name == s_kind.Name ? s_kind : null,
        new Dictionary<(string, int), Func<JsonNode, JsonNode>>
        {
            [(s_kind.Name, 1)] = old => new JsonObject { ["name"] = old["title"]!.DeepClone() },
            [(s_kind.Name, 2)] = old => { old["names"] = new JsonArray(old["name"]!.DeepClone()); old.AsObject().Remove("name"); return old; },
        });

    [Theory]
    [InlineData(1, """{"title":"x"}""")]
    [InlineData(2, """{"name":"x"}""")]
    [InlineData(3, """{"names":["x"]}""")]
    public void Every_old_shape_comes_out_in_the_newest(int schema, string payload)
    {
        var readable = Assert.IsType<Lifted.Readable>(s_lifts.Lift(s_kind.Name, schema, JsonNode.Parse(payload)!));
        Assert.Equal("""{"names":["x"]}""", readable.Payload.ToJsonString());
        Assert.Same(s_kind, readable.Kind);
    }

    [Fact]
    public void Lifting_leaves_the_entry_as_it_was()
    {
        var payload = JsonNode.Parse("""{"name":"x"}""")!;
        s_lifts.Lift(s_kind.Name, 2, payload);
        Assert.Equal("""{"name":"x"}""", payload.ToJsonString());
    }

    [Theory]
    [InlineData("thing.said", 4, "up to schema 3")]
    [InlineData("thing.sung", 1, "does not know the kind")]
    public void What_a_newer_program_wrote_is_named(string kind, int schema, string why)
    {
        var unreadable = Assert.IsType<Lifted.Unreadable>(s_lifts.Lift(kind, schema, new JsonObject()));
        Assert.Equal((kind, schema), (unreadable.Kind, unreadable.Schema));
        Assert.StartsWith($"unreadable: written by kind '{kind}' schema {schema}", unreadable.ToString(), StringComparison.Ordinal);
        Assert.Contains(why, unreadable.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void A_missing_step_is_named() =>
        Assert.Contains("from schema 1 to 2",
            Assert.IsType<Lifted.Unreadable>(new Lifts(_ => s_kind, new Dictionary<(string, int), Func<JsonNode, JsonNode>>()).Lift("x", 1, new JsonObject())).Why,
            StringComparison.Ordinal);

    [Fact]
    public void A_stream_names_each_unreadable_kind_once()
    {
        var entries = CorrectionsTests.Chain(Facts.Noted(1), Facts.Noted(2) with { Kind = "thing.sung" }, Facts.Noted(3) with { Kind = "thing.sung" });
        Assert.Equal(("thing.sung", 1), Assert.Single(Lifts.Current.Unreadable(Corrections.Effective(entries))) is var u ? (u.Kind, u.Schema) : default);
    }
}
