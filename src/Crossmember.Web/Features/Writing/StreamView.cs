using Crossmember.Builds.Journal;

namespace Crossmember.Web.Features.Writing;

/// <summary>A stream as one person sees it at one position: what was seen decides whether what they say next is late.</summary>
public abstract class StreamView
{
    private readonly LastOnSubject _seen = new();

    protected StreamView(IReadOnlyList<Entry> entries)
    {
        Entries = entries;
        foreach (var entry in entries.Where(e => EntryKind.Find(e.Fact.Kind) is not { Nature: EntryNature.Log })) _seen.Add(entry.Fact.Subject, entry.Fact.Id);
    }

    public IReadOnlyList<Entry> Entries { get; }

    /// <summary>Sequence of the last entry that is shown.</summary>
    public abstract long Position { get; }

    /// <summary>Nothing may be written into it at all.</summary>
    public abstract bool IsReadOnly { get; }

    /// <summary>The last entry on a subject that this view shows.</summary>
    public Guid? Seen(string subject) => _seen.On(subject);

    public Fact? Find(Guid id) => Entries.FirstOrDefault(e => e.Fact.Id == id)?.Fact;

    /// <summary>A fact as a sentence without its speaker.</summary>
    public string Say(Fact fact) => Telling.Say(fact, Plain, Find);

    /// <summary>What was said together, in one sentence.</summary>
    public string Say(IReadOnlyList<Fact> facts) => Telling.Say(facts, Plain, Find);

    /// <summary>A fact that corrects nothing, as a sentence.</summary>
    protected abstract string Plain(Fact fact);
}
