using System.Text.Json.Nodes;
using Crossmember.Engineering.Brakes.Heat;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Heat;

/// <summary>One stop, stops that follow each other, a long grade: closed forms against hand figures and against other ways to the same number.</summary>
public class ClosedFormTests
{
    private const string Axle = """ "axle":"front","forces":{"front":"7500 N","rear":"2500 N"},"thresholds":{"front":"0 MPa","rear":"0 MPa"},"valve":"none" """;

    private const string Iron = """ "heatMass":"7.5 kg","rotorShare":0.95 """;

    private const string Weather = """ "kind":{"left":"disc"},"coolingArea":"0 cm2","airTemperature":"25 C" """;

    // Derived: 2100 kg, 100 km/h, 1.04: 842.6 kJ; x 0.75 / 2 x 0.95 = 300.2 kJ; / 3600 J/K = 83.4 K.
    [Fact]
    public void One_stop_from_100()
    {
        var r = Stop("100 km/h", "200 mm");
        r.Gives("energy", 842.6, 0.05);
        r.Gives("perBrake", 300.2, 0.05);
        r.Gives("bulkRise", 83.4, 0.05);
        r.Gives("time", 4.320, 0.001);
        // 0.5319 x 1.769 MW/m2 x sqrt(4.320) / 13145 = 148.8 K: a wall so thick that nothing comes back.
        r.Gives("surfaceRise", 148.8, 0.1);
    }

    // The thinner the wall, the nearer is the face to the whole: no rise beneath the bulk one, none over the thick wall's.
    [Fact]
    public void A_real_rotor_lies_between_the_bulk_and_the_thick_wall()
    {
        double At(string depth) => Stop("100 km/h", depth).Number("surfaceRise")!.Value;
        // Mass fixed by the depth itself here: A rho depth c on both faces together takes Q.
        double[] depths = [2, 4, 6, 8, 11, 15, 20, 40];
        Assert.All(depths.Zip(depths.Skip(1)), d => Assert.True(At($"{d.First} mm") > At($"{d.Second} mm") || At($"{d.Second} mm") < 148.9));
        Assert.InRange(At("40 mm"), 148.7, 148.9);
    }

    // Invariant: in the limit of a thin wall the face is as warm as the wall, q0 ts / 2 over rho c depth at the end of the stop.
    [Fact]
    public void A_thin_wall_is_warm_through()
    {
        double flux = 1e6, time = 4, depth = 1e-4;
        Assert.Equal(flux * time / 2 / (7200 * 480 * depth), SurfaceRise.Greatest(flux, time, depth), 1e-3 * flux * time / 2 / (7200 * 480 * depth));
    }

    // Derived, by convolution: the greatest rise of a half space under q0 (1 - t/ts) is 0.5319 q0 sqrt(ts) / e, summed here from 1 / sqrt(pi (t - s)) without the closed form.
    [Fact]
    public void The_factor_of_a_falling_flow_by_convolution()
    {
        double At(double t)
        {
            // Put s = t - u^2: the integrand (1 - s) / sqrt(pi (t - s)) ds becomes 2 (1 - t + u^2) / sqrt(pi) du, smooth.
            const int n = 2000;
            double sum = 0, h = Math.Sqrt(t) / n;
            for (var i = 0; i < n; i++) sum += 2 * (1 - t + Math.Pow((i + 0.5) * h, 2)) / Math.Sqrt(Math.PI) * h;
            return sum;
        }
        var most = Enumerable.Range(1, 999).Max(i => At(i / 1000.0));
        Assert.Equal(0.5319, most, 0.00005);
        Assert.Equal(most, SurfaceRise.Greatest(GrayIron.Effusivity, 1, 10), 1e-5);
        Assert.Equal(most, At(0.5), 1e-6);
    }

    // Second method: the wall cut into 100 slices and stepped explicitly, random walls and stops.
    [Fact]
    public void The_wall_in_slices_gives_the_same_face() =>
        Gen.Select(Gen.Double[3, 25], Gen.Double[1, 8]).Sample((millimeters, time) =>
        {
            var depth = millimeters / 1000;
            var sliced = Sliced(1e6, time, depth);
            Assert.Equal(sliced, SurfaceRise.Greatest(1e6, time, depth), 0.004 * sliced);
        }, iter: 12);

