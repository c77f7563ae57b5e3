using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Brakes.Limits;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Pedal force in N for the hard stop, cold and at the worst moment of the drive; null where the pedal's line or the pressure is not known.</summary>
internal readonly record struct HotPedal(double? Cold, double? Hot)
{
    public static HotPedal Of(DriveHeat.Inputs x, DriveHeatSetup setup, HeatRun run)
    {
        if (PedalFigures.Line(x.CutIn, x.JumpIn, x.Knee, x.KneePressure, x.PlainPressure, x.DeadLoss) is not { } pedal) return default;
        var force = setup.Vehicle.Mass * setup.Profile.Deceleration; // N
        return new(At(setup.Rig), At(FadeAnswer.Hot(setup.Rig, run)));

        double? At(in Rig rig) => rig.Pressure(force) is { } line ? pedal.Force(line) : null;
    }
}

/// <summary>Says what is left of hot brakes: force, pedal, and which axle locks first.</summary>
internal static class FadeAnswer
{
    /// <summary>Share of the cold braking that must be had of the same pedal: 49 CFR 571.135 S7.14. Largest pedal force in N: UN Regulation 13-H, from memory.</summary>
    private const double MostPedal = 500;

    private static readonly double s_leastHot = BrakeRule.Find(BrakeRule.Car135, "hot")!.ShareLeast!.Value;

    /// <summary>What is this near to cold has not faded: what is wrong with it then is wrong cold, and told there.</summary>
    private const double Alike = 0.02;

    private const string Source = "60 % of the best cold braking after heating: 49 CFR 571.135 S7.14, held against this drive, not against its test";

    public static Rig Hot(in Rig rig, HeatRun run) => rig with
    {
        Front = rig.Front with { PerPascal = rig.Front.PerPascal * run.FrontTorque },
        Rear = rig.Rear with { PerPascal = rig.Rear.PerPascal * run.RearTorque },
    };

    public static void Tell(Worksheet w, DriveHeat.Inputs x, DriveHeatSetup setup, HeatRun run, in HotPedal pedal)
    {
        if (Unsaid(x) is { } axle)
        {
            w.Answer("fade", Verdict.Unknown, $"Not known: how the {axle} drums answer to friction is missing ({HowToMeasureHeat.Sensitivity}).");
            return;
        }
        var left = Left(setup.Rig, Hot(setup.Rig, run), setup.Vehicle.Mass * setup.Profile.Deceleration);
        var (locks, turned, rearFirst) = Locks(x, setup.Rig, Hot(setup.Rig, run));
        var beyond = Math.Max(run.Peaks.FrontRotor, run.Peaks.RearRotor) > FadeLine.Told;
        var alike = !turned && Math.Abs(1 - run.FrontTorque) <= Alike && Math.Abs(1 - run.RearTorque) <= Alike;
        var heavy = pedal.Hot > MostPedal;
        var text = (beyond ? "As far as the letters of their linings tell, at" : "At") + $" the worst moment the front brakes give {100 * run.FrontTorque:0} % and the rear {100 * run.RearTorque:0} % of what they give cold: {100 * left:0} % of the hard stop by the same pedal."
            + (pedal is { Cold: { } cold, Hot: { } hot } ? $" The hard stop takes {hot:0} N of pedal instead of {cold:0} N." : "") + locks
            + (alike && !beyond && (rearFirst || heavy) ? " Heat changes nothing here: see what is said of the cold brakes." : "")
            + (beyond ? $" The linings get hotter than {FadeLine.Told - 273.15:0} C, where their letters end: what they do there is not known, and more pedal is to be expected." : "");
        w.Answer("fade", beyond || (!alike && (left < s_leastHot || rearFirst || heavy)) ? Verdict.Caution : Verdict.Pass, text, 100 * left, "%", Source);
    }

    /// <summary>Braking force hot over cold at the pressure that the hard stop takes cold.</summary>
    private static double Left(in Rig cold, in Rig hot, double force)
    {
        var line = cold.Pressure(force) ?? AxleForce.ReferencePressure;
        return cold.TotalAt(line) is > 0 and var all ? hot.TotalAt(line) / all : 1;
    }

    /// <summary>A drum axle of which nobody said how it answers to friction.</summary>
    private static string? Unsaid(DriveHeat.Inputs x) =>
        x.FrontSensitivity is null && TwoAxles.Same(x.FrontKind) == TwoAxles.Drum ? TwoAxles.Front
        : x.RearSensitivity is null && TwoAxles.Same(x.RearKind) == TwoAxles.Drum ? TwoAxles.Rear : null;

    /// <summary>Which axle locks first, and whether heat has made it the rear one.</summary>
    private static (string Text, bool Turned, bool RearFirst) Locks(DriveHeat.Inputs x, in Rig cold, in Rig hot)
    {
        if (DriveHeatSetup.Loaded(x) is not { } load) return (" Which axle locks first with hot brakes is not known without the center of gravity.", false, false);
        var grip = x.Grip.DecimalFractions;
        LocksFirst before = LockUp.On(grip, cold, load).Axle, after = LockUp.On(grip, hot, load).Axle;
        if (after == LocksFirst.Neither) return ("", false, false);
        var same = before == after ? "as when cold" : $"when cold {Named(before)}";
        var turned = after == LocksFirst.Rear && before != LocksFirst.Rear;
        return ($" Hot, {Named(after)} locks first on a grip of {grip:0.0#}, {same}{(after == LocksFirst.Rear ? ": the vehicle may swing round" : "")}.", turned, after == LocksFirst.Rear);
    }

    private static string Named(LocksFirst axle) => axle switch
    {
        LocksFirst.Front => "the front axle",
        LocksFirst.Rear => "the rear axle",
        LocksFirst.Both => "both axles",
        _ => "neither axle",
    };
}
