using Crossmember.Engineering.Brakes.Limits;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Limits;

public class BrakeRuleTests
{
    // Derived: the rules' form of the distance comes to d = 1 / (25.92 C): 6.430, 2.442; v2/130 5.015, v2/150 5.787, 2 v2/115 2.218 m/s2.
    [Theory]
    [InlineData("R13-H", "cold", 6.430)]
    [InlineData("R13-H", "secondary", 2.442)]
    [InlineData("571.135", "cold", 6.430)]
    [InlineData("571.135", "circuit-failed", 2.442)]
    [InlineData("571.135", "assist-failed", 2.442)]
    [InlineData("R13-N1", "cold", 5.015)]
    [InlineData("R13-M1", "cold", 5.787)]
    [InlineData("R13-N1", "secondary", 2.218)]
    public void Distance_and_deceleration_of_a_row_belong_together(string rule, string test, double expected)
    {
        var row = BrakeRule.Find(rule, test)!;
        Assert.Equal(expected, 1 / (25.92 * row.Square!.Value), 0.0006);
        Assert.Equal(expected, row.Deceleration ?? expected, 0.025);
        Assert.Equal(expected, row.Demand!.Value, 0.025);
    }

    // Derived: at 100 km/h with 0.1 v: 70 and 168 m; the distances that 49 CFR 571.135 states are the same family.
    [Theory]
    [InlineData("R13-H", "cold", 70)]
    [InlineData("R13-H", "secondary", 168)]
    [InlineData("571.135", "cold", 70)]
    [InlineData("571.135", "circuit-failed", 168)]
    [InlineData("571.135", "assist-failed", 168)]
    public void Distances_at_100_km_per_h(string rule, string test, double meters) => Assert.Equal(meters, BrakeRule.Find(rule, test)!.Distance!.Value, 0.05);

    [Theory]
    [InlineData(0.0075, 5.144, 85)]
    [InlineData(0.0100, 3.858, 110)]
    public void The_remembered_distances_come_of_round_coefficients(double c, double deceleration, double meters)
    {
        Assert.Equal(deceleration, 1 / (25.92 * c), 0.0006);
        Assert.Equal(meters, (0.1 * 100) + (c * 100 * 100), 1e-9);
    }

    // Printed as 194 ft (NHTSA interpretation nht70-2.5): 60 mph at 20 ft/s2 is 193.6 ft.
    [Fact]
    public void The_early_form_of_105_agrees_with_its_own_distance()
    {
        var row = BrakeRule.Find("571.105", "cold")!;
        Assert.Equal(193.6, StoppingDistance.Of(row.Speed!.Value, row.Deceleration!.Value, 0) / 0.3048, 0.05);
    }

    // Derived: 100 km/h, 0.36 s, 6.43 m/s2: 64.97 m; mean fully developed deceleration of that trace between 0.8 and 0.1 of the speed again 6.43 (GRRF-56-3: (vb2 - ve2) / (25.92 (se - sb))).
    [Fact]
    public void Build_up_costs_its_half()
    {
        double v = 100 / 3.6, s = StoppingDistance.Of(v, 6.43, 0.36);
        Assert.Equal(64.97, s, 0.006);
        double End(double share) => s - (share * v * share * v / (2 * 6.43));
        Assert.Equal(6.43, ((80 * 80) - (10 * 10)) / (25.92 * (End(0.1) - End(0.8))), 1e-6);
    }

    // Second method: the speed stepped down in time.
    [Fact]
    public void The_closed_form_is_what_stepping_in_time_gives() =>
        Gen.Select(Gen.Double[2, 40], Gen.Double[1, 10], Gen.Double[0, 1.5]).Sample((v, d, build) =>
        {
            const double Step = 1e-4;
            double at = v, way = 0, t = 0;
            while (at > 0)
            {
                var now = build > 0 ? Math.Min(1, (t + (Step / 2)) / build) * d : d;
                way += (at - (now * Step / 2)) * Step;
                (at, t) = (at - (now * Step), t + Step);
            }
            Assert.Equal(way, StoppingDistance.Of(v, d, build), 0.01);
            if (build * d <= 2 * v) Assert.Equal(d, StoppingDistance.Deceleration(v, StoppingDistance.Of(v, d, build), build), 1e-6 * d);
        }, iter: 60);

