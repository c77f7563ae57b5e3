using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Stability;

public class StaticFactorTests
{
    // Derived: T 1.47, h 0.72 m -> 1.021, the band of one star; on the risk fits (from memory, 66 FR 3388 and 68 FR 59250) 42.2 % and 39.7 %.
    [Fact]
    public void A_narrow_tall_vehicle_has_one_star()
    {
        var r = Factor(1.47, 1.47, 0.72);
        r.Gives("factor", 1.021, 0.0005);
        r.Gives("stars", 1, 1e-9);
        Assert.Equal("caution", r.Verdict("factor"));
        var risk = Risk(1.47 / 1.44);
        risk.Gives("risk", 42.2, 0.05);
        risk.Gives("laterRisk", 39.7, 0.05);
    }

    // Derived: with bumper, carrier and rack the center of gravity is 749.6 mm high: 0.980.
    [Fact]
    public void Rack_and_carrier_lower_it() => Factor(1.47, 1.47, 0.7496).Gives("factor", 0.980, 0.0006);

    // NHTSA, rollover resistance ratings: less than 10 % five stars, 10 to 20 four, 20 to 30 three, 30 to 40 two, more one. Band edges 1.45, 1.25, 1.13, 1.04 from memory (66 FR 3388).
    [Theory]
    [InlineData(1.46, 5)]
    [InlineData(1.45, 5)]
    [InlineData(1.30, 4)]
    [InlineData(1.25, 4)]
    [InlineData(1.20, 3)]
    [InlineData(1.13, 3)]
    [InlineData(1.08, 2)]
    [InlineData(1.04, 2)]
    [InlineData(1.03, 1)]
    [InlineData(0.96, 1)]
    public void Stars_by_factor_agree_with_the_band_of_the_risk(double factor, int stars)
    {
        Assert.Equal(stars, Factor(2 * factor * 0.7, 2 * factor * 0.7, 0.7).Number("stars")!.Value, 1e-9);
        Assert.Contains($"the band of {stars} of 5", Risk(factor).Finding("band")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // Published by NHTSA: 9.9 % is five stars, 23 % three, 40.9 % one.
    [Theory]
    [InlineData(9.9, 5)]
    [InlineData(23, 3)]
    [InlineData(40.9, 1)]
    public void Published_risks_fall_in_their_published_stars(double risk, int stars) =>
        Assert.Contains($"the band of {stars} of 5", Risk(Math.Log(13.25 / (risk / 100)) / 3.3760).Finding("band")["text"]!.GetValue<string>(), StringComparison.Ordinal);

    [Fact]
    public void Below_what_any_stock_vehicle_had_neither_gives_a_star()
    {
        Assert.Null(Factor(1.4, 1.4, 0.8).Number("stars"));
        Assert.DoesNotContain("star", Risk(0.875).Finding("band")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("caution", Risk(0.875).Verdict("band"));
    }

    [Theory]
    [InlineData(0.90)]
    [InlineData(0.85)]
    public void The_later_fit_has_no_answer_at_or_below_its_asymptote(double factor)
    {
        var r = Risk(factor);
        Assert.Null(r.Number("laterRisk"));
        Assert.Null(r.Number("risk"));
    }

    [Fact]
    public void It_does_not_matter_which_axle_is_the_wide_one() =>
        Gen.Select(Gen.Double[1.2, 1.9], Gen.Double[1.2, 1.9], Gen.Double[0.5, 1.1]).Sample((a, b, h) =>
            Assert.Equal(Factor(a, b, h).Number("factor")!.Value, Factor(b, a, h).Number("factor")!.Value, 1e-12));

    // The static factor is the tangent of the rigid tip angle of a vehicle with its weight in the middle.
    [Fact]
    public void It_is_the_tangent_of_the_tip_angle()
    {
        var angle = Door.Run("stability.side-slope", """{"frontTrack":"1.5 m","rearTrack":"1.5 m","height":"0.8 m"}""").Number("rigid")!.Value;
        Assert.Equal(Factor(1.5, 1.5, 0.8).Number("factor")!.Value, Math.Tan(angle * Math.PI / 180), 1e-9);
    }

    private static JsonObject Factor(double front, double rear, double h) => Door.Run("stability.static-factor", string.Create(CultureInfo.InvariantCulture,
        $$"""{"frontTrack":"{{front:R}} m","rearTrack":"{{rear:R}} m","height":"{{h:R}} m"}"""));

    private static JsonObject Risk(double factor) => Door.Run("stability.rollover-risk", string.Create(CultureInfo.InvariantCulture, $$"""{"factor":{{factor:R}}}"""));
}
