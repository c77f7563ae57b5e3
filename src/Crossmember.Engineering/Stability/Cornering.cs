using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Stability;

/// <summary>Load moved to the outer wheels in a bend, and the sideways pull at which the inner wheels would lift.</summary>
/// <remarks>
/// Formula:  dW = W [ay (h + s) + |y|] / T, s the way the weight moves outward as the body leans under 1 g; lifts where ay (h + s) = T/2 - |y|
/// Valid:    steady cornering on a level road, lean in proportion to the pull; tires rigid; both axles taken together, so that one wheel of the stiffer axle lifts sooner (springs.body-roll)
/// Source:   statics, docs/derivations/tip-angles.md
/// Example:  T 1.47 m, h 0.72 m, no lean -> wheels lift at 1.021 g; 2150 kg at 0.4 g: 4131 N moved
/// </remarks>
public sealed class Cornering() : Calculation<Cornering.Inputs, Cornering.Result>(new()
{
    Id = "stability.cornering",
    Version = 1,
    Title = "Load moved in a bend",
    Purpose = "What a bend takes off the inner wheels, and the pull sideways at which they lift: an all-terrain tire on dry road can hold 0.7 to 0.8 g, and what lifts before it slides rolls over.",
    Formula = "dW = W [ay (h + s) + |y|] / T; inner wheels lift at ay = (T / 2 - |y|) / (h + s)",
    Validity = "Steady bend, level road, lean in proportion to the pull. Quick swerves, bumps and a tripped wheel roll a vehicle over long before.",
    Sources = ["Statics, derived", "Grip of tires on dry road: common practice, no source"],
    Checks = [new("slides-first", Sense.AtLeast, "Do the tires slide before the wheels lift?")],
    Trends =
    [
        new("lateral", "moved", '+', 0.1, 0.8), new("height", "lifts", '-', 0.5, 1.2), new("frontTrack", "lifts", '+', 1.2, 2), new("rearTrack", "lifts", '+', 1.2, 2),
        new("shiftPerG", "lifts", '-', 0, 0.2), new("total", "moved", '+', 1000, 4000),
    ],
    NoTrends = [new("offset", "the worse side decides: off the middle either way lowers it"), new("grip", "only compared with the result"), new("firstWheel", "only compared with the grip")],
    Examples =
    [
        new(new Dictionary<string, string> { ["total"] = "2150 kg", ["frontTrack"] = "1.47 m", ["rearTrack"] = "1.47 m", ["height"] = "0.72 m", ["lateral"] = "0.4" },
            new Dictionary<string, double> { ["moved"] = 928.7, ["lifts"] = 1.0208 }, 0.0005, "2150 x 9.80665 x 0.4 x 0.72 / 1.47 = 4130.9 N and 1.47 / 1.44, by hand", Provenance.Derived),
    ],
    Cautions = [HowToMeasureStability.NotForPeople, "Do not try for the limit on the road. A tall vehicle trips on a curb, a rut or soft ground far below these figures."],
})
{
    public sealed record Inputs(
        [Input("total mass", "kg", MoreThan = 0, Measure = "drive it over a scale, one axle at a time, and add the readings")] UnitsNet.Mass Total,
        [Input("track of the front axle", "m", MoreThan = 0, Low = 0.8, High = 2.6, Measure = HowToMeasureStability.Track)] Length FrontTrack,
        [Input("track of the rear axle", "m", MoreThan = 0, Low = 0.8, High = 2.6, Measure = HowToMeasureStability.Track)] Length RearTrack,
        [Input("height of the center of gravity over the ground", "m", MoreThan = 0, Low = 0.3, High = 2, Measure = HowToMeasureStability.Height)] Length Height,
        [Input("center of gravity to the right of the middle; negative to the left", "m", Low = -0.2, High = 0.2, Default = 0, Measure = HowToMeasureStability.Offset)] Length Offset,
        [Input("how far the weight moves outward as the body leans under 1 g sideways", "m", AtLeast = 0, High = 0.3, Measure = HowToMeasureStability.Shift)] Length? ShiftPerG,
        [Input("pull sideways at which the first inner wheel lifts by its springs, as a share of g", MoreThan = 0, High = 5, Measure = "comes from springs, roll centers and tracks")] Ratio? FirstWheel,
        [Input("pull sideways as a share of g", AtLeast = 0, High = 1, Default = 0.4, Measure = "0.4 is a brisk bend on the road")] Ratio Lateral,
        [Input("grip of the tires sideways, as a share of the load on them", MoreThan = 0, High = 1.2, Default = 0.75, Measure = "take 0.7 to 0.8 on dry pavement")] Ratio Grip);

    public sealed record Result(
        [Output("load moved from the inner wheels to the outer", "lbf")] Force? Moved,
        [Output("pull sideways at which the inner wheels lift, as a share of g")] Ratio? Lifts);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double W = x.Total.Kilograms * 9.80665, T = (x.FrontTrack.Meters + x.RearTrack.Meters) / 2, h = x.Height.Meters; // N, m
        double y = Math.Abs(x.Offset.Meters), s = x.ShiftPerG?.Meters ?? 0, ay = x.Lateral.DecimalFractions, mu = x.Grip.DecimalFractions;
        var arm = (T / 2) - y;
        if (arm <= 0)
        {
            w.Answer("slides-first", Verdict.Fail, $"By these figures the center of gravity lies {1000 * y:0} mm off the middle, outside the wheels: check the side readings.");
            return new(null, null);
        }
        double moved = W * ((ay * (h + s)) + y) / T, lifts = arm / (h + s);
        w.Line("dW", "W [ay (h + s) + |y|] / T", $"{W} x [{ay} x ({h} + {s}) + {y}] / {T}", moved, "N");
        w.Line("ay", "(T / 2 - |y|) / (h + s)", $"{arm} / ({h} + {s})", lifts, "1");
        if (x.ShiftPerG is null) w.Caution("The lean of the body is not known: a rigid vehicle is assumed, which is too good.");
        var first = Math.Min(lifts, x.FirstWheel?.DecimalFractions ?? lifts);
        var told = first < mu
            ? $"The first inner wheel would lift at {first:0.00} g, both at {lifts:0.00} g; tires that hold {mu:0.00} g do not slide before: lower the load or widen the stance."
            : $"Tires that hold {mu:0.00} g slide before the first inner wheel lifts at {first:0.00} g.";
        if (x.ShiftPerG is null) w.Answer("slides-first", Verdict.Caution, $"{told} The lean of the body is not known: as if rigid, which is too good.", first, "1", "common practice, no source");
        else w.AtLeast("slides-first", first, mu, "1", told, "common practice, no source", watch: 1.1 * mu, beyond: Verdict.Caution);
        return new(ay > lifts ? null : Force.FromNewtons(moved), Ratio.FromDecimalFractions(lifts));
    }
}
