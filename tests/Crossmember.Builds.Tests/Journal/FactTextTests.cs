using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.Journal;

public class FactTextTests
{
    [Fact]
    public void A_fact_reads_back_as_it_was_and_leaves_out_what_it_does_not_say()
    {
        var fact = Facts.Graded(2, after: 1);
        var text = FactText.Write(fact);
        Assert.Equal(
            """{"after":"0190163d-8694-739b-aea5-000000000001","device":"bench","id":"0190163d-8694-739b-aea5-000000000002","kind":"slot.graded","occurred":"2026-01-31T08:07:00.000Z","payload":{"grade":"C"},"person":"ana","schema":1,"stream":"b1","subject":"slots/tires/grade"}""",
            text);
        var read = FactText.Read(text, new Faults())!;
        Assert.Equal(fact with { Payload = null }, read with { Payload = null });
        Assert.True(JsonNode.DeepEquals(fact.Payload, read.Payload));
    }

    [Fact]
    public void A_voiding_correction_says_null_and_reads_back()
    {
        var text = FactText.Write(Facts.Corrected(Facts.Noted(1), 2, null));
        Assert.Contains("\"payload\":null", text, StringComparison.Ordinal);
        Assert.Null(FactText.Read(text, new Faults())!.Payload);
    }

    [Fact]
    public void Every_optional_id_comes_back()
    {
        var fact = Facts.Graded(2, after: 1, batch: 9) with { Corrects = Facts.Id(1), Releases = Facts.Id(7) };
        var read = FactText.Read(FactText.Write(fact), new Faults())!;
        Assert.Equal((fact.After, fact.Corrects, fact.Batch, fact.Releases), (read.After, read.Corrects, read.Batch, read.Releases));
    }

    [Fact]
    public void An_instant_elsewhere_and_too_fine_is_written_in_utc_to_the_millisecond()
    {
        var fact = Facts.Noted(1) with { Occurred = new DateTimeOffset(2026, 1, 31, 10, 5, 0, 7, TimeSpan.FromHours(2)).AddTicks(9999) };
        Assert.Contains("\"2026-01-31T08:05:00.007Z\"", FactText.Write(fact), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("\"id\":\"0190163d-8694-739b-aea5-000000000001\"", "\"id\":\"0190163D-8694-739b-aea5-000000000001\"", "/id", "no id")]
    [InlineData("\"id\":\"0190163d-8694-739b-aea5-000000000001\",", "", "/id", "missing")]
    [InlineData("\"device\"", "\"after\":null,\"device\"", "/after", "no id")]
    [InlineData("\"device\"", "\"dev\"", "/dev", "no key")]
    [InlineData("\"device\"", "\"note\":\"x\",\"device\"", "/note", "no note")]
    [InlineData("08:06:00.000Z", "08:06:00Z", "/occurred", "no instant")]
    [InlineData("\"schema\":1", "\"schema\":0", "/schema", "schema number")]
    [InlineData("\"schema\":1", "\"schema\":1.5", "/schema", "schema number")]
    [InlineData("\"person\":\"ana\"", "\"person\":\"\"", "/person", "empty")]
    [InlineData("\"payload\":{\"text\":\"worn\"},", "", "/payload", "missing")]
    [InlineData("{\"text\":\"worn\"}", "null", "/payload", "voids")]
    [InlineData("\"worn\"", "\"\\ud800\"", "/payload/text", "half a character")]
    [InlineData("\"worn\"", "\"worn\",\"text\":\"new\"", "/payload/text", "stands twice")]
    public void What_is_wrong_is_named_where_it_stands(string from, string to, string path, string wrong)
    {
        var text = FactText.Write(Facts.Noted(1));
        Assert.Contains(from, text, StringComparison.Ordinal);
        var faults = new Faults();
        Assert.Null(FactText.Read(text.Replace(from, to, StringComparison.Ordinal), faults));
        Assert.Contains(faults.List, f => f.Path == path && f.Wrong.Contains(wrong, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("[]", "a list")]
    [InlineData("{", "not JSON")]
    public void What_is_no_object_is_a_fault(string text, string wrong)
    {
        var faults = new Faults();
        Assert.Null(FactText.Read(text, faults));
        Assert.Contains(wrong, Assert.Single(faults.List).Wrong, StringComparison.Ordinal);
    }
}
