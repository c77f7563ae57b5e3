using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Brakes.Wheels.HowToMeasureWheels;

namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>The pressure at which a wheel brake begins, and whether it lets go with what a residual valve holds in the line.</summary>
/// <remarks>
/// Formula:  threshold = as measured, else by the kind; drag = torque at 1000 psi x (residual - threshold) / 1000 psi; power = drag x v / R
/// Valid:    cold, rotor true; pads pushed back by a wobbling rotor or float are not in here
/// Source:   statics; 0.02 MPa for discs and 0.4 MPa for drums: common practice, no source
/// Example:  disc of 2370 N m at 1000 psi, 0.07 MPa held against 0.02 -> 17.2 N m
/// </remarks>
public sealed class WheelDrag() : Calculation<WheelDrag.Inputs, WheelDrag.Result>(new()
{
    Id = "brakes.wheel-drag",
    Version = 1,
    Title = "Threshold and drag of a wheel brake",
    Purpose = "Which pressure springs and seals take before anything brakes, and what a drum's residual valve does to discs: pads that never let go, hot wheels, boiled fluid.",
    Formula = "threshold as measured or by kind; drag T = T1000 (residual - threshold) / 1000 psi where positive; power = T v / R",
    Validity = "Pedal up. A master cylinder whose push rod has no play holds pressure too and is not seen here; nor are sticking pistons and swollen hoses. The drag told is at the start: it heats fluid, which expands and drags more.",
    Sources = ["Statics", "0.02 MPa for discs, 0.4 MPa for drums, 0.12 MPa at most of a residual valve: common practice, no source. Where the release was not measured, up to 0.04 MPa over it is a caution"],
    Checks = [new("lets-go", Sense.AtMost, "Does the brake let go with the pedal up?")],
    Trends = [new("releasePressure", "threshold", '+', 0.01, 1), new("residualFront", "drag", '+', 0.05, 0.3), new("residualRear", "drag", '+', 0.45, 0.9), new("torque", "drag", '+', 500, 5000), new("cruiseSpeed", "power", '+', 20, 80), new("loadedRadius", "power", '-', 300, 500)],
    NoTrends = [new("discRelease", "stands in where nothing was measured at a disc"), new("drumRelease", "stands in where nothing was measured at a drum")],
    Examples =
    [
        new(new Dictionary<string, string> { ["kind"] = "disc", ["axle"] = "front", ["residualFront"] = "0.07 MPa", ["torque"] = "2370.4 N m", ["loadedRadius"] = "375 mm", ["cruiseSpeed"] = "27 m/s" },
            new Dictionary<string, double> { ["threshold"] = 0.02, ["drag"] = 17.19, ["power"] = 1.2377 }, 0.0005, "343.8 N m for each MPa times 0.05, and times 27 / 0.375, by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["kind"] = "drum", ["axle"] = "rear", ["releasePressure"] = "0.35 MPa", ["residualRear"] = "0.07 MPa", ["torque"] = "1000 N m" },
            new Dictionary<string, double> { ["threshold"] = 0.35, ["drag"] = 0 }, 1e-9, "as measured; springs beat the valve", Provenance.Derived),
    ],
    Cautions = [Qualified, "With all wheels off the ground each turns freely by hand a second after the pedal is let go, or it is not driven."],
})
{
    private const string Front = "front", Rear = "rear";

    /// <summary>The most that a residual valve holds, Pa, and how far a pressure taken by the kind may be off. Common practice, no source.</summary>
    internal const double MostHeld = 0.12e6, Doubt = 0.04e6;

    private const string Practice = "0.02 MPa for discs, 0.4 MPa for drums: common practice, no source";

    public sealed record Inputs(
        [Input("disc or drum", OneOf = [Disc, DrumBrake], Measure = HowToMeasureWheels.Kind)] string Kind,
        [Input("axle", OneOf = [Front, Rear])] string Axle,
        [Input("line pressure at which the brake begins to drag", "MPa", AtLeast = 0, High = 2, Measure = "gauge at the bleeder, wheel off the ground: press until it just drags when turned by hand")] Pressure? ReleasePressure,
        [Input("the same for discs, where nothing was measured", "MPa", AtLeast = 0, High = 0.2, Default = 0.02, Measure = "take 0.02 MPa")] Pressure DiscRelease,
        [Input("the same for drums, where nothing was measured", "MPa", AtLeast = 0, High = 1, Default = 0.4, Measure = "take 0.4 MPa")] Pressure DrumRelease,
        [Input("pressure that a residual valve holds in the front line", "MPa", AtLeast = 0, High = 1, Measure = Residual)] Pressure? ResidualFront,
        [Input("pressure that a residual valve holds in the rear line", "MPa", AtLeast = 0, High = 1, Measure = Residual)] Pressure? ResidualRear,
        [Input("torque of the wheel at 1000 psi", "N m", MoreThan = 0, Measure = "comes from the wheel's brake")] Torque? Torque,
        [Input("loaded radius of the tires", "mm", MoreThan = 0, Low = 200, High = 700, Measure = "tape from level ground to the hub center")] Length? LoadedRadius,
        [Input("cruise speed", "mph", AtLeast = 0, High = 150, Measure = "ask the customer")] Speed? CruiseSpeed);

    public sealed record Result(
        [Output("line pressure at which the brake begins", "MPa")] Pressure Threshold,
        [Output("torque that drags with the pedal up", "N m")] Torque? Drag,
        [Output("power that it takes at cruise and turns into heat", "kW")] Power? Power);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var disc = x.Kind == Disc;
        var p0 = (x.ReleasePressure ?? (disc ? x.DiscRelease : x.DrumRelease)).Pascals;
        w.Line("p0", x.ReleasePressure is null ? "taken by the kind" : "as measured", $"{x.Kind}", p0 / 1e6, "MPa");
        if ((x.Axle == Front ? x.ResidualFront : x.ResidualRear) is not { } held)
        {
            // Strong springs of drums beat any residual valve there is; tired ones do not.
            if (disc || p0 <= MostHeld) w.Lacks(x.Axle == Front ? "residualFront" : "residualRear");
            else w.Answer("lets-go", Verdict.Pass, $"A drum's springs pull back against {p0 / 1e6:0.00} MPa: more than the {MostHeld / 1e6:0.00} MPa that a residual valve holds at most.", p0 / 1e6, "MPa", Practice);
            return new(Pressure.FromPascals(p0), null, null);
        }
        var over = Math.Max(0, held.Pascals - p0); // Pa
        var drag = over == 0 ? 0 : x.Torque?.NewtonMeters * over / AxleForce.ReferencePressure; // N m
        var power = drag == 0 ? 0 : drag * x.CruiseSpeed?.MetersPerSecond / x.LoadedRadius?.Meters; // W
        if (drag is { } T) w.Line("T", "T1000 (residual - p0) / 1000 psi", $"{x.Torque?.NewtonMeters ?? 0} x {over / 1e6} / 6.894757", T, "N m");
        if (power is { } P && x.CruiseSpeed is { } v && x.LoadedRadius is { } R) w.Line("P", "T v / R", $"{drag ?? 0} x {v.MetersPerSecond} / {R.Meters}", P / 1000, "kW");
        // What was only taken by the kind may be off: a little over it is no proof.
        var certain = x.ReleasePressure is not null || over > Doubt;
        w.AtMost("lets-go", held.Megapascals, p0 / 1e6, "MPa", Text(disc, held.Megapascals, p0 / 1e6, over > 0, drag, power, certain), certain ? "statics" : Practice, beyond: certain ? Verdict.Fail : Verdict.Caution);
        return new(Pressure.FromPascals(p0), drag is { } t ? Torque.FromNewtonMeters(t) : null, power is { } heat ? UnitsNet.Power.FromWatts(heat) : null);
    }

    private static string Text(bool disc, double held, double threshold, bool drags, double? drag, double? power, bool certain)
    {
        if (!drags) return held == 0 ? "No pressure is held in the line: the brake lets go." : $"The valve holds {held:0.000} MPa; the brake lets go below {threshold:0.000} MPa.{(disc ? "" : " On drums that keeps the cups tight.")}";
        var what = drag is { } T ? $" and drag {T:0.0} N m at this wheel" + (power is { } P ? $", {P / 1000:0.0} kW at cruise" : "") : "";
        return disc
            ? $"The valve holds {held:0.000} MPa where pads let go below {threshold:0.000} MPa: they never let go{what}. Take the drums' valve out of this line{Measure(certain)}."
            : $"The line holds {held:0.000} MPa where the shoes let go below {threshold:0.000} MPa: they rub all the time{what}. Wrong valve, or tired springs{Measure(certain)}.";
    }

    private static string Measure(bool certain) => certain ? "" : ", or measure where it lets go: that was only taken by the kind";
}
