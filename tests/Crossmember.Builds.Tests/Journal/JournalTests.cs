using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Tests.Journal;

public class JournalTests
{
    private readonly MemoryJournalStore _store = new();
    private readonly StandingClock _clock = new();

    private IReadOnlyList<AppendOutcome> Append(params Fact[] facts) => new Builds.Journal.Journal(_store, _clock).Append(facts, Arrival.Online);

    [Fact]
    public void Entries_get_gapless_numbers_per_stream_and_the_time_of_the_store()
    {
        Append(Facts.Noted(1), Facts.Noted(2) with { Stream = "b2" }, Facts.Noted(3));
        Assert.Equal([1L, 2L], _store.Read("b1").Select(e => e.Sequence));
        Assert.Equal(1, _store.Head("b2").Sequence);
        Assert.All(_store.Read("b1"), e => Assert.Equal(_clock.Now, e.Recorded));
        Assert.True(_store.Read("b1")[1].Follows(new(1, _store.Read("b1")[0].Hash)));
    }

    [Fact]
    public void A_known_fact_is_acknowledged_and_changes_nothing()
    {
        Append(Facts.Graded(1));
        Assert.Equal(new AppendOutcome.Acknowledged(Facts.Id(1), 1), Assert.Single(Append(Facts.Graded(1))));
        Assert.Single(_store.Read("b1"));
    }

    [Fact]
    public void A_known_id_with_other_bytes_is_refused()
    {
        Append(Facts.Graded(1));
        Refused(Append(Facts.Graded(1, grade: "A"))[0], "another fact has the id");
        Refused(Append(Facts.Noted(5), Facts.Noted(5, text: "other"))[1], "another fact has the id");
        Assert.Single(_store.Read("b1"));
    }

    [Fact]
    public void The_same_fact_twice_in_one_call_is_appended_once()
    {
        Assert.All(Append(Facts.Noted(1), Facts.Noted(1)), o => Assert.IsType<AppendOutcome.Appended>(o));
        Assert.Single(_store.Read("b1"));
    }

    [Fact]
    public void The_second_of_two_writers_sees_both_and_nothing_is_written()
    {
        Append(Facts.Graded(1));
        Append(Facts.Graded(2, after: 1));
        var outcomes = Append(Facts.Noted(4), Facts.Graded(3, after: 1));
        Assert.Equal(new AppendOutcome.LeftOut(Facts.Id(4), Facts.Id(3)), outcomes[0]);
        var conflict = Assert.IsType<AppendOutcome.Conflict>(outcomes[1]);
        Assert.Equal(("slots/tires/grade", Facts.Id(1), Facts.Id(2)), (conflict.Subject, conflict.Seen, conflict.Last!.Fact.Id));
        Assert.Equal(2, _store.Read("b1").Count);
    }

    [Fact]
    public void What_stands_above_or_beneath_counts_and_neighbours_do_not()
    {
        Append(Facts.Defined(1));
        Assert.IsType<AppendOutcome.Conflict>(Append(Facts.Graded(2))[0]);
        Assert.IsType<AppendOutcome.Appended>(Append(Facts.Graded(2, after: 1))[0]);
        Assert.IsType<AppendOutcome.Conflict>(Append(Facts.Defined(3, after: 1))[0]);
        Assert.IsType<AppendOutcome.Appended>(Append(Facts.Defined(3, after: 2))[0]);
        Assert.IsType<AppendOutcome.Appended>(Append(Facts.Graded(4, slot: "tires.spare"))[0]);
    }

    [Fact]
    public void Logs_always_append_and_never_make_a_state_late()
    {
        Append(Facts.Defined(1));
        Assert.IsType<AppendOutcome.Appended>(Append(Facts.Noted(2))[0]);
        Assert.IsType<AppendOutcome.Appended>(Append(Facts.Noted(3))[0]);
        Assert.IsType<AppendOutcome.Appended>(Append(Facts.Defined(4, after: 1))[0]);
    }

    [Fact]
    public void In_one_batch_a_fact_may_follow_its_forerunner_or_what_stood_before()
    {
        Assert.All(Append(Facts.Defined(1), Facts.Graded(2, after: 1), Facts.Graded(3)), o => Assert.IsType<AppendOutcome.Appended>(o));
        Assert.IsType<AppendOutcome.Conflict>(Append(Facts.Graded(4, after: 3), Facts.Graded(5, after: 2))[1]);
    }

