using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Driveline;

public class TopSpeedTests
{
    private const double Mph = 1609.344 / 3600; // m/s

    private const string Rest = """ "gearRatios":{"1":"4","2":"1"},"transferRatios":{"high":"1"},"axleRatio":"3.5","rollingRadius":"406.88 mm" """;

    // Derived: 0.85 x 110 kW = v (2150 x 9.80665 x 0.015 + 0.5 x 1.2 x 0.5 x 2.9 v^2) -> 45.00 m/s = 162.0 km/h; tolerance 0.2 km/h.
    [Fact]
    public void Speed_that_the_power_allows() =>
        Top($$""" "peakPower":"110 kW","mass":"2150 kg","dragArea":"1.45 m2",{{Rest}}""").Gives("powerSpeed", 162.0 / 3.6 / Mph, 0.2 / 3.6 / Mph);

    // Two methods: the closed root against halving the interval until nothing is left of it.
    [Fact]
    public void The_closed_root_is_where_halving_the_interval_ends() =>
        Gen.Select(Gen.Double[5, 500], Gen.Double[400, 8000], Gen.Double[0.005, 0.3], Gen.Double[0.01, 6]).Sample((kilowatts, kg, f, area) =>
        {
            var closed = Top($$""" "peakPower":"{{kilowatts:R}} kW","mass":"{{kg:R}} kg","rollingResistance":{{f:R}},"dragArea":"{{area:R}} m2",{{Rest}}""").Number("powerSpeed")!.Value * Mph;
            var halved = Halve(v => (0.85 * 1000 * kilowatts) - (v * Load(v, kg, f, area)), 0, 2000);
            Assert.Equal(halved, closed, 1e-9 * halved);
        }, iter: 200);

    // Torque constant from 100 to 6000 rpm, one gear: pull 200 x 4 x 0.85 / 0.4 = 1700 N = 294.2 + 0.9 v^2 at 39.522 m/s = 88.41 mph, worked by hand.
    [Fact]
    public void Power_ends_it_where_pull_meets_road_load()
    {
        var r = Single("""[["100 rpm","200 N m"],["6000 rpm","200 N m"]]""", "80 mph");
        r.Gives("topSpeed", 88.41, 0.005);
        Assert.Equal("power", Text(r, "limitedBy"));
        // Whoever follows the working sees pull and road load come out alike.
        double Line(string symbol) => Assert.Single(r["working"]!.AsArray(), l => (string)l!["symbol"]! == symbol)!["value"]!["value"]!.GetValue<double>();
        Assert.Equal(1700, Line("F"), 1e-9);
        Assert.Equal(Line("F"), Line("R"), 1e-6);
        Assert.Equal(("4", "high"), (Text(r, "gear"), Text(r, "range")));
        Assert.Equal("pass", r.Verdict("reaches-cruise"));
    }

    // The same engine to 3000 rpm: 2 pi x 0.4 x 50 / 4 = 31.416 m/s = 70.28 mph, where the pull is still 1700 N against 1182 N.
    [Theory]
    [InlineData(""","redline":"3000 rpm" """, "redline", "fail")]
    [InlineData("", "end of the torque curve", "unknown")]
    [InlineData(""","redline":"4000 rpm" """, "end of the torque curve", "unknown")]
    public void The_redline_ends_it_but_the_end_of_a_curve_only_ends_what_is_known(string redline, string limitedBy, string verdict)
    {
        var r = Single("""[["100 rpm","200 N m"],["3000 rpm","200 N m"]]""", "80 mph", redline);
        r.Gives("topSpeed", 70.28, 0.005);
        Assert.Equal(limitedBy, Text(r, "limitedBy"));
        Assert.Equal(verdict, r.Verdict("reaches-cruise"));
        Assert.Equal("pass", Single("""[["100 rpm","200 N m"],["3000 rpm","200 N m"]]""", "70 mph", redline).Verdict("reaches-cruise"));
    }

    // A fourth gear too long to pull: third, 1.5, is faster. 2 pi x 0.4 x 4000 / 60 / 6 = 27.93 m/s = 62.47 mph at the redline.
    [Fact]
    public void The_best_gear_need_not_be_the_longest()
    {
        var r = Top("""
            "torqueCurve":[["1000 rpm","110 N m"],["4000 rpm","110 N m"]],"redline":"4000 rpm","gearRatios":{"3":"1.5","4":"0.7"},"transferRatios":{"high":"1","low":"4"},
            "axleRatio":"4","rollingRadius":"400 mm","mass":"2000 kg","dragArea":"1.5 m2"
            """);
        r.Gives("topSpeed", 62.47, 0.005);
        Assert.Equal("3", Text(r, "gear"));
        Assert.True(r.Number("redlineSpeed") > 2 * r.Number("topSpeed"));
    }

    // Two methods over whole gear sets: walk each gear down from its end in small steps, then halve. The answer never beats what the power allows with the best gearing.
    [Fact]
    public void No_gear_holds_a_higher_speed_and_none_beats_the_power() =>
        Gen.Select(Gen.Double[60, 500].Array[4], Gen.Double[0.6, 5].Array[1, 5], Gen.Double[3, 6], Gen.Double[800, 5000], Gen.Double[0.5, 4]).Sample((torques, gears, axle, kg, area) =>
        {
            var curve = string.Join(",", torques.Select((t, i) => $"[\"{1000 * (i + 1)} rpm\",\"{t:R} N m\"]"));
            var set = string.Join(",", gears.Select((g, i) => $"\"{i}\":{g:R}"));
            var r = Top($$"""
                "torqueCurve":[{{curve}}],"gearRatios":{ {{set}} },"transferRatios":{"high":"1"},"axleRatio":{{axle:R}},"rollingRadius":"400 mm",
                "mass":"{{kg:R}} kg","dragArea":"{{area:R}} m2"
                """);
            var walked = gears.Select(g => Walk(torques, g * axle, kg, area)).Max();
            var told = r.Number("topSpeed") * Mph;
            Assert.Equal(walked ?? -1, told ?? -1, 1e-6 * (walked ?? 1));
            if (told is { } v) Assert.True(v <= r.Number("powerSpeed") * Mph * (1 + 1e-9), "more than the power allows");
        }, iter: 100);

