using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How tipping, leaning and moved loads are tied to the master sheet, in every loading condition.</summary>
internal static class StabilityBindings
{
    private static readonly string[] s_each = ["condition"];

    private static readonly (string, string)
        s_total = ("total", "mass.{condition}.total"), s_centerX = ("centerX", "mass.{condition}.center-x"), s_height = ("height", "mass.{condition}.center-height"),
        s_offset = ("offset", "mass.{condition}.center-y"), s_lean = ("shiftPerG", "vehicle.{condition}.shift-per-g"), s_wheelbase = ("wheelbase", "vehicle.wheelbase");

    private static readonly (string, string)[] s_tracks = [("frontTrack", "axle.front.track"), ("rearTrack", "axle.rear.track")];

    public static IReadOnlyList<Binding> All { get; } =
    [
        Bind("stability.static-factor", s_each, [.. s_tracks, s_height], [("factor", "stability.{condition}.static-factor")]),
        Bind("stability.rollover-risk", s_each, [("factor", "stability.{condition}.static-factor")]),
        Bind("stability.side-slope", s_each, [.. s_tracks, s_height, s_offset, s_lean], [("angle", "stability.{condition}.side-slope")]),
        Bind("stability.grade-tip", s_each, [s_total, s_centerX, s_height, s_wheelbase, ("grade", "duty.grade")],
            [("tipsFacingUp", "stability.{condition}.facing-up"), ("tipsFacingDown", "stability.{condition}.facing-down")]),
        Bind("stability.braking-transfer", s_each, [s_total, s_centerX, s_height, s_wheelbase, ("deceleration", "duty.braking")]),
        Bind("stability.cornering", s_each, [s_total, .. s_tracks, s_height, s_offset, s_lean, ("firstWheel", "vehicle.{condition}.wheel-lift"), ("lateral", "duty.lateral"), ("grip", "duty.side-grip")]),
        Bind("mass.added-load", s_each,
            [s_total, s_centerX, ("centerHeight", "mass.{condition}.center-height"), s_wheelbase, .. s_tracks, ("added", "duty.roof-load"),
             ("behindFrontAxle", "vehicle.roof.center"), ("addedHeight", "vehicle.roof.height")]),
    ];
}
