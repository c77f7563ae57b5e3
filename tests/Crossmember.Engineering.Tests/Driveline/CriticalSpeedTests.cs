using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Driveline;

public class CriticalSpeedTests
{
    // Derived: steel tube 48 in, 3 in, wall 1/8 in, 29e6 psi, 0.00883 slug/in3 (0.28410 lb/in3): continuous beam 8262 rpm. An exercise answer of 5800 rpm
    // circulates: the whole mass lumped at mid-span. The second: 1250 mm, 76.2 mm, wall 2.1 mm, 206 GPa, 7850 kg/m3. Tolerances: 5 rpm and half of the last digit.
    [Theory]
    [InlineData(""" "length":"48 in","tubeDiameter":"3 in","tubeWall":"0.125 in","modulus":"29000 ksi","density":"0.28410 lb/in3" """, 8262, 5)]
    [InlineData(""" "length":"1250 mm","tubeDiameter":"76.2 mm","tubeWall":"2.1 mm" """, 8098, 0.5)]
    public void Critical_speed_of_a_steel_tube(string shaft, double rpm, double tolerance) =>
        Door.Run("driveline.propshaft-critical-speed", $"{{{shaft}}}").Gives("criticalSpeed", rpm, tolerance);

    // SAE Universal Joint and Driveshaft Design Manual, from memory: n = 4.705e6 sqrt(D^2 + d^2) / L^2 in inches, 8018 rpm for this tube. Within 1 %.
    [Fact]
    public void The_handbook_constant_is_one_per_cent_lower()
    {
        double D = 3, d = 3 - (2 * 2.1 / 25.4), L = 1250 / 25.4;
        var handbook = 4.705e6 * Math.Sqrt((D * D) + (d * d)) / (L * L);
        Assert.Equal(8018, handbook, 0.5);
        Assert.Equal(handbook, Of(1250, 76.2, 2.1).Number("criticalSpeed")!.Value, 0.0101 * handbook);
    }

    // Independent: finite elements, eight Euler-Bernoulli beam elements with consistent mass, lowest eigenvalue by inverse iteration. Their known error is below 1e-5.
    [Fact]
    public void Critical_speed_agrees_with_finite_elements() =>
        Gen.Select(Gen.Double[400, 2000], Gen.Double[40, 120], Gen.Double[0.02, 0.5], Gen.Double[60, 220], Gen.Double[1500, 8000]).Sample((L, D, share, E, rho) =>
        {
            var wall = D * share;
            double d = D - (2 * wall), I = Math.PI * (Math.Pow(D, 4) - Math.Pow(d, 4)) / 64e12, A = Math.PI * ((D * D) - (d * d)) / 4e6; // m4, m2
            var expected = PinnedBeam.LowestFrequency(8, L / 1000, E * 1e9 * I, rho * A) * 30 / Math.PI; // rpm
            var n = Of(L, D, wall, $$""","modulus":"{{E:R}} GPa","density":"{{rho:R}} kg/m3" """).Number("criticalSpeed")!.Value;
            Assert.Equal(expected, n, 1e-4 * expected);
        }, iter: 30);

    // The other model of the trade: all of the mass at mid-span, omega = sqrt(48 E I / (m L^3)), is sqrt(48) / pi^2 = 0.702 of it. The validity text says so.
    [Fact]
    public void Mass_lumped_at_mid_span_gives_seven_tenths()
    {
        const double D = 0.0762, d = 0.06985, L = 1.2192, E = 199.948e9, rho = 7863.8; // 48 in, 3 in, 1/8 in; 29e6 psi, 0.2841 lb/in3
        double I = Math.PI * (Math.Pow(D, 4) - Math.Pow(d, 4)) / 64, m = rho * L * Math.PI * ((D * D) - (d * d)) / 4;
        var lumped = Math.Sqrt(48 * E * I / (m * Math.Pow(L, 3))) * 30 / Math.PI;
        Assert.Equal(5800, lumped, 5.0);
        var r = Of(1219.2, 76.2, 3.175, ""","modulus":"29000 ksi","density":"0.2841 lb/in3" """);
        Assert.Equal(0.702, lumped / r.Number("criticalSpeed")!.Value, 0.0005);
    }

    [Fact]
    public void Double_the_length_makes_a_quarter_and_double_the_section_makes_double() =>
        Gen.Select(Gen.Double[300, 1000], Gen.Double[30, 70], Gen.Double[1.3, 6]).Sample((L, D, wall) =>
        {
            double N(double length, double diameter, double thick) => Of(length, diameter, thick).Number("criticalSpeed")!.Value;
            var n = N(L, D, wall);
            Assert.Equal(n / 4, N(2 * L, D, wall), 1e-9 * n);
            Assert.Equal(n * 2, N(L, 2 * D, 2 * wall), 1e-9 * n);
            Assert.Equal(n / 2, N(2 * L, 2 * D, 2 * wall), 1e-9 * n);
        }, iter: 30);

    // 8098 rpm: 65 % are 5264, 75 % 6074 rpm (common practice, no source). 4.11 on 406.88 mm makes 2803 rpm at 65 mph, so 122.1 and 140.8 mph.
    [Theory]
    [InlineData(65, "pass")]
    [InlineData(122, "pass")]
    [InlineData(122.3, "caution")]
    [InlineData(140.5, "caution")]
    [InlineData(141, "fail")]
    public void The_shaft_must_stay_well_below_it_at_cruise(double mph, string verdict)
    {
        var r = Of(1250, 76.2, 2.1, $$""","cruiseSpeed":"{{mph}} mph","axleRatio":"4.11","rollingRadius":"406.88 mm" """);
        Assert.Equal(verdict, r.Verdict("cruise"));
        r.Gives("roadSpeedLimit", 122.1, 0.05);
        r.Gives("cruiseShaftSpeed", 2803 * mph / 65, 0.5 * mph / 65);
        Assert.Equal("unknown", r.Verdict("redline"));
        Assert.Contains("continuous beam", r.Finding("cruise")["source"]!.GetValue<string>());
    }

    // An overdrive turns the shaft faster than the engine: 4800 / 0.8 = 6000 rpm, 74 %. Whether the vehicle ever gets there is not known: never worse than a caution.
    [Theory]
    [InlineData("4800 rpm", 6000, "caution")]
    [InlineData("5600 rpm", 7000, "caution")]
    [InlineData("4200 rpm", 5250, "pass")]
    public void An_overdrive_turns_the_shaft_faster_than_the_engine(string redline, double shaft, string verdict)
    {
        var r = Of(1250, 76.2, 2.1, $$""","redline":"{{redline}}","gearRatios":{"1":"4.02","5":"0.8","4":"1"},"transferRatios":{"low":"2.72","high":"1"} """);
        r.Gives("redlineShaftSpeed", shaft, 1e-9 * shaft);
        Assert.Equal(verdict, r.Verdict("redline"));
    }

    [Fact]
    public void A_tube_that_cannot_be_has_no_critical_speed() => Assert.Null(Of(1250, 50, 26).Number("criticalSpeed"));

    private static JsonObject Of(double length, double diameter, double wall, string rest = "") =>
        Door.Run("driveline.propshaft-critical-speed", $$"""{"length":"{{length:R}} mm","tubeDiameter":"{{diameter:R}} mm","tubeWall":"{{wall:R}} mm"{{rest}} }""");
}
