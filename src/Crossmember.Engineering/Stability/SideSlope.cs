using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Stability;

/// <summary>Side slope at which the vehicle would tip, rigid and with the body leaning on its springs.</summary>
/// <remarks>
/// Formula:  rigid: tan th = (T/2 -+ y) / h; leaning: (T/2 -+ y - s sin th) cos th = h sin th, s the way the weight moves downhill as the body leans under 1 g
/// Valid:    standing across an even slope, axles parallel to it; lean in proportion to the pull; tires taken as rigid
/// Source:   statics, docs/derivations/tip-angles.md
/// Example:  T 1.47 m, h 0.72 m -> 45.59 deg; 20 mm to the left: 44.80 deg with the left side downhill, 46.36 deg with the right
/// </remarks>
public sealed class SideSlope() : Calculation<SideSlope.Inputs, SideSlope.Result>(new()
{
    Id = "stability.side-slope",
    Version = 1,
    Title = "Tipping on a side slope",
    Purpose = "The slope at which it would tip over sideways standing still, on a rigid frame and with the springs giving: how much what is on the roof takes away.",
    Formula = "tan th = (T / 2 -+ y) / h; with lean: (T / 2 -+ y - s sin th) cos th = h sin th",
    Validity = "Standing, even slope, tires on the ground and taken as rigid, lean in proportion to the pull sideways. The mean track is used.",
    Sources = ["Statics on a slope, derived"],
    Checks = [new("angle", Sense.AtLeast, "Is the tip angle that of a vehicle fit for side slopes?")],
    Trends =
    [
        new("frontTrack", "angle", '+', 1.2, 2), new("rearTrack", "angle", '+', 1.2, 2), new("height", "angle", '-', 0.5, 1.2), new("offset", "leftDown", '+', -0.1, 0.1), new("offset", "rightDown", '-', -0.1, 0.1),
        new("shiftPerG", "angle", '-', 0, 0.2),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["frontTrack"] = "1.47 m", ["rearTrack"] = "1.47 m", ["height"] = "0.72 m", ["offset"] = "-20 mm" },
            new Dictionary<string, double> { ["leftDown"] = 44.80, ["rightDown"] = 46.36 }, 0.0002, "atan(0.715 / 0.72) and atan(0.755 / 0.72), by hand to 0.01 deg", Provenance.Derived),
        new(new Dictionary<string, string> { ["frontTrack"] = "1.47 m", ["rearTrack"] = "1.47 m", ["height"] = "0.72 m" },
            new Dictionary<string, double> { ["angle"] = 45.59 }, 0.0002, "atan(0.735 / 0.72), by hand to 0.01 deg", Provenance.Derived),
    ],
    Cautions = [HowToMeasureStability.UpperBound, HowToMeasureStability.NotForPeople],
})
{
    /// <summary>Tip angle below which a four-wheel drive is told top-heavy, deg: what a static stability factor of 1.04 leaves once the body leans. Common practice, no source.</summary>
    private const double TopHeavy = 40;

    public sealed record Inputs(
        [Input("track of the front axle", "m", MoreThan = 0, Low = 0.8, High = 2.6, Measure = HowToMeasureStability.Track)] Length FrontTrack,
        [Input("track of the rear axle", "m", MoreThan = 0, Low = 0.8, High = 2.6, Measure = HowToMeasureStability.Track)] Length RearTrack,
        [Input("height of the center of gravity over the ground", "m", MoreThan = 0, Low = 0.3, High = 2, Measure = HowToMeasureStability.Height)] Length Height,
        [Input("center of gravity to the right of the middle; negative to the left", "m", Low = -0.2, High = 0.2, Default = 0, Measure = HowToMeasureStability.Offset)] Length Offset,
        [Input("how far the weight moves outward as the body leans under 1 g sideways", "m", AtLeast = 0, High = 0.3, Measure = HowToMeasureStability.Shift)] Length? ShiftPerG);

    public sealed record Result(
        [Output("least tip angle to either side, with lean where it is known", "deg")] Angle? Angle,
        [Output("tip angle with the left side downhill", "deg")] Angle? LeftDown,
        [Output("tip angle with the right side downhill", "deg")] Angle? RightDown,
        [Output("least tip angle as if on a rigid frame", "deg")] Angle? Rigid);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double T = (x.FrontTrack.Meters + x.RearTrack.Meters) / 2, h = x.Height.Meters, y = x.Offset.Meters, s = x.ShiftPerG?.Meters ?? 0; // m, m per g
        if (Math.Abs(y) >= T / 2)
        {
            w.Answer("angle", Verdict.Fail, $"By these figures the center of gravity lies {1000 * Math.Abs(y):0} mm off the middle, outside the wheels: check the side readings and the places of the parts.");
            return new(null, null, null, null);
        }
        double left = Tips((T / 2) + y, h, s), right = Tips((T / 2) - y, h, s), rigid = Math.Atan(((T / 2) - Math.Abs(y)) / h), least = Math.Min(left, right);
        w.Line("th rigid", "atan((T / 2 - |y|) / h)", $"atan(({T} / 2 - {Math.Abs(y)}) / {h})", Degrees(rigid), "deg");
        w.Line("th left down", "(T / 2 + y - s sin th) cos th = h sin th", $"({(T / 2) + y} - {s} sin th) cos th = {h} sin th", Degrees(left), "deg");
        w.Line("th right down", "(T / 2 - y - s sin th) cos th = h sin th", $"({(T / 2) - y} - {s} sin th) cos th = {h} sin th", Degrees(right), "deg");
        if (x.ShiftPerG is null) w.Caution("The lean of the body is not known: this is the angle of a rigid vehicle, several degrees too good.");
        var told = $"It would tip at {Degrees(least):0.0} deg standing still ({Degrees(rigid):0.0} deg if nothing leaned), the {(left <= right ? "left" : "right")} side downhill. Never a safe slope: 5 to 15 deg less in motion.";
        // As if rigid it is several degrees too good: that may warn, but never reassure.
        if (x.ShiftPerG is null) w.Answer("angle", Verdict.Caution, $"{told} The lean of the body is not known.", Degrees(least), "deg", "common practice, no source");
        else w.AtLeast("angle", Degrees(least), TopHeavy, "deg", told, "common practice, no source", beyond: Verdict.Caution);
        return new(Told(least), Told(left), Told(right), Told(rigid));
    }

    /// <summary>Slope at which the line of gravity passes the lower wheels, rad.</summary>
    /// <param name="arm">Sideways from the center of gravity to the lower wheels, m.</param>
    /// <param name="h">m.</param>
    /// <param name="s">Way of the weight under 1 g, m.</param>
    private static double Tips(double arm, double h, double s)
    {
        // What holds it up falls and what tips it grows with the slope: one root, found by halving.
        double low = 0, high = Math.Atan(arm / h);
        for (var i = 0; i < 60; i++)
        {
            var th = (low + high) / 2;
            if ((arm - (s * Math.Sin(th))) * Math.Cos(th) > h * Math.Sin(th)) low = th;
            else high = th;
        }
        return (low + high) / 2;
    }

    private static double Degrees(double rad) => rad * 180 / Math.PI;

    private static Angle Told(double rad) => UnitsNet.Angle.FromRadians(rad);
}
