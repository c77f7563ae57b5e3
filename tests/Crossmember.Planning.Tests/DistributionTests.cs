using CsCheck;

namespace Crossmember.Planning.Tests;

public sealed class DistributionTests
{
    public static TheoryData<Distribution, double> Means => new()
    {
        { new Distribution.Fixed(7), 7 },
        { new Distribution.Uniform(10, 20), 15 },
        { new Distribution.Triangular(4, 6, 8), 6 },
        { new Distribution.Triangular(24, 48, 120), 64 },
        // (a + 4 m + b) / 6: Malcolm, Roseboom, Clark and Fazar, Operations Research 7 (1959), from memory.
        { new Distribution.Pert(2, 3, 5), 19.0 / 6 },
        // exp(mu + sigma^2 / 2) with mu = ln 12, sigma = ln 1.6: derived, to six figures.
        { new Distribution.Lognormal(12, 1.6), 13.40139 },
    };

    [Theory]
    [MemberData(nameof(Means))]
    public void Means_are_those_of_the_book(Distribution distribution, double mean) => Assert.Equal(mean, distribution.Mean, mean * 1e-5);

    [Fact]
    public void The_mean_lies_between_the_ends() =>
        Gen.Double[0, 100].Array[3].Sample(ends =>
        {
            Array.Sort(ends);
            Distribution[] all = [new Distribution.Uniform(ends[0], ends[2]), new Distribution.Triangular(ends[0], ends[1], ends[2]), new Distribution.Pert(ends[0], ends[1], ends[2])];
            Assert.All(all, d => Assert.InRange(d.Mean, ends[0] - 1e-9, ends[2] + 1e-9));
        });

    /// <summary>A second method: the mean of the lognormal by summing its quantiles.</summary>
    [Fact]
    public void The_lognormal_mean_is_the_average_over_its_quantiles()
    {
        const double Median = 12, Factor = 1.6;
        double sigma = Math.Log(Factor), sum = 0, weight = 0;
        for (var z = -10.0; z <= 10; z += 0.001)
        {
            var density = Math.Exp(-z * z / 2);
            sum += density * Median * Math.Exp(sigma * z);
            weight += density;
        }
        Assert.Equal(sum / weight, new Distribution.Lognormal(Median, Factor).Mean, 1e-6);
    }

    [Fact]
    public void A_lognormal_without_spread_is_its_median() => Assert.Equal(8, new Distribution.Lognormal(8, 1).Mean);

    [Theory]
    [InlineData("fixed")]
    [InlineData("pert")]
    public void Kinds_are_named_as_in_the_files(string kind) =>
        Assert.Equal(kind, (kind == "fixed" ? new Distribution.Fixed(1) : (Distribution)new Distribution.Pert(1, 2, 3)).Kind);
}
