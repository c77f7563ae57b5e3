using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Ripples;

public enum RowKind { Parameter, Result, Finding, Mass, Load, Cost, Hours, Date, Originality, Task }

/// <summary>What became of it. Flipped and moved are for findings; the rest say whether the thing exists on both sides.</summary>
public enum RowState { Flipped, Moved, Changed, Appeared, Gone }

/// <summary>One side of a row: a number or text in a unit, and the verdict of a finding. A number that is not known is null and <c>unknown</c>.</summary>
public sealed record Side(double? Number, string? Text, string? Unit, Verdict? Verdict);

/// <summary>One thing that a choice changes.</summary>
/// <param name="Because">Differing leaf keys that either side rests on, and <c>slot:ID</c> where that slot's own contribution differs; ordinal.</param>
public sealed record RippleRow(RowKind Kind, string Id, RowState State, Side? From, Side? To, IReadOnlyList<string> Because);
