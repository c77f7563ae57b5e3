using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Springs;

/// <summary>Bounce, level, and bounce of both ends together.</summary>
public class RideTests
{
    // Derived: 480 kg on 35 N/mm stand 134.5 mm deflected and bounce at 1.359 Hz; with a tire of 250 N/mm in series 30.70 N/mm, 1.273 Hz.
    [Fact]
    public void Static_deflection_and_frequency_with_and_without_the_tire()
    {
        var r = Bounce(1160, 200, 35, ""","tireRate":"250 N/mm" """);
        r.Gives("frequency", 1.359, 0.0005);
        r.Gives("withTire", 1.273, 0.0005);
        r.Gives("deflection", 134.5, 0.05);
    }

    // Independent: the swing itself in small steps of time (half-step velocities), timed between its first two returns.
    [Fact]
    public void Frequency_agrees_with_a_mass_that_is_let_go() => Gen.Select(Gen.Double[200, 900], Gen.Double[15, 120]).Sample((m, k) =>
    {
        double dt = 2e-4, x = 0.05, v = -dt / 2 * k * 1000 / m * x, t = 0, first = -1, period = 0;
        while (period == 0)
        {
            var before = x;
            x += v * dt;
            v -= k * 1000 / m * x * dt;
            t += dt;
            if (before > 0 && x <= 0)
            {
                var at = t - (dt * x / (x - before));
                if (first < 0) first = at;
                else period = at - first;
            }
        }
        Assert.Equal(1 / period, Bounce((2 * m) + 200, 200, k).Number("frequency")!.Value, 1e-4 / period);
    }, iter: 20);

    [Fact]
    public void The_shortcut_by_deflection_holds_and_the_tire_always_slows_it() => Gen.Select(Gen.Double[400, 3000], Gen.Double[10, 150], Gen.Double[150, 500]).Sample((load, k, tire) =>
    {
        var r = Bounce(load, 100, k, $$""","tireRate":"{{tire:R}} N/mm" """);
        Assert.Equal(15.76 / Math.Sqrt(r.Number("deflection")!.Value), r.Number("frequency")!.Value, 5e-4 * r.Number("frequency")!.Value);
        Assert.True(r.Number("withTire") < r.Number("frequency"));
    }, iter: 40);

    // 1.2 to 2 Hz is what such vehicles have (common practice, no source): never worse than a caution.
    [Theory]
    [InlineData(35, "pass")]
    [InlineData(27, "caution")]
    [InlineData(80, "caution")]
    public void Hard_and_soft_are_told_as_a_caution(double rate, string verdict) => Assert.Equal(verdict, Bounce(1160, 200, rate).Verdict("usual"));

    [Fact]
    public void The_rate_where_it_stands_counts_before_the_rate_at_the_wheel()
    {
        Bounce(1160, 200, 35, ""","springRate":"70 N/mm" """).Gives("frequency", 1.359 * Math.Sqrt(2), 0.0007);
        Assert.Equal("fail", Bounce(200, 200, 35).Verdict("usual"));
    }

    // Derived: both ends pass their rest after 1.5 swings at one moment: wheelbase / v + 1.5 / rear = 1.5 / front.
    [Fact]
    public void The_rear_that_meets_the_front_does_meet_it() => Gen.Select(Gen.Double[1, 2], Gen.Double[2, 4], Gen.Double[12, 30]).Sample((front, L, v) =>
    {
        var r = Door.Run("springs.flat-ride", $$"""{"frontFrequency":"{{front:R}} Hz","rearFrequency":"1.5 Hz","wheelbase":"{{L:R}} m","cruiseSpeed":"{{v:R}} m/s"}""");
        if (r.Number("meetingRear") is { } rear) Assert.Equal(1.5 / front, (L / v) + (1.5 / rear), 1e-6);
        Assert.Equal(1.5 < front ? "caution" : "pass", r.Verdict("rear-faster"));
    }, iter: 40);

    // Derived: 60 mm in 3200 mm are 1.074 deg; 20 mm the other way as built 0.358 deg; together 1.432 deg tail down, 190.5 mm at 25 ft (7620 mm).
    [Fact]
    public void A_tail_that_hangs_lifts_the_beam_and_adds_caster()
    {
        var r = Level(540, 480, 150, 170);
        r.Gives("rake", -1.0742, 0.0001);
        r.Gives("caster", 1.4323, 0.0001);
        r.Gives("beam", 190.5, 0.05);
        Assert.Equal("caution", r.Verdict("level"));
        Assert.Contains("tail down", r.Finding("level")["text"]!.GetValue<string>());
    }

    // Half a degree in 3200 mm is 27.9 mm (common practice, no source).
    [Theory]
    [InlineData(567, "pass")]
    [InlineData(569, "caution")]
    [InlineData(513, "pass")]
    [InlineData(511, "caution")]
    public void Half_a_degree_either_way(double rear, string verdict) => Assert.Equal(verdict, Level(540, rear, 150, 150).Verdict("level"));

    [Fact]
    public void Front_and_rear_change_places_with_the_sign() => Gen.Select(Gen.Double[400, 700], Gen.Double[400, 700]).Sample((front, rear) =>
    {
        JsonObject a = Level(front, rear, 150, 170), b = Level(rear, front, 170, 150);
        Assert.Equal(a.Number("rake")!.Value, -b.Number("rake")!.Value, 1e-9);
        Assert.Equal(a.Number("change")!.Value, -b.Number("change")!.Value, 1e-9);
    }, iter: 30);

    private static JsonObject Bounce(double load, double unsprung, double rate, string more = "") => Door.Run("springs.frequency",
        $$"""{"load":"{{load:R}} kg","unsprungMass":"{{unsprung:R}} kg","wheelRate":"{{rate:R}} N/mm"{{more}} }""");

    private static JsonObject Level(double front, double rear, double builtFront, double builtRear) => Door.Run("springs.rake",
        $$"""{"frontHeight":"{{front:R}} mm","rearHeight":"{{rear:R}} mm","wheelbase":"3200 mm","originalFront":"{{builtFront:R}} mm","originalRear":"{{builtRear:R}} mm"}""");
}
