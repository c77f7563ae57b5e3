using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Steering;

public class ToeAndRatioTests
{
    // Derived: 4.0 turns for 66 deg of one wheel from stop to stop -> 21.8.
    [Fact]
    public void Four_turns_for_sixty_six_degrees() =>
        Ratio(""" "turns":4,"innerAngles":{"left":"37 deg","right":"37 deg"},"outerAngles":{"left":"29 deg","right":"29 deg"} """).Gives("byTurns", 21.8, 0.05);

    // Uneven stops: one wheel goes 36 in and 28 out, the other 34 and 30: each 64 deg in all.
    [Fact]
    public void Uneven_stops_count_by_what_one_wheel_turns_in_all()
    {
        var r = Ratio(""" "turns":4,"innerAngles":{"left":"36 deg","right":"34 deg"},"outerAngles":{"left":"30 deg","right":"28 deg"} """);
        r.Gives("byTurns", 4 * 360 / 64.0, 1e-9);
        Assert.Equal("pass", r.Verdict("even-locks"));
        Assert.Equal("caution", Ratio(""" "turns":4,"innerAngles":{"left":"36.1 deg","right":"34 deg"},"outerAngles":{"left":"30 deg","right":"28 deg"} """).Verdict("even-locks"));
    }

    // 20:1 box, arms of 6.5 and 7 in: 21.54; 66 deg in 4 turns is 21.82 (1.3 % apart), in 4.5 turns 24.55 (12.3 %).
    [Theory]
    [InlineData("4", "pass")]
    [InlineData("4.5", "caution")]
    public void Turns_and_arms_are_held_against_each_other(string turns, string verdict)
    {
        var r = Ratio($$""" "turns":{{turns}},"innerAngles":{"left":"36 deg","right":"36 deg"},"outerAngles":{"left":"30 deg","right":"30 deg"},"boxRatio":20,"pitmanLength":"6.5 in","armLength":"7 in" """);
        r.Gives("byArms", 21.54, 0.005);
        Assert.Equal(verdict, r.Verdict("agree"));
        Assert.Equal(r.Number("byTurns"), r.Number("ratio"));
    }

    [Fact]
    public void Arms_alone_will_do_and_nothing_at_all_names_both_ways()
    {
        var arms = Ratio(""" "turns":4,"boxRatio":20,"pitmanLength":"6.5 in","armLength":"7 in" """);
        Assert.Equal(arms.Number("byArms"), arms.Number("ratio"));
        Assert.Equal("unknown", arms.Verdict("agree"));
        Assert.Null(Ratio(""" "turns":4 """).Number("ratio"));
    }

    // Derived: 0.125 in at 30 in: 0.125 / 60 = 0.0020833 -> 0.1194 deg, 11.0 ft a mile.
    [Fact]
    public void An_eighth_of_an_inch_at_thirty_inches()
    {
        var r = Toe("0.125 in", "30 in");
        r.Gives("angle", 0.1194, 0.00005);
        r.Gives("slip", 11.0, 0.005);
    }

    // Independent: the marks as points of two circles turned by the angle told; rear less front distance is the reading again.
    [Fact]
    public void Marks_turned_by_the_angle_give_the_reading_back() =>
        Gen.Select(Gen.Double[-20, 20], Gen.Double[400, 1000]).Sample((toe, D) =>
        {
            var a = Toe($"{toe:R} mm", $"{D:R} mm").Number("angle")!.Value * Math.PI / 180;
            const double track = 1450;
            double front = track - (2 * D / 2 * Math.Sin(a)), rear = track + (2 * D / 2 * Math.Sin(a));
            Assert.Equal(toe, rear - front, 1e-9);
        }, iter: 100);

    // The same angle at another diameter reads in proportion: 1/8 in for 30 in tires is 0.1375 in on 33 in tires.
    [Fact]
    public void Larger_tires_read_more_for_the_same_angle()
    {
        var r = Toe("0.125 in", "33 in", ",\"fittedDiameter\":\"33 in\",\"wantedToe\":\"0.125 in\",\"wantedDiameter\":\"30 in\"");
        r.Gives("wantedReading", 0.1375, 1e-9);
        r.Gives("reading", 0.125, 1e-9);
        Assert.Equal("pass", r.Verdict("toe"));
    }

    // A tolerance that nobody stated is a usual one, and nobody is failed by it.
    [Fact]
    public void Toe_beyond_a_tolerance_that_is_ours_is_a_caution()
    {
        const string wanted = ",\"wantedToe\":\"0.125 in\",\"wantedDiameter\":\"30 in\"";
        var r = Toe("0.3 in", "30 in", wanted);
        Assert.Equal("caution", r.Verdict("toe"));
        Assert.Contains("1.6 mm either way, a usual tolerance", r.Finding("toe")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("pass", Toe("0.187 in", "30 in", wanted).Verdict("toe"));
        Assert.Equal("caution", Toe("0.188 in", "30 in", wanted).Verdict("toe"));
    }

    // 1/8 in +- 1/16 at 30 in, taped at 16 in on the rim: 0.0667 +- 0.0333 in.
    [Theory]
    [InlineData(0.0666, "pass")]
    [InlineData(0.0999, "pass")]
    [InlineData(0.1001, "fail")]
    [InlineData(0.0332, "fail")]
    [InlineData(-0.06, "fail")]
    public void A_reading_at_the_rim_is_judged_by_the_makers_angle(double toe, string verdict)
    {
        var r = Toe($"{toe:R} in", "16 in", ",\"fittedDiameter\":\"33 in\",\"wantedToe\":\"0.125 in\",\"wantedDiameter\":\"30 in\",\"tolerance\":\"0.0625 in\"");
        Assert.Equal(verdict, r.Verdict("toe"));
        Assert.Contains("3.5 mm in", r.Finding("toe")["text"]!.GetValue<string>(), StringComparison.Ordinal); // 0.1375 in on the tread
    }

    // US Army TM 9-2320-260-20, par. 9-8: toe-in 0.13 +- 0.06 in is printed as 3.2 +- 1.6 mm, between marks on the treads. At its edges:
    [Theory]
    [InlineData("3.2 mm", "pass")]
    [InlineData("4.7 mm", "pass")]
    [InlineData("4.9 mm", "fail")]
    [InlineData("1.5 mm", "fail")]
    public void A_published_figure_with_its_tolerance(string toe, string verdict) =>
        Assert.Equal(verdict, Toe(toe, "1054 mm", ",\"wantedToe\":\"3.2 mm\",\"wantedDiameter\":\"1054 mm\",\"tolerance\":\"1.6 mm\"").Verdict("toe"));

    [Theory]
    [InlineData("0 mm", "pass")]
    [InlineData("5 mm", "pass")]
    [InlineData("5.1 mm", "caution")]
    [InlineData("-0.1 mm", "caution")]
    public void Without_the_makers_figure_practice_is_told(string toe, string verdict) => Assert.Equal(verdict, Toe(toe, "30 in").Verdict("toe"));

    [Fact]
    public void Toe_wider_than_the_wheel_has_no_answer() => Assert.Null(Toe("31 in", "30 in").Number("angle"));

    private static JsonObject Ratio(string inputs) => Door.Run("steering.ratio", $"{{{inputs}}}");

    private static JsonObject Toe(string toe, string diameter, string more = "") => Door.Run("steering.toe", $$"""{"toe":"{{toe}}","measuredDiameter":"{{diameter}}"{{more}}}""");
}
