using Crossmember.Engineering.Brakes.Chain;

namespace Crossmember.Engineering.Brakes.Pedal;

internal enum GaugePlace { Front, Rear, DeadFront, DeadRear, Deceleration }

/// <summary>One reading: where, at which pedal force, what (Pa, or share of g), and how far it may be off.</summary>
internal readonly record struct GaugeReading(GaugePlace Place, double Force, double Value, double Error);

/// <summary>What gauges at the bleeders and a decelerometer should read, by the brakes as stated or with one thing changed.</summary>
/// <remarks>
/// Formula:  bleeder = max(held pressure, share of the line x valve(p)); deceleration = (front + rear force) / weight
/// Valid:    pressed slowly and held; residual valves hold at rest and are passed by any higher pressure
/// Source:   the chain of docs/derivations/brake-pedal.md
/// </remarks>
/// <param name="Leg">Pedal force that arrives over that which was stated to arrive.</param>
/// <param name="Bore">Stated piston area over the true one.</param>
/// <param name="BoosterDead">The booster adds nothing though the engine runs.</param>
/// <param name="FrontLine">Share of the pressure that reaches the front bleeder.</param>
internal readonly record struct GaugeModel(
    PedalLine Line, Rig Rig, double RearShare, double Weight, double Leg, double Bore, bool BoosterDead, double FrontLine, double RearLine, double FrontHeld, double RearHeld)
{
    public static GaugeModel Of(in PedalLine line, in Rig rig, double rearShare, double weight, double frontHeld, double rearHeld) =>
        new(line, rig, rearShare, weight, 1, 1, false, 1, 1, frontHeld, rearHeld);

    public double At(GaugePlace place, double force) => place switch
    {
        GaugePlace.Front => Front(Pressure(force, false)),
        GaugePlace.Rear => Rear(Pressure(force, false)),
        GaugePlace.DeadFront => Front(Pressure(force, true)),
        GaugePlace.DeadRear => Rear(Pressure(force, true)),
        _ => Weight > 0 ? (Rig.Front.At(Front(Pressure(force, false))) + Rig.Rear.At(Rear(Pressure(force, false)))) / Weight : 0,
    };

    /// <summary>The same with a share of the booster's assist: the run-out comes earlier, what lies below it stays.</summary>
    public GaugeModel Assisted(double share)
    {
        var l = Line;
        double assist = (l.KneePressure - (l.PerNewton * l.Knee)) * share, rise = l.Knee > l.CutIn ? (l.KneePressure - l.JumpIn) / (l.Knee - l.CutIn) : 0;
        if (rise <= l.PerNewton) return this;
        var knee = Math.Max(l.CutIn, (assist - l.JumpIn + (rise * l.CutIn)) / (rise - l.PerNewton));
        var at = (l.PerNewton * knee) + assist;
        return this with { Line = l with { Knee = knee, KneePressure = at, JumpIn = Math.Min(l.JumpIn, at) } };
    }

    private double Pressure(double force, bool dead) => Bore * (dead || BoosterDead ? Line.DeadPressure(Leg * force) : Line.Pressure(Leg * force));

    private double Front(double line) => Math.Max(FrontHeld, FrontLine * Rig.Valves.Front(line));

    private double Rear(double line) => Math.Max(RearHeld, RearLine * Rig.Valves.Rear(RearShare * line));
}
