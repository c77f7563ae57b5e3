using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;

namespace Crossmember.Engineering.Tests.Brakes.Pedal;

public class GaugeCheckTests
{
    // The brakes as stated: 4.2 x 0.90, 25.4 mm, 0.97, 400 cm2 at 70 kPa and 0.95; front 2 x 48 mm, 0.38, 125 mm; rear 25.4 mm, factor 2.30, 127 mm; 375 mm, 2100 kg; valve 3.5 MPa, 0.35.
    private const string Stated = """
        "cutIn":"23.810 N","jumpIn":"0.67000 MPa","knee":"182.540 N","kneePressure":"6.41287 MPa","plainPressure":"3.21877 MPa","deadLoss":"0.38286 MPa",
        "frontForce":"12642.8 N","frontThreshold":"0 MPa","rearForce":"5442.8 N","rearThreshold":"0.4 MPa","valveKind":"fixed","valveKnee":"3.5 MPa","valveSlope":0.35,"mass":"2100 kg",
        "pedalEfficiency":0.9,"pedalRatio":4.2,"bore":"25.4 mm","vacuum":"70 kPa","error":"0.1 MPa","decelerationError":0.015
        """;

    // Independent: gauge-readings.py. Each fault is named with its own figure; noise is 0.7 of the gauge's error.
    [Theory]
    [InlineData("pedal-friction", "linkage", 0.74 / 0.90, 0.02, "Pedal efficiency 0.7")]
    [InlineData("bore", "bore", 0.79012, 0.001, "A 1-1/8 in master cylinder instead of one of 25.4 mm")]
    [InlineData("low-vacuum", "vacuum", 45.0 / 70, 0.02, "A vacuum of 45 kPa instead of 70 kPa")]
    [InlineData("dead-booster", "booster-dead", 0, 0, "does not work at all")]
    [InlineData("valve-knee", "valve", 2.4e6, 0.12e6, "turns at 2.")]
    [InlineData("held-rear", "rear-held", 0.35e6, 0.05e6, "held in the rear line")]
    [InlineData("front-blocked", "front-line", 0, 0.02, "A blocked front line")]
    public void The_fault_that_was_made_is_the_one_named(string fault, string cause, double value, double tolerance, string told)
    {
        var r = Read(fault);
        Assert.Equal("caution", r.Verdict("readings"));
        Assert.Equal(cause, Cause(r));
        r.Gives("fitted", value, tolerance);
        Assert.Contains(told, Text(r));
        Assert.Equal(r.Number("count"), r.Number("explained"));
    }

    // From decelerations on one road alone nobody can tell whose linings: the family is named, and what would tell.
    [Theory]
    [InlineData("lining-friction", 0.75)]
    [InlineData("front-lining", 0.70)]
    public void Linings_are_named_where_the_pressures_are_right(string fault, double scale)
    {
        var r = Read(fault);
        Assert.Equal("friction", Cause(r));
        Assert.InRange(r.Number("fitted")!.Value, scale - 0.25, scale + 0.15);
        Assert.Contains("of the friction stated", Text(r));
    }

    [Fact]
    public void Brakes_that_are_right_pass_with_noise()
    {
        var r = Read("right");
        Assert.Equal("pass", r.Verdict("readings"));
        Assert.Equal(r.Number("count"), r.Number("within"));
    }

    // Without a booster a wider bore and a stiff pedal do the same to every reading: both are told, and what tells them apart.
    [Fact]
    public void What_cannot_be_told_apart_is_not_guessed()
    {
        var r = Door.Run("brakes.gauge-check", """
            {"cutIn":"0 N","jumpIn":"0 MPa","knee":"0 N","kneePressure":"0 MPa","plainPressure":"5 MPa","deadLoss":"0 MPa","pedalRatio":6,"bore":"1 in","error":"0.1 MPa",
             "gaugeFront":[["100 N","0.888 MPa"],["300 N","2.664 MPa"],["500 N","4.440 MPa"]],"gaugeRear":[["100 N","0.888 MPa"],["300 N","2.664 MPa"],["500 N","4.440 MPa"]]}
            """);
        Assert.Equal("linkage, bore", string.Join(", ", Cause(r).Split(", ").OrderDescending()));
        Assert.Contains("read the bore off the casting", Text(r));
        Assert.Null(r.Number("fitted"));
    }

