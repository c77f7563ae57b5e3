using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>The force the ground takes from the tires: rear axle driven alone, and all wheels driven, level and on a grade.</summary>
/// <remarks>
/// Formula:  F = mu N; on a grade nose up N = W cos th in all, Nr = W (a cos th + h sin th) / L on the rear axle, a = L Wr / W
/// Valid:    steady climb on firm even ground, both tires of an axle pulling alike; without h no load moves to the rear axle
/// Source:   statics on a slope, docs/derivations/road-load.md
/// Example:  1065 + 1085 kg, mu 0.7 -> level 7448 N rear, 14759 N all; 30 deg nose up, h 0.72 m, L 2.56 m: 8526 N rear
/// </remarks>
public sealed class TractionLimit() : Calculation<TractionLimit.Inputs, TractionLimit.Result>(new()
{
    Id = "driveline.traction-limit",
    Version = 1,
    Title = "What the ground takes",
    Purpose = "How much push the tires hold before they spin, with the rear axle driven alone and with all wheels: more engine or gear than this only "
        + "wears tires and breaks shafts.",
    Formula = "F = mu N; N level = axle load x g; on a grade N = W cos th, rear axle W (a cos th + h sin th) / L; rear axle alone climbs tan th = (mu a / "
        + "L - f) / (1 - mu h / L)",
    Validity = "Steady climb straight up firm even ground, both tires of an axle pulling alike (locked, or equal grip under an open differential). "
        + "Braking, bumps and soft ground are left out. "
        + "Without the height of the center of gravity no load is moved to the rear axle: its force on a grade is then too low, never too high.",
    Sources = ["Statics on a slope, derived", "Grip of tires on the ground: common practice, no source"],
    Trends =
    [
        new("grip", "allForce", '+', 0.1, 1), new("rearLoad", "rearForce", '+', 200, 3000), new("frontLoad", "allForce", '+', 200, 3000),
        new("height", "rearForceOnGrade", '+', 0.4, 1.2), new("grade", "allForceOnGrade", '-', 0.05, 1), new("rollingResistance", "rearGrade", '-', 0.008, 0.1),
        new("wheelbase", "rearForceOnGrade", '-', 1.6, 5),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["frontLoad"] = "1065 kg", ["rearLoad"] = "1085 kg", ["grip"] = "0.7" },
            new Dictionary<string, double> { ["rearForce"] = 1674.4, ["allForce"] = 3318.0 }, 0.0002,
            "0.7 x 1085 x 9.80665 = 7448 N and 0.7 x 2150 x 9.80665 = 14759 N by hand, 4.4482 N to the lbf", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["frontLoad"] = "1065 kg", ["rearLoad"] = "1085 kg", ["grip"] = "0.7", ["grade"] = "0.57735", ["height"] = "0.72 m", ["wheelbase"] = "2.56 m",
            },
            new Dictionary<string, double> { ["rearForceOnGrade"] = 1916.7, ["allForceOnGrade"] = 2873.5, ["rearGrade"] = 42.1 }, 0.001,
            "30 deg nose up: rear axle 12180 N, all wheels 18259 N; (0.7 x 0.50465 - 0.015) / (1 - 0.7 x 0.28125) by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Grip is guessed from the ground: mud, loose stone, water or ice take most of it away without a sign.",
        "Load that moves to the rear axle leaves the front: steering gets light before the vehicle rears up. Have tipping looked at by a qualified person "
            + "before steep grades are tried.",
    ],
})
{
    public sealed record Inputs(
        [Input("mass on the front axle", "kg", MoreThan = 0, Low = 100, High = 10000, Measure = "put the front axle alone on a scale, vehicle level")]
        UnitsNet.Mass FrontLoad,
        [Input("mass on the rear axle", "kg", MoreThan = 0, Low = 100, High = 10000, Measure = "put the rear axle alone on a scale, vehicle level")]
        UnitsNet.Mass RearLoad,
        [Input("grip of the tires, as a share of the load on them", MoreThan = 0, Low = 0.1, High = 1.1, Default = 0.7, Measure = HowToMeasurePull.Grip)]
        Ratio Grip,
        [Input("rolling resistance as a share of weight", MoreThan = 0, Low = 0.005, High = 0.5, Default = 0.015, Measure = HowToMeasurePull.RollingResistance)]
        Ratio RollingResistance,
        [Input("grade to look at", MoreThan = 0, High = 1.2, Measure = HowToMeasurePull.Grade)] Ratio? Grade,
        [Input("height of the center of gravity over the ground", "m", MoreThan = 0, Low = 0.3, High = 2,
            Measure = "weigh one axle level and again with the other end lifted two feet or more, springs blocked: a job for two people and a rated lift")] Length? Height,
        [Input("wheelbase", "m", MoreThan = 0, Low = 1.2, High = 8, Measure = "tape from hub center to hub center on both sides and take the mean")]
        Length? Wheelbase);

    public sealed record Result(
        [Output("force the rear tires hold on the level", "lbf")] Force RearForce,
        [Output("force all tires hold on the level", "lbf")] Force AllForce,
        [Output("force the rear tires hold on the grade", "lbf")] Force? RearForceOnGrade,
        [Output("force all tires hold on the grade", "lbf")] Force? AllForceOnGrade,
        [Output("steepest grade the rear axle alone climbs; unknown where the vehicle would tip over first", "%")] Ratio? RearGrade);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double front = x.FrontLoad.Kilograms, rear = x.RearLoad.Kilograms, mu = x.Grip.DecimalFractions, f = x.RollingResistance.DecimalFractions; // kg
        double W = (front + rear) * Resistance.Gravity, share = rear / (front + rear); // N, a / L
        var known = x.Height is not null && x.Wheelbase is not null;
        var lean = known ? x.Height!.Value.Meters / x.Wheelbase!.Value.Meters : 0; // h / L
        w.Line("Fr", "mu mr g", $"{mu} x {rear} x {Resistance.Gravity}", mu * share * W, "N");
        w.Line("F", "mu m g", $"{mu} x {front + rear} x {Resistance.Gravity}", mu * W, "N");
        var climbed = RearAlone(mu, share, lean, f);
        if (climbed is { } t) w.Line("tan th", "(mu a / L - f) / (1 - mu h / L)", $"({mu} x {share} - {f}) / (1 - {mu} x {lean})", 100 * t, "%");
        double? onRear = null, onAll = null; // N
        if (x.Grade is { } grade)
        {
            var th = Math.Atan(grade.DecimalFractions); // rad
            if (!known) w.Caution("Without height of the center of gravity and wheelbase no load is moved to the rear axle on the grade: its force there is told too low.");
            if (grade.DecimalFractions * lean > 1 - share) w.Caution($"On {grade.Percent:0.#} % the vehicle would tip over backward before it climbs.");
            else
            {
                (onRear, onAll) = (mu * W * ((share * Math.Cos(th)) + (lean * Math.Sin(th))), mu * W * Math.Cos(th));
                w.Line("Fr up", "mu W (a cos th + h sin th) / L", $"{mu} x {W} x ({share} x cos th + {lean} x sin th), th = {th * 180 / Math.PI} deg", onRear.Value, "N");
                w.Line("F up", "mu W cos th", $"{mu} x {W} x cos({th * 180 / Math.PI})", onAll.Value, "N");
            }
        }
        return new(Force.FromNewtons(mu * share * W), Force.FromNewtons(mu * W), Told(onRear), Told(onAll), climbed is { } c ? Ratio.FromDecimalFractions(c) : null);
    }

    /// <summary>Rise over run that the rear axle alone climbs; null where the front axle would leave the ground first.</summary>
    private static double? RearAlone(double mu, double share, double lean, double f)
    {
        double rest = 1 - (mu * lean), t = ((mu * share) - f) / rest;
        return rest > 0 && t * lean < 1 - share ? t : null;
    }

    private static Force? Told(double? newtons) => newtons is { } n ? Force.FromNewtons(n) : null;
}
