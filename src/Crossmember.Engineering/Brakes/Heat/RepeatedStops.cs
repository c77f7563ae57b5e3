using Crossmember.Engineering.Calculations;
using UnitsNet;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Temperature of a rotor or drum after stops that follow each other evenly.</summary>
/// <remarks>
/// Formula:  dT = Q / (m c), b = hA t / (m c); peak after the nth T = air + (T0 - air) e^(-(n-1)b) + dT (1 - e^(-nb)) / (1 - e^-b); for ever air + dT / (1 - e^-b)
/// Valid:    each stop short against the interval; iron of one temperature; cooling at the mean speed, no radiation: above 400 C it is cooler than this
/// Source:   geometric series, derived in docs/derivations/brake-heat.md; same structure as Newcomb and Limpert
/// Example:  15 times 80 to 40 km/h every 45 s, hA 7.0 W/K, 3600 J/K: 390.3 C
/// </remarks>
public sealed class RepeatedStops() : Calculation<RepeatedStops.Inputs, RepeatedStops.Result>(new()
{
    Id = "brakes.repeated-stops",
    Version = 1,
    Title = "Stops that follow each other",
    Purpose = "How hot a brake gets in stop after stop with little time to cool, as on a winding road down or with a trailer in town: where fade begins.",
    Formula = "dT = Q / (m c); b = hA t / (m c); T = air + (T0 - air) e^(-(n-1)b) + dT (1 - e^(-nb)) / (1 - e^-b)",
    Validity = "Each stop is short against the interval. Rotor or drum of one temperature, cooled as at the mean of both speeds. Nothing is radiated or led away: above about 400 C it is cooler "
        + "than this. Friction stays as it is cold; the drive with all paths is reckoned apart.",
    Sources = ["Geometric series of rises and decays, derived; same structure as Newcomb and Limpert, from memory"],
    Checks = [new("linings", Sense.AtMost, "Do the brakes stay below what the linings are used to?")],
    Trends =
    [
        new("mass", "peak", '+', 800, 5000), new("from", "peak", '+', 40, 80), new("to", "peak", '-', 0, 25), new("interval", "peak", '-', 20, 200), new("count", "peak", '+', 1, 20),
        new("heatMass", "peak", '-', 3, 30), new("rotorShare", "peak", '+', 0.8, 1), new("cooling", "peak", '-', 300, 2000), new("airTemperature", "peak", '+', -20, 45),
        new("startTemperature", "peak", '+', 20, 150), new("rotatingFactor", "peak", '+', 1, 1.3),
    ],
    NoTrends =
    [
        new("forces", "one for each axle: what one axle gains the other loses"), new("thresholds", "move the share from axle to axle"), new("valveKnee", "moves the share from axle to axle"),
        new("valveSlope", "moves the share from axle to axle"), new("metering", "moves the share from axle to axle"), new("rearShare", "moves the share from axle to axle"), new("deceleration", "bears on the share of the axles alone"),
        new("coolingArea", "bears on the cooling in still air alone, at little speed"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["mass"] = "2100 kg", ["axle"] = "front", ["forces"] = """{"front":"7500 N","rear":"2500 N"}""", ["thresholds"] = """{"front":"0 MPa","rear":"0 MPa"}""", ["valve"] = "none",
                ["from"] = "80 km/h", ["to"] = "40 km/h", ["count"] = "15", ["interval"] = "45 s", ["heatMass"] = "7.5 kg", ["rotorShare"] = "0.95", ["kind"] = """{"left":"disc"}""",
                ["cooling"] = "740.54 W", ["coolingArea"] = "0 cm2", ["startTemperature"] = "80 C", ["airTemperature"] = "25 C",
            },
            new Dictionary<string, double> { ["rise"] = 40.02, ["peak"] = 390.3, ["limit"] = 502.7 }, 0.0005,
            "740.54 W at 40 mph is 7.0 W/K at 60 km/h; dT 144.1 kJ / 3600, b 0.0875; the series by hand", Provenance.Derived),
    ],
    Cautions = [HowToMeasureHeat.Estimate, HowToMeasureHeat.Grades],
})
{
    public sealed record Inputs(
        [Input("total mass", "kg", MoreThan = 0, Measure = HowToMeasureHeat.Mass)] UnitsNet.Mass Mass,
        [Input("axle", OneOf = [TwoAxles.Front, TwoAxles.Rear])] string Axle,
        [Input("braking force of each axle at 1000 psi over its threshold", "N", AtLeast = 0, Measure = HowToMeasureHeat.Force)] Members<Force> Forces,
        [Input("threshold pressure of each axle", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Threshold)] Members<Pressure> Thresholds,
        [Input(How.Valve, OneOf = [How.NoValve, How.FixedValve, How.AdjustableValve, How.LoadValve], Measure = How.ValveKind)] string Valve,
        [Input("line pressure at the rear valve's knee", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Valve)] Pressure? ValveKnee,
        [Input("slope of the rear valve above its knee", AtLeast = 0, High = 1, Measure = HowToMeasureHeat.Slope)] Ratio? ValveSlope,
        [Input("pressure at which the metering valve opens", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Metering)] Pressure? Metering,
        [Input("pressure of the rear circuit over that of the front", MoreThan = 0, Low = 0.2, High = 3, Measure = HowToMeasureHeat.RearShare)] Ratio? RearShare,
        [Input("deceleration as a share of g", MoreThan = 0, High = 1.2, Default = 0.6, Measure = HowToMeasureHeat.Braking)] Ratio Deceleration,
        [Input("speed at which each stop begins", "mph", MoreThan = 0, High = 100, Default = 50, Measure = HowToMeasureHeat.From)] Speed From,
        [Input("speed at which each stop ends", "mph", AtLeast = 0, High = 100, Default = 25, Measure = HowToMeasureHeat.To)] Speed To,
        [Input("number of stops", AtLeast = 1, High = 100, Default = 15, Measure = HowToMeasureHeat.Stops)] Ratio Count,
        [Input("time from one stop to the next", "s", MoreThan = 0, Low = 10, Default = 45, Measure = HowToMeasureHeat.Interval)] Duration Interval,
        [Input("mass with what turns over mass", AtLeast = 1, High = 2, Default = 1.04, Measure = HowToMeasureHeat.Rotating)] Ratio RotatingFactor,
        [Input("kind of brake", OneOf = [TwoAxles.Disc, TwoAxles.Drum], Measure = HowToMeasureHeat.Kind)] Members<string> Kind,
        [Input("mass of one rotor or drum", "kg", MoreThan = 0, Low = 2, High = 60, Measure = HowToMeasureHeat.HeatMass)] UnitsNet.Mass HeatMass,
        [Input("share of the heat that goes into the iron", MoreThan = 0, High = 1, Default = 0.95, Measure = HowToMeasureHeat.RotorShare)] Ratio RotorShare,
        [Input("heat shed by one wheel at 40 mph when 100 K hotter than the air", "W", MoreThan = 0, Low = 100, High = 6000, Measure = HowToMeasureHeat.Cooling)] Power Cooling,
        [Input("what the air sweeps of one rotor or drum", "cm2", AtLeast = 0, High = 5000, Measure = HowToMeasureHeat.CoolingArea)] Area CoolingArea,
        [Input("temperature of the brakes before", "C", Low = -40, High = 500, Default = 80, Measure = HowToMeasureHeat.Start)] Temperature StartTemperature,
        [Input("temperature of the air", "C", Low = -40, High = 60, Default = 25, Measure = HowToMeasureHeat.Air)] Temperature AirTemperature,
        [Input("kind of lining", OneOf = [Linings.Organic, Linings.SemiMetallic, Linings.Ceramic, Linings.Sintered], Measure = HowToMeasureHeat.Lining)] Members<string>? Lining);

    public sealed record Result(
        [Output("rise in one stop", "dC")] TemperatureDelta Rise,
        [Output("temperature after the last stop", "C")] Temperature Peak,
        [Output("temperature that stop after stop for ever would lead to", "C")] Temperature Limit);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (!TwoAxles.Knows(w, x.Valve, x.ValveKnee, x.ValveSlope)) return null;
        double m = x.Mass.Kilograms, k = x.RotatingFactor.DecimalFractions, from = x.From.MetersPerSecond, to = x.To.MetersPerSecond, n = x.Count.DecimalFractions;
        double air = x.AirTemperature.Kelvins, start = x.StartTemperature.Kelvins, store = x.HeatMass.Kilograms * GrayIron.SpecificHeat, t = x.Interval.Seconds;
        if (Wrong(from, to, x.Deceleration.DecimalFractions * Stretch.Gravity, t) is { } wrong)
        {
            w.Answer("linings", Verdict.Unknown, wrong);
            return null;
        }
        if (TwoAxles.Same(x.Kind) is not { } kind || TwoAxles.Rig(x.Forces, x.Thresholds, x.Valve, x.ValveKnee, x.ValveSlope, x.Metering, x.RearShare) is not { } rig) return null;
        if (TwoAxles.Share(rig, m * x.Deceleration.DecimalFractions * Stretch.Gravity, x.Axle == TwoAxles.Front) is not { } share) return null;
        double E = 0.5 * k * m * ((from * from) - (to * to)), dT = E * share / 2 * x.RotorShare.DecimalFractions / store;
        var hA = Airflow.Of(kind == TwoAxles.Drum, (double)x.Cooling.Watts, x.CoolingArea.SquareMeters).At((from + to) / 2);
        double b = hA * t / store, steady = air + (dT / Lost(b)), peak = Series(n, b, dT, start, air);
        w.Line("dT", "E x share / 2 x share of the iron / (m c)", $"{E} x {share} / 2 x {x.RotorShare.DecimalFractions} / {store}", dT, "dC");
        w.Line("hA", "at the mean speed", $"from {x.Cooling.Watts} W at 40 mph", hA, "1");
        w.Line("b", "hA t / (m c)", $"{hA} x {t} / {store}", b, "1");
        w.Line("T", "air + (T0 - air) e^(-(n-1)b) + dT (1 - e^(-nb)) / (1 - e^-b)", $"n = {n}", peak - 273.15, "C");
        var lining = x.Lining is { } sides ? TwoAxles.Same(sides) : null;
        w.AtMost("linings", peak - 273.15, Linings.Limit(lining) - 273.15, "C",
            $"{n:0} stops from {x.From.KilometersPerHour:0} km/h to {x.To.KilometersPerHour:0} km/h every {t:0} s leave the {x.Axle} brakes at {peak - 273.15:0} C; "
            + $"{Linings.Named(lining)} is used up to about {Linings.Limit(lining) - 273.15:0} C.", Linings.Source, beyond: Verdict.Caution);
        return new(TemperatureDelta.FromKelvins(dT), Temperature.FromKelvins(peak), Temperature.FromKelvins(steady));
    }

    /// <summary>Stops that cannot follow each other so; m/s, m/s2, s. Null where they can.</summary>
    internal static string? Wrong(double from, double to, double deceleration, double interval) => to >= from ? "The stops end no slower than they begin: look at both speeds."
        : (from - to) / deceleration >= interval ? "The stops follow each other faster than they can be driven: look at the time between them." : null;

    private static double Series(double n, double b, double dT, double start, double air) =>
        air + ((start - air) * Math.Exp(-(n - 1) * b)) + (dT * Lost(n * b) / Lost(b));

    /// <summary>1 - e^-b, of which small b keep their figures.</summary>
    private static double Lost(double b) => 2 * Math.Exp(-b / 2) * Math.Sinh(b / 2);
}
