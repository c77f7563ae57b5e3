namespace Crossmember.Engineering.Tests.Springs;

/// <summary>A leaf spring as a circular arc of fixed length between a fixed eye and a shackle, moved step by step: no small angles, no flat arch.</summary>
/// <param name="k">Bending stiffness of the arch, N/m of its height.</param>
/// <param name="S">Length of the arc, m.</param>
/// <param name="free">Height of the unloaded arch, m.</param>
/// <param name="s">Shackle, m.</param>
/// <param name="lean">Lean of the shackle at the height <paramref name="level"/>, rad; positive with its lower end away from the axle.</param>
/// <param name="level">Height of the arch at which both eyes are level, m.</param>
internal sealed class HungArch(double k, double S, double free, double s, double lean, double level)
{
    /// <summary>Load carried with the arch at a height, by the work of a small movement.</summary>
    public double Load(double p)
    {
        const double step = 1e-6;
        var rise = (Seat(p - step) - Seat(p + step)) / (2 * step);
        return k * (free - p) / rise;
    }

    /// <summary>Rate of the seat against the frame, N/m.</summary>
    public double Rate(double p)
    {
        const double step = 1e-5;
        return (Load(p - step) - Load(p + step)) / (Seat(p - step) - Seat(p + step));
    }

    /// <summary>Height of the seat against the fixed eye.</summary>
    private double Seat(double p)
    {
        double c = Chord(p), pivotX = Chord(level) - (s * Math.Sin(lean)), pivotY = s * Math.Cos(lean);
        // The moving eye lies c from the fixed one and s from the shackle's pivot: the crossing below the pivot.
        double d2 = (pivotX * pivotX) + (pivotY * pivotY), along = (d2 + (c * c) - (s * s)) / (2 * d2), off = Math.Sqrt(Math.Max(0, (c * c / d2) - (along * along)));
        double x = (along * pivotX) + (off * pivotY), y = (along * pivotY) - (off * pivotX);
        return (y / 2) - (p * x / c);
    }

    private double Chord(double p)
    {
        if (Math.Abs(p) < 1e-12) return S;
        double low = 0, high = 1.5; // half angle of the arc
        for (var i = 0; i < 80; i++)
        {
            var mid = (low + high) / 2;
            (low, high) = S * (1 - Math.Cos(mid)) / (2 * mid) < Math.Abs(p) ? (mid, high) : (low, mid);
        }
        return S * Math.Sin(low) / low;
    }
}
