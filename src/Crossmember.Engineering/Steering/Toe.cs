using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Steering;

/// <summary>Toe by tape, as the angle it is, as the drag it makes, and as the tape must read on other tires.</summary>
/// <remarks>
/// Formula:  sin a = toe / (2 D) for each wheel, toe = rear less front reading at the diameter D; side slip tan a of the way
/// Valid:    both wheels alike from straight ahead, readings at hub height with the wheels rolled half a turn
/// Source:   geometry, docs/derivations/turning.md; way of measuring: US Army TM 9-2320-260-20, par. 9-8
/// Example:  1/8 in at 30 in -> 0.119 deg, 11 ft in a mile for each wheel
/// </remarks>
public sealed class Toe() : Calculation<Toe.Inputs, Toe.Result>(new()
{
    Id = "steering.toe",
    Version = 1,
    Title = "Toe-in",
    Purpose = "What a tape reading of toe means: how far the tires are dragged sideways, whether it is what the maker asks, and what the tape must read on tires of another size.",
    Formula = "sin a = toe / (2 D) for each wheel; side slip = 1 mile x tan a; the same angle reads toe' = 2 D' sin a at another diameter",
    Validity = "Rear less front reading between the same two marks, at hub height, the vehicle rolled forward half a turn of the wheels; toe-in positive. Taken at rest with play taken "
        + "up: under way tires and play open it. A maker's figure in inches or mm belongs to the tire it was given for.",
    Sources =
    [
        "Geometry, derived (docs/derivations/turning.md)",
        "US Army TM 9-2320-260-20, par. 9-8: marks on the tread at hub height, read in front, rolled to the rear, the difference is toe-in",
        "0 to 5 mm of toe-in on solid axles where the maker's figure is not known: common practice, no source",
    ],
    Checks = [new("toe", null, "Is the toe what it should be?")],
    Trends =
    [
        new("toe", "angle", '+', -0.4, 0.4), new("measuredDiameter", "angle", '-', 14, 44), new("fittedDiameter", "wantedReading", '+', 24, 44), new("wantedToe", "wantedReading", '+', -0.2, 0.4),
        new("wantedDiameter", "wantedReading", '-', 14, 44),
    ],
    NoTrends = [new("tolerance", "only compared with the result")],
    Examples =
    [
        new(new Dictionary<string, string> { ["toe"] = "0.125 in", ["measuredDiameter"] = "30 in", ["fittedDiameter"] = "33 in", ["wantedToe"] = "0.125 in", ["wantedDiameter"] = "30 in" },
            new Dictionary<string, double> { ["angle"] = 0.11937, ["slip"] = 11.0, ["wantedReading"] = 0.1375, ["reading"] = 0.1375 }, 0.0002,
            "0.125 / 60 = 0.0020833 rad = 0.11937 deg; 5280 x 0.0020833 = 11.0 ft; 0.125 x 33 / 30 = 0.1375 in, by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Tighten the tie rod's clamps with their bolts where they clear axle and spring, ends in line, thread beyond the slot; then turn lock to lock and look again.",
        "Have the vehicle aligned by somebody qualified before it is handed over, with its load aboard.",
    ],
})
{
    private const double UsualMost = 5, UsualTolerance = 0.0015875; // mm, m (1/16 in): common practice, no source

    public sealed record Inputs(
        [Input("toe by tape: rear reading less front reading", "in", Low = -1, High = 1, Measure = "mark both treads at hub height, tape in front, roll half a turn, tape behind, subtract front from rear")]
        Length Toe,
        [Input("diameter at which the tape was held", "in", MoreThan = 0, Low = 12, High = 60, Measure = "the tire's diameter for marks on the tread, the rim's for marks on the rim")] Length MeasuredDiameter,
        [Input("diameter of the tires fitted", "in", MoreThan = 0, Low = 20, High = 60, Measure = "comes from the tire size")] Length? FittedDiameter,
        [Input("toe the maker asks for", "in", Low = -1, High = 1, Measure = "look it up in the maker's handbook")] Length? WantedToe,
        [Input("diameter the maker's figure belongs to", "in", MoreThan = 0, Low = 12, High = 60, Measure = "the tire the vehicle was built with")] Length? WantedDiameter,
        [Input("tolerance of the maker's figure, either way; 1/16 in is taken where none is stated", "in", MoreThan = 0, High = 0.25, Measure = "look it up in the maker's handbook; 1/16 in is usual")] Length? Tolerance);

    public sealed record Result(
        [Output("angle of each wheel, toe-in positive", "deg")] Angle? Angle,
        [Output("way each tire is dragged sideways in a mile", "ft")] Length? Slip,
        [Output("what a tape at the tread of the tires fitted reads now", "in")] Length? Reading,
        [Output("what it must read for the maker's angle", "in")] Length? WantedReading);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double toe = x.Toe.Meters, D = x.MeasuredDiameter.Meters; // m
        if (Math.Abs(toe) >= D || (x is { WantedToe: { } wt, WantedDiameter: { } wd } && Math.Abs(wt.Meters) >= wd.Meters))
        {
            w.Caution("The toe is more than the wheel is wide: measure it again, rear less front.");
            return null;
        }
        double sine = toe / (2 * D), a = Math.Asin(sine); // rad
        w.Line("a", "asin(toe / (2 D))", $"asin({x.Toe.Millimeters} / (2 x {x.MeasuredDiameter.Millimeters}))", TurnGeometry.Degrees(a), "deg");
        var slip = 1609.344 * Math.Tan(a); // m
        w.Line("slip", "1 mile x tan a", $"1609.344 x tan {TurnGeometry.Degrees(a)} deg", slip, "m");
        double? reading = x.FittedDiameter is { } fitted ? 2 * fitted.Meters * sine : null, asked = null; // m
        if (x is { WantedToe: { } want, WantedDiameter: { } at })
        {
            var wanted = want.Meters / (2 * at.Meters);
            w.Line("sin a0", "toe0 / (2 D0)", $"{want.Millimeters} / (2 x {at.Millimeters})", wanted, "1");
            if (x.FittedDiameter is { } on)
            {
                asked = 2 * on.Meters * wanted;
                w.Line("toe'", "2 D' sin a0", $"2 x {on.Millimeters} x {wanted}", 1000 * asked.Value, "mm");
            }
            Judge(w, toe, 2 * D * wanted, (x.Tolerance?.Meters ?? UsualTolerance) * D / at.Meters, x.Tolerance is not null, Told(asked), slip);
        }
        else
        {
            var mm = 1000 * toe;
            w.Answer("toe", mm is >= 0 and <= UsualMost ? Verdict.Pass : Verdict.Caution,
                $"Toe is {Way(toe)}, which drags each tire sideways by {Slip(slip)} of its way; 0 to {UsualMost:0} mm in is usual where the maker's figure is not known.", mm, "mm",
                "common practice, no source");
        }
        return new(Angle.FromRadians(a), Length.FromMeters(slip), Of(reading), Of(asked));
    }

    /// <summary>All in m, as a tape held at the measured diameter reads.</summary>
    private static void Judge(Worksheet w, double toe, double wanted, double tolerance, bool stated, string asked, double slip)
    {
        var off = Math.Abs(toe - wanted);
        w.Answer("toe", off <= tolerance * (1 + 1e-9) ? Verdict.Pass : stated ? Verdict.Fail : Verdict.Caution,
            $"Toe is {Way(toe)} where the tape was held; the maker's angle reads {Way(wanted)} there, {1000 * tolerance:0.0} mm either way{(stated ? "" : ", a usual tolerance where the maker's is not stated")}.{asked} It drags each tire sideways by {Slip(slip)} of its way.",
            1000 * toe, "mm", stated ? "the maker's figure" : "the maker's figure; its tolerance: common practice, no source");
    }

    private static string Slip(double meters) => $"{100 * Math.Abs(meters) / 1609.344:0.00} %";

    private static string Told(double? asked) => asked is { } a ? $" Taped on the tread of the tires fitted, set {Way(a)}." : "";

    private static string Way(double toe) => $"{1000 * Math.Abs(toe):0.0} mm {(toe < 0 ? "out" : "in")}";

    private static Length? Of(double? meters) => meters is { } m ? Length.FromMeters(m) : null;
}
