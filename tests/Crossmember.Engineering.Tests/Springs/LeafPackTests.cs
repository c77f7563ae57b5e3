using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Springs;

public class LeafPackTests
{
    // R. S. Khurmi and J. K. Gupta, A Textbook of Machine Design, leaf springs, from memory: 6000 N, 7 leaves 65 mm wide, 2 of full length, span 1.1 m, clamp 80 mm,
    // 350 MPa, 210 GPa: 8.70 mm found, 9 mm used, deflection 30.0 mm, leaves 250 to 1100 mm long.
    private const string Pack = """ "eyeSpan":"1.1 m","clampLength":"80 mm","leaves":"7","fullLength":"2","width":"65 mm","modulus":"210 GPa" """;

    [Fact]
    public void The_textbook_pack_gives_its_deflection()
    {
        var r = Of($$"""{{Pack}},"thickness":"9 mm","loads":{"full":"{{6000 / 9.80665:R}} kg"},"freeArch":"30 mm" """);
        r.Gives("rate", 200.04, 0.005);
        r.Gives("archLeft", 0.0, 0.05); // 30.0 mm under 6000 N
        Assert.Equal([250, 420, 590, 760, 930, 1100], r["outputs"]!["lengths"]!["value"]!.AsObject().Select(l => Math.Round(l.Value!.GetValue<double>(), 6)));
    }

    [Fact]
    public void The_textbook_thickness_meets_the_textbook_stress() =>
        Of($$"""{{Pack}},"thickness":"8.70 mm","loads":{"full":"{{6000 / 9.80665:R}} kg"}""").Gives("stress", 350, 0.5); // last digit of 8.70

    // Two traps: all leaves taken as graduated is 12.5 % soft, forgetting the clamp 30 %.
    [Theory]
    [InlineData("\"fullLength\":\"0\"", 175.0)]
    [InlineData("\"fullLength\":\"0\",\"clampLength\":\"0 mm\"", 139.6)]
    [InlineData("\"clampShare\":\"0\"", 159.5)]
    public void Forgetting_the_clamp_or_the_full_leaves_makes_it_soft(string change, double rate)
    {
        var given = JsonNode.Parse($$"""{{{Pack}},"thickness":"9 mm"}""")!.AsObject();
        foreach (var (name, value) in JsonNode.Parse($"{{{change}}}")!.AsObject()) given[name] = value!.DeepClone();
        Door.Run("springs.leaf-pack", given.ToJsonString()).Gives("rate", rate, 0.05);
    }

    // Independent: leaf by leaf, each touching the next at its tip only. Said beforehand: the formula smears the graduated leaves and should come out stiffer, by 3 % at most.
    [Fact]
    public void Rate_agrees_with_leaves_that_touch_at_their_tips() =>
        Gen.Select(Gen.Int[1, 14], Gen.Int[1, 4], Gen.Double[700, 1500], Gen.Double[40, 100], Gen.Double[4, 14]).Where((n, f, _, _, _) => f <= n).Sample((n, f, L, b, t) =>
        {
            var k = Of($$""" "eyeSpan":"{{L + 100:R}} mm","clampLength":"100 mm","leaves":"{{n}}","fullLength":"{{f}}","width":"{{b:R}} mm","thickness":"{{t:R}} mm","modulus":"206 GPa" """)
                .Number("rate")!.Value * 1000;
            var stacked = StackedLeaves.Rate(n, f, L / 1000, b / 1000, t / 1000, 206e9);
            Assert.InRange(k / stacked, 1 - 1e-9, 1.03);
        }, iter: 100);

    // A single leaf is two cantilevers: k = 2 x 3 E I / (L/2)^3, no friction, 6 F L / (4 b t^2) stress. Derived.
    [Fact]
    public void A_single_leaf_is_a_plain_beam()
    {
        var r = Of(""" "eyeSpan":"1000 mm","clampLength":"0 mm","leaves":"1","width":"60 mm","thickness":"12 mm","modulus":"200 GPa","loads":{"a":"200 kg"} """);
        var k = 48 * 200e9 * 0.06 * Math.Pow(0.012, 3) / 12 / 1; // N/m, beam on two supports
        r.Gives("rate", k / 1000, 1e-9 * k);
        r.Gives("rateHigh", k / 1000, 1e-9 * k);
        var stress = 200 * 9.80665 * 0.25 / (0.06 * 0.012 * 0.012 / 6) / 1e6;
        r.Gives("stress", stress, 1e-6 * stress);
    }

