using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>The road wheels over the turn of the steering box, from lock to lock: leverage, evenness, and the second wheel by the tie rod.</summary>
/// <remarks>
/// Formula:  |arm ball - pitman ball| = drag link, |tie rod ball - tie rod ball| = tie rod, solved for the turn of each kingpin at each angle of the box's shaft
/// Valid:    rigid parts without play, at the ride height of the day the points were measured
/// Source:   geometry, docs/derivations/steering-linkage.md; limits: common practice, no source
/// Example:  parallel arms of equal length turn the wheel as the box's shaft turns
/// </remarks>
public sealed class LinkageTravel() : Calculation<LinkageTravel.Inputs, LinkageTravel.Result>(new()
{
    Id = "steering.linkage-travel",
    Version = 1,
    Title = "Steering linkage from lock to lock",
    Purpose = "Whether the linkage works as far as the stops allow: near a dead center it locks or snatches, a box off its middle runs into its own stop, and a tie rod on the "
        + "wrong side makes the wheels fight each other in a turn.",
    Formula = "|arm ball - pitman ball| = length of the drag link at each angle of the box's shaft; the other wheel likewise by the tie rod; error = outer angle - ideal outer angle",
    Validity = "Rigid parts without play, straight ahead with toe zero, at the ride height at which the points were measured. Angles are those a turn plate reads. "
        + "The other wheel has the same kingpin mirrored, and the tie rod's balls lie alike on both sides.",
    Sources =
    [
        "Geometry of the linkage, derived (docs/derivations/steering-linkage.md)", "Limits of 30 deg, 15 % and 4 deg: common practice, no source",
        "UN Regulation No. 79: the lock shall not be limited by the steering transmission unless it is made for that; from memory",
    ],
    Checks =
    [
        new("closes", null, "Does the linkage reach both locks?"),
        new("transmission", Sense.AtLeast, "Does the drag link keep clear of its dead centers?"),
        new("even", Sense.AtMost, "Does the box turn equally far to both sides?"),
        new("box", Sense.AtMost, "Do the axle's stops end the lock before the box does?", "boxTurns", "boxRatio"),
        new("scrub", Sense.AtMost, "Do both wheels keep near one turning center?", "wheelbase", "tieRodX", "tieRodZ", "tieRodLength"),
    ],
    NoTrends =
    [
        .. Points.Select(p => new NoTrend(p, "one of the points of a linkage: moves leverage and evenness either way")),
        new("kingpinDistance", "sets the length of the steering arm together with its ball"), new("pointsRideHeight", "sets where the kingpin is"),
        new("caster", "tilts the kingpin, to little effect"), new("inclination", "tilts the kingpin, to little effect"), new("innerAngles", "only says how far to follow"),
        new("outerAngles", "only says how far to follow"), new("boxTurns", "only compared with the result"), new("boxRatio", "only compared with the result"),
        new("wheelbase", "sets the ideal that the second wheel is held against"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["pitmanShaft"] = "upright", ["pivotX"] = "150 mm", ["pivotY"] = "0 mm", ["pivotZ"] = "-100 mm", ["pitmanX"] = "300 mm", ["pitmanY"] = "0 mm", ["pitmanZ"] = "-100 mm",
                ["armX"] = "150 mm", ["armY"] = "-650 mm", ["armZ"] = "-100 mm", ["kingpinDistance"] = "1300 mm", ["pointsRideHeight"] = "150 mm",
                ["innerAngles"] = """{"left":"30 deg","right":"30 deg"}""", ["outerAngles"] = """{"left":"30 deg","right":"30 deg"}""", ["caster"] = "0 deg", ["inclination"] = "0 deg",
            },
            new Dictionary<string, double> { ["boxLeft"] = 30, ["boxRight"] = 30, ["ratio"] = 1, ["pitmanLength"] = 150 / 25.4, ["armLength"] = 150 / 25.4 }, 1e-6,
            "arms of 150 mm, parallel: a parallelogram turns its two arms alike", Provenance.Derived),
    ],
    Cautions =
    [
        "A drag link at a dead center locks the steering or lets it snatch over: turn lock to lock on stands, at full bump and full droop, before the vehicle moves.",
        SteeringRatio.BoxMounting,
    ],
})
{
    private static readonly string[] Points =
        ["pivotX", "pivotY", "pivotZ", "pitmanX", "pitmanY", "pitmanZ", "armX", "armY", "armZ", "tieRodX", "tieRodZ", "tieRodLength"];

    public sealed record Inputs(
        [Input("how the box's output shaft lies", OneOf = [LinkagePoints.Across, LinkagePoints.Upright, LinkagePoints.Lengthwise],
            Measure = "look: across where the pitman arm swings fore and aft in a standing plane, upright where it swings level")] string PitmanShaft,
        [Input("box's output shaft behind the front axle's line", "mm", Measure = HowToMeasureSteering.PitmanPivot)] Length PivotX,
        [Input("box's output shaft right of the center line", "mm", Measure = HowToMeasureSteering.PitmanPivot)] Length PivotY,
        [Input("box's output shaft over the frame datum", "mm", Measure = HowToMeasureSteering.PitmanPivot)] Length PivotZ,
        [Input("pitman arm's ball behind the front axle's line", "mm", Measure = HowToMeasureSteering.PitmanEnd)] Length PitmanX,
        [Input("pitman arm's ball right of the center line", "mm", Measure = HowToMeasureSteering.PitmanEnd)] Length PitmanY,
        [Input("pitman arm's ball over the frame datum", "mm", Measure = HowToMeasureSteering.PitmanEnd)] Length PitmanZ,
        [Input("steering arm's ball behind the front axle's line", "mm", Measure = HowToMeasureSteering.ArmBall)] Length ArmX,
        [Input("steering arm's ball right of the center line", "mm", Measure = HowToMeasureSteering.ArmBall)] Length ArmY,
        [Input("steering arm's ball over the frame datum", "mm", Measure = HowToMeasureSteering.ArmBall)] Length ArmZ,
        [Input("distance between the kingpins", "mm", MoreThan = 0, Low = 760, High = 2500, Measure = HowToMeasureSteering.KingpinDistance)] Length KingpinDistance,
        [Input("frame datum over axle center when the points were measured", "mm", Low = 50, High = 600, Measure = HowToMeasureSteering.PointsRideHeight)] Length PointsRideHeight,
        [Input("angle of the inner wheel at the stop, turning to each side", "deg", MoreThan = 0, Low = 5, High = 50, Measure = HowToMeasureSteering.InnerAngle)] Members<Angle> InnerAngles,
        [Input("angle of the outer wheel at the stop, turning to each side", "deg", MoreThan = 0, Low = 5, High = 50, Measure = HowToMeasureSteering.OuterAngle)] Members<Angle> OuterAngles,
        [Input("caster; 3 deg where it is not known", "deg", Low = -10, High = 15, Measure = HowToMeasureSteering.Caster)] Angle? Caster,
        [Input("kingpin inclination", "deg", Low = 0, High = 15, Default = 8, Measure = HowToMeasureSteering.Inclination)] Angle Inclination,
        [Input("tie rod's balls behind the front axle's line", "mm", Measure = "tape from the axle's line; a tie rod ahead of the axle is negative")] Length? TieRodX,
        [Input("tie rod's balls over the frame datum", "mm", Measure = "tape from the frame datum, weight on the wheels; lower is negative")] Length? TieRodZ,
        [Input("length of the tie rod, ball to ball", "mm", MoreThan = 0, Low = 500, High = 2500, Measure = "tape from ball to ball")] Length? TieRodLength,
        [Input("wheelbase", "in", MoreThan = 0, Low = 60, High = 260, Measure = HowToMeasureSteering.Wheelbase)] Length? Wheelbase,
        [Input("turns of the box alone, from its stop to its stop", MoreThan = 0, Low = 2, High = 10, Measure = "drag link off, count turns of the steering wheel from end to end")] Ratio? BoxTurns,
        [Input("ratio of the steering box", MoreThan = 0, Low = 8, High = 40, Measure = HowToMeasureSteering.BoxRatio)] Ratio? BoxRatio);

    public sealed record Result(
        [Output("turn of the box's shaft from straight ahead to the left lock", "deg")] Angle? BoxLeft,
        [Output("the same to the right lock", "deg")] Angle? BoxRight,
        [Output("degrees of the box's shaft for one of the wheel, near straight ahead")] Ratio? Ratio,
        [Output("least transmission angle of the drag link between the locks; 90 deg pulls square", "deg")] Angle? Transmission,
        [Output("largest error of the outer wheel between the locks: positive turns out too far", "deg")] Angle? Scrub,
        [Output("length of the pitman arm", "in")] Length? PitmanLength,
        [Output("length of the steering arm", "in")] Length? ArmLength);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        var caster = x.Caster ?? LinkagePoints.UsualCaster;
        if (Math.Abs(caster.Degrees) >= 80 || Math.Abs(x.Inclination.Degrees) >= 80)
        {
            w.Caution("No kingpin leans so far: read caster and inclination again.");
            return null;
        }
        if (x.Caster is null) w.Caution("The caster is not known: 3 deg is assumed, which matters little here.");
        var path = Path(x, caster);
        double pitman = path.Pitman.Radius, arm = path.Linkage.Knuckle.Radius; // m
        w.Line("p", "pitman arm, ball to its foot on the shaft", $"|{path.Pitman.Ball} - {path.Pitman.Center}|", 1000 * pitman, "mm");
        w.Line("r", "steering arm, ball to its foot on the kingpin axis", $"|{path.Linkage.Knuckle.Ball} - {path.Linkage.Knuckle.Center}|", 1000 * arm, "mm");
        w.Line("l", "drag link, ball to ball", $"|{path.Linkage.PitmanBall} - {path.Linkage.Knuckle.Ball}|", 1000 * path.Linkage.Rod, "mm");
        if (path.At(0) is not { } straight)
        {
            w.Answer("closes", Verdict.Fail, $"Straight ahead already one arm has no lever on the drag link: measure {LinkagePoints.PitmanBall}, {LinkagePoints.ArmBall} and the box's shaft again.");
            return new(null, null, null, null, null, Positive(pitman), Positive(arm));
        }
        var sweep = new LinkageSweep(path, x.InnerAngles, x.OuterAngles);
        sweep.Judge(w, x.BoxTurns is { } n && x.BoxRatio is { } i ? n.DecimalFractions * 180 / i.DecimalFractions : null);
        var error = x.Wheelbase is { } L && path.Other is not null ? sweep.Scrub(x.KingpinDistance.Meters, L.Meters, w) : null;
        double? ratio = path.At(LinkageSweep.Little) is { } a && path.At(-LinkageSweep.Little) is { } b && Math.Abs(a.Steer - b.Steer) > 1e-9
            ? 2 * LinkageSweep.Little / Math.Abs(a.Steer - b.Steer) : null;
        if (ratio is { } k) w.Line("k", "box shaft over wheel, straight ahead", $"over one degree either way", k, "1");
        if (w.Shown) foreach (var curve in sweep.Curves()) w.Curve(curve);
        return new(Of(sweep.Left), Of(sweep.Right), ratio is { } r ? UnitsNet.Ratio.FromDecimalFractions(r) : null, Of(Math.Min(sweep.Transmission, straight.Transmission)), Of(error),
            Positive(pitman), Positive(arm));
    }

    private static LinkageTravelPath Path(Inputs x, Angle caster)
    {
        var linkage = Linkage.Of(LinkagePoints.Of(x.PitmanX, x.PitmanY, x.PitmanZ), LinkagePoints.Of(x.ArmX, x.ArmY, x.ArmZ), x.KingpinDistance.Meters, -x.PointsRideHeight.Meters,
            caster.Radians, x.Inclination.Radians);
        var pitman = new LinkageCrank(LinkagePoints.Of(x.PivotX, x.PivotY, x.PivotZ), LinkagePoints.Shaft(x.PitmanShaft), linkage.PitmanBall);
        if (x is not { TieRodX: { } tx, TieRodZ: { } tz, TieRodLength: { } tl }) return new(linkage, pitman, null, null);
        LinkageCrank Tie(int hand) => new(
            new(0, hand * x.KingpinDistance.Meters / 2, -x.PointsRideHeight.Meters), Linkage.Kingpin(hand, caster.Radians, x.Inclination.Radians),
            new(tx.Meters, hand * tl.Meters / 2, tz.Meters));
        return new(linkage, pitman, Tie(linkage.Hand), Tie(-linkage.Hand));
    }

    private static Angle? Of(double? rad) => rad is { } r ? Angle.FromRadians(r) : null;

    private static Length? Positive(double meters) => meters > 0 ? Length.FromMeters(meters) : null;
}
