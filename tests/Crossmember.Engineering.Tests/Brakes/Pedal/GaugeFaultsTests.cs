using System.Globalization;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Tests.Calculations;
using CsCheck;

namespace Crossmember.Engineering.Tests.Brakes.Pedal;

/// <summary>Faults of any size, put on brakes of any size: the fit gives the size back. The readings are made here by plain pieces, not by the program.</summary>
public class GaugeFaultsTests
{
    /// <summary>Brakes as stated and one fault. Forces N, pressures MPa, pressures for each newton.</summary>
    private sealed record Truck(double Plain, double CutIn, double Rise, double Jump, double Assist, double Knee, double Slope)
    {
        public double Leg { get; init; } = 1;

        public double Share { get; init; } = 1;

        public double FrontLine { get; init; } = 1;

        public double RearLine { get; init; } = 1;

        public double Turn { get; init; } = double.NaN;

        public double Held { get; init; }

        public double Line(double pedal)
        {
            var f = pedal * Leg;
            return f <= CutIn ? 0 : Math.Min(Jump + (Rise * (f - CutIn)), (Plain * f) + (Assist * Share));
        }

        public double Front(double pedal) => FrontLine * Line(pedal);

        public double Rear(double pedal)
        {
            double p = Line(pedal), turn = double.IsNaN(Turn) ? Knee : Turn;
            return Math.Max(Held, RearLine * (p <= turn ? p : turn + (Slope * (p - turn))));
        }

        /// <summary>Run-out of the brakes as stated: where both pieces meet.</summary>
        public double RunOut => (Assist - Jump + (Rise * CutIn)) / (Rise - Plain);

        public string Stated => string.Create(CultureInfo.InvariantCulture, $$"""
            "cutIn":"{{CutIn:R}} N","jumpIn":"{{Jump:R}} MPa","knee":"{{RunOut:R}} N","kneePressure":"{{(Plain * RunOut) + Assist:R}} MPa","plainPressure":"{{Plain * 444.822161526:R}} MPa","deadLoss":"0.3 MPa",
            "valveKind":"fixed","valveKnee":"{{Knee:R}} MPa","valveSlope":{{Slope:R}},"pedalEfficiency":0.9,"error":"0.02 MPa"
            """);
    }

    private static readonly double[] s_forces = [30, 50, 70, 90, 120, 160, 200, 250, 320, 400];

    private static Gen<Truck> Trucks => Gen.Select(Gen.Double[0.006, 0.012], Gen.Double[3, 7], Gen.Double[15, 28], Gen.Double[2.5, 5.5], Gen.Double[2, 4], Gen.Double[0.2, 0.6])
        .Select((plain, gain, cutIn, assist, knee, slope) => new Truck(plain, cutIn, plain * gain, 0.6, assist, knee, slope));

    [Fact]
    public void Brakes_as_stated_pass_whatever_they_are() =>
        Trucks.Sample(t => Assert.Equal("pass", Read(t, t).Verdict("readings")), iter: 60);

    [Fact]
    public void A_pedal_that_is_stiff_or_of_another_ratio_is_given_back() =>
        Gen.Select(Trucks, Gen.Double[0.6, 0.9]).Sample((t, leg) => Named(Read(t, t with { Leg = leg }), "linkage", leg, 0.01), iter: 60);

    [Fact]
    public void Less_assist_is_given_back() =>
        Gen.Select(Trucks, Gen.Double[0.4, 0.85]).Sample((t, share) => Named(Read(t, t with { Share = share }), "vacuum", share, 0.01), iter: 60);

    [Fact]
    public void A_valve_that_turns_elsewhere_is_given_back() =>
        Gen.Select(Trucks, Gen.Double[0.5, 0.8]).Sample((t, by) =>
        {
            var r = Read(t, t with { Turn = t.Knee * by });
            Assert.Contains("valve", Cause(r));
            if (r.Number("fitted") is { } fitted && fitted > 1) Assert.Equal(t.Knee * by, fitted / 1e6, 0.05);
        }, iter: 60);

    [Theory]
    [InlineData(true, "front-line")]
    [InlineData(false, "rear-line")]
    public void A_line_that_passes_too_little_is_given_back(bool front, string cause) =>
        Gen.Select(Trucks, Gen.Double[0, 0.8]).Sample((t, share) => Named(Read(t, front ? t with { FrontLine = share } : t with { RearLine = share }), cause, share, 0.01), iter: 60);

    [Fact]
    public void A_pressure_held_with_the_pedal_up_is_given_back() =>
        Gen.Select(Trucks, Gen.Double[0.05, 0.3]).Sample((t, held) => Named(Read(t, t with { Held = held }), "rear-held", held * 1e6, 0.02e6), iter: 60);

    // The finding says a number of readings: never more than there are, and the cause never explains fewer than what was right without it.
    [Fact]
    public void Counts_stay_within_the_readings() =>
        Gen.Select(Trucks, Gen.Double[0.5, 1.3], Gen.Double[0.3, 1.2], Gen.Double[0, 1]).Sample((t, leg, share, line) =>
        {
            var r = Read(t, t with { Leg = leg, Share = share, FrontLine = line });
            Assert.InRange(r.Number("within")!.Value, 0, r.Number("count")!.Value);
            if (r.Number("explained") is { } explained) Assert.InRange(explained, r.Number("within")!.Value, r.Number("count")!.Value);
            Assert.DoesNotContain("NaN", r.ToJsonString(), StringComparison.Ordinal);
        }, iter: 60);

    private static void Named(JsonObject r, string cause, double value, double tolerance)
    {
        Assert.Equal("caution", r.Verdict("readings"));
        Assert.Equal(cause, Cause(r));
        r.Gives("fitted", value, tolerance);
    }

    private static JsonObject Read(Truck stated, Truck true_)
    {
        string Curve(IEnumerable<double> forces, Func<double, double> at) => "[" + string.Join(',', forces.Select(f => string.Create(CultureInfo.InvariantCulture, $"""["{f:R} N","{at(f):R} MPa"]"""))) + "]";
        return Door.Run("brakes.gauge-check", $$"""{ {{stated.Stated}}, "gaugeFront":{{Curve(s_forces, true_.Front)}},"gaugeRear":{{Curve(s_forces.Prepend(0), true_.Rear)}} }""");
    }

    private static string Cause(JsonObject r) => r["outputs"]!["cause"]!["value"]!.GetValue<string>();
}
