using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Tests.Journal;

public class StreamImportTests
{
    private readonly MemoryJournalStore _store = new();
    private readonly IReadOnlyList<Entry> _chain = CorrectionsTests.Chain(Facts.Graded(1), Facts.Noted(2), Facts.Graded(3, after: 1));

    private ImportOutcome Import(IEnumerable<Entry> entries) => new Builds.Journal.Journal(_store, new StandingClock()).Import([.. entries]);

    [Fact]
    public void A_new_stream_comes_in_stamps_and_all()
    {
        Assert.Equal(new(3, null), Import(_chain));
        Assert.Equal(_chain, _store.Read("b1"));
    }

    [Fact]
    public void A_longer_copy_adds_its_end_and_the_same_or_a_shorter_one_nothing()
    {
        Import(_chain.Take(2));
        Assert.Equal(new(1, null), Import(_chain));
        Assert.Equal(new(0, null), Import(_chain));
        Assert.Equal(new(0, null), Import(_chain.Take(1)));
        Assert.Equal(new(0, null), Import([]));
        Assert.Equal(_chain, _store.Read("b1"));
    }

    [Fact]
    public void A_diverged_copy_is_refused_at_its_first_differing_entry()
    {
        Import(_chain.Take(2));
        var other = CorrectionsTests.Chain(Facts.Graded(1), Facts.Noted(7), Facts.Noted(8));
        var fault = Import(other).Fault!;
        Assert.Equal("b1/2", fault.Path);
        Assert.Contains("differ", fault.Wrong, StringComparison.Ordinal);
        Assert.Equal(2, _store.Read("b1").Count);
    }

    [Fact]
    public void A_copy_that_was_altered_is_refused_where_it_was()
    {
        var altered = _chain.ToList();
        altered[1] = altered[1] with { Recorded = altered[1].Recorded.AddMilliseconds(1) };
        Assert.Equal("b1/2", Import(altered).Fault!.Path);
        Assert.Equal("b1/3", Import([_chain[0], _chain[2]]).Fault!.Path);
        var reworded = _chain.ToList();
        reworded[2] = reworded[2] with { Fact = Facts.Graded(3, after: 1, grade: "A") };
        Assert.Equal("b1/3", Import(reworded).Fault!.Path);
        Assert.Empty(_store.Streams());
    }

    [Fact]
    public void A_fact_known_from_another_stream_is_refused()
    {
        Import(CorrectionsTests.Chain(Facts.Noted(2) with { Stream = "b2" }));
        Assert.Equal("b1/2", Import(_chain).Fault!.Path);
    }

    [Fact]
    public void A_kind_from_a_newer_program_is_kept_as_it_is()
    {
        var chain = CorrectionsTests.Chain(Facts.Noted(1) with { Kind = "thing.sung", Subject = "songs/1" });
        Assert.Equal(new(1, null), Import(chain));
        Assert.Equal(chain, _store.Read("b1"));
    }
}
