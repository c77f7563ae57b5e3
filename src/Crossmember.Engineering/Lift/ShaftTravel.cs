using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Lift;

/// <summary>How a propeller shaft lengthens and shortens between bump stop and droop, and whether its slip joint and joints go along.</summary>
/// <remarks>
/// Formula:  x(h) = x0 +- (sqrt(R^2 - (zc + h)^2) - sqrt(R^2 - (zc + h0)^2)); l(h) = sqrt(x(h)^2 + (zt + h - zp)^2)
/// Valid:    side view, axle on one arc, pinion keeping its angle; leaf springs by the three-quarter rule
/// Source:   docs/derivations/lift.md; three-quarter rule of leaf springs: SAE spring design manual, from memory
/// Example:  run 1000 mm, drop 160 mm at 200 mm, arc 450 mm with its middle 150 mm under the datum toward the case: 80 mm of bump and 100 mm of droop -> 7.7 mm in, 0.9 mm out
/// </remarks>
public sealed class ShaftTravel() : Calculation<ShaftTravel.Inputs, ShaftTravel.Result>(new()
{
    Id = "lift.shaft-travel",
    Version = 1,
    Title = "Slip of a propeller shaft over travel",
    Purpose = "Whether the slip joint bottoms on a bump, comes apart in full droop, or a joint binds there: what a shaft measured on the level garage floor does not show.",
    Formula = "l(h) = sqrt(x(h)^2 + (zt + h - zp)^2), x(h) from the arc of the axle; slip in = l0 - shortest; splines left = engaged - (longest - l0)",
    Validity = "Side view, the shaft straight seen from above, the axle on one arc and the pinion keeping its angle. A leaf spring's axle goes nearly on an arc of three quarters of its half toward the fixed eye. "
        + "One wheel up and the other down, and wind-up under power, ask for more. Full bump is the gap to the stop and what the stop squeezes; where that is not known, the shaft is followed to "
        + "where the stop touches, and what is decided there passes nothing.",
    Sources =
    [
        "Geometry, derived (docs/derivations/lift.md)", "Three-quarter rule of leaf springs: SAE spring design manual, from memory",
        "Half an inch left when bottomed, a spline diameter engaged at droop: common practice, no source",
    ],
    Checks =
    [
        new("bottom", Sense.AtMost, "Does the slip joint have room to go in?", "slipIn"),
        new("apart", Sense.AtLeast, "Do the splines stay in at full droop?", "engaged", "splineDiameter"),
        new("joint", Sense.AtMost, "Do the joints bend as far as droop asks?", "jointLimit", "outputSlope", "pinionAngle"),
    ],
    Trends = [new("engaged", "splinesLeft", '+', 50, 200), new("droopTravel", "steepest", '+', 60, 200)],
    NoTrends =
    [
        new("slipIn", "only compared with the result"), new("splineDiameter", "only compared with the result"), new("jointLimit", "only compared with the result"),
        new("rideHeights", "move the whole travel along the arc"), new("bumpTravel", "shortens or lengthens by the arc"), new("fullBumpTravel", "takes the place of the travel until the stop touches"), new("run", "turns the arc against the shaft"),
        new("tapedHeight", "moves the whole travel along the arc"), new("outputHeight", "turns the shaft"), new("pinionHeight", "turns the shaft"), new("arcRadius", "turns the arc against the shaft"),
        new("arcHeight", "turns the arc against the shaft"), new("outputSlope", "opens or closes its joint"), new("pinionAngle", "opens or closes its joint"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["run"] = "1000 mm", ["tapedHeight"] = "200 mm", ["outputHeight"] = "20 mm", ["pinionHeight"] = "60 mm", ["arcRadius"] = "450 mm", ["arcHeight"] = "-150 mm",
                ["arcSide"] = "toward the case", ["rideHeights"] = """{"empty":"200 mm"}""", ["bumpTravel"] = """{"empty":"80 mm"}""", ["droopTravel"] = """{"empty":"100 mm"}""",
                ["engaged"] = "90 mm", ["slipIn"] = "40 mm", ["splineDiameter"] = "40 mm",
            },
            new Dictionary<string, double> { ["lengthAtRide"] = 1012.7191, ["goesIn"] = 7.7446, ["goesOut"] = 0.9056, ["steepest"] = 14.9015, ["splinesLeft"] = 89.0944 }, 0.0001,
            "Plain Python 3: the arm turned until the axle lies at each height, then coordinates (program beside the test)", Provenance.Independent),
    ],
    Cautions =
    [
        "A shaft that bottoms breaks the transfer case, one that comes apart falls and pole-vaults the vehicle: cycle the axle by hand through its whole travel, both wheels and one at a time, "
            + "springs out, before the first drive.",
        "Shafts are made, shortened and balanced by a driveline shop.",
    ],
})
{
    private const double Spare = 12.7; // mm

    private const string Practice = "common practice, no source";

    public sealed record Inputs(
        [Input("level distance between both joints", "mm", MoreThan = 0, Low = 150, High = 3000, Measure = HowToMeasureLift.Run)] Length Run,
        [Input("ride height at which that was taped", "mm", Measure = HowToMeasureLift.MeasuredHeight)] Length TapedHeight,
        [Input("joint at the transfer case over the frame datum", "mm", Measure = HowToMeasureLift.OutputHeight)] Length OutputHeight,
        [Input("joint at the pinion over the axle center", "mm", Measure = HowToMeasureLift.PinionHeight)] Length PinionHeight,
        [Input("radius of the axle's arc", "mm", MoreThan = 0, Low = 150, High = 2500, Measure = "three quarters of the leaf spring from its fixed eye to the center bolt; of a link its length")] Length ArcRadius,
        [Input("middle of that arc over the frame datum", "mm", Measure = "tape the height of the fixed eye or of the link's pivot against the frame datum; negative beneath it")] Length ArcHeight,
        [Input("side of the axle with the fixed eye or pivot", OneOf = ["toward the case", "away from the case"])] string ArcSide,
        [Input("ride heights in each condition", "mm", Measure = HowToMeasureLift.RideHeight)] Members<Length> RideHeights,
        [Input("travel until the bump stop touches, in each condition", "mm", Measure = HowToMeasureLift.Bump)] Members<Length> BumpTravel,
        [Input("travel until the bump stop is squeezed solid, in each condition", "mm", Measure = HowToMeasureLift.FullBump)] Members<Length>? FullBumpTravel,
        [Input("travel to full droop in each condition", "mm", Measure = HowToMeasureLift.Droop)] Members<Length> DroopTravel,
        [Input("how far the slip joint can still go in at the taped height", "mm", AtLeast = 0, Measure = "mark the shaft, push it in as far as it goes with one end off, tape the way")] Length? SlipIn,
        [Input("splines engaged at the taped height", "mm", AtLeast = 0, Measure = "mark the shaft, pull it apart and tape how far it was in")] Length? Engaged,
        [Input("diameter of the splines", "mm", MoreThan = 0, Measure = "caliper over the splines")] Length? SplineDiameter,
        [Input("most that a joint bends", "deg", MoreThan = 0, High = 60, Measure = "bend it on the bench until it touches; a plain joint does 15 to 25 deg")] Angle? JointLimit,
        [Input("slope of the transfer case output, positive down toward the axle", "deg", AtLeast = -30, High = 30, Measure = HowToMeasureLift.OutputSlope)] Angle? OutputSlope,
        [Input("angle of the pinion, positive nose up", "deg", AtLeast = -30, High = 45, Measure = HowToMeasureLift.PinionAngle)] Angle? PinionAngle);

    public sealed record Result(
        [Output("shaft from cross to cross at the taped height", "mm")] Length? LengthAtRide,
        [Output("slip joint goes in by", "mm")] Length? GoesIn,
        [Output("slip joint goes out by", "mm")] Length? GoesOut,
        [Output("splines left in at their least", "mm")] Length? SplinesLeft,
        [Output("steepest slope of the shaft", "deg")] Angle? Steepest);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        var arc = new AxleArc(x.Run.Meters, x.TapedHeight.Meters, (x.OutputHeight - x.PinionHeight).Meters, x.ArcRadius.Meters, x.ArcHeight.Meters, x.ArcSide == "toward the case" ? 1 : -1);
        var travel = TravelHeights.Of(x.RideHeights, x.FullBumpTravel ?? x.BumpTravel, x.DroopTravel);
        List<(double Height, double? Length, double? Slope)> all = [.. travel.Steps(200).Select(h => (h, arc.Length(h), arc.Slope(h)))];
        if (arc.Length(arc.Taped) is not { } atRide || all.Exists(p => p.Length is null))
        {
            w.Caution("The axle cannot swing that far on an arc of this radius: measure its radius, its middle and the travels again.");
            return null;
        }
        double shortest = all.Min(p => p.Length!.Value), longest = all.Max(p => p.Length!.Value); // m
        double goesIn = 1000 * Math.Max(0, atRide - shortest), goesOut = 1000 * Math.Max(0, longest - atRide); // mm
        w.Line("l0", "sqrt(x0^2 + drop^2)", $"sqrt({arc.Run}^2 + {arc.Drop(arc.Taped)}^2)", atRide, "m");
        foreach (var (name, h) in new[] { ("bump", travel.Lowest), ("droop", travel.Highest) })
            w.Line($"l at {name}", "sqrt(x(h)^2 + drop^2)", $"sqrt({arc.RunAt(h)!.Value}^2 + {arc.Drop(h)}^2)", arc.Length(h)!.Value, "m");
        w.Line("goes in", "l0 - shortest", $"{atRide} - {shortest}", goesIn, "mm");
        w.Line("goes out", "longest - l0", $"{longest} - {atRide}", goesOut, "mm");
        if (travel.Highest > travel.Lowest)
            w.Curve(new("propeller shaft", "ride height", "in", [.. all.Where((_, i) => i % 5 == 0).Select(p => p.Height / 0.0254)], "cross to cross", "in",
                [.. all.Where((_, i) => i % 5 == 0).Select(p => p.Length!.Value / 0.0254)]));
        double? left = x.Engaged?.Millimeters - goesOut; // mm
        if (x.SlipIn is { } room)
            w.AtMost("bottom", goesIn, room.Millimeters, "mm", $"The slip joint goes in by {goesIn:0} mm and can go in by {room.Millimeters:0} mm.{Squeeze(x, true)}", "half an inch spare: " + Practice,
                watch: x.FullBumpTravel is null ? double.NegativeInfinity : room.Millimeters - Spare);
        var atBump = x.FullBumpTravel is null && all[0].Length >= longest; // there it would still lengthen
        if (left is { } splines && x.SplineDiameter is { } d)
            w.AtLeast("apart", splines, d.Millimeters, "mm", splines <= 0 ? $"The shaft comes apart: it goes out by {goesOut:0} mm and is in by {x.Engaged!.Value.Millimeters:0} mm."
                : $"At its longest {splines:0} mm of splines are left in; their diameter, {d.Millimeters:0} mm, is the least wanted.{Squeeze(x, atBump)}", splines <= 0 ? "geometry of the measured shaft" : Practice,
                watch: atBump ? double.PositiveInfinity : null, beyond: splines <= 0 ? Verdict.Fail : Verdict.Caution);
        JudgeJoints(w, x, [.. all.Select(p => p.Slope!.Value)]);
        return new(Length.FromMeters(atRide), Length.FromMillimeters(goesIn), Length.FromMillimeters(goesOut), left is { } s ? Length.FromMillimeters(s) : null,
            Angle.FromRadians(all.Max(p => p.Slope!.Value)));
    }

    private static void JudgeJoints(Worksheet w, Inputs x, IReadOnlyList<double> slopes)
    {
        if (x.JointLimit is not { } limit || x.OutputSlope is not { } o || x.PinionAngle is not { } p) return;
        double Bend(double slope) => Math.Max(Math.Abs((slope * 180 / Math.PI) - o.Degrees), Math.Abs((slope * 180 / Math.PI) - p.Degrees)); // deg
        var most = slopes.Max(Bend);
        var atBump = x.FullBumpTravel is null && Bend(slopes[0]) >= most;
        w.AtMost("joint", most, limit.Degrees, "deg", $"Over the travel a joint bends up to {most:0.0} deg; it can do {limit.Degrees:0.#} deg"
            + (most > limit.Degrees ? ": it binds and breaks. Limit the droop, or fit a joint that bends farther." : ".") + Squeeze(x, atBump),
            "two degrees spare: " + Practice, watch: atBump ? double.NegativeInfinity : limit.Degrees - 2);
    }

    private static string Squeeze(Inputs x, bool decidedAtBump) =>
        x.FullBumpTravel is null && decidedAtBump ? " That is when the bump stop touches; how far it squeezes from there is not known." : "";
}
