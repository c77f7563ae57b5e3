namespace Crossmember.Engineering.Tests.Springs;

/// <summary>A leaf spring leaf by leaf: every leaf a cantilever of even section, each pressing the next longer one at its own tip and nowhere else.</summary>
/// <remarks>Forces between leaves from equal sinking where they touch; nothing is smeared over the pack as in the formula under test. SI.</remarks>
internal static class StackedLeaves
{
    /// <summary>Rate at the seat, N/m.</summary>
    public static double Rate(int leaves, int full, double length, double width, double thickness, double modulus)
    {
        double half = length / 2, EI = modulus * width * Math.Pow(thickness, 3) / 12;
        var steps = leaves - full + 1;
        double[] l = [.. Enumerable.Range(1, steps).Select(i => half * i / steps), .. Enumerable.Repeat(half, full - 1)];
        var m = l.Length;
        var forces = Forces(l, EI);
        var tip = Sinking(half, half, EI) - (m > 1 ? forces[^1] * Sinking(half, l[m - 2], EI) : 0); // under 1 N at the eye
        return 2 / tip;
    }

    /// <summary>What each leaf presses on the next longer one with, 1 N at the eye.</summary>
    private static double[] Forces(double[] l, double EI)
    {
        var m = l.Length - 1;
        var a = new double[m, m + 1];
        for (var i = 0; i < m; i++)
        {
            a[i, i] = 2 * Sinking(l[i], l[i], EI);
            if (i > 0) a[i, i - 1] -= Sinking(l[i], l[i - 1], EI);
            if (i + 1 < m) a[i, i + 1] -= Sinking(l[i], l[i + 1], EI);
            else a[i, m] = Sinking(l[i], l[m], EI);
        }
        return Solved(a, m);
    }

    /// <summary>Sinking at x of a cantilever under 1 N at a.</summary>
    private static double Sinking(double x, double a, double EI) => x < a ? x * x * ((3 * a) - x) / (6 * EI) : a * a * ((3 * x) - a) / (6 * EI);

    private static double[] Solved(double[,] a, int n)
    {
        for (var i = 0; i < n; i++)
            for (var r = 0; r < n; r++)
                if (r != i)
                {
                    var f = a[r, i] / a[i, i];
                    for (var c = i; c <= n; c++) a[r, c] -= f * a[i, c];
                }
        return [.. Enumerable.Range(0, n).Select(i => a[i, n] / a[i, i])];
    }
}
