using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Tests.Evaluation;

/// <summary>Springs through the sheet: what is fitted is worked out, what is not fitted asks nothing, and loads move heights.</summary>
public sealed class SpringSheetTests
{
    // 2150 kg on 2560 mm; a spare carrier of 74 kg hung 3300 mm behind the front axle: +95.39 kg rear, -21.39 kg front (derived).
    private const string Weighed = """
        "weighings":[{"date":"2026-01-10","axles":{"front":"1065 kg","rear":"1085 kg"},"wheelbase":"2560 mm","condition":"empty","fitted":{}}],
        "conditions":{"loaded":[{"id":"carrier","mass":"74 kg","at":["3300 mm","0 mm","1000 mm"]}]},
        """;

    private const string Heights = """
        "axle.front.spring.height":"190 mm","axle.front.spring.height-load":"1065 kg","axle.rear.spring.height":"200 mm","axle.rear.spring.height-load":"1085 kg"
        """;

    // Khurmi and Gupta, Machine Design, leaf springs, from memory: this pack has 200 N/mm at 210 GPa; with the 206 GPa assumed here 196.2.
    private const string Leaf = """
        "leaf.rear.eye-span":"1.1 m","leaf.rear.clamp-length":"80 mm","leaf.rear.leaves":7,"leaf.rear.full-length":2,"leaf.rear.width":"65 mm","leaf.rear.thickness":"9 mm"
        """;

    [Fact]
    public void A_carrier_lowers_the_rear_and_lifts_the_front()
    {
        var sheet = Vehicle($$"""{{Heights}},"axle.front.spring.rate":"32 N/mm","axle.rear.spring.rate":"38 N/mm" """);
        Assert.Equal(190 + 3.3, Opened.Told(sheet, "axle.front.loaded.ride-height"), 0.05);
        Assert.Equal(200 - 12.3, Opened.Told(sheet, "axle.rear.loaded.ride-height"), 0.05);
        Assert.Equal(200, Opened.Told(sheet, "axle.rear.empty.ride-height"), 1e-9);
    }

    [Fact]
    public void A_leaf_that_is_governed_reaches_the_wheel()
    {
        var sheet = Vehicle(Leaf, governs: """ "governs":["leaf.rear"],""");
        Assert.Equal(200.04 * 206 / 210, Opened.Told(sheet, "leaf.rear.rate"), 0.01);
        Assert.Equal(200.04 * 206 / 210, Opened.Told(sheet, "axle.rear.wheel-rate"), 0.01);
        Assert.Equal(Verdict.Pass, Verdicts(sheet)["springs.leaf-pack[leaf=rear]/dimensions"]);
        Assert.DoesNotContain(sheet.Findings(), f => f.Id.Contains("leaf=front", StringComparison.Ordinal));
    }

    [Fact]
    public void What_is_not_fitted_has_no_instance_and_asks_nothing()
    {
        var sheet = Vehicle("");
        string[] kinds = ["springs.leaf-pack", "springs.shackle", "springs.coil", "springs.torsion-bar", "springs.rate-from-heights"];
        Assert.DoesNotContain(sheet.Findings(), f => kinds.Any(k => f.Id.StartsWith(k, StringComparison.Ordinal)));
        var asked = Unsettled.Of(sheet).Select(u => u.What).ToList();
        Assert.Contains("axle.{axle}.spring.rate", asked);
        Assert.Contains("axle.{axle}.spring.second-height", asked);
        Assert.All(["leaf.", "coil.", "torsion."], kind => Assert.DoesNotContain(asked, a => a.StartsWith(kind, StringComparison.Ordinal)));
        // Refinements hold nothing up.
        Assert.All(["helper.rate", "helper.clearance", "spring.pad-rate", "spring.motion-ratio"], key => Assert.DoesNotContain("axle.{axle}." + key, asked));
    }

    // The 7-leaf pack of 196.2 N/mm reaches 260 MPa at 486.6 kg (326.9 MPa at 611.8 kg) and carries 497.7 kg, taped at 450. A helper takes what its gap lets it, no more.
    [Theory]
    [InlineData(""","axle.rear.helper.rate":"1 N/mm" """, Verdict.Fail)]
    [InlineData(""","axle.rear.helper.rate":"100 N/mm" """, Verdict.Unknown)]
    [InlineData(""","axle.rear.helper.rate":"100 N/mm","axle.rear.helper.clearance":"5 mm" """, Verdict.Fail)]
    [InlineData(""","axle.rear.helper.rate":"100 N/mm","axle.rear.helper.clearance":"0.5 mm" """, Verdict.Caution)]
    public void A_leaf_beside_a_helper_is_judged_by_its_own_share(string helper, Verdict verdict)
    {
        var sheet = Vehicle($$"""{{Leaf}},"leaf.rear.stress-limit":"260 MPa","axle.rear.spring.height":"200 mm","axle.rear.spring.height-load":"1085 kg","axle.rear.unsprung-mass":"185 kg"{{helper}} """,
            governs: """ "governs":["leaf.rear"],""");
        Assert.Equal(verdict, Verdicts(sheet)["springs.leaf-load[condition=loaded,leaf=rear]/stress"]);
    }

