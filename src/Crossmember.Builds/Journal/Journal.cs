using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Journal;

/// <summary>The rules of appending, over any store. Nothing is ever changed or removed: facts are added, held, corrected by further facts.</summary>
public sealed class Journal(IJournalStore store, TimeProvider clock, IAppendRules? rules = null)
{
    private readonly IAppendRules _rules = rules ?? new NoRules();

    public IJournalStore Store => store;

    /// <summary>Appends facts and says for each, in the order given, what became of it.</summary>
    /// <remarks>
    /// Online the whole call is one unit: all of it is written or nothing. From a queue a unit is one batch, or one fact without a batch;
    /// units are written one after the other, each in a transaction of its own, and a late one does not stop the next.
    /// A batch must arrive in one call.
    /// </remarks>
    public IReadOnlyList<AppendOutcome> Append(IReadOnlyList<Fact> facts, Arrival arrival)
    {
        var outcomes = new AppendOutcome[facts.Count];
        foreach (var unit in Units(facts, arrival))
        {
            var written = store.Transact(tx => new AppendUnit(tx, _rules, clock.GetUtcNow(), arrival).Append([.. unit.Select(i => facts[i])]));
            for (var i = 0; i < unit.Count; i++) outcomes[unit[i]] = written[i];
        }
        return outcomes;
    }

    /// <summary>Lets a held fact, and with it the whole of its batch, into its stream: a new fact with the same content is appended that names it.</summary>
    /// <param name="seen">The sequence of the stream the person looked at when deciding; an entry on the same subject since then is a conflict.</param>
    public IReadOnlyList<AppendOutcome> Release(Guid held, string person, string why, long seen) =>
        store.Transact(tx => new Releasing(tx, _rules, clock.GetUtcNow()).Release(held, person, why, seen));

    /// <summary>Sets a held fact, and with it the whole of its batch, aside for good; it stays on record with who decided so and why.</summary>
    public Fault? Discard(Guid held, string person, string why) =>
        store.Transact(tx =>
        {
            if (tx.FindHeld(held) is not { } found) return new Fault(FactText.Id(held), "no held fact has this id", "look at the list of held facts");
            if (found.Decision is { } decision) return new Fault(found.Fact.Subject, $"{decision.Person} has decided on it already", "nothing is left to decide");
            foreach (var member in Releasing.Batch(tx, found)) tx.Settle(member.Fact.Id, new(person, Instants.Whole(clock.GetUtcNow()), null, why));
            return null;
        });

    /// <summary>Takes in the entries of one stream as another copy of it has them, stamps and all: only a true extension of what is here.</summary>
    /// <param name="beside">Facts that come with it, appended in the same transaction: all of it or nothing.</param>
    /// <param name="rehearsal">Only says what would come of it.</param>
    /// <returns>How many entries were appended, or a fault at the first entry that differs.</returns>
    public ImportOutcome Import(IReadOnlyList<Entry> entries, IReadOnlyList<Fact>? beside = null, bool rehearsal = false) =>
        store.Transact(tx =>
        {
            var outcome = StreamImport.Import(entries, tx);
            if (outcome.Fault is null && beside is { Count: > 0 })
                outcome = StreamImport.With(outcome, new AppendUnit(tx, _rules, clock.GetUtcNow(), Arrival.Online).Append(beside));
            if (rehearsal || outcome.Fault is not null) tx.Abandon();
            return outcome;
        });

    private static IEnumerable<List<int>> Units(IReadOnlyList<Fact> facts, Arrival arrival)
    {
        if (facts.Count == 0) return [];
        var all = Enumerable.Range(0, facts.Count);
        return arrival == Arrival.Online ? [[.. all]] : all.GroupBy(i => facts[i].Batch ?? facts[i].Id).Select(g => g.ToList());
    }
}
