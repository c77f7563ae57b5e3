using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>What the two joint angles of a propeller shaft and the set of its yokes leave of uneven running.</summary>
/// <remarks>
/// Formula:  be^4 = b1^4 + b2^4 - 2 b1^2 b2^2 cos 2g; in phase be = sqrt|b1^2 - b2^2|, 90 deg out sqrt(b1^2 + b2^2); fluctuation sin be tan be
/// Valid:    small angles, both in one plane (seen from above the shaft runs straight); a constant velocity joint counts as 0
/// Source:   docs/derivations/cardan-joint.md; ends within 3 deg, yokes in phase: US Army TM 5-4210-230-14 and P-1; 3 deg: common practice, no source
/// Example:  7 and 5 deg in phase -> 4.90 deg, 0.73 %
/// </remarks>
public sealed class JointAngles() : Calculation<JointAngles.Inputs, JointAngles.Result>(new()
{
    Id = "driveline.joint-angles",
    Version = 1,
    Title = "Joint angles of a propeller shaft",
    Purpose = "Whether the two joints of a shaft even each other out at ride height, or shake the vehicle: after a lift, a transfer case drop, or new "
        + "spring perches.",
    Formula = "equivalent angle be: be^4 = b1^4 + b2^4 - 2 b1^2 b2^2 cos 2g, g between the shaft's own yokes; in phase sqrt|b1^2 - b2^2|; "
        + "a quarter turn out sqrt(b1^2 + b2^2)",
    Validity = "One Cardan joint at each end, both angles in one plane: seen from above the shaft runs straight. A double Cardan (constant velocity) "
        + "joint counts as 0 deg, "
        + "so the other end must then be nearly straight. For angles under about 15 deg; measured at ride height with the weight on the wheels. "
        + "Under power the pinion of a leaf-sprung axle climbs: set it a little low (1 to 2 deg, common practice, no source).",
    Sources =
    [
        "US Army TM 5-4210-230-14 and P-1, propeller shaft: working angles within 3 deg of each other, yokes in phase, parallel within 1 deg",
        "Geometry of the Cardan joint, derived (docs/derivations/cardan-joint.md)", "Equivalent angle of at most 3 deg: common practice, no source",
    ],
    Checks =
    [
        new("ends", Sense.AtMost, "Are the two working angles near enough alike?"),
        new("equivalent", Sense.AtMost, "Do the two joints even each other out?", "yokeOffset"),
        new("phase", Sense.AtMost, "Are the yokes of the shaft in phase?", "yokeOffset"),
    ],
    Trends = [new("transferAngle", "fluctuation", '+', 6, 14), new("axleAngle", "fluctuation", '-', 0.5, 4), new("yokeOffset", "equivalentAngle", '+', 1, 89)],
    Examples =
    [
        new(new Dictionary<string, string> { ["transferAngle"] = "7 deg", ["axleAngle"] = "5 deg", ["yokeOffset"] = "0 deg" },
            new Dictionary<string, double> { ["endsApart"] = 2, ["equivalentAngle"] = 4.899, ["fluctuation"] = 0.7320 }, 0.0001,
            "sqrt(49 - 25) = 4.899 deg, sin x tan of it, by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["transferAngle"] = "4 deg", ["axleAngle"] = "3 deg", ["yokeOffset"] = "90 deg" },
            new Dictionary<string, double> { ["endsApart"] = 1, ["equivalentAngle"] = 5 }, 1e-9, "sqrt(16 + 9) = 5 deg", Provenance.Derived),
    ],
    Cautions =
    [
        "Measure with the weight on the wheels: a shaft measured or cut with the axle hanging on stands is wrong by inches and degrees.",
        "On a lifted vehicle take the axle through its whole travel before driving: at full droop a joint that binds breaks, "
        + "and a slip joint that runs out lets the shaft fall.",
        "Chock the wheels and support the vehicle before you lie under it; a shaft taken out may be the only thing that held the parking brake.",
    ],
})
{
    private const string Manual = "US Army TM 5-4210-230-14 and P-1", Practice = "common practice, no source";

    /// <summary>Within what an angle finder on a yoke tells, degrees.</summary>
    private const double InPhase = 2;

    public sealed record Inputs(
        [Input("working angle at the transfer case end", "deg", AtLeast = 0, High = 15, Measure = HowToMeasureShafts.TransferAngle)] Angle TransferAngle,
        [Input("working angle at the axle end", "deg", AtLeast = 0, High = 15, Measure = HowToMeasureShafts.AxleAngle)] Angle AxleAngle,
        [Input("angle between the two yokes of the shaft, 0 in phase", "deg", AtLeast = 0, High = 360, Measure = HowToMeasureShafts.YokeOffset)] Angle? YokeOffset);

    public sealed record Result(
        [Output("difference of the two working angles", "deg")] Angle EndsApart,
        [Output("angle of one joint that would run as unevenly; unknown until the yokes are looked at", "deg")] Angle? EquivalentAngle,
        [Output("speed fluctuation left at the axle: fastest less slowest", "%")] Ratio? Fluctuation);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double b1 = x.TransferAngle.Degrees, b2 = x.AxleAngle.Degrees, apart = Math.Abs(b1 - b2); // deg
        if (Math.Max(b1, b2) >= 90)
        {
            w.Caution("No joint turns at a right angle or more: measure the angle between flange and shaft again.");
            return null;
        }
        w.Line("apart", "|b1 - b2|", $"|{b1} - {b2}|", apart, "deg");
        w.AtMost("ends", apart, 3, "deg", $"The ends work at {b1:0.#} and {b2:0.#} deg, {apart:0.#} deg apart: within 3 deg is allowed, within 1 deg "
            + "is good.", Manual, watch: 1);
        if (x.YokeOffset is not { } offset) return new(Angle.FromDegrees(apart), null, null);
        var out1 = OutOfPhase(offset.Degrees);
        w.AtMost("phase", out1, InPhase, "deg", out1 > InPhase
            ? $"The yokes are {out1:0.#} deg out of phase: take the slip joint apart and put it together in line, unless the shaft's maker set it so."
            : "The yokes are in phase.", Manual);
        var equivalent = CardanJoint.EquivalentAngle(x.TransferAngle.Radians, x.AxleAngle.Radians, offset.Radians); // rad
        var be = equivalent * 180 / Math.PI; // deg
        w.Line("be", "(b1^4 + b2^4 - 2 b1^2 b2^2 cos 2g)^(1/4)", $"({b1}^4 + {b2}^4 - 2 x {b1}^2 x {b2}^2 x cos(2 x {offset.Degrees}))^(1/4)", be, "deg");
        w.AtMost("equivalent", be, 3, "deg", Evenness(be), Practice);
        if (be >= 90) return new(Angle.FromDegrees(apart), null, null); // two joints near a right angle: no small angle any more
        var U = CardanJoint.Fluctuation(equivalent);
        w.Line("U", "sin be tan be", $"sin {be} deg x tan {be} deg", 100 * U, "%");
        return new(Angle.FromDegrees(apart), Angle.FromDegrees(be), Ratio.FromDecimalFractions(U));
    }

    /// <summary>Yokes look the same after half a turn, and may be off either way.</summary>
    private static double OutOfPhase(double degrees)
    {
        var within = degrees % 180;
        return Math.Min(within, 180 - within);
    }

    private static string Evenness(double be) => be > 3
        ? $"Together the joints shake like a single one at {be:0.#} deg: bring the working angles together and the yokes in line until it is 3 deg or less."
        : $"Together the joints run like a single one at {be:0.#} deg; up to 3 deg is good.";
}
