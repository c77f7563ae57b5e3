using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.Bench;

/// <summary>The unit beside a field, in the reader's measures; for curves one for each axis.</summary>
/// <param name="X">Null for texts.</param>
public sealed record FieldUnits(Unit? X, Unit? Y)
{
    public static FieldUnits None { get; } = new(null, null);

    public static FieldUnits Of(Calculation calculation, InputSpec spec, MeasureSystem system) =>
        new(spec.Unit is { } x ? Display.UnitFor(x, Usual(calculation, spec), system) : null,
            spec.CurveUnit is { } y ? Display.UnitFor(y, y.ToSi(100), system) : null);

    /// <summary>A bare number with the unit behind it; anything else as it is.</summary>
    public string Completed(string text) => Completed(text, X);

    public string CompletedY(string text) => Completed(text, Y);

    /// <summary>The range the formula holds in, in this unit; null where there is none.</summary>
    public string? Range(InputSpec spec)
    {
        if (spec.Unit is not { } own || spec.Form == Form.Curve || X is null) return null;
        // What another unit makes of a round bound is told as roughly as it was meant.
        string Told(double bound) => X == own ? Engineering.Quantities.Figures.Short(bound) : Documents.Curves.CurveWords.Rounded(X.FromSi(own.ToSi(bound)));
        var symbol = Symbol(X) is { Length: > 0 } s ? " " + s : "";
        return (double.IsFinite(spec.About.Low), double.IsFinite(spec.About.High)) switch
        {
            (true, true) => $"holds for {Told(spec.About.Low)} to {Told(spec.About.High)}{symbol}",
            (true, false) => $"holds from {Told(spec.About.Low)}{symbol}",
            (false, true) => $"holds up to {Told(spec.About.High)}{symbol}",
            _ => null,
        };
    }

    /// <summary>As it is printed; nothing for a bare number.</summary>
    public static string Symbol(Unit? unit) => unit is null || unit.Code == "1" ? "" : Display.Symbol(unit);

    private static string Completed(string text, Unit? unit) =>
        unit is not null && unit.Code != "1" && !text.Contains(':', StringComparison.Ordinal)
        && ShopNotation.Read(text, Dimension.Dimensionless).Value is { Unit.Code: "1" } ? $"{text.Trim()} {unit.Code}" : text;

    /// <summary>A magnitude in the middle of where the formula holds, in SI: it decides between feet and inches.</summary>
    private static double Usual(Calculation calculation, InputSpec spec)
    {
        var about = spec.About;
        var (low, high) = calculation.About.Trends.FirstOrDefault(t => t.Input == spec.Name) is { } trend ? (trend.Low, trend.High) : (about.Low, about.High);
        return spec.Unit!.ToSi((double.IsFinite(low) && low > 0, double.IsFinite(high)) switch
        {
            (true, true) => Math.Sqrt(low * high),
            (true, false) => 2 * low,
            (false, true) => high / 2,
            _ => 1,
        });
    }
}
