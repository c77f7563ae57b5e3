using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Steering;

public class TireClearanceTests
{
    // Independent: the tire from above as a rectangle on its hub, turned about the kingpin; how far its inner rear corner reaches inboard, before and after.
    [Fact]
    public void At_lock_the_corner_of_the_tire_decides() =>
        Gen.Select(Gen.Double[27, 36], Gen.Double[27, 36], Gen.Double[6, 13], Gen.Double[6, 13], Gen.Double[-40, 40], Gen.Double[-40, 40], Gen.Double[15, 45]).Sample((D0, D, W0, W, ET0, ET, lockTo) =>
        {
            double Inboard(double diameter, double width, double offset)
            {
                const double face = 140; // mm, hub face outboard of the kingpin
                double a = lockTo * Math.PI / 180, inner = (width * 25.4 / 2) + offset - face, back = diameter * 25.4 / 2;
                return (inner * Math.Cos(a)) + (back * Math.Sin(a)); // y of the corner (back, -inner) turned by a
            }
            var r = Clear(D0, W0, ET0, D, W, $",\"offsets\":{{\"left\":\"{ET:R} mm\",\"right\":\"{ET:R} mm\"}},\"lockGap\":\"200 mm\"", lockTo);
            Assert.Equal(200 - Inboard(D, W, ET) + Inboard(D0, W0, ET0), r.Number("atLock")!.Value, 1e-9 * 500);
        }, iter: 100);

    [Fact]
    public void The_same_tire_leaves_what_was_measured()
    {
        var r = Clear(31, 10, 10, 31, 10, ",\"offsets\":{\"left\":\"10 mm\",\"right\":\"10 mm\"},\"lockGap\":\"40 mm\",\"fenderGap\":\"140 mm\",\"linkageGap\":\"95 mm\",\"bumpTravels\":{\"touring\":\"0 mm\"}");
        r.Gives("atLock", 40, 1e-9);
        r.Gives("underFender", 140, 1e-9);
        r.Gives("atLinkage", 95, 1e-9);
        r.Gives("least", 40, 1e-9);
    }

    // The stop is where it is: riding 20 mm higher with 20 mm more bump travel leaves the same at the stop.
    [Fact]
    public void A_lift_that_keeps_the_stop_leaves_the_same_at_full_bump()
    {
        const string gaps = ",\"fenderGap\":\"140 mm\",\"linkageGap\":\"95 mm\"";
        JsonObject one = Clear(31, 10, 0, 33, 10, gaps + ",\"bumpTravels\":{\"touring\":\"80 mm\"}"), lifted = Clear(31, 10, 0, 33, 10, gaps + ",\"bumpTravels\":{\"touring\":\"100 mm\"}", ride: 200);
        Assert.Equal(one.Number("underFender")!.Value, lifted.Number("underFender")!.Value, 1e-9);
        Assert.Equal(one.Number("atLinkage")!.Value, lifted.Number("atLinkage")!.Value, 1e-9);
        one.Gives("underFender", 140 - 80 - 25.4, 1e-9);
    }

