using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Tests.Journal;

public class HeldTests
{
    private readonly MemoryJournalStore _store = new();
    private readonly StandingClock _clock = new();
    private readonly Builds.Journal.Journal _journal;

    public HeldTests()
    {
        _journal = new(_store, _clock);
        _journal.Append([Facts.Graded(1), Facts.Graded(2, after: 1)], Arrival.Online);
    }

    private IReadOnlyList<AppendOutcome> Queue(params Fact[] facts) => _journal.Append(facts, Arrival.Queue);

    [Fact]
    public void A_late_fact_from_a_queue_is_kept_outside_the_stream()
    {
        Assert.Contains("changed by ana", Assert.IsType<AppendOutcome.Held>(Queue(Facts.Graded(3, after: 1))[0]).Reason, StringComparison.Ordinal);
        var held = Assert.Single(_store.Held("b1"));
        Assert.Equal((Facts.Id(3), Facts.Id(2), _clock.Now), (held.Fact.Id, held.Met, held.Received));
        Assert.Equal(2, _store.Read("b1").Count);
    }

    [Fact]
    public void A_late_fact_does_not_stop_the_next_one()
    {
        var outcomes = Queue(Facts.Graded(3, after: 1), Facts.Graded(4, slot: "winch"));
        Assert.IsType<AppendOutcome.Held>(outcomes[0]);
        Assert.Equal(new AppendOutcome.Appended(Facts.Id(4), 3), outcomes[1]);
    }

    [Fact]
    public void What_follows_a_held_fact_is_held_even_a_log()
    {
        var outcomes = Queue(Facts.Graded(3, after: 1), Facts.Graded(4, after: 3), Facts.Noted(5) with { After = Facts.Id(4) }, Facts.Noted(6));
        Assert.Equal([true, true, true, false], outcomes.Select(o => o is AppendOutcome.Held));
    }

    [Fact]
    public void A_batch_is_held_whole_and_other_facts_pass()
    {
        var outcomes = Queue(Facts.Graded(3, slot: "winch", batch: 90), Facts.Graded(4, slot: "shell"), Facts.Graded(5, after: 1, batch: 90));
        Assert.Contains("its batch", Assert.IsType<AppendOutcome.Held>(outcomes[0]).Reason, StringComparison.Ordinal);
        Assert.IsType<AppendOutcome.Appended>(outcomes[1]);
        Assert.Equal([Facts.Id(3), Facts.Id(5)], _store.Held("b1").Select(h => h.Fact.Id));
    }

    [Fact]
    public void A_queue_sent_twice_changes_nothing()
    {
        Fact[] queue = [Facts.Graded(3, after: 1), Facts.Graded(4, after: 3), Facts.Noted(5), Facts.Graded(6, slot: "winch", batch: 9), Facts.Graded(7, batch: 9)];
        var first = Queue(queue);
        var (entries, held) = (_store.Read("b1"), _store.Held("b1"));
        var second = Queue(queue);
        Assert.Equal(entries, _store.Read("b1"));
        Assert.Equal(held, _store.Held("b1"));
        Assert.Equal(first.Where(o => o is AppendOutcome.Held), second.Where(o => o is AppendOutcome.Held));
        Assert.IsType<AppendOutcome.Acknowledged>(second[2]);
    }

    [Fact]
    public void A_held_id_with_other_bytes_is_refused()
    {
        Queue(Facts.Graded(3, after: 1));
        Assert.IsType<AppendOutcome.Refused>(Queue(Facts.Graded(3, after: 1, grade: "A"))[0]);
    }

    [Fact]
    public void Releasing_appends_a_new_fact_that_names_the_held_one()
    {
        Queue(Facts.Graded(3, after: 1, grade: "D"));
        var released = Assert.IsType<AppendOutcome.Appended>(Assert.Single(_journal.Release(Facts.Id(3), "bo", "ana was there", seen: 2)));
        var entry = _store.Read("b1")[2];
        Assert.Equal(released.FactId, entry.Fact.Id);
        Assert.Equal((Facts.Id(3), Facts.Id(2), "ana", "D"), (entry.Fact.Releases, entry.Fact.After, entry.Fact.Person, entry.Fact.Payload!["grade"]!.GetValue<string>()));
        Assert.Equal(FactText.Write(entry.Fact), entry.FactText);
        Assert.Empty(_store.Held("b1"));
        Assert.Equal(new HeldDecision("bo", _clock.Now, entry.Fact.Id, "ana was there"), Assert.Single(_store.AllHeld).Decision);
    }

