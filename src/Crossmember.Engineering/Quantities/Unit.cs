namespace Crossmember.Engineering.Quantities;

/// <summary>One of our own stable unit codes. SI = number x factor + offset (the offset is for temperatures only).</summary>
public sealed record Unit(string Code, Dimension Dimension, double Factor, double Offset = 0)
{
    public double ToSi(double number) => (number * Factor) + Offset;

    public double FromSi(double si) => (si - Offset) / Factor;

    public override string ToString() => Code;
}
