using System.Collections.Immutable;
using Crossmember.Planning;

namespace Crossmember.Builds.Slots;

/// <summary>What the shop's own stream says, as far as a sheet needs it.</summary>
public sealed record ShopFacts
{
    public string? Currency { get; init; }

    /// <summary>The currency its amounts are in: its own, else that of its rates.</summary>
    public string? Books => Currency ?? Rates.Values.FirstOrDefault(r => r is not null)?.Currency;

    /// <summary>Hourly rate by trade; null for a trade without one.</summary>
    public ImmutableSortedDictionary<string, Money?> Rates { get; init; } = ImmutableSortedDictionary.Create<string, Money?>(StringComparer.Ordinal);

    /// <summary>Fraction by category.</summary>
    public ImmutableSortedDictionary<string, decimal> Tax { get; init; } = ImmutableSortedDictionary.Create<string, decimal>(StringComparer.Ordinal);

    /// <summary>Smallest step of a line on a bill, in the books' currency; null: the smallest coin.</summary>
    public decimal? Rounding { get; init; }

    public ImmutableSortedDictionary<string, Person> People { get; init; } = ImmutableSortedDictionary.Create<string, Person>(StringComparer.Ordinal);

    public ImmutableSortedDictionary<string, StockPart> Stock { get; init; } = ImmutableSortedDictionary.Create<string, StockPart>(StringComparer.Ordinal);

    public long Position { get; init; }
}

/// <summary>Somebody who works here.</summary>
/// <param name="Role">In the shop's own words; null where nobody said.</param>
/// <param name="Away">No longer offered for new entries; what they said stays theirs.</param>
public sealed record Person(string Id, string Name, string? Role, bool Away);

/// <summary>A part on the shelf, or a line of a price list. An option copies it; it is never linked live.</summary>
/// <param name="Number">The vendor's or maker's part number.</param>
/// <param name="OnHand">How many lie on the shelf; null for a price only.</param>
/// <param name="Until">Last day the price holds, as written.</param>
/// <param name="Body">What an option copied from it brings besides, as the JSON of an option's body; null: nothing.</param>
public sealed record StockPart(
    string Id, string Title, string? Number, string? Vendor, Money? Each, string? Category, string? Lead, decimal? OnHand, string? Until, string? Body);
