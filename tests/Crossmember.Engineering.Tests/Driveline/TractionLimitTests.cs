using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Driveline;

public class TractionLimitTests
{
    private const double PoundForce = 0.45359237 * 9.80665; // N

    // Derived: 2150 kg, center of gravity 1.2919 m behind the front axle, 0.72 m high, wheelbase 2.560 m, 30 deg nose up: rear axle 12180 N, front 6080 N. With mu 1 force is load.
    [Fact]
    public void Thirty_degrees_nose_up_moves_load_to_the_rear_axle()
    {
        var r = Grip(1065.01, 1084.99, """ "grip":1,"grade":0.57735026919,"height":"0.72 m","wheelbase":"2560 mm" """);
        r.Gives("rearForceOnGrade", 12180 / PoundForce, 5 / PoundForce);
        Assert.Equal(6080, (r.Number("allForceOnGrade")!.Value - r.Number("rearForceOnGrade")!.Value) * PoundForce, 5.0);
    }

    // Derived: 0.7 x 1085 x 9.80665 = 7448 N and 0.7 x 2150 x 9.80665 = 14759 N.
    [Fact]
    public void On_the_level_grip_is_a_share_of_the_load()
    {
        var r = Grip(1065, 1085, """ "grip":"0.7" """);
        r.Gives("rearForce", 7448 / PoundForce, 0.5 / PoundForce);
        r.Gives("allForce", 14759 / PoundForce, 0.5 / PoundForce);
        Assert.Null(r.Number("rearForceOnGrade"));
    }

    // Which end is which makes no difference to all wheels; the two axles alone add up to all.
    [Fact]
    public void Front_and_rear_change_places_without_changing_the_sum() =>
        Gen.Select(Gen.Double[200, 4000], Gen.Double[200, 4000], Gen.Double[0.1, 1.1]).Sample((front, rear, mu) =>
        {
            JsonObject one = Grip(front, rear, $""" "grip":{mu:R} """), other = Grip(rear, front, $""" "grip":{mu:R} """);
            var all = one.Number("allForce")!.Value;
            Assert.Equal(all, other.Number("allForce")!.Value, 1e-9 * all);
            Assert.Equal(all, one.Number("rearForce")!.Value + other.Number("rearForce")!.Value, 1e-9 * all);
        }, iter: 100);

    // The ground's answer to the weight goes through the point where the line of gravity meets it: moments about the rear contact, by hand.
    [Fact]
    public void Moments_about_the_rear_contact_balance_on_the_grade() =>
        Gen.Select(Gen.Double[500, 3000], Gen.Double[500, 3000], Gen.Double[0.05, 0.8], Gen.Double[0.4, 1], Gen.Double[2, 4]).Sample((front, rear, grade, h, L) =>
        {
            var r = Grip(front, rear, $$""" "grip":1,"grade":{{grade:R}},"height":"{{h:R}} m","wheelbase":"{{L:R}} m" """);
            double th = Math.Atan(grade), weight = (front + rear) / 0.45359237; // lbf
            double b = L * front / (front + rear), onFront = weight * ((b * Math.Cos(th)) - (h * Math.Sin(th))) / L;
            if (onFront <= 0)
            {
                Assert.Null(r.Number("rearForceOnGrade"));
                return;
            }
            Assert.Equal(onFront, r.Number("allForceOnGrade")!.Value - r.Number("rearForceOnGrade")!.Value, 1e-9 * weight);
            Assert.Equal(weight * Math.Cos(th), r.Number("allForceOnGrade")!.Value, 1e-9 * weight);
        }, iter: 100);

    // On the grade it finds, the rear tires hold just what slope and rolling take: mu Nr = W (sin th + f cos th), Nr with the load moved.
    [Fact]
    public void On_the_grade_of_the_rear_axle_alone_its_tires_hold_just_enough() =>
        Gen.Select(Gen.Double[500, 2000], Gen.Double[800, 3000], Gen.Double[0.2, 1], Gen.Double[0.4, 0.9]).Sample((front, rear, mu, h) =>
        {
            var r = Grip(front, rear, $$""" "grip":{{mu:R}},"height":"{{h:R}} m","wheelbase":"2.5 m" """);
            if (r.Number("rearGrade") is not { } percent) return;
            double th = Math.Atan(percent / 100), share = rear / (front + rear);
            Assert.Equal(Math.Sin(th) + (0.015 * Math.Cos(th)), mu * ((share * Math.Cos(th)) + (h / 2.5 * Math.Sin(th))), 1e-9);
        }, iter: 100);

    [Fact]
    public void Moving_load_to_the_rear_helps_the_rear_axle_and_leaving_it_out_is_told()
    {
        JsonObject known = Grip(1065, 1085, """ "grade":"0.4","height":"0.72 m","wheelbase":"2.56 m" """), unknown = Grip(1065, 1085, """ "grade":"0.4" """);
        Assert.True(known.Number("rearForceOnGrade") > unknown.Number("rearForceOnGrade"));
        Assert.True(known.Number("rearGrade") > unknown.Number("rearGrade"));
        Assert.Equal(known.Number("allForceOnGrade"), unknown.Number("allForceOnGrade"));
        Assert.Contains(unknown["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("no load is moved"));
        Assert.DoesNotContain(known["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("no load is moved"));
    }

    // b / h = 1.26814 / 1.5 = 0.845: a 100 % grade tips this tall vehicle over backward first.
    [Fact]
    public void A_grade_that_tips_it_over_has_no_force()
    {
        var r = Grip(1065, 1085, """ "grade":"1","height":"1.5 m","wheelbase":"2.56 m" """);
        Assert.Null(r.Number("rearForceOnGrade"));
        Assert.Contains(r["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("tip over backward"));
    }

    private static JsonObject Grip(double front, double rear, string rest) =>
        Door.Run("driveline.traction-limit", $$"""{"frontLoad":"{{front:R}} kg","rearLoad":"{{rear:R}} kg",{{rest}}}""");
}
