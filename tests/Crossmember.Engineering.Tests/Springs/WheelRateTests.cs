using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Springs;

public class WheelRateTests
{
    private static readonly Gen<double> s_rate = Gen.Double[5, 400];

    [Fact]
    public void Springs_beside_each_other_are_stiffer_than_the_stiffest_and_add() => Gen.Select(s_rate, s_rate).Sample((leaf, coil) =>
    {
        var k = Rate($$""" "leafRate":"{{leaf:R}} N/mm","coilRate":"{{coil:R}} N/mm" """);
        Assert.True(k > Math.Max(leaf, coil));
        Assert.Equal(leaf + coil, k, 1e-9 * k);
    }, iter: 30);

    [Fact]
    public void A_pad_makes_it_softer_than_the_softer_of_the_two_and_either_way_round() => Gen.Select(s_rate, s_rate).Sample((leaf, pad) =>
    {
        var k = Rate($$""" "leafRate":"{{leaf:R}} N/mm","padRate":"{{pad:R}} N/mm" """);
        Assert.True(k < Math.Min(leaf, pad));
        Assert.Equal((1 / leaf) + (1 / pad), 1 / k, 1e-9);
        Assert.Equal(k, Rate($$""" "leafRate":"{{pad:R}} N/mm","padRate":"{{leaf:R}} N/mm" """), 1e-9 * k);
    }, iter: 30);

    // Independent: the same energy stored whether told at the wheel or at the spring.
    [Fact]
    public void The_motion_ratio_counts_twice_since_energy_is_kept() => Gen.Select(s_rate, Gen.Double[0.4, 1.1], Gen.Double[1, 50]).Sample((coil, ratio, travel) =>
        Assert.Equal(0.5 * coil * Math.Pow(ratio * travel, 2), 0.5 * Rate($$""" "coilRate":"{{coil:R}} N/mm","motionRatio":"{{ratio:R}}" """) * travel * travel, 1e-9 * coil * travel * travel), iter: 30);

