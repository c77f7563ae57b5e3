using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Steering;

public class TurningTests
{
    private const double Foot = 0.3048, Deg = Math.PI / 180;

    // Derived: cot 20 - B / L, with the outer wheel at 20 deg as US Army TM 9-8000, par. 33-17 tells toe-out on turns. A table in circulation gives these to 0.1 deg
    // (and one of its rows lost a decimal point).
    [Theory]
    [InlineData(60, 100, 25.0)]
    [InlineData(78, 100, 26.9)]
    [InlineData(70, 140, 24.0)]
    public void Toe_out_on_turns_with_the_outer_wheel_at_twenty(double kingpins, double wheelbase, double inner) =>
        Ackermann(kingpins, wheelbase, 25, null).Gives("innerAtTwenty", inner, 0.05);

    // Derived: L 2.560 m, kingpins 1.30 m, inner 33 deg -> outer 26.03 deg, outer kingpin radius 5.834 m, scrub 0.085 -> circle 11.84 m.
    [Fact]
    public void One_turn_by_hand()
    {
        Ackermann(1300 / 25.4, 2560 / 25.4, 33, null).Gives("idealOuter", 26.03, 0.005);
        var r = Circle("""{"wheelbase":"2560 mm","kingpinDistance":"1.30 m","innerAngle":"33 deg","scrub":"0.085 m"}""");
        r.Gives("kingpinRadius", 5.834 / Foot, 0.0005 / Foot);
        r.Gives("tireCircle", 11.84 / Foot, 0.005 / Foot);
    }

    // Both wheels are square to their radius to one point on the rear axle's line: its distance from the middle is the same seen from either.
    [Fact]
    public void Both_radii_meet_on_the_line_of_the_rear_axle() =>
        Gen.Select(Gen.Double[30, 100], Gen.Double[60, 260], Gen.Double[5, 50]).Sample((B, L, inner) =>
        {
            var outer = Ackermann(B, L, inner, null).Number("idealOuter")!.Value;
            Assert.Equal((L / Math.Tan(inner * Deg)) + (B / 2), (L / Math.Tan(outer * Deg)) - (B / 2), 1e-7 * L);
        }, iter: 100);

    // There and back: the inner angle told for an outer one of 20 deg has 20 deg as its ideal outer.
    [Fact]
    public void The_angle_for_twenty_leads_back_to_twenty() =>
        Gen.Select(Gen.Double[30, 100], Gen.Double[60, 260]).Sample((B, L) =>
        {
            if (Ackermann(B, L, 20, null).Number("innerAtTwenty") is not { } inner) return;
            Ackermann(B, L, inner, null).Gives("idealOuter", 20, 1e-9);
        }, iter: 50);

    [Theory]
    [InlineData(29.9, "pass")]
    [InlineData(30.1, "caution")]
    [InlineData(22.1, "pass")]
    [InlineData(21.9, "caution")]
    public void An_outer_wheel_four_degrees_off_is_told(double outer, string verdict)
    {
        var r = Ackermann(1300 / 25.4, 2560 / 25.4, 33, outer);
        Assert.Equal(verdict, r.Verdict("error"));
        Assert.Equal(Math.Sign(outer - 26.03), Math.Sign(r.Number("error")!.Value));
    }

    // The two kingpin radii and the corner, drawn as points about the turning center and measured.
    [Fact]
    public void Wall_to_wall_is_the_corner_farthest_from_the_center() =>
        Gen.Select(Gen.Double[70, 200], Gen.Double[40, 80], Gen.Double[10, 45], Gen.Double[0, 60], Gen.Double[50, 90]).Sample((L, B, inner, o, W) =>
        {
            var r = Circle($$"""{"wheelbase":"{{L:R}} in","kingpinDistance":"{{B:R}} in","innerAngle":"{{inner:R}} deg","overhang":"{{o:R}} in","cornerWidth":"{{W:R}} in"}""");
            var middle = (L / Math.Tan(inner * Deg)) + (B / 2); // of the vehicle from the turning center
            Assert.Equal(2 * Math.Sqrt(Math.Pow(L + o, 2) + Math.Pow(middle + (W / 2), 2)) / 12, r.Number("wallCircle")!.Value, 1e-9 * middle);
            Assert.Equal(Math.Sqrt((L * L) + Math.Pow(middle + (B / 2), 2)) / 12, r.Number("kingpinRadius")!.Value, 1e-9 * middle);
        }, iter: 100);

