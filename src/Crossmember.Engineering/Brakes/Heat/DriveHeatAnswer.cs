using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Brakes.Heat.TwoAxles;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>What a drive's temperatures mean, in words and verdicts.</summary>
internal static class DriveHeatAnswer
{
    private const double Zero = 273.15, IronWatch = 600;

    /// <summary>How far off a rise reckoned beforehand may be, over itself: common practice, no source. Nothing passes that this would carry over its limit.</summary>
    private const double Doubt = 1.0 / 3;

    /// <summary>Why iron so hot is a fail: a limit of the material, not of practice.</summary>
    private const string Melts = "gray iron begins to melt near 1150 C (iron and carbon, from memory) and has no strength left at 1000 C";

    public static DriveHeat.Result Of(Worksheet w, DriveHeat.Inputs x, DriveHeatSetup setup, HeatRun run)
    {
        var p = run.Peaks;
        if (setup.Profile.Speeds is null)
        {
            var down = setup.Profile.Down(setup.Vehicle);
            w.Line("P", "v (m g sin th - f m g cos th - rho CdA v^2 / 2) - engine", $"at {down.Speed} m/s on {setup.Profile.Grade}", down.PowerAt(down.Speed) / 1000, "kW");
        }
        w.Line("Q", "sum of P dt", $"over {run.Time / 60} min", run.HeatPut / 1000, "kJ");
        w.Line("T front", "highest of the iron", $"{setup.Front.Rotor} J/K, {setup.Front.Air.AtSpeed} W/K at 40 mph", p.FrontRotor - Zero, "C");
        w.Line("T rear", "highest of the iron", $"{setup.Rear.Rotor} J/K, {setup.Rear.Air.AtSpeed} W/K at 40 mph", p.RearRotor - Zero, "C");
        w.Line("Q kept", "put in - shed", $"{run.HeatPut / 1000} - {run.HeatShed / 1000}", (run.Held - run.Begun) / 1000, "kJ");
        var front = p.FrontRotor >= p.RearRotor;
        double iron = Math.Max(p.FrontRotor, p.RearRotor) - Zero;
        w.AtMost("iron", iron, GrayIron.SpentCelsius, "C", $"The {Parts(x, front)} get to {iron:0} C at the most, the {Parts(x, !front)} to {Math.Min(p.FrontRotor, p.RearRotor) - Zero:0} C."
            + (iron > IronWatch ? $" Above about {IronWatch:0} C gray iron checks and warps." : ""), iron > GrayIron.SpentCelsius ? Melts : "common practice, no source", watch: IronWatch, beyond: Verdict.Fail);
        OfLinings(w, x, p);
        OfFluid(w, x, p);
        var known = x.FrontLetters is not null && x.RearLetters is not null;
        var pedal = known ? HotPedal.Of(x, setup, run) : default;
        if (known) FadeAnswer.Tell(w, x, setup, run, pedal);
        return new(Kelvin(p.FrontRotor), Kelvin(p.RearRotor), Kelvin(p.FrontLining), Kelvin(p.RearLining), Kelvin(p.FrontFluid), Kelvin(p.RearFluid),
            Share(known, run.FrontTorque), Share(known, run.RearTorque), Share(known, run.FrontFriction), Share(known, run.RearFriction),
            Newtons(pedal.Cold), Newtons(pedal.Hot), Energy.FromJoules(run.HeatPut), Duration.FromSeconds(run.Time));
    }

    private static void OfLinings(Worksheet w, DriveHeat.Inputs x, in HottestBrakes p)
    {
        string? frontKind = One(x.FrontLining), rearKind = One(x.RearLining);
        double front = p.FrontRotor - Linings.Limit(frontKind), rear = p.RearRotor - Linings.Limit(rearKind);
        var (axle, at, kind) = front >= rear ? (Front, p.FrontRotor, frontKind) : (Rear, p.RearRotor, rearKind);
        w.AtMost("linings", at - Zero, Linings.Limit(kind) - Zero, "C",
            $"The {axle} linings rub on iron of {at - Zero:0} C; {Linings.Named(kind)} is used up to about {Linings.Limit(kind) - Zero:0} C.", Linings.Source, beyond: Verdict.Caution);
    }

