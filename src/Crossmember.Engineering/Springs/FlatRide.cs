using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Springs;

/// <summary>Whether the rear bounces faster than the front, so that a bump met one after the other ends in step.</summary>
/// <remarks>
/// Formula:  rear frequency that meets the front after 1.5 swings: 1 / (1 / ff - L / (1.5 v))
/// Valid:    both ends bouncing by themselves, one bump, little damping
/// Source:   M. Olley, SAE, 1934, from memory: the rear springs have the higher frequency; timing derived in docs/derivations/springs.md
/// Example:  1.4 Hz, 3.2 m, 60 mph -> 1.57 Hz
/// </remarks>
public sealed class FlatRide() : Calculation<FlatRide.Inputs, FlatRide.Result>(new()
{
    Id = "springs.flat-ride",
    Version = 1,
    Title = "Front and rear bounce together",
    Purpose = "A bump lifts the front first. If the rear bounces faster it catches up and the body ends level; if it bounces slower the vehicle nods on and on.",
    Formula = "ratio = rear / front frequency; in step after one and a half swings at rear = 1 / (1 / front - wheelbase / (1.5 v))",
    Validity = "Two ends that bounce by themselves, one bump, little damping. A rule for comfort, not for safety, and loading changes it.",
    Sources =
    [
        "M. Olley, Independent Wheel Suspension: Its Whys and Wherefores, SAE, 1934, from memory, to be checked in the paper", "Timing of two swings, derived (docs/derivations/springs.md)",
    ],
    Checks = [new("rear-faster", Sense.AtLeast, "Does the rear bounce at least as fast as the front?")],
    Trends =
    [
        new("frontFrequency", "ratio", '-', 0.9, 2), new("rearFrequency", "ratio", '+', 0.9, 2.5), new("wheelbase", "meetingRear", '+', 1.8, 4), new("cruiseSpeed", "meetingRear", '-', 30, 80),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["frontFrequency"] = "1.4 Hz", ["rearFrequency"] = "1.6 Hz", ["wheelbase"] = "3.2 m", ["cruiseSpeed"] = "60 mph" },
            new Dictionary<string, double> { ["ratio"] = 1.142857, ["meetingRear"] = 1.5754 }, 0.0001, "1 / (0.714286 - 3.2 / (1.5 x 26.8224)) by hand", Provenance.Derived),
    ],
})
{
    private const double Swings = 1.5;

    public sealed record Inputs(
        [Input("front ride frequency", "Hz", MoreThan = 0, Low = 0.5, High = 5, Measure = "comes from load and spring rate")] Frequency FrontFrequency,
        [Input("rear ride frequency", "Hz", MoreThan = 0, Low = 0.5, High = 5, Measure = "comes from load and spring rate")] Frequency RearFrequency,
        [Input("wheelbase", "m", MoreThan = 0, Low = 1.2, High = 8, Measure = "tape from hub center to hub center on both sides and take the mean")] Length? Wheelbase,
        [Input("cruise speed", "mph", MoreThan = 0, High = 150, Measure = "ask the customer")] Speed? CruiseSpeed);

    public sealed record Result(
        [Output("rear over front frequency")] Ratio Ratio,
        [Output("rear frequency that meets the front after one and a half swings", "Hz")] Frequency? MeetingRear);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double front = x.FrontFrequency.Hertz, rear = x.RearFrequency.Hertz, ratio = rear / front; // Hz
        w.Line("ratio", "rear / front", $"{rear} / {front}", ratio, "1");
        double? meeting = null;
        if (x.Wheelbase is { } L && x.CruiseSpeed is { } v)
        {
            var period = (1 / front) - (L.Meters / (Swings * v.MetersPerSecond)); // s
            meeting = period > 0 ? 1 / period : null;
            w.Line("rear", "1 / (1 / front - L / (1.5 v))", $"1 / (1 / {front} - {L.Meters} / (1.5 x {v.MetersPerSecond}))", meeting ?? double.NaN, "Hz");
        }
        w.AtLeast("rear-faster", ratio, 1, "1", $"The rear bounces at {rear:0.00} Hz, the front at {front:0.00} Hz: "
            + (ratio < 1 ? "the slower rear makes the vehicle nod after a bump." : "the rear catches up after a bump."), "M. Olley, SAE, 1934, from memory", beyond: Verdict.Caution);
        return new(UnitsNet.Ratio.FromDecimalFractions(ratio), meeting is { } f ? Frequency.FromHertz(f) : null);
    }
}
