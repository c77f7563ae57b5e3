using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>Whether the bolts of a winch mount and the wall behind them hold what the winch pulls.</summary>
/// <remarks>
/// Formula:  as for the bolts of a recovery point; strength against the line pull on the first layer, twice it for a pass
/// Valid:    to the proof strength of the bolts; a stiff winch and plate
/// Source:   docs/derivations/bolt-group.md; proof strengths ISO 898-1 and SAE J429 from memory (data/engineering/bolt-grades.csv)
/// Example:  4 bolts M12 x 1.75, 8.8, 30 and 90 mm from the edge, straight pull 40 mm over the plate on a thick wall, 40 kN -> 2.56 times
/// </remarks>
public sealed class WinchMount() : Calculation<WinchMount.Inputs, WinchMount.Result>(new()
{
    Id = "recovery.winch-mount",
    Version = 1,
    Title = "Bolts of a winch mount",
    Purpose = "The winch pulls on four bolts and the plate under them: whether they hold at the stall, and with a jerk on top of it.",
    Formula = "T, V of each bolt by equilibrium of a stiff bracket; (T / (Sp As))^2 + (V / (0.577 Sp As))^2 at most 1; V / (d t) at most Sy of the wall; strength over line pull",
    Validity = "Bolts to their proof strength, threads in the shear plane, preload left out, winch and plate stiff. The way of the force from the plate into the frame is another piece of work, "
        + "and so is what bends when the pull comes from the side.",
    Sources = ["Equilibrium of a bolted bracket, derived (docs/derivations/bolt-group.md)", "ISO 898-1 and SAE J429, proof strengths, from memory", "Twice the line pull: common practice, no source"],
    Checks = [new("bolts", Sense.AtLeast, "Do the bolts and the wall hold twice the line pull?")],
    Trends =
    [
        new("boltDiameter", "factor", '+', 8, 30), new("height", "factor", '-', 0, 150), new("farRow", "factor", '+', 70, 200), new("linePull", "factor", '-', 5, 100),
        new("boltPitch", "factor", '-', 0.8, 2.5),
    ],
    NoTrends =
    [
        new("boltCount", "goes in steps"), new("nearRow", "moves the edge with it"), new("gauge", "counts only in a pull to the side"),
        new("ahead", "helps or hurts by the direction of the pull"), new("upAngle", "the worst of straight and askew counts"), new("sideAngle", "the worst of straight and askew counts"),
        new("frameWall", "counts only where the wall gives before the bolts"), new("frameYield", "counts only where the wall gives before the bolts"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["linePull"] = "40 kN", ["boltCount"] = "4", ["boltDiameter"] = "12 mm", ["boltPitch"] = "1.75 mm", ["boltGrade"] = "8.8", ["nearRow"] = "30 mm", ["farRow"] = "90 mm",
                ["gauge"] = "60 mm", ["height"] = "40 mm", ["ahead"] = "0 mm", ["frameWall"] = "25 mm", ["frameYield"] = "350 MPa", ["upAngle"] = "0 deg", ["sideAngle"] = "0 deg",
            },
            new Dictionary<string, double> { ["strength"] = 102.42, ["factor"] = 2.5604 }, 0.001, "As for the bolts of a recovery point, over 40 kN, by hand", Provenance.Derived),
    ],
    Cautions = [RecoveryCautions.Qualified, RecoveryCautions.StandClear, "Use the bolts the winch maker gives or names, to his torque, with all their threads in."],
})
{
    public sealed record Inputs(
        [Input("line pull on the first layer", "kN", MoreThan = 0, Low = 1, High = 300, Measure = HowToMeasureRecovery.FirstPull)] Force LinePull,
        [Input("number of bolts", AtLeast = 1, High = 12, Measure = "count them")] Ratio BoltCount,
        [Input("thread diameter", "mm", MoreThan = 0, Low = 6, High = 36, Measure = MountMeasures.Diameter)] Length BoltDiameter,
        [Input("thread pitch; a coarse thread is taken where none is given", "mm", MoreThan = 0, Low = 0.5, High = 4, Measure = MountMeasures.Pitch)] Length? BoltPitch,
        [Input("grade by the marks on the heads", Notation = typeof(BoltGrade.Notation), Measure = MountMeasures.Grade)] string BoltGrade,
        [Input("nearer row of bolts from the edge toward the pull", "mm", MoreThan = 0, High = 400, Measure = MountMeasures.Rows)] Length NearRow,
        [Input("farther row from the same edge; the same figure where there is one row", "mm", MoreThan = 0, High = 600, Measure = MountMeasures.Rows)] Length FarRow,
        [Input("between the outer bolts of a row", "mm", AtLeast = 0, High = 600, Measure = "tape from center to center")] Length Gauge,
        [Input("height of the line over the bolted face", "mm", AtLeast = 0, High = 300, Measure = MountMeasures.Height)] Length Height,
        [Input("how far the rope leaves the winch before that edge; negative over the plate", "mm", Measure = MountMeasures.Ahead)] Length Ahead,
        [Input("wall that the bolts bear on", "mm", MoreThan = 0, Low = 1.5, High = 25, Measure = MountMeasures.Wall)] Length FrameWall,
        [Input("yield strength of the plate or frame", "MPa", MoreThan = 0, Low = 150, High = 700, Default = 220, Measure = MountMeasures.Yield)] Pressure FrameYield,
        [Input("largest angle of the line off the bolted face", "deg", AtLeast = 0, High = 90, Default = 15, Measure = MountMeasures.Up)] Angle UpAngle,
        [Input("largest angle of the line to the side", "deg", AtLeast = 0, High = 90, Default = 30, Measure = MountMeasures.Side)] Angle SideAngle);

    public sealed record Result(
        [Output("line pull that bolts and wall hold, the worst of straight and askew", "kN")] Force? Strength,
        [Output("strength over the line pull")] Ratio? Factor,
        [Output("what gives first")] string? Gives);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var bracket = MountMeasures.Bracket(w, x.BoltCount, x.BoltDiameter, x.BoltPitch, x.BoltGrade, x.NearRow, x.FarRow, x.Gauge, x.Height, x.Ahead, x.FrameWall, x.FrameYield);
        if (bracket?.Strength(x.UpAngle.Radians, x.SideAngle.Radians, w) is not { } held)
        {
            w.Answer("bolts", Verdict.Unknown, "Not known: by these readings nothing holds the mount against tipping. Measure the bolts again.");
            return new(null, null, null);
        }
        double strength = held.Pull / 1000, pull = x.LinePull.Kilonewtons; // kN
        w.Line("factor", "strength / line pull", $"{strength} / {pull}", strength / pull, "1");
        w.AtLeast("bolts", strength, pull, "kN", $"At {strength:0.0} kN {held.Gives} gives; the winch pulls {pull:0.0} kN, and a jerk more: "
            + (strength < pull ? $"{(held.Gives == "a bolt" ? "the bolt stretches" : "the wall bends")} for good before the winch stalls, and may go on to tear." : strength < 2 * pull ? $"{strength / pull:0.0} times, where twice is wanted. Larger or better bolts, or a backing plate." : $"{strength / pull:0.0} times."),
            "twice the line pull: common practice, no source", watch: 2 * pull);
        return new(Force.FromKilonewtons(strength), Ratio.FromDecimalFractions(strength / pull), held.Gives);
    }
}
