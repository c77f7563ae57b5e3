using Crossmember.Engineering.Brakes.Limits;
using Crossmember.Engineering.Calculations;
using UnitsNet;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>The grip that each axle uses, against the curves of a rule.</summary>
/// <remarks>
/// Formula:  f = F / N over z; least margin of each inequality, at the ends of straight pieces and where the slopes balance
/// Valid:    two axles, level road, grip alike left and right; the rules ask it with only a driver and laden: bind it to both conditions
/// Source:   71/320/EEC Annex II Appendix, 3.1.1 (M1, N1); others from memory, see <see cref="AdhesionRule"/>
/// Example:  2100 kg, no valve: at 0.8 g the rear uses 0.934 and the front 0.756
/// </remarks>
public sealed class Adhesion() : Calculation<Adhesion.Inputs, Adhesion.Result>(new()
{
    Id = "brakes.adhesion",
    Version = 1,
    Title = "Grip used, against a rule",
    Purpose = "Whether the rear wheels stay behind the front ones on the way to locking, as far as the chosen rule asks, with the least margin and where it lies.",
    Formula = "f = F / N; front over rear, each under the rule's curve",
    Validity = "Two axles on a level road. Rules ask for it with a driver only and laden. It is worked out from friction and bores, where an inspector measures.",
    Sources =
    [
        "71/320/EEC Annex II Appendix, 3.1.1 (M1 and N1)", "UN Regulation 13-H Annex 5, from memory", "49 CFR 571.135, from memory", "Where no rule asks: common practice, no source",
    ],
    Checks =
    [
        new("front-first", Sense.AtLeast, "Does the front axle use more grip than the rear over the rule's range?", "valveKnee", "valveSlope"),
        new("band", Sense.AtLeast, "Where the rule lets the curves cross, does the rear stay close to the deceleration?", "valveKnee", "valveSlope"),
        new("demand", Sense.AtLeast, "Is enough deceleration reached on every road before an axle locks?", "valveKnee", "valveSlope"),
        new("alternative", Sense.AtLeast, "If the rear may come first, does it keep within the bands that the rule takes instead?", "valveKnee", "valveSlope"),
        new("nine-tenths", Sense.AtLeast, "Is nine tenths of the road's grip reached before the rear axle locks?", "valveKnee", "valveSlope"),
    ],
    Trends = [new("rearForce", "frontOverRear", '-', 4000, 7000), new("frontForce", "frontOverRear", '+', 11000, 15000), new("valveKnee", "frontOverRear", '-', 4, 6), new("valveSlope", "frontOverRear", '-', 0.5, 0.9)],
    NoTrends =
    [
        new("frontThreshold", "matters more the lower the pressure, and where the least margin lies depends on it"), new("rearThreshold", "likewise"),
        new("metering", "holds the front off at the first touch only"), new("rearShare", "works as more force, an earlier knee and a lower threshold at the rear"), new("total", "a heavier vehicle needs more pressure, past a valve's knee or past the thresholds' share"),
        new("centerX", "more load at the rear helps it hold, and takes from the front"), new("height", "as for the distribution"), new("wheelbase", "likewise"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["frontForce"] = "12642.9 N", ["frontThreshold"] = "0 MPa", ["rearForce"] = "5442.7 N", ["rearThreshold"] = "0.4 MPa", ["valve"] = "none", ["metering"] = "0 MPa",
                ["total"] = "2100 kg", ["centerX"] = "1.248 m", ["height"] = "0.76 m", ["wheelbase"] = "2.6 m", ["rule"] = "R13-M1",
            },
            new Dictionary<string, double> { ["frontOverRear"] = -0.1784, ["worst"] = 0.8 }, 0.001, "At 0.8 g: front 0.7561, rear 0.9345 of their loads, by three routes; docs/derivations/brake-balance.md", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["frontForce"] = "12642.9 N", ["frontThreshold"] = "0 MPa", ["rearForce"] = "5442.7 N", ["rearThreshold"] = "0.4 MPa", ["valve"] = "fixed", ["valveKnee"] = "3.5 MPa", ["valveSlope"] = "0.35",
                ["metering"] = "0 MPa", ["total"] = "2100 kg", ["centerX"] = "1.248 m", ["height"] = "0.76 m", ["wheelbase"] = "2.6 m", ["rule"] = "R13-M1",
            },
            new Dictionary<string, double> { ["frontOverRear"] = 0.1261, ["worst"] = 0.15 }, 0.001, "At 0.15 g: front 0.2050, rear 0.0789 of their loads, by three routes; docs/derivations/brake-balance.md", Provenance.Derived),
    ],
    Cautions = BrakeCautions.Balance,
})
{
    public sealed record Inputs(
        [Input(How.FrontForce, "N", AtLeast = 0, High = 60000, Measure = How.Forces)] Force FrontForce,
        [Input(How.FrontThreshold, "MPa", AtLeast = 0, High = 2, Measure = How.Thresholds)] Pressure FrontThreshold,
        [Input(How.RearForce, "N", AtLeast = 0, High = 60000, Measure = How.Forces)] Force RearForce,
        [Input(How.RearThreshold, "MPa", AtLeast = 0, High = 2, Measure = How.Thresholds)] Pressure RearThreshold,
        [Input(How.Valve, OneOf = [How.NoValve, How.FixedValve, How.AdjustableValve, How.LoadValve], Measure = How.ValveKind)] string Valve,
        [Input(How.Knee, "MPa", AtLeast = 0, High = 20, Measure = How.HowKnee)] Pressure? ValveKnee,
        [Input(How.Slope, AtLeast = 0, High = 1, Measure = How.HowSlope)] Ratio? ValveSlope,
        [Input(How.Metering, "MPa", AtLeast = 0, High = 2, Default = 0, Measure = How.HowMetering)] Pressure Metering,
        [Input(How.RearShare, MoreThan = 0, Low = 0.2, High = 3, Default = 1, Measure = How.HowRearShare)] Ratio RearShare,
        [Input(How.Total, "kg", MoreThan = 0, Measure = How.HowTotal)] UnitsNet.Mass Total,
        [Input(How.CenterX, "m", MoreThan = 0, Low = 0.3, High = 6, Measure = How.HowCenter)] Length CenterX,
        [Input(How.Height, "m", MoreThan = 0, Low = 0.3, High = 2, Measure = How.HowHeight)] Length Height,
        [Input(How.Wheelbase, "m", MoreThan = 0, Low = 1.2, High = 8, Measure = How.HowWheelbase)] Length Wheelbase,
        [Input(How.Rule, OneOf = [BrakeRule.Truck105, BrakeRule.Car135, BrakeRule.Car13H, BrakeRule.Car13, BrakeRule.Van13, BrakeRule.None], Measure = How.HowRule)] string Rule);

    public sealed record Result(
        [Output("least by which the front axle uses more grip than the rear over the rule's range")] Ratio? FrontOverRear,
        [Output("deceleration in g at which that is")] Ratio? Worst);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (Given.Loading(x.Total, x.CenterX, x.Height, x.Wheelbase) is not { } load) return null;
        if (Given.Valves(x.Valve, x.ValveKnee, x.ValveSlope, x.Metering) is not { } valves) return new(null, null);
        var rig = Given.Rig(Given.Axle(x.FrontForce, x.FrontThreshold), Given.Axle(x.RearForce, x.RearThreshold), valves, x.RearShare);
        Span<UsePiece> room = stackalloc UsePiece[UsePiece.Most];
        ReadOnlySpan<UsePiece> pieces = room[..UsePiece.Fill(room, rig, load)];
        var tightest = Worst.Of(GripLimit.FrontOverRear(AdhesionRule.Low, AdhesionRule.FrontFirstTo(x.Rule)), pieces, load);
        if (double.IsInfinity(tightest.Margin)) return null;
        w.Line("ff - fr", "least of Ff / Nf - Fr / Nr over the range", $"{tightest.FrontUse} - {tightest.RearUse} at {tightest.Z} g", tightest.Margin, "1");
        AdhesionFindings.Answer(w, x.Rule, pieces, load);
        return new(Ratio.FromDecimalFractions(tightest.Margin), Ratio.FromDecimalFractions(tightest.Z));
    }
}