    [Fact]
    public void More_drag_or_mass_never_makes_it_faster() =>
        Gen.Select(Gen.Double[0.5, 3], Gen.Double[800, 5000], Gen.Double[1, 1.5]).Sample((area, kg, more) =>
        {
            double At(double m, double a) => Top($$"""
                "torqueCurve":[["800 rpm","200 N m"],["3000 rpm","250 N m"],["4500 rpm","190 N m"]],"mass":"{{m:R}} kg","dragArea":"{{a:R}} m2",{{Rest}}
                """).Number("topSpeed") ?? 0;
            var once = At(kg, area);
            return At(kg, area * more) <= once && At(kg * more, area) <= once;
        }, iter: 100);

    // By power alone nothing is known of where the gears let the engine make it: a bound that is too low is certain, one that is high enough is not.
    [Theory]
    [InlineData("110 mph", "fail")]
    [InlineData("60 mph", "caution")]
    public void Power_alone_gives_a_bound(string cruise, string verdict)
    {
        var r = Top($$""" "peakPower":"110 kW","cruiseSpeed":"{{cruise}}","mass":"2150 kg","dragArea":"1.45 m2",{{Rest}}""");
        Assert.Equal(verdict, r.Verdict("reaches-cruise"));
        Assert.Null(r.Number("engineSpeed"));
        Assert.Null(Text(r, "gear"));
    }

    [Fact]
    public void By_power_alone_the_redline_still_counts()
    {
        var r = Top($$""" "peakPower":"110 kW","redline":"3000 rpm","mass":"2150 kg","dragArea":"1.45 m2",{{Rest}}""");
        r.Gives("topSpeed", r.Number("redlineSpeed")!.Value, 0);
        Assert.Equal("redline", Text(r, "limitedBy"));
    }

    [Fact]
    public void Nothing_known_of_the_engine_is_unknown_and_says_what_to_take()
    {
        var r = Top($$""" "cruiseSpeed":"60 mph","mass":"2150 kg","dragArea":"1.45 m2",{{Rest}}""");
        Assert.Null(r.Number("topSpeed"));
        Assert.Equal("unknown", r.Verdict("reaches-cruise"));
        Assert.Contains("take the maker's curve, or a brake test", r.Finding("reaches-cruise")["text"]!.GetValue<string>());
    }

    [Fact]
    public void An_engine_that_moves_nothing_fails()
    {
        var r = Top($$""" "torqueCurve":[["1000 rpm","1 N m"],["4000 rpm","1 N m"]],"cruiseSpeed":"60 mph","mass":"2150 kg","dragArea":"1.45 m2",{{Rest}}""");
        Assert.Null(r.Number("topSpeed"));
        Assert.Equal("fail", r.Verdict("reaches-cruise"));
    }

    private static JsonObject Single(string curve, string cruise, string redline = "") => Top($$"""
        "torqueCurve":{{curve}},"cruiseSpeed":"{{cruise}}","gearRatios":{"4":"1"},"transferRatios":{"high":"1"},"axleRatio":"4","rollingRadius":"400 mm","mass":"2000 kg","dragArea":"1.5 m2"{{redline}}
        """);

    private static JsonObject Top(string members) => Door.Run("driveline.top-speed", $$"""{ {{members}} }""");

    private static string? Text(JsonObject r, string output) => r["outputs"]![output]!["value"]?.GetValue<string>();

    private static double Load(double v, double kg, double f, double area) => (kg * 9.80665 * f) + (0.5 * 1.2 * area * v * v);

    /// <summary>Pull less road load at a road speed; torque points 1000 rpm apart from 1000 rpm, radius 0.4 m, efficiency 0.85, rolling 0.015.</summary>
    private static double Left(double v, double[] torques, double G, double kg, double area)
    {
        double thousands = v * G / 0.4 * 30 / Math.PI / 1000;
        var i = Math.Clamp((int)Math.Floor(thousands) - 1, 0, torques.Length - 2);
        var torque = torques[i] + ((torques[i + 1] - torques[i]) * (thousands - 1 - i));
        return (torque * G * 0.85 / 0.4) - Load(v, kg, 0.015, area);
    }

    private static double? Walk(double[] torques, double G, double kg, double area)
    {
        double low = 1000 * Math.PI / 30 * 0.4 / G, high = torques.Length * low, step = (high - low) / 20000;
        if (Left(high, torques, G, kg, area) >= 0) return high;
        for (var v = high; v > low; v -= step)
            if (Left(v - step, torques, G, kg, area) >= 0)
                return Halve(x => Left(x, torques, G, kg, area), v - step, v);
        return null;
    }

    /// <summary>Where a function that is positive at low and negative at high goes through zero.</summary>
    private static double Halve(Func<double, double> f, double low, double high)
    {
        for (var i = 0; i < 200; i++)
        {
            var middle = (low + high) / 2;
            if (f(middle) >= 0) low = middle;
            else high = middle;
        }
        return low;
    }
}
