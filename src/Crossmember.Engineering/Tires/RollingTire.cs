using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Tires;

/// <summary>Rolling circumference, rolling radius and revolutions of a loaded tire.</summary>
/// <remarks>
/// Formula:  C = 3.05 D, or as measured; re = C / (2 pi); revolutions per mile = 1609344 / C mm
/// Valid:    radial tire at its rated load and pressure, rolling at 60 km/h without driving or braking; single tires lie within about 2 % of it
///           (common practice, no source). Diagonal tires, low pressure and heavy load: measure.
/// Source:   ETRTO Standards Manual, rolling circumference of radial tires, from memory; docs/derivations/rolling-wheel.md
/// Example:  33 in -> C 2556.5 mm, re 406.9 mm, 629.5 rev/mile
/// </remarks>
public sealed class RollingTire() : Calculation<RollingTire.Inputs, RollingTire.Result>(new()
{
    Id = "tires.rolling",
    Version = 1,
    Title = "Rolling tire",
    Purpose = "How far a loaded tire really goes in one turn, for pull, shaft loads and true revolutions per mile: less than the circle of its name.",
    Formula = "C = 3.05 x overall diameter, or as measured; rolling radius = C / (2 pi); revolutions per mile = 63360 in / C",
    Validity = "The factor 3.05 is for radial tires at rated load and pressure, rolling at 60 km/h; single tires lie within about 2 % of it, so 629 "
        + "rev/mile may be 617 to 642. "
        + "Diagonal tires, pressure let down or unusual load: measure the circumference. The loaded radius is never guessed: it depends on load and pressure.",
    Sources =
    [
        "ETRTO Standards Manual: rolling circumference of radial tires 3.05 x overall diameter at 60 km/h, from memory, to be checked in the text",
        "Geometry of a rolling wheel, derived", "Band of 2 %: common practice, no source",
    ],
    Checks =
    [
        new("circumference", null, "Does the measured circumference fit the diameter?", "measuredCircumference"),
        new("loaded-radius", Sense.AtMost, "Is the loaded radius less than the rolling radius, as it must be?", "loadedRadius"),
    ],
    Trends =
    [
        new("diameter", "rollingRadius", '+', 24, 44), new("measuredCircumference", "rollingRadius", '+', 75, 135), new("loadedRadius", "loadedRadius", '+', 10, 20),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["diameter"] = "33 in" },
            new Dictionary<string, double> { ["rollingRadius"] = 406.9 / 25.4, ["revolutionsPerMile"] = 629.5, ["revolutionsPerKilometer"] = 391.2 }, 0.00013,
            "3.05 x 838.2 mm = 2556.5 mm, by hand: 406.9 mm, 629.5 rev/mile, 391.2 rev/km; the factor is from memory", Provenance.HandbookMemory),
        new(new Dictionary<string, string> { ["diameter"] = "33 in", ["measuredCircumference"] = "100 in", ["loadedRadius"] = "15-1/2 in" },
            new Dictionary<string, double> { ["rollingRadius"] = 15.9155, ["revolutionsPerMile"] = 633.6, ["loadedRadius"] = 15.5 }, 0.00001,
            "100 / (2 pi) and 63360 / 100 by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Roll the vehicle for measuring on level ground, with a person at the brake and nobody in its way.",
        "A tire let down for soft ground rolls smaller, carries less and heats up: blow it up again before the road.",
    ],
})
{
    /// <summary>Rolling circumference over overall diameter of a radial tire at 60 km/h.</summary>
    private const double Convention = 3.05;

    private const string Practice = "common practice, no source";

    public sealed record Inputs(
        [Input("overall tire diameter", "in", MoreThan = 0, Low = 20, High = 60, Measure = "read the size on the sidewall, or tape once around the "
            + "tread and divide by 3.1416")]
        Length Diameter,
        [Input("measured rolling circumference", "in", MoreThan = 0, Low = 60, High = 190,
            Measure = "chalk the tire and the ground, roll the loaded vehicle straight for ten turns of the wheel, tape the way and divide by ten")]
        Length? MeasuredCircumference,
        [Input("loaded radius", "in", MoreThan = 0, Low = 8, High = 30,
            Measure = "with the vehicle loaded as it will be used, on level ground, tape from the ground to the center of the hub")]
        Length? LoadedRadius);

    public sealed record Result(
        [Output("way of one turn of the loaded tire", "in")] Length RollingCircumference,
        [Output("rolling radius", "in")] Length RollingRadius,
        [Output("revolutions per mile of the loaded tire", "rev/mile")] ReciprocalLength RevolutionsPerMile,
        [Output("revolutions per kilometer of the loaded tire", "rev/km")] ReciprocalLength RevolutionsPerKilometer,
        [Output("hub center to ground as measured; unknown where it was not", "in")] Length? LoadedRadius);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double D = x.Diameter.Millimeters, C = x.MeasuredCircumference?.Millimeters ?? (Convention * D); // mm
        if (x.MeasuredCircumference is null) w.Line("C", "3.05 D", $"{Convention} x {D}", C, "mm");
        else w.Line("C", "as measured", $"{C}", C, "mm");
        var re = C / (2 * Math.PI); // mm
        w.Line("re", "C / (2 pi)", $"{C} / (2 x pi)", re, "mm");
        w.Line("N", "1609344 / C", $"1609344 / {C}", 1609344 / C, "rev/mile");
        w.Line("Nk", "1000000 / C", $"1000000 / {C}", 1e6 / C, "rev/km");
        if (x.MeasuredCircumference is not null) JudgeCircumference(w, C / D);
        if (x.LoadedRadius is { } rs)
            w.AtMost("loaded-radius", rs.Inches, re / 25.4, "in", rs.Millimeters > re
                ? $"The loaded radius of {rs.Inches:0.##} in is more than the rolling radius of {re / 25.4:0.##} in: one of them is measured wrong. "
                    + "Measure both again with the weight on."
                : $"The loaded radius of {rs.Inches:0.##} in is less than the rolling radius of {re / 25.4:0.##} in, as it should be.", beyond: Verdict.Caution);
        var turns = ReciprocalLength.FromInverseMeters(1000 / C);
        return new(Length.FromMillimeters(C), Length.FromMillimeters(re), turns, turns, x.LoadedRadius);
    }

    /// <summary>A loaded tire goes less far than its free circle; a radial one seldom more than 6 % less.</summary>
    private static void JudgeCircumference(Worksheet w, double factor)
    {
        if (factor > Math.PI)
            w.Answer("circumference", Verdict.Caution, $"{factor:0.###} diameters in a turn is more than the free circle (3.142): measure both again.",
                factor, "1", "geometry");
        else if (factor < 2.95)
            w.Answer("circumference", Verdict.Caution,
                $"{factor:0.###} diameters in a turn is less than a tire at working pressure gives (about 3.05): check the pressure and measure "
                    + "again.", factor, "1", Practice);
        else w.Answer("circumference", Verdict.Pass, $"{factor:0.###} diameters in a turn: about 3.05 is usual.", factor, "1", Practice);
    }
}
