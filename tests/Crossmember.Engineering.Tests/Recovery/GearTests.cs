using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Recovery;

public class GearTests
{
    // Australian Emergency Manual, Disaster Rescue, par. 3.15: steel wire rope 8 D^2 kg, D in mm; 30 % less where sharply bent: 14 mm 1568 and 1098 kg.
    [Theory]
    [InlineData("straight", 1568, 0.5)]
    [InlineData("sharp", 1098, 0.5)]
    public void Field_rule_of_steel_wire_rope(string bend, double kg, double tolerance) =>
        Door.Run("recovery.rope", $$"""{"linePull":"10 kN","ropeDiameter":"14 mm","rope":"steel","bend":"{{bend}}"}""").Gives("fieldRule", kg, tolerance);

    [Fact]
    public void The_field_rule_is_not_for_synthetic_rope() =>
        Assert.Null(Door.Run("recovery.rope", """{"linePull":"10 kN","ropeDiameter":"10 mm","rope":"synthetic"}""").Number("fieldRule"));

    // ASME B30.7 from memory: design factor 3.5: 6600 kgf -> 1886 kgf; a vehicle winch of 4310 kgf on that rope has 1.53 and must not be called up to it.
    [Fact]
    public void A_vehicle_winch_is_told_its_own_factor_and_not_the_lifting_one()
    {
        var r = Door.Run("recovery.rope", """{"linePull":"4310 kgf","breakingForce":"6600 kgf"}""");
        r.Gives("designFactor", 1.53, 0.005);
        r.Gives("liftingLoad", 1886, 0.5);
        Assert.Equal("caution", r.Verdict("design-factor"));
        Assert.Contains("lifting gear by ASME B30.7 has 3.5, and this is none", r.Finding("design-factor")["text"]!.GetValue<string>());
    }

    [Theory]
    [InlineData("86.1 kN", "straight", "pass")]
    [InlineData("85.9 kN", "straight", "caution")]
    [InlineData("86.1 kN", "sharp", "caution")]
    [InlineData("42.9 kN", "straight", "fail")]
    [InlineData("61 kN", "sharp", "fail")] // 42.7 kN are left round the bend
    public void A_rope_holds_more_than_its_winch_pulls(string breaking, string bend, string verdict) =>
        Assert.Equal(verdict, Door.Run("recovery.rope", $$"""{"linePull":"43 kN","breakingForce":"{{breaking}}","bend":"{{bend}}"}""").Verdict("design-factor"));

    // US Navy steelworker manual: 3 D^2 tons of 2000 lb, 5/8 in: printed 2343.8 lb. A shackle without a mark passes no check, however little it carries.
    [Fact]
    public void An_unmarked_shackle_gets_the_field_rule_and_no_pass()
    {
        var r = Shackle(""" "pinSize":"5/8 in" """, "1 kN");
        r.Gives("fieldRule", 2343.8 * 0.45359237, 0.05 * 0.45359237);
        Assert.Equal("caution", r.Verdict("load"));
        Assert.Contains("No mark, no rating", r.Finding("load")["text"]!.GetValue<string>());
        Assert.Equal("fail", Shackle(""" "pinSize":"5/8 in" """, "10.5 kN").Verdict("load"));
        Assert.Null(r.Number("breaking"));
    }

    // Rated 4750 kg: breaks at 23,750 or more (ASME B30.26 from memory: 5); 45 deg 3325, 90 deg 2375 kg (70 and 50 %: common practice, no source).
    [Theory]
    [InlineData(0, 4750)]
    [InlineData(45, 3325)]
    [InlineData(90, 2375)]
    [InlineData(46, 2375)]
    [InlineData(20, 3325)]
    public void Side_loading_takes_from_a_shackle(double degrees, double kg)
    {
        var r = Shackle($""" "ratedLoad":"4750 kg","sideAngle":"{degrees} deg","pinSize":"3/4 in" """, "10 kN");
        r.Gives("allowed", kg, 0.5);
        r.Gives("breaking", 23750, 0.5);
    }

