using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Stability;

/// <summary>Static stability factor: half the track over the height of the center of gravity.</summary>
/// <remarks>
/// Formula:  SSF = T / (2 h), T the mean track (m)
/// Valid:    rigid vehicle on a level road; the bands are those of stock vehicles, lightly loaded, on the road
/// Source:   NHTSA, rollover resistance ratings: definition and risk bands; the factors at the band edges from memory (66 FR 3388)
/// Example:  T 1.47 m, h 0.72 m -> 1.021
/// </remarks>
public sealed class StaticFactor() : Calculation<StaticFactor.Inputs, StaticFactor.Result>(new()
{
    Id = "stability.static-factor",
    Version = 1,
    Title = "Static stability factor",
    Purpose = "The one number that a road authority compares vehicles by: how wide the vehicle stands for the height of its weight.",
    Formula = "SSF = (Tf + Tr) / (4 h)",
    Validity = "Rigid vehicle, level road. The star bands were drawn for stock vehicles lightly loaded; a lifted or heavily loaded one lies outside their data: below 0.95 only 'below the range' is said.",
    Sources = ["NHTSA rollover resistance ratings, definition of the static stability factor and risk bands", "Factors at the band edges: 66 FR 3388, from memory"],
    Checks = [new("factor", Sense.AtLeast, "Does it stand as wide for its height as vehicles that roll over seldom?")],
    Trends = [new("frontTrack", "factor", '+', 1.2, 2), new("rearTrack", "factor", '+', 1.2, 2), new("height", "factor", '-', 0.5, 1.2)],
    Examples =
    [
        new(new Dictionary<string, string> { ["frontTrack"] = "1.47 m", ["rearTrack"] = "1.47 m", ["height"] = "0.72 m" },
            new Dictionary<string, double> { ["factor"] = 1.021 }, 0.0005, "1.47 / 1.44 by hand to 0.0005", Provenance.Derived),
        new(new Dictionary<string, string> { ["frontTrack"] = "1.47 m", ["rearTrack"] = "1.47 m", ["height"] = "749.6 mm" },
            new Dictionary<string, double> { ["factor"] = 0.980 }, 0.001, "1.47 / 1.4992 by hand to 0.001: bumper, carrier and rack fitted", Provenance.Derived),
    ],
    Cautions = [HowToMeasureStability.NotForPeople],
})
{
    /// <summary>Lowest factor of five, four, three and two stars (from memory, 66 FR 3388), and the lowest that stock vehicles of that time had (common practice, no source).</summary>
    private static readonly double[] s_bands = [1.45, 1.25, 1.13, 1.04, Lowest];

    private const double Watch = 1.04, Lowest = 0.95;

    public sealed record Inputs(
        [Input("track of the front axle", "m", MoreThan = 0, Low = 0.8, High = 2.6, Measure = HowToMeasureStability.Track)] Length FrontTrack,
        [Input("track of the rear axle", "m", MoreThan = 0, Low = 0.8, High = 2.6, Measure = HowToMeasureStability.Track)] Length RearTrack,
        [Input("height of the center of gravity over the ground", "m", MoreThan = 0, Low = 0.3, High = 2, Measure = HowToMeasureStability.Height)] Length Height);

    public sealed record Result(
        [Output("static stability factor")] Ratio Factor,
        [Output("stars of the band it falls in, five best; none below the range")] Ratio? Stars);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double tf = x.FrontTrack.Meters, tr = x.RearTrack.Meters, h = x.Height.Meters; // m
        var factor = (tf + tr) / (4 * h);
        w.Line("SSF", "(Tf + Tr) / (4 h)", $"({tf} + {tr}) / (4 x {h})", factor, "1");
        var band = Array.FindIndex(s_bands, b => factor >= b);
        w.AtLeast("factor", factor, Watch, "1", band < 0
            ? $"The static stability factor is {factor:0.00}: below the range of rated road vehicles. Keep weight low and speed down, and tell the customer."
            : $"The static stability factor is {factor:0.00}, where road vehicles were given {5 - band} of 5 stars.", "66 FR 3388, from memory", beyond: Verdict.Caution);
        return new(Ratio.FromDecimalFractions(factor), band < 0 ? null : Ratio.FromDecimalFractions(5 - band));
    }
}
