using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>How far the body leans in a bend, and what that takes off the inside wheels.</summary>
/// <remarks>
/// Formula:  roll = ms g hr / (Kf + Kr - ms g hr) per g; transfer of an axle = (K roll + g (ms h_roll + mu r) a) / T
/// Valid:    steady bend on level ground, both wheels down, small angles, tires not counted
/// Source:   moments about the roll axis, docs/derivations/springs.md
/// Example:  2000 kg sprung 0.5 m over the roll axis on 40000 N m/rad -> 18.6 deg per g (14.1 without the weight that leans out)
/// </remarks>
public sealed class BodyRoll() : Calculation<BodyRoll.Inputs, BodyRoll.Result>(new()
{
    Id = "springs.body-roll",
    Version = 2,
    Title = "Body roll in a bend",
    Purpose = "How far the vehicle leans with a camper or a rack on it, which axle holds it, and how hard it may be driven round a bend before an inside wheel goes light.",
    Formula = "roll per g = ms g hr / (Kf + Kr - ms g hr), hr from the roll axis to the center of the sprung mass, roll centers going up and down with the frame; load moved on an axle = (K roll + g (ms z + mu r)) / track per g",
    Validity = "Roll centers sink with the frame, as the eyes of leaf springs do; a track bar's middle sinks half as far, so that the lean told is then somewhat too large for a sunk axle. "
        + "Steady bend on level ground, small angles, both wheels of each axle down, tires and frame taken as stiff: a soft tire and a twisting frame add to the lean, "
        + "as do wind, ruts and a slope. A lifted wheel is not yet a rollover, but the figures end there.",
    Sources = ["Moments about the roll axis, derived (docs/derivations/springs.md)", "8 deg of lean per g: common practice, no source"],
    Checks =
    [
        new("stable", Sense.AtLeast, "Do the springs hold the body up at all?"),
        new("lean", Sense.AtMost, "Does it lean no more than such vehicles do?"),
        new("lift", Sense.AtLeast, "Do the inside wheels stay down in the hardest bend asked for?"),
    ],
    Trends =
    [
        new("centerHeight", "rollPerGee", '+', 0.6, 1.1), new("frontStiffness", "rollPerGee", '-', 300, 3000), new("rearStiffness", "rollPerGee", '-', 300, 3000),
        new("frontLoad", "rollPerGee", '+', 700, 1800), new("rearLoad", "rollPerGee", '+', 700, 2500), new("frontRollCenter", "rollPerGee", '-', -300, 100),
        new("rearRollCenter", "rollPerGee", '-', -300, 100), new("frontDatumHeight", "rollPerGee", '-', 400, 800), new("rearDatumHeight", "rollPerGee", '-', 400, 800), new("frontTrack", "frontTransfer", '-', 1300, 1900), new("rearTrack", "rearTransfer", '-', 1300, 1900),
        new("lateral", "roll", '+', 0.1, 0.6),
    ],
    NoTrends =
    [
        new("frontUnsprung", "takes mass from the body that leans, and lets the rest lie higher"), new("rearUnsprung", "takes mass from the body that leans, and lets the rest lie higher"),
        new("frontRadius", "a higher axle leaves the body's own center lower"), new("rearRadius", "a higher axle leaves the body's own center lower"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["centerHeight"] = "0.9 m", ["frontLoad"] = "1200 kg", ["rearLoad"] = "1200 kg", ["frontUnsprung"] = "200 kg", ["rearUnsprung"] = "200 kg",
                ["frontStiffness"] = "20000 N m/rad", ["rearStiffness"] = "20000 N m/rad", ["frontRollCenter"] = "-100 mm", ["rearRollCenter"] = "-100 mm",
                ["frontDatumHeight"] = "600 mm", ["rearDatumHeight"] = "600 mm",
                ["frontTrack"] = "1.5 m", ["rearTrack"] = "1.5 m", ["frontRadius"] = "0.4 m", ["rearRadius"] = "0.4 m",
            },
            new Dictionary<string, double> { ["rollPerGee"] = 18.610, ["shiftPerGee"] = 135.33, ["roll"] = 7.444, ["frontShare"] = 50, ["frontTransfer"] = 331.3, ["liftAt"] = 0.7244 }, 0.0005,
            "hr = (2400 x 0.9 - 400 x 0.4) / 2000 - 0.5 = 0.5 m; 9806.65 / (40000 - 9806.65) = 0.32480 rad; 2000 x 0.5 x 0.3248 / 2400 m; (20000 x 0.3248 + 9.80665 x (500 + 80)) / 1.5 = 8122.6 N per g, 5884 N to lift; by hand",
            Provenance.Derived),
    ],
    Cautions =
    [
        "The figure is no limit to drive to: tires, ground, wind and quick steering tip a vehicle sooner. Slow down, keep the load low, and have the finished vehicle tried by a qualified driver.",
        Qualified,
    ],
})
{
    private const string HowDatum = "tape from level ground to the frame datum at the axle, or know the ride height",
        HowTrack = "tape between the tread centers of the two tires", HowRadius = "tape from level ground to the hub center with the weight on",
        HowStiffness = "comes from spring rate and spring base";

    /// <summary>Degrees per g; trucks lean 5 to 8. Common practice, no source.</summary>
    private const double Most = 8;

    public sealed record Inputs(
        [Input("height of the center of gravity over the ground", "m", MoreThan = 0, Low = 0.3, High = 2,
            Measure = "weigh one axle level and again with the other end lifted two feet or more, springs blocked: a job for two people and a rated lift")] Length CenterHeight,
        [Input("load on the front axle", "kg", MoreThan = 0, Low = 100, High = 10000, Measure = AxleLoad)] UnitsNet.Mass FrontLoad,
        [Input("load on the rear axle", "kg", MoreThan = 0, Low = 100, High = 10000, Measure = AxleLoad)] UnitsNet.Mass RearLoad,
        [Input("unsprung mass of the front axle", "kg", AtLeast = 0, High = 1500, Measure = UnsprungMass)] UnitsNet.Mass FrontUnsprung,
        [Input("unsprung mass of the rear axle", "kg", AtLeast = 0, High = 1500, Measure = UnsprungMass)] UnitsNet.Mass RearUnsprung,
        [Input("roll stiffness of the front axle", "N m/deg", MoreThan = 0, High = 10000, Measure = HowStiffness)] RotationalStiffness FrontStiffness,
        [Input("roll stiffness of the rear axle", "N m/deg", MoreThan = 0, High = 10000, Measure = HowStiffness)] RotationalStiffness RearStiffness,
        [Input("front roll center over the frame datum; below it is negative", "mm", Low = -600, High = 400, Measure = RollCenter)] Length FrontRollCenter,
        [Input("rear roll center over the frame datum; below it is negative", "mm", Low = -600, High = 400, Measure = RollCenter)] Length RearRollCenter,
        [Input("frame datum over the ground at the front axle in this state of load", "mm", MoreThan = 0, High = 1500, Measure = HowDatum)] Length FrontDatumHeight,
        [Input("frame datum over the ground at the rear axle in this state of load", "mm", MoreThan = 0, High = 1500, Measure = HowDatum)] Length RearDatumHeight,
        [Input("front track", "mm", MoreThan = 0, Low = 900, High = 2600, Measure = HowTrack)] Length FrontTrack,
        [Input("rear track", "mm", MoreThan = 0, Low = 900, High = 2600, Measure = HowTrack)] Length RearTrack,
        [Input("height of the front axle's center over the ground", "mm", MoreThan = 0, High = 800, Measure = HowRadius)] Length FrontRadius,
        [Input("height of the rear axle's center over the ground", "mm", MoreThan = 0, High = 800, Measure = HowRadius)] Length RearRadius,
        [Input("hardest bend to look at, sideways acceleration in g", MoreThan = 0, High = 0.8, Default = 0.4, Measure = "0.4 is a brisk bend; ask the customer how it will be driven")] Ratio Lateral);

    public sealed record Result(
        [Output("lean of the body under 1 g, if all stayed straight-line", "deg")] Angle? RollPerGee,
        [Output("how far that moves the vehicle's center of gravity outward", "mm")] Length? ShiftPerGee,
        [Output("lean in the hardest bend asked for", "deg")] Angle? Roll,
        [Output("share of the roll stiffness that the front axle has", "%")] Ratio? FrontShare,
        [Output("load that moves to the outside front wheel in that bend", "kg")] UnitsNet.Mass? FrontTransfer,
        [Output("load that moves to the outside rear wheel in that bend", "kg")] UnitsNet.Mass? RearTransfer,
        [Output("sideways acceleration in g at which the first inside wheel carries nothing")] Ratio? LiftAt);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        RollingAxle front = new(x.FrontLoad.Kilograms, x.FrontUnsprung.Kilograms, x.FrontStiffness.NewtonMetersPerRadian, x.FrontDatumHeight.Meters + x.FrontRollCenter.Meters, x.FrontTrack.Meters, x.FrontRadius.Meters),
            rear = new(x.RearLoad.Kilograms, x.RearUnsprung.Kilograms, x.RearStiffness.NewtonMetersPerRadian, x.RearDatumHeight.Meters + x.RearRollCenter.Meters, x.RearTrack.Meters, x.RearRadius.Meters);
        if (front.Sprung <= 0 || rear.Sprung <= 0)
        {
            w.Answer("stable", Verdict.Fail, "The unsprung parts of an axle weigh as much as all its load: weigh both again.");
            return null;
        }
        var body = new RollBalance(front, rear, x.CenterHeight.Meters);
        w.Line("zf", "frame datum + roll center", $"{x.FrontDatumHeight.Millimeters} + {x.FrontRollCenter.Millimeters}", 1000 * front.RollCenter, "mm");
        w.Line("zr", "frame datum + roll center", $"{x.RearDatumHeight.Millimeters} + {x.RearRollCenter.Millimeters}", 1000 * rear.RollCenter, "mm");
        w.Line("hr", "(M h - mu r - ms z) / ms",
            $"({front.Load + rear.Load} x {body.CenterHeight} - {front.Unsprung} x {front.Radius} - {rear.Unsprung} x {rear.Radius} - {front.Sprung} x {front.RollCenter} - {rear.Sprung} x {rear.RollCenter}) / {body.Sprung}",
            1000 * body.Arm, "mm");
        w.Line("K", "Kf + Kr - ms g hr", $"{front.Stiffness} + {rear.Stiffness} - {body.Sprung} x {Gravity} x {body.Arm}", body.Holding, "N m/rad");
        w.AtLeast("stable", body.Holding * Math.PI / 180, 0, "N m/deg", body.Holding <= 0
            ? "The weight leans out faster than springs and bars hold it: the body would fall over by itself. Stiffer springs set wider, an anti-roll bar, or a lower load."
            : $"Springs and bars hold {(front.Stiffness + rear.Stiffness) * Math.PI / 180:0} N m for each degree of lean; "
                + $"the weight that leans out takes {body.Sprung * Gravity * body.Arm * Math.PI / 180:0} N m.", "statics");
        if (body.Holding <= 0) return null;
        double a = x.Lateral.DecimalFractions, perGee = body.RollPerGee, lift = Math.Min(body.LiftAt(front), body.LiftAt(rear)); // g, rad, g
        w.Line("roll", "ms g hr / K", $"{body.Sprung} x {Gravity} x {body.Arm} / {body.Holding}", perGee * 180 / Math.PI, "deg");
        w.Line("s", "ms hr roll / M", $"{body.Sprung} x {body.Arm} x {perGee} / {front.Load + rear.Load}", 1000 * body.ShiftPerGee, "mm");
        Moved(w, "dWf", body, front, a);
        Moved(w, "dWr", body, rear, a);
        w.AtMost("lean", perGee * 180 / Math.PI, Most, "deg", perGee * 180 / Math.PI <= Most
            ? $"It would lean {perGee * 180 / Math.PI:0.#} deg under 1 g."
            : $"It would lean {perGee * 180 / Math.PI:0.#} deg under 1 g; {Most} deg is already soft: an anti-roll bar, springs set wider or stiffer, or a lower load.", Practice, beyond: Verdict.Caution);
        Lift(w, body, a, perGee, lift);
        return new(Angle.FromRadians(perGee), Length.FromMeters(body.ShiftPerGee), Angle.FromRadians(perGee * a), Ratio.FromDecimalFractions(front.Stiffness / (front.Stiffness + rear.Stiffness)),
            Transfer(body, front, a), Transfer(body, rear, a), double.IsFinite(lift) ? Ratio.FromDecimalFractions(lift) : null);
    }

    private static void Moved(Worksheet w, string symbol, RollBalance body, RollingAxle axle, double a) =>
        w.Line(symbol, "(K roll + g (ms z + mu r)) a / T",
            $"({axle.Stiffness} x {body.RollPerGee} + {Gravity} x ({axle.Sprung} x {axle.RollCenter} + {axle.Unsprung} x {axle.Radius})) x {a} / {axle.Track}", body.TransferPerGee(axle) * a, "N");

    private static void Lift(Worksheet w, RollBalance body, double a, double perGee, double lift)
    {
        var end = body.LiftAt(body.Front) < body.LiftAt(body.Rear) ? "front" : "rear";
        if (!double.IsFinite(lift)) w.Answer("lift", Verdict.Pass, "No load moves outward: the inside wheels stay down.");
        else w.AtLeast("lift", lift, a, "1", lift < a
            ? $"The inside {end} wheel lifts at {lift:0.00} g, before the {a:0.##} g asked for: lower the load, widen the track, or hold the body better."
            : $"At {a:0.##} g the body leans {perGee * a * 180 / Math.PI:0.#} deg; the inside {end} wheel would lift at {lift:0.00} g.", Practice, watch: 1.25 * a, beyond: Verdict.Caution);
    }

    private static UnitsNet.Mass Transfer(RollBalance body, RollingAxle axle, double a) => UnitsNet.Mass.FromKilograms(body.TransferPerGee(axle) * a / Gravity);
}
