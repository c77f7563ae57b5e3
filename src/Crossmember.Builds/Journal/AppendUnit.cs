using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Journal;

/// <summary>Appends facts that stand or fall together, inside one transaction.</summary>
internal sealed class AppendUnit(IJournalTransaction tx, IAppendRules rules, DateTimeOffset now, Arrival arrival)
{
    private readonly Dictionary<Guid, AppendOutcome> _outcomes = [];
    private readonly Dictionary<Guid, string> _texts = [];
    private readonly List<Fact> _fresh = [];

    public IReadOnlyList<AppendOutcome> Append(IReadOnlyList<Fact> facts)
    {
        foreach (var fact in facts) Sort(fact with { Occurred = Instants.Whole(fact.Occurred) });
        if (_fresh.Count > 0) Settle();
        return [.. facts.Select(f => _outcomes[f.Id])];
    }

    /// <summary>Tells known facts from fresh ones, and misshapen ones from both.</summary>
    private void Sort(Fact fact)
    {
        var faults = new Faults();
        if (FactShape.Text(fact, faults) is not { } text) _outcomes[fact.Id] = new AppendOutcome.Refused(fact.Id, faults.List[0]);
        else if (_texts.TryAdd(fact.Id, text))
        {
            if (Known(fact, text) is { } known) _outcomes[fact.Id] = known;
            else _fresh.Add(fact);
        }
        else if (_texts[fact.Id] != text) _outcomes[fact.Id] = OtherBytes(fact);
    }

    private AppendOutcome? Known(Fact fact, string text)
    {
        if (tx.Find(fact.Id) is { } entry) return entry.FactText == text ? new AppendOutcome.Acknowledged(fact.Id, entry.Sequence) : OtherBytes(fact);
        if (tx.FindHeld(fact.Id) is not { } held) return null;
        if (held.FactText != text) return OtherBytes(fact);
        return held.Decision is { } decision ? new AppendOutcome.Decided(fact.Id, decision) : new AppendOutcome.Held(fact.Id, held.Reason);
    }

    private static AppendOutcome.Refused OtherBytes(Fact fact) =>
        new(fact.Id, new(fact.Subject, $"another fact has the id {FactText.Id(fact.Id)} already", "give what is new an id of its own; what was said is corrected by a further fact"));

    private void Settle()
    {
        foreach (var fact in _fresh)
            if (!_outcomes.ContainsKey(fact.Id) && (Correcting(fact) ?? Late(fact)) is { } trouble) _outcomes[fact.Id] = trouble;
        if (First<AppendOutcome.Refused>() is null && First<AppendOutcome.Conflict>() is null && First<AppendOutcome.Held>() is null) BrokenRules();

        var online = arrival == Arrival.Online ? First<AppendOutcome.Held>() : null;
        if ((First<AppendOutcome.Refused>() ?? First<AppendOutcome.Conflict>() ?? online) is { } because)
        {
            // What would have been held is left out too: its batch comes again once it is mended.
            foreach (var fact in _fresh)
                if (_outcomes.GetValueOrDefault(fact.Id) is null or AppendOutcome.Held) _outcomes[fact.Id] = new AppendOutcome.LeftOut(fact.Id, because.FactId);
        }
        else if (First<AppendOutcome.Held>() is AppendOutcome.Held late) HoldAll(late);
        else AppendAll();
    }

    private AppendOutcome? First<T>() where T : AppendOutcome => _outcomes.Values.OfType<T>().FirstOrDefault();

    private AppendOutcome? Correcting(Fact fact)
    {
        if (fact.Corrects is not { } id) return null;
        if ((tx.Find(id)?.Fact ?? _fresh.Find(f => f.Id == id)) is { } target)
            return (target.Stream, target.Kind, target.Subject) == (fact.Stream, fact.Kind, fact.Subject)
                ? null
                : Refuse(fact, "a correction keeps stream, kind and subject of what it corrects", $"write '{target.Kind}' on '{target.Subject}' in '{target.Stream}'");
        return arrival == Arrival.Queue && tx.FindHeld(id) is not null
            ? new AppendOutcome.Held(fact.Id, "what it corrects is held")
            : Refuse(fact, $"there is no entry {FactText.Id(id)} to correct", "name an entry of this stream");
    }

