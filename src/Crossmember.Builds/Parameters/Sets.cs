using System.Collections.Immutable;

namespace Crossmember.Builds.Parameters;

/// <summary>The sets over which keys and calculations run.</summary>
public sealed record Sets(ImmutableSortedDictionary<string, ImmutableArray<string>> Ordered)
{
    /// <summary>Sets that are ordered lists of the build.</summary>
    public static ImmutableArray<string> Closed { get; } = ["axle", "side", "gear", "range", "condition"];

    /// <summary>Sets whose members exist only because something governs them.</summary>
    public static ImmutableArray<string> Open { get; } = ["winch", "circuit", "tank", "part", "leaf", "coil", "torsion"];

    /// <summary>Sets whose members exist while something governs them, or all where nothing does.</summary>
    public static bool IsGoverned(string set) => set is "gear" or "range";

    public static bool IsKnown(string set) => Closed.Contains(set) || Open.Contains(set);

    public static Sets Usual { get; } = new(ImmutableSortedDictionary.CreateRange(StringComparer.Ordinal,
        [KeyValuePair.Create("axle", ImmutableArray.Create("front", "rear")), KeyValuePair.Create("side", ImmutableArray.Create("left", "right"))]));

    public ImmutableArray<string> Of(string set) => Ordered.GetValueOrDefault(set, []);

    /// <summary>Whether a text may be a member's name.</summary>
    public static bool IsMemberName(string text) => text.Length > 0 && text.All(c => c is (>= 'a' and <= 'z') or (>= '0' and <= '9') or '-');

    public bool Equals(Sets? other) =>
        other is not null && Ordered.Count == other.Ordered.Count && Ordered.All(p => other.Ordered.TryGetValue(p.Key, out var m) && m.SequenceEqual(p.Value));

    public override int GetHashCode() => Ordered.Aggregate(7, (h, p) => HashCode.Combine(h, p.Key, p.Value.Length));
}