    // Derived: 80 to 40 km/h 15 times, 45 s, hA 7.0 W/K: 40.02 K, b 0.0875, 390.3 C, for ever 502.7 C.
    [Fact]
    public void Fifteen_snubs()
    {
        var r = Snubs("15", "45 s");
        r.Gives("rise", 40.02, 0.005);
        r.Gives("peak", 390.3, 0.05);
        r.Gives("limit", 502.7, 0.05);
        Assert.Equal("caution", r.Verdict("linings"));
        Assert.Equal("pass", Snubs("4", "45 s").Verdict("linings"));
        Assert.Equal("pass", Snubs("15", "45 s", ""","lining":{"left":"semi-metallic"}""").Verdict("linings"));
    }

    // What cannot be driven is said by its name: 11.1 m/s at 0.6 g takes 1.89 s.
    [Theory]
    [InlineData("80 km/h", "80 km/h", "45 s", "end no slower")]
    [InlineData("80 km/h", "40 km/h", "1.8 s", "faster than they can be driven")]
    public void Stops_that_cannot_follow_each_other_are_told(string from, string to, string interval, string why)
    {
        var r = Door.Run("brakes.repeated-stops", $$"""
            {"mass":"2100 kg","from":"{{from}}","to":"{{to}}","count":15,"interval":"{{interval}}","cooling":"740.54 W","startTemperature":"80 C",{{Weather}},{{Axle}},{{Iron}} }
            """);
        Assert.Equal("unknown", r.Verdict("linings"));
        Assert.Contains(why, r.Finding("linings")["text"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Null(r.Number("peak"));
    }

    // Second method: stop by stop, a rise and a decay at a time.
    [Fact]
    public void The_series_is_what_stop_by_stop_gives() =>
        Gen.Select(Gen.Int[1, 40], Gen.Double[15, 200]).Sample((n, seconds) =>
        {
            var r = Snubs($"{n}", $"{seconds:R} s");
            double t = 80, rise = r.Number("rise")!.Value, decay = Math.Exp(-7.0 * seconds / 3600);
            for (var i = 0; i < n; i++) t = (i == 0 ? t : 25 + ((t - 25) * decay)) + rise;
            Assert.Equal(t, r.Number("peak")!.Value, 0.01);
        }, iter: 50);

    // Derived: 13.88 kW, 4.614 kW a rotor, 404.7 C after 540 s, 537.6 C for ever.
    [Fact]
    public void Six_kilometers_of_seven_per_cent()
    {
        var r = Grade("0 kW");
        r.Gives("power", 13.88, 0.005);
        r.Gives("perBrake", 4.614, 0.001);
        r.Gives("bottom", 404.7, 0.1);
        r.Gives("steady", 537.6, 0.1);
        r.Gives("time", 9, 1e-9);
        Assert.Equal("caution", r.Verdict("linings"));
        Assert.Contains("No engine braking is counted", r.Finding("linings")["text"]!.GetValue<string>());
    }

    [Fact]
    public void An_engine_that_holds_it_all_leaves_nothing_to_the_brakes()
    {
        var r = Grade("14 kW");
        r.Gives("power", 0, 0);
        r.Gives("bottom", 25, 1e-9);
        Assert.Equal("pass", r.Verdict("linings"));
        Assert.Contains("not needed", r.Finding("linings")["text"]!.GetValue<string>());
    }

    // Trap: a grade of 7 % is a tangent: the power goes with the sine of atan 0.07.
    [Fact]
    public void A_grade_is_a_tangent() =>
        Grade("0 kW").Gives("power", 2500 * 9.80665 * (Math.Sin(Math.Atan(0.07)) - (0.015 * Math.Cos(Math.Atan(0.07)))) * 11.1111 / 1000 - (0.6 * 1.3 * Math.Pow(11.1111, 3) / 1000), 0.001);

    // The axles share at the pressure of the stop: a rear threshold of 0.4 MPa leaves the front more of a gentle stop than of a hard one.
    [Fact]
    public void A_threshold_gives_the_front_more_of_a_gentle_stop()
    {
        double Share(string z) => Door.Run("brakes.stop-heat", $$"""
            {"mass":"2100 kg","axle":"front","forces":{"front":"12642.9 N","rear":"5442.7 N"},"thresholds":{"front":"0 MPa","rear":"0.4 MPa"},"valve":"none","deceleration":{{z}},{{Iron}} }
            """).Number("share")!.Value;
        Assert.True(Share("0.1") > Share("0.6"));
        // 1833.7 p + 789.4 (p - 0.4) = 0.6 x 20594 N at 4.831 MPa: front 0.7169 of it.
        Assert.Equal(1833.7 * 4.831 / (0.6 * 20594), Share("0.6"), 0.001);
    }

    // Above a knee of 3.5 MPa at slope 0.35 the front takes more; with half a valve nobody knows, and it is asked for; one that was taken out counts for nothing.
    [Fact]
    public void A_valve_gives_the_front_more_and_half_a_valve_is_unknown()
    {
        JsonObject At(string kind, string valve) => Door.Run("brakes.stop-heat", $$"""
            {"mass":"2100 kg","axle":"front","forces":{"front":"12642.9 N","rear":"5442.7 N"},"thresholds":{"front":"0 MPa","rear":"0.4 MPa"},"valve":"{{kind}}","deceleration":0.6,{{Iron}}{{valve}} }
            """);
        JsonObject none = At("none", ""), whole = At("fixed", ""","valveKnee":"3.5 MPa","valveSlope":0.35"""), half = At("fixed", ""","valveKnee":"3.5 MPa" """), gone = At("none", ""","valveKnee":"3.5 MPa","valveSlope":0.35""");
        // 1833.7 x 5.155 MPa of 0.6 x 20594 N; worked by hand: 1833.7 p + 789.4 (3.1 + 0.35 (p - 3.5)) = 12356.
        Assert.Equal(1833.7 * 5.155 / (0.6 * 20594), whole.Number("share")!.Value, 0.001);
        Assert.Null(half.Number("share"));
        Assert.Contains(half["missing"]!.AsArray(), m => m!.ToJsonString().Contains("valveSlope", StringComparison.Ordinal));
        Assert.Equal(none.Number("share"), gone.Number("share"));
    }

    [Fact]
    public void No_rear_axle_in_the_map_is_unknown() => Assert.Null(Door.Run("brakes.stop-heat",
        $$"""{"mass":"2100 kg","axle":"front","forces":{"front":"7500 N"},"thresholds":{"front":"0 MPa"},"valve":"none",{{Iron}} }""").Number("energy"));

    private static JsonObject Stop(string speed, string depth) => Door.Run("brakes.stop-heat",
        $$"""{"mass":"2100 kg","deceleration":0.65566,"speed":"{{speed}}","sweptArea":"785.4 cm2","depth":"{{depth}}",{{Axle}},{{Iron}} }""");

    private static JsonObject Snubs(string count, string interval, string more = "") => Door.Run("brakes.repeated-stops",
        $$"""{"mass":"2100 kg","from":"80 km/h","to":"40 km/h","count":{{count}},"interval":"{{interval}}","cooling":"740.54 W","startTemperature":"80 C",{{Weather}},{{Axle}},{{Iron}}{{more}} }""");

    private static JsonObject Grade(string engine) => Door.Run("brakes.descent", $$"""
        {"mass":"2500 kg","axle":"front","forces":{"front":"7000 N","rear":"3000 N"},"thresholds":{"front":"0 MPa","rear":"0 MPa"},"valve":"none","grade":0.07,"length":"6 km","speed":"40 km/h",
         "dragArea":"1.3 m2","enginePower":"{{engine}}","cooling":"1316.98 W","startTemperature":"25 C",{{Weather}},{{Iron}} }
        """);

    /// <summary>Face of a wall with no heat through its back, heated by q0 (1 - t/ts), greatest of the stop.</summary>
    private static double Sliced(double flux, double time, double depth)
    {
        const int n = 100;
        double dx = depth / n, a = 50.0 / (7200 * 480), dt = 0.4 * dx * dx / a, most = 0;
        var steps = (int)Math.Ceiling(time / dt);
        dt = time / steps;
        double[] t = new double[n], next = new double[n];
        for (var s = 0; s < steps; s++)
        {
            var q = flux * (1 - ((s + 0.5) * dt / time));
            for (var i = 0; i < n; i++)
            {
                double left = i == 0 ? q * dx / 50 : t[i - 1] - t[i], right = i == n - 1 ? 0 : t[i + 1] - t[i];
                next[i] = t[i] + (a * dt / (dx * dx) * (left + right));
            }
            (t, next) = (next, t);
            most = Math.Max(most, t[0] + (q * dx / 100)); // half a slice from its middle to the face
        }
        return most;
    }
}
