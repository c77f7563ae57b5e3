using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>What the bolts of a recovery point and the frame behind them hold.</summary>
/// <remarks>
/// Formula:  tension and shear of each bolt by equilibrium of a stiff bracket; (T / (Sp As))^2 + (V / (0.577 Sp As))^2 at most 1; bearing V / (d t) at most the frame's yield
/// Valid:    to the proof strength of the bolts; a stiff bracket on a sound wall
/// Source:   docs/derivations/bolt-group.md; proof strengths ISO 898-1 and SAE J429 from memory (data/engineering/bolt-grades.csv)
/// Example:  4 bolts M12 x 1.75, 8.8, 30 and 90 mm from the edge, straight pull 40 mm over the plate on a thick wall -> 102.4 kN
/// </remarks>
public sealed class PointBolts() : Calculation<PointBolts.Inputs, PointBolts.Result>(new()
{
    Id = "recovery.point-bolts",
    Version = 1,
    Title = "Bolts of a recovery point",
    Purpose = "A rated point is worth what it is bolted with and to: how much pull its bolts and the frame wall hold, straight and askew.",
    Formula = "T, V of each bolt by equilibrium of a stiff bracket; (T / (Sp As))^2 + (V / (0.577 Sp As))^2 at most 1; V / (d t) at most Sy of the wall",
    Validity = "Bolts to their proof strength, threads in the shear plane, preload left out; bracket stiff, bolts in two equal rows across the pull. Tearing and buckling of the wall, "
        + "prying of a soft bracket, rust and old holes are not in it: a thin wall wants a backing plate.",
    Sources = ["Equilibrium of a bolted bracket, derived (docs/derivations/bolt-group.md)", "ISO 898-1 and SAE J429, proof strengths, from memory", "Shear strength 0.577 of tensile: textbooks of machine design, from memory"],
    Trends =
    [
        new("boltDiameter", "strength", '+', 8, 30), new("height", "strength", '-', 0, 150), new("farRow", "strength", '+', 70, 200), new("frameYield", "wallStrength", '+', 180, 500),
        new("frameWall", "wallStrength", '+', 2, 10), new("boltPitch", "strength", '-', 0.8, 2.5),
    ],
    NoTrends =
    [
        new("boltCount", "goes in steps"), new("nearRow", "moves the edge with it"), new("gauge", "counts only in a pull to the side"),
        new("ahead", "helps or hurts by the direction of the pull"), new("upAngle", "the worst of straight and askew counts"), new("sideAngle", "the worst of straight and askew counts"),
    ],
    Examples =
    [
        new(Case("0 deg", "0 deg"), new Dictionary<string, double> { ["strength"] = 102.42, ["tension"] = 20, ["shear"] = 25 }, 0.001,
            "As 84.27 mm2, Sp As 48.87 kN; T 0.2 and V 0.25 of the pull by hand: sqrt(0.2^2 + (0.25 / 0.577)^2) = 0.4772; 48.87 / 0.4772", Provenance.Derived),
    ],
    Cautions = [RecoveryCautions.Qualified, RecoveryCautions.NoBall, RecoveryCautions.StandClear],
})
{
    public sealed record Inputs(
        [Input("number of bolts", AtLeast = 1, High = 12, Measure = "count them")] Ratio BoltCount,
        [Input("thread diameter", "mm", MoreThan = 0, Low = 6, High = 36, Measure = MountMeasures.Diameter)] Length BoltDiameter,
        [Input("thread pitch; a coarse thread is taken where none is given", "mm", MoreThan = 0, Low = 0.5, High = 4, Measure = MountMeasures.Pitch)] Length? BoltPitch,
        [Input("grade by the marks on the heads", Notation = typeof(BoltGrade.Notation), Measure = MountMeasures.Grade)] string BoltGrade,
        [Input("nearer row of bolts from the bracket's edge toward the pull", "mm", MoreThan = 0, High = 400, Measure = MountMeasures.Rows)] Length NearRow,
        [Input("farther row from the same edge; the same figure where there is one row", "mm", MoreThan = 0, High = 600, Measure = MountMeasures.Rows)] Length FarRow,
        [Input("between the outer bolts of a row", "mm", AtLeast = 0, High = 600, Measure = "tape from center to center")] Length Gauge,
        [Input("height of the pull over the bolted face", "mm", AtLeast = 0, High = 300, Measure = MountMeasures.Height)] Length Height,
        [Input("how far the pull lies before that edge; negative over the plate", "mm", Measure = MountMeasures.Ahead)] Length Ahead,
        [Input("wall that the bolts bear on", "mm", MoreThan = 0, Low = 1.5, High = 25, Measure = MountMeasures.Wall)] Length FrameWall,
        [Input("yield strength of the frame", "MPa", MoreThan = 0, Low = 150, High = 700, Default = 220, Measure = MountMeasures.Yield)] Pressure FrameYield,
        [Input("largest angle of the pull off the bolted face", "deg", AtLeast = 0, High = 90, Default = 15, Measure = MountMeasures.Up)] Angle UpAngle,
        [Input("largest angle of the pull to the side", "deg", AtLeast = 0, High = 90, Default = 30, Measure = MountMeasures.Side)] Angle SideAngle);

    public sealed record Result(
        [Output("pull that bolts and wall hold, the worst of straight and askew", "kN")] Force? Strength,
        [Output("what gives first")] string? Gives,
        [Output("tension of the worst bolt, of the pull", "%")] Ratio? Tension,
        [Output("shear of the worst bolt, of the pull", "%")] Ratio? Shear,
        [Output("shear on one bolt at which the frame wall yields", "kN")] Force WallStrength);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double d = x.BoltDiameter.Meters, wall = d * x.FrameWall.Meters * x.FrameYield.Pascals; // m, N
        if (MountMeasures.Bracket(w, x.BoltCount, x.BoltDiameter, x.BoltPitch, x.BoltGrade, x.NearRow, x.FarRow, x.Gauge, x.Height, x.Ahead, x.FrameWall, x.FrameYield) is not { } bracket)
            return null;
        w.Line("As", x.BoltPitch is null ? $"{BoltGrade.CoarseShare(d):0.00} pi d^2 / 4" : "pi / 4 (d - 0.9382 p)^2", $"d = {1000 * d} mm", bracket.Area, "m2");
        w.Line("d t Sy", "diameter x wall x yield strength", $"{d} x {x.FrameWall.Meters} x {x.FrameYield.Pascals}", wall, "N");
        var held = bracket.Strength(x.UpAngle.Radians, x.SideAngle.Radians, w);
        return new(held is { } h ? Force.FromNewtons(h.Pull) : null, held?.Gives,
            held is { } t ? Ratio.FromDecimalFractions(t.Tension) : null, held is { } v ? Ratio.FromDecimalFractions(v.Shear) : null, Force.FromNewtons(wall));
    }

    private static Dictionary<string, string> Case(string up, string side) => new()
    {
        ["boltCount"] = "4", ["boltDiameter"] = "12 mm", ["boltPitch"] = "1.75 mm", ["boltGrade"] = "8.8", ["nearRow"] = "30 mm", ["farRow"] = "90 mm", ["gauge"] = "60 mm",
        ["height"] = "40 mm", ["ahead"] = "0 mm", ["frameWall"] = "25 mm", ["frameYield"] = "350 MPa", ["upAngle"] = up, ["sideAngle"] = side,
    };
}
