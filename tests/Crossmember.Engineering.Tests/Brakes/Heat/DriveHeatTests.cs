using System.Text.Json.Nodes;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Heat;

/// <summary>A drive through the door: what it says, when it says nothing, and a recorded drive against the same one told in figures.</summary>
public class DriveHeatTests
{
    private const string Hill = """ "grade":0.07,"length":"6 km","speed":"60 km/h","stopsCount":0 """;

    // The same hill as a record of speed and height: 6 km down 418.97 m (6 km x sin(atan 0.07)), and a second time with points in between.
    [Fact]
    public void A_recorded_hill_is_the_hill_in_figures()
    {
        var told = Run(Hill);
        double drop = 6000 * Math.Sin(Math.Atan(0.07));
        var recorded = Run($$""" "speedProfile":[["0 m","60 km/h"],["6 km","60 km/h"]],"heightProfile":[["0 m","{{drop:R}} m"],["6 km","0 m"]] """);
        var cut = Run($$""" "speedProfile":[["0 m","60 km/h"],["1500 m","60 km/h"],["6 km","60 km/h"]],"heightProfile":[["0 m","{{drop:R}} m"],["3 km","{{drop / 2:R}} m"],["6 km","0 m"]] """);
        foreach (var output in new[] { "frontRotor", "rearRotor", "frontFluid", "heat" })
        {
            Assert.Equal(told.Number(output)!.Value, recorded.Number(output)!.Value, 1e-6 * told.Number(output)!.Value);
            Assert.Equal(told.Number(output)!.Value, cut.Number(output)!.Value, 1e-4 * told.Number(output)!.Value);
        }
    }

    // A stop from 60 mph over its own way v^2 / 2a, recorded: all of 1.04 m v^2 / 2 less rolling and air is in the brakes.
    [Fact]
    public void A_recorded_stop_puts_its_energy_in()
    {
        const double v = 26.8224, way = v * v / (2 * 5.88399);
        var r = Run($$""" "speedProfile":[["0 m","60 mph"],["{{way:R}} m","0 mph"]] """);
        var air = 0.5 * 1.2 * 1.3 * v * v * way / 2; // v^2 falls evenly over the way
        Assert.Equal(((0.52 * 2100 * v * v) - (2100 * 9.80665 * 0.015 * way) - air) / 1000, r.Number("heat")!.Value, 0.01);
    }

    // Heights beyond the recorded ones count as level, before and behind.
    [Fact]
    public void A_hill_within_a_longer_drive()
    {
        var r = Run(""" "speedProfile":[["0 m","60 km/h"],["8 km","60 km/h"]],"heightProfile":[["1 km","70 m"],["2 km","0 m"]] """);
        const double v = 60 / 3.6;
        double force = 2100 * 9.80665 * (0.07 - (0.015 * Math.Sqrt(1 - 0.0049))) - (0.6 * 1.3 * v * v);
        Assert.Equal(force, r.Number("heat")!.Value, 0.01); // N over 1 km are kJ
    }

    [Theory]
    [InlineData(""" "speedProfile":[["0 m","0 km/h"],["100 m","0 km/h"]] """, "nothing over a way")]
    [InlineData(""" "speedProfile":[["0 m","50 km/h"],["100 m","50 km/h"]],"heightProfile":[["0 m","90 m"],["100 m","0 m"]] """, "steeper than any road")]
    [InlineData(""" "heightProfile":[["0 m","50 m"],["1 km","0 m"]] """, "record both, or neither")]
    [InlineData(""" "stopsFrom":"20 mph","stopsTo":"25 mph" """, "end no slower")]
    [InlineData(""" "stopsFrom":"60 mph","stopsTo":"0 mph","interval":"4 s" """, "faster than they can be driven")]
    public void What_cannot_be_driven_is_said_and_no_number_given(string duty, string why)
    {
        var r = Run(duty);
        foreach (var check in new[] { "iron", "linings", "fluid", "fade" })
        {
            Assert.Equal("unknown", r.Verdict(check));
            Assert.Contains(why, Text(r, check));
        }
        Assert.Null(r.Number("frontRotor"));
    }

    // A grade that no brake takes: it fails as iron, and nothing else is guessed.
    [Fact]
    public void A_drive_past_a_thousand_degrees_fails_and_gives_no_number()
    {
        var r = Run(""" "grade":0.15,"length":"40 km","speed":"90 km/h" """);
        Assert.Equal("fail", r.Verdict("iron"));
        Assert.Contains("no brake takes this drive", Text(r, "iron"));
        Assert.Contains("melt near 1150 C", r.Finding("iron")["source"]!.GetValue<string>());
        Assert.Equal("unknown", r.Verdict("fluid"));
        Assert.Null(r.Number("frontFluid"));
    }

