namespace Crossmember.Builds.Journal;

/// <summary>A fact from a queue that came too late to be applied unseen: kept outside the stream until a person decides.</summary>
/// <param name="Met">The last entry on its subject when it came, if there was one.</param>
/// <param name="Reason">In plain words: what it met.</param>
/// <param name="Decision">What a person decided; null while it waits.</param>
public sealed record HeldFact(Fact Fact, string FactText, DateTimeOffset Received, Guid? Met, string Reason, HeldDecision? Decision = null);

/// <summary>What a person decided about a held fact.</summary>
/// <param name="ReleasedAs">The new fact that carries it into the stream; null where it was discarded.</param>
/// <param name="Why">The person's words.</param>
public sealed record HeldDecision(string Person, DateTimeOffset At, Guid? ReleasedAs, string Why);
