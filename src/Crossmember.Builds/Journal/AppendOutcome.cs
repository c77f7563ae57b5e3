using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Journal;

/// <summary>How a fact came in: from a person who sees the present state, or from a device that was away.</summary>
public enum Arrival { Online, Queue }

/// <summary>What became of one fact. A closed list: all of it is on this screen.</summary>
public abstract record AppendOutcome
{
    private AppendOutcome(Guid factId) => FactId = factId;

    public Guid FactId { get; }

    /// <summary>It is in the stream now.</summary>
    public sealed record Appended(Guid FactId, long Sequence) : AppendOutcome(FactId);

    /// <summary>It was in the stream already, with the same bytes: sending it again changes nothing.</summary>
    public sealed record Acknowledged(Guid FactId, long Sequence) : AppendOutcome(FactId);

    /// <summary>Somebody else was faster. Nothing of the batch is written; both sides are shown.</summary>
    /// <param name="Seen">The entry the person had seen.</param>
    /// <param name="Last">The entry that stands there now; null where there is none.</param>
    public sealed record Conflict(Guid FactId, string Subject, Guid? Seen, Entry? Last) : AppendOutcome(FactId);

    /// <summary>It is kept outside the stream until a person decides.</summary>
    public sealed record Held(Guid FactId, string Reason) : AppendOutcome(FactId);

    /// <summary>It was held, and a person has decided since.</summary>
    public sealed record Decided(Guid FactId, HeldDecision Decision) : AppendOutcome(FactId);

    /// <summary>It cannot be kept as it is.</summary>
    public sealed record Refused(Guid FactId, Fault Fault) : AppendOutcome(FactId);

    /// <summary>Nothing is wrong with it, but another fact of its batch could not be written.</summary>
    public sealed record LeftOut(Guid FactId, Guid Because) : AppendOutcome(FactId);
}