    [Fact]
    public void After_a_decision_the_queue_may_come_again_and_nothing_changes()
    {
        Queue(Facts.Graded(3, after: 1));
        _journal.Release(Facts.Id(3), "bo", "", seen: 2);
        Assert.IsType<AppendOutcome.Decided>(Queue(Facts.Graded(3, after: 1))[0]);
        Assert.IsType<AppendOutcome.Acknowledged>(Assert.Single(_journal.Release(Facts.Id(3), "bo", "", seen: 3)));
        Assert.Equal(3, _store.Read("b1").Count);
    }

    [Fact]
    public void A_held_batch_is_released_whole_in_its_order()
    {
        Queue(Facts.Defined(3, slot: "winch") with { Batch = Facts.Id(90) }, Facts.Graded(4, slot: "winch", after: 3, batch: 90), Facts.Graded(5, after: 1, batch: 90));
        Assert.Equal([3L, 4L, 5L], _journal.Release(Facts.Id(5), "bo", "", seen: 2).Cast<AppendOutcome.Appended>().Select(a => a.Sequence));
        var entries = _store.Read("b1").Skip(2).ToList();
        Assert.Equal([Facts.Id(3), Facts.Id(4), Facts.Id(5)], entries.Select(e => e.Fact.Releases));
        Assert.Single(entries.Select(e => e.Fact.Batch).Distinct());
        Assert.Equal(entries[0].Fact.Id, entries[1].Fact.After);
        Assert.Equal(Facts.Id(2), entries[2].Fact.After);
    }

    [Fact]
    public void Releasing_on_an_old_view_is_a_conflict()
    {
        Queue(Facts.Graded(3, after: 1));
        _journal.Append([Facts.Graded(4, after: 2)], Arrival.Online);
        Assert.Equal(Facts.Id(4), Assert.IsType<AppendOutcome.Conflict>(Assert.Single(_journal.Release(Facts.Id(3), "bo", "", seen: 2))).Last!.Fact.Id);
        Assert.Single(_store.Held("b1"));
    }

    [Fact]
    public void A_correction_of_a_held_fact_waits_for_it_and_then_corrects_what_it_became()
    {
        var late = Facts.Graded(3, after: 1);
        Queue(late, Facts.Corrected(late, 4, new JsonObject { ["grade"] = "B" }, after: 3));
        Assert.IsType<AppendOutcome.Refused>(Assert.Single(_journal.Release(Facts.Id(4), "bo", "", seen: 2)));
        _journal.Release(Facts.Id(3), "bo", "", seen: 2);
        _journal.Release(Facts.Id(4), "bo", "", seen: 3);
        Assert.Equal(FactIds.OfRelease(Facts.Id(3)), _store.Read("b1")[3].Fact.Corrects);
    }

    [Fact]
    public void Discarding_sets_a_whole_batch_aside_and_keeps_it_on_record()
    {
        Queue(Facts.Graded(3, slot: "winch", batch: 90), Facts.Graded(4, after: 1, batch: 90));
        Assert.Null(_journal.Discard(Facts.Id(4), "bo", "measured wrongly"));
        Assert.Empty(_store.Held("b1"));
        Assert.All(_store.AllHeld, h => Assert.Equal(new HeldDecision("bo", _clock.Now, null, "measured wrongly"), h.Decision));
        Assert.Equal(2, _store.AllHeld.Count);
        Assert.IsType<AppendOutcome.Decided>(Queue(Facts.Graded(4, after: 1, batch: 90))[0]);
        Assert.IsType<AppendOutcome.Decided>(Assert.Single(_journal.Release(Facts.Id(4), "bo", "", seen: 9)));
        Assert.NotNull(_journal.Discard(Facts.Id(4), "bo", "again"));
    }

    [Fact]
    public void Only_what_is_held_can_be_decided_on()
    {
        Assert.IsType<AppendOutcome.Refused>(Assert.Single(_journal.Release(Facts.Id(1), "bo", "", seen: 9)));
        Assert.NotNull(_journal.Discard(Facts.Id(1), "bo", ""));
    }

    [Fact]
    public void Online_nothing_is_ever_held()
    {
        Queue(Facts.Graded(3, after: 1));
        Assert.IsType<AppendOutcome.Conflict>(_journal.Append([Facts.Graded(4, after: 3)], Arrival.Online)[0]);
        Assert.IsType<AppendOutcome.LeftOut>(_journal.Append([Facts.Graded(3, after: 1), Facts.Noted(5)], Arrival.Online)[1]);
        Assert.Single(_store.Held("b1"));
    }
}
