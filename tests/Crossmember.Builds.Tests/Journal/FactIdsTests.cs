using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Tests.Journal;

public class FactIdsTests
{
    /// <summary>RFC 9562 (May 2024), appendix B.2: SHA-256 of the DNS namespace and www.example.com, made into a UUIDv8.</summary>
    [Fact]
    public void Version_8_is_made_as_in_the_example_of_the_rfc() =>
        Assert.Equal(
            new Guid("5c146b14-3c52-8afd-938a-375d0df1fbf6"),
            FactIds.Version8(Convert.FromHexString("5c146b143c524afd938a375d0df1fbf6fe12a66b645f72f6158759387e51f3c8")));

    // Independent: Python 3, hashlib.sha256('b1\nchoice.made\nscenarios/working/choices/tires\n{"option":"at33"}\n'.encode()), version and variant bits set.
    [Fact]
    public void An_id_from_content_is_the_one_computed_independently() =>
        Assert.Equal(new Guid("6d76bd18-cef8-8a21-b637-c47c472091c6"), FactIds.OfContent("b1", "choice.made", "scenarios/working/choices/tires", new JsonObject { ["option"] = "at33" }));

    [Fact]
    public void The_order_of_keys_does_not_change_an_id_but_any_content_does()
    {
        var id = FactIds.OfContent("b1", "k", "s", JsonNode.Parse("""{"a":1,"b":2}"""));
        Assert.Equal(id, FactIds.OfContent("b1", "k", "s", JsonNode.Parse("""{"b":2.0,"a":1}""")));
        Assert.NotEqual(id, FactIds.OfContent("b1", "k", "s", JsonNode.Parse("""{"a":1,"b":3}""")));
        Assert.NotEqual(id, FactIds.OfContent("b2", "k", "s", JsonNode.Parse("""{"a":1,"b":2}""")));
    }

    /// <summary>RFC 9562, section 5.7: the first 48 bits are the Unix time in milliseconds, then the version; the top bits of byte 8 are the variant.</summary>
    [Fact]
    public void A_new_id_begins_with_its_time()
    {
        var clock = new StandingClock();
        var id = FactIds.New(clock).ToString("N");
        Assert.Equal(clock.Now.ToUnixTimeMilliseconds(), Convert.ToInt64(id[..12], 16));
        Assert.Equal('7', id[12]);
        Assert.Contains(id[16], "89ab");
    }
}
