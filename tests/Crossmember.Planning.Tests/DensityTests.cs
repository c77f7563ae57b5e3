using CsCheck;

namespace Crossmember.Planning.Tests;

/// <summary>A second method for the means of bounded amounts: the sum over the density each one belongs to.</summary>
public sealed class DensityTests
{
    private const int Steps = 200_000;

    /// <summary>The beta density with shapes 1 + 4 (m - a)/(b - a) and 1 + 4 (b - m)/(b - a): what the three-point estimate of 1959 stands for, from memory.</summary>
    [Fact]
    public void The_pert_mean_is_that_of_its_beta_density() =>
        Gen.Select(Gen.Double[0, 10], Gen.Double[0.02, 0.98], Gen.Double[0.5, 40]).Sample(
            (low, share, width) =>
            {
                var mean = MeanOf(x => Math.Pow(x, 4 * share) * Math.Pow(1 - x, 4 * (1 - share)));
                Assert.Equal(low + (mean * width), new Distribution.Pert(low, low + (share * width), low + width).Mean, 1e-5 * (low + width));
            }, iter: 30);

    [Fact]
    public void The_triangular_mean_is_that_of_its_density() =>
        Gen.Double[0.02, 0.98].Sample(mode => Assert.Equal(MeanOf(x => x < mode ? x / mode : (1 - x) / (1 - mode)), new Distribution.Triangular(0, mode, 1).Mean, 1e-6), iter: 30);

    private static double MeanOf(Func<double, double> density)
    {
        double moment = 0, whole = 0;
        for (var i = 0; i < Steps; i++)
        {
            var x = (i + 0.5) / Steps;
            moment += x * density(x);
            whole += density(x);
        }
        return moment / whole;
    }
}
