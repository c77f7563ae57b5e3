using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>What the lean of its shackle makes of a leaf spring's rate.</summary>
/// <remarks>
/// Formula:  p = (k p0 - W) / (k + W a), m = 1 + a p, a = 8 tan(th) / (3 S); K = (k + W m') / m^2, m' = a - 128 p^2 / (9 S^2 s cos^3 th)
/// Valid:    symmetric spring with one shackle, arch up to a tenth of its length, eyes nearly level, no friction in the eyes
/// Source:   virtual work on the arch whose eyes move apart as it flattens, docs/derivations/springs.md
/// Example:  200 N/mm, 1200 mm, flat under 800 kg, 20 deg -> 206.3 N/mm
/// </remarks>
public sealed class Shackle() : Calculation<Shackle.Inputs, Shackle.Result>(new()
{
    Id = "springs.shackle",
    Version = 1,
    Title = "What the shackle does to a leaf spring",
    Purpose = "A leaf spring gets longer as it flattens and swings its shackle: how far that makes the installed spring stiffer or softer than on the bench, "
        + "after a longer shackle or a moved hanger.",
    Formula = "K = (k + W m') / m^2; m = 1 + a p, a = 8 tan(th) / (3 S), m' = a - 128 p^2 / (9 S^2 s cos^3 th); arch p = (k p0 - W) / (k + W a)",
    Validity = "Symmetric spring on two nearly level eyes, one of them on a shackle, arch up to about a tenth of the length. The lean counts positive where the eye "
        + "rises as the spring lengthens: a hanging shackle whose lower end swings away from the axle. No friction in eyes and bushes.",
    Sources = ["Virtual work on a flat arch, derived (docs/derivations/springs.md)"],
    Checks = [new("swing", null, "Does the shackle leave the spring free to work?")],
    Trends =
    [
        new("rate", "installedRate", '+', 100, 400), new("freeArch", "arch", '+', 30, 100), new("load", "arch", '-', 200, 1200),
        new("shackleLength", "installedRate", '+', 50, 200),
    ],
    NoTrends =
    [
        new("shackleAngle", "an outward lean makes a nearly flat spring stiffer and a well arched one softer"), new("length", "a longer spring has less geometry in it, for better or worse"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["rate"] = "200 N/mm", ["length"] = "1200 mm", ["freeArch"] = "80 mm", ["load"] = "800 kg", ["shackleAngle"] = "0 deg", ["shackleLength"] = "100 mm",
            },
            new Dictionary<string, double> { ["installedRate"] = 198.71, ["arch"] = 40.77 }, 0.0005,
            "Upright: only the shackle's swing counts, 200 - 7.8453 x 128 x 40.77^2 / (9 x 1200^2 x 100) x 1000 = 198.71 N/mm by hand", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["rate"] = "200 N/mm", ["length"] = "1200 mm", ["freeArch"] = "39.5 mm", ["load"] = "800 kg", ["shackleAngle"] = "20 deg", ["shackleLength"] = "100 mm",
            },
            new Dictionary<string, double> { ["installedRate"] = 206.3 }, 0.0005,
            "Nearly flat at 800 kg: k + 8 W tan 20 / (3 S) = 200 + 8 x 7845.3 x 0.36397 / 3600 = 206.35 N/mm by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "A shackle that nearly lines up with its spring can swing over center and lock, at droop above all: take the axle through its whole travel before driving.",
        StoredEnergy, UBolts,
    ],
})
{
    public const string HowAngle = "put an angle finder on the shackle with the weight on the wheels, 0 is upright: positive if its eye would rise as the spring lengthens";

    private const double Steepest = 60;

    public sealed record Inputs(
        [Input("rate of the spring by itself", "N/mm", MoreThan = 0, Low = 5, High = 1000, Measure = "comes from its dimensions; or ask the spring works")] ForcePerLength Rate,
        [Input("length of the main leaf from eye to eye", "mm", MoreThan = 0, Low = 500, High = 2000, Measure = LeafPack.HowSpan)] Length Length,
        [Input("arch of the unloaded spring", "mm", AtLeast = 0, High = 300, Measure = LeafPack.HowArch)] Length FreeArch,
        [Input("what one spring carried when the shackle was measured", "kg", AtLeast = 0, High = 5000, Measure = SpringLoads)] UnitsNet.Mass Load,
        [Input("lean of the shackle from upright", "deg", AtLeast = -89, Low = -60, High = 60, Measure = HowAngle)] Angle ShackleAngle,
        [Input("length of the shackle between its bolts", "mm", MoreThan = 0, Low = 30, High = 300, Measure = "tape between the bolt centers")] Length ShackleLength);

    public sealed record Result(
        [Output("rate of the spring as it is hung", "N/mm")] ForcePerLength? InstalledRate,
        [Output("arch under that load", "mm")] Length? Arch,
        [Output("change of the rate by the shackle", "%")] Ratio? Change);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double k = x.Rate.NewtonsPerMeter, S = x.Length.Meters, p0 = x.FreeArch.Meters, W = x.Load.Kilograms * Gravity, th = x.ShackleAngle.Radians; // N/m, m, m, N, rad
        if (Math.Abs(x.ShackleAngle.Degrees) > Steepest)
        {
            w.Answer("swing", Verdict.Fail, $"The shackle leans {x.ShackleAngle.Degrees:0} deg, nearly in line with the spring: it locks or swings over. Measure it again, or move the hanger.",
                x.ShackleAngle.Degrees, "deg");
            return new(null, null, null);
        }
        double a = 8 * Math.Tan(th) / (3 * S), p = ((k * p0) - W) / (k + (W * a)); // 1/m, m
        double m = 1 + (a * p), dm = a - (128 * p * p / (9 * S * S * x.ShackleLength.Meters * Math.Pow(Math.Cos(th), 3))); // -, 1/m
        var K = (k + (W * dm)) / (m * m); // N/m
        w.Line("p", "(k p0 - W) / (k + W a)", $"({k} x {p0} - {W}) / ({k} + {W} x {a})", 1000 * p, "mm");
        w.Line("K", "(k + W m') / m^2", $"({k} + {W} x {dm}) / {m}^2", K / 1000, "N/mm");
        if (!(K > 0) || !(m > 0) || !(k + (W * a) > 0))
        {
            w.Answer("swing", Verdict.Fail, "With this shackle the spring would give way instead of carrying: measure the lean, the arch and the shackle's length again.");
            return new(null, null, null);
        }
        w.Answer("swing", Verdict.Pass, $"The shackle leans {x.ShackleAngle.Degrees:0} deg and makes the spring {Math.Abs((K / k) - 1) * 100:0.#} % {(K < k ? "softer" : "stiffer")}.",
            x.ShackleAngle.Degrees, "deg");
        return new(Rate(K), Meters(p), Ratio.FromDecimalFractions((K / k) - 1));
    }
}
