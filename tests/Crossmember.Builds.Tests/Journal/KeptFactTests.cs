using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Builds.Tests.Journal;

/// <summary>The quick reader of kept facts against the checking reader of facts from outside.</summary>
public class KeptFactTests
{
    private static readonly Gen<Fact> s_facts =
        Gen.Select(Gen.Guid, Gen.Guid.Nullable(), Gen.Guid.Nullable(), Gen.Guid.Nullable(), Gen.DateTime, Gen.String.AlphaNumeric, Gen.Int[1, 1000], Gen.Bool).Select(
            (id, after, corrects, batch, occurred, text, schema, releases) =>
                Facts.Noted(1, text: text + "€\"\n") with
                {
                    Id = id,
                    After = after,
                    Corrects = corrects,
                    Batch = batch,
                    Schema = schema,
                    Device = text,
                    Releases = releases ? id : null,
                    Occurred = Instants.Whole(new(DateTime.SpecifyKind(occurred, DateTimeKind.Utc))),
                    Payload = corrects is null ? JsonNode.Parse("[1,{}]") : null,
                });

    [Fact]
    public void Both_readers_read_the_same_fact() =>
        s_facts.Sample(fact =>
        {
            var text = FactText.Write(fact);
            var quick = KeptFact.Read(Encoding.UTF8.GetBytes(text));
            var checking = FactText.Read(text, new Faults())!;
            Assert.Equal(fact with { Payload = null }, quick with { Payload = null });
            Assert.Equal(quick with { Payload = null }, checking with { Payload = null });
            Assert.Equal(text, FactText.Write(quick));
            Assert.Equal(text, FactText.Write(checking));
        });

    [Theory]
    [InlineData("\"person\":\"ana\",", "")]
    [InlineData("\"person\"", "\"persom\"")]
    [InlineData("\"schema\":1", "\"schema\":\"1\"")]
    [InlineData("\"id\":\"0190", "\"id\":\"019x")]
    [InlineData("08:06:00.000Z", "08:66:00.000Z")]
    [InlineData("\"ana\"", "\"ana")]
    public void An_altered_text_is_never_read_as_something_else(string from, string to)
    {
        var text = FactText.Write(Facts.Noted(1));
        Assert.Contains(from, text, StringComparison.Ordinal);
        Assert.ThrowsAny<JsonException>(() => KeptFact.Read(Encoding.UTF8.GetBytes(text.Replace(from, to, StringComparison.Ordinal))));
    }
}
