using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Springs;

public class CoilTests
{
    private const double PoundInch = 4.4482216152605 / 25.4; // N/mm

    // J. E. Shigley, Mechanical Engineering Design, mechanical springs, first example, from memory: music wire 0.037 in, outside 7/16 in, 12.5 turns, squared ends,
    // 11.85e6 psi: 4.13 lbf/in with D rounded to 0.400 in (0.4005 in: 4.116), 10.5 active turns, solid length 0.500 in (13.5 x 0.037 = 0.4995).
    [Fact]
    public void The_textbook_coil_of_music_wire()
    {
        var r = Of(""" "wire":"0.037 in","outsideDiameter":"0.4375 in","turns":"12.5","ends":"closed","shearModulus":"11850 ksi" """);
        r.Gives("rate", 4.116 * PoundInch, 0.0005 * PoundInch);
        r.Gives("rate", 4.13 * PoundInch, 0.02 * PoundInch);
        r.Gives("activeTurns", 10.5, 1e-9);
        r.Gives("solidLength", 0.500 * 25.4, 0.0005 * 25.4);
        r.Gives("meanDiameter", 0.4005 * 25.4, 1e-9);
    }

    // Shigley, table of ends of compression springs, from memory: turns at work and solid length of 10 turns of 10 mm wire.
    [Theory]
    [InlineData("open", 10, 110)]
    [InlineData("open and ground", 9, 100)]
    [InlineData("closed", 8, 110)]
    [InlineData("closed and ground", 8, 100)]
    public void Ends_take_turns_from_the_work(string ends, double active, double solid)
    {
        var r = Of($$""" "wire":"10 mm","outsideDiameter":"100 mm","turns":"10","ends":"{{ends}}" """);
        r.Gives("activeTurns", active, 1e-9);
        r.Gives("solidLength", solid, 1e-9);
    }

    // Independent: strain energy of the wire, unrolled into 400 pieces of a twisted bar whose section is summed in 400 rings. Half the load times the way is that energy.
    [Fact]
    public void Rate_agrees_with_the_energy_in_the_wire() =>
        Gen.Select(Gen.Double[5, 20], Gen.Double[4, 12], Gen.Double[4, 14], Gen.Double[75, 82]).Sample((d, index, active, G) =>
        {
            const double F = 1000; // N
            var D = d * index;
            var J = Enumerable.Range(0, 400).Sum(i => 2 * Math.PI * Math.Pow((i + 0.5) * d / 800, 3) * (d / 800)); // mm4
            var energy = Enumerable.Range(0, 400).Sum(_ => Math.Pow(F * D / 2, 2) / (2 * G * 1000 * J) * (Math.PI * D * active / 400)); // N mm
            var expected = F * F / (2 * energy); // N/mm
            var k = Of($$""" "wire":"{{d:R}} mm","outsideDiameter":"{{D + d:R}} mm","turns":"{{active:R}}","ends":"open","shearModulus":"{{G:R}} GPa" """).Number("rate")!.Value;
            Assert.Equal(expected, k, 2e-5 * expected);
        }, iter: 30);

    // Double the turns, half the rate; double everything, double the rate.
    [Fact]
    public void It_scales_as_the_formula_must() => Gen.Select(Gen.Double[5, 20], Gen.Double[4, 10], Gen.Double[4, 9]).Sample((d, index, active) =>
    {
        double K(double wire, double turns) => Of($$""" "wire":"{{wire:R}} mm","outsideDiameter":"{{wire * (index + 1):R}} mm","turns":"{{turns:R}}","ends":"open" """).Number("rate")!.Value;
        var k = K(d, active);
        Assert.Equal(k / 2, K(d, 2 * active), 1e-9 * k);
        Assert.Equal(2 * k, K(2 * d, active), 1e-9 * k);
    }, iter: 30);

    private const string Vehicle = """ "wire":"14 mm","outsideDiameter":"114 mm","turns":"9","ends":"closed and ground","freeLength":"400 mm" """;

    // Derived: 54.40 N/mm, solid at 126 mm, 274 mm of travel: 14905 N or 1519.9 kg press it solid.
    [Theory]
    [InlineData("1519 kg", "pass")]
    [InlineData("1521 kg", "fail")]
    public void Past_solid_it_is_no_spring_any_more(string load, string verdict)
    {
        var r = Of($$"""{{Vehicle}},"loads":{"empty":"200 kg","loaded":"{{load}}"}""");
        Assert.Equal(verdict, r.Verdict("solid"));
        Assert.Equal(verdict == "fail", r.Number("rate") is null);
        Assert.Equal(verdict == "fail", r.Number("travelLeft") is null);
        if (verdict == "fail") Assert.Contains("1521 kg (loaded)", r.Finding("solid")["text"]!.GetValue<string>());
    }

    // A. M. Wahl, Mechanical Springs, curvature factor, from memory: 1.25 at an index of 6, 1.40 at 4, 1.14 at 10 (charts of machine-design books; two digits read off).
    [Theory]
    [InlineData(4, 1.40)]
    [InlineData(6, 1.25)]
    [InlineData(10, 1.14)]
    public void The_curvature_factor_is_that_of_the_charts(double index, double factor)
    {
        var r = Of($$""" "wire":"10 mm","outsideDiameter":"{{10 * (index + 1)}} mm","turns":"8","ends":"open","loads":{"a":"100 kg"} """);
        var plain = 8 * 100 * 9.80665 * 10 * index / (Math.PI * 1000); // MPa
        Assert.Equal(factor, r.Number("stress")!.Value / plain, 0.0055);
    }

    [Theory]
    [InlineData("\"wire\":\"60 mm\"", "cannot be wound")]
    [InlineData("\"turns\":\"2\"", "leave none to work")]
    [InlineData("\"freeLength\":\"120 mm\"", "laid together")]
    public void What_cannot_be_a_coil_is_named(string change, string says)
    {
        var given = JsonNode.Parse($"{{{Vehicle}}}")!.AsObject();
        foreach (var (name, value) in JsonNode.Parse($"{{{change}}}")!.AsObject()) given[name] = value!.DeepClone();
        var r = Door.Run("springs.coil", given.ToJsonString());
        Assert.Equal("fail", r.Verdict("dimensions"));
        Assert.Contains(says, r.Finding("dimensions")["text"]!.GetValue<string>());
        Assert.Null(r.Number("rate"));
    }

    private static JsonObject Of(string given) => Door.Run("springs.coil", $"{{{given}}}");
}
