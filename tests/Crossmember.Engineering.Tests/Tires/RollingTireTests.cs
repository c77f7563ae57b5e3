using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Tires;

public class RollingTireTests
{
    // 3.05 x 838.2 mm = 2556.5 mm; factor: ETRTO Standards Manual, radial tires at 60 km/h, from memory. Tolerances: half of the last decimal, 0.1 rev/km.
    [Fact]
    public void A_loaded_radial_rolls_on_the_conventional_circumference()
    {
        var r = Door.Run("tires.rolling", """{"diameter":"33 in"}""");
        r.Gives("rollingRadius", 406.9 / 25.4, 0.05 / 25.4);
        r.Gives("revolutionsPerMile", 629.5, 0.05);
        r.Gives("revolutionsPerKilometer", 391.2, 0.1);
        Assert.Null(r.Number("loadedRadius"));
        Assert.Contains(r["missing"]!.AsArray(), m => m!["input"]!.GetValue<string>() == "loadedRadius" && m["measure"]!.GetValue<string>().Contains("center of the hub"));
    }

    // Independent: revolutions are inches of a mile over inches of a turn, and 5280 ft of them are 1.609344 km of them. Nominal circle: pi / 3.05 = 1.030 more.
    [Fact]
    public void Revolutions_and_circumference_make_a_mile_and_the_nominal_circle_makes_three_per_cent_more() =>
        Gen.Double[20, 60].Sample(D =>
        {
            var r = Door.Run("tires.rolling", $$"""{"diameter":"{{D:R}} in"}""");
            double N = r.Number("revolutionsPerMile")!.Value, C = r.Number("rollingCircumference")!.Value;
            Assert.Equal(63360, N * C, 1e-9 * 63360);
            Assert.Equal(1.609344 * r.Number("revolutionsPerKilometer")!.Value, N, 1e-9 * N);
            Assert.Equal(1.030, N * D * Math.PI / 63360, 0.0005);
            Assert.True(r.Number("rollingRadius") < D / 2);
        }, iter: 50);

    [Theory]
    [InlineData("100 in", "pass")]
    [InlineData("103.6 in", "pass")]
    [InlineData("103.7 in", "caution")] // more than 33 pi = 103.673 in: farther than the free circle, which no rolling tire goes
    [InlineData("97.4 in", "pass")]
    [InlineData("97.3 in", "caution")] // less than 2.95 x 33 = 97.35 in: common practice, no source
    public void A_measured_circumference_replaces_the_rule_and_is_held_against_the_diameter(string measured, string verdict)
    {
        var r = Door.Run("tires.rolling", $$"""{"diameter":"33 in","measuredCircumference":"{{measured}}"}""");
        r.Gives("rollingCircumference", double.Parse(measured.Split(' ')[0], System.Globalization.CultureInfo.InvariantCulture), 1e-9);
        Assert.Equal(verdict, r.Verdict("circumference"));
    }

    // Loaded radius < rolling radius < free radius holds for every tire; 16.02 in is the rolling radius of 33 in.
    [Theory]
    [InlineData("15-1/2 in", "pass")]
    [InlineData("16-1/8 in", "caution")]
    public void A_loaded_radius_beyond_the_rolling_radius_is_measured_wrong(string loaded, string verdict)
    {
        var r = Door.Run("tires.rolling", $$"""{"diameter":"33 in","loadedRadius":"{{loaded}}"}""");
        Assert.Equal(verdict, r.Verdict("loaded-radius"));
        Assert.Equal("unknown", r.Verdict("circumference"));
    }

    // Derived: 2556.51 / (2 pi) = 406.88 mm, whichever side has it.
    [Theory]
    [InlineData("2556.51 mm", "2500 mm")]
    [InlineData("2500 mm", "2556.51 mm")]
    public void The_larger_tire_of_an_axle_counts(string left, string right) =>
        Door.Run("tires.axle-rolling-radius", $$"""{"circumferences":{"left":"{{left}}","right":"{{right}}"} }""").Gives("rollingRadius", 406.88 / 25.4, 0.005 / 25.4);

    [Fact]
    public void An_axle_of_equal_tires_has_the_rolling_radius_of_one() =>
        Gen.Double[20, 60].Sample(D =>
        {
            var one = Door.Run("tires.rolling", $$"""{"diameter":"{{D:R}} in"}""");
            var C = one.Number("rollingCircumference")!.Value;
            Door.Run("tires.axle-rolling-radius", $$"""{"circumferences":{"left":"{{C:R}} in","right":"{{C:R}} in"} }""")
                .Gives("rollingRadius", one.Number("rollingRadius")!.Value, 1e-9 * D);
        }, iter: 30);
}
