using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>True speed behind a speedometer driven from the transfer case output, after tires or axle ratio have changed.</summary>
/// <remarks>
/// Formula:  true = indicated (D / Ds) (As / A), A axle ratio, D tire diameter, s = what the speedometer drive was cut for; error = (indicated - true) / true
/// Valid:    mechanical or pulse drive from the output shaft, speedometer itself right; not for wheel sensors or satellite speed
/// Source:   docs/derivations/rolling-wheel.md; legal band: UN Regulation No. 39, from memory
/// Example:  31 to 33 in tires, 3.73 to 4.11: indicated 60 is 57.97 mph
/// </remarks>
public sealed class Speedometer() : Calculation<Speedometer.Inputs, Speedometer.Result>(new()
{
    Id = "driveline.speedometer",
    Version = 1,
    Title = "Speedometer error",
    Purpose = "What the vehicle really does when the needle says so, after other tires or another axle ratio, and whether the speedometer drive must be recut.",
    Formula = "true = indicated x (tire now / tire it was cut for) x (axle ratio it was cut for / axle ratio now); error = (indicated - true) / true",
    Validity = "Speedometer driven from the transfer case or gearbox output and right before the change. Not for wheel sensors. Both tires in the same state of load.",
    Sources =
    [
        "Geometry of a rolling wheel, derived",
        "UN Regulation No. 39, Uniform provisions concerning the speedometer: 0 <= indicated - true <= 0.1 true + 4 km/h, from memory, to be checked in the text",
    ],
    Checks = [new("legal", null, "Does the speedometer read neither low nor too high?")],
    Trends =
    [
        new("tireDiameter", "trueSpeed", '+', 24, 44), new("axleRatio", "trueSpeed", '-', 2.5, 6), new("speedometerTireDiameter", "trueSpeed", '-', 24, 44),
        new("speedometerAxleRatio", "trueSpeed", '+', 2.5, 6), new("indicatedSpeed", "trueSpeed", '+', 5, 100),
    ],
    Examples =
    [
        new(Case("33 in", "4.11"), new Dictionary<string, double> { ["trueSpeed"] = 57.97, ["error"] = 3.51 }, 0.0002,
            "31 to 33 in tires and 3.73 to 4.11 axles, by proportion to 0.01 mph and 0.01 %", Provenance.Derived),
        new(Case("33 in", "3.73"), new Dictionary<string, double> { ["trueSpeed"] = 63.87 }, 0.0001,
            "31 to 33 in tires only, by proportion to 0.01 mph", Provenance.Derived),
    ],
    Cautions =
    [
        "Driving by a speedometer that reads low breaks speed limits and misjudges distances: check it against a measured mile before delivery.",
        "Changing the speedometer or its drive may need an odometer statement: local law decides.",
    ],
})
{
    private const string Source = "UN Regulation No. 39 (from memory)";

    private const double KilometerPerHour = 1 / 3.6; // m/s

    public sealed record Inputs(
        [Input("tire diameter now", "in", MoreThan = 0, Low = 20, High = 60, Measure = HowToMeasure.TireDiameter)] Length TireDiameter,
        [Input("axle ratio now", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio,
        [Input("tire diameter the speedometer drive was cut for", "in", MoreThan = 0, Low = 20, High = 60,
            Measure = "take the size the vehicle left the works with, from its plate or handbook")] Length SpeedometerTireDiameter,
        [Input("axle ratio the speedometer drive was cut for", MoreThan = 0, Low = 2, High = 10,
            Measure = "take the ratio the vehicle left the works with, from its plate or handbook")] Ratio SpeedometerAxleRatio,
        [Input("indicated speed", "mph", MoreThan = 0, Low = 5, High = 150, Default = 60, Measure = "choose the speed to look at")] Speed IndicatedSpeed);

    public sealed record Result(
        [Output("true road speed", "mph")] Speed TrueSpeed,
        [Output("error of the speedometer, positive reads high", "%")] Ratio Error);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double D = x.TireDiameter.Meters, Ds = x.SpeedometerTireDiameter.Meters; // m
        double A = x.AxleRatio.DecimalFractions, As = x.SpeedometerAxleRatio.DecimalFractions;
        double indicated = x.IndicatedSpeed.MetersPerSecond, actual = indicated * (D / Ds) * (As / A); // m/s
        var error = (indicated - actual) / actual;
        w.Line("true", "indicated (D / Ds) (As / A)", $"{indicated} x ({D} / {Ds}) x ({As} / {A})", actual, "m/s");
        w.Line("error", "(indicated - true) / true", $"({indicated} - {actual}) / {actual}", 100 * error, "%");
        Judge(w, x.IndicatedSpeed, Speed.FromMetersPerSecond(actual));
        return new(Speed.FromMetersPerSecond(actual), Ratio.FromDecimalFractions(error));
    }

    /// <summary>At most a caution: the band is quoted from memory, and whether it binds this vehicle is for local rules to say.</summary>
    private static void Judge(Worksheet w, Speed indicated, Speed actual)
    {
        double over = indicated.MetersPerSecond - actual.MetersPerSecond, allowed = (0.1 * actual.MetersPerSecond) + (4 * KilometerPerHour); // m/s
        var says = $"{indicated.MilesPerHour:0.#} mph indicated is {actual.MilesPerHour:0.#} mph";
        var mph = over * 3600 / 1609.344;
        // Equal sizes must not read low by the last bit of a division.
        if (over < -1e-9 * indicated.MetersPerSecond)
            w.Answer("legal", Verdict.Caution, $"The speedometer reads low: {says}. Recut its drive.", mph, "mph", Source);
        else if (over > allowed)
            w.Answer("legal", Verdict.Caution, $"The speedometer reads high by more than a tenth and 4 km/h: {says}. Recut its drive.", mph, "mph", Source);
        else w.Answer("legal", Verdict.Pass, $"The speedometer reads right or a little high: {says}.", mph, "mph", Source);
    }

    private static Dictionary<string, string> Case(string tire, string axle) => new()
    {
        ["tireDiameter"] = tire, ["axleRatio"] = axle, ["speedometerTireDiameter"] = "31 in", ["speedometerAxleRatio"] = "3.73", ["indicatedSpeed"] = "60 mph",
    };
}
