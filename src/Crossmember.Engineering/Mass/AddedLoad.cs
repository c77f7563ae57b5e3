using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Mass;

/// <summary>What a load put on the roof, or hung ahead of or behind an axle, does to axle loads and to the center of gravity.</summary>
/// <remarks>
/// Formula:  rear + m x / L, front + m (L - x) / L; x' = (M X + m x) / (M + m), h' = (M H + m h) / (M + m) (kg, m)
/// Valid:    level ground, rigid springs: what the springs give is left to springs.ride-height
/// Source:   statics, docs/derivations/axle-and-wheel-load.md
/// Example:  74 kg, 3.30 m behind the front axle of a 2.56 m wheelbase -> rear +95.39 kg, front -21.39 kg
/// </remarks>
public sealed class AddedLoad() : Calculation<AddedLoad.Inputs, AddedLoad.Result>(new()
{
    Id = "mass.added-load",
    Version = 1,
    Title = "A load on the roof or behind the axle",
    Purpose = "What a roof rack, a spare carrier or a bumper does before it is bolted on: a load behind the rear axle puts more than itself on the rear and lifts the front.",
    Formula = "rear + m x / L, front + m (L - x) / L; x' = (M X + m x) / (M + m); h' = (M H + m h) / (M + m); factor T / (2 h')",
    Validity = "Level ground, standing; the springs' giving way is left out here, which errs low by a few millimetres of height.",
    Sources = ["Statics, derived"],
    Checks =
    [
        new("front-kept", Sense.AtLeast, "Does the front axle keep enough load to steer?"),
        new("factor", Sense.AtLeast, "How much of the static stability factor is left?", "frontTrack", "rearTrack"),
    ],
    Trends =
    [
        new("added", "rearChange", '+', 1, 300), new("behindFrontAxle", "rearChange", '+', -1, 5), new("behindFrontAxle", "frontChange", '-', -1, 5),
        new("addedHeight", "height", '+', 0.5, 2.5), new("centerHeight", "height", '+', 0.5, 1), new("frontTrack", "staticFactor", '+', 1.2, 2), new("rearTrack", "staticFactor", '+', 1.2, 2),
        new("centerX", "centerX", '+', 0.8, 1.6),
    ],
    NoTrends =
    [
        new("total", "the heavier the vehicle the less a load moves its center of gravity, up or down"), new("wheelbase", "a longer one shares the load more evenly, more on one axle and less on the other"),
    ],
    Examples =
    [
        new(Given("74 kg", "3.30 m", "1.00 m"), new Dictionary<string, double> { ["frontChange"] = -21.39, ["rearChange"] = 95.39 }, 0.0003,
            "Spare carrier 74 kg at 3.30 m of 2.56 m: 74 x 3.30 / 2.56, by hand to 0.01 kg", Provenance.Derived),
        new(Given("45 kg", "1.35 m", "1.95 m"), new Dictionary<string, double> { ["frontChange"] = 21.27, ["rearChange"] = 23.73 }, 0.0003,
            "Rack 45 kg at 1.35 m of 2.56 m, by hand to 0.01 kg", Provenance.Derived),
        new(new Dictionary<string, string>(Given("45 kg", "1.35 m", "1.95 m")) { ["frontTrack"] = "1.46 m", ["rearTrack"] = "1.48 m" },
            new Dictionary<string, double> { ["height"] = 745.2, ["staticFactor"] = 0.9863 }, 0.0003,
            "(2150 x 0.72 + 45 x 1.95) / 2195 and 1.47 / (2 x 0.74522), by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "A roof load counts twice: it raises the center of gravity and rocks the body. Keep within the rack's and the roof's marked loads, and off side slopes.",
        "What hangs behind the rear axle takes load off the steered wheels: weigh both axles afterwards.",
    ],
})
{
    /// <summary>Share of the mass that the steered axle should keep. Common practice, no source.</summary>
    private const double LeastOnFront = 0.3;

    public sealed record Inputs(
        [Input("total mass before", "kg", MoreThan = 0, Measure = AxleBalance.HowTotal)] UnitsNet.Mass Total,
        [Input("center of gravity behind the front axle before", "m", Low = 0.3, High = 6, Measure = "rear axle load over total mass, times the wheelbase")] Length CenterX,
        [Input("center of gravity over the ground before", "m", MoreThan = 0, Low = 0.3, High = 2, Measure = "weigh it once with an axle lifted")] Length CenterHeight,
        [Input("wheelbase", "m", MoreThan = 0, Low = 1.2, High = 8, Measure = AxleBalance.HowWheelbase)] Length Wheelbase,
        [Input("load to be added", "kg", AtLeast = 0, High = 2000, Default = 50, Measure = "put it on a bathroom scale")] UnitsNet.Mass Added,
        [Input("its center behind the front axle; negative ahead of it", "m", Low = -2, High = 8, Measure = "tape from the front hub center along the vehicle")] Length BehindFrontAxle,
        [Input("its center over the ground", "m", MoreThan = 0, High = 4, Measure = "tape from the ground")] Length AddedHeight,
        [Input("track of the front axle", "m", MoreThan = 0, Low = 0.8, High = 2.6, Measure = AxleBalance.HowTrack)] Length? FrontTrack,
        [Input("track of the rear axle", "m", MoreThan = 0, Low = 0.8, High = 2.6, Measure = AxleBalance.HowTrack)] Length? RearTrack);

    public sealed record Result(
        [Output("change of the front axle load", "kg")] UnitsNet.Mass? FrontChange,
        [Output("change of the rear axle load", "kg")] UnitsNet.Mass? RearChange,
        [Output("center of gravity behind the front axle after", "mm")] Length? CenterX,
        [Output("center of gravity over the ground after", "mm")] Length? Height,
        [Output("static stability factor after")] Ratio? StaticFactor);

    protected override Result Solve(Inputs v, Worksheet w)
    {
        double M = v.Total.Kilograms, X = v.CenterX.Meters, H = v.CenterHeight.Meters, L = v.Wheelbase.Meters; // kg, m
        double m = v.Added.Kilograms, x = v.BehindFrontAxle.Meters, h = v.AddedHeight.Meters;
        double rear = m * x / L, front = m - rear, after = ((M * X) + (m * x)) / (M + m), height = ((M * H) + (m * h)) / (M + m);
        w.Line("rear", "m x / L", $"{m} x {x} / {L}", rear, "kg");
        w.Line("front", "m - m x / L", $"{m} - {rear}", front, "kg");
        w.Line("h'", "(M H + m h) / (M + m)", $"({M} x {H} + {m} x {h}) / ({M} + {m})", 1000 * height, "mm");
        var onFront = 1 - (after / L);
        if (onFront <= 0 || onFront >= 1)
        {
            var lifted = $"With {m:0} kg there the {(onFront <= 0 ? "front" : "rear")} axle would leave the ground: check mass and place.";
            w.Answer("front-kept", Verdict.Fail, lifted);
            w.Answer("factor", Verdict.Fail, lifted);
            return new(null, null, null, null, null);
        }
        w.AtLeast("front-kept", 100 * onFront, 100 * LeastOnFront, "%", $"{100 * onFront:0.0} % of the weight stays on the front axle, which changes by {front:+0.0;-0.0;0} kg.",
            "common practice, no source", beyond: Verdict.Caution);
        if (v.FrontTrack is not { } tf || v.RearTrack is not { } tr) return new(Of(front), Of(rear), Length.FromMeters(after), Length.FromMeters(height), null);
        double T = (tf.Meters + tr.Meters) / 2, was = T / (2 * H), now = T / (2 * height); // m
        w.Line("factor", "T / (2 h')", $"{T} / (2 x {height})", now, "1");
        w.AtLeast("factor", now, 0.95 * was, "1", $"The static stability factor goes from {was:0.000} to {now:0.000} with {m:0} kg there.", "common practice, no source", beyond: Verdict.Caution);
        return new(Of(front), Of(rear), Length.FromMeters(after), Length.FromMeters(height), Ratio.FromDecimalFractions(now));
    }

    private static Dictionary<string, string> Given(string added, string at, string height) => new()
    {
        ["total"] = "2150 kg", ["centerX"] = "1291.9 mm", ["centerHeight"] = "720 mm", ["wheelbase"] = "2560 mm", ["added"] = added, ["behindFrontAxle"] = at, ["addedHeight"] = height,
    };

    private static UnitsNet.Mass Of(double kg) => UnitsNet.Mass.FromKilograms(kg);
}
