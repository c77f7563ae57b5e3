using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>How far the pedal goes: clearances, hoses, fluid, play; what is left over the floor, with both circuits and with one.</summary>
/// <remarks>
/// Formula:  rod = (Vf + Vr) / A + take-up; V = take-up + (give + hoses + fluid / K) p; pedal = i rod + free play
/// Valid:    no air in the fluid, warm adjusted brakes; the rear valve left out
/// Source:   geometry, docs/derivations/brake-pedal.md; hoses 49 CFR 571.106, from memory; reserve 49 CFR 570.55
/// Example:  5780.6 and 3073.3 mm3 on 25.4 mm with 3.0 mm: rod 20.47 mm, pedal 85.99 mm on 4.2
/// </remarks>
public sealed class PedalTravel() : Calculation<PedalTravel.Inputs, PedalTravel.Result>(new()
{
    Id = "brakes.pedal-travel",
    Version = 1,
    Title = "Pedal travel and reserve",
    Purpose = "Where the pedal stands with 1000 psi in the lines, what is left over the floor, whether the second circuit still has way when the first is lost, and what another bore would trade.",
    Formula = "rod = V / A + take-up; V = clearances + (give + hose + fluid / K) p; pedal = i rod + free play",
    Validity = "No air, adjusted brakes, warm. Hoses as the standard allows at most, straight over pressure (rough); K of clean glycol fluid, far lower with air in it. A rear valve takes less fluid than told here. "
        + "Where hose or fluid was not measured 0.45 m of 1/8 in hose and 250 cm3 in all stand in. Diagonal circuits count half of each axle. Above a third off is a sign of air.",
    Sources =
    [
        "Geometry, derived", "49 CFR 570.55, pedal reserve, written for vehicles over 10,000 lb: a caution at most", "49 CFR 571.106 table I, swell of brake hoses, from memory", "Stiffness of glycol fluid 1.7 to 2.0 GPa, from memory",
    ],
    Checks =
    [
        new("floor", Sense.AtMost, "Is the pedal off the floor with 1000 psi in the lines?", "masterBore", "floorTravel"),
        new("reserve", Sense.AtMost, "Is a fifth of the pedal's way left at 50 lb?", "masterBore", "floorTravel", "kneePressure", "plainPressure"),
        new("stroke", Sense.AtMost, "Is the master cylinder's stroke long enough?", "masterBore", "masterStroke"),
        new("failed-front", null, "Does the rear still brake when the front circuit is lost?", "masterBore", "floorTravel", "frontStroke", "rearStroke"),
        new("failed-rear", null, "Does the front still brake when the rear circuit is lost?", "masterBore", "floorTravel", "rearStroke", "frontStroke"),
        new("free-play", Sense.AtLeast, "Does the push rod let the master cylinder come all the way back?", "freePlay"),
    ],
    Trends =
    [
        new("pedalRatio", "travel", '+', 3, 8), new("masterBore", "travel", '-', 15, 40), new("frontTakeUp", "travel", '+', 0.1, 5), new("rearTakeUp", "travel", '+', 0.1, 5),
        new("frontFull", "travel", '+', 1.7, 6), new("rearFull", "travel", '+', 1, 6), new("takeUp", "travel", '+', 0, 6), new("freePlay", "travel", '+', 0, 30), new("hardPressure", "travel", '+', 2, 15),
        new("frontHoseLength", "travel", '+', 0.2, 1), new("rearHoseLength", "travel", '+', 0.2, 1), new("frontHoses", "travel", '+', 1, 4), new("rearHoses", "travel", '+', 1, 4),
        new("fluidVolume", "travel", '+', 50, 800), new("stiffness", "travel", '-', 0.2, 2.2), new("floorTravel", "usedShare", '-', 110, 250),
        new("frontSwell", "travel", '+', 0.05, 2), new("rearSwell", "travel", '+', 0.05, 2),
    ],
    NoTrends =
    [
        new("largeBore", "only of a stepped cylinder"), new("frontBore", "only of two cylinders on a bar"), new("rearBore", "only of two cylinders on a bar"), new("frontArm", "only of two cylinders on a bar"),
        new("rearArm", "only of two cylinders on a bar"), new("masterStroke", "only compared with the result"), new("frontStroke", "an end, not a way"),
        new("rearStroke", "an end, not a way"), new("frontThresholds", "only looked at with a circuit lost"), new("rearThresholds", "only looked at with a circuit lost"), new("cutIn", "only for the pressure at 50 lb"), new("jumpIn", "only for the pressure at 50 lb"), new("knee", "only for the pressure at 50 lb"),
        new("kneePressure", "only for the pressure at 50 lb"), new("plainPressure", "only for the pressure at 50 lb"), new("deadLoss", "only for the force with the booster dead"),
    ],
    Examples =
    [
        new(Example(), new Dictionary<string, double> { ["stroke"] = 20.47, ["travel"] = 85.99, ["usedShare"] = 0.5733 }, 0.0005,
            "Front 2 x 3619.1 x 0.45 + 1948.8 + 574.6, rear 4 x 506.7 x 0.9 + 866.1 + 383.1 mm3, by hand", Provenance.Derived),
        new(Example(("masterBore", "28.575 mm")), new Dictionary<string, double> { ["travel"] = 70.6 }, 0.001, "The same on 641.3 mm2, by hand", Provenance.Derived),
        new(Example(("frontSwell", "1 cm3"), ("rearSwell", "1 cm3")), new Dictionary<string, double> { ["travel"] = 87.5 }, 0.005,
            "1 cm3 for each of three hoses instead of 2.815 cm3 in all: 0.185 cm3 on 506.7 mm2 by 4.2 more", Provenance.Derived),
    ],
    Cautions =
    [
        "Bleed again and find the leak or the worn part when a pedal sinks, springs or needs pumping: such a vehicle does not move under its own power.",
        "Try the brakes with each circuit opened on closed ground and slowly, with a qualified person: what is worked out here is no proof.",
    ],
})
{
    private const double ReserveForce = 50 * 4.448222, MostUsed = 0.8; // N, share; 49 CFR 570.55
    private const double UsualFluid = 250e-6, FrontFluid = 0.6; // m3, share of the front circuit

    public sealed record Inputs(
        [Input("pedal ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasurePedal.Ratio)] Ratio PedalRatio,
        [Input("kind of the master cylinder; tandem where nothing is said", OneOf = ["single", "tandem", "stepped", "twin"], Measure = HowToMeasurePedal.MasterKind)] string? MasterKind,
        [Input("bore of the master cylinder (the small one where it is stepped)", "mm", MoreThan = 0, Low = 10, High = 60, Measure = HowToMeasurePedal.MasterBore)] Length? MasterBore,
        [Input("large bore of a stepped master cylinder", "mm", MoreThan = 0, Measure = HowToMeasurePedal.MasterBore)] Length? LargeBore,
        [Input("bore of the front one of two cylinders", "mm", MoreThan = 0, Measure = HowToMeasurePedal.TwinBore)] Length? FrontBore,
        [Input("bore of the rear one of two cylinders", "mm", MoreThan = 0, Measure = HowToMeasurePedal.TwinBore)] Length? RearBore,
        [Input("bearing of the bar to the front circuit's push rod", "mm", MoreThan = 0, Measure = HowToMeasurePedal.BarArm)] Length? FrontArm,
        [Input("bearing of the bar to the rear circuit's push rod", "mm", MoreThan = 0, Measure = HowToMeasurePedal.BarArm)] Length? RearArm,
        [Input("circuits; front and rear where nothing is said", OneOf = ["one", "front-rear", "diagonal"], Measure = "follow the lines from the master cylinder")] string? Circuits,
        [Input("fluid to close the clearances of the front wheels", "cm3", AtLeast = 0, Measure = "it follows from calipers or drums")] Members<Volume> FrontTakeUp,
        [Input("fluid in all of the front wheels at 1000 psi", "cm3", AtLeast = 0, Measure = "it follows from calipers or drums")] Members<Volume> FrontFull,
        [Input("fluid to close the clearances of the rear wheels", "cm3", AtLeast = 0, Measure = "it follows from calipers or drums")] Members<Volume> RearTakeUp,
        [Input("fluid in all of the rear wheels at 1000 psi", "cm3", AtLeast = 0, Measure = "it follows from calipers or drums")] Members<Volume> RearFull,
        [Input("length of a front hose; 0.45 m where nothing is said", "m", AtLeast = 0, High = 2, Measure = HowHose)] Length? FrontHoseLength,
        [Input("length of a rear hose; 0.45 m where nothing is said", "m", AtLeast = 0, High = 2, Measure = HowHose)] Length? RearHoseLength,
        [Input("front hoses", AtLeast = 0, High = 6, Default = 2, Measure = "count them")] Ratio FrontHoses,
        [Input("rear hoses", AtLeast = 0, High = 6, Default = 1, Measure = "count them")] Ratio RearHoses,
        [Input("bore of the hoses; 1/8 in where nothing is said", OneOf = [BrakeHose.Narrow, BrakeHose.Middle, BrakeHose.Wide], Measure = "read the hose's marking")] string? HoseBore,
        [Input("grade of the hoses; regular where nothing is said", OneOf = [BrakeHose.Regular, BrakeHose.Low], Measure = "read the marking: HR is regular, HL is low")] string? HoseGrade,
        [Input("swell of one front hose at 1000 psi; by the standard where nothing is said", "cm3", AtLeast = 0, High = 5, Measure = "ask the hose's maker")] Volume? FrontSwell,
        [Input("swell of one rear hose at 1000 psi; by the standard where nothing is said", "cm3", AtLeast = 0, High = 5, Measure = "ask the hose's maker")] Volume? RearSwell,
        [Input("fluid under pressure in all; 250 cm3 where nothing is said", "cm3", AtLeast = 0, High = 2000, Measure = "measure what runs out when it is drained, less the reservoir")] Volume? FluidVolume,
        [Input("stiffness of the fluid", "GPa", MoreThan = 0, Low = 0.1, High = 2.3, Default = 1.8, Measure = "bleed it well and take 1.8")] Pressure Stiffness,
        [Input("way of the push rod before both pistons close their ports", "mm", AtLeast = 0, High = 12, Default = 3, Measure = HowTakeUp)] Length TakeUp,
        [Input("free play at the pad", "mm", AtLeast = 0, High = 60, Measure = HowToMeasurePedal.FreePlay)] Length? FreePlay,
        [Input("way of the pad to the floor", "mm", MoreThan = 0, Low = 50, High = 300, Measure = HowToMeasurePedal.FloorTravel)] Length? FloorTravel,
        [Input("stroke of the master cylinder", "mm", MoreThan = 0, Measure = HowToMeasurePedal.MasterStroke)] Length? MasterStroke,
        [Input("stroke of the front circuit's chamber", "mm", MoreThan = 0, Measure = HowToMeasurePedal.ChamberStroke)] Length? FrontStroke,
        [Input("stroke of the rear circuit's chamber", "mm", MoreThan = 0, Measure = HowToMeasurePedal.ChamberStroke)] Length? RearStroke,
        [Input("pressures at which the front brakes begin; nothing where nothing is said", "MPa", AtLeast = 0, High = 2, Measure = "comes from each wheel's brake")] Members<Pressure>? FrontThresholds,
        [Input("pressures at which the rear brakes begin; nothing where nothing is said", "MPa", AtLeast = 0, High = 2, Measure = "comes from each wheel's brake")] Members<Pressure>? RearThresholds,
        [Input("high line pressure to look at; 1000 psi (6.9 MPa) in the lines unless said", "MPa", MoreThan = 0, Low = 1, High = 20, Default = 6.9, Measure = HowToMeasurePedal.HardPressure)] Pressure HardPressure,
        [Input("pedal force at which the booster begins", "N", AtLeast = 0, Measure = HowToMeasurePedal.LineKey)] Force? CutIn,
        [Input("line pressure at the booster's jump-in", "MPa", AtLeast = 0, Measure = HowToMeasurePedal.LineKey)] Pressure? JumpIn,
        [Input("pedal force at which the booster runs out", "N", AtLeast = 0, Measure = HowToMeasurePedal.LineKey)] Force? Knee,
        [Input("line pressure at the booster's run-out", "MPa", AtLeast = 0, Measure = HowToMeasurePedal.LineKey)] Pressure? KneePressure,
        [Input("line pressure at 100 lb by the leg alone", "MPa", MoreThan = 0, Measure = HowToMeasurePedal.LineKey)] Pressure? PlainPressure,
        [Input("line pressure that a dead booster's spring takes", "MPa", AtLeast = 0, Measure = HowToMeasurePedal.LineKey)] Pressure? DeadLoss);

    private const string HowHose = "tape it off the vehicle and straight";
    private const string HowTakeUp = "with the lid off, press slowly until fluid stops welling up: measure the rod's way; 3 mm in all is usual";

    public sealed record Result(
        [Output("way of the push rod at that high line pressure", "mm")] Length? Stroke,
        [Output("pedal travel at that high line pressure, at the pad", "mm")] Length? Travel,
        [Output("share of the way to the floor used then")] Ratio? UsedShare,
        [Output("share of it used at 50 lb")] Ratio? ReserveUsed,
        [Output("way of the push rod at 50 lb", "mm")] Length? ReserveStroke,
        [Output("pressure in the rear circuit at which pedal or stroke is at its end, front circuit lost", "MPa")] Pressure? FloorPressureFrontLost,
        [Output("pressure in the front circuit at which pedal or stroke is at its end, rear circuit lost", "MPa")] Pressure? FloorPressureRearLost,
        [Output("fluid that the front circuit takes at that high line pressure", "cm3")] Volume? FrontVolume,
        [Output("fluid that the rear circuit takes at that high line pressure", "cm3")] Volume? RearVolume);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        Play(x, w);
        var master = MasterCylinder.Of(x.MasterKind, x.MasterBore?.Meters, x.LargeBore?.Meters, x.FrontBore?.Meters, x.RearBore?.Meters, x.FrontArm?.Meters, x.RearArm?.Meters);
        double i = x.PedalRatio.DecimalFractions, hard = x.HardPressure.Pascals, play = x.FreePlay?.Meters ?? 0;
        double fluid = (x.FluidVolume?.CubicMeters ?? UsualFluid) / x.Stiffness.Pascals;
        var front = Axle(x.FrontTakeUp, x.FrontFull, x.FrontHoses, Swell(x.FrontSwell, x, x.FrontHoseLength), fluid * FrontFluid);
        var rear = Axle(x.RearTakeUp, x.RearFull, x.RearHoses, Swell(x.RearSwell, x, x.RearHoseLength), fluid * (1 - FrontFluid));
        if (x.Circuits == "diagonal") front = rear = (front + rear).Half;
        if (master is not { } m) return Bare(x, w, front, rear, hard);
        if (x.MasterKind == MasterCylinder.Stepped && (x.LargeBore is not { } large || large < x.MasterBore))
            w.Caution($"The large bore of the stepped master cylinder is {(x.LargeBore is null ? "not known" : "less than its small one")}: the small one is taken to fill the brakes as well, so the pedal goes less far than told.");
        var rod = PushRod.Of(m, front, rear, x.TakeUp.Meters);
        double stroke = rod.At(hard), travel = (i * stroke) + play;
        w.Line("Vf", "clearances + (give + hoses + fluid / K) p", $"{front.TakeUp * 1e6} + {front.PerPascal * 1e12} x {hard / 1e6}", front.At(hard) * 1e6, "cm3");
        w.Line("Vr", "clearances + (give + hoses + fluid / K) pr", $"{rear.TakeUp * 1e6} + {rear.PerPascal * 1e12} x {hard * m.RearShare / 1e6}", rear.At(hard * m.RearShare) * 1e6, "cm3");
        w.Line("rod", m.Twin ? "Vf / Af share + Vr / Ar (1 - share) + take-up" : "(Vf + Vr) / A + take-up", $"take-up {x.TakeUp.Millimeters}", stroke * 1000, "mm");
        w.Line("pedal", "i rod + free play", $"{i} x {stroke * 1000} + {play * 1000}", travel * 1000, "mm");
        PedalStrokes.Judge(x, w, m, front, rear, stroke, hard);
        double? fifty = At50(x) is { } p ? rod.At(p) : null;
        Floor(x, w, travel, fifty * i + play, hard);
        var lostFront = PedalStrokes.Lost(x, w, m, rear, true);
        var lostRear = PedalStrokes.Lost(x, w, m, front, false);
        if (w.Shown) TravelCurves.Draw(w, x, m, front, rear, Line(x));
        Ratio? Used(double? way) => way is { } y && x.FloorTravel is { } floor ? Ratio.FromDecimalFractions(y / floor.Meters) : null;
        return new(Length.FromMeters(stroke), Length.FromMeters(travel), Used(travel), Used(fifty * i + play), fifty is { } s ? Length.FromMeters(s) : null,
            lostFront, lostRear, Volume.FromCubicMeters(front.At(hard)), Volume.FromCubicMeters(rear.At(hard * m.RearShare)));
    }

    /// <summary>The circuit of an axle; <paramref name="fluid"/> in m3/Pa.</summary>
    private static Circuit Axle(Members<Volume> takeUp, Members<Volume> full, Ratio hoses, double swell, double fluid)
    {
        double first = 0, all = 0;
        foreach (var (_, v) in takeUp.Items) first += v.CubicMeters;
        foreach (var (_, v) in full.Items) all += v.CubicMeters;
        return new(first, ((Math.Max(0, all - first) + (hoses.DecimalFractions * swell)) / AxleForce.ReferencePressure) + fluid);
    }

    private static double Swell(Volume? stated, Inputs x, Length? length) => stated?.CubicMeters ?? BrakeHose.Swell(x.HoseBore, x.HoseGrade, length?.Meters ?? BrakeHose.UsualLength);

    private static Result Bare(Inputs x, Worksheet w, Circuit front, Circuit rear, double hard)
    {
        var why = x.MasterKind == MasterCylinder.Pair ? $"Not known: bores and bar of the two master cylinders are missing ({HowToMeasurePedal.TwinBore}; {HowToMeasurePedal.BarArm})."
            : $"Not known: bore of the master cylinder is missing ({HowToMeasurePedal.MasterBore}).";
        foreach (var check in (ReadOnlySpan<string>)["floor", "reserve", "stroke", "failed-front", "failed-rear"]) w.Answer(check, Verdict.Unknown, why);
        return new(null, null, null, null, null, null, null, Volume.FromCubicMeters(front.At(hard)), Volume.FromCubicMeters(rear.At(hard)));
    }

    internal static PedalLine? Line(Inputs x) =>
        x is { CutIn: { } c, JumpIn: { } j, Knee: { } k, KneePressure: { } kp, PlainPressure: { } pp, DeadLoss: { } d }
            ? new(pp.Pascals / PedalLine.ReferenceForce, c.Newtons, j.Pascals, k.Newtons, kp.Pascals, d.Pascals) : null;

    private static double? At50(Inputs x) => Line(x)?.Pressure(ReserveForce);

    private static void Play(Inputs x, Worksheet w)
    {
        if (x.FreePlay is not { } play) return;
        w.AtLeast("free-play", play.Millimeters, 1, "mm", play.Millimeters < 1
            ? $"{play.Millimeters:0.#} mm of free play at the pad: without any the piston cannot uncover its port, pressure stays and the brakes drag and heat. Set the push rod."
            : $"{play.Millimeters:0.#} mm of free play at the pad.", "common practice, no source", beyond: Verdict.Caution);
    }

    private static void Floor(Inputs x, Worksheet w, double travel, double? fifty, double hard)
    {
        if (x.FloorTravel is not { } floor) return;
        w.AtMost("floor", travel * 1000, floor.Millimeters, "mm", travel > floor.Meters
            ? $"The pedal is on the floor before {hard / 1e6:0.0} MPa: it would need {travel * 1000:0} mm of {floor.Millimeters:0} mm."
            : $"The pedal goes {travel * 1000:0} mm of {floor.Millimeters:0} mm with {hard / 1e6:0.0} MPa in the lines.");
        if (fifty is { } way)
            w.AtMost("reserve", 100 * way / floor.Meters, 100 * MostUsed, "%", $"At 222 N the pedal uses {100 * way / floor.Meters:0} % of its {floor.Millimeters:0} mm to the floor; 80 % is the most that vehicles over 10,000 lb are allowed, and a good measure for lighter ones.",
                "49 CFR 570.55, for vehicles over 10,000 lb", beyond: Verdict.Caution);
    }

    private static Dictionary<string, string> Example(params (string Input, string Value)[] more)
    {
        var inputs = new Dictionary<string, string>
        {
            ["pedalRatio"] = "4.2", ["masterBore"] = "25.4 mm", ["frontTakeUp"] = """{"left":"0.72382 cm3","right":"0.72382 cm3"}""", ["frontFull"] = """{"left":"1.62860 cm3","right":"1.62860 cm3"}""",
            ["rearTakeUp"] = """{"left":"0.50671 cm3","right":"0.50671 cm3"}""", ["rearFull"] = """{"left":"0.91207 cm3","right":"0.91207 cm3"}""", ["frontHoseLength"] = "0.45 m", ["rearHoseLength"] = "0.40 m",
            ["fluidVolume"] = "250 cm3", ["takeUp"] = "3 mm", ["floorTravel"] = "150 mm", ["hardPressure"] = "6.894757 MPa",
        };
        foreach (var (input, value) in more) inputs[input] = value;
        return inputs;
    }
}
