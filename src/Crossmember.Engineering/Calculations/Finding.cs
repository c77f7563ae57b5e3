namespace Crossmember.Engineering.Calculations;

/// <summary>What a check said. Worst first: fail, unknown, caution, pass.</summary>
public enum Verdict { Pass, Caution, Unknown, Fail }

/// <summary>Which side of the limit is safe.</summary>
public enum Sense { AtMost, AtLeast }

/// <summary>A check's answer: the verdict in a plain sentence, with the value and limit in the unit it is told in.</summary>
/// <param name="Check">The check's id within its calculation.</param>
/// <param name="Unit">Code of the unit of value and limit; null where there is no number.</param>
public sealed record Finding(string Check, Verdict Verdict, string Text, double? Value, double? Limit, string? Unit, Sense? Sense, string? Source)
{
    /// <summary>The numbers of the sentence before they were rounded for it.</summary>
    public IEnumerable<(double? Value, string? Unit)> Exact => [(Value, Unit), (Limit, Unit)];

    /// <summary>Distance to the limit as a share of it, positive is safe; null where the limit is absent or zero.</summary>
    public double? Margin =>
        Value is not { } v || Limit is not { } l || l == 0 || Sense is not { } s ? null
        : s == Calculations.Sense.AtMost ? (l - v) / Math.Abs(l) : (v - l) / Math.Abs(l);
}
