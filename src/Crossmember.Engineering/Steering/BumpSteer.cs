using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>How much the wheels steer by themselves as the axle rises and falls, steering wheel held still.</summary>
/// <remarks>
/// Formula:  |arm ball - pitman ball| = length of the drag link, solved for the turn of the steering arm at each height of the axle
/// Valid:    both wheels rise together; the axle keeps its attitude; wind-up under braking and body lean left out
/// Source:   geometry, docs/derivations/steering-linkage.md; limits: common practice, no source
/// Example:  drag link level and as long as the axle's own arm, fixed end to fixed end: none
/// </remarks>
public sealed class BumpSteer() : Calculation<BumpSteer.Inputs, BumpSteer.Result>(new()
{
    Id = "steering.bump-steer",
    Version = 1,
    Title = "Bump steer",
    Purpose = "Whether the vehicle darts on bumps: drag link and axle move on arcs of their own, and where these part the wheels steer, more after every lift.",
    Formula = "|arm ball - pitman ball| = length of the drag link, arm ball turned about the kingpin, kingpin carried along by the axle on the arc of its springs, links and track bar",
    Validity = "Both wheels rise together and the axle keeps its attitude: no wind-up under braking, no body lean, no give in bushes. A leaf spring carries the axle on an arc of "
        + "three quarters of its fixed half about a point at the fixed eye's height, good to a few per cent within 100 mm either way. A re-set drag link begins again from zero.",
    Sources =
    [
        "Geometry of link, kingpin and spring, derived (docs/derivations/steering-linkage.md)", "Limits of 0.5 deg in 25.4 mm (1 in) and 4 deg over the travel: common practice, no source",
    ],
    Checks =
    [
        new("closes", null, "Does the drag link follow the axle through its travel?"),
        new("gradient", Sense.AtMost, "Does it keep straight over small bumps?"),
        new("total", Sense.AtMost, "Does it keep straight over the whole travel?", "bumpTravel", "droopTravel"),
    ],
    NoTrends =
    [
        .. Points.Select(p => new NoTrend(p, "one of the points whose arcs part or agree: moves the answer either way")),
        new("pointsRideHeight", "sets where the arcs are entered"), new("rideHeight", "sets where the arcs are entered"), new("guideX", "best where the axle's arc is like the drag link's"),
        new("guideRise", "best where the axle's arc is like the drag link's"), new("caster", "tilts the kingpin, to little effect"), new("inclination", "tilts the kingpin, to little effect"),
        new("kingpinDistance", "sets the length of the steering arm together with its ball"),
        new("barLength", "best as long as a cross drag link"), new("barEndHeight", "best sloped as a cross drag link"), new("originalRideHeight", "sets the slope of the track bar"),
        new("bumpTravel", "the farther it goes the farther the curve is followed, which may turn back"), new("droopTravel", "the farther it goes the farther the curve is followed, which may turn back"),
        new("fullBumpTravel", "the farther it goes the farther the curve is followed, which may turn back"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["pitmanX"] = "-700 mm", ["pitmanY"] = "-450 mm", ["pitmanZ"] = "0 mm", ["armX"] = "150 mm", ["armY"] = "-450 mm", ["armZ"] = "-120 mm", ["kingpinDistance"] = "1300 mm",
                ["pointsRideHeight"] = "180 mm", ["rideHeight"] = "180 mm", ["bumpTravel"] = "80 mm", ["droopTravel"] = "80 mm", ["guideKind"] = "links", ["guideX"] = "-700 mm", ["guideRise"] = "100 mm",
                ["caster"] = "3 deg", ["inclination"] = "7 deg",
            },
            new Dictionary<string, double> { ["atBump"] = -0.200632, ["atDroop"] = -0.298689, ["total"] = 0.300320 }, 0.0005, "secant steps on the length of the link in plain Python (program beside the test)", Provenance.Independent),
    ],
    Cautions =
    [
        "Bump steer cannot be felt on a lift or in the yard: after any change of springs, arms or steering have the vehicle driven slowly over known bumps first, and aligned.",
        "Move the axle through its whole travel at both locks before it is driven: no joint may bind and nothing may touch. Work on stands, springs out, a second person at the wheel.",
    ],
})
{
    private static readonly string[] Points = ["pitmanX", "pitmanY", "pitmanZ", "armX", "armY", "armZ"];

    private const double Inch = 0.0254, Steep = 0.5, Wide = 4; // m; deg in an inch, deg: common practice, no source

    private const double Nothing = 1e-12; // rad: what the solver leaves where nothing has moved

    private const string Practice = "common practice, no source";

    public sealed record Inputs(
        [Input("pitman arm's ball behind the front axle's line", "mm", Measure = HowToMeasureSteering.PitmanEnd)] Length PitmanX,
        [Input("pitman arm's ball right of the center line", "mm", Measure = HowToMeasureSteering.PitmanEnd)] Length PitmanY,
        [Input("pitman arm's ball over the frame datum", "mm", Measure = HowToMeasureSteering.PitmanEnd)] Length PitmanZ,
        [Input("steering arm's ball behind the front axle's line", "mm", Measure = HowToMeasureSteering.ArmBall)] Length ArmX,
        [Input("steering arm's ball right of the center line", "mm", Measure = HowToMeasureSteering.ArmBall)] Length ArmY,
        [Input("steering arm's ball over the frame datum when it was measured", "mm", Measure = HowToMeasureSteering.ArmBall)] Length ArmZ,
        [Input("distance between the kingpins", "mm", MoreThan = 0, Low = 760, High = 2500, Measure = HowToMeasureSteering.KingpinDistance)] Length KingpinDistance,
        [Input("frame datum over axle center when the points were measured", "mm", Low = 50, High = 600, Measure = HowToMeasureSteering.PointsRideHeight)] Length PointsRideHeight,
        [Input("frame datum over axle center now", "mm", Low = 50, High = 600, Measure = HowToMeasureSteering.RideHeight)] Length RideHeight,
        [Input("travel from ride height until the bump stop touches", "mm", AtLeast = 0, High = 300, Measure = HowToMeasureSteering.BumpTravel)] Length? BumpTravel,
        [Input("travel from ride height until the bump stop is squeezed solid", "mm", AtLeast = 0, High = 300, Measure = HowToMeasureSteering.FullBumpTravel)] Length? FullBumpTravel,
        [Input("travel from ride height to full droop", "mm", AtLeast = 0, High = 300, Measure = HowToMeasureSteering.DroopTravel)] Length? DroopTravel,
        [Input("what guides the axle", OneOf = [LinkagePoints.Leaf, LinkagePoints.Links], Measure = HowToMeasureSteering.GuideKind)] string GuideKind,
        [Input("fixed end of spring or link behind the front axle's line", "mm", Low = -1500, High = 1500, Measure = HowToMeasureSteering.GuideX)] Length GuideX,
        [Input("fixed end over the top leaf at the axle, or over the link's axle end", "mm", Low = -300, High = 300, Measure = HowToMeasureSteering.GuideRise)] Length GuideRise,
        [Input("caster; 3 deg where it is not known", "deg", Low = -10, High = 15, Measure = HowToMeasureSteering.Caster)] Angle? Caster,
        [Input("kingpin inclination", "deg", Low = 0, High = 15, Default = 8, Measure = HowToMeasureSteering.Inclination)] Angle Inclination,
        [Input("track bar between its joints, seen from the front; 0 for none", "mm", AtLeast = 0, High = 2000, Measure = "tape it between its joints; 0 where leaf springs hold the axle sideways")]
        Length? BarLength,
        [Input("track bar's end on the frame over its end on the axle, at the ride height as built", "mm", Measure = "tape the heights of both ends and take the lift off")] Length? BarEndHeight,
        [Input("ride height as built", "mm", Low = 50, High = 600, Measure = "take it from the maker's handbook, or from a vehicle known to be unaltered")] Length? OriginalRideHeight,
        [Input("side on which the track bar ends on the frame", OneOf = ["left", "right"], Measure = "look")] string? BarFrameSide);

    public sealed record Result(
        [Output("road-wheel angle that the ride height has added since the points were measured, left positive", "deg")] Angle? OffCenter,
        [Output("steepest change in one inch of travel near ride height", "deg")] Angle? Gradient,
        [Output("steer at full bump, left positive; where the stop touches if its squash is not known", "deg")] Angle? AtBump,
        [Output("steer at full droop, left positive", "deg")] Angle? AtDroop,
        [Output("from the farthest left to the farthest right over the travel", "deg")] Angle? Total);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        var caster = x.Caster ?? LinkagePoints.UsualCaster;
        if (Math.Abs(caster.Degrees) >= 80 || Math.Abs(x.Inclination.Degrees) >= 80)
        {
            w.Caution("No kingpin leans so far: read caster and inclination again.");
            return null;
        }
        if (x.Caster is null) w.Caution("The caster is not known: 3 deg is assumed, which matters little here.");
        var linkage = Linkage.Of(LinkagePoints.Of(x.PitmanX, x.PitmanY, x.PitmanZ), LinkagePoints.Of(x.ArmX, x.ArmY, x.ArmZ), x.KingpinDistance.Meters, -x.PointsRideHeight.Meters,
            caster.Radians, x.Inclination.Radians);
        if (Guide(x, w) is not { } guide)
        {
            w.Answer("closes", Verdict.Fail, "The ends of the track bar stand farther over each other than it is long: measure the bar and its ends again.");
            return new(null, null, null, null, null);
        }
        var bump = new LinkageBump(linkage, guide);
        var ride = (x.PointsRideHeight - x.RideHeight).Meters; // the axle's rise over where it was measured, m
        w.Line("l", "drag link, ball to ball", $"|{linkage.PitmanBall} - {linkage.Knuckle.Ball}|", 1000 * linkage.Rod, "mm");
        w.Line("r", "steering arm, ball to its foot on the kingpin axis", $"|{linkage.Knuckle.Ball} - {linkage.Knuckle.Center}|", 1000 * linkage.Knuckle.Radius, "mm");
        if (bump.SteerAt(ride) is not { } center)
        {
            w.Answer("closes", Verdict.Fail, NotEvenStanding(bump.Walk(ride, ride, 1).Parting));
            return new(null, null, null, null, null);
        }
        var gradient = Gradient(bump, ride, w);
        var (atBump, atDroop, total) = Travel(x, bump, ride, center, w);
        return new(Of(Math.Abs(center) < Nothing ? 0 : center), Of(gradient), Of(atBump), Of(atDroop), Of(total));
    }

    /// <summary>Null where a track bar is too short for the heights of its ends.</summary>
    private static LinkageGuide? Guide(Inputs x, Worksheet w)
    {
        var guide = LinkagePoints.Guide(x.GuideKind, x.GuideX, x.GuideRise);
        if (x.BarLength is not { Meters: > 0 } bar) return guide;
        if (x is not { BarEndHeight: { } end, OriginalRideHeight: { } built, BarFrameSide: { } side })
        {
            w.Caution("There is a track bar, but not known is on which side it ends on the frame, how high, or the ride height as built: the axle is taken to rise without moving sideways.");
            return guide;
        }
        double high = (end + x.PointsRideHeight - built).Meters, square = (bar.Meters * bar.Meters) - (high * high); // m
        if (square <= 0) return null;
        w.Line("b", "track bar, frame end over axle end when the points were measured", $"{end.Millimeters} + {x.PointsRideHeight.Millimeters} - {built.Millimeters}", 1000 * high, "mm");
        return guide with { Across = (side == "left" ? 1 : -1) * Math.Sqrt(square), BarRise = -high };
    }

    /// <summary>Steepest change in an inch that ends, lies about or begins at ride height (rad); null where one of them cannot be reached.</summary>
    private static double? Gradient(LinkageBump bump, double ride, Worksheet w)
    {
        double? steepest = 0;
        foreach (var from in (double[])[-Inch, -Inch / 2, 0])
            steepest = bump.SteerAt(ride + from) is { } a && bump.SteerAt(ride + from + Inch) is { } b && steepest is { } so ? Math.Max(so, Math.Abs(b - a)) : null;
        if (steepest is not { } g) return null;
        var deg = TurnGeometry.Degrees(g);
        w.Line("g", "steer in one inch about ride height", $"steepest of three inches", deg, "deg");
        w.AtMost("gradient", deg, Steep, "deg", deg <= Steep ? $"Near ride height the wheels steer {deg:0.00} deg in 25.4 mm of travel; up to {Steep:0.0} is usual."
            : $"Near ride height the wheels steer {deg:0.00} deg in 25.4 mm of travel: it darts on bumps. {Advice(bump.Linkage)}",
            Practice, beyond: Verdict.Caution);
        return g;
    }

    private static (double? Bump, double? Droop, double? Total) Travel(Inputs x, LinkageBump bump, double ride, double center, Worksheet w)
    {
        var bumpTravel = x.FullBumpTravel ?? x.BumpTravel;
        double up = bumpTravel?.Meters ?? 0, down = x.DroopTravel?.Meters ?? 0; // m
        var (above, over) = bump.Walk(ride, ride + up, 40);
        var (below, under) = bump.Walk(ride, ride - down, 40);
        if ((over ?? under) is { } parting) w.Answer("closes", Verdict.Fail, Parted(parting, ride));
        else w.Answer("closes", x.FullBumpTravel is null ? Verdict.Caution : Verdict.Pass, $"The drag link follows the axle from {1000 * down:0} mm of droop to {1000 * up:0} mm of bump.{Squeeze(x)}");
        List<LinkageBump.Point> all = [.. Enumerable.Reverse(below.Skip(1)), .. above];
        if (w.Shown && all.Count > 1)
            w.Curve(new("steer with the steering wheel held", "axle over ride height", "mm", [.. all.Select(p => 1000 * (p.Rise - ride))], "steer, left positive", "deg",
                [.. all.Select(p => TurnGeometry.Degrees(p.Steer - center))]));
        double? atBump = over is null && bumpTravel is not null ? above[^1].Steer - center : null, atDroop = under is null && x.DroopTravel is not null ? below[^1].Steer - center : null;
        if (atBump is null || atDroop is null) return (atBump, atDroop, null);
        var total = all.Max(p => p.Steer) - all.Min(p => p.Steer);
        var deg = TurnGeometry.Degrees(total);
        w.Line("total", "farthest left to farthest right", $"{TurnGeometry.Degrees(atBump.Value)} at bump and {TurnGeometry.Degrees(atDroop.Value)} at droop", deg, "deg");
        var from = x.FullBumpTravel is null ? "From full droop until the stop touches" : "From full droop to full bump";
        w.AtMost("total", deg, Wide, "deg", (deg <= Wide ? $"{from} the wheels steer {deg:0.0} deg by themselves; up to {Wide:0} is usual."
            : $"{from} the wheels steer {deg:0.0} deg by themselves; more than {Wide:0} deg is felt as wandering on rough roads.") + Squeeze(x),
            Practice, watch: x.FullBumpTravel is null ? double.NegativeInfinity : null, beyond: Verdict.Caution);
        return (atBump, atDroop, total);
    }

    /// <summary>What is to be said where the axle is followed to the touching stop only.</summary>
    private static string Squeeze(Inputs x) => x.FullBumpTravel is not null ? "" : x.BumpTravel is null ? " How far it goes up is not known." : " How far the stop squeezes from there is not known.";

    private static string Advice(Linkage linkage)
    {
        var rod = linkage.Knuckle.Ball - linkage.PitmanBall;
        return Math.Abs(rod.Y) > Math.Abs(rod.X) ? "Lay the drag link flatter and longer; where there is a track bar, alongside it and as long."
            : "Bring the drag link's arc to the axle's: flatter, as long as the axle's own arm, its frame end near the fixed end of spring or link.";
    }

    private static string NotEvenStanding(LinkageBump.Parting? parting) => parting is { ByGuide: true }
        ? "Already at this ride height the axle is beyond the arc of its spring or link: measure its fixed end and the ride heights again."
        : parting is { Gap: not 0 } p ? $"Already at this ride height the drag link is {LinkagePoints.Short(p.Gap)}: measure {LinkagePoints.ArmBall}, {LinkagePoints.PitmanBall} and the ride heights again."
        : $"As measured, the drag link stands in line with the steering arm and cannot turn it: measure {LinkagePoints.ArmBall} and the kingpin again.";

    private static string Parted(LinkageBump.Parting p, double ride)
    {
        var where = p.Rise >= ride ? $"{1000 * (p.Rise - ride):0} mm over" : $"{1000 * (ride - p.Rise):0} mm under";
        return p.ByGuide ? $"At {where} ride height the axle is at the end of the arc of its spring or link: measure its fixed end and the travel again."
            : p.Gap == 0 ? $"At {where} ride height the drag link comes to a dead center on the steering arm and could turn the wheel either way: measure {LinkagePoints.ArmBall} and the kingpin again, or change the arm."
            : $"At {where} ride height {LinkagePoints.ArmBall} parts from the drag link, which is then {LinkagePoints.Short(p.Gap)}: it would bend or break. Measure the points and the travel; then limit "
            + "the travel or change arm or link.";
    }

    private static Angle? Of(double? rad) => rad is { } r ? Angle.FromRadians(r) : null;
}