    private static void OfFluid(Worksheet w, DriveHeat.Inputs x, in HottestBrakes p)
    {
        if (x.FluidGrade is not { } grade) return;
        var (dry, wet) = FluidGrade.Boils(grade);
        var (axle, at) = p.FrontFluid >= p.RearFluid ? (Front, p.FrontFluid) : (Rear, p.RearFluid);
        var watch = (wet + (Doubt * x.AirTemperature.Kelvins)) / (1 + Doubt) - Zero;
        var near = at - Zero > watch && at <= wet ? " That is nearer than such a reckoning is good for: take a probe, or a fluid that boils later." : "";
        var old = x.FluidState == DriveHeat.FluidNew ? $" New out of the can it boils from {dry - Zero:0} C, but it draws water from the first day." : "";
        var silicone = grade == FluidGrade.Dot5 ? " Water that gets into silicone fluid gathers and boils at 100 C." : "";
        w.AtMost("fluid", at - Zero, wet - Zero, "C",
            $"The fluid at the {axle} pistons gets to {at - Zero:0} C, standing afterward included; {grade} with water in it may boil from {wet - Zero:0} C.{near}{old}{silicone}",
            FluidGrade.Source, watch: watch, beyond: Verdict.Caution);
    }

    /// <summary>The same reason to every check.</summary>
    public static DriveHeat.Result? Unknown(Worksheet w, DriveHeat.Inputs x, string why)
    {
        w.Answer("iron", Verdict.Unknown, why);
        w.Answer("linings", Verdict.Unknown, why);
        if (x.FluidGrade is not null) w.Answer("fluid", Verdict.Unknown, why);
        if (x.FrontLetters is not null && x.RearLetters is not null) w.Answer("fade", Verdict.Unknown, why);
        return null;
    }

    /// <summary>Why a drive ended before its end.</summary>
    public static DriveHeat.Result? Stopped(Worksheet w, DriveHeat.Inputs x, HeatRun run)
    {
        if (run.Helpless) return Unknown(w, x, "No line pressure brakes as hard as this drive asks for: look at the braking forces of the axles.");
        if (run.TooFine) return Unknown(w, x, "The iron or lining is too light, or the drive too long, to be followed: look at masses, areas and lengths.");
        var front = run.Now(0) > GrayIron.Spent;
        var at = Math.Max(run.Now(0), run.Now(4)) - Zero;
        w.AtMost("iron", double.IsFinite(at) ? at : GrayIron.Spent, GrayIron.SpentCelsius, "C",
            $"The {Parts(x, front)} pass 1000 C after {run.Time / 60:0} min: no brake takes this drive. Look at masses and grade; take a lower gear, or brakes with more iron and air.", Melts);
        return Unknown(w, x, $"Not known: the {Parts(x, front)} pass 1000 C on this drive.");
    }

    public static void Draw(Worksheet w, DriveHeat.Inputs x, List<HeatPoint> log)
    {
        Line(Parts(x, true), p => p.FrontRotor);
        Line(Parts(x, false), p => p.RearRotor);
        Line("front fluid", p => p.FrontFluid);
        Line("rear fluid", p => p.RearFluid);

        void Line(string name, Func<HeatPoint, double> of) =>
            w.Curve(new(name, "time", "min", [.. log.Select(p => p.Time / 60)], "temperature", "C", [.. log.Select(p => of(p) - Zero)]));
    }

    public static string Parts(DriveHeat.Inputs x, bool front) =>
        $"{(front ? Front : Rear)} {(Same(front ? x.FrontKind : x.RearKind) == Drum ? "drums" : "rotors")}";

    public static string? One(Members<string>? sides) => sides is null ? null : Same(sides);

    private static Temperature Kelvin(double t) => Temperature.FromKelvins(t);

    private static Ratio? Share(bool known, double share) => known ? Ratio.FromDecimalFractions(share) : null;

    private static Force? Newtons(double? force) => force is { } f ? Force.FromNewtons(f) : null;
}