    [Fact]
    public void Coils_at_one_end_and_bars_at_the_other_by_their_own_keys()
    {
        var sheet = Vehicle("""
            "coil.rear.wire":"14 mm","coil.rear.outside-diameter":"114 mm","coil.rear.turns":9,"coil.rear.ends":"closed and ground","axle.rear.spring.motion-ratio":0.8,
            "torsion.front.bar-length":"1000 mm","torsion.front.bar-diameter":"25 mm","torsion.front.arm-length":"400 mm","torsion.front.arm-angle":"0 deg","torsion.front.load":"400 kg"
            """, governs: """ "governs":["coil.rear","torsion.front"],""");
        Assert.Equal(54.40 * 0.64, Opened.Told(sheet, "axle.rear.wheel-rate"), 0.005);
        Assert.Equal(19.007, Opened.Told(sheet, "axle.front.wheel-rate"), 0.0005);
    }

    // (1385 - 1085) kg x 9.80665 / (2 x 40 mm) = 36.775 N/mm at the wheel, whatever the leaves say.
    [Theory]
    [InlineData("160 mm", 36.775, Verdict.Caution)]
    [InlineData("210 mm", double.NaN, Verdict.Fail)]
    public void Two_weighed_heights_beat_the_dimensions_unless_they_contradict_themselves(string second, double rate, Verdict verdict)
    {
        var sheet = Vehicle($$"""{{Leaf}},{{Heights}},"axle.rear.spring.second-height":"{{second}}","axle.rear.spring.second-load":"1385 kg" """, governs: """ "governs":["leaf.rear"],""");
        if (double.IsNaN(rate)) Assert.True(sheet.Key("axle.rear.wheel-rate")!.Value.Value.IsAbsent);
        else Assert.Equal(rate, Opened.Told(sheet, "axle.rear.wheel-rate"), 0.001);
        Assert.Equal(verdict, Verdicts(sheet)["springs.wheel-rate[axle=rear]/known"]);
    }

    // 40 mm between the heights; a helper that touches after 30 is in the rate, one that touches after 50 is not.
    [Theory]
    [InlineData("30 mm", double.NaN, Verdict.Unknown)]
    [InlineData("50 mm", 36.775, Verdict.Pass)]
    public void Heights_weighed_across_the_helper_give_no_rate(string gap, double rate, Verdict verdict)
    {
        var sheet = Vehicle($$"""{{Heights}},"axle.rear.spring.second-height":"160 mm","axle.rear.spring.second-load":"1385 kg","axle.rear.helper.rate":"20 N/mm","axle.rear.helper.clearance":"{{gap}}" """);
        if (double.IsNaN(rate)) Assert.True(sheet.Key("axle.rear.wheel-rate")!.Value.Value.IsAbsent);
        else Assert.Equal(rate, Opened.Told(sheet, "axle.rear.wheel-rate"), 0.001);
        Assert.Equal(verdict, Verdicts(sheet)["springs.wheel-rate[axle=rear]/known"]);
    }

    // 1085 to 1180 kg, 185 unsprung, 75 mm: 28.3 N/mm loaded at least. 24 N/mm alone is too soft; with the helper the axle stands on 44 loaded and loses 15 mm.
    [Theory]
    [InlineData("10 mm", Verdict.Pass)]
    [InlineData("90 mm", Verdict.Caution)]
    public void What_to_order_sees_the_helper_that_touches(string gap, Verdict verdict)
    {
        var sheet = Vehicle($$"""{{Heights}},"axle.rear.spring.rate":"24 N/mm","axle.rear.helper.rate":"20 N/mm","axle.rear.helper.clearance":"{{gap}}","axle.rear.unsprung-mass":"185 kg" """);
        Assert.Equal(verdict, Verdicts(sheet)["springs.restore[axle=rear]/present"]);
    }

    [Fact]
    public void Other_springs_take_their_facts_with_them()
    {
        var sheet = Opened.Vehicle($$$"""
            ,{"id":"springs.rear","parent":"vehicle","title":"Rear springs","options":[
              {"id":"as-found","governs":["leaf.rear"],"masses":[],"parameters":{ {{{Leaf}}} }},
              {"id":"other","class":"replace","originality":0.5,"masses":[],"parameters":{"axle.rear.spring.rate":"40 N/mm"}},
              {"id":"unknown","class":"replace","originality":0.5,"masses":[]}]}
            """, """
            {"id":"working","base":null,"choices":{}},{"id":"other","base":null,"choices":{"springs.rear":"other"}},{"id":"unknown","base":null,"choices":{"springs.rear":"unknown"}}
            """, Weighed);
        Assert.Equal(196.2, Opened.Told(sheet.Sheet(), "axle.rear.wheel-rate"), 0.05);
        Assert.Equal(40, Opened.Told(sheet.Sheet("other"), "axle.rear.wheel-rate"), 1e-9);
        var unknown = sheet.Sheet("unknown");
        Assert.True(unknown.Key("axle.rear.wheel-rate")!.Value.Value.IsAbsent);
        Assert.Equal(Verdict.Unknown, Verdicts(unknown)["springs.wheel-rate[axle=rear]/known"]);
    }

