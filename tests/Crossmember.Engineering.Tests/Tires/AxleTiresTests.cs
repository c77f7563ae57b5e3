using Crossmember.Engineering.Tests.Calculations;

namespace Crossmember.Engineering.Tests.Tires;

public class AxleTiresTests
{
    // 1 % of the larger tire is common practice, no source; 31 in less 1 % is 30.69 in.
    [Theory]
    [InlineData("31 in", "31 in", "pass")]
    [InlineData("31 in", "30.7 in", "pass")]
    [InlineData("31 in", "30.68 in", "fail")]
    [InlineData("30.68 in", "31 in", "fail")]
    public void The_larger_tire_gears_the_axle_and_unequal_ones_fail(string left, string right, string verdict)
    {
        var r = Door.Run("tires.axle-diameter", $$"""{"diameters":{"left":"{{left}}","right":"{{right}}"} }""");
        r.Gives("diameter", 31, 1e-9);
        Assert.Equal(verdict, r.Verdict("alike"));
    }

    [Fact]
    public void An_axle_without_tires_is_a_fault() => Assert.Equal("/diameters", Assert.Single(Door.Faults("tires.axle-diameter", """{"diameters":{}}""")).Path);

    // Derived: axle 1180 kg on two tires of load index 104 (900 kg each): 65.6 %; passenger tires on a truck (49 CFR 571.110, from memory): 1636 kg, 72.1 %.
    [Theory]
    [InlineData("1", 65.6)]
    [InlineData("1.10", 72.1)]
    public void Two_tires_carry_an_axle(string derate, double percent)
    {
        var r = Door.Run("tires.load", $$"""{"load":"590 kg","rating":"900 kg","derate":"{{derate}}"}""");
        r.Gives("utilization", percent, 0.05);
        Assert.Equal("pass", r.Verdict("rating"));
    }

    [Fact]
    public void A_passenger_tire_on_a_truck_may_fail_where_the_same_light_truck_tire_passes()
    {
        Assert.Equal("pass", Door.Run("tires.load", """{"load":"850 kg","rating":"900 kg"}""").Verdict("rating"));
        var p = Door.Run("tires.load", """{"load":"850 kg","rating":"900 kg","derate":1.1}""");
        Assert.Equal("fail", p.Verdict("rating"));
        // 850 x 1.1 / 900 = 103.89 %: 3.89 % beyond the limit, so the margin is negative.
        Assert.Equal(-0.0389, p.Finding("rating")["margin"]!.GetValue<double>(), 0.00005);
    }
}
