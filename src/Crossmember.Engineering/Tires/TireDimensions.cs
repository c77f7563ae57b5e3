using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Tires;

/// <summary>Nominal diameter, width and revolutions per mile of a tire size.</summary>
/// <remarks>
/// Formula:  W/A R r: D = 25.4 r + 2 W A/100 mm;  D x W R r: D = 25.4 D mm;  revolutions per mile = 63360 / (pi D in)
/// Valid:    nominal, new and unloaded; a loaded radial tire turns about 3 % more often, flotation sizes often measure 0.2 to 0.5 in small
/// Source:   the meaning of the size code (ISO 4000-1, TRA Year Book, from memory); geometry, docs/derivations/rolling-wheel.md
/// Example:  245/55R18 -> 726.7 mm = 28.61 in
/// </remarks>
public sealed class TireDimensions() : Calculation<TireDimensions.Inputs, TireDimensions.Result>(new()
{
    Id = "tires.dimensions",
    Version = 1,
    Title = "Tire dimensions",
    Purpose = "How tall and wide a tire of this size is by its name: what gearing, clearance and speedometer start from.",
    Formula = "W/A R r: D = 25.4 r + 2 W A/100 mm; D x W R r: D = 25.4 D mm; revolutions per mile = 63360 / (pi D in)",
    Validity = "Nominal, new and unloaded. Real tires differ by a few per cent, flotation sizes often measure 0.2 to 0.5 in small (common practice, no source). "
        + "Revolutions per mile are those of a circle of the nominal diameter; a loaded radial tire turns about 3 % more often: take the maker's figure where it is known.",
    Sources = ["Meaning of the size code: ISO 4000-1, TRA Year Book, from memory", "Geometry of a rolling wheel, derived"],
    Examples =
    [
        new(new Dictionary<string, string> { ["size"] = "245/55R18" }, new Dictionary<string, double> { ["diameter"] = 28.61, ["width"] = 9.646 }, 0.0002,
            "Size code: 25.4 x 18 + 2 x 134.75 = 726.7 mm, to 0.01 in (a table in circulation prints 28.63 in: its rounding)", Provenance.Derived),
        new(new Dictionary<string, string> { ["size"] = "33x10.50R15" },
            new Dictionary<string, double> { ["diameter"] = 33, ["width"] = 10.5, ["revolutionsPerMile"] = 611.15 }, 0.00001,
            "Size code; 63360 / (33 pi) by hand to 0.01", Provenance.Derived),
    ],
    Cautions = ["A tire of another size must clear body, springs, steering and brakes at full lock and full travel: turn and flex it before the vehicle is driven."],
})
{
    private const string MeasureIt = "tape once around the tread and divide by 3.1416, or count the turns over a measured stretch";

    public sealed record Inputs(
        [Input("tire size", Measure = "read the size on the sidewall, for example 33x10.50R15LT or 235/75R15", Notation = typeof(SizeNotation))] string Size);

    public sealed record Result(
        [Output("nominal overall diameter; unknown where the size does not tell it", "in")] Length? Diameter,
        [Output("nominal section width", "in")] Length? Width,
        [Output("nominal revolutions per mile", "rev/mile")] ReciprocalLength? RevolutionsPerMile);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (TireSize.Read(x.Size).Value is not { } size) return null;
        if (size.Diameter is not { } diameter)
        {
            w.Caution($"The size {x.Size} does not tell the diameter: {MeasureIt}.");
            return new(null, size.Width, null);
        }
        double D = diameter.Millimeters, W = size.Width.Millimeters, rim = size.RimDiameter.Inches; // mm, mm, in
        if (size.Notation == TireNotation.Metric && size.AspectRatio is { } A) w.Line("D", "25.4 r + 2 W A / 100", $"25.4 x {rim} + 2 x {W} x {A} / 100", D, "mm");
        else w.Line("D", "25.4 D", $"25.4 x {diameter.Inches}", D, "mm");
        var turns = 63360 / (Math.PI * diameter.Inches); // 1/mile
        w.Line("N", "63360 / (pi D)", $"63360 / (pi x {diameter.Inches})", turns, "rev/mile");
        return new(diameter, size.Width, ReciprocalLength.FromInverseMeters(1 / (Math.PI * diameter.Meters)));
    }

    /// <summary>What a size typed at a door must look like: the reader's own complaint.</summary>
    internal sealed class SizeNotation : ITextNotation
    {
        public string? Refuse(string text) => TireSize.Read(text) is { Ok: false } p ? $"is not read: {p.Wrong}; {p.WouldBeRight}" : null;
    }
}
