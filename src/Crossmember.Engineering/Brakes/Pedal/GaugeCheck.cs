using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Gauge readings at the bleeders and decelerations against what the brakes as stated should give, and what explains the gap.</summary>
/// <remarks>
/// Formula:  expected readings by the chain; each cause is one parameter, fitted by least gaps and truncated least squares; it explains what comes within the error of the gauge
/// Valid:    one thing wrong at a time; pressed slowly and held
/// Source:   docs/derivations/brake-pedal.md
/// Example:  5 MPa at 100 lb expected; 2 and 4 MPa read at 50 and 100 lb: a leg of 0.8
/// </remarks>
public sealed class GaugeCheck() : Calculation<GaugeCheck.Inputs, GaugeCheck.Result>(new()
{
    Id = "brakes.gauge-check",
    Version = 1,
    Title = "Gauge at the bleeders",
    Purpose = "Whether the brakes make the pressure and the deceleration that they should, and if not, which one thing would explain it.",
    Formula = "expected = chain(F); cause = one parameter: least sum of |read - expected| / error, then of min(((read - expected) / error)^2, 9)",
    Validity = "Looks for one thing wrong at a time. A cause is named where it brings every reading within the gauge's error (one in ten may miss where none does); several that do so alike are all told, with the reading "
        + "that would tell them apart. Air in the lines does not show in pressure but in travel. Read with the pedal held still, the engine at idle; readings with a dead booster are given by themselves.",
    Sources = ["Statics of the chain, derived", "Least absolute deviations, truncated least squares: common practice, no source"],
    Checks = [new("readings", null, "Do the brakes make what they should, and if not, why?")],
    Either = ["gaugeFront", "gaugeRear"],
    NoTrends =
    [
        .. Because("part of what is expected, not of what comes out", "cutIn", "jumpIn", "knee", "kneePressure", "plainPressure", "deadLoss", "rearShare", "frontForce", "frontThreshold", "rearForce", "rearThreshold",
            "valveKnee", "valveSlope", "metering", "heldFront", "heldRear", "mass"),
        .. Because("a set of readings", "gaugeFront", "gaugeRear", "gaugeDeadFront", "gaugeDeadRear", "gaugeDeceleration"),
        new("error", "decides what counts as explained"), new("decelerationError", "decides what counts as explained"), new("pedalEfficiency", "names a cause in the builder's figures"),
        new("pedalRatio", "names a cause in the builder's figures"), new("bore", "names a cause in the builder's figures"), new("vacuum", "names a cause in the builder's figures"), new("lineVacuum", "carries the pedal line back to the shop's altitude"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["cutIn"] = "0 N", ["jumpIn"] = "0 MPa", ["knee"] = "0 N", ["kneePressure"] = "0 MPa", ["plainPressure"] = "5 MPa", ["deadLoss"] = "0 MPa", ["error"] = "0.1 MPa",
                ["gaugeFront"] = """[["0 N","0 MPa"],["222.411 N","2 MPa"],["444.822 N","4 MPa"]]""",
            },
            new Dictionary<string, double> { ["count"] = 3, ["within"] = 1, ["worstGap"] = -1 }, 1e-4, "5 MPa at 100 lb expected, 4 MPa read, straight from nothing: by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Gauge, hose and fitting must be made for brake pressure; shield the bleeder, bleed again afterwards and check the pedal before the vehicle moves.",
        "What is named here is where to look first, not what is proven: a qualified person decides.",
    ],
})
{
    public sealed record Inputs(
        [Input("pedal force at which the booster begins", "N", AtLeast = 0, Measure = HowToMeasurePedal.LineKey)] Force CutIn,
        [Input("line pressure at the booster's jump-in", "MPa", AtLeast = 0, Measure = HowToMeasurePedal.LineKey)] Pressure JumpIn,
        [Input("pedal force at which the booster runs out; 0 without one", "N", AtLeast = 0, Measure = HowToMeasurePedal.LineKey)] Force Knee,
        [Input("line pressure at the booster's run-out", "MPa", AtLeast = 0, Measure = HowToMeasurePedal.LineKey)] Pressure KneePressure,
        [Input("line pressure at 100 lb by the leg alone", "MPa", MoreThan = 0, Measure = HowToMeasurePedal.LineKey)] Pressure PlainPressure,
        [Input("line pressure that a dead booster's spring takes", "MPa", AtLeast = 0, Measure = HowToMeasurePedal.LineKey)] Pressure DeadLoss,
        [Input("pressure of the rear circuit over that of the front; 1 where nothing is said", MoreThan = 0, Measure = HowToMeasurePedal.LineKey)] Ratio? RearShare,
        [Input("force of the front brakes at 1000 psi over their threshold", "N", AtLeast = 0, Measure = HowToMeasurePedal.AxleForce)] Force? FrontForce,
        [Input("threshold of the front brakes", "MPa", AtLeast = 0, Measure = HowToMeasurePedal.AxleForce)] Pressure? FrontThreshold,
        [Input("force of the rear brakes at 1000 psi over their threshold", "N", AtLeast = 0, Measure = HowToMeasurePedal.AxleForce)] Force? RearForce,
        [Input("threshold of the rear brakes", "MPa", AtLeast = 0, Measure = HowToMeasurePedal.AxleForce)] Pressure? RearThreshold,
        [Input("rear valve; none where nothing is said", OneOf = ["none", "fixed", "adjustable", "load-sensing"], Measure = "look between master cylinder and rear axle")] string? ValveKind,
        [Input("line pressure at which the rear valve turns", "MPa", AtLeast = 0, Measure = "its maker, or a gauge on each side of it")] Pressure? ValveKnee,
        [Input("slope of the rear valve; 0 limits", AtLeast = 0, High = 1, Measure = "its maker, or a gauge on each side of it")] Ratio? ValveSlope,
        [Input("metering pressure of the front; none where nothing is said", "MPa", AtLeast = 0, Measure = "its maker, or a gauge behind it")] Pressure? Metering,
        [Input("pressure held in the front line by a residual valve; none where nothing is said", "MPa", AtLeast = 0, Measure = "gauge at the bleeder with the pedal up")] Pressure? HeldFront,
        [Input("pressure held in the rear line by a residual valve; none where nothing is said", "MPa", AtLeast = 0, Measure = "gauge at the bleeder with the pedal up")] Pressure? HeldRear,
        [Input("front bleeder over pedal force, booster working", "N", CurveUnit = "MPa", Measure = HowToMeasurePedal.Gauge)] Curve? GaugeFront,
        [Input("rear bleeder over pedal force, booster working", "N", CurveUnit = "MPa", Measure = HowToMeasurePedal.Gauge)] Curve? GaugeRear,
        [Input("front bleeder over pedal force, booster dead", "N", CurveUnit = "MPa", Measure = HowToMeasurePedal.DeadGauge)] Curve? GaugeDeadFront,
        [Input("rear bleeder over pedal force, booster dead", "N", CurveUnit = "MPa", Measure = HowToMeasurePedal.DeadGauge)] Curve? GaugeDeadRear,
        [Input("deceleration over pedal force, share of g", "N", CurveUnit = "1", Measure = "closed ground, town speed, decelerometer on the floor, scale on the pedal")] Curve? GaugeDeceleration,
        [Input("mass of the vehicle in the road test", "kg", MoreThan = 0, Measure = "weigh it as tried, driver in")] UnitsNet.Mass? Mass,
        [Input("error of the gauge with that of the scale on the pedal", "MPa", MoreThan = 0, Default = 0.2, High = 2, Measure = "half a division of the gauge, and what the scale on the pedal is off")] Pressure Error,
        [Input("error of the decelerometer, share of g", MoreThan = 0, Default = 0.03, High = 0.2, Measure = "do the same stop three times and take half of what they differ")] Ratio DecelerationError,
        [Input("efficiency of pedal and linkage as stated", MoreThan = 0, High = 1, Default = 0.9, Measure = HowToMeasurePedal.Efficiency)] Ratio PedalEfficiency,
        [Input("pedal ratio as stated", MoreThan = 0, Measure = HowToMeasurePedal.Ratio)] Ratio? PedalRatio,
        [Input("bore of the master cylinder as stated", "mm", MoreThan = 0, Measure = HowToMeasurePedal.MasterBore)] Length? Bore,
        [Input("vacuum at the booster as stated, in the shop", "kPa", MoreThan = 0, Measure = HowToMeasurePedal.Vacuum)] Pressure? Vacuum,
        [Input("vacuum that the pedal line stands for; that of the shop where nothing is said", "kPa", AtLeast = 0, Measure = HowToMeasurePedal.LineKey)] Pressure? LineVacuum);

    public sealed record Result(
        [Output("readings")] Ratio? Count,
        [Output("readings within their error")] Ratio? Within,
        [Output("largest gap of a pressure, read less expected", "MPa")] Pressure? WorstGap,
        [Output("readings that the best cause brings within their error")] Ratio? Explained,
        [Output("what explains the gap: linkage, bore, vacuum, booster-dead, front-held, rear-held, valve, front-line, rear-line, friction; several where they cannot be told apart")] string? Cause,
        [Output("fitted over stated: of leg force, piston area, assist, line or friction; a held or turning pressure in Pa")] Ratio? Fitted);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var model = GaugeModel.Of(
            new(x.PlainPressure.Pascals / PedalLine.ReferenceForce, x.CutIn.Newtons, x.JumpIn.Pascals, x.Knee.Newtons, x.KneePressure.Pascals, x.DeadLoss.Pascals),
            new(Axle(x.FrontForce, x.FrontThreshold), Axle(x.RearForce, x.RearThreshold), ValvesOf(x)), x.RearShare?.DecimalFractions ?? 1,
            (x.Mass?.Kilograms ?? 0) * Loading.Gravity, x.HeldFront?.Pascals ?? 0, x.HeldRear?.Pascals ?? 0);
        // The pedal line stands for the highest altitude; the gauge was read in the shop.
        if (model.Line.Boosted && x is { Vacuum: { } shop, LineVacuum: { Pascals: > 0 } there }) model = model.Assisted(shop / there);
        var stopped = x is { GaugeDeceleration: not null, Mass: not null, FrontForce: not null, RearForce: not null };
        var readings = Gather(x, stopped);
        if (readings.Length == 0)
        {
            w.Answer("readings", Verdict.Unknown, x.GaugeDeceleration is null ? $"Not known: nobody has read a gauge yet ({HowToMeasurePedal.Gauge})."
                : "Not known: decelerations mean something with the mass of the vehicle and the force of both axles only (weigh it as tried, driver in).");
            return new(null, null, null, null, null, null);
        }
        // Behind a valve nothing is expected before its knee and slope are known; the front bleeder reads before it.
        if (x.ValveKind is not (null or "none") && (x.ValveKnee is null || x.ValveSlope is null) && Array.Exists(readings, r => r.Place is not (GaugePlace.Front or GaugePlace.DeadFront)))
        {
            if (x.ValveKnee is null) w.Lacks("valveKnee");
            if (x.ValveSlope is null) w.Lacks("valveSlope");
            return new(null, null, null, null, null, null);
        }
        var within = GaugeFit.Within(readings, model);
        var gap = Gap(readings, model, w);
        if (w.Shown) Draw(w, x, model);
        if (within == readings.Length)
        {
            w.Answer("readings", Verdict.Pass, $"All {within} readings are what the brakes as stated should give, within the gauge's error.");
            return Told(readings.Length, within, gap, within, null, null);
        }
        var stated = new GaugeStated(x.PedalEfficiency.DecimalFractions, x.PedalRatio?.DecimalFractions, x.Bore?.Meters, x.Vacuum?.Pascals);
        var kept = GaugeVerdict.Explaining(GaugeCauses.Fit(readings, model, stated, stopped), readings.Length);
        w.Answer("readings", Verdict.Caution, $"{readings.Length - within} of {readings.Length} readings {(readings.Length - within == 1 ? "is" : "are")} off what the brakes as stated should give. {GaugeVerdict.Told(kept, readings.Length)}");
        if (kept.Count == 0) return Told(readings.Length, within, gap, null, null, null);
        return Told(readings.Length, within, gap, kept[0].Within, GaugeVerdict.Names(kept), kept.TrueForAll(c => c.Family == kept[0].Family) ? kept[0].Value : null);
    }

    private static IEnumerable<NoTrend> Because(string why, params string[] inputs) => inputs.Select(i => new NoTrend(i, why));

    private static Result Told(int count, int within, double? gap, int? explained, string? cause, double? fitted) =>
        new(Ratio.FromDecimalFractions(count), Ratio.FromDecimalFractions(within), gap is { } g ? Pressure.FromPascals(g) : null, explained is { } e ? Ratio.FromDecimalFractions(e) : null,
            cause, fitted is { } f ? Ratio.FromDecimalFractions(f) : null);

    private static AxleForce Axle(Force? force, Pressure? threshold) => new((force?.Newtons ?? 0) / AxleForce.ReferencePressure, threshold?.Pascals ?? 0);

    private static Valves ValvesOf(Inputs x) =>
        x is { ValveKind: not (null or "none"), ValveKnee: { } knee, ValveSlope: { } slope } ? new(knee.Pascals, slope.DecimalFractions, x.Metering?.Pascals ?? 0)
        : Valves.None with { Metering = x.Metering?.Pascals ?? 0 };

    private static GaugeReading[] Gather(Inputs x, bool stopped)
    {
        double error = x.Error.Pascals;
        var readings = new List<GaugeReading>(24);
        void Take(GaugePlace place, Curve? curve, double off)
        {
            if (curve is null) return;
            foreach (var (force, value) in curve.Points) if (force >= 0) readings.Add(new(place, force, value, off));
        }
        Take(GaugePlace.Front, x.GaugeFront, error);
        Take(GaugePlace.Rear, x.GaugeRear, error);
        Take(GaugePlace.DeadFront, x.GaugeDeadFront, error);
        Take(GaugePlace.DeadRear, x.GaugeDeadRear, error);
        if (stopped) Take(GaugePlace.Deceleration, x.GaugeDeceleration, x.DecelerationError.DecimalFractions);
        return [.. readings];
    }

    private static double? Gap(ReadOnlySpan<GaugeReading> readings, in GaugeModel model, Worksheet w)
    {
        double? worst = null;
        foreach (var r in readings)
        {
            var expected = model.At(r.Place, r.Force);
            var pressure = r.Place != GaugePlace.Deceleration;
            w.Line("read - expected", "each reading", $"{r.Place} at {r.Force} N: {(pressure ? r.Value / 1e6 : r.Value)} - {(pressure ? expected / 1e6 : expected)}",
                pressure ? (r.Value - expected) / 1e6 : r.Value - expected, pressure ? "MPa" : "1");
            if (pressure && Math.Abs(r.Value - expected) > Math.Abs(worst ?? 0)) worst = r.Value - expected;
        }
        return worst;
    }

    private static void Draw(Worksheet w, Inputs x, GaugeModel model)
    {
        void Both(string name, GaugePlace place, Curve? read)
        {
            if (read is null) return;
            double[] forces = [.. read.Points.Select(p => p.X)];
            double most = Math.Max(0, forces[^1]), turn = Math.Clamp(model.Line.Knee, 0, most);
            double[] at = [.. new[] { 0, model.Line.CutIn, 1.0001 * model.Line.CutIn, turn, most }.Concat(forces).Where(f => f >= 0 && f <= most).Distinct().Order()];
            w.Curve(new($"{name}, read", "pedal force", "N", forces, "pressure at the bleeder", "MPa", [.. read.Points.Select(p => p.Y / 1e6)]));
            w.Curve(new($"{name}, expected", "pedal force", "N", at, "pressure at the bleeder", "MPa", [.. at.Select(f => model.At(place, f) / 1e6)]));
        }
        Both("front", GaugePlace.Front, x.GaugeFront);
        Both("rear", GaugePlace.Rear, x.GaugeRear);
        Both("front, booster dead", GaugePlace.DeadFront, x.GaugeDeadFront);
        Both("rear, booster dead", GaugePlace.DeadRear, x.GaugeDeadRear);
    }
}
