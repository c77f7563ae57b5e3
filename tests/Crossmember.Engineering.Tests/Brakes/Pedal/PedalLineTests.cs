using System.Text.Json.Nodes;
using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Pedal;

public class PedalLineTests
{
    private const string Parts = """ "pedalRatio":4.2,"pedalEfficiency":0.95,"masterEfficiency":0.97,"masterBore":"25.4 mm" """;

    private const string Vacuum = """ "boosterKind":"vacuum","diaphragm":"225.6758 mm","boosterEfficiency":0.95,"cutIn":"90 N","jumpIn":"350 N","gain":5,"returnSpring":"200 N" """;

    // Derived: 0.0400 m2 x 0.95 at 70 kPa is 2660 N; in (2660 - 350 + 450) / 4 = 690 N, out 3350 N; 690 / 3.99 = 172.9 N; 3350 x 0.97 / 506.71 = 6.413 MPa. 48 kPa: 1824 N, 481, 2305, 120.6, 4.413.
    [Theory]
    [InlineData(70, 2660, 172.9, 6.413)]
    [InlineData(48, 1824, 120.6, 4.413)]
    public void The_booster_runs_out_where_the_hand_says(double kpa, double assist, double knee, double pressure)
    {
        var r = At(kpa);
        r.Gives("assist", assist, 0.5);
        r.Gives("knee", knee, 0.05);
        r.Gives("kneePressure", pressure, 0.0005);
    }

    // Derived: pressures in MPa at 100, 150, 200, 300, 500 N, by hand from the three pieces; dead: (3.99 F - 200) x 0.97 / 506.71.
    [Theory]
    [InlineData(70, false, 3.628, 5.537, 6.620, 7.384, 8.911)]
    [InlineData(48, false, 3.628, 4.637, 5.019, 5.783, 7.311)]
    [InlineData(70, true, 0.381, 0.763, 1.145, 1.909, 3.436)]
    public void Pressures_over_pedal_force_by_the_published_keys(double kpa, bool dead, params double[] expected)
    {
        var line = LineOf(At(kpa));
        double[] forces = [100, 150, 200, 300, 500];
        foreach (var (force, mpa) in forces.Zip(expected))
            Assert.Equal(mpa, (dead ? line.DeadPressure(force) : line.Pressure(force)) / 1e6, 0.0005);
    }

    // No cut-in and 8 kPa: 304 N are less than a jump-in of 350 N, so it runs out as it begins, at no force. It is a booster all the same: 304 N x 0.97 / 506.71 mm2 before the leg adds its own.
    [Fact]
    public void A_booster_that_runs_out_at_no_force_is_still_one()
    {
        var r = Door.Run("brakes.pedal-line", $$"""{ {{Parts}}, "boosterKind":"vacuum","diaphragm":"225.6758 mm","boosterEfficiency":0.95,"cutIn":"0 N","jumpIn":"350 N","gain":5,"returnSpring":"0 N","vacuum":"8 kPa" }""");
        var line = LineOf(r);
        Assert.Equal(0, line.Knee);
        Assert.True(line.Boosted);
        Assert.Equal((304 + (100 * 3.99)) * 0.97 / 506.7075, line.Pressure(100) / 1e6, 1e-4);
        Assert.Equal(100, line.Force(line.Pressure(100)), 1e-6);
        Assert.False(new PedalLine(7000, 0, 0, 0, 0, 0).Boosted);
    }

    // 1000 psi in the lines is no stop: how hard a vehicle stops by it is told elsewhere on the same sheet.
    [Fact]
    public void A_line_pressure_is_not_called_a_stop()
    {
        var r = At(70);
        Assert.All(r["findings"]!.AsArray(), f => Assert.DoesNotContain("hard stop", f!.ToJsonString()));
        Assert.Contains("6.9 MPa in the lines", r.Finding("run-out")["text"]!.GetValue<string>());
    }

