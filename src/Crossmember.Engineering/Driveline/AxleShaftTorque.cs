using System.Globalization;
using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>The torque an axle shaft must carry, and the shear stress it makes.</summary>
/// <remarks>
/// Formula:  both shafts: lower of converter x T x gear x range x axle ratio x efficiency and mu m g re; open differential: half on each,
///           locked: up to all on one; tau = 16 T / (pi d^3)
/// Valid:    steady pull; solid round shaft at its thinnest place; static axle load. Shock can double it (common practice, no source).
/// Source:   statics; torsion of a round bar; efficiency 0.85: US Army TM 9-8000, par. 29-14
/// Example:  1182.5 kg, 0.7, 406.88 mm -> 3303 N m at both wheels, 1651 N m a shaft with an open differential
/// </remarks>
public sealed class AxleShaftTorque() : Calculation<AxleShaftTorque.Inputs, AxleShaftTorque.Result>(new()
{
    Id = "driveline.axle-shaft-torque",
    Version = 1,
    Title = "Axle shaft torque",
    Purpose = "What twists an axle shaft at worst, with an open differential and with a locked one, and whether shaft and joint stand it: what lockers really cost.",
    Formula = "both shafts = lower of (converter x peak torque x gear x range x axle ratio x efficiency) and (mu x axle load x g x rolling radius); "
        + "open: half on each; locked: up to all on one; shear stress = 16 T / (pi d^3)",
    Validity = "Steady pull, all of the engine's torque on this axle. Locked is the worst case: one wheel holds the whole axle load, the other hangs. The load "
        + "is that of the heaviest condition on level ground. Solid round shaft, diameter at the thinnest place, which is often the root of the "
        + "splines; notches are not counted. "
        + "Shock can double it (common practice, no source). A single joint turned to full lock sees about a fifth more than the shaft.",
    Sources =
    [
        "Statics, derived", "Shigley, Mechanical Engineering Design: torsion of round bars, from memory",
        "US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-14: efficiency 0.85 for an all-gear train",
    ],
    Checks =
    [
        new("shear", Sense.AtMost, "Does the axle shaft stand the torque?", "shaftDiameter", "shearStrength"),
        new("joint-rating", Sense.AtMost, "Is the joint of the axle shaft rated for it?", "jointRating"),
    ],
    Trends =
    [
        new("axleRatio", "stallTorque", '+', 2.5, 6), new("gearRatios", "stallTorque", '+', 1, 7), new("transferRatios", "stallTorque", '+', 1, 5),
        new("peakTorque", "stallTorque", '+', 50, 1000), new("converterRatio", "stallTorque", '+', 1, 2.5), new("efficiency", "stallTorque", '+', 0.7, 1),
        new("axleLoads", "gripTorque", '+', 300, 3000), new("rollingRadius", "gripTorque", '+', 12, 22), new("grip", "gripTorque", '+', 0.2, 1),
        new("shaftDiameter", "openShear", '-', 0.8, 2.5),
    ],
    NoTrends =
    [
        new("torqueCurve", "has many points; the stall torque is in proportion to the highest"),
        new("shearStrength", "only compared with the result"), new("jointRating", "only compared with the result"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["peakTorque"] = "330 N m", ["gearRatios"] = """{"1":"5.15","4":"1"}""",
                ["transferRatios"] = """{"high":"1","low":"2.28"}""", ["axleRatio"] = "4.11", ["axleLoads"] = """{"touring":"1182.5 kg"}""",
                ["rollingRadius"] = "406.88 mm", ["shaftDiameter"] = "32 mm",
            },
            new Dictionary<string, double>
            {
                ["stallTorque"] = 9984.2, ["gripTorque"] = 2436.0, ["openTorque"] = 1218.0, ["lockedTorque"] = 2436.0, ["openShear"] = 37.22,
            }, 0.0002,
            "330 x 5.15 x 2.28 x 0.85 x 4.11 = 13,537 N m; 0.7 x 1182.5 x 9.80665 x 0.40688 = 3302.8 N m; 16 x 1651.4 / (pi 0.032^3) = 256.7 MPa, by hand",
            Provenance.Derived),
    ],
    Cautions =
    [
        "A broken shaft of a semi-floating axle can let the wheel leave the vehicle; a broken front shaft can jam the steering: "
        + "stronger shafts, lockers and joints are for a qualified person to pass.",
        "The weakest part moves when one is made stronger: shaft, joint, ring gear, hub. Look at the next one before a locker is fitted.",
    ],
})
{
    public sealed record Inputs(
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio,
        [Input(HowToMeasurePull.TheTorqueCurve, "rpm", CurveUnit = "N m", Measure = HowToMeasurePull.TorqueCurve)] Curve? TorqueCurve,
        [Input("largest torque of the engine, used where no curve is known", "N m", MoreThan = 0, Low = 20, High = 3000, Measure = HowToMeasurePull.PeakTorque)]
        Torque? PeakTorque,
        [Input("gearbox ratios", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatios)] Members<Ratio>? GearRatios,
        [Input("transfer case ratios", MoreThan = 0, Low = 0.7, High = 6, Measure = HowToMeasure.TransferRatios)] Members<Ratio>? TransferRatios,
        [Input("torque ratio of the torque converter at stall; 1 for a clutch", AtLeast = 1, High = 3, Default = 1, Measure = HowToMeasureShafts.Converter)]
        Ratio ConverterRatio,
        [Input("share of the engine's torque that reaches the wheels", MoreThan = 0, Low = 0.6, High = 1, Default = 0.85, Measure = HowToMeasurePull.Efficiency)]
        Ratio Efficiency,
        [Input("load on the axle in each condition", "kg", MoreThan = 0, High = 5000, Measure = HowToMeasureShafts.AxleLoads)] Members<UnitsNet.Mass>? AxleLoads,
        [Input("rolling radius of the axle's tires", "in", MoreThan = 0, Low = 9, High = 30, Measure = HowToMeasurePull.RollingRadius)] Length? RollingRadius,
        [Input("grip of the tires, as a share of the load on them", MoreThan = 0, Low = 0.1, High = 1.1, Default = 0.7, Measure = HowToMeasurePull.Grip)] Ratio Grip,
        [Input("diameter of the axle shaft at its thinnest place", "in", MoreThan = 0, Low = 0.5, High = 4,
            Measure = "caliper the shaft where it is thinnest, at the root of the splines or beside a seal")] Length? ShaftDiameter,
        [Input("shear strength of the axle shaft", "ksi", MoreThan = 0, Measure = HowToMeasureShafts.ShearStrength)] Pressure? ShearStrength,
        [Input("rating of the joint in the axle shaft", "lbf ft", MoreThan = 0,
            Measure = "take the joint maker's rating for its series; of a shaft without a joint the shaft maker's")] Torque? JointRating);

    public sealed record Result(
        [Output("torque at both wheels together with the engine at its best in the lowest gearing", "lbf ft")] Torque? StallTorque,
        [Output("torque at both wheels together at which the tires let go", "lbf ft")] Torque? GripTorque,
        [Output("torque in one shaft with an open differential", "lbf ft")] Torque? OpenTorque,
        [Output("torque that one shaft can see with a locked differential", "lbf ft")] Torque? LockedTorque,
        [Output("shear stress with an open differential", "ksi")] Pressure? OpenShear,
        [Output("shear stress that a locked differential can make", "ksi")] Pressure? LockedShear);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var axle = x.AxleRatio.DecimalFractions;
        var transfer = TorqueLimits.AtStall(x.TorqueCurve, x.PeakTorque, x.GearRatios, x.TransferRatios, x.ConverterRatio, x.Efficiency, w); // N m
        if (transfer is { } Ts) w.Line("Ta", "Ts x axle ratio", $"{Ts} x {axle}", Ts * axle, "N m");
        var limits = new TorqueLimits(transfer * axle, TorqueLimits.OfGrip(x.Grip, x.AxleLoads, x.RollingRadius, w));
        double? locked = limits.Governing, open = locked / 2; // N m
        if (locked is { } T) w.Line("T1", "lower of the two / 2, open differential", $"{T} / 2", T / 2, "N m");
        double? lockedTau = null, openTau = null; // Pa
        if (x.ShaftDiameter is { } diameter && locked is { } torque)
        {
            var d = diameter.Meters;
            (lockedTau, openTau) = (RoundShaft.ShearStress(torque, d, 0), RoundShaft.ShearStress(torque / 2, d, 0));
            w.Line("tau", "16 T1 / (pi d^3)", $"16 x {torque / 2} / (pi x {d}^3)", openTau.Value / 1e6, "MPa");
        }
        Judge(w, x, limits, lockedTau);
        return new(Of(limits.Stall), Of(limits.Grip), Of(open), Of(locked), Stress(openTau), Stress(lockedTau));
    }

    private static void Judge(Worksheet w, Inputs x, TorqueLimits limits, double? lockedTau)
    {
        if (x.ShaftDiameter is not null && x.ShearStrength is { } strength)
            JudgeOne(w, limits, "shear", "The shaft sees", "it stands", Stress(lockedTau)?.KilopoundsForcePerSquareInch, strength.KilopoundsForcePerSquareInch,
                "ksi", "ksi", "the shaft maker's strength");
        if (x.JointRating is { } rating)
            JudgeOne(w, limits, "joint-rating", "The joint sees", "it is rated for", Of(limits.Governing)?.PoundForceFeet, rating.PoundForceFeet, "lbf ft", "lb-ft",
                "the joint maker's rating");
    }

    /// <summary>Whether there is a locker is not asked: between the two cases the answer is a caution that says so.</summary>
    private static void JudgeOne(
        Worksheet w, TorqueLimits limits, string check, string sees, string stands, double? locked, double limit, string unit, string told, string source)
    {
        if (locked is not { } most)
        {
            w.Answer(check, Verdict.Unknown, $"Not known: {limits.Lacking} is missing.");
            return;
        }
        var open = most / 2;
        var says = $"{sees} {Told(open)} {told} with an open differential and up to {Told(most)} {told} with a locked one, {limits.By}; {stands} {Told(limit)} {told}.";
        var verdict = open <= limit ? Verdict.Caution : limits.Settled ? Verdict.Fail : Verdict.Unknown;
        if (most > limit) says += open <= limit ? " A locker or spool can break it." : limits.Settled ? "" : $" It may be less: {limits.Lacking} is missing.";
        w.AtMost(check, most, limit, unit, says, source, beyond: verdict);
    }

    private static string Told(double x) => x.ToString(x < 200 ? "0.#" : "0", CultureInfo.InvariantCulture);

    private static Torque? Of(double? newtonMeters) => newtonMeters is { } t ? Torque.FromNewtonMeters(t) : null;

    private static Pressure? Stress(double? pascals) => pascals is { } p ? Pressure.FromPascals(p) : null;
}
