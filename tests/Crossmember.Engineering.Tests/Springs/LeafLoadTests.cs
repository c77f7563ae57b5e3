using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Springs;

/// <summary>Leaves under what they carry themselves: a helper takes a share of the load, never the whole worry.</summary>
public class LeafLoadTests
{
    // Derived: a pack that reaches 620.5 MPa at 576.5 kg has 683 MPa under 634.6 kg, however much a helper carries beside it.
    [Fact]
    public void An_overstressed_leaf_fails_beside_a_helper_that_is_taken_off_already()
    {
        var r = Of(""" "load":"634.6 kg","rate":"38.2 N/mm","stressLimit":"620.5 MPa","loadAtLimit":"576.5 kg","relief":"117 kg","helperRate":"43.8 N/mm" """);
        r.Gives("stress", 683.0, 0.1);
        Assert.Equal("fail", r.Verdict("stress"));
        Assert.Contains("takes 117 kg", r.Finding("stress")["text"]!.GetValue<string>());
    }

    // 1069 of 600 MPa: a helper of 1 N/mm beside 40 N/mm can take a 41st part at most and leaves 1043 MPa.
    [Theory]
    [InlineData(1, "fail")]
    [InlineData(31, "fail")] // 1069 x 40 / 71 = 602
    [InlineData(32, "unknown")] // 594: with its gap known it may be enough
    public void A_helper_of_unknown_gap_saves_no_leaf_that_its_rate_cannot_save(double helper, string verdict)
    {
        var r = Of($$""" "load":"1069 kg","rate":"40 N/mm","stressLimit":"600 MPa","loadAtLimit":"600 kg","helperRate":"{{helper}} N/mm" """);
        Assert.Equal(verdict, r.Verdict("stress"));
        Assert.Contains("tape the gap", r.Finding("stress")["text"]!.GetValue<string>());
    }

    [Theory]
    [InlineData(590, "caution")]
    [InlineData(500, "pass")]
    public void What_passes_with_all_of_the_load_passes_with_a_helper(double load, string verdict) =>
        Assert.Equal(verdict, Of($$""" "load":"{{load}} kg","rate":"40 N/mm","stressLimit":"600 MPa","loadAtLimit":"600 kg","helperRate":"20 N/mm" """).Verdict("stress"));

    // 40 N/mm gives 200 mm under 815.8 kg; under 900 kg it is 20.6 mm past flat, with 1 N/mm beside it still 15; with 10 N/mm perhaps not.
    [Theory]
    [InlineData("", "caution")]
    [InlineData(""","helperRate":"1 N/mm" """, "caution")]
    [InlineData(""","helperRate":"10 N/mm" """, "unknown")]
    [InlineData(""","helperRate":"10 N/mm","relief":"50 kg" """, "caution")]
    public void Past_flat_is_told_by_the_same_share(string helper, string verdict)
    {
        var r = Of($$""" "load":"900 kg","rate":"40 N/mm","freeArch":"200 mm"{{helper}} """);
        Assert.Equal(verdict, r.Verdict("flat"));
        r.Gives("archLeft", 200 - (900 * 9.80665 / 40), 1e-6);
    }

    // Independent: leaf pack and this one agree on stress and arch, random packs.
    [Fact]
    public void It_agrees_with_the_leaf_pack_from_its_dimensions() => Gen.Select(Gen.Int[2, 12], Gen.Double[5, 12], Gen.Double[100, 1200]).Sample((n, t, kg) =>
    {
        var pack = Door.Run("springs.leaf-pack", $$"""
            {"eyeSpan":"1.3 m","clampLength":"100 mm","leaves":"{{n}}","width":"60 mm","thickness":"{{t:R}} mm","stressLimit":"600 MPa","freeArch":"120 mm","loads":{"a":"{{kg:R}} kg"} }
            """);
        var r = Of($$""" "load":"{{kg:R}} kg","rate":"{{pack.Number("rate"):R}} N/mm","stressLimit":"600 MPa","loadAtLimit":"{{pack.Number("loadAtLimit"):R}} kg","freeArch":"120 mm" """);
        if (pack.Number("loadAtLimit") > 5000) return;
        r.Gives("stress", pack.Number("stress")!.Value, 1e-6 * pack.Number("stress")!.Value);
        r.Gives("archLeft", pack.Number("archLeft")!.Value, 1e-6);
        Assert.Equal(pack.Verdict("stress"), r.Verdict("stress"));
    }, iter: 40);

    private static JsonObject Of(string given) => Door.Run("springs.leaf-load", $"{{{given}}}");
}
