namespace Crossmember.Engineering.Brakes;

/// <summary>The least of a curve with one valley, by cutting the stretch it lies in.</summary>
/// <remarks>
/// Formula:  each step keeps 0.618 of the stretch and one of its two inner points; after n steps it is 0.618^n as long
/// Valid:    one valley; else it finds one of them
/// Source:   Kiefer, Proc. Amer. Math. Soc. 4 (1953), from memory
/// </remarks>
public static class GoldenSection
{
    private const double Share = 0.6180339887498949; // (sqrt 5 - 1) / 2

    public interface ICurve
    {
        double At(double x);
    }

    /// <returns>The better of the last two inner points, and the curve there.</returns>
    public static (double X, double Y) Least<T>(in T curve, double from, double to, int steps)
        where T : ICurve, allows ref struct
    {
        double a = to - (Share * (to - from)), b = from + (Share * (to - from)), ya = curve.At(a), yb = curve.At(b);
        for (var i = 0; i < steps; i++)
            if (ya <= yb)
            {
                (to, b, yb) = (b, a, ya);
                a = to - (Share * (to - from));
                ya = curve.At(a);
            }
            else
            {
                (from, a, ya) = (a, b, yb);
                b = from + (Share * (to - from));
                yb = curve.At(b);
            }
        return ya <= yb ? (a, ya) : (b, yb);
    }
}
