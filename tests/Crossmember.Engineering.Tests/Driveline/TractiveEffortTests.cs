using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Driveline;

public class TractiveEffortTests
{
    private const double PoundForce = 0.45359237 * 9.80665, Horsepower = 550 * 0.3048 * PoundForce; // N, W: exact definitions
    private const string Curve = """[["1000 rpm","250 N m"],["2000 rpm","330 N m"],["4000 rpm","260 N m"]]""";

    // US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-15: 79 lb ft, 2.798 x 2.43 x 5.38, 0.85, tire radius 1.25 ft push 0.75 of 2,625 lb; printed pull 1970 lb.
    [Fact]
    public void Pull_of_the_army_manuals_truck() =>
        Pull(""" "peakTorque":"79 lbf ft","gearRatio":"2.798","transferRatio":"2.43","axleRatio":"5.38","rollingRadius":"15 in" """).Gives("peakForce", 1970, 0.005 * 2625);

    // Derived: 330 x 5.15 x 2.28 x 4.11 x 0.85 / 0.40688 = 33.27 kN; first in high range 14.592 kN; direct 2833 N. Half of the last decimal.
    [Theory]
    [InlineData("5.15", "2.28", 33270, 5)]
    [InlineData("5.15", "1", 14592, 0.5)]
    [InlineData("1", "1", 2833, 0.5)]
    public void Pull_in_three_gearings(string gear, string transfer, double newtons, double tolerance) =>
        Pull($""" "peakTorque":"330 N m","gearRatio":"{gear}","transferRatio":"{transfer}","axleRatio":"4.11","rollingRadius":"406.88 mm" """)
            .Gives("peakForce", newtons / PoundForce, tolerance / PoundForce);

    // Derived: at 2000 rpm in direct 2 pi x 0.40688 x 2000 / 60 / 4.11 = 20.734 m/s = 46.38 mph, where the level takes 316.3 + 0.87 x 20.734^2 = 690.3 N of 2833 N.
    [Fact]
    public void Speed_road_load_and_surplus_at_the_peak()
    {
        var r = Direct(Curve, """ ,"masses":{"empty":"1800 kg","touring":"2150 kg"},"dragArea":"1.45 m2" """);
        r.Gives("speedAtPeak", 46.38, 0.005);
        r.Gives("roadLoad", 690.3 / PoundForce, 0.05 / PoundForce);
        r.Gives("surplus", (2833.4 - 690.3) / PoundForce, 0.1 / PoundForce);
        Assert.Equal("pass", r.Verdict("road-load"));
    }

    [Fact]
    public void A_gear_too_long_for_the_load_fails_against_the_road()
    {
        var r = Direct("""[["1000 rpm","30 N m"],["4000 rpm","60 N m"]]""", """ ,"masses":{"touring":"2150 kg"},"dragArea":"1.45 m2" """);
        Assert.Equal("fail", r.Verdict("road-load"));
        Assert.True(r.Number("surplus") < 0);
    }

    // At every point of the curve force times road speed is engine power times efficiency: no gear makes power.
    [Fact]
    public void Force_times_speed_is_power_times_efficiency_whatever_the_gear() =>
        Gen.Select(Gen.Double[0.6, 7], Gen.Double[1, 5], Gen.Double[2.5, 6], Gen.Double[0.7, 1], Gen.Double[11, 24]).Sample((gear, transfer, axle, eta, re) =>
        {
            var r = Pull($""" "torqueCurve":{Curve},"gearRatio":{gear:R},"transferRatio":{transfer:R},"axleRatio":{axle:R},"efficiency":{eta:R},"rollingRadius":"{re:R} in" """);
            var power = r.Number("peakForce")!.Value * PoundForce * r.Number("speedAtPeak")!.Value * 1609.344 / 3600; // W
            Assert.Equal(330 * 2000 * Math.PI / 30 * eta, power, 1e-9 * power);
            var (x, y) = Points(Assert.Single(r["curves"]!.AsArray())!);
            (double Rpm, double Torque)[] engine = [(1000, 250), (2000, 330), (4000, 260)];
            Assert.Equal(engine.Length, x.Length);
            for (var i = 0; i < x.Length; i++)
                Assert.Equal(engine[i].Torque * engine[i].Rpm * Math.PI / 30 * eta, y[i] * PoundForce * x[i] * 1609.344 / 3600, 1e-9 * power);
        }, iter: 100);

