namespace Crossmember.Engineering.Calculations;

/// <summary>A curve of measured or published points, both axes in SI, x rising.</summary>
public sealed class Curve(IEnumerable<(double X, double Y)> points) : IEquatable<Curve>
{
    public IReadOnlyList<(double X, double Y)> Points { get; } = [.. points];

    /// <summary>Why these points make no curve, or null.</summary>
    public string? Outside()
    {
        if (Points.Count < 2) return "needs two points or more";
        if (Points.Any(p => !double.IsFinite(p.X) || !double.IsFinite(p.Y))) return "has a point that is no finite number";
        return Points.Zip(Points.Skip(1)).Any(p => p.Second.X <= p.First.X) ? "must rise along its first axis from point to point" : null;
    }

    /// <summary>Straight lines between the points; null outside them, since a curve is not known beyond what was measured.</summary>
    public double? At(double x)
    {
        for (var i = 1; i < Points.Count; i++)
        {
            var (x0, y0) = Points[i - 1];
            var (x1, y1) = Points[i];
            if (x >= x0 && x <= x1) return y0 + ((y1 - y0) * (x - x0) / (x1 - x0));
        }
        return null;
    }

    public bool Equals(Curve? other) => other is not null && Points.SequenceEqual(other.Points);

    public override bool Equals(object? obj) => Equals(obj as Curve);

    public override int GetHashCode() => Points.Aggregate(17, HashCode.Combine);
}