    // 0.95 of half of 838.2 mm is guessed; what is taped on the axle counts instead and is known as measured.
    [Fact]
    public void Height_over_the_ground_rests_on_a_guess_until_the_axle_is_taped()
    {
        var rated = $$"""{{Heights}},"axle.rear.spring.rate":"38 N/mm","wheel.*.*.tire.size":"33x10.50R15" """;
        var guessed = Vehicle(rated);
        Assert.Equal(200 + (0.95 * 419.1), Opened.Told(guessed, "axle.rear.empty.datum-height"), 0.001);
        Assert.Equal(Basis.Assumed, guessed.Key("axle.rear.empty.datum-height")!.Value.Basis);
        var taped = Vehicle($$"""{{rated}},"axle.rear.loaded-radius":{"value":"392 mm","basis":"measured"} """);
        Assert.Equal(592, Opened.Told(taped, "axle.rear.empty.datum-height"), 0.001);
        Assert.Equal(200, Opened.Told(taped, "axle.rear.empty.ride-height"), 1e-9);
    }

    // 1085 + 95.39 kg on the axle and 185 kg of it unsprung: 497.7 kg on each spring (derived), 452.0 at the limit.
    [Fact]
    public void Each_condition_is_held_against_the_rating_of_the_springs()
    {
        var verdicts = Verdicts(Vehicle(""" "axle.rear.unsprung-mass":"185 kg","axle.rear.spring.rating":"480 kg" """));
        Assert.Equal(Verdict.Pass, verdicts["springs.axle-capacity[axle=rear,condition=empty]/rating"]);
        Assert.Equal(Verdict.Fail, verdicts["springs.axle-capacity[axle=rear,condition=loaded]/rating"]);
    }

    [Fact]
    public void A_helper_and_a_stop_count_in_the_condition_that_reaches_them()
    {
        var sheet = Vehicle($$"""
            {{Heights}},"axle.rear.spring.rate":"30 N/mm","axle.rear.helper.rate":"20 N/mm","axle.rear.helper.clearance":"10 mm","axle.rear.unsprung-mass":"185 kg",
            "axle.rear.bump-stop.clearance":"60 mm","axle.rear.bump-stop.squash":"25 mm","axle.rear.spring.base":"1 m"
            """);
        Assert.Equal(30, Opened.Told(sheet, "axle.rear.empty.spring-rate"), 1e-9);
        Assert.Equal(50, Opened.Told(sheet, "axle.rear.loaded.spring-rate"), 1e-9);
        // 467.7 N a wheel: 300 N in the first 10 mm, 167.7 / 50 = 3.36 mm more.
        Assert.Equal(200 - 13.355, Opened.Told(sheet, "axle.rear.loaded.ride-height"), 0.005);
        Assert.Equal(60 - 13.355, Opened.Told(sheet, "axle.rear.loaded.bump-travel"), 0.005);
        Assert.Equal(60 + 25 - 13.355, Opened.Told(sheet, "axle.rear.loaded.full-bump-travel"), 0.005);
        Assert.Equal(50, Opened.Told(sheet, "axle.rear.loaded.carrying-rate"), 1e-9);
        // k s^2 / 2 in N m/deg: the helper holds the body in the condition that reaches it.
        Assert.Equal(30000 / 2.0 * Math.PI / 180, Opened.Told(sheet, "axle.rear.empty.roll-stiffness"), 1e-6);
        Assert.Equal(50000 / 2.0 * Math.PI / 180, Opened.Told(sheet, "axle.rear.loaded.roll-stiffness"), 1e-6);
        // 20 N/mm x 3.355 mm = 67.1 N = 6.84 kg; (1085 + 95.39 - 185) / 2 = 497.7 kg less that.
        Assert.Equal(6.84, Opened.Told(sheet, "axle.rear.loaded.spring-relief"), 0.01);
        Assert.Equal(497.695 - 6.842, Opened.Told(sheet, "axle.rear.loaded.spring-load"), 0.01);
        Assert.Equal(Verdict.Caution, Verdicts(sheet)["springs.ride-height[axle=rear,condition=loaded]/travel"]);
    }

    private static Sheet Vehicle(string facts, string governs = "") => Opened.Vehicle(
        $$$""",{"id":"parts","parent":"vehicle","title":"Parts",{{{governs}}}"options":[{"id":"as-found","parameters":{ {{{facts}}} }}]}""", top: Weighed).Sheet();

    private static Dictionary<string, Verdict> Verdicts(Sheet sheet) => sheet.Findings().ToDictionary(f => f.Id, f => f.Finding.Verdict);
}
