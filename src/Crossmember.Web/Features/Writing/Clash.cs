using Crossmember.Builds.Journal;

namespace Crossmember.Web.Features.Writing;

/// <summary>Two people said something of one subject: what stands, and what could not be written.</summary>
/// <param name="Theirs">Null where the entry that was seen has gone.</param>
/// <param name="Together">All that was to be written at once, the one that met theirs among them.</param>
public sealed record Clash(Fact Mine, Entry? Theirs, IReadOnlyList<Fact> Together)
{
    public Clash(Fact mine, Entry? theirs)
        : this(mine, theirs, [mine]) { }

    /// <summary>The same said again, in the knowledge of what stands.</summary>
    public IReadOnlyList<Fact> Insisted(TimeProvider clock) => [.. Together.Select(f => f.Id == Mine.Id ? Mine with { Id = FactIds.New(clock), After = Theirs?.Fact.Id } : f)];
}
