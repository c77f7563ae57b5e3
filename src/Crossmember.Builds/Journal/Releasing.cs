namespace Crossmember.Builds.Journal;

/// <summary>Brings held facts into their stream after a person said so.</summary>
internal sealed class Releasing(IJournalTransaction tx, IAppendRules rules, DateTimeOffset now)
{
    private readonly List<Fact> _released = [];

    public IReadOnlyList<AppendOutcome> Release(Guid id, string person, string why, long seen)
    {
        if (tx.FindHeld(id) is not { } held) return [Refuse(id, FactText.Id(id), "no held fact has this id", "look at the list of held facts")];
        if (held.Decision is { } decision) return [Decided(held, decision)];
        var batch = Batch(tx, held);
        foreach (var member in batch)
        {
            if (Trouble(member.Fact, seen) is { } trouble) return [trouble];
            _released.Add(Renewed(member.Fact));
        }
        foreach (var stream in _released.GroupBy(f => f.Stream))
            if (rules.Check(stream.Key, [.. stream], tx) is [var fault, ..])
                return [new AppendOutcome.Refused(id, fault)];

        var entries = AppendUnit.Stamped(_released, FactText.Write, tx, now);
        foreach (var entry in entries) tx.Settle(entry.Fact.Releases!.Value, new(person, Instants.Whole(now), entry.Fact.Id, why));
        return [.. entries.Select(e => new AppendOutcome.Appended(e.Fact.Id, e.Sequence))];
    }

    /// <summary>A batch is held whole and decided on whole.</summary>
    public static IReadOnlyList<HeldFact> Batch(IJournalTransaction tx, HeldFact held) => held.Fact.Batch is { } batch ? tx.HeldBatch(batch) : [held];

    private AppendOutcome Decided(HeldFact held, HeldDecision decision) =>
        decision.ReleasedAs is { } released && tx.Find(released) is { } entry
            ? new AppendOutcome.Acknowledged(released, entry.Sequence)
            : new AppendOutcome.Decided(held.Fact.Id, decision);

    private AppendOutcome? Trouble(Fact fact, long seen)
    {
        if (IsState(fact) && tx.LastOn(fact.Stream, fact.Subject) is { } last && last.Sequence > seen)
            return new AppendOutcome.Conflict(fact.Id, fact.Subject, fact.After, last);
        return fact.Corrects is { } target && Target(target) is null
            ? Refuse(fact.Id, fact.Subject, "what it corrects is held itself", "decide on that one first")
            : null;
    }

    /// <summary>The same words at today's place: the person, device and time of the one who said them stay.</summary>
    private Fact Renewed(Fact fact) => fact with
    {
        Id = FactIds.OfRelease(fact.Id),
        Releases = fact.Id,
        Batch = fact.Batch is { } batch ? FactIds.OfRelease(batch) : null,
        After = IsState(fact) ? LastReleased(fact)?.Id ?? tx.LastOn(fact.Stream, fact.Subject)?.Fact.Id : null,
        Corrects = fact.Corrects is { } target ? Target(target) : null,
    };

    private Fact? LastReleased(Fact fact) => _released.LastOrDefault(f => f.Stream == fact.Stream && IsState(f) && Subject.Meet(f.Subject, fact.Subject));

    private Guid? Target(Guid corrected) =>
        tx.Find(corrected)?.Fact.Id ?? tx.FindHeld(corrected)?.Decision?.ReleasedAs ?? _released.Find(f => f.Releases == corrected)?.Id;

    private static bool IsState(Fact fact) => EntryKind.Find(fact.Kind)?.Nature != EntryNature.Log;

    private static AppendOutcome.Refused Refuse(Guid id, string path, string wrong, string right) => new(id, new(path, wrong, right));
}
