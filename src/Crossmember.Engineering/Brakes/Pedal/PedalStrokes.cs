using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Whether the strokes of master cylinder and chambers do for the fluid, with both circuits and with one lost.</summary>
/// <remarks>
/// Formula:  each chamber: V / A + half of the take-up; lost: the empty chamber bottoms, then the other fills, until floor, cylinder or chamber is at its end
/// Valid:    as the pedal's travel
/// Source:   geometry, docs/derivations/brake-pedal.md
/// </remarks>
internal static class PedalStrokes
{
    public static bool OneCircuit(PedalTravel.Inputs x, in MasterCylinder m) => !m.Twin && (x.Circuits == "one" || x.MasterKind == MasterCylinder.Single);

    /// <summary>The whole of the cylinder and each chamber against its own circuit; what lacks most of its way is told.</summary>
    public static void Judge(PedalTravel.Inputs x, Worksheet w, in MasterCylinder m, Circuit front, Circuit rear, double stroke, double hard)
    {
        if (m.Twin && (x.FrontStroke is null || x.RearStroke is null))
        {
            w.Answer("stroke", Verdict.Unknown, $"Not known: the strokes of the two master cylinders are missing ({HowToMeasurePedal.MasterStroke}).");
            return;
        }
        var one = OneCircuit(x, m);
        double first = PushRod.Piston(m, true, front, x.TakeUp.Meters).At(hard), second = PushRod.Piston(m, false, rear, x.TakeUp.Meters).At(hard * m.RearShare);
        double? whole = m.Twin ? null : x.MasterStroke?.Meters, frontHas = one ? null : x.FrontStroke?.Meters, rearHas = one ? null : x.RearStroke?.Meters;
        if (!one)
        {
            w.Line("front piston", m.Twin ? "Vf / Af + take-up / 2" : "Vf / A + take-up / 2", $"at {hard / 1e6} MPa", first * 1000, "mm");
            w.Line("rear piston", m.Twin ? "Vr / Ar + take-up / 2" : "Vr / A + take-up / 2", $"at {hard * m.RearShare / 1e6} MPa", second * 1000, "mm");
        }
        var frontWorse = first / frontHas > second / rearHas || rearHas is null;
        var (way, has) = frontWorse ? (first, frontHas) : (second, rearHas);
        if (m.Twin || way > has)
            w.AtMost("stroke", way * 1000, has!.Value * 1000, "mm", $"The {Name(x, frontWorse)} {(m.Twin ? "cylinder" : "circuit's chamber")} strokes {way * 1000:0.0} mm of {has.Value * 1000:0.0} mm at {hard / 1e6:0.0} MPa.{(way > has ? " It is at its end first." : "")}");
        else if (whole is { } all)
            w.AtMost("stroke", stroke * 1000, all * 1000, "mm", $"The master cylinder strokes {stroke * 1000:0.0} mm of {all * 1000:0.0} mm at {hard / 1e6:0.0} MPa.{Chambers(x, one, first, second, frontHas, rearHas)}");
    }

    private static string Chambers(PedalTravel.Inputs x, bool one, double first, double second, double? front, double? rear) =>
        one ? "" : front is { } f && rear is { } r ? $" Its {Name(x, true)} chamber takes {first * 1000:0.0} mm of {f * 1000:0.0} mm, its {Name(x, false)} one {second * 1000:0.0} mm of {r * 1000:0.0} mm."
        : " How far each of its chambers goes was not measured.";

    /// <summary>Pressure at which the pedal or a stroke is at its end with a circuit lost, in the one that is <paramref name="left"/>; null where nothing is known to end it.</summary>
    public static Pressure? Lost(PedalTravel.Inputs x, Worksheet w, in MasterCylinder m, Circuit left, bool front)
    {
        var check = front ? "failed-front" : "failed-rear";
        if (OneCircuit(x, m))
        {
            w.Answer(check, Verdict.Caution, "One circuit for all wheels: a leak anywhere leaves nothing but the parking brake. What that means is told with the failures.");
            return Pressure.Zero;
        }
        if ((front ? x.FrontStroke : x.RearStroke) is not { } chamber) return null;
        PushRod rod = PushRod.Lost(m, front, chamber.Meters, left, x.TakeUp.Meters), own = PushRod.Piston(m, !front, left, x.TakeUp.Meters);
        double i = x.PedalRatio.DecimalFractions, play = x.FreePlay?.Meters ?? 0, hard = x.HardPressure.Pascals * (front ? m.RearShare : 1);
        double? floor = x.FloorTravel?.Meters, all = m.Twin ? null : x.MasterStroke?.Meters, other = (front ? x.RearStroke : x.FrontStroke)?.Meters;
        double floorAt = floor is { } f ? rod.Pressure((f - play) / i) : double.PositiveInfinity, wholeAt = all is { } a ? rod.Pressure(a) : double.PositiveInfinity,
            chamberAt = other is { } o ? own.Pressure(o) : double.PositiveInfinity, strokeAt = Math.Min(wholeAt, chamberAt), reach = Math.Min(floorAt, strokeAt);
        w.Line(front ? "rod, front lost" : "rod, rear lost", "empty chamber + V left / A + take-up / 2", $"{chamber.Millimeters}, at {hard / 1e6} MPa", rod.At(hard) * 1000, "mm");
        Pressure? told = double.IsFinite(reach) ? Pressure.FromPascals(reach) : null;
        var (lost, stays) = x.Circuits == "diagonal" ? (front ? ("one", "other") : ("other", "one")) : front ? ("front", "rear") : ("rear", "front");
        var begins = Begins(x, !front);
        if (reach >= hard)
        {
            // A pass needs every end that there is to be known.
            if (floor is { } way && other is not null)
                w.Answer(check, Verdict.Pass, $"With the {lost} circuit lost the pedal goes {((i * rod.At(hard)) + play) * 1000:0} mm of {way * 1000:0} mm for {hard / 1e6:0.0} MPa in the {stays} circuit.", ((i * rod.At(hard)) + play) * 1000, "mm");
            return told;
        }
        var fails = reach <= begins || strokeAt <= floorAt;
        var nothing = reach <= begins && reach > 0 ? $" Its brakes begin at {begins / 1e6:0.00} MPa: nothing brakes." : "";
        if (strokeAt <= floorAt)
            w.Answer(check, Verdict.Fail, wholeAt <= chamberAt ? $"With the {lost} circuit lost its chamber bottoms at {chamber.Millimeters:0.0} mm, and the master cylinder is at its end with {reach / 1e6:0.0} MPa in the {stays} circuit: {hard / 1e6:0.0} MPa would need {rod.At(hard) * 1000:0.0} mm of {all * 1000:0.0} mm.{nothing}"
                : $"With the {lost} circuit lost the {stays} circuit's chamber is at its end with {reach / 1e6:0.0} MPa: {hard / 1e6:0.0} MPa would need {own.At(hard) * 1000:0.0} mm of {other * 1000:0.0} mm.{nothing}", reach / 1e6, "MPa");
        else if (reach <= 0)
            w.Answer(check, Verdict.Fail, $"With the {lost} circuit lost the pedal is on the floor before the {stays} circuit builds pressure: it would need {((i * rod.Idle) + play) * 1000:0} mm of {floor * 1000:0} mm.", 0, "MPa");
        else w.Answer(check, fails ? Verdict.Fail : Verdict.Caution, $"With the {lost} circuit lost the {stays} circuit reaches {reach / 1e6:0.0} MPa with the pedal on the floor.{nothing}", reach / 1e6, "MPa");
        return told;
    }

    /// <summary>Line pressure in Pa at which the circuit that is left begins to brake: of a diagonal one whichever axle begins first.</summary>
    private static double Begins(PedalTravel.Inputs x, bool front)
    {
        double f = Least(x.FrontThresholds), r = Least(x.RearThresholds);
        return x.Circuits == "diagonal" ? Math.Min(f, r) : front ? f : r;
    }

    private static double Least(Members<Pressure>? thresholds)
    {
        if (thresholds is not { Items.Count: > 0 } own) return 0;
        var least = double.PositiveInfinity;
        foreach (var (_, p) in own.Items) least = Math.Min(least, p.Pascals);
        return least;
    }

    private static string Name(PedalTravel.Inputs x, bool front) => x.Circuits == "diagonal" ? (front ? "first" : "second") : front ? "front" : "rear";
}
