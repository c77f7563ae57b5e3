using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Slots;

/// <summary>Where a fact is from; a smaller number is stronger.</summary>
public enum Basis { Measured, Published, Vendor, Assumed }

/// <summary>A value somebody stated: in SI, as typed, where from, how sure.</summary>
/// <param name="Value">Absent where the statement is "no value" (null hides what <c>like</c> would bring).</param>
/// <param name="Typed">The text as typed, for display and for the file.</param>
/// <param name="PlusMinus">One standard uncertainty in SI; null where nobody said.</param>
public sealed record Stated(Value Value, string Typed, Basis Basis, double? PlusMinus);
