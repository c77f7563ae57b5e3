using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using UnitsNet;

namespace Crossmember.Engineering.Mass;

/// <summary>Center of gravity in three axes from the ledger's mass and moments, and its height over the ground as the vehicle stands.</summary>
/// <remarks>
/// Formula:  x = Mx / M, y = My / M, z = Mz / M over the frame datum; h = z + df + (dr - df) x / L
/// Valid:    two axles, level ground; the datum heights are those of this loading condition
/// Source:   statics, docs/derivations/raised-axle.md
/// Example:  2337 kg, moments 3040.4, 0 and 1751.8 kg m, frame datum on the ground line -> 1301.0 mm, 749.6 mm
/// </remarks>
public sealed class CenterOfGravity() : Calculation<CenterOfGravity.Inputs, CenterOfGravity.Result>(new()
{
    Id = "mass.center-of-gravity",
    Version = 1,
    Title = "Center of gravity",
    Purpose = "Where the weight of the loaded vehicle sits: what tips it, what the axles carry, what moves when something is bolted on.",
    Formula = "x = Mx / M, y = My / M, z = Mz / M; h = z + df + (dr - df) x / L, df and dr the frame datum over the ground at the axles",
    Validity = "Two axles, level ground, standing. As good as the weighing and the places of the parts: the height needs a weighing with one axle lifted. Axles and wheels do not sink with the frame: as the springs give, the height is told too low by the unsprung share of the way, under 1 %.",
    Sources = ["Statics, derived"],
    Checks =
    [
        new("between-axles", null, "Does it lie between the axles?"),
        new("usual-height", null, "Is the height one that such vehicles have?", "momentZ", "frontDatumHeight", "rearDatumHeight"),
    ],
    Trends =
    [
        new("momentX", "centerX", '+', 500, 5900), new("momentY", "centerY", '+', -200, 200), new("momentZ", "height", '+', 100, 3000),
        new("frontDatumHeight", "height", '+', 0.3, 1), new("rearDatumHeight", "height", '+', 0.3, 1),
    ],
    NoTrends = [new("total", "divides moments of either sign"), new("wheelbase", "carries the height between two axles that may stand unequally high")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["total"] = "2337 kg", ["momentX"] = "3040.375 kg m", ["momentY"] = "0 kg m", ["momentZ"] = "1751.91 kg m", ["wheelbase"] = "2560 mm", ["frontDatumHeight"] = "0 mm", ["rearDatumHeight"] = "0 mm",
            },
            new Dictionary<string, double> { ["centerX"] = 1301.0, ["height"] = 749.6 }, 0.0002,
            "Bumper with winch 68 kg at (-0.62, 0.62), spare carrier 74 kg at (3.30, 1.00), rack 45 kg at (1.35, 1.95) on 2150 kg at (1.2919, 0.72) m, by hand to 0.1 mm", Provenance.Derived),
    ],
    Cautions = ["Guessed places give a guessed center of gravity: weigh the finished vehicle, one axle lifted, before anybody relies on its height."],
})
{
    /// <summary>Where trade practice puts the center of gravity of body-on-frame four-wheel drives, unladen to loaded and lifted, m.</summary>
    private const double LowUsual = 0.55, HighUsual = 1.05;

    private const string HowHigh = "weigh once level and once with one axle lifted two feet or more, springs blocked: rated lift, two people";
    private const string HowDatum = "tape from the ground to the frame datum at the axle line, loaded as it is to be judged";

    public sealed record Inputs(
        [Input("total mass", "kg", MoreThan = 0, Measure = AxleBalance.HowTotal)] UnitsNet.Mass Total,
        [Input("moment of the mass about the front axle, positive to the rear", "kg m", Measure = AxleBalance.HowMomentX)] MassMoment MomentX,
        [Input("moment about the center line, positive to the right", "kg m", Measure = AxleBalance.HowMomentY)] MassMoment? MomentY,
        [Input("moment over the frame datum plane", "kg m", Measure = HowHigh)] MassMoment? MomentZ,
        [Input("wheelbase", "m", MoreThan = 0, Low = 1.2, High = 8, Measure = AxleBalance.HowWheelbase)] Length Wheelbase,
        [Input("frame datum over the ground at the front axle", "m", High = 2, Measure = HowDatum)] Length? FrontDatumHeight,
        [Input("frame datum over the ground at the rear axle", "m", High = 2, Measure = HowDatum)] Length? RearDatumHeight);

    public sealed record Result(
        [Output("behind the front axle; unknown where it would lie outside the wheelbase", "mm")] Length? CenterX,
        [Output("to the right of the middle", "mm")] Length? CenterY,
        [Output("over the frame datum plane", "mm")] Length? CenterZ,
        [Output("over the ground", "mm")] Length? Height);

    protected override Result Solve(Inputs v, Worksheet w)
    {
        double M = v.Total.Kilograms, L = v.Wheelbase.Meters, x = v.MomentX.KilogramMeters / M; // kg, m
        double? y = v.MomentY is { } my ? my.KilogramMeters / M : null, z = v.MomentZ is { } mz ? mz.KilogramMeters / M : null;
        w.Line("x", "Mx / M", $"{v.MomentX.KilogramMeters} / {M}", 1000 * x, "mm");
        if (x < 0 || x > L)
        {
            w.Answer("between-axles", Verdict.Fail, $"By these figures the center of gravity lies {(x < 0 ? $"{-1000 * x:0} mm ahead of the front axle" : $"{1000 * (x - L):0} mm behind the rear axle")}: "
                + "check the readings, the places of the parts and the wheelbase.");
            return new(null, null, null, null);
        }
        w.Answer("between-axles", Verdict.Pass, $"The center of gravity lies {1000 * x:0} mm behind the front axle: {100 * (1 - (x / L)):0.0} % on the front.");
        if (y is { } side) w.Line("y", "My / M", $"{v.MomentY!.Value.KilogramMeters} / {M}", 1000 * side, "mm");
        if (z is { } up) w.Line("z", "Mz / M", $"{v.MomentZ!.Value.KilogramMeters} / {M}", 1000 * up, "mm");
        double? height = null;
        if (z is { } over && v.FrontDatumHeight is { } front && v.RearDatumHeight is { } rear)
        {
            height = over + front.Meters + ((rear.Meters - front.Meters) * x / L);
            w.Line("h", "z + df + (dr - df) x / L", $"{over} + {front.Meters} + ({rear.Meters} - {front.Meters}) x {x} / {L}", 1000 * height.Value, "mm");
            var odd = height is < LowUsual or > HighUsual;
            w.Answer("usual-height", odd ? Verdict.Caution : Verdict.Pass, odd
                ? $"The center of gravity would be {1000 * height:0} mm over the ground, outside the usual {1000 * LowUsual:0} to {1000 * HighUsual:0} mm: check the heights of the heavy parts."
                : $"The center of gravity is {1000 * height:0} mm over the ground.", 1000 * height, "mm", "common practice, no source");
        }
        return new(Length.FromMeters(x), Told(y), Told(z), Told(height));
    }

    private static Length? Told(double? metres) => metres is { } m ? Length.FromMeters(m) : null;
}
