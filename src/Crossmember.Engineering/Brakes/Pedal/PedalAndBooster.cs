using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Line pressure over pedal force of pedal, booster and master cylinder together: the pedal line that all other brake numbers start from.</summary>
/// <remarks>
/// Formula:  p = (booster's output) eta_h / A; the booster's input is F i eta; assist = dp A_d eta_b
/// Valid:    pressed slowly, no hysteresis; vacuum carried to another altitude by the standard atmosphere
/// Source:   statics, docs/derivations/brake-pedal.md; booster terms as in SAE J1808, from memory
/// Example:  4.2 x 0.95, 400 cm2 at 70 kPa on 25.4 mm: run-out at 172.9 N of pedal and 6.413 MPa
/// </remarks>
public sealed class PedalAndBooster() : Calculation<PedalAndBooster.Inputs, PedalAndBooster.Result>(new()
{
    Id = "brakes.pedal-line",
    Version = 1,
    Title = "Pedal, booster and master cylinder",
    Purpose = "What the foot makes in the lines with the booster working, at its run-out, in thin air and dead.",
    Formula = "p = out(F i eta) eta_h / A; out = 0, then Fj + B (in - Fc), then in + dp Ad eta_b; dead: in - Fs",
    Validity = "Pressed slowly, no hysteresis. Cut-in, jump-in, gain and return spring are assumed for a common single booster unless stated: a gauge at a bleeder tells them. "
        + "An idling engine is taken to hold the same absolute pressure in its manifold at every altitude. eta_h holds the seals: line pressure at a pedal force takes both efficiencies from here. "
        + "With two cylinders on a bar the line told is that of the front circuit, and the rear circuit has a fixed share of it.",
    Sources = ["SAE J1808, terms of vacuum boosters, from memory", "ISO 2533, standard atmosphere, from memory", "Statics, derived", "49 CFR 571.135 S7.5: no more than 500 N on the pedal"],
    Checks =
    [
        new("vacuum", Sense.AtLeast, "Does the engine make vacuum enough for the booster?", "vacuum"),
        new("run-out", Sense.AtLeast, "Does the booster still help with 1000 psi in the lines?", "masterBore", "diaphragm", "vacuum"),
        new("effort", Sense.AtMost, "Can a leg make 1000 psi in the lines?", "masterBore", "diaphragm", "vacuum"),
    ],
    Trends =
    [
        new("pedalRatio", "plainPressure", '+', 2.5, 8), new("pedalEfficiency", "plainPressure", '+', 0.5, 1), new("masterEfficiency", "plainPressure", '+', 0.7, 1),
        new("masterBore", "plainPressure", '-', 15, 40), new("diaphragm", "kneePressure", '+', 150, 280), new("vacuum", "kneePressure", '+', 30, 80),
        new("secondDiaphragm", "kneePressure", '+', 120, 280), new("rod", "kneePressure", '-', 0, 60), new("boosterEfficiency", "kneePressure", '+', 0.7, 1), new("cutIn", "cutIn", '+', 20, 200),
        new("jumpIn", "jumpIn", '+', 100, 500), new("returnSpring", "deadLoss", '+', 50, 400), new("gain", "knee", '-', 2, 8), new("dutyAltitude", "kneePressure", '-', 0, 3500),
        new("vacuumAltitude", "kneePressure", '+', 0, 2000), new("hardPressure", "hardForce", '+', 1, 15), new("pedalForce", "boosterForce", '+', 30, 150),
    ],
    NoTrends =
    [
        new("largeBore", "fills the brakes; makes no pressure"), new("frontBore", "only of two cylinders on a bar"), new("rearBore", "only of two cylinders on a bar"), new("frontArm", "only of two cylinders on a bar"),
        new("rearArm", "only of two cylinders on a bar"), new("boosterPressure", "only of a hydraulic booster"), new("boosterPiston", "only of a hydraulic booster"),
    ],
    Examples =
    [
        new(Example(("vacuum", "70 kPa")), new Dictionary<string, double> { ["knee"] = 172.9, ["kneePressure"] = 6.413, ["assist"] = 2660 }, 0.0005,
            "0.0400 m2 at 70 kPa and 0.95, by hand: 2660 N, in 690 N, out 3350 N", Provenance.Derived),
        new(Example(("vacuum", "48 kPa")), new Dictionary<string, double> { ["knee"] = 120.6, ["kneePressure"] = 4.413 }, 0.0005, "The same at 48 kPa: in 481 N, out 2305 N", Provenance.Derived),
        new(Example(("vacuum", "70 kPa"), ("secondDiaphragm", "180 mm"), ("rod", "30 mm"), ("hardPressure", "10 MPa")), new Dictionary<string, double> { ["assist"] = 4258.2 }, 0.0005,
            "Two rings, 392.93 and 247.40 cm2, at 70 kPa and 0.95, by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "A brake that anybody changes needs a qualified person's look and whatever inspection the law of the place asks for; drive it first slowly, on closed ground, with the booster dead as well.",
        "Never pull the booster hose off to test on the road: the pedal goes hard at once.",
    ],
})
{
    private const double LeastVacuum = 54e3, MostEffort = 500; // Pa (16 inHg), N
    internal const string NoBooster = "none", Vacuum = "vacuum", Hydraulic = "hydraulic";

    public sealed record Inputs(
        [Input("pedal ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasurePedal.Ratio)] Ratio PedalRatio,
        [Input("efficiency of pedal and linkage", MoreThan = 0, Low = 0.3, High = 1, Default = 0.9, Measure = HowToMeasurePedal.Efficiency)] Ratio PedalEfficiency,
        [Input("efficiency of the master cylinder", MoreThan = 0, Low = 0.5, High = 1, Default = 0.97, Measure = HowToMeasurePedal.MasterEfficiency)] Ratio MasterEfficiency,
        [Input("kind of the master cylinder; one bore where nothing is said", OneOf = ["single", "tandem", "stepped", "twin"], Measure = HowToMeasurePedal.MasterKind)] string? MasterKind,
        [Input("bore of the master cylinder (the small one where it is stepped)", "mm", MoreThan = 0, Low = 10, High = 60, Measure = HowToMeasurePedal.MasterBore)] Length? MasterBore,
        [Input("large bore of a stepped master cylinder", "mm", MoreThan = 0, Measure = HowToMeasurePedal.MasterBore)] Length? LargeBore,
        [Input("bore of the front one of two cylinders", "mm", MoreThan = 0, Low = 10, High = 60, Measure = HowToMeasurePedal.TwinBore)] Length? FrontBore,
        [Input("bore of the rear one of two cylinders", "mm", MoreThan = 0, Low = 10, High = 60, Measure = HowToMeasurePedal.TwinBore)] Length? RearBore,
        [Input("bearing of the bar to the front circuit's push rod", "mm", MoreThan = 0, Measure = HowToMeasurePedal.BarArm)] Length? FrontArm,
        [Input("bearing of the bar to the rear circuit's push rod", "mm", MoreThan = 0, Measure = HowToMeasurePedal.BarArm)] Length? RearArm,
        [Input("kind of booster", OneOf = [NoBooster, Vacuum, Hydraulic], Measure = HowToMeasurePedal.BoosterKind)] string BoosterKind,
        [Input("effective diameter of the diaphragm", "mm", MoreThan = 0, Low = 100, High = 350, Measure = HowToMeasurePedal.Diaphragm)] Length? Diaphragm,
        [Input("effective diameter of the second diaphragm; none where nothing is said", "mm", AtLeast = 0, High = 350, Measure = HowToMeasurePedal.Diaphragm)] Length? SecondDiaphragm,
        [Input("tube through the diaphragm; left out where nothing is said", "mm", AtLeast = 0, High = 80, Measure = HowToMeasurePedal.BoosterRod)] Length? Rod,
        [Input("efficiency of the booster", MoreThan = 0, Low = 0.5, High = 1, Default = 0.95, Measure = HowToMeasurePedal.BoosterCurve)] Ratio BoosterEfficiency,
        [Input("cut-in of the booster at its push rod", "N", AtLeast = 0, High = 400, Default = 90, Measure = HowToMeasurePedal.BoosterCurve)] Force CutIn,
        [Input("output of the booster just after its jump-in", "N", AtLeast = 0, High = 1500, Default = 350, Measure = HowToMeasurePedal.BoosterCurve)] Force JumpIn,
        [Input("return spring of the booster", "N", AtLeast = 0, High = 600, Default = 200, Measure = HowToMeasurePedal.BoosterCurve)] Force ReturnSpring,
        [Input("gain of the booster between jump-in and run-out", MoreThan = 1, Low = 1.5, High = 12, Default = 5, Measure = HowToMeasurePedal.BoosterCurve)] Ratio Gain,
        [Input("vacuum at the booster hose at warm idle", "kPa", AtLeast = 0, High = 101, Measure = HowToMeasurePedal.Vacuum)] Pressure? Vacuum,
        [Input("altitude at which the vacuum was measured", "m", Low = -430, High = 5000, Default = 0, Measure = HowToMeasurePedal.Altitude)] Length VacuumAltitude,
        [Input("highest altitude it will be driven at", "m", Low = -430, High = 5000, Default = 0, Measure = HowToMeasurePedal.Altitude)] Length DutyAltitude,
        [Input("pressure that feeds a hydraulic booster", "MPa", AtLeast = 0, High = 25, Measure = HowToMeasurePedal.BoosterPressure)] Pressure? BoosterPressure,
        [Input("piston of a hydraulic booster", "mm", MoreThan = 0, Low = 10, High = 100, Measure = HowToMeasurePedal.BoosterPiston)] Length? BoosterPiston,
        [Input("high line pressure to look at; 1000 psi (6.9 MPa) in the lines unless said", "MPa", MoreThan = 0, Low = 1, High = 20, Default = 6.9, Measure = HowToMeasurePedal.HardPressure)] Pressure HardPressure,
        [Input("pedal force at which pressure is told", "N", AtLeast = 0, High = 2000, Default = 266.893, Measure = HowToMeasurePedal.Force)] Force PedalForce);

    public sealed record Result(
        [Output("pedal force at which the booster begins", "N")] Force? CutIn,
        [Output("line pressure just above it", "MPa")] Pressure? JumpIn,
        [Output("pedal force at which the booster runs out; 0 without one", "N")] Force? Knee,
        [Output("line pressure there", "MPa")] Pressure? KneePressure,
        [Output("line pressure at 100 lb of pedal by the leg alone", "MPa")] Pressure? PlainPressure,
        [Output("line pressure that the spring of a dead booster takes", "MPa")] Pressure? DeadLoss,
        [Output("what the booster adds at the piston at the pedal force", "N")] Force? BoosterForce,
        [Output("force on the master cylinder at the pedal force", "N")] Force? RodForce,
        [Output("efficiency from the pad to the fluid, linkage and seals")] Ratio? WholeEfficiency,
        [Output("one bore that would give the front circuit's pressure; unknown while the booster is", "mm")] Length? EffectiveBore,
        [Output("pressure of the rear circuit over that of the front")] Ratio? RearShare,
        [Output("the most that the booster adds", "N")] Force? Assist,
        [Output("vacuum left at the highest altitude", "kPa")] Pressure? VacuumThere,
        [Output("pedal force for that high line pressure", "N")] Force? HardForce,
        [Output("pedal force for it with the booster dead", "N")] Force? DeadForce);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double i = x.PedalRatio.DecimalFractions, eta = x.PedalEfficiency.DecimalFractions, seals = x.MasterEfficiency.DecimalFractions, hard = x.HardPressure.Pascals;
        var vacuum = VacuumOf(x, w);
        var master = MasterCylinder.Of(x.MasterKind, x.MasterBore?.Meters, x.LargeBore?.Meters, x.FrontBore?.Meters, x.RearBore?.Meters, x.FrontArm?.Meters, x.RearArm?.Meters);
        var whole = Ratio.FromDecimalFractions(eta * seals);
        Pressure? there = vacuum is { } v ? Pressure.FromPascals(v) : null;
        if (master is not { } m)
        {
            Unanswered(w, x.MasterKind == MasterCylinder.Pair ? $"bores and bar of the two master cylinders are missing ({HowToMeasurePedal.TwinBore}; {HowToMeasurePedal.BarArm})"
                : $"bore of the master cylinder is missing ({HowToMeasurePedal.MasterBore})");
            return new(null, null, null, null, null, null, null, null, whole, null, null, null, there, null, null);
        }
        double c = seals / m.Effective, bore = Math.Sqrt(4 * m.Effective / Math.PI); // Pa per N on the rod
        var assist = AssistOf(x, vacuum, w);
        var fitted = x.BoosterKind != NoBooster;
        var spring = fitted ? x.ReturnSpring.Newtons : 0;
        var dead = new PedalLine(i * eta * c, 0, 0, 0, 0, spring * c);
        w.Line("p100", "444.82 i eta eta_h / A", $"444.82 x {i} x {eta} x {seals} / {m.Effective * 1e6}", dead.PerNewton * PedalLine.ReferenceForce / 1e6, "MPa");
        if (m.Twin) w.Caution($"Two cylinders on a bar: the line pressure told is that of the front circuit; the rear circuit has {m.RearShare:0.00} of it.");
        if (fitted && assist is null)
        {
            // Without the bore nobody can take the leg alone for the whole: a reader's default for the booster's force is none.
            Unanswered(w, x is { Diaphragm: { } d, Rod: { } tube } && tube >= d ? "the tube is wider than the diaphragm: measure both again"
                : x.BoosterKind == Vacuum ? $"vacuum or diaphragm of the booster is missing ({HowToMeasurePedal.Vacuum}; {HowToMeasurePedal.Diaphragm})"
                : $"pressure or piston of the booster is missing ({HowToMeasurePedal.BoosterPressure}; {HowToMeasurePedal.BoosterPiston})");
            return new(null, null, null, null, Plain(dead), Pressure.FromPascals(dead.DeadLoss), null, null, whole, null, Ratio.FromDecimalFractions(m.RearShare), null, there, null,
                Force.FromNewtons(dead.DeadForce(hard)));
        }
        var line = fitted ? Boosted(new(x.CutIn.Newtons, x.JumpIn.Newtons, x.Gain.DecimalFractions, assist!.Value, spring), i * eta, c, w) : dead;
        Judge(x, w, line, hard);
        if (w.Shown) Draw(w, x, line, i * eta, c, assist ?? 0);
        var pedal = x.PedalForce.Newtons;
        return new(Force.FromNewtons(line.CutIn), Pressure.FromPascals(line.JumpIn), Force.FromNewtons(line.Knee), Pressure.FromPascals(line.KneePressure), Plain(line), Pressure.FromPascals(line.DeadLoss),
            Force.FromNewtons((line.Pressure(pedal) * m.Effective) - (pedal * i * eta * seals)), Force.FromNewtons(line.Pressure(pedal) / c), whole, Length.FromMeters(bore), Ratio.FromDecimalFractions(m.RearShare), Force.FromNewtons(assist ?? 0), there,
            Force.FromNewtons(line.Force(hard)), Force.FromNewtons(line.DeadForce(hard)));
    }

    /// <param name="lever">Newtons on the booster's rod for each newton of pedal.</param>
    /// <param name="c">Pa for each newton of its output.</param>
    internal static PedalLine Line(in Booster b, double lever, double c) =>
        new(lever * c, b.Start.Input / lever, b.Start.Output * c, b.Knee / lever, b.KneeOutput * c, b.ReturnSpring * c);

    private static PedalLine Boosted(in Booster b, double lever, double c, Worksheet w)
    {
        w.Line("in", "(assist - Fj + B Fc) / (B - 1)", $"({b.Assist} - {b.JumpIn} + {b.Gain} x {b.CutIn}) / ({b.Gain} - 1)", b.Knee, "N");
        var line = Line(b, lever, c);
        w.Line("F knee", "in / (i eta)", $"{b.Knee} / {lever}", line.Knee, "N");
        w.Line("p knee", "(in + assist) eta_h / A", $"({b.Knee} + {b.Assist}) x {c / 1e6}", line.KneePressure / 1e6, "MPa");
        return line;
    }

    /// <summary>Vacuum in Pa at the altitude of use; null where it is not known or cannot be.</summary>
    private static double? VacuumOf(Inputs x, Worksheet w)
    {
        if (x.BoosterKind != Vacuum)
        {
            w.Answer("vacuum", Verdict.Pass, "No vacuum booster: the engine's vacuum does not matter here.");
            return null;
        }
        if (x.Vacuum is not { } measured) return null;
        double air = Atmosphere.At(x.VacuumAltitude.Meters), left = Atmosphere.Vacuum(measured.Pascals, x.VacuumAltitude.Meters, x.DutyAltitude.Meters);
        if (measured.Pascals > air)
        {
            w.Answer("vacuum", Verdict.Fail, $"A vacuum of {measured.Kilopascals:0} kPa cannot be: the air at {x.VacuumAltitude.Feet:0} ft presses with {air / 1e3:0} kPa only. Read the gauge again.");
            return null;
        }
        w.Line("dp", "vacuum - air there + air here", $"{measured.Kilopascals} - {air / 1e3} + {Atmosphere.At(x.DutyAltitude.Meters) / 1e3}", left / 1e3, "kPa");
        w.AtLeast("vacuum", left / 1e3, LeastVacuum / 1e3, "kPa", left <= 0 ? $"No vacuum is left at {x.DutyAltitude.Feet:0} ft: the booster is dead there."
            : $"{left / 1e3:0} kPa ({left / 3386.389:0.#} inHg) of vacuum at {x.DutyAltitude.Feet:0} ft; boosters are built for 54 kPa (16 inHg) and more."
            + (left < LeastVacuum ? " A long cam or a worn engine wants a reservoir or a pump." : ""),
            "common practice, no source", beyond: Verdict.Caution);
        return left;
    }

    private static double? AssistOf(Inputs x, double? vacuum, Worksheet w)
    {
        var eta = x.BoosterEfficiency.DecimalFractions;
        var (dp, area) = x.BoosterKind switch
        {
            Vacuum when x.Diaphragm is { } d => (vacuum, Booster.Area(d.Meters, x.SecondDiaphragm?.Meters ?? 0, x.Rod?.Meters ?? 0)),
            Hydraulic when x.BoosterPiston is { } d => (x.BoosterPressure?.Pascals, MasterCylinder.AreaOf(d.Meters)),
            _ => ((double?)null, 0),
        };
        if (dp is not { } p || area <= 0) return null;
        w.Line("assist", "dp Ad eta_b", $"{p / 1e3} x {area * 1e4} x {eta} / 10", p * area * eta, "N");
        return p * area * eta;
    }

    private static Pressure Plain(in PedalLine line) => Pressure.FromPascals(line.PerNewton * PedalLine.ReferenceForce);

    private static void Unanswered(Worksheet w, string why)
    {
        w.Answer("run-out", Verdict.Unknown, $"Not known: {why}.");
        w.Answer("effort", Verdict.Unknown, $"Not known: {why}.");
    }

    private static void Judge(Inputs x, Worksheet w, in PedalLine line, double hard)
    {
        double force = line.Force(hard), dead = line.DeadForce(hard);
        if (x.BoosterKind == NoBooster) w.Answer("run-out", Verdict.Pass, $"No booster: the leg does it all, {hard / 1e6:0.#} MPa in the lines at {force:0} N of pedal.");
        else w.AtLeast("run-out", line.KneePressure / 1e6, hard / 1e6, "MPa",
            $"The booster runs out at {line.Knee:0} N of pedal and {line.KneePressure / 1e6:0.0} MPa; {hard / 1e6:0.0} MPa in the lines "
            + (line.KneePressure < hard ? $"take {force:0} N, and their last part is the leg's own." : $"take {force:0} N.") + $" Dead, that is {dead:0} N.", "common practice, no source", beyond: Verdict.Caution);
        w.AtMost("effort", force, MostEffort, "N", $"{force:0} N of pedal make {hard / 1e6:0.0} MPa in the lines; a leg can be counted on for 500 N.", "49 CFR 571.135 S7.5", beyond: Verdict.Caution);
    }

    private static void Draw(Worksheet w, Inputs x, in PedalLine line, double lever, double c, double assist)
    {
        var most = Math.Max(700, line.Knee * 1.5);
        if (line.Boosted)
        {
            w.Curve(Drawn("booster working", line, most, false));
            w.Curve(Drawn("two thirds of the assist", Line(new(x.CutIn.Newtons, x.JumpIn.Newtons, x.Gain.DecimalFractions, assist * 2 / 3, x.ReturnSpring.Newtons), lever, c), most, false));
        }
        w.Curve(Drawn(line.Boosted ? "booster dead" : "leg alone", line, most, true));
    }

    private static PlottedCurve Drawn(string name, PedalLine line, double most, bool dead)
    {
        double[] forces = dead ? [0, line.DeadLoss / line.PerNewton, most] : [0, line.CutIn, line.CutIn, line.Knee, most];
        double[] pressures = dead ? [.. forces.Select(line.DeadPressure)] : [0, 0, line.JumpIn, line.KneePressure, line.Pressure(most)];
        return new(name, "pedal force", "N", forces, "line pressure", "MPa", [.. pressures.Select(p => p / 1e6)]);
    }

    private static Dictionary<string, string> Example(params (string Input, string Value)[] more) => new(more.Select(m => KeyValuePair.Create(m.Input, m.Value)))
    {
        ["pedalRatio"] = "4.2", ["pedalEfficiency"] = "0.95", ["masterBore"] = "25.4 mm", ["boosterKind"] = Vacuum, ["diaphragm"] = "225.6758 mm",
    };
}