    [Theory]
    [InlineData("45 kN", "0 deg", "pass")]
    [InlineData("47 kN", "0 deg", "fail")]
    [InlineData("45 kN", "20 deg", "fail")]
    [InlineData("45 kN", "100 deg", "unknown")]
    public void The_mark_governs(string pull, string angle, string verdict) =>
        Assert.Equal(verdict, Shackle($""" "ratedLoad":"4750 kg","sideAngle":"{angle}" """, pull).Verdict("load"));

    // The weakest is found again by hand: 40 / 46.58 on the shackle, 80 / 78.45 on a block rated 8 t.
    [Fact]
    public void The_weakest_link_is_named()
    {
        var r = Chain("""
            "breakingForce":"90 kN","shackleRatedLoad":"4750 kg","blockRatedLoad":"8 t","anchorRatedLoad":"10 t","mountStrength":"90 kN"
            """);
        Assert.Equal("block", r["outputs"]!["weakest"]!["value"]!.GetValue<string>());
        r.Gives("used", 101.97, 0.01);
        Assert.Equal("fail", r.Verdict("weakest"));
        Assert.Equal("pass", Chain("""
            "breakingForce":"90 kN","shackleRatedLoad":"4750 kg","blockRatedLoad":"8 t","anchorRatedLoad":"10 t","mountStrength":"90 kN","blockAngle":"90 deg"
            """).Verdict("weakest"));
    }

    [Theory]
    [InlineData(""" "shackleRatedLoad":"4750 kg" """, "caution", "Not looked at, since not stated: rope, block, anchor strap, winch mount")]
    [InlineData(""" "breakingForce":"39 kN","shackleRatedLoad":"4750 kg" """, "fail", "the rope is nearest its limit: 103 % of its breaking force")]
    [InlineData(""" "breakingForce":"70 kN","shackleRatedLoad":"4750 kg","blockRatedLoad":"9 t","anchorRatedLoad":"9 t","mountStrength":"90 kN" """, "caution", "The rope takes 57 %")]
    [InlineData(""" "bend":"sharp" """, "unknown", "no link between winch and anchor is stated")]
    public void What_is_not_stated_or_near_breaking_is_no_pass(string links, string verdict, string says)
    {
        var r = Chain(links);
        Assert.Equal(verdict, r.Verdict("weakest"));
        Assert.Contains(says, r.Finding("weakest")["text"]!.GetValue<string>());
    }

    // Twice the pull is twice the use of every link, and the weakest stays the weakest.
    [Fact]
    public void Use_grows_with_the_pull() =>
        Gen.Select(Gen.Double[5, 60], Gen.Double[1.1, 4], Gen.Double[500, 20000], Gen.Double[30, 200], Gen.Double[0, 170]).Sample((pull, times, kg, rope, angle) =>
        {
            var links = $""" "breakingForce":"{rope:R} kN","shackleRatedLoad":"{kg:R} kg","blockRatedLoad":"{kg * 2:R} kg","blockAngle":"{angle:R} deg" """;
            JsonObject one = Chain(links, $"{pull:R} kN"), more = Chain(links, $"{pull * times:R} kN");
            Assert.Equal(one["outputs"]!["weakest"]!["value"]!.GetValue<string>(), more["outputs"]!["weakest"]!["value"]!.GetValue<string>());
            Assert.Equal(times, more.Number("used")!.Value / one.Number("used")!.Value, 1e-9);
        }, iter: 100);

    private static JsonObject Shackle(string members, string pull) => Door.Run("recovery.shackle", $$"""{"linePull":"{{pull}}",{{members}} }""");

    private static JsonObject Chain(string members, string pull = "40 kN") => Door.Run("recovery.weakest-link", $$"""{"linePull":"{{pull}}",{{members}} }""");
}
