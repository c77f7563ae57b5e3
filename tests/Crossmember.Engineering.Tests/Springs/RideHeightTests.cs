using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Springs;

public class RideHeightTests
{
    // Derived: a spare carrier of 74 kg behind the rear axle loads it by 95.39 kg and takes 21.39 kg from the front; 38 and 32 N/mm at each wheel: 12.3 mm down, 3.3 mm up.
    [Theory]
    [InlineData(95.39, 38, -12.3)]
    [InlineData(-21.39, 32, 3.3)]
    public void A_spare_carrier_lowers_the_rear_and_lifts_the_front(double kg, double rate, double change)
    {
        var r = Of(1000 + kg, 1000, 200, rate);
        r.Gives("change", change, 0.05);
        r.Gives("rideHeight", 200 + change, 0.05);
    }

    // Independent: equilibrium found by halving the interval on the whole force curve, springs, helpers and stops as they come, random stages.
    [Fact]
    public void Helper_and_bump_stop_agree_with_equilibrium_by_bisection() =>
        Gen.Select(Gen.Double[-400, 2500], Gen.Double[15, 120], Gen.Double[5, 150], Gen.Double[1, 150], Gen.Double[1, 150], Gen.Double[20, 600]).Sample((kg, k, kh, ch, cs, ks) =>
        {
            double F = kg * 9.80665 / 2, low = -500, high = 500; // N, mm
            double Force(double x) => (k * x) + (kh * Math.Max(0, x - ch)) + (ks * Math.Max(0, x - cs));
            for (var i = 0; i < 100; i++)
            {
                var mid = (low + high) / 2;
                (low, high) = Force(mid) < F ? (mid, high) : (low, mid);
            }
            var r = Of(1000 + kg, 1000, 250, k, $$""","helperRate":"{{kh:R}} N/mm","helperClearance":"{{ch:R}} mm","bumpClearance":"{{cs:R}} mm","bumpRate":"{{ks:R}} N/mm" """);
            r.Gives("rideHeight", 250 - low, 1e-6);
            r.Gives("bumpTravel", Math.Max(0, cs - low), 1e-6);
            Assert.Null(r.Number("fullBumpTravel"));
            r.Gives("relief", ((kh * Math.Max(0, low - ch)) + (ks * Math.Max(0, low - cs))) / 9.80665, 1e-6);
            r.Gives("carryingRate", low > ch ? k + kh : k, 1e-9);
            Assert.Equal((Force(low + 1e-4) - Force(low - 1e-4)) / 2e-4, r.Number("springRate")!.Value, Math.Abs(low - ch) < 2e-4 || Math.Abs(low - cs) < 2e-4 ? ks + kh : 1e-3);
            Assert.Equal(low > cs ? "fail" : cs - low < 50 ? "caution" : "pass", r.Verdict("travel"));
        }, iter: 200);

    [Fact]
    public void More_load_never_raises_it() => Gen.Select(Gen.Double[600, 2000], Gen.Double[0.1, 500], Gen.Double[20, 90]).Sample((m, more, k) =>
    {
        const string rest = ""","helperRate":"30 N/mm","helperClearance":"25 mm","bumpClearance":"60 mm","bumpRate":"150 N/mm" """;
        return Of(m + more, 1000, 250, k, rest).Number("rideHeight") < Of(m, 1000, 250, k, rest).Number("rideHeight");
    }, iter: 60);

    [Fact]
    public void The_taped_state_comes_back_and_the_way_back_undoes_the_way_there() => Gen.Select(Gen.Double[700, 1500], Gen.Double[700, 1500], Gen.Double[20, 90]).Sample((a, b, k) =>
    {
        Of(a, a, 250, k).Gives("rideHeight", 250, 1e-9);
        var there = Of(b, a, 250, k).Number("rideHeight")!.Value;
        Of(a, b, there, k).Gives("rideHeight", 250, 1e-6);
    }, iter: 30);

    // 30 N/mm to a stop at 60 mm: 1800 N a wheel or 367.1 kg on the axle reach it; a stop of 100 N/mm is solid 30 mm on: 1800 + 3900 N or 1162.5 kg.
    [Theory]
    [InlineData(360, "caution", true)]
    [InlineData(380, "fail", true)]
    [InlineData(1160, "fail", true)]
    [InlineData(1165, "fail", false)]
    public void On_the_stop_is_a_fail_and_past_it_no_height_is_told(double more, string verdict, bool told)
    {
        var r = Of(1000 + more, 1000, 200, 30, ""","bumpClearance":"60 mm","bumpRate":"100 N/mm","bumpSquash":"30 mm" """);
        Assert.Equal(verdict, r.Verdict("travel"));
        Assert.Equal(told, r.Number("rideHeight") is not null);
        if (!told) Assert.Contains("solid", r.Finding("travel")["text"]!.GetValue<string>());
    }

