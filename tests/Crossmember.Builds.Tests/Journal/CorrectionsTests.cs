using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Tests.Journal;

public class CorrectionsTests
{
    private static readonly JsonNode s_b = JsonNode.Parse("""{"grade":"B"}""")!;

    [Fact]
    public void A_correction_stands_in_the_place_of_what_it_corrects()
    {
        var first = Facts.Graded(1);
        var effective = Effective(first, Facts.Noted(2), Facts.Corrected(first, 3, s_b));
        Assert.Equal([Facts.Id(1), Facts.Id(2)], effective.Select(s => s.Fact.Id));
        Assert.Equal("B", effective[0].Payload["grade"]!.GetValue<string>());
        Assert.Equal(3, effective[0].Correction!.Sequence);
    }

    [Fact]
    public void Correcting_a_correction_means_the_original()
    {
        var first = Facts.Graded(1);
        var second = Facts.Corrected(first, 2, s_b);
        var third = Facts.Corrected(second, 3, JsonNode.Parse("""{"grade":"A"}"""));
        var standing = Assert.Single(Effective(first, second, third));
        Assert.Equal((Facts.Id(1), "A"), (standing.Fact.Id, standing.Payload["grade"]!.GetValue<string>()));
    }

    [Fact]
    public void A_void_leaves_the_entry_out_until_a_later_correction_brings_it_back()
    {
        var first = Facts.Graded(1);
        var voided = Facts.Corrected(first, 2, null);
        Assert.Empty(Effective(first, voided));
        Assert.Equal("B", Assert.Single(Effective(first, voided, Facts.Corrected(voided, 3, s_b))).Payload["grade"]!.GetValue<string>());
    }

    [Fact]
    public void The_shape_of_a_payload_is_that_of_the_one_who_wrote_it()
    {
        var first = Facts.Graded(1);
        Assert.Equal(2, Assert.Single(Effective(first, Facts.Corrected(first, 2, s_b) with { Schema = 2 })).Schema);
    }

    private static IReadOnlyList<Standing> Effective(params Fact[] facts) => Corrections.Effective(Chain(facts));

    internal static IReadOnlyList<Entry> Chain(params Fact[] facts)
    {
        var head = Head.Empty;
        var entries = new List<Entry>();
        foreach (var fact in facts)
        {
            entries.Add(Stamp.On(head, fact, FactText.Write(fact), Facts.Morning));
            head = new(entries[^1].Sequence, entries[^1].Hash);
        }
        return entries;
    }
}