    [Fact]
    public void A_correction_keeps_stream_kind_and_subject()
    {
        var first = Facts.Graded(1);
        Append(first);
        Refused(Append(Facts.Corrected(first, 2, new JsonObject(), after: 1) with { Subject = "slots/winch/grade", After = null })[0], "keeps stream, kind and subject");
        Refused(Append(Facts.Corrected(Facts.Graded(9), 2, new JsonObject(), after: 1))[0], "there is no entry");
        Assert.IsType<AppendOutcome.Appended>(Append(Facts.Corrected(first, 2, null, after: 1))[0]);
    }

    [Fact]
    public void A_correction_is_the_last_entry_on_its_subject()
    {
        var first = Facts.Graded(1);
        Append(first, Facts.Corrected(first, 2, new JsonObject { ["grade"] = "B" }, after: 1));
        Assert.Equal(Facts.Id(2), Assert.IsType<AppendOutcome.Conflict>(Append(Facts.Graded(3, after: 1))[0]).Last!.Fact.Id);
    }

    public static TheoryData<string, string> Misshapen => new()
    {
        { "kind", "is no kind of entry" }, { "schema", "is not known here" }, { "subject", "not a subject" }, { "void", "voids" },
        { "person", "no person" }, { "stream", "no stream" }, { "id", "no id" }, { "text", "half a character" },
    };

    [Theory]
    [MemberData(nameof(Misshapen))]
    public void What_no_stream_could_take_is_refused_and_named(string what, string wrong)
    {
        var fact = Facts.Noted(1);
        fact = what switch
        {
            "kind" => fact with { Kind = "note.writen" },
            "schema" => fact with { Schema = 99 },
            "subject" => fact with { Subject = "slots/tires" },
            "void" => fact with { Payload = null },
            "person" => fact with { Person = "" },
            "stream" => fact with { Stream = "" },
            "id" => fact with { Id = Guid.Empty },
            _ => fact with { Payload = new JsonObject { ["text"] = "\ud800" } },
        };
        var outcomes = Append(fact, Facts.Noted(2));
        Refused(outcomes[0], wrong);
        Assert.IsType<AppendOutcome.LeftOut>(outcomes[1]);
        Assert.Empty(_store.Streams());
    }

    [Fact]
    public void Rules_across_subjects_are_asked_in_the_transaction_and_refuse_what_they_name()
    {
        var journal = new Builds.Journal.Journal(_store, _clock, new AtMostTwoEntries());
        var outcomes = journal.Append([Facts.Noted(1), Facts.Noted(2), Facts.Graded(3)], Arrival.Online);
        Refused(outcomes[2], "too many");
        Assert.Equal(new AppendOutcome.LeftOut(Facts.Id(1), Facts.Id(3)), outcomes[0]);
        Assert.Empty(_store.Streams());
        Assert.IsType<AppendOutcome.Held>(journal.Append([Facts.Noted(1), Facts.Noted(2), Facts.Graded(3)], Arrival.Queue)[2]);
        Assert.Equal(2, _store.Read("b1").Count);
    }

    [Theory]
    [InlineData("slots/tires/grade", 2)]
    [InlineData("slots/tires/grade/grade", 2)]
    [InlineData("slots/tires/title", 1)]
    [InlineData("", 1, 2, 3)]
    public void A_broken_rule_is_laid_to_the_fact_it_is_about(string path, params int[] facts)
    {
        var journal = new Builds.Journal.Journal(_store, _clock, new Never(path));
        var outcomes = journal.Append([Facts.Defined(1), Facts.Graded(2, after: 1), Facts.Graded(3, slot: "tires.spare")], Arrival.Online);
        Assert.Equal(facts.Select(Facts.Id), outcomes.OfType<AppendOutcome.Refused>().Select(r => r.FactId));
        Assert.Equal(3 - facts.Length, outcomes.OfType<AppendOutcome.LeftOut>().Count());
    }

    private sealed class Never(string path) : IAppendRules
    {
        public IReadOnlyList<Fault> Check(string stream, IReadOnlyList<Fact> facts, IJournalTransaction transaction) => [new(path, "never", "not at all")];
    }

    [Fact]
    public void Nothing_to_append_is_nothing_done() => Assert.Empty(Append());

    private static void Refused(AppendOutcome outcome, string wrong) =>
        Assert.Contains(wrong, Assert.IsType<AppendOutcome.Refused>(outcome).Fault.Wrong, StringComparison.Ordinal);

    private sealed class AtMostTwoEntries : IAppendRules
    {
        public IReadOnlyList<Fault> Check(string stream, IReadOnlyList<Fact> facts, IJournalTransaction transaction) =>
            transaction.Head(stream).Sequence + facts.Count > 2 ? [new(facts[^1].Subject, "too many entries", "say less")] : [];
    }
}
