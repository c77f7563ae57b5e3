using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>How many strokes of the pedal a vacuum booster still helps when the engine has died.</summary>
/// <remarks>
/// Formula:  after each stroke p' = (p Vf + pr (Vr + A s)) / (Vf + Vr); assist = (air - p Vf / (Vf - A s)) A eta
/// Valid:    isothermal, tight check valve, 222 N (50 lb) on the pedal each time, let go all the way
/// Source:   docs/derivations/brake-pedal.md; 49 CFR 570.56: one full application still assisted
/// Example:  4 L of shell, 400 cm2, 20 mm, 70 kPa: 2 strokes with a third of the help and more
/// </remarks>
public sealed class BoosterReserve() : Calculation<BoosterReserve.Inputs, BoosterReserve.Result>(new()
{
    Id = "brakes.booster-reserve",
    Version = 1,
    Title = "Strokes left with a dead engine",
    Purpose = "Whether one full application is still helped after the engine died, and how many more; what a reservoir adds.",
    Formula = "p' = (p Vf + pr (Vr + A s)) / (Vf + Vr); assist = (air - p Vf / (Vf - A s)) A eta, no more than the booster's gain asks for",
    Validity = "Isothermal, a tight check valve, each stroke full and let go all the way. The air side with the pedal up is taken as a tenth of the shell; the stroke is that of 50 lb with the engine running, so that strokes with less help take less air than told.",
    Sources = ["Balance of air at one temperature, derived", "49 CFR 570.56, vacuum reserve, written for vehicles over 10,000 lb: a caution at most"],
    Checks = [new("one-stroke", null, "Is one full application still helped with the engine dead?")],
    Trends =
    [
        new("shellVolume", "firstAssist", '+', 2000, 8000), new("reservoirVolume", "secondAssist", '+', 0, 8000), new("vacuum", "firstAssist", '+', 25, 45), new("stroke", "secondAssist", '-', 8, 30),
        new("efficiency", "secondAssist", '+', 0.7, 1),
    ],
    NoTrends =
    [
        new("diaphragm", "helps more, and takes more air"), new("secondDiaphragm", "helps more, and takes more air"), new("rod", "helps less, and takes less air"), new("pedalRatio", "asks for more help, up to the run-out"),
        new("pedalEfficiency", "asks for more help, up to the run-out"), new("cutIn", "asks for less help, down to the run-out"), new("jumpIn", "asks for more help, up to the run-out"),
        new("gain", "asks for more help, up to the run-out"), new("countedStrokes", "counted, not worked out"), new("altitude", "the vacuum is already that of the altitude; only its share of the air's pressure changes"),
    ],
    Examples =
    [
        new(Example(), new Dictionary<string, double> { ["firstAssist"] = 2362.4, ["secondAssist"] = 1185.1, ["strokes"] = 2 }, 0.001,
            "Air by hand: 31.325 kPa x 4 / 3.2 L = 39.156 kPa, 62.17 kPa x 0.04 m2 x 0.95 = 2362 N; then 45.214 kPa are left: 70.139 pressed, 31.186 x 0.038 m2 = 1185 N", Provenance.Derived),
    ],
    Cautions = ["A booster that loses its help overnight or after one stroke has a leaking check valve, hose or diaphragm: find it before the vehicle moves."],
})
{
    private const double PressForce = 50 * 4.448222, RearShare = 0.1, Usual = 2; // N, share of the shell, strokes
    private const int MostStrokes = 20;

    public sealed record Inputs(
        [Input("kind of booster", OneOf = [PedalAndBooster.NoBooster, PedalAndBooster.Vacuum, PedalAndBooster.Hydraulic], Measure = HowToMeasurePedal.BoosterKind)] string BoosterKind,
        [Input("pedal ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasurePedal.Ratio)] Ratio PedalRatio,
        [Input("efficiency of pedal and linkage", MoreThan = 0, Low = 0.3, High = 1, Default = 0.9, Measure = HowToMeasurePedal.Efficiency)] Ratio PedalEfficiency,
        [Input("effective diameter of the diaphragm", "mm", MoreThan = 0, Low = 100, High = 350, Measure = HowToMeasurePedal.Diaphragm)] Length? Diaphragm,
        [Input("effective diameter of the second diaphragm; none where nothing is said", "mm", AtLeast = 0, High = 350, Measure = HowToMeasurePedal.Diaphragm)] Length? SecondDiaphragm,
        [Input("tube through the diaphragm; left out where nothing is said", "mm", AtLeast = 0, High = 80, Measure = HowToMeasurePedal.BoosterRod)] Length? Rod,
        [Input("efficiency of the booster", MoreThan = 0, Low = 0.5, High = 1, Default = 0.95, Measure = HowToMeasurePedal.BoosterCurve)] Ratio Efficiency,
        [Input("cut-in of the booster at its push rod", "N", AtLeast = 0, High = 400, Default = 90, Measure = HowToMeasurePedal.BoosterCurve)] Force CutIn,
        [Input("output of the booster just after its jump-in", "N", AtLeast = 0, High = 1500, Default = 350, Measure = HowToMeasurePedal.BoosterCurve)] Force JumpIn,
        [Input("gain of the booster between jump-in and run-out", MoreThan = 1, Low = 1.5, High = 12, Default = 5, Measure = HowToMeasurePedal.BoosterCurve)] Ratio Gain,
        [Input("vacuum at the highest altitude", "kPa", AtLeast = 0, High = 101, Measure = HowToMeasurePedal.Vacuum)] Pressure? Vacuum,
        [Input("highest altitude it will be driven at", "m", Low = -430, High = 5000, Default = 0, Measure = HowToMeasurePedal.Altitude)] Length Altitude,
        [Input("vacuum side of the booster with the pedal up", "cm3", MoreThan = 0, Low = 500, High = 20000, Measure = "0.785 x diameter x diameter x depth of the front shell, or fill it with water when it is off")] Volume? ShellVolume,
        [Input("vacuum reservoir; none where nothing is said", "cm3", AtLeast = 0, High = 20000, Measure = "fill it with water, or 0.785 x diameter x diameter x length")] Volume? ReservoirVolume,
        [Input("way of the push rod at 50 lb", "mm", MoreThan = 0, Low = 2, High = 60, Measure = "it follows from the pedal's travel")] Length? Stroke,
        [Input("strokes of a hydraulic booster still helped with the engine dead", AtLeast = 0, High = 50, Measure = "ask whether it has an accumulator; stop the engine, wait a minute, press and let go until the pedal is hard, and count")] Ratio? CountedStrokes);

    public sealed record Result(
        [Output("strokes with at least a third of the help that a running engine gives")] Ratio? Strokes,
        [Output("what the booster adds in the first stroke", "N")] Force? FirstAssist,
        [Output("what it adds in the second stroke", "N")] Force? SecondAssist,
        [Output("vacuum left after the first stroke", "kPa")] Pressure? VacuumAfter);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        if (x.BoosterKind != PedalAndBooster.Vacuum)
        {
            if (x.BoosterKind == PedalAndBooster.NoBooster) w.Answer("one-stroke", Verdict.Pass, "No booster: a dead engine changes nothing at the pedal.");
            else Hydraulic(x, w);
            return new(null, null, null, null);
        }
        if (x is not { Vacuum: { } vacuum, Diaphragm: { } d, ShellVolume: { } shell, Stroke: { } stroke })
        {
            if (x.Vacuum is null) w.Lacks("vacuum");
            if (x.Diaphragm is null) w.Lacks("diaphragm");
            if (x.ShellVolume is null) w.Lacks("shellVolume");
            if (x.Stroke is null) w.Lacks("stroke");
            return new(null, null, null, null);
        }
        double eta = x.Efficiency.DecimalFractions, area = Booster.Area(d.Meters, x.SecondDiaphragm?.Meters ?? 0, x.Rod?.Meters ?? 0), air = Atmosphere.At(x.Altitude.Meters);
        double vf = shell.CubicMeters + (x.ReservoirVolume?.CubicMeters ?? 0), vr = RearShare * shell.CubicMeters, swept = area * stroke.Meters, p = air - vacuum.Pascals;
        if (p < 0 || swept >= shell.CubicMeters || area <= 0)
        {
            w.Answer("one-stroke", Verdict.Fail, p < 0 ? $"A vacuum of {vacuum.Kilopascals:0} kPa cannot be where the air presses with {air / 1e3:0} kPa: read the gauge again."
                : area <= 0 ? "The tube is wider than the diaphragm: measure both again."
                : $"A stroke of {stroke.Millimeters:0} mm sweeps {swept * 1e6:0} cm3, more than the {shell.CubicCentimeters:0} cm3 of the shell: measure shell and diaphragm again.");
            return new(null, null, null, null);
        }
        var store = new VacuumStore(vf, vr, swept, area, eta, air);
        var booster = new Booster(x.CutIn.Newtons, x.JumpIn.Newtons, x.Gain.DecimalFractions, vacuum.Pascals * area * eta, 0);
        var input = PressForce * x.PedalRatio.DecimalFractions * x.PedalEfficiency.DecimalFractions;
        var fresh = Math.Max(0, booster.Output(input) - input);
        var (count, first, second, after) = Count(store, booster, input, fresh, p);
        w.Line("A", "diaphragms less their tube", $"", area * 1e4, "cm2");
        w.Line("pressed", "p Vf / (Vf - A s)", $"{p / 1e3} x {vf * 1e6} / ({vf * 1e6} - {swept * 1e6})", p * vf / (vf - swept) / 1e3, "kPa");
        w.Line("assist", "what the booster adds, no more than (air - pressed) A eta", $"({air / 1e3} - {p * vf / (vf - swept) / 1e3}) x {area * 1e4} x {eta} / 10", first, "N");
        w.Line("p'", "(p Vf + pr (Vr + A s)) / (Vf + Vr)", $"Vr {vr * 1e6} cm3", after / 1e3, "kPa");
        Judge(w, count, first, fresh);
        return new(Ratio.FromDecimalFractions(count), Force.FromNewtons(first), Force.FromNewtons(second), Pressure.FromPascals(air - after));
    }

    private static (int Count, double First, double Second, double After) Count(in VacuumStore store, in Booster booster, double input, double fresh, double p)
    {
        var (first, after) = store.Stroke(p, booster, input);
        var (second, next) = store.Stroke(after, booster, input);
        var count = 0;
        for (var (assist, at) = (first, after); fresh > 0 && assist >= fresh / 3 && count < MostStrokes; count++) (assist, at) = store.Stroke(at, booster, input);
        return (count, first, second, after);
    }

    private static void Judge(Worksheet w, int count, double first, double fresh)
    {
        const string source = "49 CFR 570.56, for vehicles over 10,000 lb";
        if (fresh <= 0) w.Answer("one-stroke", Verdict.Caution, "The booster adds nothing at 222 N even with the engine running: no vacuum, or a cut-in beyond that.", 0, "N", source);
        else if (first <= 0) w.Answer("one-stroke", Verdict.Caution, "With the engine dead the first application at 222 N is not helped at all: more volume or vacuum is needed. Vehicles over 10,000 lb must have it.", 0, "N", source);
        else w.Answer("one-stroke", count < Usual ? Verdict.Caution : Verdict.Pass, $"With the engine dead the first application at 222 N is helped by {first:0} N of {fresh:0} N; "
            + (count >= MostStrokes ? $"{MostStrokes} strokes and more keep" : count == 1 ? "1 stroke keeps" : $"{count} strokes keep") + " a third of the help or more.", first, "N", source);
    }

    /// <summary>What an accumulator keeps is counted at the pedal and not worked out; many have none.</summary>
    private static void Hydraulic(Inputs x, Worksheet w)
    {
        if (x.CountedStrokes is not { } counted)
        {
            w.Lacks("countedStrokes");
            return;
        }
        var n = counted.DecimalFractions;
        w.Answer("one-stroke", n < Usual ? Verdict.Caution : Verdict.Pass, n < 1 ? "With the engine dead not one stroke is helped: no accumulator, or one that is flat. A leg alone must stop it."
            : $"With the engine dead {n:0} {(n < 2 ? "stroke was" : "strokes were")} still helped, as counted at the pedal.", n, "1", "common practice, no source");
    }

    private static Dictionary<string, string> Example() => new()
    {
        ["boosterKind"] = PedalAndBooster.Vacuum, ["pedalRatio"] = "4.2", ["pedalEfficiency"] = "0.95", ["diaphragm"] = "225.6758 mm", ["vacuum"] = "70 kPa", ["shellVolume"] = "4000 cm3", ["stroke"] = "20 mm",
    };
}
