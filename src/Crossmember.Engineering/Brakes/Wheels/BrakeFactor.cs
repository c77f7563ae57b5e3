using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Brakes.Wheels.HowToMeasureWheels;

namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>How much torque a wheel brake makes of its piston's force, and how much of that hangs on the friction of its lining.</summary>
/// <remarks>
/// Formula:  disc 2 mu; drum torque over one piston's force times the drum's radius, from the moments of both shoes; sensitivity d ln factor / d ln mu
/// Valid:    linings worn in, drum round and stiff, both shoes with like linings
/// Source:   docs/derivations/drum-brakes.md; Shigley, Mechanical Engineering Design, ch. 16, for the pivoted shoe (from memory)
/// Example:  drum 300 mm, pins 125 mm out and 125 mm apart, linings 0 to 120 deg, mu 0.28 -> 1.279
/// </remarks>
public sealed class BrakeFactor() : Calculation<BrakeFactor.Inputs, BrakeFactor.Result>(new()
{
    Id = "brakes.factor",
    Version = 1,
    Title = "Brake factor",
    Purpose = "What a brake makes of its piston's force: shoes that the drum drags into themselves brake two to four times as hard as they are pressed, and that much more unevenly when the lining is damp, hot or of another make.",
    Formula = "disc 2 mu; drum (T1 + T2) / (F r), leading shoe T = mu q M / (n - mu f), trailing mu q M / (n + mu f); duo-servo: the link hands the first shoe's force to the second",
    Validity = "Linings worn in over all of their length, drum round and stiff, both shoes alike. Without the lining's ends the idealised factor stands in, which takes all pressure at a right angle from the pivot and is "
        + "a tenth to a quarter off (a duo-servo brake of 11 in with linings from 25 to 145 deg: 4.5 instead of 5.7 at 0.35). A shoe that slides on its abutment, a soft drum and linings hard at one end shift it by as much again: a road test is better than any of it.",
    Sources = ["Statics of a rigid shoe with Coulomb friction, derived (docs/derivations/drum-brakes.md)", "Integrals of the pivoted shoe: Shigley, Mechanical Engineering Design, ch. 16 (from memory)", "Bands of the friction letters: SAE J866, from memory; a caution at most"],
    Checks =
    [
        new("geometry", null, "Can these readings be of one brake?"),
        new("self-locking", Sense.AtMost, "Does the brake let go again, whatever the lining?"),
    ],
    Trends = [new("friction", "factor", '+', 0.2, 0.5), new("friction", "sensitivity", '+', 0.2, 0.5), new("drumDiameter", "factor", '+', 280, 340)],
    NoTrends =
    [
        new("anchorDistance", "lengthens the arm of the piston as well as that of the pressure"), new("actuatorDistance", "in a duo-servo brake it takes from the second shoe what it gives the first"),
        new("linkDistance", "lengthens the arm of the link on one shoe and shortens what it hands on"), new("anchorSpread", "small beside the anchor's distance"),
        new("liningStart", "by where the lining lies"), new("liningEnd", "by where the lining lies"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["kind"] = "drum", ["friction"] = "0.28", ["drumKind"] = "leading-trailing", ["drumDiameter"] = "300 mm", ["anchorDistance"] = "125 mm", ["anchorSpread"] = "125 mm", ["actuatorDistance"] = "108.2532 mm",
                ["liningStart"] = "0 deg", ["liningEnd"] = "120 deg",
            },
            new Dictionary<string, double> { ["factor"] = 1.279, ["lockFriction"] = 0.887 }, 0.0005,
            "Shigley, Mechanical Engineering Design, problem 16-1 (inputs from memory): 422 N m from 2.2 kN at each shoe of a 300 mm drum, worked again", Provenance.HandbookMemory),
        new(new Dictionary<string, string> { ["kind"] = "drum", ["friction"] = "0.35", ["drumKind"] = "duo-servo", ["drumDiameter"] = "240 mm", ["anchorDistance"] = "100 mm", ["actuatorDistance"] = "100 mm" },
            new Dictionary<string, double> { ["factor"] = 4.1617, ["sensitivity"] = 2.448 }, 0.0002, "4 mu / (1 - 0.42)^2 and 1.42 / 0.58, by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["kind"] = "disc", ["friction"] = "0.38", ["frictionLetters"] = "FE" }, new Dictionary<string, double> { ["factor"] = 0.76, ["sensitivity"] = 1 }, 1e-6, "two faces of 0.38", Provenance.Derived),
    ],
    Cautions = [Linings, Qualified],
})
{
    /// <summary>Share of the friction at which it locks that a lining should stay below: damp and cold linings grip a quarter more. Common practice, no source.</summary>
    private const double Spare = 0.8;

    private const string Letters = "SAE J866, from memory";

    private const string Practice = "statics; a fifth to spare: common practice, no source";

    public sealed record Inputs(
        [Input("disc or drum", OneOf = [Disc, DrumBrake], Measure = HowToMeasureWheels.Kind)] string Kind,
        [Input("friction of pad or lining, warm", MoreThan = 0, Low = 0.1, High = 0.7, Measure = HowToMeasureWheels.Friction)] Ratio Friction,
        [Input("how the shoes stand", OneOf = [LeadingTrailing, TwoLeading, DuoServo], Measure = HowToMeasureWheels.DrumKind)] string? DrumKind,
        [Input("inner diameter of the drum", "mm", MoreThan = 0, Low = 100, High = 500, Measure = HowToMeasureWheels.DrumDiameter)] Length? DrumDiameter,
        [Input("drum's center to the shoe's anchor or abutment", "mm", MoreThan = 0, Measure = Anchor)] Length? AnchorDistance,
        [Input("drum's center to the line of the wheel cylinder", "mm", MoreThan = 0, Measure = Opening)] Length? ActuatorDistance,
        [Input("drum's center to the link between the shoes of a duo-servo brake", "mm", MoreThan = 0, Measure = Link)] Length? LinkDistance,
        [Input("distance between the anchor pins of both shoes", "mm", AtLeast = 0, Measure = Spread)] Length? AnchorSpread,
        [Input("beginning of the lining, round from the anchor", "deg", AtLeast = 0, High = 90, Measure = LiningEnd)] Angle? LiningStart,
        [Input("end of the lining, round from the anchor", "deg", AtLeast = 0, High = 180, Measure = LiningEnd)] Angle? LiningEnd,
        [Input("friction letters of the lining", Notation = typeof(Heat.FrictionLetters), Measure = HowToMeasureWheels.Friction)] string? FrictionLetters);

    public sealed record Result(
        [Output("torque over one piston's force times the radius, rolling forward")] Ratio? Factor,
        [Output("the same rolling backward")] Ratio? ReverseFactor,
        [Output("percent of torque moved by a percent of friction")] Ratio? Sensitivity,
        [Output("friction from which on it would hold itself on")] Ratio? LockFriction);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        var mu = x.Friction.DecimalFractions;
        var unlike = Unlike(x, mu);
        if (x.Kind == Disc)
        {
            w.Line("C", "2 mu, one for each face", $"2 x {mu}", 2 * mu, "1");
            w.Answer("geometry", unlike is null ? Verdict.Pass : Verdict.Caution, unlike ?? "A disc brake: its factor is twice the friction of its pads.", source: unlike is null ? null : Letters);
            w.Answer("self-locking", Verdict.Pass, "A disc brake does not drag itself on.");
            return new(Of(2 * mu), Of(2 * mu), Of(1), null);
        }
        if (x.DrumKind is null) w.Lacks("drumKind");
        if (x.DrumDiameter is null) w.Lacks("drumDiameter");
        if (x.AnchorDistance is null && x.ActuatorDistance is null) w.Lacks("anchorDistance");
        if (w.Lacking.Count > 0) return new(null, null, null, null);
        var g = DrumReadings.Of(x);
        var wrong = g.CannotBe();
        w.Answer("geometry", wrong is not null ? Verdict.Fail : unlike is not null ? Verdict.Caution : Verdict.Pass, wrong ?? unlike ?? $"The shoes fit the {2000 * g.Radius:0.#} mm drum. {g.Method}", source: wrong is null && unlike is not null ? Letters : null);
        if (wrong is not null) return new(null, null, null, null);
        if (g.Assumed is { } assumed) w.Caution(assumed);
        var drum = g.Brake();
        return Told(drum, mu, w);
    }

    /// <summary>What to say of a friction that its own letters do not have; null where they agree or were not read.</summary>
    private static string? Unlike(Inputs x, double mu) =>
        x.FrictionLetters is { } letters && FrictionBand.Of(letters) is { } band && !band.Holds(mu)
            ? $"A friction of {mu:0.00} is none of linings marked {letters}, which have {band.Low:0.00} to {band.High:0.00} warm: read the letters again, or work the friction back from a road test." : null;

    private static Result Told(in Drum drum, double mu, Worksheet w)
    {
        double locks = drum.Locks(), factor = drum.Factor(mu);
        if (double.IsNaN(factor))
        {
            w.Answer("self-locking", Verdict.Fail,
                $"From a friction of {locks:0.00} on the drum drags these shoes in by itself and does not let go: with {mu:0.00} it locks at a touch. Read friction and distances again, or take a milder lining.", mu, "1", "statics");
            return new(null, null, null, Of(locks));
        }
        double back = drum.Reverse(mu, factor), sensitivity = drum.Sensitivity(mu, factor);
        if (w.Shown) Show(drum, mu, factor, w);
        w.Line("sensitivity", "d ln C / d ln mu", $"mu {mu}", sensitivity, "1");
        w.AtMost("self-locking", mu, locks, "1", mu > Spare * locks
            ? $"It would hold itself on at a friction of {locks:0.00}, and the lining has {mu:0.00}: damp or cold it may grab. A milder lining is wanted."
            : $"It would hold itself on at a friction of {locks:0.00}; the lining has {mu:0.00}.", Practice, watch: Spare * locks);
        return new(Of(factor), Of(back), Of(sensitivity), Of(locks));
    }

    private static void Show(in Drum drum, double mu, double factor, Worksheet w)
    {
        if (drum.Kind == Wheels.DrumKind.DuoServo)
        {
            var (_, first, link, second) = drum.Servo(mu);
            var (level, sum) = drum.First.Contact(mu);
            w.Line("X", "Int p (cos f - mu sin f), first shoe", $"mu {mu}", level, "1");
            w.Line("P", "Int p", $"mu {mu}", sum, "1");
            w.Line("S", "(h X + mu r P) / (e X - mu r P), force in the link for a newton of the cylinder", $"h {drum.First.Opening}, e {drum.First.Link}, r {drum.Radius}", link, "1");
            w.Line("T1", "mu r P (h + e) / (e X - mu r P)", $"{mu} x {drum.Radius} x {sum} x ({drum.First.Opening} + {drum.First.Link}) / ({drum.First.Link} x {level} - {mu} x {drum.Radius} x {sum})", first, "N m");
            w.Line("T2", "mu q (S (a + e) + a - h) / (n - mu f)",
                $"{mu} x {drum.Shoe.Turning} x ({link} x ({drum.Anchor} + {drum.First.Link}) + {drum.Anchor} - {drum.First.Opening}) / ({drum.Shoe.Normal} - {mu} x {drum.Shoe.Friction})", second, "N m");
            w.Line("C", "(T1 + T2) / r", $"({first} + {second}) / {drum.Radius}", factor, "1");
            return;
        }
        var s = drum.Shoe;
        w.Line("T lead", "mu q c / (n - mu f) for a newton of the cylinder", $"{mu} x {s.Turning} x {drum.Arm} / ({s.Normal} - {mu} x {s.Friction})", s.Leading(drum.Arm, mu), "N m");
        w.Line("T trail", "mu q c / (n + mu f)", $"{mu} x {s.Turning} x {drum.Arm} / ({s.Normal} + {mu} x {s.Friction})", s.Trailing(drum.Arm, mu), "N m");
        w.Line("C", drum.Kind == Wheels.DrumKind.TwoLeading ? "2 T lead / r" : "(T lead + T trail) / r", $"r {drum.Radius}", factor, "1");
    }

    private static Ratio Of(double x) => Ratio.FromDecimalFractions(x);
}
