using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>Flow, pressure and power a powered steering box asks of its pump.</summary>
/// <remarks>
/// Formula:  Q = A s n + leak; p = 2 pi Tb / (i A s) + back pressure, Tb = T pitman / (arm eta); idle V n drive eta_v, at most the limiter
/// Valid:    integral box with one piston on the worm: A piston area, s piston travel in one turn of the steering wheel
/// Source:   balance of volume and of work, docs/derivations/steering-effort.md
/// Example:  3 in bore, 15 mm a turn, 75 rpm -> 5.13 + 1 L/min
/// </remarks>
public sealed class PumpDemand() : Calculation<PumpDemand.Inputs, PumpDemand.Result>(new()
{
    Id = "steering.pump-demand",
    Version = 1,
    Title = "Steering pump: flow, pressure and power",
    Purpose = "Whether a pump feeds a box from another vehicle: too little flow at idle makes the wheel go heavy in a fast turn, too little pressure leaves it heavy standing.",
    Formula = "Q = A s n + leak; p = 2 pi Tb / (i A s) + back pressure with Tb = T x pitman / (arm x efficiency); pump at idle V n drive eta_v, at most the flow limiter",
    Validity = "Integral box with its piston on the worm. The bore counts whole: worm and rack in it take some 5 % off the area. The driver's own pull is not counted, nor "
        + "the drop in long hoses. Rim speed 75 rpm (1-1/4 turns a second), leak, back pressure and pump efficiencies are assumed unless given: common practice, no source.",
    Sources = ["Balance of volume and of work, derived (docs/derivations/steering-effort.md)", "Rim speed, leak, back pressure, pump efficiency: common practice, no source"],
    Checks =
    [
        new("flow", Sense.AtLeast, "Does the pump give enough at idle for a quick turn?", "pistonBore", "pistonLead", "displacement", "idleSpeed"),
        new("pressure", Sense.AtMost, "Does the relief pressure turn the standing wheels?", "kingpinTorques", "pitmanLength", "armLength", "boxRatio", "pistonBore", "pistonLead", "reliefPressure"),
    ],
    Trends =
    [
        new("pistonBore", "flowNeeded", '+', 1.5, 4), new("pistonLead", "flowNeeded", '+', 8, 25), new("rimSpeed", "flowNeeded", '+', 30, 120), new("leak", "flowNeeded", '+', 0.2, 3),
        new("kingpinTorques", "pressureNeeded", '+', 100, 2000), new("pitmanLength", "pressureNeeded", '+', 4, 10), new("armLength", "pressureNeeded", '-', 4, 10),
        new("boxRatio", "pressureNeeded", '-', 12, 25), new("linkageEfficiency", "pressureNeeded", '-', 0.6, 1), new("backPressure", "pressureNeeded", '+', 0.1, 1),
        new("displacement", "flowAtIdle", '+', 5, 12), new("driveRatio", "flowAtIdle", '+', 0.7, 1.3), new("idleSpeed", "flowAtIdle", '+', 400, 800), new("volumetricEfficiency", "flowAtIdle", '+', 0.7, 1),
    ],
    NoTrends =
    [
        new("assistFactor", "only says whether there is a pump"), new("flowLimit", "cuts the flow only where the pump gives more"),
        new("reliefPressure", "compared with the pressure needed, and takes its place in the power where it is lower"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["assistFactor"] = "5", ["kingpinTorques"] = """{"touring":"650 N m"}""", ["pitmanLength"] = "6 in", ["armLength"] = "7 in", ["boxRatio"] = "16", ["pistonBore"] = "3 in",
                ["pistonLead"] = "15 mm", ["displacement"] = "16 cm3", ["idleSpeed"] = "700 rpm", ["reliefPressure"] = "8 MPa",
            },
            new Dictionary<string, double> { ["flowNeeded"] = 6.1305, ["flowAtIdle"] = 10.08, ["pressureNeeded"] = 3.8543, ["power"] = 0.8094 }, 0.0005,
            "A = 4560.4 mm2; 4560.4 x 15 x 75 = 5.1304 L/min + 1; 650 x 6 / 7 / 0.9 = 619.05 N m; 2 pi x 619.05 / (16 x 6.8406e-5) = 3.5538 MPa + 0.3; by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Steering hoses burst at their ends: use hose and fittings marked for the relief pressure, keep them off the exhaust, and never feel for a leak by hand.",
        "Set the relief no higher than the box's maker allows. Holding the wheel against the stop runs the pump on its relief and boils the fluid.",
        SteeringRatio.BoxMounting,
    ],
})
{
    private const double PumpEfficiency = 0.8; // of the pump's shaft power, common practice, no source

    public sealed record Inputs(
        [Input("how many times the assist multiplies the hand's pull; 1 for manual steering", AtLeast = 1, High = 20, Measure = HowToMeasureSteering.Assist)] Ratio AssistFactor,
        [Input("torque to turn the standing front wheels, in each condition", "N m", MoreThan = 0, High = 5000, Measure = "comes from loads and tire pressure")] Members<Torque>? KingpinTorques,
        [Input("length of the pitman arm", "in", MoreThan = 0, Low = 3, High = 14, Measure = HowToMeasureSteering.PitmanLength)] Length? PitmanLength,
        [Input("length of the steering arm", "in", MoreThan = 0, Low = 3, High = 14, Measure = HowToMeasureSteering.ArmLength)] Length? ArmLength,
        [Input("ratio of the steering box", MoreThan = 0, Low = 8, High = 40, Measure = HowToMeasureSteering.BoxRatio)] Ratio? BoxRatio,
        [Input("bore of the box's piston", "in", MoreThan = 0, Low = 1, High = 6, Measure = "caliper the bore when the box is apart, or take it from the box's maker")] Length? PistonBore,
        [Input("travel of the piston in one turn of the steering wheel", "mm", MoreThan = 0, Low = 5, High = 40, Measure = "turn the worm once with the box apart and measure, or ask the box's maker")]
        Length? PistonLead,
        [Input("speed of the steering wheel in a quick turn", "rpm", MoreThan = 0, Low = 20, High = 150, Default = 75, Measure = "take 75 rpm; time one quick turn to do better")] RotationalSpeed RimSpeed,
        [Input("leak of the box", "L/min", AtLeast = 0, High = 5, Default = 1, Measure = "take 1 L/min for a sound box; a bench test tells")] VolumeFlow Leak,
        [Input("pressure lost in valve and hoses", "MPa", AtLeast = 0, High = 2, Default = 0.3, Measure = "read a gauge in the pressure line, engine idling, wheels straight")] Pressure BackPressure,
        [Input("share of the box's torque that reaches the wheels", MoreThan = 0, Low = 0.5, High = 1, Default = 0.9, Measure = "take 0.9 with greased joints and kingpins")] Ratio LinkageEfficiency,
        [Input("displacement of the pump in one turn", "cm3", MoreThan = 0, Low = 2, High = 60, Measure = "ask the pump's maker by its casting number")] Volume? Displacement,
        [Input("turns of the pump for one of the engine", MoreThan = 0, Low = 0.5, High = 3, Default = 1, Measure = "divide the diameters of the pulleys, crankshaft over pump")] Ratio DriveRatio,
        [Input("idle speed of the engine", "rpm", MoreThan = 0, High = 1500, Measure = "read a tachometer on the warm engine")] RotationalSpeed? IdleSpeed,
        [Input("share of its displacement that the pump gives", MoreThan = 0, Low = 0.5, High = 1, Default = 0.9, Measure = "take 0.9 for a sound pump, 0.75 for a tired one")] Ratio VolumetricEfficiency,
        [Input("flow at which the pump's limiter opens", "L/min", MoreThan = 0, High = 60, Measure = "ask the pump's maker; 8 to 12 L/min is usual")] VolumeFlow? FlowLimit,
        [Input("relief pressure of the pump", "MPa", MoreThan = 0, High = 25, Measure = "read a gauge with a valve in the pressure line, closed for a moment only")] Pressure? ReliefPressure);

    public sealed record Result(
        [Output("flow a quick turn asks for", "L/min")] VolumeFlow? FlowNeeded,
        [Output("flow the pump gives at idle", "L/min")] VolumeFlow? FlowAtIdle,
        [Output("pressure that turns the standing wheels in the heaviest condition", "MPa")] Pressure? PressureNeeded,
        [Output("power the pump takes then, at idle", "kW")] Power? Power);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        if (x.AssistFactor.DecimalFractions <= 1)
        {
            foreach (var check in (string[])["flow", "pressure"]) w.Answer(check, Verdict.Pass, "The steering is manual: there is no pump to judge.");
            w.Line("a", "assist factor", $"manual steering", 1, "1");
            return new(null, null, null, null);
        }
        double? volume = x is { PistonBore: { } d, PistonLead: { } s } ? Math.PI / 4 * d.Meters * d.Meters * s.Meters : null; // m3 a turn
        if (volume is { } v) w.Line("A s", "pi / 4 d^2 s", $"pi / 4 x {x.PistonBore!.Value.Millimeters}^2 x {x.PistonLead!.Value.Millimeters}", v * 1e6, "cm3");
        double? needed = Flow(x, volume, w), idle = Idle(x, w), pressure = Needed(x, volume, w), power = null;
        if (pressure is { } p && idle is { } flow)
        {
            power = Math.Min(p, x.ReliefPressure?.Pascals ?? p) * flow / PumpEfficiency;
            w.Line("P", "p Q / 0.8", $"{p / 1e6} MPa x {flow * 60e3} L/min / {PumpEfficiency}", power.Value / 1000, "kW");
        }
        return new(Of(needed), Of(idle), pressure is { } q ? Pressure.FromPascals(q) : null, power is { } P ? UnitsNet.Power.FromWatts(P) : null);
    }

    /// <summary>m3/s that a quick turn asks for, judged against the pump at idle.</summary>
    private static double? Flow(Inputs x, double? volume, Worksheet w)
    {
        if (volume is not { } v) return null;
        var needed = (v * x.RimSpeed.RevolutionsPerMinute / 60) + x.Leak.CubicMetersPerSecond;
        w.Line("Q", "A s n + leak", $"{v * 1e6} cm3 x {x.RimSpeed.RevolutionsPerMinute} rpm + {x.Leak.LitersPerMinute}", needed * 60e3, "L/min");
        if (Pumped(x) is not { } idle) return needed;
        double asked = needed * 60e3, gives = idle * 60e3; // L/min
        w.AtLeast("flow", gives, asked, "L/min", gives >= asked
            ? $"At idle the pump gives {gives:0.0} L/min; a turn at {x.RimSpeed.RevolutionsPerMinute:0} rpm of the wheel takes {asked:0.0} L/min."
            : $"At idle the pump gives {gives:0.0} L/min of the {asked:0.0} L/min that a turn at {x.RimSpeed.RevolutionsPerMinute:0} rpm of the wheel takes: the wheel goes heavy in a quick turn.",
            "the pump's own figures; rim speed and leak are common practice", beyond: Verdict.Caution);
        return needed;
    }

    private static double? Idle(Inputs x, Worksheet w)
    {
        if (Pumped(x) is not { } idle) return null;
        w.Line("Qi", "V n drive eta, at most the limiter", $"{x.Displacement!.Value.CubicCentimeters} x {x.IdleSpeed!.Value.RevolutionsPerMinute} x {x.DriveRatio.DecimalFractions} x "
            + $"{x.VolumetricEfficiency.DecimalFractions}", idle * 60e3, "L/min");
        return idle;
    }

    /// <summary>m3/s at idle, after the limiter.</summary>
    private static double? Pumped(Inputs x)
    {
        if (x is not { Displacement: { } V, IdleSpeed: { } n }) return null;
        var given = V.CubicMeters * n.RevolutionsPerMinute / 60 * x.DriveRatio.DecimalFractions * x.VolumetricEfficiency.DecimalFractions;
        return Math.Min(given, x.FlowLimit?.CubicMetersPerSecond ?? given);
    }

    /// <summary>Pa that turn the standing wheels: what the piston does in a turn of the wheel is what the pitman shaft does in it.</summary>
    private static double? Needed(Inputs x, double? volume, Worksheet w)
    {
        if (volume is not { } v || x is not { KingpinTorques: { } torques, PitmanLength: { } pitman, ArmLength: { } arm, BoxRatio: { } box }) return null;
        var T = torques.Items.Max(t => t.Value.NewtonMeters);
        var Tb = T * pitman.Meters / (arm.Meters * x.LinkageEfficiency.DecimalFractions); // N m
        w.Line("Tb", "T pitman / (arm eta)", $"{T} x {pitman.Millimeters} / ({arm.Millimeters} x {x.LinkageEfficiency.DecimalFractions})", Tb, "N m");
        double net = 2 * Math.PI * Tb / (box.DecimalFractions * v), p = net + x.BackPressure.Pascals; // Pa
        w.Line("p", "2 pi Tb / (i A s) + back pressure", $"2 pi x {Tb} / ({box.DecimalFractions} x {v * 1e6} cm3) + {x.BackPressure.Megapascals}", p / 1e6, "MPa");
        if (x.ReliefPressure is { } relief)
            w.AtMost("pressure", p / 1e6, relief.Megapascals, "MPa", p <= relief.Pascals
                ? $"Turning the standing wheels takes {p / 1e6:0.0} MPa; the relief opens at {relief.Megapascals:0.0} MPa."
                : $"Turning the standing wheels takes {p / 1e6:0.0} MPa, but the relief opens at {relief.Megapascals:0.0} MPa: the rest is left to the driver's arms.",
                "the pump's relief pressure; the torque is an estimate", beyond: Verdict.Caution);
        return p;
    }

    private static VolumeFlow? Of(double? flow) => flow is { } q ? VolumeFlow.FromCubicMetersPerSecond(q) : null;
}
