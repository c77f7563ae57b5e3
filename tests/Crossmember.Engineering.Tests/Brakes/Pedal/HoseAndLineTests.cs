using System.Text.Json.Nodes;
using Crossmember.Engineering.Reading;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Pedal;

public class HoseAndLineTests
{
    // 49 CFR 571.106 table I, from memory: cm3 each foot at 1000 psi, regular and low, by bore.
    [Theory]
    [InlineData("1/8 in", "regular", 0.66)]
    [InlineData("1/8 in", "low", 0.33)]
    [InlineData("3/16 in", "regular", 0.86)]
    [InlineData("3/16 in", "low", 0.55)]
    [InlineData("1/4 in", "regular", 1.04)]
    [InlineData("1/4 in", "low", 0.82)]
    public void A_foot_of_hose_swells_as_the_standard_allows(string bore, string grade, double cc)
    {
        var r = Hoses($$""" "hoseBore":"{{bore}}","hoseGrade":"{{grade}}","frontHoseLength":"1 ft","frontHoses":1,"rearHoses":0 """);
        r.Gives("frontVolume", cc, 1e-6);
        r.Gives("rearVolume", 0, 1e-12);
    }

    [Fact]
    public void The_table_rises_from_low_to_regular_from_bore_to_bore_and_from_1000_to_1500_psi()
    {
        var table = ReferenceTable.Load("brake-hose.csv");
        double[] at = [.. table.Rows.Select(r => table.Number(r, "at-1000-psi"))], higher = [.. table.Rows.Select(r => table.Number(r, "at-1500-psi"))];
        Assert.Equal(6, at.Length);
        Assert.All(at.Zip(higher), p => Assert.InRange(p.Second, p.First, 1.5 * p.First)); // a straight line over pressure tells no less than the standard
        for (var i = 0; i < 6; i += 2) Assert.True(at[i + 1] < at[i]);
        for (var i = 2; i < 6; i++) Assert.True(at[i] > at[i - 2]);
    }

    // A maker's figure goes before the table; without a length 0.45 m stands in, told in the validity.
    [Fact]
    public void A_makers_figure_goes_first()
    {
        Hoses(""" "frontSwell":"0.5 cm3","frontHoseLength":"1 ft","frontHoses":2,"rearHoses":0 """).Gives("frontVolume", 1, 1e-9);
        Hoses(""" "frontHoses":1,"rearHoses":0 """).Gives("frontVolume", 0.66 * 0.45 / 0.3048, 1e-6);
    }

    // Whatever the booster: the pieces meet in order, pressure never falls with force, and the dead line lies beneath.
    [Fact]
    public void The_pedal_line_rises_whatever_the_booster() =>
        Gen.Select(Gen.Double[0, 95], Gen.Double[1.2, 10], Gen.Double[0, 300], Gen.Double[0, 1000], Gen.Double[120, 300], Gen.Double[2, 8]).Sample((kpa, gain, cutIn, jumpIn, diaphragm, ratio) =>
        {
            var r = Door.Run("brakes.pedal-line", $$"""
                {"pedalRatio":{{ratio:R}},"masterBore":"25.4 mm","boosterKind":"vacuum","diaphragm":"{{diaphragm:R}} mm","cutIn":"{{cutIn:R}} N","jumpIn":"{{jumpIn:R}} N","gain":{{gain:R}},"vacuum":"{{kpa:R}} kPa"}
                """);
            double c = r.Number("cutIn")!.Value, j = r.Number("jumpIn")!.Value, k = r.Number("knee")!.Value, p = r.Number("kneePressure")!.Value;
            Assert.True(c <= k + 1e-9 && j <= p + 1e-9, $"{c} {k} {j} {p}");
            Assert.True(r.Number("hardForce") <= r.Number("deadForce") + 1e-6);
            Assert.True(p <= 1e-9 || r.Number("hardForce") >= c);
        }, iter: 200);

    // Half the assist at the same gain: the run-out comes at less force, and what lies below it stays: read off the curves drawn.
    [Fact]
    public void The_curves_drawn_are_the_working_the_thin_and_the_dead_line()
    {
        var r = Door.Run("brakes.pedal-line", """{"pedalRatio":4.2,"pedalEfficiency":0.95,"masterBore":"25.4 mm","boosterKind":"vacuum","diaphragm":"225.6758 mm","vacuum":"72 kPa"}""");
        var thin = Door.Run("brakes.pedal-line", """{"pedalRatio":4.2,"pedalEfficiency":0.95,"masterBore":"25.4 mm","boosterKind":"vacuum","diaphragm":"225.6758 mm","vacuum":"48 kPa"}""");
        var curves = r["curves"]!.AsArray();
        Assert.Equal(["booster working", "two thirds of the assist", "booster dead"], curves.Select(c => c!["name"]!.GetValue<string>()));
        Assert.Equal(thin.Number("knee")!.Value, Values(curves[1]!, "x")[3], 1e-6);
        Assert.Equal(thin.Number("kneePressure")!.Value, Values(curves[1]!, "y")[3], 1e-6);
        Assert.Equal(r.Number("knee")!.Value, Values(curves[0]!, "x")[3], 1e-6);
        Assert.Equal(0, Values(curves[2]!, "y")[1], 1e-9);
    }

    [Fact]
    public void A_tube_wider_than_the_diaphragm_is_a_wrong_measure()
    {
        var r = Door.Run("brakes.pedal-line", """{"pedalRatio":4.2,"masterBore":"25.4 mm","boosterKind":"vacuum","diaphragm":"40 mm","rod":"50 mm","vacuum":"60 kPa"}""");
        Assert.Contains("wider than the diaphragm", r.Finding("run-out")["text"]!.GetValue<string>());
        Assert.Null(r.Number("knee"));
    }

    [Fact]
    public void A_stepped_bore_without_its_large_end_says_so() =>
        Assert.Contains(Hoses(""" "masterKind":"stepped" """)["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("not known: the small one is taken", StringComparison.Ordinal));

    // Bare of clearances, give and fluid: what is left are the hoses.
    private static JsonObject Hoses(string more) => Door.Run("brakes.pedal-travel", $$"""
        {"pedalRatio":4,"masterBore":"25.4 mm","frontTakeUp":{"left":"0 cm3"},"frontFull":{"left":"0 cm3"},"rearTakeUp":{"left":"0 cm3"},"rearFull":{"left":"0 cm3"},"fluidVolume":"0 cm3","hardPressure":"6.894757293168 MPa",{{more}} }
        """);

    private static double[] Values(JsonNode curve, string axis) => [.. curve[axis]!["values"]!.AsArray().Select(v => v!.GetValue<double>())];
}
