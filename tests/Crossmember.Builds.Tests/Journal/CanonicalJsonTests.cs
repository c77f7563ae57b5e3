using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Builds.Tests.Journal;

public class CanonicalJsonTests
{
    /// <summary>RFC 8785 (June 2020), section 3.2.2: sample input; section 3.2.4: its UTF-8 bytes.</summary>
    [Fact]
    public void The_sample_of_the_rfc_gives_its_bytes()
    {
        const string input = """
            {
              "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
              "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
              "literals": [null, true, false]
            }
            """;
        const string bytes =
            "7b226c69746572616c73223a5b6e756c6c2c747275652c66616c73655d2c226e756d62657273223a5b3333333333333333332e333333333333332c31652b33302c" +
            "342e352c302e3030322c31652d32375d2c22737472696e67223a22e282ac245c75303030665c6e4127425c225c5c5c5c5c222f227d";
        Assert.Equal(bytes, Convert.ToHexStringLower(Encoding.UTF8.GetBytes(Of(input)!)));
        Assert.Equal(bytes, Convert.ToHexStringLower(Encoding.UTF8.GetBytes(CanonicalJson.Of(JsonNode.Parse(input)))));
    }

    /// <summary>RFC 8785, section 3.2.3: keys sort by UTF-16 code units, not by code points.</summary>
    [Fact]
    public void Keys_sort_as_in_the_sorting_sample_of_the_rfc()
    {
        const string input = """
            {"\u20ac":"Euro Sign","\r":"Carriage Return","\ufb33":"Hebrew Letter Dalet With Dagesh","1":"One",
             "\ud83d\ude00":"Emoji: Grinning Face","\u0080":"Control","\u00f6":"Latin Small Letter O With Diaeresis"}
            """;
        string[] expected =
        [
            "Carriage Return", "One", "Control", "Latin Small Letter O With Diaeresis", "Euro Sign", "Emoji: Grinning Face", "Hebrew Letter Dalet With Dagesh",
        ];
        Assert.Equal(expected, JsonElement.Parse(Of(input)!).EnumerateObject().Select(m => m.Value.GetString()!));
    }

    /// <summary>RFC 8785, section 3.2.2.2: the short escapes, lower-case \u00xx for other controls, nothing else escaped.</summary>
    [Fact]
    public void Escapes_are_the_least_there_are() =>
        Assert.Equal("""["\b\t\n\f\r\u0000\u001f\"\\/""" + "\u007f\u2028<\"]", CanonicalJson.Of(new JsonArray("\b\t\n\f\r\0\u001f\"\\/\u007f\u2028<")));

    [Theory]
    [InlineData("""{"a":["\ud800"]}""", "/a/0", "half a character")]
    [InlineData("""{"a":"\udc00\ud800"}""", "/a", "half a character")]
    [InlineData("""{"\ud800":1}""", "", "half a character")]
    [InlineData("""{"a":{"b":1,"b":1}}""", "/a/b", "stands twice")]
    [InlineData("""[1,1e400]""", "/1", "too large")]
    public void What_has_no_canonical_text_is_refused_where_it_stands(string input, string path, string wrong)
    {
        var faults = new Faults();
        Assert.Null(CanonicalJson.Text(JsonElement.Parse(input, new() { AllowDuplicateProperties = true }), faults));
        var fault = Assert.Single(faults.List);
        Assert.Equal(path, fault.Path);
        Assert.Contains(wrong, fault.Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Half_a_character_in_a_node_is_refused_and_not_replaced()
    {
        var faults = new Faults();
        Assert.Null(CanonicalJson.Text(new JsonObject { ["a"] = "x\ud800" }, faults, "/payload"));
        Assert.Equal("/payload/a", Assert.Single(faults.List).Path);
    }

    [Fact]
    public void Nodes_made_of_any_number_type_are_written_alike() =>
        Assert.Equal("[1,1,1,1.5,1.5]", CanonicalJson.Of(new JsonArray(1, 1L, 1.0, 1.5m, JsonNode.Parse("1.50"))));

    private static readonly Gen<JsonNode?> s_nodes = Gen.Recursive<JsonNode?>((depth, self) =>
    {
        var leaf = Gen.OneOf(
            Gen.Const((JsonNode?)null), Gen.Bool.Select(b => (JsonNode?)JsonValue.Create(b)),
            Gen.Double.Where(double.IsFinite).Select(d => (JsonNode?)JsonValue.Create(d)),
            Gen.String.Where(s => s.EnumerateRunes().All(r => r != Rune.ReplacementChar)).Select(s => (JsonNode?)JsonValue.Create(s)));
        return depth > 3 ? leaf : Gen.OneOf(leaf,
            self.Array[0, 4].Select(a => (JsonNode?)new JsonArray([.. a.Select(n => n?.DeepClone())])),
            Gen.Dictionary(Gen.String.AlphaNumeric, self)[0, 4].Select(d => (JsonNode?)new JsonObject(d.Select(p => KeyValuePair.Create(p.Key, p.Value?.DeepClone())))));
    });

    [Fact]
    public void Canonical_text_is_its_own_canonical_text_and_means_the_same() =>
        s_nodes.Sample(node =>
        {
            var text = CanonicalJson.Of(node);
            Assert.Equal(text, CanonicalJson.Of(JsonNode.Parse(text)));
            Assert.Equal(text, Of(text));
            Assert.True(JsonNode.DeepEquals(node, JsonNode.Parse(text)));
        });

    private static string? Of(string json) => CanonicalJson.Text(JsonElement.Parse(json), new());
}
