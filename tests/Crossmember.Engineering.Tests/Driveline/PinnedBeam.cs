namespace Crossmember.Engineering.Tests.Driveline;

/// <summary>The lowest bending vibration of a uniform beam on pinned ends by finite elements: a second way to a critical speed.</summary>
/// <remarks>Euler-Bernoulli element with cubic shape functions and consistent mass, as in any text on finite elements (from memory).</remarks>
internal static class PinnedBeam
{
    /// <summary>Angular frequency, rad/s, for length in m, bending stiffness EI in N m2 and mass per length in kg/m.</summary>
    public static double LowestFrequency(int elements, double length, double stiffness, double massPerLength)
    {
        var l = length / elements;
        double[,] k = { { 12, 6 * l, -12, 6 * l }, { 6 * l, 4 * l * l, -6 * l, 2 * l * l }, { -12, -6 * l, 12, -6 * l }, { 6 * l, 2 * l * l, -6 * l, 4 * l * l } };
        double[,] m = { { 156, 22 * l, 54, -13 * l }, { 22 * l, 4 * l * l, 13 * l, -3 * l * l }, { 54, 13 * l, 156, -22 * l }, { -13 * l, -3 * l * l, -22 * l, 4 * l * l } };
        var K = Assembled(elements, k, stiffness / (l * l * l));
        var M = Assembled(elements, m, massPerLength * l / 420);
        var x = Enumerable.Range(0, 2 * elements).Select(i => 1.0 + (0.1 * i)).ToArray();
        var lowest = 0.0;
        for (var i = 0; i < 40; i++)
        {
            var right = Times(M, x);
            var next = Solved(K, right);
            lowest = Dot(next, right) / Dot(next, Times(M, next)); // Rayleigh quotient
            var size = Math.Sqrt(Dot(next, Times(M, next)));
            x = [.. next.Select(v => v / size)];
        }
        return Math.Sqrt(lowest);
    }

    /// <summary>Deflection and slope at every node, the two end deflections left out: they are pinned.</summary>
    private static double[,] Assembled(int elements, double[,] element, double factor)
    {
        var free = Enumerable.Range(0, 2 * (elements + 1)).Where(d => d != 0 && d != 2 * elements).ToList();
        var all = new double[free.Count, free.Count];
        for (var e = 0; e < elements; e++)
            for (var r = 0; r < 4; r++)
                for (var c = 0; c < 4; c++)
                {
                    int row = free.IndexOf((2 * e) + r), column = free.IndexOf((2 * e) + c);
                    if (row >= 0 && column >= 0) all[row, column] += factor * element[r, c];
                }
        return all;
    }

    /// <summary>Gauss elimination; the matrix is positive definite, so no pivot is sought.</summary>
    private static double[] Solved(double[,] matrix, double[] right)
    {
        var n = right.Length;
        var a = (double[,])matrix.Clone();
        var b = (double[])right.Clone();
        for (var p = 0; p < n; p++)
            for (var r = p + 1; r < n; r++)
            {
                var f = a[r, p] / a[p, p];
                for (var c = p; c < n; c++) a[r, c] -= f * a[p, c];
                b[r] -= f * b[p];
            }
        for (var p = n - 1; p >= 0; p--)
        {
            for (var c = p + 1; c < n; c++) b[p] -= a[p, c] * b[c];
            b[p] /= a[p, p];
        }
        return b;
    }

    private static double[] Times(double[,] a, double[] x) => [.. Enumerable.Range(0, x.Length).Select(r => Enumerable.Range(0, x.Length).Sum(c => a[r, c] * x[c]))];

    private static double Dot(double[] a, double[] b) => a.Zip(b).Sum(p => p.First * p.Second);
}
