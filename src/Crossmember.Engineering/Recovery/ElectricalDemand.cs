using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>What a pull takes out of the battery: current, charge and minutes.</summary>
/// <remarks>
/// Formula:  I off the winch's current curve at the line load brought to the first layer, the larger of start and full drum; battery minutes = 60 share C / (I - Ia); pull = rope / speed; charge = I t
/// Valid:    steady pull; the curve is the maker's, at its voltage
/// Source:   conservation of charge; share of the capacity: common practice, no source
/// Example:  20 kN on a curve of 0 kN 80 A, 40 kN 400 A -> 240 A; 70 A h at 0.4, 40 A of charging -> 8.4 min
/// </remarks>
public sealed class ElectricalDemand() : Calculation<ElectricalDemand.Inputs, ElectricalDemand.Result>(new()
{
    Id = "recovery.electrical-demand",
    Version = 1,
    Title = "Current of a winch pull",
    Purpose = "What the winch draws in the pull it is bought for, and whether battery and alternator outlast it: a pull that ends with a flat battery ends halfway.",
    Formula = "I = current curve at the line load brought to the first layer, the larger of start and full drum; battery minutes = 60 x share x C / (I - Ia); pull minutes = rope wound / rope speed; charge = I t",
    Validity = "Steady pull at the heaviest condition. Current on upper layers follows the torque, so the load is brought to the first layer: it grows as the drum fills, and the full drum counts for the whole pull. At winch currents a battery gives far less than its "
        + "rated capacity, which the share stands for; cold takes more. Motors are built for short pulls: heat ends many before the battery does.",
    Sources = ["Conservation of charge, derived", "Share of the rated capacity at winch currents: common practice, no source", "SAE J706: vehicle winches are rated for intermittent duty, from memory"],
    Checks = [new("battery", Sense.AtLeast, "Do battery and alternator outlast the pull?", "currentCurve", "batteryCapacity", "chargingCurrent", "speedCurve")],
    Trends =
    [
        new("lineLoads", "current", '+', 2, 38), new("batteryCapacity", "batteryMinutes", '+', 40, 200), new("batteryShare", "batteryMinutes", '+', 0.2, 0.6),
        new("chargingCurrent", "batteryMinutes", '+', 0, 150), new("ropeOut", "pullMinutes", '+', 5, 50),
    ],
    NoTrends = [new("currentCurve", "has many points"), new("speedCurve", "has many points"), new("fullDrumLoads", "counts only where it is the larger")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["lineLoads"] = """{"touring":"20 kN"}""", ["ropeOut"] = """{"touring":"20 m"}""", ["currentCurve"] = """[["0 kN","80 A"],["40 kN","400 A"]]""",
                ["speedCurve"] = """[["0 kN","10 m/min"],["40 kN","2 m/min"]]""", ["batteryCapacity"] = "70 A h", ["chargingCurrent"] = "40 A", ["batteryShare"] = "0.4",
            },
            new Dictionary<string, double> { ["current"] = 240, ["batteryMinutes"] = 8.4, ["pullMinutes"] = 3.3333, ["charge"] = 13.333 }, 0.0001,
            "Halfway on both lines: 240 A, 6 m/min; 60 x 28 / 200 and 240 x 20 / 6 / 60 by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Winch cables carry more than any fuse of a harness: shortest run, both cables full size, an isolator within reach, insulated where they pass metal, routed clear of exhaust and steering.",
        "Engine running at a fast idle while winching; let motor and cables cool; batteries under heavy draw give off gas that burns.",
        RecoveryCautions.StandClear,
    ],
})
{
    private const string Electric = "electric", Estimate = "share of ground and battery: common practice and memory";

    public sealed record Inputs(
        [Input("line loads in each condition, brought to the first layer", "kN", MoreThan = 0, High = 300, Measure = "estimate the pull and share it out over the parts of line")]
        Members<Force> LineLoads,
        [Input("the same on the full drum, near the end of the pull", "kN", MoreThan = 0, High = 600, Measure = "comes from the rigging: line load times the radius of the last layer over the first")]
        Members<Force>? FullDrumLoads,
        [Input("rope to be wound in each condition", "m", MoreThan = 0, High = 300, Measure = HowToMeasureRecovery.Distance)] Members<Length>? RopeOut,
        [Input("what drives it; electric where nothing is said", OneOf = [Electric, "hydraulic", "hand", "power take-off"])] string? Drive,
        [Input("current over line pull on the first layer", "kN", CurveUnit = "A", Measure = "take the maker's table of pull and amps; or clamp the cable on pulls through a scale")] Curve? CurrentCurve,
        [Input("rope speed over line pull on the first layer", "kN", CurveUnit = "m/min", Measure = "take the maker's table of pull and line speed")] Curve? SpeedCurve,
        [Input("rated capacity of the battery that feeds it", "A h", MoreThan = 0, Measure = "read the battery's label")] ElectricCharge? BatteryCapacity,
        [Input("what the alternator can spare for it at fast idle", "A", AtLeast = 0, Measure = "clamp the alternator cable at fast idle with the winch pulling and the usual loads on")] ElectricCurrent? ChargingCurrent,
        [Input("share of the rated capacity that comes out at such currents", MoreThan = 0, Low = 0.1, High = 0.9, Default = 0.4, Measure = "take 0.4 of a sound lead-acid battery, less in the cold")]
        Ratio BatteryShare);

    public sealed record Result(
        [Output("current of the pull, at its most", "A")] ElectricCurrent? Current,
        [Output("how long the battery lasts at it; none where the alternator keeps up", "min")] Duration? BatteryMinutes,
        [Output("how long the pull lasts", "min")] Duration? PullMinutes,
        [Output("charge it takes", "A h")] ElectricCharge? Charge,
        [Output("and so long it takes to charge that again with the charging current", "min")] Duration? RechargeMinutes);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var F = x.LineLoads.Items.Max(m => m.Value.Newtons); // N
        w.Line("F", "heaviest line load, on the first layer", $"{F}", F, "N");
        if (x.Drive is not null and not Electric)
        {
            w.Answer("battery", Verdict.Pass, $"Driven by {(x.Drive == "hand" ? "hand" : "other means than a motor")}: it takes nothing out of the battery.");
            return new(ElectricCurrent.Zero, null, null, null, null);
        }
        if (x.CurrentCurve is not { } curve) return new(null, null, null, null, null);
        var (least, most) = (curve.Points[0].X, curve.Points[^1].X); // N
        if (F > most)
        {
            w.Answer("battery", Verdict.Caution, $"The pull asks {F / 1000:0.0} kN of it, and its table of currents ends at {most / 1000:0.0} kN: it would stall. Rig another block.", F / 1000, "kN", Estimate);
            return new(null, null, null, null, null);
        }
        // Below its first point the curve is not known; what it draws there is no more.
        var start = curve.At(Math.Max(F, least))!.Value; // A
        double end = Math.Max(F, x.FullDrumLoads?.Items.Max(m => m.Value.Newtons) ?? F), last = Math.Min(end, most); // N
        var I = Math.Max(start, curve.At(Math.Max(last, least))!.Value); // A
        if (end > F) w.Line("F full drum", "heaviest line load on the full drum, on the first layer", $"{end}", end, "N");
        var speed = x.SpeedCurve is { } s && last <= s.Points[^1].X ? s.At(Math.Max(last, s.Points[0].X)) : null; // m/s
        double? seconds = speed > 0 ? x.RopeOut?.Items.Max(m => m.Value.Meters) / speed : null;
        w.Line("I", "current curve at F, the larger of start and full drum", $"at {F} N and {last} N", I, "A");
        if (seconds is { } t) w.Line("pull", "rope / speed", $"{x.RopeOut!.Items.Max(m => m.Value.Meters)} / {speed!.Value}", t, "s");
        double? charge = I >= 0 ? I * seconds : null, spare = x.ChargingCurrent?.Amperes; // A s, A
        var short_ = I - spare; // A
        double? lasts = short_ > 0 ? x.BatteryCapacity?.Coulombs * x.BatteryShare.DecimalFractions / short_ : null; // s
        if (lasts is { } c) w.Line("battery", "share x C / (I - Ia)", $"{x.BatteryShare.DecimalFractions} x {x.BatteryCapacity!.Value.Coulombs} / {short_!.Value}", c, "s");
        if (end > most)
            w.Answer("battery", Verdict.Caution, $"It draws {start:0} A at the start; as the drum fills the pull asks {end / 1000:0.0} kN of it, and its table of currents ends at {most / 1000:0.0} kN and {I:0} A: "
                + "it would stall before the end. Rig another block.", end / 1000, "kN", Estimate);
        else Judge(w, I, I > start ? $", {start:0} A at the start and more as the drum fills," : "", seconds, lasts, spare);
        return new(ElectricCurrent.FromAmperes(I), Of(lasts), Of(seconds), charge is { } q ? ElectricCharge.FromCoulombs(q) : null, spare > 0 ? Of(charge / spare) : null);
    }

    private static void Judge(Worksheet w, double I, string start, double? pull, double? lasts, double? spare)
    {
        if (pull is not { } seconds) return;
        if (spare >= I) w.Answer("battery", Verdict.Pass, $"It draws {I:0} A{start} for about {seconds / 60:0.0} min, and the alternator keeps up.");
        else if (lasts is { } battery)
            w.AtLeast("battery", battery / 60, seconds / 60, "min", $"It draws {I:0} A{start} for about {seconds / 60:0.0} min; the battery lasts {battery / 60:0.0} min"
                + (battery < seconds ? ": pull in stages and let it charge, or rig another block." : battery < 2 * seconds ? ": no second try without charging." : "."),
                "twice the pull: " + Estimate, watch: 2 * seconds / 60, beyond: Verdict.Caution);
    }

    private static Duration? Of(double? seconds) => seconds is { } s ? Duration.FromSeconds(s) : null;
}
