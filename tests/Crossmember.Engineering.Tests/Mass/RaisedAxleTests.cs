using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Mass;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Mass;

public class RaisedAxleTests
{
    // Derived: 2150 kg, wheelbase 2.560 m, wheel centers 0.400 m, rear lifted 0.600 m, front 1065.01 -> 1129.80 kg: 0.720 m.
    [Fact]
    public void Lifting_the_rear_by_two_feet_tells_the_height()
    {
        var r = Weighed(2150, 1065.01, 1129.80, 0.6);
        r.Gives("height", 0.720, 0.0005);
        Assert.Equal("pass", r.Verdict("readings"));
        Assert.Equal("pass", r.Verdict("lift"));
    }

    // Derived: readings rounded to 1065 and 1130 kg give 0.7210 m; 4.94 mm of height for every kilogram.
    [Fact]
    public void Readings_rounded_to_a_kilogram_move_it_by_a_millimetre()
    {
        Weighed(2150, 1065, 1130, 0.6).Gives("height", 0.7210, 0.0003);
        Assert.Equal(4.94, 1000 * new RaisedAxle(2.56, 2150, 1065, 1130, 0.6, 0.4, 0.4).Sensitivity, 0.005);
    }

    // Second method: a vehicle of three point masses turned about its front wheel centers, loads by moments about the contact under the rear hub.
    [Fact]
    public void A_vehicle_of_point_masses_turned_on_its_front_wheels_gives_its_height_back() =>
        Gen.Select(Gen.Double[300, 1500].Array[3], Gen.Double[-0.5, 3.5].Array[3], Gen.Double[0.3, 1.6].Array[3], Gen.Double[0.4, 1.2]).Sample((m, x, z, lift) =>
        {
            const double L = 2.56, r = 0.4;
            double all = m.Sum(), high = m.Zip(z, (kg, h) => kg * h).Sum() / all, behind = m.Zip(x, (kg, a) => kg * a).Sum() / all;
            if (behind < 0.3 || behind > 2.2) return;
            double level = all * (L - behind) / L, th = Math.Asin(lift / L), moment = 0;
            for (var i = 0; i < 3; i++) moment += m[i] * ((L * Math.Cos(th)) - ((x[i] * Math.Cos(th)) - ((z[i] - r) * Math.Sin(th))));
            var raised = moment / (L * Math.Cos(th));
            if (raised >= all) return;
            Assert.Equal(high, new RaisedAxle(L, all, level, raised, lift, r, r).Height, 1e-9);
        }, iter: 300);

    // Lifting the other end is the same act seen from the other side.
    [Fact]
    public void Lifting_the_front_gives_the_same_height_as_lifting_the_rear() =>
        Gen.Select(Gen.Double[0.4, 0.6], Gen.Double[0.5, 1.0], Gen.Double[0.4, 1]).Sample((share, h, lift) =>
        {
            const double L = 2.5, W = 2000, r = 0.38;
            var tan = lift / Math.Sqrt((L * L) - (lift * lift));
            var gain = W * tan * (h - r) / L;
            Assert.Equal(new RaisedAxle(L, W, W * share, (W * share) + gain, lift, r, r).Height, new RaisedAxle(L, W, W * (1 - share), (W * (1 - share)) + gain, lift, r, r).Height, 1e-9);
        });

    // Monte Carlo against the stepped uncertainty: readings and tape drawn from normal distributions.
    [Fact]
    public void The_error_band_is_the_spread_of_repeated_weighings()
    {
        var exact = new RaisedAxle(2.56, 2150, 1065, 1129.8, 0.6, 0.4, 0.4);
        var random = new Random(7);
        double Normal(double sigma) => sigma * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        const double kg = 2, t = RaisedAxle.Tape;
        var heights = Enumerable.Range(0, 40000).Select(_ =>
        {
            double front = Normal(kg), rear = Normal(kg);
            return (exact with
            {
                Level = exact.Level + front,
                Mass = exact.Mass + front + rear,
                Raised = exact.Raised + Normal(kg),
                Raise = exact.Raise + Normal(t),
                RadiusDown = 0.4 + Normal(t),
                RadiusUp = 0.4 + Normal(t),
                Wheelbase = 2.56 + Normal(t),
            }).Height;
        }).ToList();
        var mean = heights.Average();
        Assert.Equal(Math.Sqrt(heights.Average(h => (h - mean) * (h - mean))), exact.Spread(kg), 0.02 * exact.Spread(kg));
    }

    [Theory]
    [InlineData(2150, 2150, 2200, 0.6, "whole vehicle")]
    [InlineData(2150, 1065, 2150, 0.6, "raised reading")]
    [InlineData(2150, 1065, 1130, 2.6, "wheelbase")]
    [InlineData(2150, 1065, 900, 0.6, "underground")]
    public void Readings_that_cannot_be_give_no_height_and_name_the_reading(double mass, double level, double raised, double lift, string named)
    {
        var r = Weighed(mass, level, raised, lift);
        Assert.Null(r.Number("height"));
        Assert.Equal("fail", r.Verdict("readings"));
        Assert.Contains(named, r.Finding("readings")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_low_lift_is_a_caution() => Assert.Equal("caution", Weighed(2150, 1065, 1090, 0.25).Verdict("lift"));

    private static JsonObject Weighed(double mass, double level, double raised, double lift) => Door.Run("mass.center-of-gravity-height", string.Create(CultureInfo.InvariantCulture,
        $$"""{"wheelbase":"2560 mm","mass":"{{mass}} kg","frontLevel":"{{level}} kg","frontRaised":"{{raised}} kg","raise":"{{lift}} m","wheelRadiusFront":"400 mm","wheelRadiusRear":"400 mm"}"""));
}