    [Fact]
    public void No_letters_leave_the_temperatures_known_and_the_fade_unknown()
    {
        var r = Run(Hill, without: ["frontLetters", "rearLetters"]);
        Assert.NotNull(r.Number("frontRotor"));
        Assert.Null(r.Number("frontHotShare"));
        Assert.Equal("unknown", r.Verdict("fade"));
        Assert.Contains("two letters at the end of the code", Text(r, "fade"));
    }

    [Fact]
    public void A_drum_that_nobody_looked_into_leaves_the_fade_unknown() =>
        Assert.Contains("how the rear drums answer to friction is missing", Text(Run(Hill, without: ["rearSensitivity"]), "fade"));

    // A gentle drive passes everything; its pedal is the same hot and cold: 0.6 x 2100 kg x g = 12356 N at 4.815 MPa, 6.5 MPa for 444.8 N of pedal.
    [Fact]
    public void A_gentle_drive_passes_and_takes_the_cold_pedal()
    {
        var r = Run(""" "grade":0.02,"length":"2 km","speed":"60 km/h","stopsCount":1,"grip":0.4 """);
        Assert.All(new[] { "iron", "linings", "fluid", "fade" }, c => Assert.Equal("pass", r.Verdict(c)));
        r.Gives("pedalCold", (12355.4 + (5442.7 / 6.894757 * 0.4)) / ((12642.9 + 5442.7) / 6.894757) / 6.5 * 444.822, 0.3);
        Assert.Equal(r.Number("pedalCold"), r.Number("pedalHot"));
        Assert.Contains("Hot, the front axle locks first on a grip of 0.4, as when cold", Text(r, "fade"));
    }

    // The front fades, the rear does not: on a road where the front locked first cold the rear does hot, and the pedal is heavier.
    [Fact]
    public void Fade_in_front_turns_the_order_of_locking()
    {
        var r = Run($$"""{{Hill}},"grip":0.55 """);
        Assert.Equal("caution", r.Verdict("fade"));
        Assert.Contains("Hot, the rear axle locks first on a grip of 0.55, when cold the front axle: the vehicle may swing round", Text(r, "fade"));
        Assert.True(r.Number("pedalHot") > 1.1 * r.Number("pedalCold"));
        Assert.True(r.Number("frontHotShare") < r.Number("rearHotShare"));
    }

    // A valve that nobody gauged: more of the heat goes to the front than without one, so nothing is reckoned until it is read. What is left over of a valve that was taken out says nothing.
    [Theory]
    [InlineData(""" "valve":"load-sensing","valveSlope":0.3 """, "pressure at the rear valve's knee")]
    [InlineData(""" "valve":"fixed","valveKnee":"2 MPa" """, "slope of the rear valve")]
    public void A_valve_half_known_leaves_the_drive_unknown(string valve, string asks)
    {
        var r = Run(Hill, valve);
        Assert.Null(r.Number("frontRotor"));
        Assert.Equal("unknown", r.Verdict("iron"));
        Assert.Contains(asks, Text(r, "iron"), StringComparison.Ordinal);
    }

    [Fact]
    public void A_fitted_valve_heats_the_front_and_one_taken_out_does_not()
    {
        double At(string valve) => Run(Hill.Replace("\"stopsCount\":0", "\"stopsCount\":10", StringComparison.Ordinal), valve).Number("frontRotor")!.Value;
        var none = At(""" "valve":"none" """);
        Assert.Equal(none, At(""" "valve":"none","valveKnee":"2 MPa","valveSlope":0.1 """), 0);
        Assert.True(At(""" "valve":"fixed","valveKnee":"2 MPa","valveSlope":0.1 """) > none + 5);
    }

    // Rear first cold and hot, with faded fronts: hot is worse than cold, and that is a caution. So is a pedal over 500 N hot, whatever it was cold. Where nothing fades the cold checks tell it.
    [Fact]
    public void Hot_brakes_that_are_worse_than_bad_cold_ones_do_not_pass()
    {
        var rear = Run(Hill); // grip 0.7: the rear is first already cold
        Assert.Contains("Hot, the rear axle locks first on a grip of 0.7, as when cold: the vehicle may swing round", Text(rear, "fade"), StringComparison.Ordinal);
        Assert.Equal("caution", rear.Verdict("fade"));
        var heavy = Run($$"""{{Hill}},"grip":0.3 """, """ "plainPressure":"4 MPa" """);
        Assert.True(heavy.Number("pedalCold") > 500 && heavy.Number("pedalHot") > heavy.Number("pedalCold"));
        Assert.Equal("caution", heavy.Verdict("fade"));
        var gentle = Run(""" "grade":0.02,"length":"2 km","speed":"60 km/h","stopsCount":1 """, """ "plainPressure":"4 MPa" """);
        Assert.True(gentle.Number("pedalHot") > 500);
        Assert.Equal("pass", gentle.Verdict("fade"));
        Assert.Contains("Heat changes nothing here: see what is said of the cold brakes", Text(gentle, "fade"), StringComparison.Ordinal);
    }