    [Fact]
    public void Wheels_that_do_not_agree_on_a_center_are_told()
    {
        var r = Circle("""{"wheelbase":"126 in","kingpinDistance":"50 in","innerAngle":"33 deg","outerAngle":"33 deg"}""");
        Assert.Contains(r["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("do not agree", StringComparison.Ordinal));
        Assert.Equal(126 / Math.Sin(33 * Deg) / 12, r.Number("kingpinRadius")!.Value, 1e-9);
        Assert.Null(r.Number("tireCircle"));
        Assert.Null(r.Number("wallCircle"));
    }

    [Theory]
    [InlineData("steering.ackermann", """{"kingpinDistance":"50 in","wheelbase":"100 in","innerAngle":"95 deg","outerAngle":"30 deg"}""")]
    [InlineData("steering.turning-circle", """{"kingpinDistance":"50 in","wheelbase":"100 in","innerAngle":"30 deg","outerAngle":"91 deg"}""")]
    public void No_wheel_turns_through_a_right_angle(string id, string inputs)
    {
        var r = Door.Run(id, inputs);
        Assert.All(r["outputs"]!.AsObject(), o => Assert.Null(o.Value!["value"]));
        Assert.Contains(r["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("right angle", StringComparison.Ordinal));
    }

    // Derived: 3 deg on 400 mm trail 400 x tan 3 = 20.96 mm; an axis 10 mm ahead of the wheel's center adds them whole.
    [Fact]
    public void Trail_is_the_leaning_axis_met_with_the_ground()
    {
        Caster(3, 1, ",\"loadedRadius\":\"400 mm\"").Gives("trail", 20.96 / 25.4, 0.005 / 25.4);
        Caster(3, 1, ",\"loadedRadius\":\"400 mm\",\"offset\":\"10 mm\"").Gives("trail", 30.96 / 25.4, 0.005 / 25.4);
        var rolling = Caster(3, 1, ",\"rollingRadius\":\"410 mm\"");
        Assert.Equal(rolling.Number("rollingTrail"), rolling.Number("trail"));
    }

    // 1 to 3 deg manual, 3 to 6 deg powered: common practice, no source.
    [Theory]
    [InlineData(0.9, 1, "caution")]
    [InlineData(1, 1, "pass")]
    [InlineData(3, 1, "pass")]
    [InlineData(3.1, 1, "caution")]
    [InlineData(2.9, 4, "caution")]
    [InlineData(6, 4, "pass")]
    [InlineData(6.1, 4, "caution")]
    public void Usual_caster_depends_on_the_assist(double caster, double assist, string verdict) => Assert.Equal(verdict, Caster(caster, assist, "").Verdict("caster"));

    private static JsonObject Caster(double caster, double assist, string more) =>
        Door.Run("steering.caster-trail", $$"""{"caster":"{{caster:R}} deg","assistFactor":{{assist:R}}{{more}}}""");

    // Nobody said whether it is powered: between what manual and what powered steering has there is no pass; less or more than either has stays a caution.
    [Theory]
    [InlineData(0.9, "caution")]
    [InlineData(2, "unknown")]
    [InlineData(4, "unknown")]
    [InlineData(6.1, "caution")]
    public void Caster_of_a_steering_that_nobody_stated(double caster, string verdict)
    {
        var r = Door.Run("steering.caster-trail", $$"""{"caster":"{{caster:R}} deg","loadedRadius":"400 mm"}""");
        Assert.Equal(verdict, r.Verdict("caster"));
        if (verdict == "unknown") Assert.Contains("1 for a manual box", r.Finding("caster")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    private static JsonObject Ackermann(double kingpins, double wheelbase, double inner, double? outer) => Door.Run("steering.ackermann",
        $$"""{"kingpinDistance":"{{kingpins:R}} in","wheelbase":"{{wheelbase:R}} in","innerAngle":"{{inner:R}} deg"{{(outer is { } o ? $",\"outerAngle\":\"{o:R} deg\"" : "")}}}""");

    private static JsonObject Circle(string inputs) => Door.Run("steering.turning-circle", inputs);
}
