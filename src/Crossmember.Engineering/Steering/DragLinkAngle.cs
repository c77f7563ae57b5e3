using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>How steeply the drag link stands at ride height.</summary>
/// <remarks>
/// Formula:  sin a = (pitman ball - arm ball) / length, heights; the arm ball goes with the axle
/// Valid:    straight ahead, weight on the wheels; the link keeps its length
/// Source:   geometry, docs/derivations/steering-linkage.md; limit of 10 deg: common practice, no source
/// Example:  32 in link, 4 in higher at the box -> 7.2 deg
/// </remarks>
public sealed class DragLinkAngle() : Calculation<DragLinkAngle.Inputs, DragLinkAngle.Result>(new()
{
    Id = "steering.drag-link-angle",
    Version = 1,
    Title = "Drag link angle",
    Purpose = "What a lift does to the drag link: the steeper it stands, the more every bump steers and the less of the pitman arm's way reaches the wheels.",
    Formula = "sin a = (height of the pitman ball - height of the arm ball) / length; the arm ball falls with the axle by what the ride height grew",
    Validity = "Straight ahead with the weight on the wheels. A change of ride height moves the arm's ball straight down; the link keeps the length it was measured with.",
    Sources = ["Geometry, derived (docs/derivations/steering-linkage.md)", "Limit of 10 deg at ride height: common practice, no source"],
    Checks = [new("angle", Sense.AtMost, "Does the drag link lie flat enough at ride height?")],
    Trends = [new("rideHeights", "angle", '+', 200, 400), new("pointsRideHeight", "angle", '-', 100, 190)],
    NoTrends =
    [
        new("pitmanX", "as the ball at the arm, taken together with it"), new("pitmanY", "as the ball at the arm, taken together with it"), new("armX", "lengthens or shortens the link"),
        new("armY", "lengthens or shortens the link"), new("pitmanZ", "raises the end and lengthens the link"), new("armZ", "lowers the angle until the link lies level, then raises it"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["pitmanX"] = "-20 in", ["pitmanY"] = "-16 in", ["pitmanZ"] = "0 in", ["armX"] = "12 in", ["armY"] = "-16 in", ["armZ"] = "-4 in", ["pointsRideHeight"] = "7 in",
                ["rideHeights"] = """{"empty":"9 in","touring":"8.5 in"}""",
            },
            new Dictionary<string, double> { ["angle"] = 10.7225, ["length"] = 32.249 }, 0.0002, "sqrt(32^2 + 4^2) = 32.249 in; asin(6 / 32.249) = 10.7225 deg, by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "After a lift correct the angle with a dropped pitman arm or a raised steering arm made for it, never by bending, heating or welding a steering part; have it passed by a qualified person.",
        "Turn lock to lock at full droop and full bump: no joint of the drag link may bind, no end may come near spring, frame or tire.",
    ],
})
{
    private const double Flat = 10; // deg, common practice, no source

    public sealed record Inputs(
        [Input("pitman arm's ball behind the front axle's line", "mm", Measure = HowToMeasureSteering.PitmanEnd)] Length PitmanX,
        [Input("pitman arm's ball right of the center line", "mm", Measure = HowToMeasureSteering.PitmanEnd)] Length PitmanY,
        [Input("pitman arm's ball over the frame datum", "mm", Measure = HowToMeasureSteering.PitmanEnd)] Length PitmanZ,
        [Input("steering arm's ball behind the front axle's line", "mm", Measure = HowToMeasureSteering.ArmBall)] Length ArmX,
        [Input("steering arm's ball right of the center line", "mm", Measure = HowToMeasureSteering.ArmBall)] Length ArmY,
        [Input("steering arm's ball over the frame datum when it was measured", "mm", Measure = HowToMeasureSteering.ArmBall)] Length ArmZ,
        [Input("frame datum over axle center when it was measured", "mm", Low = 50, High = 600, Measure = HowToMeasureSteering.PointsRideHeight)] Length PointsRideHeight,
        [Input("frame datum over axle center in each condition", "mm", Low = 50, High = 600, Measure = HowToMeasureSteering.RideHeight)] Members<Length> RideHeights);

    public sealed record Result(
        [Output("steepest angle of the drag link to the level, of all conditions", "deg")] Angle? Angle,
        [Output("length of the drag link, ball to ball", "in")] Length Length);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        Point3 pitman = LinkagePoints.Of(x.PitmanX, x.PitmanY, x.PitmanZ), arm = LinkagePoints.Of(x.ArmX, x.ArmY, x.ArmZ);
        var length = (pitman - arm).Length; // m
        w.Line("l", "ball to ball", $"|{pitman} - {arm}|", 1000 * length, "mm");
        var (condition, high) = (x.RideHeights.Items[0].Name, 0.0); // m
        foreach (var (name, height) in x.RideHeights.Items)
        {
            var h = pitman.Z - arm.Z + (height - x.PointsRideHeight).Meters;
            w.Line($"h {name}", "height of pitman ball over arm ball", $"{pitman.Z} - {arm.Z} + {height.Meters} - {x.PointsRideHeight.Meters}", 1000 * h, "mm");
            if (Math.Abs(h) > Math.Abs(high)) (condition, high) = (name, h);
        }
        if (length == 0 || Math.Abs(high) >= length)
        {
            w.Answer("angle", Verdict.Fail, $"The balls would stand {1000 * Math.Abs(high):0} mm over each other on a drag link of {1000 * length:0} mm: measure both balls and the ride heights again.");
            return new(null, Length.FromMeters(length));
        }
        var a = TurnGeometry.Degrees(Math.Asin(Math.Abs(high) / length)); // deg
        w.Line("a", "asin(|h| / l)", $"asin({Math.Abs(high)} / {length})", a, "deg");
        w.AtMost("angle", a, Flat, "deg", a <= Flat ? $"At ride height ({condition}) the drag link stands at {a:0.#} deg; up to {Flat:0} deg is usual."
            : $"At ride height ({condition}) the drag link stands at {a:0.#} deg; more than {Flat:0} deg steers on bumps and eats lock: a dropped pitman arm or a raised steering arm is needed.",
            "common practice, no source", beyond: Verdict.Caution);
        return new(UnitsNet.Angle.FromDegrees(a), Length.FromMeters(length));
    }
}