    // Second formulation: air comes in through the valve a little at a time; it closes when the reaction has caught up, or no difference is left. No closed piece is used.
    [Fact]
    public void The_valve_balanced_step_by_step_gives_the_same_line() =>
        Gen.Select(Gen.Double[20, 90], Gen.Double[2, 8], Gen.Double[40, 150], Gen.Double[200, 500], Gen.Double[10, 600]).Sample((kpa, gain, cutIn, jumpIn, pedal) =>
        {
            var r = Door.Run("brakes.pedal-line", $$"""
                { {{Parts}}, "boosterKind":"vacuum","diaphragm":"225.6758 mm","boosterEfficiency":0.95,"cutIn":"{{cutIn:R}} N","jumpIn":"{{jumpIn:R}} N","gain":{{gain:R}},"vacuum":"{{kpa:R}} kPa" }
                """);
            double area = Math.PI / 4 * 0.2256758 * 0.2256758, input = pedal * 4.2 * 0.95;
            if (Math.Abs(input - cutIn) < 1) return;
            double output = 0, assist = 0;
            if (input > cutIn)
            {
                const int steps = 40_000;
                for (var i = 0; i <= steps; i++)
                {
                    assist = kpa * 1e3 * area * 0.95 * i / steps;
                    output = input + assist;
                    if ((output - jumpIn) / gain >= input - cutIn) break;
                }
            }
            var expected = output * 0.97 / (Math.PI / 4 * 0.0254 * 0.0254);
            // One step of air, and where jump-in is below the leg's own force the closed pieces follow the reaction alone.
            if (input > cutIn && jumpIn + (gain * (input - cutIn)) < input) return;
            Assert.Equal(expected, LineOf(r).Pressure(pedal), (kpa * 1e3 * area / 40_000 * 2000) + 1);
        }, iter: 60);

    // The pressure told by the one formula is that of the pedal line at every force, below the cut-in too: both efficiencies once.
    [Fact]
    public void Line_pressure_and_pedal_line_agree() =>
        Gen.Select(Gen.Double[0, 800], Gen.Double[20, 90], Gen.Bool).Sample((pedal, kpa, boosted) =>
        {
            var r = Door.Run("brakes.pedal-line", $$"""{ {{Parts}}, {{(boosted ? Vacuum : "\"boosterKind\":\"none\"")}}, "vacuum":"{{kpa:R}} kPa","pedalForce":"{{pedal:R}} N" }""");
            var p = Door.Run("brakes.line-pressure", $$"""
                {"pedalForce":"{{pedal:R}} N","pedalRatio":4.2,"pedalEfficiency":{{r.Number("wholeEfficiency"):R}},"boosterForce":"{{r.Number("boosterForce"):R}} N","masterBore":"{{r.Number("effectiveBore"):R}} mm"}
                """);
            p.Gives("pressure", LineOf(r).Pressure(pedal) / 1e6, 1e-9 * (1 + p.Number("pressure")!.Value));
            Assert.Equal(r.Number("rodForce")!.Value * 0.97 / 506.7075, p.Number("pressure")!.Value, 1e-5);
        }, iter: 100);

    // Manual brakes, common practice: 80 lb x 6.5 on 1 in is 660 psi, without losses 662.
    [Fact]
    public void Manual_brakes_by_the_rule_of_the_trade() =>
        Door.Run("brakes.line-pressure", """{"pedalForce":"80 lbf","pedalRatio":6.5,"masterBore":"1 in"}""").Gives("pressure", 660 * 0.006894757, 2.5 * 0.006894757);

    // Force is the inverse of pressure on every piece; the dead line lies under the boosted one.
    [Fact]
    public void There_and_back_along_the_line() =>
        Gen.Select(Gen.Double[10, 95], Gen.Double[1, 900]).Sample((kpa, pedal) =>
        {
            var line = LineOf(At(kpa));
            var p = line.Pressure(pedal);
            if (p > line.JumpIn * (1 + 1e-9)) Assert.Equal(pedal, line.Force(p), 1e-6 * pedal);
            Assert.True(pedal <= line.CutIn || line.DeadPressure(pedal) <= p + 1e-6);
        }, iter: 100);

