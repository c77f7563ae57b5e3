using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;

namespace Crossmember.Web.Features.Writing;

/// <summary>Writes for one page and keeps what came of the last time: kept, refused, or met by somebody else's word.</summary>
public sealed class Pen(ShopDesk desk)
{
    /// <summary>What was kept, as a sentence; empty where nothing was.</summary>
    public string Said { get; private set; } = "";

    public Fault? Refused { get; private set; }

    public Clash? Clash { get; private set; }

    /// <summary>While this page itself writes, what it hears of the build is its own voice.</summary>
    public bool IsWriting { get; private set; }

    /// <summary>Appends facts together, or none of them.</summary>
    /// <param name="say">The sentence for what was kept.</param>
    public bool Write(IReadOnlyList<Fact> facts, Func<string> say)
    {
        var outcomes = During(() => desk.Append(facts, Arrival.Online));
        Refused = outcomes.OfType<AppendOutcome.Refused>().FirstOrDefault()?.Fault;
        if (outcomes.OfType<AppendOutcome.Conflict>().FirstOrDefault() is { Last: var last } met) Clash = new(facts.First(f => f.Id == met.FactId), last, facts);
        if (Refused is not null || Clash is not null) return false;
        Said = say();
        return true;
    }

    /// <summary>What was said to the shop in one batch with words of a build, and still stands.</summary>
    public IReadOnlyList<Fact> Beside(Guid batch) =>
        [.. new WordLines(desk.Shop.Store.Journal.Store.Read(Fact.Shop)).Uppermost.Select(e => e.Fact).Where(f => f.Batch == batch)];

    /// <summary>Does something else that changes the build, and may be refused.</summary>
    public bool Do(Func<Fault?> act)
    {
        Refused = During(act);
        return Refused is null;
    }

    public void Say(string said) => Said = said;

    /// <summary>Wipes the slate: what is told next belongs to what is done next.</summary>
    public void Clear() => (Said, Refused, Clash) = ("", null, null);

    private T During<T>(Func<T> act)
    {
        Clear();
        IsWriting = true;
        try { return act(); }
        finally { IsWriting = false; }
    }
}
