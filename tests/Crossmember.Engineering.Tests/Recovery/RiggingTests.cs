using System.Numerics;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Recovery;

public class RiggingTests
{
    private const double Pound = 4.4482216e-3; // kN

    // US Army TB 9-2350-292-10, recovery steps 4 and 5; 10 % for each block from memory: load 6600 lb, 2 sheaves, mechanical advantage 3.
    [Fact]
    public void Tackle_resistance_and_fall_line_of_the_army_procedure()
    {
        var r = Tackle("6600 lbf", """ ,"parts":"3" """);
        r.Gives("tackle", 1320 * Pound, 0.5 * Pound);
        r.Gives("total", 7920 * Pound, 0.5 * Pound);
        r.Gives("fallLine", 2640 * Pound, 0.5 * Pound);
        r.Gives("blockLoad", 5280 * Pound, 0.5 * Pound);
        r.Gives("speed", 33.333, 0.001);
    }

    // Independent: a chain of sheaves, each of which leaves 1 / 1.1 of the tension to the next part. The rule of adding 10 % of the load for each must be on the safe side of
    // it, and no more than the friction of all of them over; the work put in is never less than the work got out.
    [Fact]
    public void The_rule_lies_between_a_chain_of_sheaves_and_statics() =>
        Gen.Select(Gen.Int[1, 6], Gen.Double[5, 60]).Sample((n, load) =>
        {
            var fall = Tackle($"{load:R} kN", $""" ,"parts":"{n}" """).Number("fallLine")!.Value;
            var chain = load / Enumerable.Range(0, n).Sum(i => Math.Pow(1.1, -i));
            Assert.True(fall >= chain * (1 - 1e-12), $"{n} parts");
            Assert.True(fall * n >= load * (1 - 1e-12));
            Assert.Equal(load / n, Tackle($"{load:R} kN", $""" ,"parts":"{n}","sheaveResistance":"0" """).Number("fallLine")!.Value, 1e-9 * load);
        }, iter: 100);

    // The fewest parts are found by trying one after another: with one fewer the line would carry more than the layer gives.
    [Fact]
    public void The_fewest_parts_that_do_are_taken() =>
        Gen.Select(Gen.Double[5, 90], Gen.Double[2, 12]).Sample((load, distance) =>
        {
            var r = Tackle($"{load:R} kN", $""" ,"distance":"{distance:R} m" """);
            if (r.Number("parts") is not { } parts) return;
            Assert.True(r.Number("fallLine") <= (r.Number("layerPull") / 1.5) + 1e-9);
            Assert.Equal(parts * distance, r.Number("ropeOut")!.Value, 1e-9);
            if (parts < 2) return;
            var fewer = Tackle($"{load:R} kN", $""" ,"distance":"{distance:R} m","parts":"{parts - 1}" """);
            Assert.True(fewer.Number("fallLine") > fewer.Number("layerPull") / 1.5);
        }, iter: 200);

    // 30 m of rope, 1.147 m of it stay: three parts over 9.7 m would take 29.1 m; twice as much is no rope at all.
    [Theory]
    [InlineData("9.6 m", "40 kN", "pass")]
    [InlineData("9.7 m", "40 kN", "fail")]
    [InlineData("3 m", "10 kN", "pass")]
    [InlineData("3 m", "400 kN", "caution")] // by a margin and a ground remembered
    [InlineData("29 m", "10 kN", "fail")] // not even one part reaches
    public void The_rope_must_reach(string distance, string pull, string verdict) =>
        Assert.Equal(verdict, Tackle(pull, $""" ,"distance":"{distance}"{(pull == "40 kN" ? ""","parts":"3" """ : "")} """).Verdict("rigging"));

    // Torque: what the motor sees is the line load at its own radius, told at the radius of the first layer. 26 m out of 30 leaves the first layer; 5 m out is the fourth.
    [Theory]
    [InlineData("26 m", 1, 1.0)]
    [InlineData("5 m", 4, 130.0 / 73)]
    public void The_motor_sees_the_layer(string distance, int layer, double times)
    {
        var r = Tackle("10 kN", $""" ,"distance":"{distance}","parts":"1" """);
        r.Gives("layer", layer, 0);
        r.Gives("firstLayerLoad", 10 * times, 1e-9);
        r.Gives("fullDrumLoad", 10 * 130.0 / 73, 1e-9); // four layers in all
        Assert.Contains($"layer {layer} of 4", r.Finding("rigging")["text"]!.GetValue<string>());
        r.Gives("layerPull", 4310 * 9.80665e-3 / times, 1e-9);
    }

