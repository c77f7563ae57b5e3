using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Driveline;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>What hanging a winch before the front axle does to both axles and to the front springs.</summary>
/// <remarks>
/// Formula:  front + m (L + a) / L, rear - m a / L; front springs: drop = front change x g / (2 k)
/// Valid:    level ground; a is ahead of the front axle, negative behind it; the springs' rate over the small change
/// Source:   statics, docs/derivations/axle-and-wheel-load.md
/// Example:  68 kg, 620 mm before the axle of 2560 mm -> front +84.47 kg, rear -16.47 kg
/// </remarks>
public sealed class WinchOnAxle() : Calculation<WinchOnAxle.Inputs, WinchOnAxle.Result>(new()
{
    Id = "recovery.winch-on-axle",
    Version = 1,
    Title = "Winch on the front axle",
    Purpose = "A winch before the axle loads the front springs with more than it weighs and takes load off the rear: what that is by itself, before anything else is fitted.",
    Formula = "front + m (L + a) / L; rear - m a / L; drop of the front = m (L + a) / L x g / (2 k)",
    Validity = "Standing on level ground. It tells what the winch alone does, apart from the bumper it sits on; the masses of the chosen parts carry it in the axle loads already.",
    Sources = ["Statics, derived"],
    Trends = [new("mass", "front", '+', 20, 80), new("ahead", "front", '+', -500, 1000), new("wheelbase", "rear", '+', 2000, 4000), new("wheelRate", "drop", '-', 15, 80)],
    Examples =
    [
        new(new Dictionary<string, string> { ["mass"] = "68 kg", ["ahead"] = "620 mm", ["wheelbase"] = "2560 mm", ["wheelRate"] = "35 N/mm" },
            new Dictionary<string, double> { ["front"] = 84.47, ["rear"] = -16.47, ["drop"] = 11.83 }, 0.0005, "68 x 3180 / 2560 by hand; 84.47 x 9.80665 / 70", Provenance.Derived),
    ],
    Cautions = ["Weigh the finished vehicle, and set lamps and toe again after the front has come down."],
})
{
    public sealed record Inputs(
        [Input("mass of the winch with its rope", "kg", MoreThan = 0, Low = 5, High = 300, Measure = "weigh it, or read the maker's sheet")] UnitsNet.Mass Mass,
        [Input("how far before the front axle its middle sits; negative behind it", "mm", Low = -6000, High = 2000, Measure = "tape along the frame from the front hub")] Length Ahead,
        [Input("wheelbase", "mm", MoreThan = 0, Low = 1200, High = 8000, Measure = "tape between the hub centers on both sides and take the mean")] Length Wheelbase,
        [Input("rate of the front springs at a wheel", "N/mm", MoreThan = 0, Measure = "put a known load on the front and tape how far it comes down")] ForcePerLength? WheelRate);

    public sealed record Result(
        [Output("front axle carries more by", "kg")] UnitsNet.Mass Front,
        [Output("rear axle carries more by; negative is less", "kg")] UnitsNet.Mass Rear,
        [Output("front springs come down by", "mm")] Length? Drop);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double m = x.Mass.Kilograms, a = x.Ahead.Meters, L = x.Wheelbase.Meters, front = m * (L + a) / L; // kg, m
        w.Line("front", "m (L + a) / L", $"{m} x ({L} + {a}) / {L}", front, "kg");
        w.Line("rear", "-m a / L", $"-{m} x {a} / {L}", -m * a / L, "kg");
        double? drop = x.WheelRate is { } k ? front * Resistance.Gravity / (2 * k.NewtonsPerMeter) : null; // m
        if (drop is { } s) w.Line("drop", "front g / (2 k)", $"{front} x {Resistance.Gravity} / (2 x {x.WheelRate!.Value.NewtonsPerMeter})", s, "m");
        return new(UnitsNet.Mass.FromKilograms(front), UnitsNet.Mass.FromKilograms(-m * a / L), drop is { } d ? Length.FromMeters(d) : null);
    }
}
