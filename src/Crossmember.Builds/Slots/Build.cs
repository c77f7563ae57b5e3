using System.Collections.Immutable;
using Crossmember.Builds.Parameters;

namespace Crossmember.Builds.Slots;

/// <summary>A vehicle as its journal tells it at one position; never changed, only folded anew.</summary>
public sealed record Build
{
    public required string Id { get; init; }

    public string Title { get; init; } = "";

    public string? Created { get; init; }

    public Sets Sets { get; init; } = Sets.Usual;

    /// <summary>In the order they were defined.</summary>
    public ImmutableArray<Slot> Slots { get; init; } = [];

    public ImmutableSortedDictionary<string, Scenario> Scenarios { get; init; } = ImmutableSortedDictionary.Create<string, Scenario>(StringComparer.Ordinal);

    public ImmutableSortedDictionary<string, Condition> Conditions { get; init; } = ImmutableSortedDictionary.Create<string, Condition>(StringComparer.Ordinal);

    /// <summary>In the order taken.</summary>
    public ImmutableArray<Weighing> Weighings { get; init; } = [];

    public ImmutableArray<Approval> Approvals { get; init; } = [];

    /// <summary>Content hash by document id.</summary>
    public ImmutableSortedDictionary<string, string> Documents { get; init; } = ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal);

    /// <summary>Null while work goes on; else why it was stopped.</summary>
    public string? Stopped { get; init; }

    /// <summary>One of <see cref="Slots.Phase.All"/>; null where nobody has said.</summary>
    public string? Phase { get; init; }

    /// <summary>Null while the build stands in the daily lists; else why it was put away.</summary>
    public string? Archived { get; init; }

    /// <summary>Id of the customer's record, which lies outside the journal and can be erased; null: none is kept.</summary>
    public string? Customer { get; init; }

    /// <summary>Sequence of the last entry folded.</summary>
    public long Position { get; init; }

    public Slot? Find(string slot) => Slots.FirstOrDefault(s => s.Id == slot);
}