    // Derived (2 cos of half the angle): 0 deg 2.00, 30 1.93, 60 1.73, 90 1.41, 120 1.00, 150 0.52, 180 0.00; 10 deg exactly 1.992.
    [Theory]
    [InlineData(0, 2.00)]
    [InlineData(10, 1.992)]
    [InlineData(30, 1.93)]
    [InlineData(60, 1.73)]
    [InlineData(90, 1.41)]
    [InlineData(120, 1.00)]
    [InlineData(150, 0.52)]
    [InlineData(180, 0.00)]
    public void Block_factors(double degrees, double factor) => Block(degrees).Gives("factor", factor, 0.005);

    // Independent: the two pulls added as vectors.
    [Fact]
    public void A_block_carries_the_sum_of_two_vectors() =>
        Gen.Double[0, 180].Sample(degrees =>
        {
            var a = degrees * Math.PI / 180;
            var sum = new Complex(1, 0) + Complex.FromPolarCoordinates(1, a);
            Assert.Equal(10 * sum.Magnitude, Block(degrees).Number("load")!.Value, 1e-9);
        }, iter: 200);

    [Theory]
    [InlineData("2039.5 kg", "pass")] // 20 kN
    [InlineData("2039.3 kg", "fail")]
    public void A_block_is_held_against_its_mark(string rated, string verdict) =>
        Assert.Equal(verdict, Door.Run("recovery.block-load", $$"""{"linePull":"10 kN","ratedLoad":"{{rated}}"}""").Verdict("block"));

    // ANSI/ASME B30.9, load-angle factors, from memory: 90 deg 1.000, 60 1.155, 45 1.414, 30 2.000; below 30 deg not recommended.
    [Theory]
    [InlineData(90, 1.000)]
    [InlineData(60, 1.155)]
    [InlineData(45, 1.414)]
    [InlineData(30, 2.000)]
    public void Load_angle_factors(double degrees, double factor)
    {
        var r = Legs(degrees);
        r.Gives("factor", factor, 0.0005);
        r.Gives("leg", 10 * factor / 2, 0.003);
    }

    // Independent: both legs as vectors balance the pull, and their parts along the bumper balance each other.
    [Fact]
    public void The_legs_of_a_bridle_balance_the_pull() =>
        Gen.Double[30, 90].Sample(degrees =>
        {
            var r = Legs(degrees);
            Complex left = Complex.FromPolarCoordinates(r.Number("leg")!.Value, degrees * Math.PI / 180), right = -Complex.Conjugate(left);
            Assert.Equal(10, (left + right).Imaginary, 1e-9);
            Assert.Equal(0, (left + right).Real, 1e-9);
            Assert.Equal(left.Real, r.Number("inward")!.Value, 1e-9);
        }, iter: 100);

    [Theory]
    [InlineData(60, "pass")]
    [InlineData(40, "caution")]
    [InlineData(29.9, "fail")]
    [InlineData(91, "unknown")]
    public void A_flat_bridle_is_refused(double degrees, string verdict)
    {
        var r = Legs(degrees);
        if (verdict == "unknown") Assert.Contains("the outer one", r.Finding("angle")["text"]!.GetValue<string>());
        else Assert.Equal(verdict, r.Verdict("angle"));
        Assert.Equal(degrees is < 30 or > 90, r.Number("leg") is null);
    }

    private static JsonObject Tackle(string pull, string more) => Door.Run("recovery.purchase",
        $$"""
        {"pull":"{{pull}}","firstPull":"4310 kgf","drumDiameter":"63.5 mm","drumWidth":"228 mm","ropeDiameter":"9.5 mm","ropeLength":"30 m"{{(more.Contains("distance") ? "" : ""","distance":"5 m" """)}}{{more}} }
        """);

    private static JsonObject Block(double degrees) => Door.Run("recovery.block-load", $$"""{"linePull":"10 kN","angle":"{{degrees:R}} deg"}""");

    private static JsonObject Legs(double degrees) => Door.Run("recovery.bridle", $$"""{"pull":"10 kN","angle":"{{degrees:R}} deg"}""");
}