    // ISO 2533, from memory: 101.325 kPa at 0, 89.87 at 1000, 79.50 at 2000, 70.11 at 3000 m.
    [Theory]
    [InlineData(0, 70)]
    [InlineData(1000, 70 - 11.45)]
    [InlineData(2000, 70 - 21.83)]
    [InlineData(3000, 70 - 31.21)]
    public void Vacuum_falls_as_much_as_the_air_does(double m, double kpa) =>
        Door.Run("brakes.pedal-line", $$"""{ {{Parts}}, {{Vacuum}}, "vacuum":"70 kPa","dutyAltitude":"{{m}} m" }""").Gives("vacuumThere", kpa, 0.01);

    // Common practice: about 1 inHg for each 1000 ft.
    [Fact]
    public void About_an_inch_of_mercury_for_each_thousand_feet()
    {
        var r = Door.Run("brakes.pedal-line", $$"""{ {{Parts}}, {{Vacuum}}, "vacuum":"18 inHg","dutyAltitude":"5000 ft" }""");
        Assert.InRange((18 * 3.386389) - r.Number("vacuumThere")!.Value, 0.95 * 5 * 3.386389, 1.05 * 5 * 3.386389);
    }

    [Fact]
    public void A_vacuum_beyond_the_air_is_a_wrong_reading()
    {
        var r = Door.Run("brakes.pedal-line", $$"""{ {{Parts}}, {{Vacuum}}, "vacuum":"90 kPa","vacuumAltitude":"2000 m" }""");
        Assert.Equal("fail", r.Verdict("vacuum"));
        Assert.Contains("Read the gauge again", Text(r, "vacuum"));
        Assert.Null(r.Number("knee"));
        Assert.Equal("unknown", r.Verdict("run-out"));
    }

    // No vacuum left: the booster is its own return spring, and the line is the dead one.
    [Fact]
    public void Without_vacuum_the_line_is_the_dead_one()
    {
        var line = LineOf(At(0));
        foreach (var f in (double[])[10, 40, 60, 100, 400]) Assert.Equal(line.DeadPressure(f), line.Pressure(f), 1e-6);
        Assert.Equal("caution", At(0).Verdict("vacuum"));
    }

    [Theory]
    [InlineData(70, "6.4", "pass")]
    [InlineData(70, "6.5", "caution")]
    [InlineData(48, "6.4", "caution")]
    public void A_booster_that_runs_out_before_a_hard_stop_is_a_caution(double kpa, string hard, string verdict) =>
        Assert.Equal(verdict, Door.Run("brakes.pedal-line", $$"""{ {{Parts}}, {{Vacuum}}, "vacuum":"{{kpa}} kPa","hardPressure":"{{hard}} MPa" }""").Verdict("run-out"));

    // 49 CFR 571.135 S7.5: 500 N. 3.821e-3 MPa/N x 2 = 7.64e-3: 3.8 MPa at 497 N by the leg, 3.9 MPa at 510 N.
    [Theory]
    [InlineData("3.8", "pass")]
    [InlineData("3.9", "caution")]
    public void A_leg_is_counted_on_for_500_newtons(string hard, string verdict)
    {
        var r = Door.Run("brakes.pedal-line", $$"""{ {{Parts}}, "boosterKind":"none","hardPressure":"{{hard}} MPa" }""");
        Assert.Equal(verdict, r.Verdict("effort"));
        Assert.Equal("pass", r.Verdict("vacuum"));
        r.Gives("hardForce", double.Parse(hard, System.Globalization.CultureInfo.InvariantCulture) / 0.0076380, 0.05);
        Assert.Equal(0, r.Number("knee"));
    }

    // A booster whose vacuum nobody read must not be told as a leg alone.
    [Fact]
    public void An_unread_vacuum_leaves_the_line_unknown_and_names_the_gauge()
    {
        var r = Door.Run("brakes.pedal-line", $$"""{ {{Parts}}, {{Vacuum}} }""");
        Assert.Equal("unknown", r.Verdict("run-out"));
        Assert.Contains("tee a gauge into the booster hose at warm idle", Text(r, "run-out"));
        Assert.Null(r.Number("knee"));
        Assert.Null(r.Number("effectiveBore"));
        r.Gives("plainPressure", 444.822 * 3.99 * 0.97 / 506.7075, 1e-4);
        r.Gives("deadLoss", 200 * 0.97 / 506.7075, 1e-5);
    }

