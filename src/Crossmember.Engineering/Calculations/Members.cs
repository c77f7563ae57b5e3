namespace Crossmember.Engineering.Calculations;

/// <summary>The values of a starred input: one per existing member, in the order of the build's sets.</summary>
public sealed class Members(IEnumerable<(string Name, Value Value)> items) : IEquatable<Members>
{
    public IReadOnlyList<(string Name, Value Value)> Items { get; } = [.. items];

    /// <summary>Whether every member has a value; where one lacks, the whole input is missing.</summary>
    public bool Complete => Items.Count > 0 && Items.All(i => !i.Value.IsAbsent);

    public bool Equals(Members? other) => other is not null && Items.SequenceEqual(other.Items);

    public override bool Equals(object? obj) => Equals(obj as Members);

    public override int GetHashCode() => Items.Aggregate(19, HashCode.Combine);
}

/// <summary>The same at a calculation's door, with public quantities.</summary>
public sealed class Members<T>(IEnumerable<(string Name, T Value)> items)
{
    public IReadOnlyList<(string Name, T Value)> Items { get; } = [.. items];
}
