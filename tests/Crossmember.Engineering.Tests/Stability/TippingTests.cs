using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Stability;

public class TippingTests
{
    private const double PoundForce = 0.45359237 * 9.80665; // N

    // Derived: T 1.47, h 0.72 m -> 45.59 deg; 20 mm to the left of the middle: 44.80 deg to the left, 46.36 to the right.
    [Fact]
    public void A_rigid_vehicle_tips_where_the_line_of_gravity_passes_its_lower_wheels()
    {
        Slope(1.47, 0.72, 0, null).Gives("angle", 45.59, 0.005);
        var off = Slope(1.47, 0.72, -0.020, null);
        off.Gives("leftDown", 44.80, 0.005);
        off.Gives("rightDown", 46.36, 0.005);
    }

    // Second method: let the weight move downhill as the body leans and walk up the slope in small steps until the weight's line leaves the wheels.
    [Theory]
    [InlineData(1.47, 0.72, 0.06)]
    [InlineData(1.60, 0.85, 0.09)]
    [InlineData(1.40, 0.95, 0.04)]
    public void With_the_body_leaning_it_tips_where_a_walk_up_the_slope_says(double track, double h, double shift)
    {
        double th = 0;
        while (true)
        {
            // In the frame of the slope: the weight's place after leaning, and the line straight down from it.
            var across = shift * Math.Sin(th);
            if ((across + (h * Math.Tan(th))) >= track / 2) break;
            th += 1e-6;
        }
        Slope(track, h, 0, shift).Gives("angle", th * 180 / Math.PI, 0.001);
    }

    [Fact]
    public void Lean_a_higher_weight_or_a_weight_off_the_middle_never_helps() =>
        Gen.Select(Gen.Double[1.2, 1.9], Gen.Double[0.5, 1.1], Gen.Double[0, 0.2], Gen.Double[0, 0.15]).Sample((track, h, shift, off) =>
        {
            var angle = Slope(track, h, off, shift).Number("angle")!.Value;
            Assert.True(angle <= Slope(track, h, off, 0).Number("angle")!.Value + 1e-9);
            Assert.True(angle <= Slope(track, h, 0, shift).Number("angle")!.Value + 1e-9);
            Assert.True(Slope(track, h + 0.05, off, shift).Number("angle")!.Value < angle);
            Assert.Equal(angle, Slope(track, h, -off, shift).Number("angle")!.Value, 1e-9);
        });

    [Fact]
    public void A_weight_outside_the_wheels_is_no_answer()
    {
        var r = Slope(1.4, 0.8, 0.8, null);
        Assert.Equal("fail", r.Verdict("angle"));
        Assert.Null(r.Number("angle"));
    }

    // Derived: 2150 kg, a 1.2919, h 0.72, L 2.560 m: nose up 30 deg front 6080 N, rear 12180 N; tips facing up at 60.41 deg, facing down at 60.87.
    [Fact]
    public void Thirty_degrees_nose_up()
    {
        var r = Grade(2150, 1.2919, 0.72, Math.Tan(Math.PI / 6));
        r.Gives("frontFacingUp", 6080 / PoundForce, 0.6 / PoundForce);
        r.Gives("rearFacingUp", 12180 / PoundForce, 0.6 / PoundForce);
        r.Gives("tipsFacingUp", 60.41, 0.005);
        r.Gives("tipsFacingDown", 60.87, 0.005);
    }

    // Equilibrium: the two axles carry the weight's share across the slope, and moments about the weight itself vanish.
    [Fact]
    public void Forces_and_moments_balance_on_any_grade() =>
        Gen.Select(Gen.Double[800, 4000], Gen.Double[0.6, 1.9], Gen.Double[0.4, 1.1], Gen.Double[0, 0.7]).Sample((m, a, h, grade) =>
        {
            var r = Grade(m, a, h, grade);
            if (r.Number("frontFacingUp") is not { } front) return;
            double weight = m / 0.45359237, th = Math.Atan(grade), rear = r.Number("rearFacingUp")!.Value; // lbf
            Assert.Equal(weight * Math.Cos(th), front + rear, 1e-9 * weight);
            Assert.Equal(front * a, (rear * (2.56 - a)) - (weight * Math.Sin(th) * h), 1e-9 * weight);
        });

