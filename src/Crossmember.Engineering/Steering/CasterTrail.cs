using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>How far the tire's contact trails the kingpin's axis: what brings the wheels back to straight.</summary>
/// <remarks>
/// Formula:  t = r tan c + e (r loaded radius, c caster, e wheel center behind the kingpin's axis at hub height)
/// Valid:    vehicle level, standing; the tire's own trail comes on top
/// Source:   geometry, docs/derivations/turning.md; usual caster: common practice, no source
/// Example:  3 deg, 400 mm, no offset -> 21.0 mm
/// </remarks>
public sealed class CasterTrail() : Calculation<CasterTrail.Inputs, CasterTrail.Result>(new()
{
    Id = "steering.caster-trail",
    Version = 1,
    Title = "Caster and trail",
    Purpose = "Whether the wheels come back to straight by themselves and hold the road, or shimmy, wander or weigh on the hands: springs, wedges and lifts move caster.",
    Formula = "t = r tan(caster) + e, e how far the wheel center lies behind the kingpin's axis at hub height",
    Validity = "Vehicle at its ride height on level ground. A frame lower at the rear adds its slope to the caster, degree for degree. The tire itself trails 20 to 50 mm more when it "
        + "corners. On the rolling radius, where no loaded one was measured, the trail is told up to 3 % too long.",
    Sources =
    [
        "Geometry, derived (docs/derivations/turning.md)",
        "US Army TM 9-8000, Principles of Automotive Vehicles, par. 33-17: caster is positive where the pivots lean backward, and brings the wheels back to straight",
        "1 to 3 deg for manual, 3 to 6 deg for powered steering: common practice, no source",
    ],
    Checks = [new("caster", null, "Is the caster what such a steering usually has?")],
    Trends = [new("caster", "trail", '+', -2, 8), new("loadedRadius", "trail", '+', 10, 22), new("rollingRadius", "rollingTrail", '+', 10, 22), new("offset", "trail", '+', -1, 2)],
    NoTrends = [new("assistFactor", "only says which caster is usual")],
    Examples =
    [
        new(new Dictionary<string, string> { ["caster"] = "3 deg", ["loadedRadius"] = "400 mm", ["rollingRadius"] = "410 mm" },
            new Dictionary<string, double> { ["trail"] = 0.8253, ["rollingTrail"] = 0.8459 }, 0.0002, "400 x tan 3 = 20.963 mm and 410 x tan 3 = 21.487 mm, by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Wedges between spring and axle are of steel, of the spring's width, held by the center bolt, with new U-bolts torqued twice: aluminium ones creep and come loose.",
        "Caster turned by wedges turns the pinion as well: look at the joint angle of the propeller shaft before and after. Have it aligned by a qualified person.",
    ],
})
{
    private const double Manual = 1, Between = 3, Powered = 6; // deg, common practice, no source

    private const string Practice = "common practice, no source";

    public sealed record Inputs(
        [Input("caster, mean of both sides, positive where the kingpin leans backward", "deg", Low = -10, High = 15, Measure = HowToMeasureSteering.Caster)] Angle Caster,
        [Input("loaded radius of the front tires", "in", MoreThan = 0, Low = 9, High = 30, Measure = "tape from level ground to the hub center with the weight on the wheels")]
        Length? LoadedRadius,
        [Input("rolling radius of the front tires, used where no loaded one is known", "in", MoreThan = 0, Low = 9, High = 30, Measure = "comes from the tire size")] Length? RollingRadius,
        [Input("wheel center behind the kingpin's axis, at hub height", "in", Low = -3, High = 3, Default = 0, Measure = "0 for most solid axles; else hold a straightedge along the kingpin")]
        Length Offset,
        [Input("how many times the assist multiplies the hand's pull; 1 for manual steering", AtLeast = 1, High = 20, Measure = HowToMeasureSteering.Assist)] Ratio? AssistFactor);

    public sealed record Result(
        [Output("trail at the ground on the loaded radius, else on the rolling radius", "in")] Length? Trail,
        [Output("trail on the rolling radius", "in")] Length? RollingTrail);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double c = x.Caster.Degrees, e = x.Offset.Meters; // deg, m
        if (Math.Abs(c) >= 80)
        {
            w.Caution("No kingpin leans so far: read the caster again.");
            return null;
        }
        double? loaded = x.LoadedRadius is { } rs ? Trail(rs.Meters, c, e) : null, rolling = x.RollingRadius is { } re ? Trail(re.Meters, c, e) : null;
        if (loaded is { } t) w.Line("t", "r tan c + e", $"{x.LoadedRadius!.Value.Millimeters} x tan {c} + {1000 * e}", 1000 * t, "mm");
        if (rolling is { } tr) w.Line("t", "re tan c + e", $"{x.RollingRadius!.Value.Millimeters} x tan {c} + {1000 * e}", 1000 * tr, "mm");
        Judge(w, c, x.AssistFactor?.DecimalFractions > 1, x.AssistFactor is null, loaded ?? rolling);
        return new(Of(loaded ?? rolling), Of(rolling));
    }

    private static double Trail(double r, double degrees, double e) => (r * Math.Tan(degrees * Math.PI / 180)) + e;

    private static void Judge(Worksheet w, double c, bool powered, bool unsaid, double? trail)
    {
        if (unsaid && c is >= Manual and <= Powered)
        {
            w.Answer("caster", Verdict.Unknown, $"Caster is {c:0.#} deg; {Manual:0} to {Between:0} deg is usual for manual, {Between:0} to {Powered:0} deg for powered steering. "
                + $"Not known: the steering's assist ({HowToMeasureSteering.Assist}).", c, "deg", Practice);
            return;
        }
        var (least, most) = powered ? (Between, Powered) : (Manual, Between);
        if (unsaid) (least, most) = (Manual, Powered); // beyond what either has
        var usual = $"{least:0} to {most:0} deg is usual for {(unsaid ? "manual or powered" : powered ? "powered" : "manual")} steering";
        var says = trail is { } t ? $"Caster is {c:0.#} deg, which trails the contact {1000 * t:0} mm; {usual}." : $"Caster is {c:0.#} deg; {usual}.";
        if (c < least) says += " With less the vehicle wanders and the wheel does not come back.";
        if (c > most) says += powered || unsaid ? " With more the wheels may shimmy, and weigh heavy when parking." : " With more the wheel is heavy, and the front wheels may shimmy.";
        w.Answer("caster", c >= least && c <= most ? Verdict.Pass : Verdict.Caution, says, c, "deg", Practice);
    }

    private static Length? Of(double? meters) => meters is { } m ? Length.FromMeters(m) : null;
}
