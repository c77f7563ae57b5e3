namespace Crossmember.Builds.Evaluation;

/// <summary>A mass with its first moments, kg and kg m; NaN where unknown.</summary>
internal struct Moments(double mass, double x, double y, double z)
{
    public double Mass = mass, X = x, Y = y, Z = z;

    public static Moments Unknown { get; } = new(double.NaN, double.NaN, double.NaN, double.NaN);

    public void Add(LedgerEntry entry)
    {
        Mass += entry.Kilograms;
        X += entry.MomentX;
        Y += entry.MomentY;
        Z += entry.MomentZ;
    }
}
