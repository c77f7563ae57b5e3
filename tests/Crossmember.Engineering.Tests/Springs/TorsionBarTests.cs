using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Springs;

public class TorsionBarTests
{
    // Derived by hand: pi 25^4 x 79300 / (32 x 1000) = 3.0411e6 N mm/rad over 400^2 = 19.007 N/mm; 16 x 3922.7 x 400 / (pi 25^3) = 511.4 MPa.
    [Fact]
    public void A_level_arm_is_the_bar_over_the_lever_squared()
    {
        var r = Of(1000, 25, 400, 0, 400);
        r.Gives("rate", 19.007, 0.0005);
        r.Gives("barRate", 3041.117 * Math.PI / 180, 0.0005);
        r.Gives("stress", 511.4, 0.05);
    }

    // Independent: the force at the arm's end at two angles a hair apart, from the twist alone, over the height between them.
    [Fact]
    public void Rate_agrees_with_the_force_at_two_heights() =>
        Gen.Select(Gen.Double[700, 1600], Gen.Double[18, 40], Gen.Double[200, 600], Gen.Double[-40, 30], Gen.Double[50, 500]).Sample((L, d, R, angle, load) =>
        {
            double kt = Math.PI * Math.Pow(d, 4) * 79300 / (32 * L), a0 = angle * Math.PI / 180; // N mm/rad
            var twist0 = load * 9.80665 * R * Math.Cos(a0) / kt;
            double Force(double a) => kt * (twist0 + a0 - a) / (R * Math.Cos(a));
            const double step = 1e-5;
            var expected = (Force(a0 - step) - Force(a0 + step)) / (R * (Math.Sin(a0 + step) - Math.Sin(a0 - step)));
            var r = Of(L, d, R, angle, load);
            if (expected > 0) Assert.Equal(expected, r.Number("rate")!.Value, 1e-5 * expected);
            else Assert.Equal("fail", r.Verdict("arm"));
        }, iter: 60);

    [Fact]
    public void A_hanging_arm_under_load_is_softer_than_the_same_arm_raised() => Gen.Double[2, 20].Sample(a =>
        Of(1000, 25, 400, a, 400).Number("rate")!.Value < Of(1000, 25, 400, -a, 400).Number("rate")!.Value, iter: 20);

    // An overloaded thin bar on a hanging arm: the lever shortens faster than the bar gives way.
    [Theory]
    [InlineData(85, "stands nearly upright")]
    [InlineData(30, "fall through")]
    public void An_arm_that_cannot_carry_is_named_and_has_no_rate(double angle, string says)
    {
        var r = Of(2000, 12, 600, angle, 1500);
        Assert.Equal("fail", r.Verdict("arm"));
        Assert.Contains(says, r.Finding("arm")["text"]!.GetValue<string>());
        Assert.Null(r.Number("rate"));
    }

    [Theory]
    [InlineData(600, "pass")]
    [InlineData(550, "caution")]
    [InlineData(500, "fail")]
    public void Stress_is_held_against_the_stated_limit(double limit, string verdict) =>
        Assert.Equal(verdict, Of(1000, 25, 400, 0, 400, $$""","stressLimit":"{{limit}} MPa" """).Verdict("stress"));

    private static JsonObject Of(double length, double diameter, double arm, double angle, double load, string more = "") => Door.Run("springs.torsion-bar",
        $$"""{"barLength":"{{length:R}} mm","barDiameter":"{{diameter:R}} mm","armLength":"{{arm:R}} mm","armAngle":"{{angle:R}} deg","load":"{{load:R}} kg"{{more}} }""");
}