    [Fact]
    public void Twice_the_reduction_pulls_twice_at_half_the_speed() =>
        Gen.Double[0.6, 3].Sample(gear =>
        {
            static JsonObject In(double g) => Pull($""" "torqueCurve":{Curve},"gearRatio":{g:R},"axleRatio":"4.11","rollingRadius":"16 in" """);
            var (once, twice) = (In(gear), In(2 * gear));
            Assert.Equal(2 * once.Number("peakForce")!.Value, twice.Number("peakForce")!.Value, 1e-9 * twice.Number("peakForce")!.Value);
            Assert.Equal(once.Number("speedAtPeak")!.Value, 2 * twice.Number("speedAtPeak")!.Value, 1e-9 * once.Number("speedAtPeak")!.Value);
        }, iter: 50);

    // The peak at 2000 rpm lies over the redline: the pull is that at 1600 rpm, 250 + 80 x 0.6 = 298 N m. Then idle lies above it: 330 - 70 x 0.25 = 312.5 N m at 2500.
    [Theory]
    [InlineData(""","redline":"1600 rpm" """, 298, 1600)]
    [InlineData(""","idleSpeed":"2500 rpm" """, 312.5, 2500)]
    [InlineData(""","idleSpeed":"600 rpm","redline":"6000 rpm" """, 330, 2000)]
    public void Only_torque_between_idle_and_redline_counts(string limits, double torque, double rpm)
    {
        var r = Direct(Curve, limits);
        r.Gives("peakForce", torque * 4.11 * 0.85 / 0.40688 / PoundForce, 1e-6);
        r.Gives("speedAtPeak", 46.38064 * rpm / 2000, 1e-4);
    }

    [Fact]
    public void A_curve_that_begins_over_the_redline_gives_no_number_and_says_why()
    {
        var r = Direct(Curve, ""","redline":"900 rpm","masses":{"empty":"2150 kg"},"dragArea":"1.45 m2" """);
        Assert.Null(r.Number("peakForce"));
        Assert.Empty(r["curves"]!.AsArray());
        Assert.Equal("unknown", r.Verdict("road-load"));
        Assert.Contains("1000 to 4000 rpm", r.Finding("road-load")["text"]!.GetValue<string>());
    }

    [Fact]
    public void Without_a_curve_the_force_stands_and_the_speed_is_unknown()
    {
        var r = Pull(""" "peakTorque":"330 N m","gearRatio":"1","axleRatio":"4.11","rollingRadius":"16 in","masses":{"empty":"2150 kg"},"dragArea":"1.45 m2" """);
        Assert.NotNull(r.Number("peakForce"));
        Assert.Null(r.Number("speedAtPeak"));
        Assert.Equal("unknown", r.Verdict("road-load"));
        Assert.Contains("torque in lbf ft = 5252 x hp / rpm", r.Finding("road-load")["text"]!.GetValue<string>());
    }

    // The rule told to people who only have power: 5252 = 33000 / (2 pi).
    [Fact]
    public void The_rule_for_torque_from_power_is_right() => Assert.Equal(5252, Horsepower / (2 * Math.PI / 60) / (PoundForce * 0.3048), 0.5);

    private static JsonObject Direct(string curve, string rest) => Pull($""" "torqueCurve":{curve},"gearRatio":"1","axleRatio":"4.11","rollingRadius":"406.88 mm"{rest}""");

    private static JsonObject Pull(string members) => Door.Run("driveline.tractive-effort", $$"""{ {{members}} }""");

    private static (double[] X, double[] Y) Points(JsonNode curve) => (Axis(curve["x"]!), Axis(curve["y"]!));

    private static double[] Axis(JsonNode axis) => [.. axis["values"]!.AsArray().Select(v => v!.GetValue<double>())];
}
