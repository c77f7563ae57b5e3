using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>The axle ratio that gives the engine its original speed back after the tires have changed.</summary>
/// <remarks>
/// Formula:  A = A0 D / D0
/// Valid:    same gearbox and transfer case; both diameters measured the same way
/// Source:   docs/derivations/rolling-wheel.md
/// Check:    more than 5 % too tall is felt on every hill (common practice, no source): a caution, never a fail; deeper is judged at cruise
/// Example:  3.73 on 29 in, now 33 in -> 4.24
/// </remarks>
public sealed class RestoringRatio() : Calculation<RestoringRatio.Inputs, RestoringRatio.Result>(new()
{
    Id = "driveline.restoring-ratio",
    Version = 2,
    Title = "Axle ratio for larger tires",
    Purpose = "Which axle ratio brings engine speed and pull back to what they were before larger tires; "
        + "the ratio on the shelf nearest to it is the one to price.",
    Formula = "axle ratio = original axle ratio x tire now / original tire",
    Validity = "Same gearbox and transfer case, both diameters nominal or both measured. It restores engine speed and tractive effort; heavier tires still ask for more.",
    Sources = ["Geometry of a rolling wheel, derived"],
    Checks = [new("gearing", Sense.AtMost, "Does the engine pull about as it did on the original tires?", "currentAxleRatio")],
    Trends =
    [
        new("tireDiameter", "axleRatio", '+', 24, 44), new("originalTireDiameter", "axleRatio", '-', 24, 44), new("originalAxleRatio", "axleRatio", '+', 2.5, 6),
        new("currentAxleRatio", "change", '-', 2.5, 6),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["tireDiameter"] = "33 in", ["originalTireDiameter"] = "29 in", ["originalAxleRatio"] = "3.73", ["currentAxleRatio"] = "3.73",
            },
            new Dictionary<string, double> { ["axleRatio"] = 4.2445, ["change"] = 13.793 }, 0.00004,
            "Proportion 3.73 x 33 / 29 and 33 / 29 - 1, worked by hand to five figures", Provenance.Derived),
    ],
    Cautions = ["Front and rear axle must get ratios that match, or four-wheel drive winds up and breaks the driveline.", "Setting up a ring and pinion is skilled work."],
})
{
    /// <summary>How much too tall the gearing may be before it is felt. Common practice, no source.</summary>
    private const double Felt = 0.05;

    public sealed record Inputs(
        [Input("tire diameter now", "in", MoreThan = 0, Low = 20, High = 60, Measure = HowToMeasure.TireDiameter)] Length TireDiameter,
        [Input("original tire diameter", "in", MoreThan = 0, Low = 20, High = 60,
            Measure = "take the size the vehicle left the works with, from its plate or handbook")] Length OriginalTireDiameter,
        [Input("original axle ratio", MoreThan = 0, Low = 2, High = 10,
            Measure = "take the ratio the vehicle left the works with, from its plate or handbook")] Ratio OriginalAxleRatio,
        [Input("axle ratio now", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio? CurrentAxleRatio);

    public sealed record Result(
        [Output("axle ratio that restores the original engine speed")] Ratio AxleRatio,
        [Output("change against the axle ratio now, positive is deeper", "%")] Ratio? Change);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double D = x.TireDiameter.Meters, D0 = x.OriginalTireDiameter.Meters, A0 = x.OriginalAxleRatio.DecimalFractions; // m, m
        var A = A0 * D / D0;
        w.Line("A", "A0 D / D0", $"{A0} x {D} / {D0}", A, "1");
        if (x.CurrentAxleRatio is not { } current) return new(Ratio.FromDecimalFractions(A), null);
        var Ac = current.DecimalFractions;
        var change = (A / Ac) - 1;
        w.Line("change", "A / Ac - 1", $"{A} / {Ac} - 1", 100 * change, "%");
        w.AtMost("gearing", 100 * change, 100 * Felt, "%", Math.Abs(change) < 0.0005
            ? "The engine turns as it did on the original tires."
            : $"The engine turns {100 * Math.Abs((Ac / A) - 1):0.0} % {(change > 0 ? "slower" : "faster")} than on the original tires; an axle ratio of {A:0.00} would bring it back, {Ac:0.00} is in.",
            "Common practice, no source", beyond: Verdict.Caution);
        return new(Ratio.FromDecimalFractions(A), Ratio.FromDecimalFractions(change));
    }
}
