using System.Collections.Immutable;
using Crossmember.Planning;

namespace Crossmember.Builds.Slots;

/// <summary>What is done to the item when the option is chosen.</summary>
public enum OptionClass { Keep, Refurbish, Replace, Upgrade, Make, None }

/// <summary>The body of an option: everything it brings when it is chosen. Null lists and scalars are "not stated", which <c>like</c> may fill.</summary>
public sealed record Option
{
    public const string AsFound = "as-found", None = "none", Approved = "approved";

    public required string Id { get; init; }

    public string? Title { get; init; }

    public OptionClass? Class { get; init; }

    /// <summary>The option of the same item whose body this one starts from; live.</summary>
    public string? Like { get; init; }

    /// <summary>Members of sets that exist because this is chosen; null: as the slot says.</summary>
    public ImmutableArray<Membership>? Governs { get; init; }

    public ImmutableArray<string>? Takes { get; init; }

    public ImmutableArray<string>? Overrides { get; init; }

    /// <summary>By slot; a null list of options drops what <c>like</c> brought.</summary>
    public ImmutableArray<Requirement>? Requires { get; init; }

    /// <summary>By pattern, in the order written.</summary>
    public ImmutableArray<KeyValuePair<string, Stated>> Parameters { get; init; } = [];

    public ImmutableArray<MassItem>? Masses { get; init; }

    /// <summary>"Surely less than this", kg, where nobody weighed it.</summary>
    public double? MassBelow { get; init; }

    public ImmutableArray<LoadItem>? Loads { get; init; }

    public ImmutableArray<PriceLine>? Prices { get; init; }

    public ImmutableArray<HoursLine>? Hours { get; init; }

    /// <summary>Time from order to arrival, as typed.</summary>
    public string? Lead { get; init; }

    /// <summary>0 to 1.</summary>
    public double? Originality { get; init; }

    public ImmutableArray<TaskLine>? Tasks { get; init; }

    public ImmutableArray<string>? Documents { get; init; }

    public ImmutableArray<string>? Fits { get; init; }

    /// <summary>A stock part it was copied from.</summary>
    public string? Stock { get; init; }

    /// <summary>Keys written as null: what <c>like</c> brings under them is taken away.</summary>
    public ImmutableArray<string> Removed { get; init; } = [];
}

/// <summary>A member of a set: <c>gear</c> <c>4</c>; member <c>*</c> is the whole set.</summary>
public readonly record struct Membership(string Set, string Member);

public sealed record Requirement(string Slot, ImmutableArray<string> Options, bool Drop = false);

/// <summary>A place on the vehicle, m; x rear, y right, z up.</summary>
public readonly record struct Place(double X, double Y, double Z);

public sealed record MassItem(string Id, double? Kilograms, Place? At, Basis Basis, bool Drop = false);

/// <summary>An electrical load without its nodes. The rating is in W or A; the rest is kept for the harness.</summary>
public sealed record LoadItem(string Id, double? Rating, string Unit, string Body, bool Drop = false);

public sealed record PriceLine(string Id, string? What, decimal Count, Money? Each, string? Category, string? Quote, string? Until, bool Drop = false);

public sealed record HoursLine(string Trade, Distribution? Hours, ImmutableArray<KeyValuePair<string, double>> Driver, bool Drop = false);

/// <summary>A task of the option. The rest of its record is kept for the plan.</summary>
/// <param name="Duration">Hours.</param>
/// <param name="Links">Its links in words.</param>
public sealed record TaskLine(string Id, double? Duration, string Links, bool Drop = false);