    [Theory]
    [InlineData(""" "springRate":"35 N/mm","leafRate":"36 N/mm" """, 35, "pass", "the stated rate of the spring")]
    [InlineData(""" "springRate":"35 N/mm","leafRate":"50 N/mm" """, 35, "caution", "the dimensions of the spring gives 50 N/mm")]
    [InlineData(""" "measuredRate":"35 N/mm","leafRate":"36 N/mm","secondHeight":"100 mm" """, 35, "pass", "the two weighed heights")]
    [InlineData(""" "leafRate":"36 N/mm","installedRate":"37 N/mm" """, 37, "pass", "the dimensions of the spring")]
    [InlineData(""" "torsionRate":"20 N/mm" """, 20, "pass", "the dimensions of the spring")]
    public void What_is_stated_beats_what_is_measured_beats_dimensions(string given, double rate, string verdict, string says)
    {
        var r = Of(given);
        r.Gives("rate", rate, 1e-9);
        Assert.Equal(verdict, r.Verdict("known"));
        Assert.Contains(says, r.Finding("known")["text"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("0 mm", 50)]
    [InlineData("20 mm", 30)]
    public void A_helper_counts_only_while_it_touches(string gap, double rate) =>
        Of($$""" "leafRate":"30 N/mm","helperRate":"20 N/mm","helperClearance":"{{gap}}" """).Gives("rate", rate, 1e-9);

    [Fact]
    public void A_helper_of_unknown_gap_is_left_out_and_said_to_be()
    {
        var r = Of(""" "leafRate":"30 N/mm","helperRate":"20 N/mm" """);
        r.Gives("rate", 30, 1e-9);
        Assert.Contains(r["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("helper is left out", StringComparison.Ordinal));
    }

    // 60 mm between the heights and a helper that touches after 50: 10 mm of it are in the rate weighed, and ride height would count it once more.
    [Theory]
    [InlineData("140 mm", "", null, "unknown", "weighed across the helper")]
    [InlineData("140 mm", ""","leafRate":"30 N/mm" """, 30.0, "caution", "weighed across the helper")]
    [InlineData("140 mm", ""","springRate":"31 N/mm" """, 31.0, "caution", "weighed across the helper")]
    [InlineData("150 mm", "", 38.0, "pass", "by the two weighed heights")]
    [InlineData("165 mm", "", 38.0, "pass", "by the two weighed heights")]
    public void A_rate_weighed_across_the_helper_is_left_out(string second, string more, double? rate, string verdict, string says)
    {
        var r = Of($$""" "measuredRate":"38 N/mm","height":"200 mm","secondHeight":"{{second}}","helperRate":"20 N/mm","helperClearance":"50 mm"{{more}} """);
        Assert.Equal(verdict, r.Verdict("known"));
        Assert.Contains(says, r.Finding("known")["text"]!.GetValue<string>());
        if (rate is { } k) r.Gives("rate", k, 1e-9);
        else Assert.Null(r.Number("rate"));
    }

    [Fact]
    public void Nothing_known_says_what_to_measure()
    {
        var r = Of("");
        Assert.Null(r.Number("rate"));
        Assert.Equal("unknown", r.Verdict("known"));
        Assert.Contains("tape the frame over it twice", r.Finding("known")["text"]!.GetValue<string>());
    }

    [Fact]
    public void Two_heights_that_contradict_their_loads_are_told_here_too()
    {
        var r = Of(""" "secondHeight":"210 mm","leafRate":"30 N/mm" """);
        Assert.Null(r.Number("rate"));
        Assert.Equal("fail", r.Verdict("known"));
    }

    // Derived: (1300 - 900) kg x 9.80665 over 2 x 50 mm = 39.227 N/mm; u = sqrt(2 (4/400)^2 + 2 (1.5/50)^2) = 4.472 %.
    [Fact]
    public void Two_weighed_heights_give_the_rate_and_how_well_it_is_known()
    {
        var r = Heights(900, 200, 1300, 150, ""","loadUncertainty":"4 kg","heightUncertainty":"1.5 mm" """);
        r.Gives("rate", 39.227, 0.0005);
        r.Gives("uncertainty", 0.044721 * 39.2266, 0.0005);
        Assert.Equal("pass", r.Verdict("spread"));
        Assert.Equal("caution", Heights(900, 200, 950, 194).Verdict("spread"));
    }

    // Independent of the propagation by shares: both readings moved by random errors, 4000 times.
    [Fact]
    public void The_uncertainty_agrees_with_readings_that_err_at_random()
    {
        var random = new Random(7);
        double Normal() => Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        var rates = Enumerable.Range(0, 4000).Select(_ => (1300 + (4 * Normal()) - 900 - (4 * Normal())) * 9.80665 / (2 * (200 + (1.5 * Normal()) - 150 - (1.5 * Normal())))).ToList();
        double mean = rates.Average(), spread = Math.Sqrt(rates.Average(k => (k - mean) * (k - mean)));
        Assert.Equal(spread, Heights(900, 200, 1300, 150, ""","loadUncertainty":"4 kg","heightUncertainty":"1.5 mm" """).Number("uncertainty")!.Value, 0.05 * spread);
    }

    [Theory]
    [InlineData(900, 200, 1300, 210)]
    [InlineData(1300, 200, 900, 150)]
    [InlineData(900, 200, 900, 200)]
    public void The_heavier_load_must_stand_lower(double m1, double h1, double m2, double h2)
    {
        var r = Heights(m1, h1, m2, h2);
        Assert.Equal("fail", r.Verdict("direction"));
        Assert.Null(r.Number("rate"));
        Assert.Contains($"{h2:0} mm", r.Finding("direction")["text"]!.GetValue<string>());
    }

    [Fact]
    public void The_order_of_the_two_readings_makes_no_difference_to_the_rate_seen_by_the_energy() => Gen.Select(Gen.Double[500, 1000], Gen.Double[100, 800], Gen.Double[5, 100]).Sample((m, dm, dh) =>
    {
        var k = Heights(m, 300, m + dm, 300 - dh).Number("rate")!.Value; // work of the mean load over the way is the energy of both springs
        Assert.Equal(dm * 9.80665 / 2 * dh, 2 * 0.5 * k * dh * dh, 1e-6 * k * dh * dh);
    }, iter: 30);

    [Fact]
    public void A_tire_stands_lower_than_half_its_diameter_until_it_is_measured()
    {
        Door.Run("springs.loaded-radius", """{"diameter":"33 in"}""").Gives("radius", 0.95 * 419.1, 1e-6);
        var r = Door.Run("springs.loaded-radius", """{"diameter":"33 in","measured":{"left":"15.4 in","right":"15.5 in"}}""");
        r.Gives("radius", 15.45 * 25.4, 1e-6);
        Assert.Empty(r["cautions"]!.AsArray());
        Assert.Null(Door.Run("springs.loaded-radius", """{"diameter":"33 in","flattening":"1.5"}""").Number("radius"));
    }

    private static double Rate(string given) => Of(given).Number("rate")!.Value;

    private static JsonObject Of(string given) => Door.Run("springs.wheel-rate", given.Length > 0 ? $$"""{"axle":"rear",{{given}}}""" : """{"axle":"rear"}""");

    private static JsonObject Heights(double m1, double h1, double m2, double h2, string more = "") => Door.Run("springs.rate-from-heights",
        $$"""{"lightLoad":"{{m1:R}} kg","lightHeight":"{{h1:R}} mm","heavyLoad":"{{m2:R}} kg","heavyHeight":"{{h2:R}} mm"{{more}} }""");
}
