namespace Crossmember.Builds.Evaluation;

/// <summary>How uncertain mass and moments are together: one part off by a kilogram is off in the sum and in every moment at once.</summary>
/// <remarks>
/// Covariance of (M, Mx, My, Mz) from independent errors of every entry's mass and of each of its coordinates, first order, as its lower triangular
/// root (JCGM 102:2011, 6.2 for the covariance of a linear model; Cholesky). Each column of the root is one error that moves all four at once.
/// </remarks>
internal sealed class MomentErrors
{
    private const int Size = 4;
    private readonly double[,] _root = new double[Size, Size];
    private readonly double[] _variances = new double[Size];

    /// <param name="known">Which of the four are known at all.</param>
    /// <param name="height">One standard uncertainty of the height that the readings share, m, and the mass read.</param>
    public MomentErrors(IEnumerable<LedgerEntry> entries, bool[] known, (double Error, double Mass) height)
    {
        var c = new double[Size, Size];
        foreach (var e in entries)
        {
            double[] by = [1, e.X, e.Y, e.Z];
            var variance = e.MassError * e.MassError;
            for (var i = 0; i < Size; i++)
                for (var j = 0; j < Size; j++)
                    if (known[i] && known[j])
                        c[i, j] += variance * by[i] * by[j];
            var place = e.Kilograms * e.PlaceError;
            for (var i = 1; i < Size; i++)
                if (known[i]) c[i, i] += place * place;
        }
        if (known[^1]) c[3, 3] += Math.Pow(height.Error * height.Mass, 2);
        for (var i = 0; i < Size; i++) _variances[i] = c[i, i];
        Factor(c);
    }

    /// <summary>One standard uncertainty of mass (0) or of a moment (1 x, 2 y, 3 z).</summary>
    public double Of(int which) => Math.Sqrt(_variances[which]);

    /// <summary>What one independent error, a column of the root, moves.</summary>
    public double Of(int which, int error) => _root[which, error];

    public static int Count => Size;

    private void Factor(double[,] c)
    {
        for (var j = 0; j < Size; j++)
        {
            var rest = c[j, j];
            for (var k = 0; k < j; k++) rest -= _root[j, k] * _root[j, k];
            // What is left of an exact sum is rounding: an error that follows wholly from the others has no column of its own.
            if (rest <= 1e-12 * c[j, j]) continue;
            _root[j, j] = Math.Sqrt(rest);
            for (var i = j + 1; i < Size; i++)
            {
                var sum = c[i, j];
                for (var k = 0; k < j; k++) sum -= _root[i, k] * _root[j, k];
                _root[i, j] = sum / _root[j, j];
            }
        }
    }
}
