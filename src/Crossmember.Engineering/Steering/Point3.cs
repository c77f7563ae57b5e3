using Crossmember.Engineering.Quantities;

namespace Crossmember.Engineering.Steering;

/// <summary>A point or vector of the vehicle: x to the rear, y to the right, z up, in m.</summary>
internal readonly record struct Point3(double X, double Y, double Z)
{
    public double Length => Math.Sqrt(Dot(this));

    public static Point3 operator +(Point3 a, Point3 b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static Point3 operator -(Point3 a, Point3 b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static Point3 operator *(double k, Point3 a) => new(k * a.X, k * a.Y, k * a.Z);

    public double Dot(Point3 b) => (X * b.X) + (Y * b.Y) + (Z * b.Z);

    /// <summary>In mm, as working shows it.</summary>
    public override string ToString() => $"({Figures.Short(1000 * X)}, {Figures.Short(1000 * Y)}, {Figures.Short(1000 * Z)})";

    public Point3 Cross(Point3 b) => new((Y * b.Z) - (Z * b.Y), (Z * b.X) - (X * b.Z), (X * b.Y) - (Y * b.X));
}