    private AppendOutcome? Late(Fact fact)
    {
        if (arrival == Arrival.Queue && fact.After is { } after && tx.FindHeld(after) is not null) return new AppendOutcome.Held(fact.Id, "what it follows was held");
        if (EntryKind.Find(fact.Kind)!.Nature == EntryNature.Log) return null;
        var last = tx.LastOn(fact.Stream, fact.Subject);
        // Facts of one unit were made together: each may follow the entry before the unit, or its forerunner within it.
        if (fact.After == last?.Fact.Id || (fact.After is { } seen && seen == LastBefore(fact)?.Id)) return null;
        return arrival == Arrival.Online
            ? new AppendOutcome.Conflict(fact.Id, fact.Subject, fact.After, last)
            : new AppendOutcome.Held(fact.Id, last is null ? "what it follows is not here" : $"'{last.Fact.Subject}' was changed by {last.Fact.Person} meanwhile");
    }

    private Fact? LastBefore(Fact fact) =>
        _fresh.TakeWhile(f => f.Id != fact.Id)
            .LastOrDefault(f => f.Stream == fact.Stream && EntryKind.Find(f.Kind)!.Nature == EntryNature.State && Subject.Meet(f.Subject, fact.Subject));

    private void BrokenRules()
    {
        foreach (var stream in _fresh.GroupBy(f => f.Stream))
            foreach (var fault in rules.Check(stream.Key, [.. stream], tx))
                foreach (var fact in About(fault, [.. stream]))
                    // A device that was away could not know: a person decides, and nothing said in the field is lost.
                    _outcomes.TryAdd(fact.Id, arrival == Arrival.Queue ? new AppendOutcome.Held(fact.Id, fault.Wrong) : new AppendOutcome.Refused(fact.Id, fault));
    }

    /// <summary>The facts a fault is about: those whose subject is the longest beginning of its path; all of them where none is.</summary>
    private static IReadOnlyList<Fact> About(Fault fault, IReadOnlyList<Fact> facts)
    {
        var named = facts.Where(f => $"{fault.Path}/".StartsWith($"{f.Subject}/", StringComparison.Ordinal)).ToList();
        return named.Count == 0 ? facts : named.FindAll(f => f.Subject.Length == named.Max(n => n.Subject.Length));
    }

    private void HoldAll(AppendOutcome.Held late)
    {
        foreach (var fact in _fresh)
        {
            var reason = _outcomes.GetValueOrDefault(fact.Id) is AppendOutcome.Held own ? own.Reason : $"its batch is held: {late.Reason}";
            _outcomes[fact.Id] = new AppendOutcome.Held(fact.Id, reason);
            tx.Hold(new(fact, _texts[fact.Id], Instants.Whole(now), tx.LastOn(fact.Stream, fact.Subject)?.Fact.Id, reason));
        }
    }

    private void AppendAll()
    {
        foreach (var entry in Stamped(_fresh, f => _texts[f.Id], tx, now)) _outcomes[entry.Fact.Id] = new AppendOutcome.Appended(entry.Fact.Id, entry.Sequence);
    }

    /// <summary>Stamps facts on the heads of their streams and appends them.</summary>
    public static IReadOnlyList<Entry> Stamped(IReadOnlyList<Fact> facts, Func<Fact, string> text, IJournalTransaction tx, DateTimeOffset now)
    {
        var heads = facts.Select(f => f.Stream).Distinct().ToDictionary(s => s, tx.Head);
        var entries = new List<Entry>();
        foreach (var fact in facts)
        {
            var entry = Stamp.On(heads[fact.Stream], fact, text(fact), now);
            heads[fact.Stream] = new(entry.Sequence, entry.Hash);
            entries.Add(entry);
        }
        tx.Append(entries);
        return entries;
    }

    private static AppendOutcome.Refused Refuse(Fact fact, string wrong, string right) => new(fact.Id, new(fact.Subject, wrong, right));
}
