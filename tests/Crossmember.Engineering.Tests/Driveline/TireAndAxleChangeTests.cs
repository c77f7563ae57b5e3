using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Driveline;

public class TireAndAxleChangeTests
{
    private const string Cut = "\"speedometerTireDiameter\":\"31 in\",\"speedometerAxleRatio\":\"3.73\"";

    // Derived by proportion: 60 x 33/31 x 3.73/4.11 = 57.97 (reads 3.5 % high); tires only 63.87 (reads 6.1 % low). Tolerances: half of the last decimal.
    [Theory]
    [InlineData("4.11", 57.97, 3.5, "pass")]
    [InlineData("3.73", 63.87, -6.1, "caution")]
    public void A_speedometer_after_larger_tires(string axle, double actual, double error, string verdict)
    {
        var r = Door.Run("driveline.speedometer", $$"""{"tireDiameter":"33 in","axleRatio":"{{axle}}",{{Cut}}}""");
        r.Gives("trueSpeed", actual, 0.005);
        r.Gives("error", error, 0.05);
        Assert.Equal(verdict, r.Verdict("legal"));
    }

    // UN Regulation No. 39 (from memory): at most a tenth of the true speed and 4 km/h high. True 50 mph: 5 + 2.485 mph high is the edge.
    [Theory]
    [InlineData(57.4, "pass")]
    [InlineData(57.6, "caution")]
    [InlineData(50, "pass")]
    [InlineData(49.99, "caution")]
    public void The_legal_band_is_a_caution_at_most(double indicated, string verdict)
    {
        // Equal tires; the axle ratio makes the true speed 50 mph.
        var r = Door.Run("driveline.speedometer", $$"""
            {"tireDiameter":"31 in","axleRatio":{{4 * indicated / 50:R}},"speedometerTireDiameter":"31 in","speedometerAxleRatio":4,"indicatedSpeed":"{{indicated:R}} mph"}
            """);
        r.Gives("trueSpeed", 50, 1e-9);
        Assert.Equal(verdict, r.Verdict("legal"));
    }

    [Fact]
    public void With_the_restoring_ratio_engine_speed_and_speedometer_are_as_they_were() =>
        Gen.Select(Gen.Double[27, 40], Gen.Double[26, 33], Gen.Double[2.7, 5]).Sample((now, before, ratio) =>
        {
            var restored = Door.Run("driveline.restoring-ratio",
                $$"""{"tireDiameter":"{{now:R}} in","originalTireDiameter":"{{before:R}} in","originalAxleRatio":{{ratio:R}}}""").Number("axleRatio")!.Value;
            double Engine(double D, double A) => Door.Run("driveline.engine-speed",
                $$"""{"roadSpeed":"60 mph","tireDiameter":"{{D:R}} in","axleRatio":{{A:R}},"gearRatio":1}""").Number("engineSpeed")!.Value;
            Assert.Equal(Engine(before, ratio), Engine(now, restored), 1e-9 * Engine(before, ratio));
            Door.Run("driveline.speedometer", $$"""
                {"tireDiameter":"{{now:R}} in","axleRatio":{{restored:R}},"speedometerTireDiameter":"{{before:R}} in","speedometerAxleRatio":{{ratio:R}}}
                """).Gives("error", 0, 1e-9);
        }, iter: 50);

    // 4.27 x 33 / 30.5 = 4.62. The limit of 5 % too tall is common practice, no source; deeper gearing is judged at cruise, not here.
    [Theory]
    [InlineData("30.5", "4.27", "pass")]
    [InlineData("32.02", "4.27", "pass")] // 4.98 % too tall
    [InlineData("32.03", "4.27", "caution")] // 5.02 %
    [InlineData("33", "4.27", "caution")]
    [InlineData("33", "4.88", "pass")]
    public void Taller_gearing_is_a_caution_where_it_is_felt_and_deeper_gearing_is_none(string tire, string now, string verdict) =>
        Assert.Equal(verdict, Door.Run("driveline.restoring-ratio",
            $$"""{"tireDiameter":"{{tire}} in","originalTireDiameter":"30.5 in","originalAxleRatio":4.27,"currentAxleRatio":{{now}}}""").Verdict("gearing"));

    [Fact]
    public void Gearing_cannot_be_judged_without_the_ratio_that_is_in() =>
        Assert.Equal("unknown", Door.Run("driveline.restoring-ratio", """{"tireDiameter":"33 in","originalTireDiameter":"30.5 in","originalAxleRatio":4.27}""").Verdict("gearing"));

    // 4.56 / 4.27 - 1 = 6.8 %, whichever axle has which.
    [Theory]
    [InlineData("4.27", "4.56", -6.4)]
    [InlineData("4.56", "4.27", 6.8)]
    public void Two_axles_that_do_not_match(string front, string rear, double overspeed)
    {
        var r = Door.Run("driveline.ratio-mismatch",
            $$"""{"frontRatio":"{{front}}","rearRatio":"{{rear}}","frontTireDiameter":"31 in","rearTireDiameter":"31 in"}""");
        r.Gives("mismatch", 6.8, 0.05);
        r.Gives("frontOverspeed", overspeed, 0.05);
        Assert.Equal("fail", r.Verdict("mismatch"));
        Assert.Contains("winds up the driveline", r.Finding("mismatch")["text"]!.GetValue<string>());
    }

    // Limits of 1 and 2 % are common practice, no source. The tire makes the mismatch: the axles are equal.
    [Theory]
    [InlineData(31.0, "pass")]
    [InlineData(31.3, "pass")]
    [InlineData(31.4, "caution")]
    [InlineData(31.6, "caution")]
    [InlineData(31.7, "fail")]
    [InlineData(30.6, "caution")]
    public void Unequal_tires_count_like_unequal_ratios(double front, string verdict) =>
        Assert.Equal(verdict, Door.Run("driveline.ratio-mismatch",
            $$"""{"frontRatio":"4.10","rearRatio":"4.10","frontTireDiameter":"{{front}} in","rearTireDiameter":"31 in"}""").Verdict("mismatch"));

    // 4.10 on 31 in against 4.56 on 34.48 in is the same shaft speed: larger tires in front with a deeper front ratio cancel.
    [Fact]
    public void Ratio_and_tire_can_cancel() =>
        Door.Run("driveline.ratio-mismatch", $$"""{"frontRatio":"4.56","rearRatio":"4.10","frontTireDiameter":"{{31 * 4.56 / 4.10:R}} in","rearTireDiameter":"31 in"}""")
            .Gives("mismatch", 0, 1e-9);
}
