using CsCheck;

namespace Crossmember.Planning.Tests;

/// <summary>One figure and how well the job is known, in place of three guesses.</summary>
public sealed class HoursGuessTests
{
    /// <summary>
    /// Means and shares from the inverse normal of another program, Python 3 with its own library:
    /// <code>d = statistics.NormalDist(math.log(m), math.log(f)); math.exp(d.mean + d.variance / 2); math.exp(d.inv_cdf(.1)); math.exp(d.inv_cdf(.9))</code>
    /// </summary>
    public static TheoryData<Certainty, double, double, double> Independent => new()
    {
        { Certainty.DoneIt, 12.117775, 10.03215, 14.35386 },
        { Certainty.SeenIt, 12.552728, 8.16868, 17.62831 },
        { Certainty.Guess, 14.262778, 5.64984, 25.48743 },
    };

    [Theory]
    [MemberData(nameof(Independent))]
    public void Mean_and_tenths_are_those_of_another_program(Certainty certainty, double mean, double p10, double p90)
    {
        var said = new HoursGuess(12, certainty);
        Assert.Equal(mean, said.Mean, 5e-7);
        Assert.Equal(0.1, ShareBelow(said, p10), 2e-6);
        Assert.Equal(0.9, ShareBelow(said, p90), 2e-6);
    }

    [Theory]
    [InlineData(Certainty.DoneIt)]
    [InlineData(Certainty.SeenIt)]
    [InlineData(Certainty.Guess)]
    public void Half_of_such_jobs_take_less_than_the_figure_and_five_in_six_less_than_told(Certainty certainty)
    {
        var said = new HoursGuess(7.5, certainty);
        Assert.Equal(0.5, ShareBelow(said, said.Figure), 1e-9);
        // One standard deviation of the normal: 0.841345, from memory of every table of it; 5/6 is 0.8333.
        Assert.Equal(0.841345, ShareBelow(said, said.FiveInSix), 1e-6);
        Assert.InRange(ShareBelow(said, said.FiveInSix), 0.82, 0.85);
    }

    [Fact]
    public void The_less_is_known_the_more_it_counts() => Gen.Double[0.1, 1000].Sample(figure =>
    {
        var means = HoursGuess.Certainties.Select(c => new HoursGuess(figure, c).Mean).ToList();
        var worst = HoursGuess.Certainties.Select(c => new HoursGuess(figure, c).FiveInSix).ToList();
        Assert.True(figure < means[0] && means[0] < means[1] && means[1] < means[2]);
        Assert.True(worst[0] < worst[1] && worst[1] < worst[2]);
    });

    [Fact]
    public void A_distribution_gives_the_words_back() => Gen.Select(Gen.Double[0.1, 1000], Gen.Enum<Certainty>()).Sample((figure, certainty) =>
        Assert.Equal(new HoursGuess(figure, certainty), HoursGuess.From(new HoursGuess(figure, certainty).Distribution)));

    public static TheoryData<Distribution> OtherWays => [new Distribution.Fixed(12), new Distribution.Pert(8, 12, 20), new Distribution.Lognormal(12, 1.6)];

    [Theory]
    [MemberData(nameof(OtherWays))]
    public void What_was_said_in_another_way_has_no_such_words(Distribution said) => Assert.Null(HoursGuess.From(said));

    [Fact]
    public void Nothing_said_has_no_such_words() => Assert.Null(HoursGuess.From(null));

    /// <summary>A second method: the normal density of ln(hours), summed by Simpson's rule from ten standard deviations below.</summary>
    private static double ShareBelow(HoursGuess said, double hours)
    {
        const int Steps = 4000;
        double sigma = Math.Log(HoursGuess.Factor(said.Certainty)), top = (Math.Log(hours) - Math.Log(said.Figure)) / sigma, width = (top + 10) / Steps, sum = 0;
        for (var i = 0; i <= Steps; i++)
        {
            var z = -10 + (i * width);
            sum += Math.Exp(-z * z / 2) * (i is 0 or Steps ? 1 : i % 2 == 1 ? 4 : 2);
        }
        return sum * width / 3 / Math.Sqrt(2 * Math.PI);
    }
}
