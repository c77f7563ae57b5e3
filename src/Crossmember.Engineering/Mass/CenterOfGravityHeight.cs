using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Mass;

/// <summary>Height of the center of gravity from a weighing with the rear axle lifted.</summary>
/// <remarks>
/// Formula:  h = r + L (Wf' - Wf) / (W tan th), sin th = H / L, r = rf Wf / W + rr (1 - Wf / W) (m, kg)
/// Valid:    springs blocked, wheels free to roll, lift well over 0.4 m; the readings change little, so a kilogram on the scale is worth millimetres of height
/// Source:   statics, docs/derivations/raised-axle.md; UMTRI-91-4 (abstract) on how far laboratories differ
/// Example:  2150 kg, 2560 mm, radius 400 mm, rear lifted 600 mm, front 1065.01 -> 1129.80 kg: 0.720 m
/// </remarks>
public sealed class CenterOfGravityHeight() : Calculation<CenterOfGravityHeight.Inputs, CenterOfGravityHeight.Result>(new()
{
    Id = "mass.center-of-gravity-height",
    Version = 1,
    Title = "Height of the center of gravity, weighed",
    Purpose = "How high the weight sits, from two readings of one scale: what decides lean, tipping and how load moves under braking. "
        + "For a lift at the front, give the rear axle's readings as front and swap the radii.",
    Formula = "sin th = H / L; r = rf Wf / W + rr (1 - Wf / W); h = r + L (Wf' - Wf) / (W tan th)",
    Validity = "Springs blocked so that only the whole vehicle tilts, wheels free to roll, tanks full or empty, lift well over 0.4 m. "
        + "Even test laboratories differed from each other: take the error band seriously.",
    Sources = ["Statics, derived", "UMTRI-91-4, comparison of center-of-gravity height tests between laboratories (abstract)"],
    Checks =
    [
        new("readings", null, "Can these readings be?"),
        new("lift", Sense.AtLeast, "Was the axle lifted far enough?"),
        new("error", Sense.AtMost, "Is the error band narrow enough to rely on?"),
    ],
    Trends =
    [
        new("frontRaised", "height", '+', 1066, 1300), new("wheelRadiusFront", "height", '+', 0.3, 0.5), new("wheelRadiusRear", "height", '+', 0.3, 0.5),
        new("readingError", "heightError", '+', 0.5, 10),
    ],
    NoTrends =
    [
        new("wheelbase", "stands in the angle and in the lever: which wins depends on the lift"), new("mass", "divides the gain and moves the center of gravity between the wheels"),
        new("frontLevel", "lowers the gain and moves the center of gravity toward the front wheels"), new("raise", "for given readings a higher lift means a lower center of gravity or, below the wheel centers, a higher one"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["wheelbase"] = "2560 mm", ["mass"] = "2150 kg", ["frontLevel"] = "1065.01 kg", ["frontRaised"] = "1129.80 kg", ["raise"] = "600 mm",
                ["wheelRadiusFront"] = "400 mm", ["wheelRadiusRear"] = "400 mm",
            },
            new Dictionary<string, double> { ["height"] = 0.720 }, 0.0007, "Moments about the front axle on the slope, by hand to 0.5 mm", Provenance.Derived),
    ],
    Cautions =
    [
        "Lifting a vehicle can kill. Rated lift or hoist and stands, on firm level ground, straps that cannot slip; nobody under or in it. "
        + "Brakes off, chocks set with a small gap: a loaded chock falsifies the reading.",
        "Block the springs, settle fuel and oil, note what is on board.",
        "The answer is an estimate with an error band, never a proof that a slope is safe.",
    ],
})
{
    public sealed record Inputs(
        [Input("wheelbase", "m", MoreThan = 0, Low = 1.2, High = 8, Measure = AxleBalance.HowWheelbase)] Length Wheelbase,
        [Input("mass of the whole vehicle", "kg", MoreThan = 0, Low = 300, High = 20000, Measure = AxleBalance.HowTotal)] UnitsNet.Mass Mass,
        [Input("front axle load, level", "kg", MoreThan = 0, Measure = "both front wheels on scales, rear wheels on blocks as high as the scales")] UnitsNet.Mass FrontLevel,
        [Input("front axle load with the rear axle lifted", "kg", MoreThan = 0, Measure = "lift the rear axle two feet or more and read the same scales again")] UnitsNet.Mass FrontRaised,
        [Input("lift of the rear wheel centers", "m", MoreThan = 0, High = 1.5, Measure = "tape from the floor to the rear hub center, before and after")] Length Raise,
        [Input("front hub center over the ground", "m", MoreThan = 0, Low = 0.2, High = 0.8, Measure = "tape from the floor to the hub center, level")] Length WheelRadiusFront,
        [Input("rear hub center over the ground", "m", MoreThan = 0, Low = 0.2, High = 0.8, Measure = "tape from the floor to the hub center, level")] Length WheelRadiusRear,
        [Input("one standard uncertainty of a scale reading", "kg", AtLeast = 0, High = 50, Default = 2,
            Measure = "roll on and off three times and see how far the readings differ")] UnitsNet.Mass ReadingError);

    public sealed record Result(
        [Output("height of the center of gravity over the ground", "m")] Length? Height,
        [Output("one standard uncertainty of it", "m")] Length? HeightError);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var r = new RaisedAxle(x.Wheelbase.Meters, x.Mass.Kilograms, x.FrontLevel.Kilograms, x.FrontRaised.Kilograms, x.Raise.Meters, x.WheelRadiusFront.Meters, x.WheelRadiusRear.Meters);
        w.AtLeast("lift", r.Raise, RaisedAxle.LeastRaise, "m", $"The axle was lifted {1000 * r.Raise:0} mm; at least {1000 * RaisedAxle.LeastRaise:0} mm keeps the scale's error small.",
            "common practice, no source", beyond: Verdict.Caution);
        if (r.Impossible() is { } fault)
        {
            w.Answer("readings", Verdict.Fail, $"These readings cannot be: {fault}.");
            return new(null, null);
        }
        w.Line("th", "asin(H / L)", $"asin({r.Raise} / {r.Wheelbase})", Math.Atan(r.Tan) * 180 / Math.PI, "deg");
        w.Line("r", "rf Wf / W + rr (1 - Wf / W)", $"{r.RadiusDown} x {r.Share} + {r.RadiusUp} x {1 - r.Share}", r.RadiusAtCenter, "m");
        w.Line("h", "r + L (Wf' - Wf) / (W tan th)", $"{r.RadiusAtCenter} + {r.Wheelbase} x ({r.Raised} - {r.Level}) / ({r.Mass} x {r.Tan})", r.Height, "m");
        var spread = r.Spread(x.ReadingError.Kilograms);
        w.Line("dh / dW", "L / (W tan th)", $"{r.Wheelbase} / ({r.Mass} x {r.Tan})", 1000 * r.Sensitivity, "mm");
        w.Answer("readings", r.Raised < r.Level ? Verdict.Caution : Verdict.Pass, r.Raised < r.Level
            ? "The axle on the scale got lighter when the other was lifted: the center of gravity would lie below the wheel centers. Read both again."
            : $"The axle on the scale gained {r.Raised - r.Level:0.#} kg.");
        w.AtMost("error", spread, 0.05, "m", $"One kilogram on the scale is {1000 * r.Sensitivity:0.0} mm of height: known to about {1000 * spread:0} mm either way.",
            "common practice, no source", beyond: Verdict.Caution);
        return new(Length.FromMeters(r.Height), Length.FromMeters(spread));
    }
}
