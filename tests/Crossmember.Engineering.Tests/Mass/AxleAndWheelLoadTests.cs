using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Mass;

public class AxleAndWheelLoadTests
{
    // Derived: readings LF 545, RF 520, LR 560, RR 525 kg, wheelbase 2560, tracks 1460 and 1480 mm -> 2150 kg, 1291.9 mm behind the front axle,
    // 20.5 mm left of the middle (y is to the right here: negative), front 49.53 %. Moments by hand from the readings.
    private const double Total = 2150, MomentX = 1085 * 2.560, MomentY = (0.730 * (520 - 545)) + (0.740 * (525 - 560));

    [Fact]
    public void Four_scales_give_place_of_the_center_and_share_of_the_front_axle()
    {
        Assert.Equal(1291.9, 1000 * MomentX / Total, 0.05);
        Assert.Equal(-20.5, 1000 * MomentY / Total, 0.05);
        var front = Axle(Total, MomentX, "front");
        front.Gives("load", 1065, 1e-9);
        Assert.Equal(49.53, 100 * front.Number("load")!.Value / Total, 0.005);
        Assert.Equal("pass", front.Verdict("on-ground"));
    }

    // The weighed vehicle has unequal offsets front and rear (17.1 and 23.9 mm, cross weight 50.23 %): the stated assumption of one offset costs 2.5 kg a wheel here.
    [Theory]
    [InlineData("front", "left", 545)]
    [InlineData("front", "right", 520)]
    [InlineData("rear", "left", 560)]
    [InlineData("rear", "right", 525)]
    public void Wheel_loads_come_near_the_readings_they_were_made_from(string axle, string side, double reading) =>
        Wheel(Total, MomentX, MomentY, axle, side).Gives("load", reading, 2.5);

    [Fact]
    public void Wheel_loads_add_up_to_the_mass_and_its_moments() =>
        Gen.Select(Gen.Double[800, 4000], Gen.Double[0.05, 0.95], Gen.Double[-0.4, 0.4]).Sample((total, x, y) =>
        {
            double momentX = total * x * 2.560, momentY = total * y;
            double Load(string axle, string side) => Wheel(total, momentX, momentY, axle, side).Number("load")!.Value;
            double lf = Load("front", "left"), rf = Load("front", "right"), lr = Load("rear", "left"), rr = Load("rear", "right");
            Assert.Equal(total, lf + rf + lr + rr, 1e-9 * total);
            Assert.Equal(momentX, (lr + rr) * 2.560, 1e-9 * total);
            Assert.Equal(momentY, (0.730 * (rf - lf)) + (0.740 * (rr - lr)), 1e-9 * total);
        }, iter: 50);

    // Derived: base 2150 kg at 1.2919 m; bumper and winch, spare carrier, rack. Axle changes in kg to 0.01, sums to 0.1.
    [Theory]
    [InlineData(68, -0.62, 84.47, -16.47)]
    [InlineData(74, 3.30, -21.39, 95.39)]
    [InlineData(45, 1.35, 21.27, 23.73)]
    public void A_part_loads_one_axle_and_may_unload_the_other(double mass, double x, double front, double rear)
    {
        double Change(string axle) => Axle(2150 + mass, (2150 * 1.2919) + (mass * x), axle).Number("load")!.Value - Axle(2150, 2150 * 1.2919, axle).Number("load")!.Value;
        Assert.Equal(front, Change("front"), 0.0051);
        Assert.Equal(rear, Change("rear"), 0.0051);
    }

    [Fact]
    public void All_three_parts_together()
    {
        const double total = 2150 + 68 + 74 + 45, moment = (2150 * 1.2919) - (68 * 0.62) + (74 * 3.30) + (45 * 1.35);
        Axle(total, moment, "front").Gives("load", 1149.4, 0.05);
        Axle(total, moment, "rear").Gives("load", 1187.6, 0.05);
    }

    [Theory]
    [InlineData("1200 kg", "pass")]
    [InlineData("1187 kg", "fail")]
    public void An_axle_is_held_against_its_rating(string rating, string verdict) =>
        Assert.Equal(verdict, Door.Run("mass.axle-load",
            $$"""{"total":"2337 kg","momentX":"3040.3 kg m","wheelbase":"2.560 m","axle":"rear","rating":"{{rating}}"}""").Verdict("rating"));

    [Theory]
    [InlineData(-100, "front", "ahead of the front axle")]
    [InlineData(-100, "rear", "ahead of the front axle")]
    [InlineData(6000, "front", "behind the rear axle")]
    [InlineData(6000, "rear", "behind the rear axle")]
    public void A_center_beyond_the_axles_is_a_finding_and_never_a_load(double momentX, string axle, string says)
    {
        var r = Axle(2150, momentX, axle, "\"rating\":\"1200 kg\",");
        Assert.Null(r.Number("load"));
        Assert.Equal("fail", r.Verdict("on-ground"));
        Assert.Contains(says, r.Finding("on-ground")["text"]!.GetValue<string>());
        Assert.Equal("unknown", r.Verdict("rating"));
    }

    [Theory]
    [InlineData(1700, "left")]
    [InlineData(1700, "right")]
    [InlineData(-1700, "right")]
    public void A_center_beyond_the_wheels_is_a_finding_and_never_a_load(double momentY, string side)
    {
        var r = Wheel(2150, MomentX, momentY, "rear", side);
        Assert.Null(r.Number("load"));
        Assert.Equal("fail", r.Verdict("on-ground"));
    }

    [Fact]
    public void An_axle_of_another_name_is_a_fault() =>
        Assert.Contains("front or rear", Assert.Single(Door.Faults("mass.axle-load", """{"total":"1 t","momentX":"1300 kg m","wheelbase":"2.5 m","axle":"middle"}""")).Right);

    private static JsonObject Axle(double total, double momentX, string axle, string more = "") =>
        Door.Run("mass.axle-load", $$"""{{{more}}"total":"{{total:R}} kg","momentX":"{{momentX:R}} kg m","wheelbase":"2560 mm","axle":"{{axle}}"}""");

    private static JsonObject Wheel(double total, double momentX, double momentY, string axle, string side) => Door.Run("mass.wheel-load", $$"""
        {"total":"{{total:R}} kg","momentX":"{{momentX:R}} kg m","momentY":"{{momentY:R}} kg m","wheelbase":"2560 mm",
         "track":"{{(axle == "front" ? 1460 : 1480)}} mm","axle":"{{axle}}","side":"{{side}}"}
        """);
}
