using System.Globalization;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.Areas;

/// <summary>Figures for looking over: four of them, or as many as their uncertainty leaves. The card behind shows every one.</summary>
public static class FigureText
{
    private const int Figures = 4;

    /// <param name="spread">One standard uncertainty in SI; null where it is not known.</param>
    public static (string Value, string? Spread) Of(OutputSpec spec, Value value, double? spread, MeasureSystem measure)
    {
        if (value.Members is { } members)
            return (string.Join('\n', members.Items.Select(m => $"{m.Name}: {Of(spec, m.Value, null, measure).Value}")), null);
        if (!value.IsNumber || spec.Dimension is not { } dimension || dimension == Dimension.Temperature) return (Bench.OutputText.Of(spec, value, measure), null);
        var unit = spec.Unit!.Code is "%" or "1" ? spec.Unit : Display.UnitFor(spec.Unit, value.Number, measure);
        var number = unit.FromSi(value.Number);
        double? u = spread is { } s && double.IsFinite(s) && s > 1e-3 * Math.Abs(value.Number) ? Math.Abs(unit.FromSi(value.Number + s) - number) : null;
        var decimals = Decimals(u ?? number, u is null ? Figures : 2);
        // A count is a count.
        if (u is null && unit.Code == "1" && number == Math.Round(number) && Math.Abs(number) < 1e6) decimals = 0;
        var symbol = unit.Code == "1" ? "" : " " + Display.Symbol(unit);
        return (Rounded(number, decimals) + symbol, u is { } off ? $"± {Rounded(off, decimals)}" : null);
    }

    /// <summary>How many decimals keep so many figures; fewer than none for large numbers would hide the ones that count.</summary>
    private static int Decimals(double number, int figures) => number == 0 ? 0 : Math.Clamp(figures - 1 - (int)Math.Floor(Math.Log10(Math.Abs(number))), 0, 6);

    private static string Rounded(double number, int decimals) => number.ToString("#,0." + new string('0', decimals), CultureInfo.InvariantCulture);
}
