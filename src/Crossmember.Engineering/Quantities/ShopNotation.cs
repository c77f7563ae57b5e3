namespace Crossmember.Engineering.Quantities;

/// <summary>What a person typed, understood: the number in SI, the unit it was meant in, the text kept for display.</summary>
public sealed record Quantity(double Si, Unit Unit, string Typed);

/// <summary>Either what was understood, or what was not and what would do instead.</summary>
public readonly record struct Parsed<T>(T? Value, string? Wrong, string? WouldBeRight)
    where T : class
{
    public bool Ok => Value is not null;
}
