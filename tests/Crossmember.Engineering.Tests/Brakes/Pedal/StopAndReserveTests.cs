using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Pedal;

public class StopAndReserveTests
{
    // Derived on the published formula (UN Regulation 13 Annex 4 1.1.2 as in GRRF-56-3): 100 km/h, 0.36 s of build-up, 6.43 m/s2: 64.97 m in all, 26.57 and 64.37 m. Tolerance 0.1 m.
    [Fact]
    public void A_stop_from_a_hundred_worked_by_hand()
    {
        var r = Stop("26.57 m", "64.37 m", """ "wholeDistance":"64.97 m" """);
        r.Gives("deceleration", 6.43, 0.01);
        r.Gives("distance", 64.97, 0.1);
        r.Gives("wholeDeceleration", 6.43, 0.01);
        r.Gives("share", 6.43 / 9.80665, 0.001);
        Assert.Equal("pass", r.Verdict("distance"));
    }

    // Derived: s = 0.1 v + C v^2 of the rules is a delay of 0.36 s and 1 / (25.92 C): 6.430, 5.758, 5.144, 3.858, 2.442 m/s2 and 70, 77, 85, 110, 168 m from 100 km/h.
    [Theory]
    [InlineData(0.0060, 6.430, 70)]
    [InlineData(0.0067, 5.758, 77)]
    [InlineData(0.0075, 5.144, 85)]
    [InlineData(0.0100, 3.858, 110)]
    [InlineData(0.0158, 2.442, 168)]
    [InlineData(1.0 / 130, 5.015, 86.92)]
    public void Distances_of_the_rules_and_their_decelerations(double c, double d, double metres)
    {
        // Constant from 0.8 to 0.1 of the speed: 0.63 v^2 C of distance between them.
        var between = 0.63 * 10_000 * c;
        var r = Door.Run("brakes.road-test", $$"""{"speed":"100 km/h","beginDistance":"30 m","endDistance":"{{30 + between:R}} m","delay":"0.36 s","buildUp":"0 s"}""");
        r.Gives("deceleration", d, 0.0005);
        r.Gives("distance", metres, 0.05);
    }

    // A published 60 mph at 20 ft/s2 is 194 ft (an interpretation of 49 CFR 571.105); 193.6 by the formula.
    [Fact]
    public void Sixty_miles_an_hour_at_twenty_feet_per_second_squared()
    {
        double v = 88, between = 0.63 * v * v / (2 * 20);
        var r = Door.Run("brakes.road-test", $$"""{"speed":"60 mph","beginDistance":"10 ft","endDistance":"{{10 + between:R}} ft","delay":"0 s","buildUp":"0 s"}""");
        Assert.Equal(193.6, r.Number("distance")!.Value / 0.3048, 0.05);
        Assert.Equal(194, r.Number("distance")!.Value / 0.3048, 0.5);
    }

    // Second way: the stop driven in steps of a tenth of a millisecond, speeds and distances read off the trace.
    [Fact]
    public void A_stop_driven_step_by_step_gives_back_its_deceleration() =>
        Gen.Select(Gen.Double[50, 120], Gen.Double[2, 9], Gen.Double[0.05, 0.5]).Sample((kmh, d, buildUp) =>
        {
            const double dt = 1e-4;
            double v0 = kmh / 3.6, v = v0, s = 0, begin = 0, end = 0;
            for (var t = 0.0; v > 0; t += dt)
            {
                var next = v - (d * Math.Min(1, (t + (dt / 2)) / buildUp) * dt);
                s += Math.Max(0, (v + next) / 2) * dt;
                if (v >= 0.8 * v0 && next < 0.8 * v0) begin = s;
                if (v >= 0.1 * v0 && next < 0.1 * v0) end = s;
                v = next;
            }
            if (d * buildUp * buildUp / 2 > 0.2 * v0 * buildUp) return; // not built up by 0.8 v
            var r = Door.Run("brakes.road-test", $$"""{"speed":"{{kmh:R}} km/h","beginDistance":"{{begin:R}} m","endDistance":"{{end:R}} m","wholeDistance":"{{s:R}} m","buildUp":"{{buildUp:R}} s"}""");
            r.Gives("deceleration", d, 0.005 * d);
            r.Gives("distance", s, 0.01);
            r.Gives("wholeDeceleration", d, 0.005 * d);
            Assert.Equal("pass", r.Verdict("distance"));
        }, iter: 15);

    [Theory]
    [InlineData(""" "wholeDistance":"80 m" """, "caution", "differ by more than a tenth")]
    [InlineData(""" "wholeDistance":"4 m" """, "caution", "shorter than delay and build-up")]
    public void Distances_that_do_not_go_together_are_told(string whole, string verdict, string told)
    {
        var r = Stop("26.57 m", "64.37 m", whole);
        Assert.Equal(verdict, r.Verdict("distance"));
        Assert.Contains(told, r.Finding("distance")["text"]!.GetValue<string>());
    }

    [Fact]
    public void A_trace_read_backward_is_a_wrong_reading()
    {
        var r = Stop("64 m", "26 m", """ "wholeDistance":"65 m" """);
        Assert.Equal("fail", r.Verdict("distance"));
        Assert.Null(r.Number("deceleration"));
        Assert.Equal("unknown", Stop("26 m", "64 m", """ "delay":"0 s" """).Verdict("distance"));
    }

