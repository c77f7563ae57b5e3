using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Lift;

/// <summary>How far a track bar moves its axle sideways when the ride height changes, and over bump and droop.</summary>
/// <remarks>
/// Formula:  shift = sqrt(R^2 - d0^2) - sqrt(R^2 - d^2), d = d0 + lift; toward the end on the frame where positive
/// Valid:    front or rear view, the axle moving straight up and down; exact for a bar on two joints
/// Source:   circle, docs/derivations/lift.md
/// Example:  bar 800 mm, frame end 50 mm over the axle end as built, lift 100 mm -> 12.6 mm toward the frame end
/// </remarks>
public sealed class TrackbarShift() : Calculation<TrackbarShift.Inputs, TrackbarShift.Result>(new()
{
    Id = "lift.trackbar-shift",
    Version = 1,
    Title = "Sideways shift by the track bar",
    Purpose = "A lift swings the track bar and pulls the axle to one side: how far it sits off the middle, and how it wanders over bumps.",
    Formula = "shift = sqrt(R^2 - d0^2) - sqrt(R^2 - d^2), d = d0 + lift",
    Validity = "Exact for a bar on two joints seen from the front, the axle moving straight up and down. A bar that also runs fore and aft counts with its length seen from the front.",
    Sources = ["Geometry of a circle, derived (docs/derivations/lift.md)", "1/4 in off the middle: common practice, no source"],
    Checks = [new("shift", Sense.AtMost, "Does the axle still sit in the middle?")],
    Trends = [new("rideHeights", "lift", '+', 100, 400), new("originalRideHeight", "lift", '-', 100, 300)],
    NoTrends =
    [
        new("length", "a longer bar shifts less, and 0 stands for none"), new("leafSpan", "only tells that there is a leaf spring"), new("endHeight", "shifts one way or the other"), new("bumpTravel", "moves an end of the curve"),
        new("droopTravel", "moves an end of the curve"), new("fullBumpTravel", "moves an end of the curve"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["length"] = "800 mm", ["endHeight"] = "50 mm", ["originalRideHeight"] = "150 mm", ["rideHeights"] = """{"empty":"250 mm"}""",
            },
            new Dictionary<string, double> { ["lift"] = 100, ["shift"] = 12.6243 }, 0.0001, "sqrt(640,000 - 2,500) - sqrt(640,000 - 22,500) = 798.4360 - 785.8117 by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "A track bar carries the side force of the axle: brackets for one are welded by somebody qualified, and drag link and bar must stay parallel, or the vehicle steers itself over bumps.",
    ],
})
{
    private const string HowLong = "tape between the joints; 0 where leaf springs hold the axle sideways";

    public sealed record Inputs(
        [Input("track bar between the middles of its joints, seen from the front; 0 for none", "mm", AtLeast = 0, High = 2000, Measure = HowLong)] Length? Length,
        [Input("leaf spring from eye to eye, where leaf springs hold the axle", "mm", MoreThan = 0, Measure = "tape along the main leaf's chord")] Length? LeafSpan,
        [Input("end on the frame over the end on the axle, at the ride height as built", "mm", Measure = "tape the heights of both ends over level ground, take the difference and the lift off")] Length? EndHeight,
        [Input("ride height as built", "mm", Measure = HowToMeasureLift.Original)] Length? OriginalRideHeight,
        [Input("ride heights in each condition", "mm", Measure = HowToMeasureLift.RideHeight)] Members<Length> RideHeights,
        [Input("travel until the bump stop touches, in each condition", "mm", Measure = HowToMeasureLift.Bump)] Members<Length>? BumpTravel,
        [Input("travel until the bump stop is squeezed solid, in each condition", "mm", Measure = HowToMeasureLift.FullBump)] Members<Length>? FullBumpTravel,
        [Input("travel to full droop in each condition", "mm", Measure = HowToMeasureLift.Droop)] Members<Length>? DroopTravel);

    public sealed record Result(
        [Output("lift of the highest condition", "mm")] Length? Lift,
        [Output("shift there against the vehicle as built, positive toward the end on the frame", "mm")] Length? Shift,
        [Output("how far the axle wanders sideways from full droop to full bump; to where the stop touches if its squash is not known", "mm")] Length? Wander);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        if (x.Length is not { Meters: > 0 } length)
        {
            var none = x.Length is not null || x.LeafSpan is not null;
            w.Line("h", "highest ride height", $"{x.RideHeights.Items.Max(m => m.Value.Meters)}", x.RideHeights.Items.Max(m => m.Value.Meters), "m");
            if (none) w.Answer("shift", Verdict.Pass, x.LeafSpan is null ? "No track bar." : "No track bar: leaf springs hold the axle sideways.");
            else w.Answer("shift", Verdict.Unknown, $"Not known: track bar or none ({HowLong}).");
            return new(null, null, null);
        }
        double R = length.Meters; // m
        w.Line("R", "track bar", $"{1000 * R} mm", R, "m");
        if (x.EndHeight is not { } end || x.OriginalRideHeight is not { } built)
        {
            w.Answer("shift", Verdict.Unknown, "Not known: the heights of the bar's ends, or the ride height as built, are missing (tape the heights of both ends over level ground).");
            return new(null, null, null);
        }
        var heights = x.RideHeights;
        double d0 = end.Meters, h0 = built.Meters, h = heights.Items.MaxBy(m => Math.Abs((m.Value - built).Meters)).Value.Meters; // m
        var travel = TravelHeights.Of(heights, x.FullBumpTravel ?? x.BumpTravel, x.DroopTravel);
        double? Shift(double at) => Arc(R, d0 + at - h0) is { } now && Arc(R, d0) is { } then ? then - now : null;
        if (Shift(h) is not { } shift)
        {
            w.Answer("shift", Verdict.Fail, $"A bar of {1000 * R:0} mm does not reach over {1000 * Math.Max(Math.Abs(d0), Math.Abs(d0 + h - h0)):0} mm of height: measure bar and ends again.");
            return new(Length.FromMeters(h - h0), null, null);
        }
        w.Line("d", "d0 + lift", $"{d0} + {h - h0}", d0 + h - h0, "m");
        w.Line("shift", "sqrt(R^2 - d0^2) - sqrt(R^2 - d^2)", $"sqrt({R}^2 - {d0}^2) - sqrt({R}^2 - {d0 + h - h0}^2)", shift, "m");
        if (x.BumpTravel is not null && x.FullBumpTravel is null) w.Caution("How far the bump stop squeezes is not known: the bar is followed to where the stop touches, and the axle goes farther.");
        List<(double Height, double? Shift)> all = [.. travel.Steps(40).Select(at => (at, Shift(at)))];
        var reaches = all.TrueForAll(p => p.Shift is not null);
        if (!reaches) w.Caution("Toward the end of its travel the bar no longer reaches: the axle would bind there.");
        if (reaches && travel.Highest > travel.Lowest)
            w.Curve(new("track bar", "ride height", "in", [.. all.Select(p => p.Height / 0.0254)], "shift toward the end on the frame", "in", [.. all.Select(p => p.Shift!.Value / 0.0254)]));
        var off = 1000 * Math.Abs(shift); // mm
        w.AtMost("shift", off, 6.35, "mm", $"With {1000 * (h - h0):0} mm of lift the axle sits {off:0.0} mm to the side {(shift >= 0 ? "of" : "away from")} the bar's end on the frame."
            + (off > 6.35 ? " An adjustable bar, or a bracket that brings it level again." : ""), "1/4 in: common practice, no source", beyond: Verdict.Caution);
        return new(Length.FromMeters(h - h0), Length.FromMeters(shift), reaches ? Length.FromMeters(Wandering(all, d0 + travel.Lowest - h0, d0 + travel.Highest - h0, Arc(R, d0)!.Value - R)) : null);
    }

    /// <summary>Most less least of the shift; where the bar comes level on the way, that is its turning point.</summary>
    private static double Wandering(List<(double Height, double? Shift)> all, double lowest, double highest, double turn) =>
        all.Max(p => p.Shift!.Value) - (lowest <= 0 && highest >= 0 ? turn : all.Min(p => p.Shift!.Value));

    /// <summary>Width of the bar seen from above; null where it cannot stand so steep.</summary>
    private static double? Arc(double R, double d) => Math.Abs(d) <= R ? Math.Sqrt((R - d) * (R + d)) : null;
}
