using System.Collections.Immutable;

namespace Crossmember.Builds.Slots;

/// <summary>A place in the vehicle's tree that something can be chosen for. Screens call it an item.</summary>
public sealed record Slot
{
    public const string Root = "vehicle";

    /// <summary>Lower-kebab path; never changed or reused.</summary>
    public required string Id { get; init; }

    /// <summary>Null for the root only.</summary>
    public string? Parent { get; init; }

    public required string Title { get; init; }

    /// <summary>Weight in the originality of the whole.</summary>
    public double Weight { get; init; } = 1;

    public ImmutableArray<Membership> Governs { get; init; } = [];

    public string? Grade { get; init; }

    public ImmutableArray<string> Findings { get; init; } = [];

    /// <summary>By id, in the order stated; <c>as-found</c> is always there, <c>none</c> is understood.</summary>
    public ImmutableArray<Option> Options { get; init; } = [new() { Id = Option.AsFound }];

    /// <summary>Values noted on options later: they lie above the body and survive a new body. In the order noted.</summary>
    public ImmutableArray<NotedValue> Noted { get; init; } = [];

    public Option? Find(string option) => option == Option.None ? s_none : Options.FirstOrDefault(o => o.Id == option);

    private static readonly Option s_none = new() { Id = Option.None, Title = "leave off", Class = OptionClass.None, Masses = [], Originality = 0, Governs = [] };
}

/// <summary>A value noted on an option after its body was written.</summary>
public sealed record NotedValue(string Option, string Pattern, Stated Stated);