    // 19 mm to be left: common practice, no source; nothing left is a fail whatever the practice. 140 - 80 = 60 mm less the radius.
    [Theory]
    [InlineData(32.5, "pass")] // 40.95 mm
    [InlineData(34.3, "caution")] // 18.09 mm
    [InlineData(36, "fail")] // -3.5 mm
    public void What_is_left_is_judged(double diameter, string verdict)
    {
        var r = Clear(31, 10, 0, diameter, 10, ",\"fenderGap\":\"140 mm\",\"bumpTravels\":{\"touring\":\"55 mm\"},\"fullBumpTravels\":{\"touring\":\"80 mm\"}");
        Assert.Equal(verdict, r.Verdict("fender"));
        Assert.Contains(verdict == "fail" ? "It touches" : "mm are left", r.Finding("fender")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("unknown", r.Verdict("lock"));
        Assert.Equal(r.Number("underFender"), r.Number("least"));
    }

    // By hand: 3 in to the stop and 1 in of squash, 6-1/4 in over the tire and 4-1/2 in over the linkage, 31.7 to 33 in tires: 158.75 - 101.6 - 16.51 and 114.3 - 101.6 mm
    // squeezed; 66.04 and 38.1 mm when the stop only touches, which passes nothing.
    [Fact]
    public void The_stop_is_squeezed_before_it_holds()
    {
        const string gaps = ",\"fenderGap\":\"6.25 in\",\"linkageGap\":\"4.5 in\",\"bumpTravels\":{\"touring\":\"3 in\"}";
        JsonObject touching = Clear(31.7, 10, 0, 33, 10, gaps), solid = Clear(31.7, 10, 0, 33, 10, gaps + ",\"fullBumpTravels\":{\"touring\":\"4 in\"}");
        solid.Gives("underFender", 40.64, 1e-9);
        solid.Gives("atLinkage", 12.7, 1e-9);
        touching.Gives("underFender", 66.04, 1e-9);
        touching.Gives("atLinkage", 38.1, 1e-9);
        Assert.Equal(("pass", "caution"), (solid.Verdict("fender"), solid.Verdict("linkage")));
        Assert.Equal(("caution", "caution"), (touching.Verdict("fender"), touching.Verdict("linkage")));
        Assert.Contains("over the tire when the stop touches", touching.Finding("fender")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Contains("over the tire at full bump", solid.Finding("fender")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("fail", Clear(31.7, 10, 0, 36, 10, gaps.Replace("3 in", "5 in", StringComparison.Ordinal)).Verdict("fender"));
    }

    // Travels go by the names of their conditions, not by their order.
    [Fact]
    public void Travels_belong_to_their_condition()
    {
        const string turned = ",\"fenderGap\":\"140 mm\",\"bumpTravels\":{\"touring\":\"70 mm\",\"empty\":\"90 mm\"},\"rideHeights\":{\"empty\":\"180 mm\",\"touring\":\"165 mm\"}";
        Clear(31, 10, 0, 31, 10, turned, ride: null).Gives("underFender", 140 - 90, 1e-9);
    }

    [Fact]
    public void The_condition_that_lets_the_axle_rise_farthest_counts()
    {
        const string two = ",\"fenderGap\":\"140 mm\",\"bumpTravels\":{\"empty\":\"90 mm\",\"touring\":\"70 mm\"},\"rideHeights\":{\"empty\":\"180 mm\",\"touring\":\"165 mm\"}";
        Clear(31, 10, 0, 31, 10, two, ride: null).Gives("underFender", 140 - 90, 1e-9);
    }

    [Fact]
    public void The_middle_of_a_drag_link_closes_by_half() =>
        Clear(31, 10, 0, 31, 10, ",\"linkageGap\":\"95 mm\",\"bumpTravels\":{\"touring\":\"80 mm\"},\"linkageShare\":0.5").Gives("atLinkage", 55, 1e-9);

    [Fact]
    public void Wheels_of_unknown_offset_are_taken_as_at_the_survey_and_it_is_said()
    {
        var r = Clear(31, 10, 25, 33, 11, ",\"lockGap\":\"60 mm\"");
        Assert.Contains(r["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("taken as at the survey", StringComparison.Ordinal));
        Assert.Equal(r.Number("atLock"), Clear(31, 10, 25, 33, 11, ",\"lockGap\":\"60 mm\",\"offsets\":{\"left\":\"25 mm\",\"right\":\"25 mm\"}").Number("atLock"));
    }

    private static JsonObject Clear(double D0, double W0, double ET0, double D, double W, string more, double lockTo = 35, double? ride = 180) => Door.Run("steering.clearance", $$"""
        {"surveyDiameter":"{{D0:R}} in","surveyWidth":"{{W0:R}} in","surveyOffset":"{{ET0:R}} mm","fittedDiameter":"{{D:R}} in","widths":{"left":"{{W:R}} in","right":"{{W:R}} in"},
         "innerAngles":{"left":"{{lockTo:R}} deg","right":"{{lockTo:R}} deg"},"surveyRideHeight":"180 mm"{{(ride is { } mm ? $",\"rideHeights\":{{\"touring\":\"{mm:R} mm\"}}" : "")}}{{more}}}
        """);
}
