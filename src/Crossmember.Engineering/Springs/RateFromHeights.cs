using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>Rate of an axle's springs from two weighed loads and the heights it stands at.</summary>
/// <remarks>
/// Formula:  k = (m2 - m1) g / (2 (h1 - h2)); u(k)/k = sqrt(2 (um / (m2 - m1))^2 + 2 (uh / (h1 - h2))^2)
/// Valid:    both heights between the stops and on the same side of a helper's first touch; friction settled by bouncing
/// Source:   definition of a rate; JCGM 100:2008, 5.1.2 for the uncertainty
/// Example:  900 kg at 200 mm, 1300 kg at 150 mm -> 39.2 N/mm
/// </remarks>
public sealed class RateFromHeights() : Calculation<RateFromHeights.Inputs, RateFromHeights.Result>(new()
{
    Id = "springs.rate-from-heights",
    Version = 1,
    Title = "Spring rate from two weighed heights",
    Purpose = "The honest way to a rate: weigh the axle and tape the frame over it twice. It finds what rust, sag and friction made of the spring, which no dimensions tell.",
    Formula = "k = (m2 - m1) g / (2 (h1 - h2)) at each wheel",
    Validity = "Both heights between the stops; with a helper both before or both after it touches. Friction between leaves can hold an inch: bounce the vehicle hard "
        + "each time, or tape once after pushing down and once after lifting and take the mean.",
    Sources = ["Definition of a spring rate, derived", "Uncertainty: JCGM 100:2008, 5.1.2"],
    Checks =
    [
        new("direction", null, "Does the heavier load stand lower?"),
        new("spread", Sense.AtMost, "Are the two readings far enough apart to trust the rate?"),
    ],
    Trends =
    [
        new("heavyLoad", "rate", '+', 1000, 2000), new("lightLoad", "rate", '-', 500, 1200), new("lightHeight", "rate", '-', 160, 300), new("heavyHeight", "rate", '+', 80, 190),
        new("heightUncertainty", "uncertainty", '+', 0.5, 10), new("loadUncertainty", "uncertainty", '+', 1, 30),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["lightLoad"] = "900 kg", ["lightHeight"] = "200 mm", ["heavyLoad"] = "1300 kg", ["heavyHeight"] = "150 mm", ["loadUncertainty"] = "4 kg", ["heightUncertainty"] = "1.5 mm",
            },
            new Dictionary<string, double> { ["rate"] = 39.227, ["uncertainty"] = 1.7543 }, 0.0001,
            "400 x 9.80665 / 100; share sqrt(2 x 0.01^2 + 2 x 0.03^2) = 4.472 %; by hand", Provenance.Derived),
    ],
    Cautions = ["Load evenly and tie the load down; nobody under the vehicle while it is loaded or bounced.", "The scale must carry the heavier load: read its plate."],
})
{
    public const string HowHeavyLoad = "load the axle by 500 lb or more where it will be loaded, and put it on the scale again", HowHeavyHeight = "bounce it, and tape the same height again";

    /// <summary>One standard uncertainty where nobody says: a wheel scale and a tape. Common practice, no source.</summary>
    private const double UsualKilograms = 5, UsualMeters = 0.002;

    public sealed record Inputs(
        [Input("lighter load on the axle", "kg", AtLeast = 0, High = 10000, Measure = HeightLoad)] UnitsNet.Mass LightLoad,
        [Input("height under it", "mm", Measure = Height)] Length LightHeight,
        [Input("heavier load on the axle", "kg", AtLeast = 0, High = 10000, Measure = HowHeavyLoad)] UnitsNet.Mass HeavyLoad,
        [Input("height under the heavier load", "mm", Measure = HowHeavyHeight)] Length HeavyHeight,
        [Input("standard uncertainty of a load; without it 5 kg", "kg", MoreThan = 0, High = 50, Measure = "read it off the scale's paper")] UnitsNet.Mass? LoadUncertainty,
        [Input("standard uncertainty of a height; without it 2 mm", "mm", MoreThan = 0, High = 20, Measure = "bounce and tape three times and see how far apart they are")]
        Length? HeightUncertainty);

    public sealed record Result(
        [Output("rate at one wheel", "N/mm")] ForcePerLength? Rate,
        [Output("standard uncertainty of it", "N/mm")] ForcePerLength? Uncertainty);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double dm = x.HeavyLoad.Kilograms - x.LightLoad.Kilograms, dh = x.LightHeight.Meters - x.HeavyHeight.Meters; // kg, m
        double um = x.LoadUncertainty?.Kilograms ?? UsualKilograms, uh = x.HeightUncertainty?.Meters ?? UsualMeters;
        var right = dm > 0 && dh > 0;
        w.Answer("direction", right ? Verdict.Pass : Verdict.Fail, right
            ? $"{dm:0} kg more stand {1000 * dh:0} mm lower."
            : $"{x.HeavyLoad.Kilograms:0} kg stand at {x.HeavyHeight.Millimeters:0} mm and {x.LightLoad.Kilograms:0} kg at {x.LightHeight.Millimeters:0} mm: the heavier load must stand "
                + "lower. Bounce the vehicle and take both readings again.", 1000 * dh, "mm");
        if (!right) return new(null, null);
        var k = dm * Gravity / (2 * dh); // N/m
        var share = Math.Sqrt((2 * um * um / (dm * dm)) + (2 * uh * uh / (dh * dh)));
        w.Line("k", "(m2 - m1) g / (2 (h1 - h2))", $"{dm} x {Gravity} / (2 x {1000 * dh})", k / 1000, "N/mm");
        w.Line("u/k", "sqrt(2 (um / dm)^2 + 2 (uh / dh)^2)", $"sqrt(2 x ({um} / {dm})^2 + 2 x ({1000 * uh} / {1000 * dh})^2)", 100 * share, "%");
        w.AtMost("spread", 100 * share, 10, "%", share > 0.1
            ? $"The rate is only known to {100 * share:0} %: load the axle more, so that it sinks by two inches or more."
            : $"The rate is known to {100 * share:0.#} %.", Practice, beyond: Verdict.Caution);
        return new(Rate(k), Rate(share * k));
    }
}
