using Crossmember.Engineering.Calculations;
using UnitsNet;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Temperatures of rotors, linings and fluid over a drive, and what is left of the brakes when they are hot.</summary>
/// <remarks>
/// Formula:  four stores of heat at each axle, C dT/dt = heat - paths - air - radiation, stepped by Runge-Kutta; friction by its letters fed back into the share of the axles
/// Valid:    a third either way before it is measured; linings rubbing evenly; no wind, no wet
/// Source:   heat balance, derived in docs/derivations/brake-heat.md; friction by SAE J866, boiling points by 49 CFR 571.116, both from memory; paths: common practice, no source
/// Example:  one store, no paths: as the closed forms of a grade and of repeated stops
/// </remarks>
public sealed class DriveHeat() : Calculation<DriveHeat.Inputs, DriveHeat.Result>(new()
{
    Id = "brakes.drive-heat",
    Version = 1,
    Title = "Brakes over a drive",
    Purpose = "How hot rotors, linings and fluid get over a recorded drive, or down a long grade with stops at its foot and a wait after it; which axle fades, what pedal it then takes, "
        + "and which end locks first with hot brakes.",
    Formula = "C dT/dt = heat - G (T - T next) - hA(v) (T - air) - s (T^4 - air^4) for iron, lining, fluid and hub of each axle; heat from v (-m k a - m g sin th - f m g cos th - rho CdA v^2 / 2) - engine; "
        + "share of the axles at the pressure that makes the force, with friction by the lining's letters and temperature",
    Validity = "Each part has one temperature. Paths from lining to fluid and hub, and the cooling where it was not timed, are usual figures: temperatures may be a third off. "
        + "Letters on linings are bands 0.1 wide and end at 343 C. Recorded speeds change evenly with time between two points. After the drive it stands for 15 minutes, when fluid is often hottest.",
    Sources =
    [
        "Heat balance and statics, derived", "Friction letters: SAE J866, temperatures of SAE J661, from memory", "Boiling points: 49 CFR 571.116, from memory",
        "Hot performance of 60 %: 49 CFR 571.135 S7.14", "Paths, emissivity, limits of linings: common practice, no source",
    ],
    Checks =
    [
        new("iron", Sense.AtMost, "Do rotors and drums stay below what iron takes?"), new("linings", Sense.AtMost, "Do the linings stay below what they are used to?"),
        new("fluid", Sense.AtMost, "Does the fluid stay below its boiling point with water in it?", "fluidGrade"),
        new("fade", null, "What is left of the brakes when they are hot?", "frontLetters", "rearLetters"),
    ],
    Trends =
    [
        new("mass", "frontRotor", '+', 1500, 3000), new("grade", "frontRotor", '+', 0.05, 0.09), new("length", "frontRotor", '+', 2, 10), new("enginePower", "frontRotor", '-', 0, 6),
        new("rollingResistance", "frontRotor", '-', 0.005, 0.03), new("dragArea", "frontRotor", '-', 0.5, 3), new("airDensity", "frontRotor", '-', 0.9, 1.3), new("airTemperature", "frontRotor", '+', -20, 45),
        new("startTemperature", "frontRotor", '+', 20, 150), new("heatMasses", "frontRotor", '-', 4, 20), new("cooling", "frontRotor", '-', 400, 2000), new("coolingAreas", "rearRotor", '-', 500, 3000),
        new("rotorShares", "frontRotor", '+', 0.8, 1), new("stopsFrom", "frontRotor", '+', 40, 60), new("stopsTo", "frontRotor", '-', 8, 20), new("rotatingFactor", "frontRotor", '+', 1, 1.3),
        new("plainPressure", "pedalHot", '-', 1, 10),
    ],
    NoTrends =
    [
        new("forces", "one for each axle: what one axle gains the other loses"), new("thresholds", "move the share from axle to axle"), new("valveKnee", "moves the share from axle to axle"),
        new("valveSlope", "moves the share from axle to axle"), new("metering", "moves the share from axle to axle"), new("rearShare", "moves the share from axle to axle"), new("deceleration", "a harder stop is a shorter one: the heat is the same"),
        new("speed", "faster makes more heat a second but leaves less time, more air and better cooling"), new("stopsCount", "counts whole stops"),
        new("interval", "more time cools, but part of it is driven slower"),
        new("liningAreas", "more lining holds more heat and leads more of it on"), new("frontSensitivity", "moves the share to the rear axle and back"), new("rearSensitivity", "moves the share to the front axle and back"),
        new("speedProfile", "any shape"), new("heightProfile", "any shape"), new("centerX", "bears on which axle locks first alone"), new("centerHeight", "bears on which axle locks first alone"),
        new("wheelbase", "bears on which axle locks first alone"), new("grip", "bears on which axle locks first alone"), new("cutIn", "one figure of the pedal's line among six"),
        new("jumpIn", "one figure of the pedal's line among six"), new("knee", "one figure of the pedal's line among six"), new("kneePressure", "one figure of the pedal's line among six"),
        new("deadLoss", "not used while the booster works"),
    ],
    Examples = DriveHeatExamples.All,
    Cautions =
    [
        HowToMeasureHeat.Estimate, HowToMeasureHeat.Grades, HowToMeasureHeat.Makers,
        "Fluid that boils lets the pedal fall to the floor without warning. Change it yearly; never mix silicone fluid with the others.",
    ],
})
{
    public sealed record Inputs(
        [Input("total mass", "kg", MoreThan = 0, Measure = HowToMeasureHeat.Mass)] UnitsNet.Mass Mass,
        [Input("braking force of each axle at 1000 psi over its threshold", "N", AtLeast = 0, Measure = HowToMeasureHeat.Force)] Members<Force> Forces,
        [Input("threshold pressure of each axle", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Threshold)] Members<Pressure> Thresholds,
        [Input(How.Valve, OneOf = [How.NoValve, How.FixedValve, How.AdjustableValve, How.LoadValve], Measure = How.ValveKind)] string Valve,
        [Input("line pressure at the rear valve's knee", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Valve)] Pressure? ValveKnee,
        [Input("slope of the rear valve above its knee", AtLeast = 0, High = 1, Measure = HowToMeasureHeat.Slope)] Ratio? ValveSlope,
        [Input("pressure at which the metering valve opens", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Metering)] Pressure? Metering,
        [Input("pressure of the rear circuit over that of the front", MoreThan = 0, Low = 0.2, High = 3, Measure = HowToMeasureHeat.RearShare)] Ratio? RearShare,
        [Input("kind of front brake", OneOf = [TwoAxles.Disc, TwoAxles.Drum], Measure = HowToMeasureHeat.Kind)] Members<string> FrontKind,
        [Input("kind of rear brake", OneOf = [TwoAxles.Disc, TwoAxles.Drum], Measure = HowToMeasureHeat.Kind)] Members<string> RearKind,
        [Input("mass of one rotor or drum of each axle", "kg", MoreThan = 0, Low = 2, High = 60, Measure = HowToMeasureHeat.HeatMass)] Members<UnitsNet.Mass> HeatMasses,
        [Input("share of the heat that goes into the iron of each axle", MoreThan = 0, High = 1, Measure = HowToMeasureHeat.RotorShare)] Members<Ratio> RotorShares,
        [Input("heat shed by one wheel of each axle at 40 mph when 100 K hotter than the air", "W", MoreThan = 0, Low = 100, High = 6000, Measure = HowToMeasureHeat.Cooling)] Members<Power> Cooling,
        [Input("what the air sweeps of one rotor or drum of each axle", "cm2", AtLeast = 0, High = 5000, Measure = HowToMeasureHeat.CoolingArea)] Members<Area> CoolingAreas,
        [Input("all lining of one wheel of each axle", "cm2", MoreThan = 0, Low = 20, High = 800, Measure = HowToMeasureHeat.LiningArea)] Members<Area> LiningAreas,
        [Input("friction letters of the front linings", Notation = typeof(FrictionLetters), Measure = HowToMeasureHeat.Letters)] Members<string>? FrontLetters,
        [Input("friction letters of the rear linings", Notation = typeof(FrictionLetters), Measure = HowToMeasureHeat.Letters)] Members<string>? RearLetters,
        [Input("change of the front torque over that of friction", AtLeast = 1, High = 5, Measure = HowToMeasureHeat.Sensitivity)] Members<Ratio>? FrontSensitivity,
        [Input("change of the rear torque over that of friction", AtLeast = 1, High = 5, Measure = HowToMeasureHeat.Sensitivity)] Members<Ratio>? RearSensitivity,
        [Input("kind of front lining", OneOf = [Linings.Organic, Linings.SemiMetallic, Linings.Ceramic, Linings.Sintered], Measure = HowToMeasureHeat.Lining)] Members<string>? FrontLining,
        [Input("kind of rear lining", OneOf = [Linings.Organic, Linings.SemiMetallic, Linings.Ceramic, Linings.Sintered], Measure = HowToMeasureHeat.Lining)] Members<string>? RearLining,
        [Input("speed over the way driven", "m", CurveUnit = "km/h", Measure = HowToMeasureHeat.SpeedProfile)] Curve? SpeedProfile,
        [Input("height over the way driven", "m", CurveUnit = "m", Measure = HowToMeasureHeat.HeightProfile)] Curve? HeightProfile,
        [Input("grade as rise over run", AtLeast = 0, High = 0.5, Default = 0.07, Measure = HowToMeasureHeat.Grade)] Ratio Grade,
        [Input("length of the grade", "km", MoreThan = 0, High = 100, Default = 6, Measure = HowToMeasureHeat.Length)] Length Length,
        [Input("speed on the grade", "km/h", MoreThan = 0, Low = 10, High = 120, Default = 60, Measure = HowToMeasureHeat.Speed)] Speed Speed,
        [Input("power that the engine holds back", "kW", AtLeast = 0, High = 100, Default = 0, Measure = HowToMeasureHeat.EnginePower)] Power EnginePower,
        [Input("number of stops after the grade", AtLeast = 0, High = 100, Default = 15, Measure = HowToMeasureHeat.Stops)] Ratio StopsCount,
        [Input("speed at which each stop begins", "mph", MoreThan = 0, High = 100, Default = 50, Measure = HowToMeasureHeat.From)] Speed StopsFrom,
        [Input("speed at which each stop ends", "mph", AtLeast = 0, High = 100, Default = 25, Measure = HowToMeasureHeat.To)] Speed StopsTo,
        [Input("time from one stop to the next", "s", MoreThan = 0, Low = 10, Default = 45, Measure = HowToMeasureHeat.Interval)] Duration Interval,
        [Input("deceleration as a share of g", MoreThan = 0, High = 1.2, Default = 0.6, Measure = HowToMeasureHeat.Braking)] Ratio Deceleration,
        [Input("mass with what turns over mass", AtLeast = 1, High = 2, Default = 1.04, Measure = HowToMeasureHeat.Rotating)] Ratio RotatingFactor,
        [Input("rolling resistance as a share of weight", AtLeast = 0, High = 0.1, Default = 0.015, Measure = HowToMeasureHeat.Rolling)] Ratio RollingResistance,
        [Input("drag area; 0 leaves the air out", "m2", AtLeast = 0, High = 6, Default = 0, Measure = HowToMeasureHeat.DragArea)] Area DragArea,
        [Input("density of the air", "kg/m3", AtLeast = 0, Low = 0.7, High = 1.5, Default = 1.2, Measure = HowToMeasureHeat.AirDensity)] Density AirDensity,
        [Input("temperature of the brakes before", "C", Low = -40, High = 500, Default = 80, Measure = HowToMeasureHeat.Start)] Temperature StartTemperature,
        [Input("temperature of the air", "C", Low = -40, High = 60, Default = 25, Measure = HowToMeasureHeat.Air)] Temperature AirTemperature,
        [Input("grade of brake fluid", OneOf = [FluidGrade.Dot3, FluidGrade.Dot4, FluidGrade.Dot5, FluidGrade.Dot51], Measure = HowToMeasureHeat.Fluid)] string? FluidGrade,
        [Input("state of the fluid", OneOf = [FluidNew, FluidOld], Measure = HowToMeasureHeat.FluidState)] string? FluidState,
        [Input("center of gravity behind the front axle", "m", MoreThan = 0, Measure = HowToMeasureHeat.Center)] Length? CenterX,
        [Input("height of the center of gravity over the ground", "m", MoreThan = 0, Measure = HowToMeasureHeat.CenterHeight)] Length? CenterHeight,
        [Input("wheelbase", "m", MoreThan = 0, Measure = HowToMeasureHeat.Wheelbase)] Length? Wheelbase,
        [Input("grip of the road", MoreThan = 0, High = 1.2, Default = 0.7, Measure = HowToMeasureHeat.Grip)] Ratio Grip,
        [Input("pedal force at which the booster begins", "N", AtLeast = 0, Measure = HowToMeasureHeat.Pedal)] Force? CutIn,
        [Input("line pressure just above it", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Pedal)] Pressure? JumpIn,
        [Input("pedal force at which the booster runs out", "N", AtLeast = 0, Measure = HowToMeasureHeat.Pedal)] Force? Knee,
        [Input("line pressure there", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Pedal)] Pressure? KneePressure,
        [Input("line pressure by the leg alone at 100 lbf", "MPa", MoreThan = 0, Measure = HowToMeasureHeat.Pedal)] Pressure? PlainPressure,
        [Input("line pressure that a dead booster takes", "MPa", AtLeast = 0, Measure = HowToMeasureHeat.Pedal)] Pressure? DeadLoss);

    public sealed record Result(
        [Output("highest temperature of the front rotors or drums", "C")] Temperature FrontRotor,
        [Output("highest temperature of the rear rotors or drums", "C")] Temperature RearRotor,
        [Output("highest temperature of the front linings", "C")] Temperature FrontLining,
        [Output("highest temperature of the rear linings", "C")] Temperature RearLining,
        [Output("highest temperature of the fluid at the front pistons", "C")] Temperature FrontFluid,
        [Output("highest temperature of the fluid at the rear pistons", "C")] Temperature RearFluid,
        [Output("front braking force at the worst moment over the cold one")] Ratio? FrontHotShare,
        [Output("rear braking force at the worst moment over the cold one")] Ratio? RearHotShare,
        [Output("front friction then over the cold one")] Ratio? FrontFriction,
        [Output("rear friction then over the cold one")] Ratio? RearFriction,
        [Output("pedal force for the hard stop with cold brakes", "N")] Force? PedalCold,
        [Output("pedal force for the hard stop with hot brakes", "N")] Force? PedalHot,
        [Output("heat that all brakes took", "kJ")] Energy Heat,
        [Output("time driven, with 15 minutes of standing", "min")] Duration Time);

    internal const string FluidNew = "new", FluidOld = "old";

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (!TwoAxles.Knows(w, x.Valve, x.ValveKnee, x.ValveSlope)) return null;
        if (DriveHeatSetup.Of(x) is not { } setup) return null;
        if (setup.Profile.Wrong() is { } wrong) return DriveHeatAnswer.Unknown(w, x, wrong);
        var run = setup.Begin();
        var log = w.Shown ? new List<HeatPoint>() : null;
        if (!setup.Profile.Drive(run, setup.Vehicle, log)) return DriveHeatAnswer.Stopped(w, x, run);
        if (log is not null) DriveHeatAnswer.Draw(w, x, log);
        return DriveHeatAnswer.Of(w, x, setup, run);
    }
}
