using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Brakes.Wheels.HowToMeasureWheels;

namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>Braking force of both wheels of an axle at the road, at 1000 psi over the threshold, and whether it pulls to a side.</summary>
/// <remarks>
/// Formula:  F = (T left + T right) / R; pull = (larger - smaller) / mean
/// Valid:    steady, tires not slipping; larger tires take force in proportion
/// Source:   statics
/// Example:  2 x 343.8 N m for each MPa on 375 mm -> 1833.7 N for each MPa
/// </remarks>
public sealed class AxleBrake() : Calculation<AxleBrake.Inputs, AxleBrake.Result>(new()
{
    Id = "brakes.axle-force",
    Version = 1,
    Title = "Braking force of an axle",
    Purpose = "What both wheels of an axle hold back with at the road, what larger tires take of it, and whether one side brakes harder than the other.",
    Formula = "F = (T left + T right) / R at 1000 psi over the threshold; pull = (larger - smaller) / mean",
    Validity = "Tires not slipping, brakes at rest temperature. On the loaded radius: a tire a tenth larger takes a tenth of the force.",
    Sources = ["Statics", "5 % and 0.1 MPa between the sides, and a sensitivity of 3: common practice, no source"],
    Checks =
    [
        new("sides", Sense.AtMost, "Do both wheels of the axle brake alike?"),
        new("grab", Sense.AtMost, "Do small differences of the linings stay small at the wheels?", "sensitivities"),
    ],
    Trends = [new("torques", "force", '+', 500, 5000), new("loadedRadius", "force", '-', 300, 500), new("thresholds", "threshold", '+', 0.01, 0.8)],
    NoTrends = [new("sensitivities", "only held against what is bearable")],
    Examples =
    [
        new(new Dictionary<string, string> { ["torques"] = """{"left":"2370.4 N m","right":"2370.4 N m"}""", ["thresholds"] = """{"left":"0.4 MPa","right":"0.4 MPa"}""", ["loadedRadius"] = "375 mm" },
            new Dictionary<string, double> { ["force"] = 1833.7 * 6.894757, ["threshold"] = 0.4 }, 0.0003, "2 x 343.8 / 0.375 = 1833.7 N for each MPa, by hand", Provenance.Derived),
    ],
    Cautions = [Linings, Qualified],
})
{
    /// <summary>Percent between the sides. Common practice, no source.</summary>
    private const double Bearable = 5;

    /// <summary>Percent of torque for a percent of friction. Common practice, no source.</summary>
    private const double Lively = 3;

    /// <summary>Pa between the thresholds of both sides. Common practice, no source.</summary>
    private const double Late = 0.1e6;

    private const string Practice = "common practice, no source";

    public sealed record Inputs(
        [Input("torques of the axle's wheels at 1000 psi", "N m", MoreThan = 0, Measure = "comes from each wheel's brake")] Members<Torque> Torques,
        [Input("pressures at which the axle's brakes begin", "MPa", AtLeast = 0, High = 2, Measure = "comes from each wheel's brake")] Members<Pressure> Thresholds,
        [Input("loaded radius of the tires", "mm", MoreThan = 0, Low = 200, High = 700, Measure = "tape from level ground to the hub center")] Length LoadedRadius,
        [Input("percent of torque for a percent of friction of each wheel", MoreThan = 0, Measure = "comes from each wheel's brake")] Members<Ratio>? Sensitivities);

    public sealed record Result(
        [Output("braking force of both wheels at the road at 1000 psi over the threshold", "N")] Force Force,
        [Output("line pressure at which the axle begins to brake", "MPa")] Pressure Threshold,
        [Output("difference of the sides over their mean", "%")] Ratio Pull);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double sum = 0, most = 0, least = double.PositiveInfinity, begins = 0, lively = 0, R = x.LoadedRadius.Meters; // N m, Pa, m
        var harder = "";
        foreach (var (side, torque) in x.Torques.Items)
        {
            var T = torque.NewtonMeters;
            if (T > most) (most, harder) = (T, side);
            (sum, least) = (sum + T, Math.Min(least, T));
        }
        var (first, last) = (double.PositiveInfinity, 0.0); // Pa
        foreach (var (_, p) in x.Thresholds.Items)
        {
            begins += p.Pascals / x.Thresholds.Items.Count;
            (first, last) = (Math.Min(first, p.Pascals), Math.Max(last, p.Pascals));
        }
        double F = sum / R, pull = 100 * (most - least) * x.Torques.Items.Count / sum;
        w.Line("F", "(T left + T right) / R", $"{sum} / {R}", F, "N");
        w.Line("pull", "(larger - smaller) / mean", $"({most} - {least}) / {sum / x.Torques.Items.Count}", pull, "%");
        if (last - first > Late && pull <= Bearable)
            w.Answer("sides", Verdict.Caution, $"One wheel begins at {first / 1e6:0.00} MPa and the other at {last / 1e6:0.00} MPa: it pulls at a light touch. Springs, adjustment or a sticking piston.", pull, "%", Practice);
        else
            w.AtMost("sides", pull, Bearable, "%", pull < 0.05 ? "Both sides brake alike."
                : $"The {harder} wheel brakes {pull:0.#} % harder: {(pull > Bearable ? "it pulls to that side. Both wheels want the same cylinders, shoes and linings" : "hardly felt")}.", Practice, beyond: Verdict.Caution);
        if (x.Sensitivities is { } own)
        {
            foreach (var (_, s) in own.Items) lively = Math.Max(lively, s.DecimalFractions);
            w.AtMost("grab", lively, Lively, "1", lively <= 1.05 ? "A tenth more friction on one side is a tenth more torque there."
                : $"A tenth more friction on one side, as from damp or another make of lining, is {100 * (Math.Pow(1.1, lively) - 1):0} % more torque there{(lively > Lively ? ": these drums grab and pull. A milder lining is wanted" : "")}.",
                Practice, beyond: Verdict.Caution);
        }
        return new(Force.FromNewtons(F), Pressure.FromPascals(begins), Ratio.FromPercent(pull));
    }
}