    // On the very slope where it tips the upper axle carries nothing.
    [Fact]
    public void On_the_slope_where_it_tips_the_upper_axle_is_empty()
    {
        var tips = Grade(2150, 1.2919, 0.72, 0.1).Number("tipsFacingUp")!.Value * Math.PI / 180;
        Assert.Equal(0, Grade(2150, 1.2919, 0.72, Math.Tan(tips) - 1e-9).Number("frontFacingUp")!.Value, 1e-3);
        var over = Grade(2150, 1.2919, 0.72, Math.Tan(tips) + 0.01);
        Assert.Null(over.Number("frontFacingUp"));
        Assert.Equal("fail", over.Verdict("steered"));
    }

    // Derived: 2150 kg, h 0.72, L 2.560 m braking at 0.6 g: 3558 N move.
    [Fact]
    public void Braking_moves_load_to_the_front()
    {
        var r = Door.Run("stability.braking-transfer", """{"total":"2150 kg","centerX":"1291.9 mm","height":"720 mm","wheelbase":"2560 mm","deceleration":0.6}""");
        r.Gives("moved", 3558 / PoundForce, 0.5 / PoundForce);
        Assert.Equal(2150 / 0.45359237, r.Number("front")!.Value + r.Number("rear")!.Value, 1e-6);
    }

    // Without lean the inner wheels lift at the static stability factor, and half the weight has moved by then.
    [Fact]
    public void Without_lean_the_inner_wheels_lift_at_the_static_stability_factor() =>
        Gen.Select(Gen.Double[1.2, 1.6], Gen.Double[0.8, 1.1]).Sample((track, h) =>
        {
            var lifts = Bend(track, h, 0.1, 0).Number("lifts")!.Value;
            Assert.Equal(track / (2 * h), lifts, 1e-9);
            Assert.Equal(2000 / 0.45359237 / 2, Bend(track, h, lifts - 1e-12, 0).Number("moved")!.Value, 1e-6);
        });

    // As if rigid it is too good: what is not known may not reassure.
    [Fact]
    public void Without_the_lean_nothing_is_called_good()
    {
        Assert.Equal("caution", Slope(1.6, 0.6, 0, null).Verdict("angle"));
        Assert.Equal("caution", Door.Run("stability.cornering", """{"total":"2000 kg","frontTrack":"1.6 m","rearTrack":"1.6 m","height":"0.6 m"}""").Verdict("slides-first"));
        Assert.Equal("pass", Slope(1.6, 0.6, 0, 0.02).Verdict("angle"));
    }

    // A wheel of the stiffer axle may lift long before the whole side does.
    [Fact]
    public void The_first_wheel_that_lifts_decides() => Assert.Equal("caution", Door.Run("stability.cornering",
        """{"total":"2000 kg","frontTrack":"1.6 m","rearTrack":"1.6 m","height":"0.6 m","shiftPerG":"0.02 m","firstWheel":0.7}""").Verdict("slides-first"));

    [Fact]
    public void A_tall_soft_vehicle_lifts_its_wheels_before_it_slides()
    {
        var r = Bend(1.45, 1.0, 0.4, 0.1);
        Assert.Equal("caution", r.Verdict("slides-first"));
        Assert.True(r.Number("lifts") < 0.66);
    }

    private static JsonObject Slope(double track, double h, double y, double? shift) => Door.Run("stability.side-slope", string.Create(CultureInfo.InvariantCulture,
        $$"""{"frontTrack":"{{track:R}} m","rearTrack":"{{track:R}} m","height":"{{h:R}} m","offset":"{{y:R}} m"{{(shift is { } l ? $",\"shiftPerG\":\"{l:R} m\"" : "")}}}"""));

    private static JsonObject Grade(double m, double a, double h, double grade) => Door.Run("stability.grade-tip", string.Create(CultureInfo.InvariantCulture,
        $$"""{"total":"{{m:R}} kg","centerX":"{{a:R}} m","height":"{{h:R}} m","wheelbase":"2560 mm","grade":{{grade:R}}}"""));

    private static JsonObject Bend(double track, double h, double lateral, double shift) => Door.Run("stability.cornering", string.Create(CultureInfo.InvariantCulture,
        $$"""{"total":"2000 kg","frontTrack":"{{track:R}} m","rearTrack":"{{track:R}} m","height":"{{h:R}} m","lateral":{{lateral:R}},"shiftPerG":"{{shift:R}} m"}"""));
}
