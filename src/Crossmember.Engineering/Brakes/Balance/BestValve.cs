using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using UnitsNet;
using static System.FormattableString;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>Knee and slope of the one rear valve that suits all loading conditions best.</summary>
/// <remarks>
/// Formula:  largest least of (mu - fr) / mu when the front locks, and z / (0.1 + 0.85 (mu - 0.2)) - 1, over conditions and grip 0.2 to 0.8
/// Valid:    a fixed proportioning valve, slope 0 to 0.8; friction of the linings as given; valves are sold in steps
/// Source:   derived in docs/derivations/brake-balance.md; the demand on the efficiency from memory (UN Regulation 13 Annex 10)
/// Example:  2100 kg, wheelbase 2.6 m, a knee of about 4.1 MPa and slope 0.2: least margin 23 %, without a valve none
/// </remarks>
public sealed class BestValve() : Calculation<BestValve.Inputs, BestValve.Result>(new()
{
    Id = "brakes.best-valve",
    Version = 1,
    Title = "Rear valve that suits best",
    Purpose = "Which knee and slope keep the front wheels first to lock and still use the most of the road, empty and loaded, on ice and on dry pavement; and whether a valve is needed at all.",
    Formula = "max over knee and slope of the least of (mu - fr) / mu at front lock and z / z asked - 1, over conditions and mu 0.2 to 0.8",
    Validity = "A fixed proportioning valve with a slope up to 0.8. Linings change: recheck with others, hot and old. A load-sensing valve can do better where load changes much.",
    Sources = ["Statics, derived", "z asked: 0.1 + 0.85 (mu - 0.2), UN Regulation 13 Annex 10, from memory"],
    Checks =
    [
        new("fitted", null, "Does what is fitted keep the front first with enough of the road used?", "fittedKnees", "valveSlope"),
        new("needed", null, "Do the brakes need a rear valve other than what is fitted?"),
    ],
    Trends = [new("rearForce", "plainMargin", '-', 4500, 6000)],
    NoTrends =
    [
        new("frontForce", "more of it helps the front be first and leaves more of the road unused"), new("frontThreshold", "small against lock"), new("rearThreshold", "holds the rear back as a valve does, at low pressure"),
        new("metering", "holds the front off at the first touch only"), new("rearShare", "works as more force and a lower threshold at the rear"), new("totals", "the worst condition decides, and another may become it"), new("centersX", "likewise"), new("heights", "likewise"),
        new("wheelbase", "likewise"), new("fittedKnees", "only compared with"), new("valveSlope", "only compared with"),
    ],
    Examples =
    [
        new(Fitted(("empty", 2100, 1.248, 0.76)), new Dictionary<string, double> { ["margin"] = 0.2322, ["plainMargin"] = -0.3948, ["fittedMargin"] = 0.2225 }, 0.001,
            "Every knee and slope tried in turn, with the front's lock by halving of the pressure: another program, command in BestValveTests", Provenance.Independent),
        new(Fitted(("empty", 2100, 1.248, 0.76), ("loaded", 2600, 1.35, 0.82)), new Dictionary<string, double> { ["margin"] = 0.1600, ["fittedMargin"] = 0.1330 }, 0.002,
            "The same in two conditions", Provenance.Independent),
    ],
    Cautions =
    [
        .. BrakeCautions.Balance, "Fit and set a valve by gauges at a front and a rear bleeder, then see on a closed road, empty and loaded, that the front wheels lock first.",
    ],
})
{
    /// <summary>kg and m; with a valve of 3.5 MPa and slope 0.35.</summary>
    private static Dictionary<string, string> Fitted(params (string Name, double Total, double CenterX, double Height)[] conditions)
    {
        string Map(Func<(string Name, double Total, double CenterX, double Height), string> told) => "{" + string.Join(",", conditions.Select(c => $"\"{c.Name}\":\"{told(c)}\"")) + "}";
        return new()
        {
            ["frontForce"] = "12642.9 N", ["frontThreshold"] = "0 MPa", ["rearForce"] = "5442.7 N", ["rearThreshold"] = "0.4 MPa", ["metering"] = "0 MPa", ["wheelbase"] = "2.6 m", ["valve"] = "fixed",
            ["totals"] = Map(c => Invariant($"{c.Total} kg")), ["centersX"] = Map(c => Invariant($"{c.CenterX} m")), ["heights"] = Map(c => Invariant($"{c.Height} m")),
            ["fittedKnees"] = Map(_ => "3.5 MPa"), ["valveSlope"] = "0.35",
        };
    }

    /// <summary>Roads looked at: grip 0.2 to 0.8 in tenths.</summary>
    private const int Roads = 7;

    private const double Enough = 0.02;

    public sealed record Inputs(
        [Input(How.FrontForce, "N", MoreThan = 0, High = 60000, Measure = How.Forces)] Force FrontForce,
        [Input(How.FrontThreshold, "MPa", AtLeast = 0, High = 2, Measure = How.Thresholds)] Pressure FrontThreshold,
        [Input(How.RearForce, "N", MoreThan = 0, High = 60000, Measure = How.Forces)] Force RearForce,
        [Input(How.RearThreshold, "MPa", AtLeast = 0, High = 2, Measure = How.Thresholds)] Pressure RearThreshold,
        [Input(How.Metering, "MPa", AtLeast = 0, High = 2, Default = 0, Measure = How.HowMetering)] Pressure Metering,
        [Input(How.RearShare, MoreThan = 0, Low = 0.2, High = 3, Default = 1, Measure = How.HowRearShare)] Ratio RearShare,
        [Input("total mass in each condition", "kg", MoreThan = 0, Measure = How.HowTotal)] Members<UnitsNet.Mass> Totals,
        [Input("center of gravity behind the front axle in each condition", "m", MoreThan = 0, Low = 0.3, High = 6, Measure = How.HowCenter)] Members<Length> CentersX,
        [Input("height of the center of gravity in each condition", "m", MoreThan = 0, Low = 0.3, High = 2, Measure = How.HowHeight)] Members<Length> Heights,
        [Input(How.Wheelbase, "m", MoreThan = 0, Low = 1.2, High = 8, Measure = How.HowWheelbase)] Length Wheelbase,
        [Input(How.Valve, OneOf = [How.NoValve, How.FixedValve, How.AdjustableValve, How.LoadValve], Measure = How.ValveKind)] string Valve,
        [Input("line pressure at which the fitted valve begins in each condition", "MPa", AtLeast = 0, High = 20, Measure = How.HowKnee)] Members<Pressure>? FittedKnees,
        [Input(How.Slope, AtLeast = 0, High = 1, Measure = How.HowSlope)] Ratio? ValveSlope);

    public sealed record Result(
        [Output("line pressure at which the best valve begins", "MPa")] Pressure? Knee,
        [Output("its slope")] Ratio? Slope,
        [Output("least margin with it, as a share of grip or of the deceleration asked")] Ratio? Margin,
        [Output("least margin without a valve")] Ratio PlainMargin,
        [Output("least margin with what is fitted")] Ratio? FittedMargin);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        var n = x.Totals.Items.Count;
        if (x.CentersX.Items.Count != n || x.Heights.Items.Count != n || n > 64) return null;
        var share = x.RearShare.DecimalFractions; // knees are told in the rear circuit's own pressure, the search goes by the front's
        AxleForce front = Given.Axle(x.FrontForce, x.FrontThreshold), rear = Given.Axle(x.RearForce, x.RearThreshold).Seen(share);
        Span<RoadCase> roads = new RoadCase[n * Roads];
        for (var c = 0; c < n; c++)
        {
            if (Given.Loading(x.Totals.Items[c].Value, x.CentersX.Items[c].Value, x.Heights.Items[c].Value, x.Wheelbase) is not { } load) return null;
            for (var i = 0; i < Roads; i++) roads[(c * Roads) + i] = new(0.2 + (0.1 * i), front.PerPascal, front.Threshold, rear.PerPascal, rear.Threshold, x.Metering.Pascals, load);
        }
        var low = Math.Max(2e5, Math.Max(rear.Threshold, 2 * x.Metering.Pascals));
        var best = ValveSearch.Best(roads, low);
        var knee = best.Knee * share;
        var plain = ValveSearch.Margin(roads, double.PositiveInfinity, 1);
        var fitted = Fitted(x, roads, share);
        w.Line("margin", "least over conditions and roads, without a valve", $"{n} conditions, grip 0.2 to 0.8", plain, "1");
        w.Line("knee", "where both least margins meet, at the best slope", $"slope {best.Slope}", knee / 1e6, "MPa");
        w.Line("margin", "the same with this valve", $"knee {knee / 1e6} MPa, slope {best.Slope}", best.Margin, "1");
        var needed = best.Margin > plain + Enough;
        Answer(w, best with { Knee = knee }, plain, fitted, needed, x.Valve == How.NoValve);
        if (w.Shown) Draw(w, roads, best, low, share);
        return new(needed ? Pressure.FromPascals(knee) : null, needed ? Ratio.FromDecimalFractions(best.Slope) : null, Ratio.FromDecimalFractions(Math.Max(plain, best.Margin)),
            Ratio.FromDecimalFractions(plain), fitted is { } f ? Ratio.FromDecimalFractions(f) : null);
    }

    /// <summary>Each condition with its own knee; null where it is not known.</summary>
    private static double? Fitted(Inputs x, ReadOnlySpan<RoadCase> roads, double share)
    {
        if (x.Valve == How.NoValve) return ValveSearch.Margin(roads, double.PositiveInfinity, 1);
        if (x.ValveSlope is not { } slope || x.FittedKnees is not { } knees || knees.Items.Count * Roads != roads.Length) return null;
        var least = double.PositiveInfinity;
        for (var c = 0; c < knees.Items.Count; c++)
            least = Math.Min(least, ValveSearch.Margin(roads.Slice(c * Roads, Roads), knees.Items[c].Value.Pascals / share, slope.DecimalFractions));
        return least;
    }

    private static void Answer(Worksheet w, in RearValve best, double plain, double? fitted, bool needed, bool none)
    {
        var serves = !none && fitted >= 0;
        var advice = plain < 0 && serves ? "The fitted valve does it." : needed ? Best(best) : plain < 0 ? "No valve mends that: look at the sizes of the brakes themselves." : "No valve suits these brakes better than none.";
        w.Answer("needed", plain < 0 && !serves ? Verdict.Caution : Verdict.Pass, plain < 0
            ? $"Without a rear valve the rear wheels lock first, or too little of the road is used, in some condition (least margin {100 * plain:0} %). {advice}"
            : $"Without a rear valve the front wheels lock first everywhere (least margin {100 * plain:0} %). {advice}", 100 * plain, "%", AdhesionRule.Practice);
        if (fitted is not { } f) return;
        var better = needed && best.Margin > f + 0.1;
        if (serves && better) advice = Best(best);
        w.Answer("fitted", f < 0 ? Verdict.Caution : Verdict.Pass, $"{(none ? "As it stands, without a valve," : "With the fitted valve")} the least margin over all conditions and roads is {100 * f:0} %."
            + (!none && (f < 0 || better) ? $" {advice}" : ""), 100 * f, "%", AdhesionRule.Practice);
    }

    private static string Best(in RearValve best) => $"A valve that begins at {best.Knee / 1e6:0.0} MPa with a slope of {best.Slope:0.00} suits best (least margin {100 * best.Margin:0} %).";

    private static void Draw(Worksheet w, ReadOnlySpan<RoadCase> roads, in RearValve best, double low, double share)
    {
        const int Points = 41;
        double[] x = new double[Points], y = new double[Points];
        var top = Math.Max(2 * best.Knee, low + 1e6);
        for (var i = 0; i < Points; i++)
        {
            var at = low + ((top - low) * i / (Points - 1));
            (x[i], y[i]) = (at * share / 1e6, ValveSearch.Margin(roads, at, best.Slope));
        }
        w.Curve(new("best slope", "knee of the rear valve", "MPa", x, "least margin", "1", y));
    }
}
