using Crossmember.Engineering.Calculations;
using UnitsNet;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>Line pressure at which the valve in the rear line begins in one loading condition.</summary>
/// <remarks>
/// Formula:  load-sensing pk = pl + (ph - pl) (N - Nl) / (Nh - Nl), not beyond either; fixed as it is
/// Valid:    the rod set as when the two knees were gauged; between them taken as straight, as a spring pulls
/// Source:   straight line between two readings, derived in docs/derivations/brake-balance.md
/// Example:  2 MPa at 800 kg, 6 MPa at 1400 kg: at 1000 kg 3.333 MPa
/// </remarks>
public sealed class ValveKnee() : Calculation<ValveKnee.Inputs, ValveKnee.Result>(new()
{
    Id = "brakes.valve-knee",
    Version = 1,
    Title = "Knee of the rear brake valve",
    Purpose = "Where the valve in the rear line begins to hold pressure back: the same in every loading condition for a fixed one, higher with load on the axle for a load-sensing one.",
    Formula = "fixed: as gauged; load-sensing: straight between two rear axle loads, not beyond either",
    Validity = "Pedal going down; on release a valve lets go later. A lift or another spring moves a load-sensing valve's rod: gauge it again.",
    Sources = ["Straight line between two readings, derived"],
    Checks = [new("knee", null, "Is it known where the rear valve begins in this condition?")],
    Trends = [new("rearLoad", "knee", '+', 820, 1380), new("heavyKnee", "knee", '+', 3, 10)],
    NoTrends =
    [
        new("knee", "is handed on by a fixed or adjustable valve; nothing is worked out"), new("lightLoad", "moves the near end of the line: the knee falls or rises with where the load lies"),
        new("heavyLoad", "moves the far end of the line"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            { ["kind"] = "load-sensing", ["knee"] = "2 MPa", ["heavyKnee"] = "6 MPa", ["lightLoad"] = "800 kg", ["heavyLoad"] = "1400 kg", ["rearLoad"] = "1000 kg" },
            new Dictionary<string, double> { ["knee"] = 3.3333 }, 0.0001, "Two readings and a straight line, by hand: 2 + 4 x 200 / 600", Provenance.Derived),
    ],
    Cautions = ["A valve set wrong or seized lets the rear wheels lock first and the vehicle swap ends. Setting one is work for a qualified person, with gauges, to the maker's figures."],
})
{
    public sealed record Inputs(
        [Input(How.Valve, OneOf = [How.NoValve, How.FixedValve, How.AdjustableValve, How.LoadValve], Measure = How.ValveKind)] string Kind,
        [Input("line pressure at which the rear valve begins; of a load-sensing one with the lighter load", "MPa", AtLeast = 0, High = 15, Measure = How.HowKnee)] Pressure? Knee,
        [Input("the same of a load-sensing valve with the heavier load", "MPa", AtLeast = 0, High = 20, Measure = "load the rear axle as heavy as it will be, weigh it, and gauge both sides again")]
        Pressure? HeavyKnee,
        [Input("load on the rear axle when its first knee was gauged", "kg", AtLeast = 0, Measure = "weigh the rear axle as it stood when gauged")] UnitsNet.Mass? LightLoad,
        [Input("load on the rear axle when its second knee was gauged", "kg", AtLeast = 0, Measure = "weigh the rear axle as it stood when gauged")] UnitsNet.Mass? HeavyLoad,
        [Input("load on the rear axle in this condition", "kg", AtLeast = 0, Measure = "weigh the rear axle in this condition")] UnitsNet.Mass? RearLoad);

    public sealed record Result([Output("line pressure at which the rear valve begins in this condition; none without a valve", "MPa")] Pressure? Knee);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (x.Kind == How.NoValve)
        {
            w.Answer("knee", Verdict.Pass, "There is no valve in the rear line: the rear brakes get the whole pressure.");
            return new(null);
        }
        if (x.Knee is not { } knee) return Unknown(w, "the pressure at which the rear valve begins", How.HowKnee);
        if (x.Kind != How.LoadValve)
        {
            w.Line("pk", "as gauged", $"{knee.Megapascals}", knee.Megapascals, "MPa");
            w.Answer("knee", Verdict.Pass, $"The rear valve begins at {knee.Megapascals:0.0#} MPa.", knee.Megapascals, "MPa");
            return new(knee);
        }
        if (x.HeavyKnee is not { } heavyKnee) return Unknown(w, "the pressure at which it begins with the heavier load", "load the rear axle, weigh it and gauge both sides again");
        if (x.LightLoad is not { } light || x.HeavyLoad is not { } heavy) return Unknown(w, "the rear axle's load at its two knees", "weigh the rear axle as it stood for each gauging");
        if (x.RearLoad is not { } load) return Unknown(w, "the rear axle's load in this condition", "weigh it");
        if (heavy.Kilograms - light.Kilograms < 1)
            return Unknown(w, $"how the valve follows the load: its two knees were gauged at {light.Kilograms:0} and {heavy.Kilograms:0} kg", "gauge it light and heavy");
        return Between(w, knee.Megapascals, heavyKnee.Megapascals, light.Kilograms, heavy.Kilograms, load.Kilograms);
    }

    /// <summary>MPa and kg.</summary>
    private static Result Between(Worksheet w, double low, double high, double light, double heavy, double load)
    {
        var share = Math.Clamp((load - light) / (heavy - light), 0, 1);
        var knee = low + (share * (high - low));
        w.Line("pk", "pl + (ph - pl) (N - Nl) / (Nh - Nl)", $"{low} + ({high} - {low}) x {share}", knee, "MPa");
        var beyond = load < light || load > heavy;
        w.Answer("knee", beyond || high < low ? Verdict.Caution : Verdict.Pass,
            high < low ? $"The rear valve was gauged to begin earlier with more load ({high:0.0#} MPa against {low:0.0#}): look whether rod or readings are the wrong way round."
            : beyond ? $"With {load:0} kg on the rear axle the valve lies beyond its two gaugings ({light:0} and {heavy:0} kg): {knee:0.0#} MPa is taken, gauge it so loaded."
            : $"With {load:0} kg on the rear axle the valve begins at {knee:0.0#} MPa.", knee, "MPa");
        return new(Pressure.FromMegapascals(knee));
    }

    private static Result? Unknown(Worksheet w, string what, string how)
    {
        w.Answer("knee", Verdict.Unknown, $"Not known: {what} is missing ({how}).");
        return new(null);
    }
}
