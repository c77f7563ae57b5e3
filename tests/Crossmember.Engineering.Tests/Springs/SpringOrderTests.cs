using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Springs;

/// <summary>What springs carry against their rating, and what to order.</summary>
public class SpringOrderTests
{
    // Derived: (1724 - 180) / 2 = 772 kg on each spring.
    [Theory]
    [InlineData("820 kg", "pass")]
    [InlineData("800 kg", "caution")]
    [InlineData("770 kg", "fail")]
    public void Each_spring_is_held_against_its_rating(string rating, string verdict)
    {
        var r = Load($$""" "load":"1724 kg","unsprungMass":"180 kg","rating":"{{rating}}" """);
        r.Gives("springLoad", 772, 1e-9);
        Assert.Equal(verdict, r.Verdict("rating"));
    }

    [Fact]
    public void At_the_reserve_told_the_springs_are_at_their_rating() => Gen.Select(Gen.Double[600, 3000], Gen.Double[50, 400], Gen.Double[0.4, 1], Gen.Double[200, 2000]).Sample((load, unsprung, ratio, rating) =>
    {
        string With(double kg) => $$""" "load":"{{kg:R}} kg","unsprungMass":"{{unsprung:R}} kg","motionRatio":"{{ratio:R}}","rating":"{{rating:R}} kg" """;
        var reserve = Load(With(load)).Number("reserve")!.Value;
        if (load + reserve > 1) Load(With(load + reserve)).Gives("springLoad", rating, 1e-6 * rating);
        // Energy: what the spring gives way times its load is what the wheel gives way times half of the sprung load.
        Assert.Equal((load - unsprung) / 2, Load(With(load)).Number("springLoad")!.Value * ratio, 1e-9 * load);
    }, iter: 40);

    // Without the unsprung mass the springs are said to carry too much: near the rating that is no proof that they do.
    [Theory]
    [InlineData("920 kg", "pass")]
    [InlineData("800 kg", "caution")]
    [InlineData("600 kg", "fail")]
    public void An_unknown_unsprung_mass_errs_on_the_safe_side(string rating, string verdict)
    {
        var r = Load($$""" "load":"1724 kg","rating":"{{rating}}" """);
        r.Gives("springLoad", 862, 1e-9);
        Assert.Equal(verdict, r.Verdict("rating"));
    }

    // What the helper carries is no load of the main spring: 772 - 137 = 635 kg. Its share unknown, 772 kg is the most and 772 x 38 / 82 = 358 kg the least.
    [Theory]
    [InlineData(""","relief":"137 kg" """, 635, "630 kg", "fail")]
    [InlineData(""","relief":"137 kg" """, 635, "700 kg", "pass")]
    [InlineData(""","helperRate":"44 N/mm","wheelRate":"38 N/mm" """, 772, "700 kg", "unknown")]
    [InlineData(""","helperRate":"44 N/mm","wheelRate":"38 N/mm" """, 772, "350 kg", "fail")]
    [InlineData(""","helperRate":"44 N/mm","wheelRate":"38 N/mm" """, 772, "820 kg", "pass")]
    public void The_helper_is_taken_off_the_main_spring(string helper, double carried, string rating, string verdict)
    {
        var r = Load($$""" "load":"1724 kg","unsprungMass":"180 kg","rating":"{{rating}}"{{helper}} """);
        r.Gives("springLoad", carried, 1e-9);
        Assert.Equal(verdict, r.Verdict("rating"));
        Assert.Null(r.Number("reserve"));
    }

    [Fact]
    public void A_helper_that_carries_more_than_there_is_is_refused()
    {
        var r = Load(""" "load":"500 kg","unsprungMass":"180 kg","rating":"800 kg","relief":"200 kg" """);
        Assert.Equal("fail", r.Verdict("rating"));
        Assert.Contains("more than there is", r.Finding("rating")["text"]!.GetValue<string>());
        Assert.Null(r.Number("springLoad"));
    }

    [Fact]
    public void Unsprung_parts_heavier_than_the_axle_are_refused()
    {
        var r = Load(""" "load":"100 kg","unsprungMass":"180 kg","rating":"800 kg" """);
        Assert.Equal("fail", r.Verdict("rating"));
        Assert.Null(r.Number("springLoad"));
    }

    // Derived by hand: 400 kg more in 75 mm ask for 26.15 N/mm; 560 kg at 1.2 Hz for 31.83, 360 kg at 2 Hz for 56.85 N/mm at most.
    private const string Wanted = """ "loads":{"empty":"900 kg","loaded":"1300 kg"},"unsprungMass":"180 kg","tolerance":"75 mm" """;

    [Fact]
    public void The_rates_between_which_one_spring_does_both()
    {
        var r = Order(Wanted);
        r.Gives("rateForHeight", 26.151, 0.0005);
        r.Gives("softestForRide", 31.835, 0.0005);
        r.Gives("stiffestForRide", 56.849, 0.0005);
        Assert.Equal("pass", r.Verdict("one-rate"));
    }

    [Theory]
    [InlineData(30, "caution", "too soft")]
    [InlineData(40, "pass", "such a rate")]
    [InlineData(60, "caution", "rides hard")]
    public void The_present_rate_is_held_against_them(double rate, string verdict, string says)
    {
        var r = Order($$"""{{Wanted}},"wheelRate":"{{rate}} N/mm" """);
        Assert.Equal(verdict, r.Verdict("present"));
        Assert.Contains(says, r.Finding("present")["text"]!.GetValue<string>());
    }

