using Crossmember.Engineering.Brakes.Balance;
using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Tests.Brakes.Chain;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Balance;

public class BestValveTests
{
    private static readonly Gen<(double Kf, double Kr, double Tr, Loading Load)> s_truck = Gen.Select(Gen.Double[1200, 2400], Gen.Double[0.3, 0.9], Gen.Double[0, 0.6], Truck.AnyLoad)
        .Select((kf, part, tr, load) => (kf / 1e6, kf * part / 1e6, tr * 1e6, load));

    // A valve's margins are those of the first lock of the whole chain: where the front is first, rear use and deceleration there; where the rear is, a margin below 0.
    [Fact]
    public void A_road_asked_of_a_valve_agrees_with_the_chain() =>
        Gen.Select(s_truck, Gen.Double[0.2, 0.8], Gen.Double[0.7, 8], Gen.Double[0, 0.9]).Sample((truck, mu, knee, slope) =>
        {
            var (first, efficiency) = new RoadCase(mu, truck.Kf, 0.02e6, truck.Kr, truck.Tr, 0, truck.Load).Margins(knee * 1e6, slope);
            var at = LockUp.On(mu, new(new(truck.Kf, 0.02e6), new(truck.Kr, truck.Tr), new(knee * 1e6, slope, 0)), truck.Load);
            if (at.Axle == LocksFirst.Rear)
            {
                Assert.True(first <= 1e-9, $"{truck} {mu} {knee} {slope}");
                return;
            }
            Assert.Equal(1 - (at.RearUse / mu), first, 1e-9);
            Assert.Equal((at.Deceleration / (0.1 + (0.85 * (mu - 0.2)))) - 1, efficiency, 1e-9);
        });

    // Independent: every knee and slope on a grid of 60 x 17 tried; none may be better than what the search found.
    [Fact]
    public void No_valve_on_a_grid_is_better_than_the_best() =>
        Gen.Select(s_truck, Gen.Double[1.1, 1.5]).Sample((truck, laden) =>
        {
            var roads = Roads(truck, truck.Load, truck.Load with { Weight = truck.Load.Weight * laden, Behind = truck.Load.Behind * 1.06 });
            var low = Math.Max(2e5, truck.Tr);
            var best = ValveSearch.Best(roads, low);
            Assert.Equal(best.Margin, ValveSearch.Margin(roads, best.Knee, best.Slope), 1e-12);
            for (var i = 0; i <= 60; i++)
                for (var j = 0; j <= 16; j++)
                {
                    var margin = ValveSearch.Margin(roads, low + (i * 0.15e6), 0.05 * j);
                    Assert.True(margin <= best.Margin + 0.004, $"{truck}: {best} against {margin} at {low + (i * 0.15e6)}, {0.05 * j}");
                }
        }, iter: 60);

    // A later knee never helps the front be first and never hurts the efficiency: what the halving rests on.
    [Fact]
    public void A_later_knee_moves_both_margins_one_way() =>
        Gen.Select(s_truck, Gen.Double[0.2, 0.8], Gen.Double[0.7, 8], Gen.Double[0, 2], Gen.Double[0, 0.8]).Sample((truck, mu, knee, later, slope) =>
        {
            RoadCase road = new(mu, truck.Kf, 0, truck.Kr, truck.Tr, 0, truck.Load);
            var (first, efficiency) = road.Margins(knee * 1e6, slope);
            var (after, more) = road.Margins((knee + later) * 1e6, slope);
            Assert.True(after <= first + 1e-9 && (more >= efficiency - 1e-9 || more == -1 || efficiency == -1), $"{truck} {mu} {knee} {later} {slope}");
        });

    // Independent: knee and slope by another program, pressure halved for every lock (plain Python, brute force over both):
    //   margin = min over mu .2 .3 ... .8 of 1 - fr/mu at front lock and z/(.1 + .85 (mu - .2)) - 1; best 0.2322, and 0.1600 with a second condition of 2600 kg, 1.35 m, 0.82 m.
    [Fact]
    public void The_best_valve_of_the_truck()
    {
        var r = Run("fixed");
        r.Gives("margin", 0.2322, 0.0003);
        Assert.InRange(r.Number("knee")!.Value, 3.9, 4.3);
        Assert.InRange(r.Number("slope")!.Value, 0.17, 0.22);
        Assert.Equal("pass", r.Verdict("needed")); // it is, and one is fitted that does it
        Assert.Contains("The fitted valve does it", r.Finding("needed")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("pass", r.Verdict("fitted"));
        Assert.Equal("caution", Run("none").Verdict("fitted"));
        Assert.Equal("caution", Run("none").Verdict("needed"));
    }

    [Fact]
    public void Weak_rear_brakes_need_no_valve()
    {
        var r = Run("none", rear: "3500 N");
        Assert.Equal("pass", r.Verdict("needed"));
        Assert.Null(r.Number("knee"));
        Assert.Contains("better than none", r.Finding("needed")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    // Brakes out of all proportion: a front that leaves most of the road unused is mended by no valve, and that is no pass.
    [Fact]
    public void What_no_valve_mends_is_still_a_caution()
    {
        var r = Door.Run("brakes.best-valve", Input("none", "2000 N").Replace("12642.9 N", "30000 N", StringComparison.Ordinal));
        Assert.True(r.Number("plainMargin") < 0);
        Assert.Equal("caution", r.Verdict("needed"));
        Assert.Contains("look at the sizes of the brakes", r.Finding("needed")["text"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void An_ungauged_valve_is_unknown_but_the_best_is_told()
    {
        var r = Door.Run("brakes.best-valve", Input("fixed", "5442.7 N").Replace(""","fittedKnees":{"empty":"3.5 MPa"}""", "", StringComparison.Ordinal));
        Assert.Equal("unknown", r.Verdict("fitted"));
        Assert.NotNull(r.Number("knee"));
    }

    // Through a rear circuit with 0.8 of the pressure the best knee is told in that circuit's own pressure: the same place of the same forces.
    [Fact]
    public void Knees_are_told_in_the_rear_circuits_own_pressure()
    {
        double share = 0.8, plain = Run("fixed").Number("margin")!.Value;
        var r = Door.Run("brakes.best-valve", Input("fixed", "6803.375 N").Replace("\"0.4 MPa\"", "\"0.32 MPa\"", StringComparison.Ordinal).Replace("\"metering\"", $"\"rearShare\":\"{share}\",\"metering\"", StringComparison.Ordinal));
        r.Gives("margin", plain, 1e-9);
        r.Gives("knee", share * Run("fixed").Number("knee")!.Value, 1e-6);
    }

    private static System.Text.Json.Nodes.JsonObject Run(string valve, string rear = "5442.7 N") => Door.Run("brakes.best-valve", Input(valve, rear));

    private static string Input(string valve, string rear) => $$"""
        {"frontForce":"12642.9 N","frontThreshold":"0 MPa","rearForce":"{{rear}}","rearThreshold":"0.4 MPa","metering":"0 MPa","wheelbase":"2.6 m","valve":"{{valve}}","totals":{"empty":"2100 kg"},"centersX":{"empty":"1.248 m"},"heights":{"empty":"0.76 m"},"fittedKnees":{"empty":"3.5 MPa"},"valveSlope":"0.35"}
        """;

    private static RoadCase[] Roads((double Kf, double Kr, double Tr, Loading) truck, params Loading[] loads) =>
        [.. loads.SelectMany(l => Enumerable.Range(2, 7).Select(i => new RoadCase(0.1 * i, truck.Kf, 0.02e6, truck.Kr, truck.Tr, 0, l)))];
}