    // Exercise 4.3 of automobile theory, as above: 30 km/h, 0.02 s of delay and 0.02 s of build-up, g 9.8: 6.84, 10.01 and 8.09 m.
    [Theory]
    [InlineData(0.5376, 6.84)]
    [InlineData(0.3632, 10.01)]
    [InlineData(0.4520, 8.09)]
    public void A_truck_of_an_exercise_stops_as_printed_there(double z, double meters) =>
        Assert.Equal(meters, (30 / 3.6 * 0.02) + StoppingDistance.Of(30 / 3.6, z * 9.8, 0.02), 0.006);

    [Fact]
    public void What_nobody_could_read_is_left_out_and_said()
    {
        Assert.Null(BrakeRule.Find("571.105", "circuit-failed"));
        Assert.Null(BrakeRule.Find("none", "cold"));
        Assert.Contains("could not be read", BrakeRule.Find("571.105", "cold")!.Source, StringComparison.Ordinal);
    }

    [Fact]
    public void A_row_from_memory_says_so()
    {
        Assert.All(BrakeRule.All.Where(r => !r.Published), r => Assert.Contains("memory", r.Source, StringComparison.Ordinal));
        Assert.All(BrakeRule.All.Where(r => r.Published), r => Assert.DoesNotContain("from memory:", r.Source, StringComparison.Ordinal));
        Assert.True(BrakeRule.Find("571.135", "cold")!.Published);
    }

    [Fact]
    public void A_rules_delay_is_at_full_speed_and_not_a_build_up()
    {
        var row = BrakeRule.Find("571.135", "cold")!;
        double v = row.Speed!.Value, d = row.Demand!.Value;
        Assert.Equal(70, row.Way(d)!.Value, 1e-9);
        Assert.Equal(10, 0.36 * v, 1e-9); // 0.1 x 100 km/h
        Assert.Equal(70, StoppingDistance.Of(v, d, 0.72) + (d * 0.72 * 0.72 / 24), 1e-9); // as a straight build-up it would be twice as long
        Assert.Equal(6.43, BrakeRule.Find("R13-H", "cold")!.Demand!.Value, 1e-12);
        Assert.Null(BrakeRule.Find("571.105", "cold")!.Way(6));
    }

    // 70 m with no delay at all: 27.78 2 / 140 = 5.51 m/s2, less than which fails whatever is remembered of the rest.
    [Fact]
    public void Only_what_was_read_can_fail()
    {
        Assert.Equal(5.511, BrakeRule.Find("571.135", "cold")!.Bare!.Value, 0.0006);
        Assert.Null(BrakeRule.Find("R13-H", "cold")!.Bare);
    }

    // One table: what is asked of parking brakes stands with the rest.
    [Theory]
    [InlineData("571.135", 0.2, 500, 400)]
    [InlineData("R13-M1", 0.18, 500, 400)]
    [InlineData("R13-N1", 0.18, 700, 600)]
    public void Parking_rows(string rule, double grade, double foot, double hand)
    {
        var row = BrakeRule.Find(rule, "parking")!;
        Assert.Equal((grade, foot, hand), (row.Grade!.Value, row.MostForce!.Value, row.HandForce!.Value));
    }

    // No row without a reader: a table that nobody asks grows wrong unseen.
    [Fact]
    public void Every_row_is_of_a_test_that_is_judged() =>
        Assert.All(BrakeRule.All, r => Assert.Contains(r.Test, new[] { "cold", "hot", "secondary", "circuit-failed", "assist-failed", "parking" }));
}
