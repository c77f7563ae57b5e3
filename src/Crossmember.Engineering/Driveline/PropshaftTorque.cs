using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>The torque a propeller shaft and its joints must carry.</summary>
/// <remarks>
/// Formula:  stall = converter x T x gear x range x efficiency; grip = mu m g re / axle ratio; the lower governs
/// Valid:    steady pull; static axle load on level ground; no loss in the axle. Shock can double it (common practice, no source).
/// Source:   statics; efficiency 0.85: US Army TM 9-8000, par. 29-14
/// Example:  330 N m, 5.15, 2.28, 0.85 -> 3294 N m; 55 % of 2150 kg, 0.7, 406.88 mm, 4.11 -> 804 N m
/// </remarks>
public sealed class PropshaftTorque() : Calculation<PropshaftTorque.Inputs, PropshaftTorque.Result>(new()
{
    Id = "driveline.propshaft-torque",
    Version = 1,
    Title = "Propeller shaft torque",
    Purpose = "What twists a propeller shaft at worst, and whether its joints are rated for it: deeper gearing, more engine, larger tires and more weight raise it.",
    Formula = "stall = converter x peak torque x lowest gear x lowest range x efficiency; grip = mu x axle load x g x rolling radius / axle ratio; "
        + "the lower one governs",
    Validity = "Steady pull, all of the engine's torque on this one shaft (transfer case locked, other axle without grip). The load is that of the heaviest "
        + "condition on level ground: on a steep climb the rear axle takes more, braking downhill the front. The efficiency is that of the whole train, so the "
        + "stall case may be some 5 % more. A dropped clutch, or a spinning wheel that catches, can double it (common practice, no source).",
    Sources = ["Statics, derived", "US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-14: efficiency 0.85 for an all-gear train"],
    Checks = [new("joint-rating", Sense.AtMost, "Are the joints of the propeller shaft rated for it?", "jointRating")],
    Trends =
    [
        new("axleRatio", "gripTorque", '-', 2.5, 6), new("gearRatios", "stallTorque", '+', 1, 7), new("transferRatios", "stallTorque", '+', 1, 5),
        new("peakTorque", "stallTorque", '+', 50, 1000), new("converterRatio", "stallTorque", '+', 1, 2.5), new("efficiency", "stallTorque", '+', 0.7, 1),
        new("axleLoads", "gripTorque", '+', 300, 3000), new("rollingRadius", "gripTorque", '+', 12, 22), new("grip", "gripTorque", '+', 0.2, 1),
    ],
    NoTrends =
    [
        new("torqueCurve", "has many points; the stall torque is in proportion to the highest"),
        new("jointRating", "only compared with the result"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["peakTorque"] = "330 N m", ["gearRatios"] = """{"1":"5.15","4":"1"}""",
                ["transferRatios"] = """{"high":"1","low":"2.28"}""", ["axleRatio"] = "4.11", ["axleLoads"] = """{"touring":"1182.5 kg"}""",
                ["rollingRadius"] = "406.88 mm",
            },
            new Dictionary<string, double> { ["stallTorque"] = 2429.3, ["gripTorque"] = 592.7, ["torque"] = 592.7 }, 0.0001,
            "330 x 5.15 x 2.28 x 0.85 = 3293.6 N m; 0.7 x 55 % of 2150 kg x 9.80665 x 0.40688 / 4.11 = 803.61 N m, by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "A propeller shaft that breaks at its front end can dig into the ground or come through the floor: guard it with a loop, have a driveline shop inspect it.",
        "On a lifted vehicle look at both ends of travel: at full droop the joints must not bind nor the slip joint run out; at full bump it must not bottom.",
        "A parking brake on the transfer case holds through this shaft: with the shaft out the vehicle rolls. Chock it.",
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
        [Input("rating of the propeller shaft's joints", "lbf ft", MoreThan = 0,
            Measure = "read the joint's series off its caps and cross, and take the joint maker's peak rating for it")] Torque? JointRating);

    public sealed record Result(
        [Output("torque with the engine at its best in the lowest gearing; unknown without engine and ratios", "lbf ft")] Torque? StallTorque,
        [Output("torque at which the axle's tires let go; unknown without load and tire", "lbf ft")] Torque? GripTorque,
        [Output("torque the shaft must carry: the lower one", "lbf ft")] Torque? Torque);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var axle = x.AxleRatio.DecimalFractions;
        var stall = TorqueLimits.AtStall(x.TorqueCurve, x.PeakTorque, x.GearRatios, x.TransferRatios, x.ConverterRatio, x.Efficiency, w); // N m
        var wheels = TorqueLimits.OfGrip(x.Grip, x.AxleLoads, x.RollingRadius, w); // N m
        if (wheels is { } Tg) w.Line("Tp", "Tg / axle ratio", $"{Tg} / {axle}", Tg / axle, "N m");
        var limits = new TorqueLimits(stall, wheels / axle);
        if (x.JointRating is { } rating) Judge(w, limits, rating);
        return new(Of(limits.Stall), Of(limits.Grip), Of(limits.Governing));
    }

    private static void Judge(Worksheet w, TorqueLimits limits, Torque rating)
    {
        if (Of(limits.Governing) is not { } torque)
        {
            w.Answer("joint-rating", Verdict.Unknown, $"Not known: {limits.Lacking} is missing.");
            return;
        }
        double T = torque.PoundForceFeet, rated = rating.PoundForceFeet; // lbf ft
        var says = $"The joints see up to {T:0} lb-ft, {limits.By}; they are rated for {rated:0} lb-ft.";
        w.AtMost("joint-rating", T, rated, "lbf ft", limits.Settled || T <= rated ? says : $"{says} It may be less: {limits.Lacking} is missing.",
            "the joint maker's rating", beyond: limits.Settled ? Verdict.Fail : Verdict.Unknown);
    }

    private static Torque? Of(double? newtonMeters) => newtonMeters is { } t ? UnitsNet.Torque.FromNewtonMeters(t) : null;
}