    [Fact]
    public void A_missing_bore_is_named() =>
        Assert.Contains("read it off the casting", Text(Door.Run("brakes.pedal-line", """{"pedalRatio":6,"boosterKind":"none"}"""), "effort"));

    // Hydraulic: 5 MPa on 25 mm and 0.95 are 2331.6 N.
    [Fact]
    public void A_hydraulic_booster_pushes_by_its_piston()
    {
        var r = Door.Run("brakes.pedal-line", $$"""{ {{Parts}}, "boosterKind":"hydraulic","boosterPressure":"5 MPa","boosterPiston":"25 mm" }""");
        r.Gives("assist", 5e6 * Math.PI / 4 * 0.025 * 0.025 * 0.95, 1e-6);
        Assert.Contains("pressure or piston", Text(Door.Run("brakes.pedal-line", $$"""{ {{Parts}}, "boosterKind":"hydraulic" }"""), "run-out"));
    }

    // Derived: 3000 N on 30 and 34 mm, 19.05 and 22.225 mm: 1593.75 and 1406.25 N, 5.592 and 3.625 MPa.
    [Fact]
    public void Two_cylinders_on_a_bar_have_their_own_pressures()
    {
        var bar = Door.Run("brakes.bias-bar", """{"barForce":"3000 N","frontArm":"30 mm","rearArm":"34 mm","frontBore":"19.05 mm","rearBore":"22.225 mm","efficiency":1}""");
        bar.Gives("frontForce", 1593.75, 0.005);
        bar.Gives("rearForce", 1406.25, 0.005);
        bar.Gives("frontPressure", 5.592, 0.0005);
        bar.Gives("rearPressure", 3.625, 0.0005);
        var line = Door.Run("brakes.pedal-line", """
            {"pedalRatio":6,"pedalEfficiency":1,"masterEfficiency":1,"masterKind":"twin","frontArm":"30 mm","rearArm":"34 mm","frontBore":"19.05 mm","rearBore":"22.225 mm","boosterKind":"none","pedalForce":"500 N"}
            """);
        Assert.Equal(5.592, LineOf(line).Pressure(500) / 1e6, 0.0005);
        line.Gives("rearShare", 3.625 / 5.592, 0.0002);
        Assert.Contains(line["cautions"]!.AsArray(), c => c!.GetValue<string>().Contains("front circuit", StringComparison.Ordinal));
    }

    // Putting the bearing where it says gives the share asked for; work is kept: F s = Ff sf + Fr sr is in the travel's tests.
    [Fact]
    public void The_bearing_moved_as_told_gives_the_wanted_share() =>
        Gen.Select(Gen.Double[20, 50], Gen.Double[20, 50], Gen.Double[0.3, 0.8]).Sample((xf, xr, share) =>
        {
            JsonObject Bar(double f, double r) => Door.Run("brakes.bias-bar", $$"""
                {"barForce":"2000 N","frontArm":"{{f:R}} mm","rearArm":"{{r:R}} mm","frontBore":"19.05 mm","rearBore":"22.225 mm","wantedFrontShare":{{share:R}} }
                """);
            var shift = Bar(xf, xr).Number("bearingShift")!.Value;
            Bar(xf - shift, xr + shift).Gives("frontShare", share, 1e-9);
        }, iter: 50);

    private static JsonObject At(double kpa) => Door.Run("brakes.pedal-line", $$"""{ {{Parts}}, {{Vacuum}}, "vacuum":"{{kpa:R}} kPa" }""");

    private static PedalLine LineOf(JsonObject r) => new(r.Number("plainPressure")!.Value * 1e6 / PedalLine.ReferenceForce, r.Number("cutIn")!.Value, r.Number("jumpIn")!.Value * 1e6,
        r.Number("knee")!.Value, r.Number("kneePressure")!.Value * 1e6, r.Number("deadLoss")!.Value * 1e6);

    private static string Text(JsonObject r, string check) => r.Finding(check)["text"]!.GetValue<string>();
}
