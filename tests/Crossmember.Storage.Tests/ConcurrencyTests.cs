using Crossmember.Builds.Journal;

namespace Crossmember.Storage.Tests;

public sealed class ConcurrencyTests : IDisposable
{
    private readonly Shop _shop = new();

    public void Dispose() => _shop.Dispose();

    [Fact]
    public async Task Of_writers_on_one_subject_exactly_one_gets_through_and_the_others_see_it()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(1, 8).Select(n => Task.Run(() => _shop.Open().Journal.Append([Shop.Graded(n)], Arrival.Online)[0])));
        var winner = Assert.Single(outcomes.OfType<AppendOutcome.Appended>());
        Assert.Equal(7, outcomes.OfType<AppendOutcome.Conflict>().Count(c => c.Last!.Fact.Id == winner.FactId && c.Seen is null));
        Assert.Single(_shop.Journal.Store.Read("b1"));
    }

    [Fact]
    public async Task Writers_on_different_subjects_all_get_through_in_one_chain()
    {
        var outcomes = await Task.WhenAll(Enumerable.Range(1, 8).Select(w => Task.Run(() =>
            Enumerable.Range(0, 10).Select(i => _shop.Journal.Append([Shop.Graded(w * 100 + i, i == 0 ? null : w * 100 + i - 1, $"slot{w}")], Arrival.Online)[0]).ToList())));
        Assert.All(outcomes.SelectMany(o => o), o => Assert.IsType<AppendOutcome.Appended>(o));
        Assert.Equal(Enumerable.Range(1, 80).Select(n => (long)n), _shop.Journal.Store.Read("b1").Select(e => e.Sequence));
        Assert.Empty(_shop.Store.Verify());
    }

    [Fact]
    public async Task The_same_queue_sent_by_two_connections_at_once_is_taken_once()
    {
        _shop.Append(Shop.Graded(1));
        Fact[] queue = [.. Enumerable.Range(2, 20).Select(n => n % 5 == 0 ? Shop.Graded(n) : Shop.Noted(n))];
        await Task.WhenAll(Enumerable.Range(0, 4).Select(_ => Task.Run(() => _shop.Open().Journal.Append(queue, Arrival.Queue))));
        Assert.Equal(17, _shop.Journal.Store.Read("b1").Count);
        Assert.Equal([5, 10, 15, 20], _shop.Journal.Store.Held("b1").Select(h => Convert.ToInt32(FactText.Id(h.Fact.Id)[^12..], 16)));
    }
}