    [Fact]
    public void New_fluid_is_told_its_dry_point_and_held_to_the_wet_one()
    {
        var r = Run(Hill, """ "fluidGrade":"DOT 3","fluidState":"new" """, "fluidGrade", "fluidState");
        Assert.Contains("boils from 205 C", Text(r, "fluid"));
        Assert.Equal(140, r.Finding("fluid")["limit"]!["value"]!.GetValue<double>(), 1e-9);
        Assert.Contains("from memory", r.Finding("fluid")["source"]!.GetValue<string>());
    }

    // 107.4 C on a day of 25 C: a third more of the rise is 134.9 C. Under 140 C it passes; on a day of 40 C what is reckoned is too near to it.
    [Theory]
    [InlineData("25 C", "pass")]
    [InlineData("40 C", "caution")]
    public void Fluid_passes_only_where_a_third_more_would(string day, string verdict)
    {
        var r = Door.Run("brakes.drive-heat", Input($$""" "airTemperature":"{{day}}","fluidGrade":"DOT 3" """).ToJsonString());
        Assert.Equal(verdict, r.Verdict("fluid"));
        Assert.True(r.Number("frontFluid") < 140);
        Assert.Equal(verdict == "caution", Text(r, "fluid").Contains("nearer than such a reckoning is good for", StringComparison.Ordinal));
    }

    // Fluid is often hottest standing afterward: the peak is over what it was when the drive ended.
    [Fact]
    public void Curves_show_the_standing_afterward()
    {
        var c = CalculationList.Find("brakes.drive-heat")!;
        var faults = new Crossmember.Engineering.Reading.Faults();
        var outcome = c.Run(ArgumentReader.Read(c, System.Text.Encoding.UTF8.GetBytes(Input(Hill).ToJsonString()), faults)!, true);
        Assert.Equal(["front rotors", "rear drums", "front fluid", "rear fluid"], outcome.Curves.Select(p => p.Name));
        var fluid = outcome.Curves[2];
        Assert.Equal(21, fluid.X[^1], 1e-6); // 6 min down, 15 standing
        var bottom = fluid.X.Zip(fluid.Y).Last(p => p.First <= 6 + 1e-9).Second;
        Assert.True(fluid.Y.Max() > bottom + 5);
    }

    [Fact]
    public void What_is_too_light_to_be_followed_is_said()
    {
        var r = Run(Hill, """ "liningAreas":{"front":"1e-7 cm2","rear":"300 cm2"},"heatMasses":{"front":"1e-6 kg","rear":"9 kg"} """, "liningAreas", "heatMasses");
        Assert.Equal("unknown", r.Verdict("iron"));
        Assert.Contains("too light", Text(r, "iron"));
    }

    [Fact]
    public void Axles_that_do_not_brake_are_said()
    {
        var r = Run(Hill, """ "forces":{"front":"0 N","rear":"5000 N"},"valve":"fixed","valveKnee":"0.5 MPa","valveSlope":0 """, "forces");
        Assert.Equal("unknown", r.Verdict("fade"));
        Assert.Contains("No line pressure brakes as hard", Text(r, "linings"));
    }

    [Fact]
    public void Heavier_iron_better_cooling_and_lower_gears_are_never_hotter() =>
        Gen.Select(Gen.Double[4, 15], Gen.Double[400, 1500], Gen.Double[0, 8], Gen.Double[1.02, 1.5]).Sample((iron, shed, engine, more) =>
        {
            double At(double kg, double watts, double kilowatts) => Run($$"""
                {{Hill}},"heatMasses":{"front":"{{kg:R}} kg","rear":"9 kg"},"cooling":{"front":"{{watts:R}} W","rear":"600 W"},"enginePower":"{{kilowatts:R}} kW"
                """, "", "heatMasses", "cooling").Number("frontRotor") ?? 1000;
            var once = At(iron, shed, engine);
            return At(iron * more, shed, engine) < once && At(iron, shed * more, engine) < once && At(iron, shed, engine + 1) < once;
        }, iter: 40);

    private static JsonObject Input(string duty, string instead = "", params string[] without)
    {
        var input = CatalogueJson.InputOf(CalculationList.Find("brakes.drive-heat")!.About.Examples[0]);
        foreach (var name in without) input.Remove(name);
        foreach (var json in new[] { duty, instead })
            foreach (var (name, value) in JsonNode.Parse($$"""{ {{json}} }""")!.AsObject()) input[name] = value?.DeepClone();
        return input;
    }

    private static JsonObject Run(string duty, string instead = "", params string[] without) => Door.Run("brakes.drive-heat", Input(duty, instead, without).ToJsonString());

    private static string Text(JsonObject r, string check) => r.Finding(check)["text"]!.GetValue<string>();
}
