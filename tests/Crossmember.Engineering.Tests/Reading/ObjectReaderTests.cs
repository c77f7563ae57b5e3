using System.Text;
using System.Text.Json;
using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Engineering.Tests.Reading;

public sealed class ObjectReaderTests
{
    [Fact]
    public void Unknown_keys_name_the_nearest_known_one_at_their_place()
    {
        var (r, faults) = Open("""{"title":"x","wieght":2,"note":"fine"}""");
        _ = r.Text("title");
        _ = r.OptionalNumber("weight");
        r.Done();
        var fault = Assert.Single(faults.List);
        Assert.Equal(("/at/wieght", "nearest known key: weight"), (fault.Path, fault.Right));
    }

    [Fact]
    public void A_key_that_stands_twice_is_a_fault_at_that_key()
    {
        var (_, faults) = Open("""{"title":"x","title":"y"}""");
        Assert.Equal("/at/title", Assert.Single(faults.List).Path);
    }

    [Theory]
    [InlineData("""{"x":5}""", "a number where text is needed")]
    [InlineData("""{"x":["a"]}""", "a list where text is needed")]
    [InlineData("""{"x":null}""", "null where text is needed")]
    [InlineData("""{"x":"\ud800"}""", "half a character")]
    public void Text_must_be_text(string json, string wrong)
    {
        var (r, faults) = Open(json);
        _ = r.Text("x");
        Assert.Contains(wrong, Assert.Single(faults.List).Wrong, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{"x":"5"}""")]
    [InlineData("""{"x":1e999}""")]
    [InlineData("""{"x":true}""")]
    public void Numbers_must_be_finite_numbers(string json)
    {
        var (r, faults) = Open(json);
        _ = r.Number("x");
        Assert.Equal("/at/x", Assert.Single(faults.List).Path);
    }

    [Fact]
    public void Missing_lists_and_maps_are_empty_and_wrong_ones_are_faults()
    {
        var (r, faults) = Open("""{"list":{},"map":[1]}""");
        Assert.Empty(r.List("nothing"));
        Assert.Empty(r.Map("nothing"));
        Assert.Empty(r.List("list"));
        Assert.Empty(r.Map("map"));
        Assert.Equal(["/at/list", "/at/map"], faults.List.Select(f => f.Path));
    }

    [Fact]
    public void Pointers_escape_as_the_rfc_says() // RFC 6901, section 3: ~ is ~0, / is ~1
    {
        var (r, _) = Open("""{"a/b~c":1}""");
        Assert.Equal("/at/a~1b~0c", r.At("a/b~c"));
    }

    [Fact]
    public void A_map_leaves_notes_out()
    {
        var (r, _) = Open("""{"m":{"a":"1","note":"why"}}""");
        Assert.Equal(["a"], r.Map("m").Select(m => m.Name));
    }

    [Fact]
    public void What_is_no_object_is_one_fault_and_nothing_throws()
    {
        var faults = new Faults();
        var r = new ObjectReader(JsonDocument.Parse("[1]").RootElement, "/at", faults);
        Assert.False(r.IsObject);
        _ = r.Text("x");
        r.Done();
        Assert.Single(faults.List);
    }

    [Fact]
    public void Any_bytes_open_or_are_one_located_fault() =>
        Gen.Byte.Array[0, 200].Sample(bytes =>
        {
            var faults = new Faults();
            using var document = JsonText.Open(bytes, faults);
            Assert.Equal(document is null, faults.Any);
        });

    [Fact]
    public void A_byte_order_mark_is_passed_over()
    {
        var faults = new Faults();
        using var document = JsonText.Open((byte[])[0xEF, 0xBB, 0xBF, .. "{}"u8], faults);
        Assert.NotNull(document);
    }

    [Fact]
    public void Syntax_faults_name_line_and_byte()
    {
        var faults = new Faults();
        Assert.Null(JsonText.Open(Encoding.UTF8.GetBytes("{\n \"a\": 1,\n}"), faults));
        Assert.Contains("line 3", Assert.Single(faults.List).Wrong, StringComparison.Ordinal);
    }

    [Fact]
    public void Depth_beyond_any_model_is_a_fault_and_not_a_crash()
    {
        var faults = new Faults();
        Assert.Null(JsonText.Open(Encoding.UTF8.GetBytes(new string('[', 5000) + new string(']', 5000)), faults));
        Assert.Single(faults.List);
    }

    [Fact]
    public void Faults_beyond_what_helps_are_not_kept()
    {
        var faults = new Faults();
        for (var i = 0; i < 10_000; i++) faults.Add($"/{i}", "wrong", "right");
        Assert.True(faults.List.Count < 1000);
        Assert.True(faults.Any);
    }

    private static (ObjectReader, Faults) Open(string json)
    {
        var faults = new Faults();
        return (new(JsonDocument.Parse(json).RootElement, "/at", faults), faults);
    }
}
