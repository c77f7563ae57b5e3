using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>How level the vehicle stands, and what a change of it does to headlamps and caster.</summary>
/// <remarks>
/// Formula:  rake = atan((rear - front) / L), positive nose down; change against the rake it was built with; caster changes by as much the other way
/// Valid:    heights of one straight frame datum at both axles; tires of one size front and rear when it was built
/// Source:   geometry, docs/derivations/springs.md
/// Example:  front 540, rear 480 mm, wheelbase 3200 mm -> 1.07 deg tail down
/// </remarks>
public sealed class Rake() : Calculation<Rake.Inputs, Rake.Result>(new()
{
    Id = "springs.rake",
    Version = 1,
    Title = "Level of the vehicle",
    Purpose = "Whether the load puts the tail down, and what that does: headlamps that dazzle, caster that changes the steering, joint angles that move.",
    Formula = "rake = atan((rear - front) / wheelbase), positive nose down; change = rake now - rake as built; caster changes by the opposite; lamp beam moves 25 ft x tan(change)",
    Validity = "Heights of one straight datum at both axles, level ground. The rake as built is taken from heights over the axles, with equal tires at both ends.",
    Sources = ["Geometry, derived (docs/derivations/springs.md)", "Half a degree: common practice, no source"],
    Checks = [new("level", Sense.AtMost, "Does it stand as level as it was built?", "originalFront", "originalRear")],
    Trends =
    [
        new("frontHeight", "rake", '-', 400, 700), new("rearHeight", "rake", '+', 400, 700), new("originalFront", "change", '+', 100, 300), new("originalRear", "change", '-', 100, 300),
    ],
    NoTrends = [new("wheelbase", "makes the same difference a smaller angle, whichever way it leans")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["frontHeight"] = "540 mm", ["rearHeight"] = "480 mm", ["wheelbase"] = "3200 mm", ["originalFront"] = "150 mm", ["originalRear"] = "170 mm",
            },
            new Dictionary<string, double> { ["rake"] = -1.0742, ["change"] = -1.4323, ["caster"] = 1.4323, ["beam"] = 190.5 }, 0.0003,
            "atan(60 / 3200) = 1.0742 deg, atan(20 / 3200) = 0.3581 deg, 7620 x tan 1.4323 deg; by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Aim the headlamps again, loaded as it will be driven at night, by the local rules; where they must be adjustable from the seat, make them so.",
        "More than half a degree of change moves caster and shaft angles as well: have both measured by a qualified person at the new height.",
    ],
})
{
    /// <summary>Distance at which a lamp's beam is looked at: 25 ft. Change worth acting on, rad. Both common practice, no source.</summary>
    private const double Wall = 7.62, Half = 0.5;

    public sealed record Inputs(
        [Input("frame datum over the ground at the front axle", "mm", MoreThan = 0, High = 1500, Measure = "tape from level ground to the frame datum at the axle line")] Length FrontHeight,
        [Input("frame datum over the ground at the rear axle", "mm", MoreThan = 0, High = 1500, Measure = "tape from level ground to the frame datum at the axle line")] Length RearHeight,
        [Input("wheelbase", "mm", MoreThan = 0, Low = 1200, High = 8000, Measure = "tape from hub center to hub center on both sides and take the mean")] Length Wheelbase,
        [Input("frame datum over the front axle center as it was built", "mm", Low = -300, High = 1000, Measure = "take it from the maker's handbook, or from an unaltered vehicle")]
        Length? OriginalFront,
        [Input("frame datum over the rear axle center as it was built", "mm", Low = -300, High = 1000, Measure = "take it from the maker's handbook, or from an unaltered vehicle")]
        Length? OriginalRear);

    public sealed record Result(
        [Output("rake of the frame, positive nose down", "deg")] Angle Rake,
        [Output("rear over front height", "mm")] Length Difference,
        [Output("change of the rake since it was built", "deg")] Angle? Change,
        [Output("change of caster by it", "deg")] Angle? Caster,
        [Output("how much higher a lamp's beam lands at 25 ft than when it was aimed as built", "mm")] Length? Beam);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double L = x.Wheelbase.Meters, difference = x.RearHeight.Meters - x.FrontHeight.Meters, rake = Math.Atan(difference / L); // m, m, rad
        w.Line("rake", "atan((rear - front) / L)", $"atan(({x.RearHeight.Millimeters} - {x.FrontHeight.Millimeters}) / {x.Wheelbase.Millimeters})", rake * 180 / Math.PI, "deg");
        if (x.OriginalFront is not { } front || x.OriginalRear is not { } rear) return new(Angle.FromRadians(rake), Length.FromMeters(difference), null, null, null);
        double change = rake - Math.Atan((rear.Meters - front.Meters) / L), degrees = change * 180 / Math.PI; // rad, deg
        var beam = -Wall * Math.Tan(change); // m
        w.Line("change", "rake - rake as built", $"{rake * 180 / Math.PI} - atan(({rear.Millimeters} - {front.Millimeters}) / {x.Wheelbase.Millimeters})", degrees, "deg");
        w.AtMost("level", Math.Abs(degrees), Half, "deg", Math.Abs(degrees) <= Half
            ? $"It stands as level as it was built, within {Math.Abs(degrees):0.0} deg."
            : $"It stands {Math.Abs(degrees):0.0} deg more {(change < 0 ? "tail" : "nose")} down than it was built: the headlamps aim {Math.Abs(1000 * beam):0} mm {(beam > 0 ? "higher" : "lower")} "
                + $"at 25 ft and caster is {Math.Abs(degrees):0.0} deg {(change < 0 ? "more" : "less")}.", Practice, beyond: Verdict.Caution);
        return new(Angle.FromRadians(rake), Length.FromMeters(difference), Angle.FromRadians(change), Angle.FromRadians(-change), Math.Abs(change) < Math.PI / 2 ? Length.FromMeters(beam) : null);
    }
}
