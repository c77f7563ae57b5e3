using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>How far front and rear axle would travel apart with the transfer case locked.</summary>
/// <remarks>
/// Formula:  s = A / (pi D) shaft turns per travel; overspeed = sf / sr - 1; mismatch = larger s / smaller s - 1
/// Valid:    part-time transfer case without center differential; nominal diameters hide wear and inflation, which count just the same
/// Source:   docs/derivations/rolling-wheel.md; limits: common practice, no source
/// Example:  4.27 against 4.56 on equal tires -> 6.8 %
/// </remarks>
public sealed class RatioMismatch() : Calculation<RatioMismatch.Inputs, RatioMismatch.Result>(new()
{
    Id = "driveline.ratio-mismatch",
    Version = 1,
    Title = "Front and rear ratio match",
    Purpose = "Whether both axles cover the same ground for the same turns of the transfer case, so that four-wheel drive can be used without fighting itself.",
    Formula = "front overspeed = (front ratio / front tire) / (rear ratio / rear tire) - 1; mismatch = the larger over the smaller, less 1",
    Validity = "Transfer case locked, no center differential. The tire diameters must be measured the same way; wear and inflation count like a ratio.",
    Sources = ["Geometry of a rolling wheel, derived", "Limits 1 % and 2 %: common practice, no source"],
    Checks = [new("mismatch", Sense.AtMost, "Do front and rear cover the same ground?")],
    Trends =
    [
        new("frontRatio", "frontOverspeed", '+', 2.5, 6), new("rearRatio", "frontOverspeed", '-', 2.5, 6),
        new("frontTireDiameter", "frontOverspeed", '-', 24, 44), new("rearTireDiameter", "frontOverspeed", '+', 24, 44),
    ],
    Examples =
    [
        new(Case("4.56", "4.27"), new Dictionary<string, double> { ["mismatch"] = 6.79, ["frontOverspeed"] = 6.79 }, 0.0008,
            "4.56 / 4.27 - 1 by hand to 0.01 %", Provenance.Derived),
        new(Case("4.27", "4.56"), new Dictionary<string, double> { ["mismatch"] = 6.79, ["frontOverspeed"] = -6.36 }, 0.0008,
            "4.56 / 4.27 - 1 and 4.27 / 4.56 - 1 by hand to 0.01 %", Provenance.Derived),
    ],
    Cautions =
    [
        "Four-wheel drive on hard ground with unequal ratios winds up the driveline, breaks parts and steers the vehicle by itself: "
        + "do not engage it until both axles match, and have the match confirmed by counting turns.",
    ],
})
{
    private const string Practice = "common practice, no source";

    public sealed record Inputs(
        [Input("front axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio FrontRatio,
        [Input("rear axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio RearRatio,
        [Input("front tire diameter", "in", MoreThan = 0, Low = 20, High = 60, Measure = HowToMeasure.TireDiameter)] Length FrontTireDiameter,
        [Input("rear tire diameter", "in", MoreThan = 0, Low = 20, High = 60, Measure = HowToMeasure.TireDiameter)] Length RearTireDiameter);

    public sealed record Result(
        [Output("mismatch of front and rear, as a share of the travel", "%")] Ratio Mismatch,
        [Output("how much faster the front propeller shaft must turn than the rear; negative: slower", "%")] Ratio FrontOverspeed);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double front = x.FrontRatio.DecimalFractions, rear = x.RearRatio.DecimalFractions;
        double Df = x.FrontTireDiameter.Meters, Dr = x.RearTireDiameter.Meters; // m
        double sf = front / (Math.PI * Df), sr = rear / (Math.PI * Dr); // 1/m
        double overspeed = (sf / sr) - 1, mismatch = (Math.Max(sf, sr) / Math.Min(sf, sr)) - 1;
        w.Line("sf", "front ratio / (pi Df)", $"{front} / (pi x {Df})", sf, "1/m");
        w.Line("sr", "rear ratio / (pi Dr)", $"{rear} / (pi x {Dr})", sr, "1/m");
        w.Line("overspeed", "sf / sr - 1", $"{sf} / {sr} - 1", 100 * overspeed, "%");
        w.Line("mismatch", "larger / smaller - 1", $"{Math.Max(sf, sr)} / {Math.Min(sf, sr)} - 1", 100 * mismatch, "%");
        w.AtMost("mismatch", 100 * mismatch, 2, "%", Text(overspeed, mismatch), Practice, watch: 1);
        return new(Ratio.FromDecimalFractions(mismatch), Ratio.FromDecimalFractions(overspeed));
    }

    private static string Text(double overspeed, double mismatch) =>
        mismatch <= 0.01 ? $"Front and rear match within {100 * mismatch:0.##} %."
        : $"Front and rear travel {100 * mismatch:0.##} % apart (the front shaft wants to turn {(overspeed > 0 ? "faster" : "slower")}): "
            + "four-wheel drive on hard ground winds up the driveline, breaks parts and steers the vehicle.";

    private static Dictionary<string, string> Case(string front, string rear) => new()
    {
        ["frontRatio"] = front, ["rearRatio"] = rear, ["frontTireDiameter"] = "31 in", ["rearTireDiameter"] = "31 in",
    };
}