    // 1724 kg and 889 kg, 220 kg unsprung, 100 mm: 42.7 N/mm loaded to 52.8 empty. 38.2 N/mm alone is too soft; with a helper it stands on 82.0 N/mm and loses 77 mm.
    [Theory]
    [InlineData("", "caution", "too soft")]
    [InlineData(""","presentRates":{"empty":"38.2 N/mm","loaded":"82.0 N/mm"},"presentHeights":{"empty":"149 mm","loaded":"72 mm"} """, "pass", "loses 77 mm")]
    [InlineData(""","presentRates":{"empty":"38.2 N/mm","loaded":"82.0 N/mm"},"presentHeights":{"empty":"149 mm","loaded":"48 mm"} """, "caution", "100 mm were asked for")]
    [InlineData(""","presentRates":{"empty":"50 N/mm","loaded":"50 N/mm"},"presentHeights":{"empty":"149 mm","loaded":"67 mm"} """, "pass", "50 N/mm with its helper, loses 82 mm")] // touches in both
    [InlineData(""","presentRates":{"empty":"38.2 N/mm","loaded":"82.0 N/mm"} """, "unknown", "tape it")]
    [InlineData(""","presentRates":{"empty":"38.2 N/mm","loaded":"42 N/mm"},"presentHeights":{"empty":"149 mm","loaded":"72 mm"} """, "caution", "too soft")]
    [InlineData(""","presentRates":{"empty":"60 N/mm","loaded":"82.0 N/mm"},"presentHeights":{"empty":"149 mm","loaded":"72 mm"} """, "caution", "rides hard empty")]
    [InlineData(""","presentRates":{"empty":"38.2 N/mm","loaded":"38.2 N/mm"},"presentHeights":{"empty":"149 mm","loaded":"72 mm"} """, "caution", "too soft")]
    public void A_present_helper_counts_where_it_touches(string now, string verdict, string says)
    {
        var r = Order($$""" "loads":{"empty":"889 kg","loaded":"1724 kg"},"unsprungMass":"220 kg","tolerance":"100 mm","wheelRate":"38.2 N/mm"{{now}} """);
        r.Gives("softestForRide", 752 * Math.Pow(2.4 * Math.PI, 2) / 1000, 1e-6);
        Assert.Equal(verdict, r.Verdict("present"));
        Assert.Contains(says, r.Finding("present")["text"]!.GetValue<string>());
    }

    [Fact]
    public void Where_no_single_rate_does_it_none_is_told()
    {
        var r = Order(""" "loads":{"empty":"700 kg","loaded":"1700 kg"},"unsprungMass":"180 kg","tolerance":"50 mm","wheelRate":"42 N/mm" """);
        Assert.Equal("caution", r.Verdict("one-rate"));
        Assert.Contains("No single rate does it", r.Finding("one-rate")["text"]!.GetValue<string>());
        Assert.Null(r.Number("rate"));
        Assert.Equal("caution", r.Verdict("present"));
    }

    // The answers put back into the calculations they come from: height lost, and both frequencies, lie within what was asked.
    [Fact]
    public void The_rate_told_keeps_height_and_ride_when_it_is_put_in() => Gen.Select(Gen.Double[700, 1200], Gen.Double[50, 800], Gen.Double[100, 300]).Sample((empty, more, unsprung) =>
    {
        var r = Order($$""" "loads":{"empty":"{{empty:R}} kg","loaded":"{{empty + more:R}} kg"},"unsprungMass":"{{unsprung:R}} kg","tolerance":"75 mm","originalHeight":"200 mm" """);
        if (r.Number("rate") is not { } k) return;
        double at = r.Number("heightAtHeaviest")!.Value;
        var light = Door.Run("springs.ride-height", $$"""{"load":"{{empty:R}} kg","heightLoad":"{{empty + more:R}} kg","height":"{{at:R}} mm","wheelRate":"{{k:R}} N/mm"}""").Number("rideHeight")!.Value;
        Assert.InRange(light - at, 0, 75.001);
        Assert.Equal(200, (light + at) / 2, 1e-6);
        foreach (var load in new[] { empty, empty + more })
            Assert.Equal("pass", Door.Run("springs.frequency", $$"""{"load":"{{load:R}} kg","unsprungMass":"{{unsprung:R}} kg","wheelRate":"{{k:R}} N/mm"}""").Verdict("usual"));
    }, iter: 40);

    // The leaves told, put into the leaf pack, make at least the rate; one leaf less does not.
    [Fact]
    public void The_leaves_told_make_the_rate_and_one_less_does_not()
    {
        double Pack(double leaves, string thickness) => Door.Run("springs.leaf-pack",
            $$"""{"eyeSpan":"1300 mm","clampLength":"100 mm","leaves":"{{leaves}}","fullLength":"1","width":"63.5 mm","thickness":"{{thickness}}"}""").Number("rate")!.Value;
        var now = Pack(6, "6 mm");
        var r = Order($$"""{{Wanted}},"leafRate":"{{now:R}} N/mm","leaves":"6","fullLength":"1","thickness":"6 mm" """);
        double n = r.Number("leavesNeeded")!.Value, k = r.Number("rate")!.Value;
        Assert.True(n > 6 && Pack(n, "6 mm") >= k && Pack(n - 1, "6 mm") < k);
        Assert.Equal(k, Pack(6, $"{r.Number("thicknessNeeded"):R} mm"), 1e-6 * k);
    }

    private static JsonObject Load(string given) => Door.Run("springs.axle-capacity", $"{{{given}}}");

    private static JsonObject Order(string given) => Door.Run("springs.restore", $"{{{given}}}");
}