    // Decelerations alone: linings and a front line that passes too little would both do; the gauge tells the fluid from the linings.
    [Fact]
    public void Decelerations_alone_ask_for_a_gauge()
    {
        var parts = GaugeReadings.Of("lining-friction");
        var r = Door.Run("brakes.gauge-check", $$"""{ {{Stated}}, "gaugeDeceleration":{{parts[4]}} }""");
        Assert.Contains("friction", Cause(r));
        Assert.Contains("front-line", Cause(r));
        Assert.Contains("gauge into a bleeder of each axle", Text(r));
    }

    [Fact]
    public void One_misread_figure_does_not_hide_the_cause()
    {
        var parts = GaugeReadings.Of("pedal-friction");
        var r = Door.Run("brakes.gauge-check", $$"""{ {{Stated}}, "gaugeFront":{{parts[1].Replace("6.338", "8.338", StringComparison.Ordinal)}}, "gaugeRear":{{parts[2]}}, "gaugeDeadFront":{{parts[3]}} }""");
        Assert.Equal("linkage", Cause(r));
        Assert.True(r.Number("explained") < r.Number("count"));
    }

    [Fact]
    public void Two_faults_at_once_are_not_forced_into_one()
    {
        string[] slow = GaugeReadings.Of("pedal-friction"), blocked = GaugeReadings.Of("valve-knee");
        var r = Door.Run("brakes.gauge-check", $$"""{ {{Stated}}, "gaugeFront":{{slow[1]}}, "gaugeRear":{{blocked[2]}} }""");
        Assert.Equal("caution", r.Verdict("readings"));
        Assert.Contains("No single cause", Text(r));
        Assert.Null(r.Number("explained"));
    }

    [Fact]
    public void Without_readings_it_names_the_quickest_way()
    {
        var r = Door.Run("brakes.gauge-check", $$"""{ {{Stated}} }""");
        Assert.Equal("unknown", r.Verdict("readings"));
        Assert.Contains("screw a gauge into the bleeder", Text(r));
        var stopped = Door.Run("brakes.gauge-check", $$"""{ {{Stated.Replace("\"mass\":\"2100 kg\",", "", StringComparison.Ordinal)}}, "gaugeDeceleration":[["100 N",0.4],["200 N",0.8]] }""");
        Assert.Contains("mass of the vehicle", Text(stopped));
    }

    // A pedal line for 2000 m is carried back to the shop's vacuum: 48.2 kPa of 70 there.
    [Fact]
    public void The_line_of_the_mountains_is_carried_back_to_the_shop()
    {
        var parts = GaugeReadings.Of("right");
        var high = Stated.Replace("\"knee\":\"182.540 N\",\"kneePressure\":\"6.41287 MPa\"", Thin(48.17), StringComparison.Ordinal);
        Assert.NotEqual(Stated, high);
        Assert.Equal("pass", Door.Run("brakes.gauge-check", $$"""{ {{high}}, "lineVacuum":"48.17 kPa", "gaugeFront":{{parts[1]}} }""").Verdict("readings"));
        Assert.Equal("caution", Door.Run("brakes.gauge-check", $$"""{ {{high}}, "gaugeFront":{{parts[1]}} }""").Verdict("readings"));
    }

