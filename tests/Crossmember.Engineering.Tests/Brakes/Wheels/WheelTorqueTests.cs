using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Wheels;

public class WheelTorqueTests
{
    private const double Told = 6.894757293168; // MPa: 1000 lbf over a square inch, 4448.2216152605 N / 645.16 mm2

    // Derived: 2 x 48 mm on one side are 3619.1 mm2; 2 x 0.38 x 3619.1e-6 x 0.125 = 343.8 N m for each MPa. 25.4 mm and 127 mm with a factor of 2.30: 148.0 N m.
    [Fact]
    public void Torques_by_hand()
    {
        Disc().Gives("torque", 343.8 * Told, 0.05 * Told);
        Run("""{"kind":"drum","factor":"2.3","cylinderBore":"25.4 mm","drumDiameter":"254 mm"}""").Gives("torque", 148.0 * Told, 0.05 * Told);
    }

    // Derived: pads 100 to 150 mm from the center: 125.00 worn in, 2/3 (150^3 - 100^3) / (150^2 - 100^2) = 126.67 mm new.
    [Fact]
    public void Radii_of_worn_in_and_of_new_pads()
    {
        Disc().Gives("effectiveRadius", 125, 1e-9);
        Disc().Gives("newRadius", 126.67, 0.005);
    }

    // Second method: rings of a pad summed up, with pressure alike everywhere (new) and with pressure as 1 / r (worn in).
    [Fact]
    public void Radii_are_those_of_rings_summed_up() =>
        Gen.Select(Gen.Double[150, 260], Gen.Double[20, 140]).Sample((outer, inner) =>
        {
            double force = 0, moment = 0, worn = 0, wornMoment = 0, d = (outer - inner) / 2000;
            for (var i = 0; i < 2000; i++)
            {
                var r = inner + ((i + 0.5) * d);
                (force, moment, worn, wornMoment) = (force + (r * d), moment + (r * r * d), worn + d, wornMoment + (r * d));
            }
            var told = Run($$"""{"kind":"disc","factor":"0.7","pistons":"1","pistonDiameter":"60 mm","padOuter":"{{2 * outer:R}} mm","padInner":"{{2 * inner:R}} mm"}""");
            told.Gives("newRadius", moment / force, 1e-4 * outer);
            told.Gives("effectiveRadius", wornMoment / worn, 1e-6 * outer);
            Assert.True(told.Number("newRadius") > told.Number("effectiveRadius"));
        }, iter: 30);

    // Counting an opposed caliper's pistons on both sides would double its torque: a fixed caliper with two a side is the sliding one with two.
    [Fact]
    public void A_fixed_caliper_with_as_many_pistons_a_side_brakes_alike()
    {
        Assert.Equal(Disc(caliper: "sliding").Number("torque"), Disc(caliper: "fixed").Number("torque"));
        Assert.Contains("4 in all in a fixed caliper", Disc(caliper: "fixed").Finding("parts")["text"]!.GetValue<string>());
    }

    [Fact]
    public void Torque_grows_with_the_square_of_the_bore_and_with_the_factor() =>
        Gen.Select(Gen.Double[20, 30], Gen.Double[1, 2], Gen.Double[1, 5]).Sample((bore, times, factor) =>
        {
            double At(double d, double c) => Run($$"""{"kind":"drum","factor":"{{c:R}}","cylinderBore":"{{d:R}} mm","drumDiameter":"280 mm"}""").Number("torque")!.Value;
            Assert.Equal(At(bore, factor) * times * times * 2, At(bore * times, 2 * factor), 1e-6);
        }, iter: 30);

    [Theory]
    [InlineData(""" "padOuter":"300 mm","padInner":"300 mm" """, "rule both edges")]
    [InlineData(""" "padOuter":"306 mm","padInner":"200 mm","rotorDiameter":"305 mm" """, "hang over its edge")]
    [InlineData(""" "padOuter":"300 mm","padInner":"200 mm","caliperBore":"47.9 mm" """, "does not go into a bore")]
    public void What_cannot_be_at_a_disc_names_the_reading(string readings, string told)
    {
        var r = Run($$"""{"kind":"disc","factor":"0.76","pistons":"2","pistonDiameter":"48 mm",{{readings}}}""");
        Assert.Equal("fail", r.Verdict("parts"));
        Assert.Contains(told, r.Finding("parts")["text"]!.GetValue<string>());
        Assert.Null(r.Number("torque"));
    }

    [Fact]
    public void Half_a_piston_a_loose_one_and_a_cylinder_as_large_as_its_drum_are_told()
    {
        Assert.Equal("fail", Run("""{"kind":"disc","factor":"0.76","pistons":"1.5","pistonDiameter":"48 mm","padOuter":"300 mm","padInner":"200 mm"}""").Verdict("parts"));
        var loose = Run("""{"kind":"disc","factor":"0.76","pistons":"2","pistonDiameter":"48 mm","caliperBore":"51 mm","padOuter":"300 mm","padInner":"200 mm"}""");
        Assert.Equal("caution", loose.Verdict("parts"));
        Assert.NotNull(loose.Number("torque"));
        Assert.Equal("fail", Run("""{"kind":"drum","factor":"2.3","cylinderBore":"130 mm","drumDiameter":"254 mm"}""").Verdict("parts"));
    }

    // Pads of 200 to 300 mm sweep 39270 mm2: three pistons of 70 mm are 29 %, of 76 mm 35 % of it; eight of 60 mm were counted on both sides.
    [Theory]
    [InlineData(2, 48, "pass")]
    [InlineData(3, 70, "pass")]
    [InlineData(3, 76, "caution")]
    [InlineData(4, 40, "caution")]
    [InlineData(8, 60, "caution")]
    public void Pistons_of_both_sides_are_told(int pistons, double diameter, string verdict)
    {
        var r = Run($$"""{"kind":"disc","factor":"0.76","caliper":"fixed","pistons":"{{pistons}}","pistonDiameter":"{{diameter:R}} mm","padOuter":"300 mm","padInner":"200 mm"}""");
        Assert.Equal(verdict, r.Verdict("parts"));
        if (verdict == "caution") Assert.Contains("one side only", r.Finding("parts")["text"]!.GetValue<string>());
        Assert.NotNull(r.Number("torque"));
    }

    [Theory]
    [InlineData("disc", new[] { "pistons", "pistonDiameter", "padOuter", "padInner" })]
    [InlineData("drum", new[] { "drumDiameter", "cylinderBore" })]
    public void Only_what_the_kind_needs_is_asked_for(string kind, string[] missing)
    {
        var r = Run($$"""{"kind":"{{kind}}","factor":"1"}""");
        Assert.Equal("unknown", r.Verdict("parts"));
        Assert.Equal(missing, r["missing"]!.AsArray().Select(m => m!["input"]!.GetValue<string>()));
    }

    private static JsonObject Disc(string caliper = "sliding") =>
        Run($$"""{"kind":"disc","factor":"0.76","caliper":"{{caliper}}","pistons":"2","pistonDiameter":"48 mm","padOuter":"300 mm","padInner":"200 mm","rotorDiameter":"302 mm"}""");

    private static JsonObject Run(string input) => Door.Run("brakes.wheel-torque", input);
}
