using Crossmember.Builds.Journal;

namespace Crossmember.Web.Features.Decisions;

/// <summary>Two people said something of one subject: what stands, and what could not be written.</summary>
/// <param name="Theirs">Null where the entry that was seen has gone.</param>
public sealed record Clash(Fact Mine, Entry? Theirs)
{
    /// <summary>The same said again, in the knowledge of what stands.</summary>
    public Fact Insisted(TimeProvider clock) => Mine with { Id = FactIds.New(clock), After = Theirs?.Fact.Id };
}