    // Two cylinders on a bar, no booster: 5 MPa in front at 444.822 N and 0.65 of it behind; the valve turns at 2 MPa of its own line. By hand at 400 N: 4.496, 2.922 and 2 + 0.4 x 0.922 = 2.369 MPa.
    [Theory]
    [InlineData("2.369", "pass")]
    [InlineData("2.922", "caution")]
    [InlineData("2.998", "caution")]
    public void The_rear_circuit_of_a_bar_is_read_at_its_own_pressure(string rear, string verdict)
    {
        var r = Door.Run("brakes.gauge-check", $$"""
            {"cutIn":"0 N","jumpIn":"0 MPa","knee":"0 N","kneePressure":"0 MPa","plainPressure":"5 MPa","deadLoss":"0 MPa","rearShare":0.65,"valveKind":"adjustable","valveKnee":"2 MPa","valveSlope":0.4,"error":"0.01 MPa",
             "gaugeFront":[["200 N","2.248 MPa"],["400 N","4.496 MPa"]],"gaugeRear":[["200 N","1.461 MPa"],["400 N","{{rear}} MPa"]]}
            """);
        Assert.Equal(verdict, r.Verdict("readings"));
    }

    // A valve of which nobody knows how it goes on is no limiter: nothing is expected behind it. In front of it the gauge tells all the same.
    [Theory]
    [InlineData(""" "valveKnee":"2 MPa" """, "slope of the rear valve")]
    [InlineData(""" "valveSlope":0.4 """, "rear valve turns")]
    public void Half_a_valve_is_asked_for(string known, string told)
    {
        JsonObject Read(string gauge) => Door.Run("brakes.gauge-check", $$"""
            {"cutIn":"0 N","jumpIn":"0 MPa","knee":"0 N","kneePressure":"0 MPa","plainPressure":"5 MPa","deadLoss":"0 MPa","valveKind":"fixed",{{known}},"error":"0.01 MPa","{{gauge}}":[["200 N","2.248 MPa"],["400 N","4.496 MPa"]]}
            """);
        Assert.Equal("unknown", Read("gaugeRear").Verdict("readings"));
        Assert.Contains(told, Text(Read("gaugeRear")));
        Assert.Equal("pass", Read("gaugeFront").Verdict("readings"));
    }

    // Decelerations by hand: metering holds the front back below 1 MPa; 10 kN and 5 kN at 1000 psi, 0.4 MPa of threshold behind, 1000 kg: at 0.8 MPa 290.1 N, at 5 MPa 7251.9 + 3335.9 N.
    [Theory]
    [InlineData(0.0296, 1.0797, "pass")]
    [InlineData(0.148, 1.0797, "caution")]
    public void Decelerations_are_expected_by_valves_and_thresholds(double light, double hard, string verdict)
    {
        var r = Door.Run("brakes.gauge-check", $$"""
            {"cutIn":"0 N","jumpIn":"0 MPa","knee":"0 N","kneePressure":"0 MPa","plainPressure":"5 MPa","deadLoss":"0 MPa","metering":"1 MPa","frontForce":"10 kN","frontThreshold":"0 MPa","rearForce":"5 kN",
             "rearThreshold":"0.4 MPa","mass":"1000 kg","decelerationError":0.002,"gaugeDeceleration":[["71.1715 N",{{light}}],["444.822 N",{{hard}}]]}
            """);
        Assert.Equal(verdict, r.Verdict("readings"));
        Assert.Null(r.Number("worstGap"));
    }

    /// <summary>Run-out at a vacuum in kPa, by hand: in = (assist - 350 + 5 x 90) / 4.</summary>
    private static string Thin(double vacuum)
    {
        double assist = vacuum * 1e3 * 0.04 * 0.95, knee = (assist + 100) / 4;
        return $"\"knee\":\"{knee / 3.78:R} N\",\"kneePressure\":\"{(knee + assist) * 0.97 / 506.7075:R} MPa\"";
    }

    private static JsonObject Read(string name)
    {
        var p = GaugeReadings.Of(name);
        return Door.Run("brakes.gauge-check", $$"""{ {{Stated}}, "gaugeFront":{{p[1]}}, "gaugeRear":{{p[2]}}, "gaugeDeadFront":{{p[3]}}, "gaugeDeceleration":{{p[4]}} }""");
    }

    private static string Text(JsonObject r) => r.Finding("readings")["text"]!.GetValue<string>();

    private static string Cause(JsonObject r) => r["outputs"]!["cause"]!["value"]!.GetValue<string>();
}
