using Crossmember.Engineering.Brakes.Limits;
using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Deceleration of a measured stop, and the stopping distance that it means with the brakes' build-up.</summary>
/// <remarks>
/// Formula:  d = (vb^2 - ve^2) / (2 (se - sb)), vb = 0.8 v0, ve = 0.1 v0 (in km/h and m: 25.92); s = v (tr + tb / 2) + v^2 / (2 d) - d tb^2 / 24
/// Valid:    level dry closed ground, straight; distances from the moment the pedal moves
/// Source:   UN Regulation 13, Annex 4, 1.1.2 as in working document GRRF-56-3; build-up derived in docs/derivations/brake-pedal.md
/// Example:  100 km/h, 26.57 and 64.37 m: 6.43 m/s2
/// </remarks>
public sealed class RoadTest() : Calculation<RoadTest.Inputs, RoadTest.Result>(new()
{
    Id = "brakes.road-test",
    Version = 1,
    Title = "Measured stop",
    Purpose = "The deceleration that the brakes fully developed in a measured stop, and whether the whole distance goes with it.",
    Formula = "d = (vb^2 - ve^2) / (25.92 (se - sb)) with km/h and m, vb = 0.8 v0, ve = 0.1 v0; s = v (tr + tb / 2) + v^2 / (2 d) - d tb^2 / 24",
    Validity = "Level, dry, straight, closed ground; clutch in. Speeds by a satellite logger are good to about 0.2 km/h, by the speedometer only after it was checked. "
        + "Pressure is taken to rise straight over the build-up time. Distances count from the moment the foot touches the pedal.",
    Sources = ["UN Regulation 13, Annex 4, 1.1.2, mean fully developed deceleration, as in working document GRRF-56-3", "Equations of motion, derived"],
    Checks = [new("distance", null, "Do the whole distance and the deceleration agree?", "wholeDistance")],
    Trends =
    [
        new("speed", "deceleration", '+', 30, 120), new("beginDistance", "deceleration", '+', 5, 50), new("endDistance", "deceleration", '-', 40, 150), new("delay", "distance", '+', 0, 1),
        new("buildUp", "distance", '+', 0, 1), new("wholeDistance", "wholeDeceleration", '-', 30, 150),
    ],
    Examples =
    [
        new(Example(("wholeDistance", "64.97 m")), new Dictionary<string, double> { ["deceleration"] = 6.43, ["distance"] = 64.97, ["wholeDeceleration"] = 6.43 }, 0.001,
            "A stop from 100 km/h that builds up to 6.43 m/s2 in 0.36 s: 0.8 v0 at 26.57 m, 0.1 v0 at 64.37 m, by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Try brakes on closed ground only: first at walking pace, then at a run, then more; belts on, nobody around, a qualified person in charge, and look at hoses, leaks and wheel nuts before and after.",
    ],
})
{
    private const double From = 0.8, To = 0.1, Agree = 0.1;

    public sealed record Inputs(
        [Input("speed at the start of the stop", "km/h", MoreThan = 0, High = 160, Measure = "read the satellite logger, or drive a checked speedometer steadily")] Speed Speed,
        [Input("distance from touching the pedal to 0.8 of that speed", "m", AtLeast = 0, Measure = HowDistance)] Length BeginDistance,
        [Input("distance from touching the pedal to 0.1 of that speed", "m", MoreThan = 0, Measure = HowDistance)] Length EndDistance,
        [Input("distance from touching the pedal to standstill", "m", MoreThan = 0, Measure = "paint mark or cone where the pedal was touched, tape to where it stands")] Length? WholeDistance,
        [Input("delay before pressure begins", "s", AtLeast = 0, High = 2, Default = 0, Measure = "from the logger; near nothing when counted from the pedal")] Duration Delay,
        [Input("time in which the pressure builds up", "s", AtLeast = 0, High = 2, Default = 0.36, Measure = "from the logger; about 0.3 to 0.4 s with a quick foot")] Duration BuildUp);

    private const string HowDistance = "read it off the satellite logger's trace";

    public sealed record Result(
        [Output("mean fully developed deceleration", "m/s2")] Acceleration? Deceleration,
        [Output("share of g")] Ratio? Share,
        [Output("stopping distance that it means", "m")] Length? Distance,
        [Output("deceleration that the whole distance means", "m/s2")] Acceleration? WholeDeceleration);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double v = x.Speed.MetersPerSecond, sb = x.BeginDistance.Meters, se = x.EndDistance.Meters, tr = x.Delay.Seconds, tb = x.BuildUp.Seconds;
        var whole = x.WholeDistance is { } s ? Built(v, StoppingDistance.Deceleration(v, s.Meters - (v * tr), tb), tb) : null;
        if (se <= sb)
        {
            w.Answer("distance", Verdict.Fail, $"0.1 of the speed cannot come at {x.EndDistance.Feet:0} ft, before 0.8 of it at {x.BeginDistance.Feet:0} ft: read the trace again.");
            return new(null, null, null, Told(whole));
        }
        var d = StoppingDistance.MeanDeveloped(From * v, To * v, se - sb);
        double? distance = Built(v, d, tb) is { } built ? (v * tr) + StoppingDistance.Of(v, built, tb) : null;
        w.Line("d", "(vb^2 - ve^2) / (25.92 (se - sb))", $"({From * v * 3.6}^2 - {To * v * 3.6}^2) / (25.92 x ({se} - {sb}))", d, "m/s2");
        if (distance is { } told) w.Line("s", "v (tr + tb / 2) + v^2 / (2 d) - d tb^2 / 24", $"{v} x ({tr} + {tb} / 2) + {v}^2 / (2 x {d}) - {d} x {tb}^2 / 24", told, "m");
        Judge(x, w, d, distance, whole);
        return new(Told(d), Ratio.FromDecimalFractions(d / Chain.Loading.Gravity), distance is { } m ? Length.FromMeters(m) : null, Told(whole));
    }

    /// <summary>Null where it would stand before the brakes are built up, or there is no such deceleration.</summary>
    private static double? Built(double v, double d, double buildUp) => d > 0 && double.IsFinite(d) && d * buildUp <= 2 * v ? d : null;

    private static void Judge(Inputs x, Worksheet w, double d, double? distance, double? whole)
    {
        if (x.WholeDistance is not { } measured) return;
        if (whole is not { } mean || distance is not { } s)
        {
            w.Answer("distance", Verdict.Caution, $"{measured.Feet:0} ft from {x.Speed.KilometersPerHour:0} km/h is shorter than delay and build-up alone allow: read again where the pedal was touched.");
            return;
        }
        var off = (measured.Meters / s) - 1;
        w.Answer("distance", Math.Abs(off) > Agree ? Verdict.Caution : Verdict.Pass, $"{d / Chain.Loading.Gravity:0.00} g between 0.8 and 0.1 of {x.Speed.KilometersPerHour:0} km/h means {Length.FromMeters(s).Feet:0} ft; measured {measured.Feet:0} ft, which is {mean / Chain.Loading.Gravity:0.00} g."
            + (Math.Abs(off) > Agree ? " They differ by more than a tenth: a late pedal, a locked wheel, a slope or a wrong speed." : ""), measured.Feet, "ft", "common practice, no source");
    }

    private static Acceleration? Told(double? d) => d is { } a ? Acceleration.FromMetersPerSecondSquared(a) : null;

    private static Dictionary<string, string> Example(params (string Input, string Value)[] more) => new(more.Select(m => KeyValuePair.Create(m.Input, m.Value)))
    {
        ["speed"] = "100 km/h", ["beginDistance"] = "26.57 m", ["endDistance"] = "64.37 m", ["buildUp"] = "0.36 s",
    };
}