    // Full bump is where the stop is solid: 60 + 30 mm of gap and squash less 367.1 kg x g / 2 / 30 N/mm = 60 mm leave 30; derived.
    [Theory]
    [InlineData(0, 90)]
    [InlineData(100, 73.656)]
    [InlineData(400, 28.759)]
    public void Full_bump_lies_behind_the_stop(double more, double left) =>
        Of(1000 + more, 1000, 200, 30, ""","bumpClearance":"60 mm","bumpRate":"100 N/mm","bumpSquash":"30 mm" """).Gives("fullBumpTravel", left, 0.001);

    // 1200 kg more press a stop of 30 mm solid at 90 mm: the spring took 2700 N of 5884 N, 324.7 kg are on the stop; by hand.
    [Fact]
    public void What_a_solid_stop_carries_is_not_on_the_spring() =>
        Of(2200, 1000, 200, 30, ""","bumpClearance":"60 mm","bumpRate":"100 N/mm","bumpSquash":"30 mm" """).Gives("relief", 600 - (2700 / 9.80665), 1e-6);

    [Theory]
    [InlineData(""","helperRate":"20 N/mm" """, null)] // its gap unknown
    [InlineData(""","helperRate":"20 N/mm","helperClearance":"0 mm" """, 20.0)] // 50 kg a wheel on 50 N/mm, of which 20 are the helper's
    [InlineData("", 0.0)]
    public void What_helps_the_spring_is_told_where_it_is_known(string helper, double? relief)
    {
        var told = Of(1100, 1000, 200, 50, helper).Number("relief");
        if (relief is null) Assert.Null(told);
        else Assert.Equal(relief.Value, told!.Value, 1e-6);
    }

    [Fact]
    public void At_a_gap_of_nothing_it_rests_on_the_stop_and_is_not_pressed_in()
    {
        var text = Of(1000, 1000, 200, 30, ""","bumpClearance":"0 mm","bumpRate":"100 N/mm","bumpSquash":"30 mm" """).Finding("travel")["text"]!.GetValue<string>();
        Assert.Contains("rests on the bump stop: no travel", text);
        Assert.DoesNotContain("-0", text);
    }

    [Fact]
    public void A_stop_of_unknown_rate_gives_no_height_once_it_is_met()
    {
        var r = Of(1400, 1000, 200, 30, ""","bumpClearance":"60 mm" """);
        Assert.Null(r.Number("rideHeight"));
        Assert.Null(r.Number("datumHeight"));
        Assert.Equal("fail", r.Verdict("travel"));
        Assert.Contains("after 60 mm", r.Finding("travel")["text"]!.GetValue<string>());
    }

    [Fact]
    public void Wheels_that_would_hang_are_told()
    {
        var r = Of(200, 1000, 200, 30, ""","bumpClearance":"60 mm","droop":"90 mm" """);
        Assert.Null(r.Number("rideHeight"));
        Assert.Contains("full droop", r.Finding("travel")["text"]!.GetValue<string>());
        Of(900, 1000, 200, 30, ""","bumpClearance":"60 mm","droop":"90 mm" """).Gives("droopTravel", 90 - (100 * 9.80665 / 60), 1e-6);
    }

    // An inch of sag is the trade's line between settled and sagged (common practice, no source).
    [Theory]
    [InlineData(210, "pass")]
    [InlineData(224, "pass")]
    [InlineData(226, "caution")]
    public void Sag_against_the_height_it_was_built_with(double original, string verdict) =>
        Assert.Equal(verdict, Of(1000, 1000, 200, 30, $$""","originalHeight":"{{original}} mm" """).Verdict("original"));

    [Fact]
    public void Height_over_the_ground_waits_for_the_tire()
    {
        Assert.Null(Of(1000, 1000, 200, 30).Number("datumHeight"));
        Of(1000, 1000, 200, 30, ""","loadedRadius":"390 mm" """).Gives("datumHeight", 590, 1e-9);
    }

    private static JsonObject Of(double load, double tapedLoad, double height, double rate, string more = "") => Door.Run("springs.ride-height",
        $$"""{"load":"{{load:R}} kg","heightLoad":"{{tapedLoad:R}} kg","height":"{{height:R}} mm","wheelRate":"{{rate:R}} N/mm"{{more}} }""");
}
