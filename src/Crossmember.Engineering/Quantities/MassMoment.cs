namespace Crossmember.Engineering.Quantities;

/// <summary>First moment of mass about an axis plane (mass times place), kg m; what a ledger adds up.</summary>
public readonly record struct MassMoment(double KilogramMeters)
{
    public static MassMoment FromKilogramMeters(double value) => new(value);
}
