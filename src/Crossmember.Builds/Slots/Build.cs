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

    /// <summary>Sequence of the last entry folded.</summary>
    public long Position { get; init; }

    public Slot? Find(string slot) => Slots.FirstOrDefault(s => s.Id == slot);
}

/// <summary>What the shop's own stream says, as far as a sheet needs it.</summary>
public sealed record ShopFacts
{
    public string? Currency { get; init; }

    /// <summary>The currency its amounts are in: its own, else that of its rates.</summary>
    public string? Books => Currency ?? Rates.Values.FirstOrDefault(r => r is not null)?.Currency;

    /// <summary>Hourly rate by trade; null for a trade without one.</summary>
    public ImmutableSortedDictionary<string, Planning.Money?> Rates { get; init; } = ImmutableSortedDictionary.Create<string, Planning.Money?>(StringComparer.Ordinal);

    /// <summary>Fraction by category.</summary>
    public ImmutableSortedDictionary<string, decimal> Tax { get; init; } = ImmutableSortedDictionary.Create<string, decimal>(StringComparer.Ordinal);

    public long Position { get; init; }
}