    // Derived, air by hand: 31.325 kPa of 4 L pressed into 3.2 L is 39.156 kPa: 62.169 kPa x 0.04 m2 x 0.95 = 2362 N; let go: (31.325 x 4 + 101.325 x 1.2) / 4.4 = 56.11 kPa, 45.21 kPa are left.
    [Fact]
    public void The_air_of_the_first_stroke_by_hand()
    {
        var r = Reserve();
        r.Gives("firstAssist", 2362.4, 0.1);
        r.Gives("vacuumAfter", 45.214, 0.001);
        r.Gives("secondAssist", 1185.1, 0.1);
        Assert.Equal(2, r.Number("strokes"));
        Assert.Equal("pass", r.Verdict("one-stroke"));
        Assert.Equal("49 CFR 570.56, for vehicles over 10,000 lb", r.Finding("one-stroke")["source"]!.GetValue<string>());
    }

    // Air is neither made nor lost: what the vacuum side gains is what the air side let in. A reservoir helps, and no stroke raises the vacuum.
    [Fact]
    public void A_reservoir_keeps_help_and_no_stroke_makes_vacuum() =>
        Gen.Select(Gen.Double[30, 90], Gen.Double[0, 8000], Gen.Double[5, 30]).Sample((kpa, reservoir, stroke) =>
        {
            JsonObject with = Reserve(kpa, reservoir, stroke), without = Reserve(kpa, 0, stroke);
            Assert.True(with.Number("vacuumAfter") <= kpa + 1e-9);
            Assert.True(with.Number("secondAssist") >= without.Number("secondAssist") - 1e-6);
            Assert.True(with.Number("strokes") >= without.Number("strokes"));
            Assert.True(with.Number("secondAssist") <= with.Number("firstAssist") + 1e-6);
            double before = (101.325 - kpa) * (4000 + reservoir), after = (101.325 - with.Number("vacuumAfter")!.Value) * (4400 + reservoir), let = 40 * stroke * 10;
            Assert.True(after - before <= (101.325 * (400 + (let / 10))) + 1e-6); // no more air than the air side holds
        }, iter: 60);

    [Fact]
    public void Without_help_in_the_first_stroke_it_is_a_caution()
    {
        Assert.Equal("caution", Reserve(8, 0, 30).Verdict("one-stroke"));
        Assert.Equal("caution", Reserve(0).Verdict("one-stroke"));
        var one = Reserve(40, 0, 25);
        Assert.Equal("caution", one.Verdict("one-stroke"));
        Assert.Equal(1, one.Number("strokes"));
        Assert.Contains("1 stroke keeps a third", Text(one));
        Assert.Contains("2 strokes keep a third", Text(Reserve()));
    }

    [Fact]
    public void What_cannot_be_is_a_finding()
    {
        Assert.Contains("more than the 4000 cm3 of the shell", Text(Reserve(70, 0, 120)));
        Assert.Contains("cannot be", Text(Door.Run("brakes.booster-reserve", Vacuum("90 kPa", """ ,"altitude":"3000 m","shellVolume":"4000 cm3","stroke":"20 mm" """))));
        Assert.Contains("wider than the diaphragm", Text(Door.Run("brakes.booster-reserve", Vacuum("60 kPa", """ ,"rod":"240 mm","shellVolume":"4000 cm3","stroke":"20 mm" """))));
    }

    // What a hydraulic booster keeps is asked for and counted, never taken for granted.
    [Theory]
    [InlineData("none", "", "pass", "changes nothing")]
    [InlineData("hydraulic", "", "unknown", "ask whether it has an accumulator")]
    [InlineData("hydraulic", ""","countedStrokes":0""", "caution", "not one stroke")]
    [InlineData("hydraulic", ""","countedStrokes":1""", "caution", "1 stroke was still helped")]
    [InlineData("hydraulic", ""","countedStrokes":3""", "pass", "3 strokes were still helped")]
    public void Other_boosters_have_no_vacuum_to_keep(string kind, string counted, string verdict, string told)
    {
        var r = Door.Run("brakes.booster-reserve", $$"""{"boosterKind":"{{kind}}","pedalRatio":4{{counted}}}""");
        Assert.Equal(verdict, r.Verdict("one-stroke"));
        Assert.Contains(told, Text(r));
        Assert.Null(r.Number("strokes"));
        if (verdict == "unknown") Assert.Equal(["countedStrokes"], r["missing"]!.AsArray().Select(m => m!["input"]!.GetValue<string>()));
    }

    [Fact]
    public void A_missing_shell_is_named() =>
        Assert.Contains("vacuum side of the booster with the pedal up is missing", Text(Door.Run("brakes.booster-reserve", Vacuum("70 kPa", """ ,"stroke":"20 mm" """))));

    private static string Text(JsonObject r) => r.Finding("one-stroke")["text"]!.GetValue<string>();

    private static string Vacuum(string vacuum, string more) =>
        $$"""{"boosterKind":"vacuum","pedalRatio":4.2,"pedalEfficiency":0.95,"diaphragm":"225.6758 mm","vacuum":"{{vacuum}}"{{more}} }""";

    private static JsonObject Reserve(double kpa = 70, double reservoir = 0, double stroke = 20) => Door.Run("brakes.booster-reserve",
        Vacuum($"{kpa:R} kPa", $$""" ,"shellVolume":"4000 cm3","reservoirVolume":"{{reservoir:R}} cm3","stroke":"{{stroke:R}} mm" """));

    private static JsonObject Stop(string begin, string end, string more) => Door.Run("brakes.road-test", $$"""{"speed":"100 km/h","beginDistance":"{{begin}}","endDistance":"{{end}}","buildUp":"0.36 s",{{more}} }""");
}