    [Fact]
    public void Friction_is_told_as_a_range_above_the_slow_rate()
    {
        var r = Of($$"""{{Pack}},"thickness":"9 mm" """);
        var k = r.Number("rate")!.Value;
        r.Gives("rateLow", 1.1 * k, 1e-9 * k);
        r.Gives("rateHigh", 1.5 * k, 1e-9 * k);
    }

    // With nip all leaves share: 6 W Lh / (n b t^2) = 6 x 3000 x 510 / (7 x 65 x 81) = 249.1 MPa against 326.9 without. At the limit told, the stress is the limit.
    [Fact]
    public void Nip_shares_the_stress_and_the_load_at_the_limit_is_where_it_is_reached()
    {
        string With(string nip, string kg) => $$"""{{Pack}},"thickness":"9 mm","stressLimit":"500 MPa","nipped":"{{nip}}","loads":{"a":"{{kg}} kg"}""";
        Of(With("yes", "611.8297")).Gives("stress", 249.1, 0.05);
        var r = Of(With("no", "611.8297"));
        r.Gives("stress", 326.9, 0.05);
        var at = r.Number("loadAtLimit")!.Value;
        Of(With("no", $"{at:R}")).Gives("stress", 500, 1e-6);
        Assert.Equal("fail", Of(With("no", $"{at * 1.001:R}")).Verdict("stress"));
        Assert.Equal("caution", Of(With("no", $"{at * 0.95:R}")).Verdict("stress"));
        Assert.Equal("pass", Of(With("no", $"{at * 0.85:R}")).Verdict("stress"));
    }

    [Fact]
    public void A_spring_pushed_past_flat_is_told_and_never_silently_passed()
    {
        var r = Of($$"""{{Pack}},"thickness":"9 mm","freeArch":"20 mm","loads":{"empty":"300 kg","loaded":"611.8297 kg"}""");
        Assert.Equal("caution", r.Verdict("flat"));
        Assert.Contains("10 mm past flat", r.Finding("flat")["text"]!.GetValue<string>());
        Assert.Contains("loaded", r.Finding("flat")["text"]!.GetValue<string>());
        Assert.Equal("pass", Of($$"""{{Pack}},"thickness":"9 mm","freeArch":"80 mm","loads":{"loaded":"611.8297 kg"}""").Verdict("flat"));
    }

    [Theory]
    [InlineData("\"leaves\":\"6.5\"", "whole leaves")]
    [InlineData("\"fullLength\":\"8\"", "8 leaves of full length are more than the 7")]
    [InlineData("\"clampLength\":\"1.2 m\"", "tape both again")]
    [InlineData("\"leaves\":\"70\"", "count them again")]
    public void What_cannot_be_one_spring_is_named_and_gives_no_rate(string change, string says)
    {
        var given = JsonNode.Parse($$"""{{{Pack}},"thickness":"9 mm"}""")!.AsObject();
        foreach (var (name, value) in JsonNode.Parse($"{{{change}}}")!.AsObject()) given[name] = value!.DeepClone();
        var r = Door.Run("springs.leaf-pack", given.ToJsonString());
        Assert.Equal("fail", r.Verdict("dimensions"));
        Assert.Contains(says, r.Finding("dimensions")["text"]!.GetValue<string>());
        Assert.Null(r.Number("rate"));
    }

    [Fact]
    public void One_leaf_more_never_makes_it_softer() =>
        Gen.Select(Gen.Int[1, 12], Gen.Int[0, 3]).Where((n, f) => f <= n).Sample((n, f) =>
        {
            double K(int leaves, int full) => Of($$""" "eyeSpan":"1.1 m","clampLength":"80 mm","leaves":"{{leaves}}","fullLength":"{{full}}","width":"65 mm","thickness":"7 mm" """).Number("rate")!.Value;
            Assert.True(K(n + 1, f) > K(n, f));
            if (f < n) Assert.True(K(n, f + 1) > K(n, f));
        }, iter: 30);

    private static JsonObject Of(string given) => Door.Run("springs.leaf-pack", $"{{{given}}}");
}
