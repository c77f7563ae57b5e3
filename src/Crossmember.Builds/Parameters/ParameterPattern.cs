using System.Collections.Immutable;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Builds.Parameters;

/// <summary>How several statements of one key come together.</summary>
public enum Merge { One, Sum }

/// <summary>A declared family of keys, such as <c>axle.{axle}.ratio</c>.</summary>
public sealed record ParameterPattern
{
    public ParameterPattern(string text) => (Text, Segments) = (text, [.. text.Split('.')]);

    public string Text { get; }

    public ImmutableArray<string> Segments { get; }

    public required Form Form { get; init; }

    /// <summary>Null for texts; for curves that of x.</summary>
    public Dimension? Dimension { get; init; }

    /// <summary>The canonical unit, in which it is stored and told; null for texts.</summary>
    public Unit? Unit { get; init; }

    public Unit? CurveUnit { get; init; }

    public Merge Merge { get; init; }

    /// <summary>In SI; assumed where nothing says otherwise.</summary>
    public double? Default { get; init; }

    /// <summary>In the canonical unit; at or below it the value is outside its definition.</summary>
    public double? MoreThan { get; init; }

    /// <summary>Likewise, with the edge itself allowed: a gap may be nothing, but not less.</summary>
    public double? AtLeast { get; init; }

    public string Page { get; init; } = "";

    public string Meaning { get; init; } = "";

    /// <summary>The quickest way to settle it.</summary>
    public string Measure { get; init; } = "";

    /// <summary>The sets in braces, in order.</summary>
    public ImmutableArray<string> Sets => [.. Segments.Where(s => s[0] == '{').Select(s => s[1..^1])];

    /// <summary>Published by the ledger, never stated.</summary>
    public bool IsLedger => Segments[0] == "weighing" || (Segments[0] == "mass" && Segments[^1] is ("total" or "moment-x" or "moment-y" or "moment-z"));

    /// <summary>Whether a key (stars allowed) belongs to this family by its literal words.</summary>
    public bool Fits(ReadOnlySpan<string> key)
    {
        if (key.Length != Segments.Length) return false;
        for (var i = 0; i < key.Length; i++)
            if (Segments[i][0] == '{' ? key[i] != "*" && !Parameters.Sets.IsMemberName(key[i]) : Segments[i] != key[i])
                return false;
        return true;
    }

    /// <summary>The value in the canonical unit.</summary>
    public double Told(double si) => Unit!.FromSi(si);

    public override string ToString() => Text;
}
