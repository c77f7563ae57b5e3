using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Recovery;

public class WinchLayersTests
{
    // US Army TM 9-2320-338-10 and TM 9-2320-430-10, table Self-Recovery Winch Pull Capacity: 20,000, 18,173 and 16,663 lb on layers 1, 2 and 3.
    // The first two fix the drum at 18.894 rope diameters; the third must then follow, within 0.1 % (the table is rounded on the way).
    [Theory]
    [InlineData("50 ft", 1, 20000, 0.5)]
    [InlineData("100 ft", 2, 18173, 1)]
    [InlineData("160 ft", 3, 16663, 16.7)]
    public void Layers_of_the_army_table(string rope, int layers, double lbf, double tolerance)
    {
        var r = Wind("20000 lbf", "first layer", "9.447 in", "10 in", "0.5 in", rope);
        r.Gives("layers", layers, 0);
        r.Gives("fullPull", lbf * 4.4482216e-3, tolerance * 4.4482216e-3);
    }

    // Derived: drum 63.5 mm, rope 9.5 mm, width 228 mm: 24 turns; 4310 x 73 / (73, 92, 111, 130); rope 24 pi x (73, 165, 276, 406) mm.
    [Theory]
    [InlineData(5.50, 1, 4310)]
    [InlineData(12.44, 2, 3420)]
    [InlineData(20.81, 3, 2835)]
    [InlineData(30.61, 4, 2420)]
    public void Four_layers_of_a_vehicle_winch(double rope, int layers, double kgf)
    {
        // A hand's breadth less than the full layer, since the lengths are rounded to a centimeter.
        var r = Wind("4310 kgf", "first layer", "63.5 mm", "228 mm", "9.5 mm", $"{rope - 0.006} m");
        r.Gives("turns", 24, 0);
        r.Gives("layers", layers, 0);
        r.Gives("fullPull", kgf * 9.80665e-3, 0.001 * kgf * 9.80665e-3);
        Assert.Equal(layers + 1, Wind("4310 kgf", "first layer", "63.5 mm", "228 mm", "9.5 mm", $"{rope + 0.006} m").Number("layers")!.Value);
    }

    // Energy: over a full layer the drum turns n times against one torque, so pull times rope is the same on every layer.
    [Fact]
    public void Every_full_layer_takes_the_same_work() =>
        Gen.Select(Gen.Double[40, 300], Gen.Double[5, 20], Gen.Int[5, 40], Gen.Double[5, 100]).Sample((drum, rope, turns, kN) =>
        {
            var r = Wind($"{kN:R} kN", "first layer", $"{drum:R} mm", $"{(turns + 0.5) * rope:R} mm", $"{rope:R} mm", "120 m");
            var curves = r["curves"]!.AsArray().Select(c => (Pull: c!["y"]!["values"]![0]!.GetValue<double>(), From: c["x"]!["values"]![0]!.GetValue<double>(), To: c["x"]!["values"]![1]!.GetValue<double>())).ToList();
            foreach (var layer in curves.Take(curves.Count - 1)) // the outermost may be part of a layer
                Assert.Equal(curves[0].Pull * (curves[0].To - curves[0].From), layer.Pull * (layer.To - layer.From), 1e-6 * curves[0].Pull);
            Assert.Equal(0, curves[^1].From, 1e-9);
            Assert.Equal(120 / 0.3048, curves[0].To, 1e-9);
            for (var k = 1; k < curves.Count; k++) Assert.Equal(curves[k].To, curves[k - 1].From, 1e-6);
        }, iter: 100);

    [Fact]
    public void More_rope_on_the_drum_never_pulls_more() =>
        Gen.Select(Gen.Double[40, 300], Gen.Double[5, 20], Gen.Double[60, 400], Gen.Double[3, 100], Gen.Double[0, 50]).Sample((drum, rope, width, length, more) =>
        {
            JsonObject Of(double m) => Wind("40 kN", "first layer", $"{drum:R} mm", $"{width:R} mm", $"{rope:R} mm", $"{m:R} m");
            if (Of(length + more).Number("fullPull") is { } longer) Assert.True(longer <= Of(length).Number("fullPull") * (1 + 1e-12));
        }, iter: 200);

    // The same winch told by its full drum: 2420 kgf there is 4310 kgf on the first layer.
    [Fact]
    public void A_rating_of_the_full_drum_means_more_on_the_first_layer()
    {
        var r = Wind("2420.23 kgf", "full drum", "63.5 mm", "228 mm", "9.5 mm", "30 m");
        r.Gives("firstPull", 4310 * 9.80665e-3, 0.0005);
        r.Gives("fullPull", 2420.23 * 9.80665e-3, 1e-9);
    }

    // pi x 73 mm a wrap: five of them keep 1.147 m of 30 m, two keep 0.459 m (ASME B30.7 from memory; five: the maker of the army winch above).
    [Theory]
    [InlineData("", 28.853)]
    [InlineData(""" ,"minimumWraps":"2" """, 29.541)]
    public void Wraps_that_must_stay_are_taken_off_the_rope(string wraps, double usable) =>
        Wind("40 kN", "first layer", "63.5 mm", "228 mm", "9.5 mm", "30 m", wraps).Gives("usableRope", usable, 0.0005);

    // Four layers of 9.5 mm on 63.5 mm stand 139.5 mm across; a rope's thickness clear of the rim is common practice, no source.
    [Theory]
    [InlineData("165 mm", "pass")]
    [InlineData("150 mm", "caution")]
    [InlineData("139 mm", "fail")]
    public void The_rope_must_fit_under_the_flange(string flange, string verdict) =>
        Assert.Equal(verdict, Wind("40 kN", "first layer", "63.5 mm", "228 mm", "9.5 mm", "30 m", $""" ,"flangeDiameter":"{flange}" """).Verdict("fits"));

    [Theory]
    [InlineData("5 mm", "30 m", "The rope is thicker than the drum is wide")]
    [InlineData("228 mm", "90 km", "more than 40 layers")]
    public void What_cannot_be_wound_is_told(string width, string rope, string says)
    {
        var r = Wind("40 kN", "first layer", "63.5 mm", width, "9.5 mm", rope, """ ,"flangeDiameter":"200 mm" """);
        Assert.Null(r.Number("fullPull"));
        Assert.Equal("unknown", r.Verdict("fits"));
        Assert.Contains(r["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains(says));
    }

    private static JsonObject Wind(string pull, string layer, string drum, string width, string rope, string length, string more = "") => Door.Run("recovery.winch-layers", $$"""
        {"linePull":"{{pull}}","ratingLayer":"{{layer}}","drumDiameter":"{{drum}}","drumWidth":"{{width}}","ropeDiameter":"{{rope}}","ropeLength":"{{length}}"{{more}}}
        """);
}
