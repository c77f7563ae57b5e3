using Crossmember.Builds.Journal;
using CsCheck;

namespace Crossmember.Storage.Tests;

public sealed class SqliteJournalStoreTests : IDisposable
{
    private readonly Shop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public void Entries_come_back_as_they_were_appended_also_for_a_second_program()
    {
        _shop.Append(Shop.Graded(1), Shop.Noted(2), Shop.Noted(3, "b2"));
        var entries = _shop.Open().Journal.Store.Read("b1");
        Assert.Equal([1L, 2L], entries.Select(e => e.Sequence));
        var head = Head.Empty;
        foreach (var entry in entries)
        {
            Assert.True(entry.Follows(head));
            Assert.Equal(FactText.Write(entry.Fact), entry.FactText);
            head = new(entry.Sequence, entry.Hash);
        }
        Assert.True(_shop.Journal.Store.Head("b1").Hash.Span.SequenceEqual(head.Hash.Span));
        Assert.Equal(["b1", "b2"], _shop.Journal.Store.Streams());
        Assert.Equal([2L], _shop.Journal.Store.Read("b1", after: 1).Select(e => e.Sequence));
        Assert.Equal([1L], _shop.Journal.Store.Read("b1", upTo: 1).Select(e => e.Sequence));
        Assert.Equal([2L], _shop.Journal.Store.Pick("b1", [2, 9]).Select(e => e.Sequence));
        Assert.Empty(_shop.Journal.Store.Pick("b1", []));
    }

    [Fact]
    public void A_stream_nobody_wrote_is_empty()
    {
        Assert.Empty(_shop.Journal.Store.Read("b1"));
        Assert.Equal(0, _shop.Journal.Store.Head("b1").Sequence);
        Assert.Equal(new byte[32], _shop.Journal.Store.Head("b1").Hash.ToArray());
    }

    [Fact]
    public void Work_that_is_given_up_or_breaks_leaves_nothing_behind()
    {
        var entry = Stamp.On(Head.Empty, Shop.Noted(1), FactText.Write(Shop.Noted(1)), DateTimeOffset.UnixEpoch);
        _shop.Journal.Store.Transact(tx => { tx.Append([entry]); tx.Abandon(); return 0; });
        Assert.Throws<InvalidOperationException>(() => _shop.Journal.Store.Transact<int>(tx => { tx.Append([entry]); throw new InvalidOperationException(); }));
        Assert.Empty(_shop.Journal.Store.Streams());
        Assert.Empty(_shop.Store.Builds());
    }

    /// <summary>Against a search through the list from end to end, written from the words of the contract.</summary>
    [Fact]
    public void The_last_entry_on_a_subject_is_the_one_a_plain_search_finds()
    {
        string[] subjects = ["a", "a/b", "a/b/c", "a/b0", "a/b-", "a/bc", "a.b", "ab", "a/b/c/d", "a/\u00fc", "a/b/\u00fc"];
        var kinds = new[] { EntryKind.SlotGraded, EntryKind.NoteWritten };
        Gen.Select(Gen.Int[0, subjects.Length - 1].Select(i => subjects[i]), Gen.Int[0, 1].Select(i => kinds[i])).Array[0, 12].Sample(picks =>
            _shop.Journal.Store.Transact(tx =>
            {
                var entries = new List<Entry>();
                foreach (var (subject, kind) in picks)
                {
                    var fact = Shop.Fact(entries.Count + 1, kind, subject, "{}");
                    entries.Add(Stamp.On(entries is [.., var e] ? new(e.Sequence, e.Hash) : Head.Empty, fact, FactText.Write(fact), DateTimeOffset.UnixEpoch));
                }
                tx.Append(entries);
                foreach (var subject in subjects)
                    Assert.Equal(entries.FindLast(e => e.Fact.Kind == EntryKind.SlotGraded.Name && OnOnePath(e.Fact.Subject, subject))?.Sequence, tx.LastOn("b1", subject)?.Sequence);
                tx.Abandon();
                return 0;
            }), iter: 60, threads: 1);

        static bool OnOnePath(string a, string b) => a.Split('/').Zip(b.Split('/')).All(p => p.First == p.Second);
    }

    [Fact]
    public void Held_facts_and_decisions_outlive_the_program()
    {
        _shop.Append(Shop.Graded(1));
        var batch = Shop.Id(90);
        _shop.Journal.Append([Shop.Graded(2) with { Batch = batch }, Shop.Graded(3, slot: "winch") with { Batch = batch }, Shop.Graded(4)], Arrival.Queue);
        var second = _shop.Open().Journal;
        Assert.Equal([Shop.Id(2), Shop.Id(3), Shop.Id(4)], second.Store.Held("b1").Select(h => h.Fact.Id));
        Assert.Equal(Shop.Id(1), second.Store.Held("b1")[0].Met);
        Assert.Equal(2, second.Release(Shop.Id(3), "bo", "right", seen: 1).Count);
        Assert.Null(second.Discard(Shop.Id(4), "bo", "wrong"));
        Assert.Empty(_shop.Journal.Store.Held("b1"));
        var outcomes = _shop.Journal.Append([Shop.Graded(4)], Arrival.Queue);
        Assert.Equal(("bo", "wrong"), outcomes[0] is AppendOutcome.Decided d ? (d.Decision.Person, d.Decision.Why) : default);
        Assert.Equal([null, Shop.Id(2), Shop.Id(3)], _shop.Journal.Store.Read("b1").Select(e => e.Fact.Releases));
        Assert.Empty(_shop.Store.Verify());
    }

    [Fact]
    public void An_imported_stream_is_kept_with_its_stamps()
    {
        _shop.Append(Shop.Graded(1), Shop.Noted(2));
        using var other = new Shop();
        Assert.Equal(new(2, null), other.Journal.Import(_shop.Journal.Store.Read("b1")));
        Assert.Equal(_shop.Query("SELECT * FROM Entries"), other.Query("SELECT * FROM Entries"));
        Assert.Empty(other.Store.Verify());
    }
}
