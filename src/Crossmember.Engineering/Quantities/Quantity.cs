namespace Crossmember.Engineering.Quantities;

/// <summary>What a person typed, understood: the number in SI, the unit it was meant in, the text kept for display.</summary>
public sealed record Quantity(double Si, Unit Unit, string Typed);
