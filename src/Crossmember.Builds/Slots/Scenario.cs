using System.Collections.Immutable;

namespace Crossmember.Builds.Slots;

/// <summary>A set of choices over a base. Screens call it a what-if.</summary>
/// <param name="Base">A scenario, or null: everything as found.</param>
/// <param name="WhatIf">By key; null drops what the base tried.</param>
public sealed record Scenario(
    string Id, string? Title, string? Base, ImmutableSortedDictionary<string, string> Choices, ImmutableArray<KeyValuePair<string, Stated?>> WhatIf);

/// <summary>Who and what is on board.</summary>
public sealed record Condition(string Id, ImmutableArray<MassItem> Items);

/// <summary>The customer's yes.</summary>
public sealed record Approval(
    string Scenario, ImmutableSortedDictionary<string, string> Choices, long BuildPosition, long ShopPosition,
    ImmutableSortedDictionary<string, int> Methods, string Shown, string By, string? How = null);
