namespace Crossmember.Engineering.Quantities;

/// <summary>Either what was understood, or what was not and what would do instead.</summary>
public readonly record struct Parsed<T>(T? Value, string? Wrong, string? WouldBeRight)
    where T : class
{
    public bool Ok => Value is not null;

    internal static Parsed<T> Not(string wrong, string wouldBeRight) => new(null, wrong, wouldBeRight);
}
