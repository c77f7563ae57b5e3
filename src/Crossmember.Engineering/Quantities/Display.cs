namespace Crossmember.Engineering.Quantities;

/// <summary>The measures a shop reads in.</summary>
public enum MeasureSystem
{
    UsCustomary,
    Metric,
}

/// <summary>Quantities for reading, in the unit that the trade uses for this kind and size of quantity.</summary>
/// <remarks>Everything shown can be typed again: <see cref="ShopNotation.Read"/> understands it, to the figures shown.</remarks>
public static class Display
{
    private const double LongestInFeetAndInches = 100 * 0.3048;

    // A fraction stands for a number of inches only when neither four decimals nor five figures could tell the two apart.
    private const double FractionTolerance = 0.00005;

    /// <summary>The text as it was typed.</summary>
    public static string Show(Quantity quantity) => quantity.Typed;

    /// <summary>The text as it was typed where its unit belongs to the system, else the same quantity in the system's own unit.</summary>
    public static string Show(Quantity quantity, MeasureSystem system) =>
        CustomaryUnits.Belongs(quantity.Unit, system) ? quantity.Typed : Show(quantity.Si, quantity.Unit.Dimension, system);

    /// <summary>A number in SI, shown in the customary unit; "unknown" when it is not a number.</summary>
    public static string Show(double si, Dimension dimension, MeasureSystem system)
    {
        if (!double.IsFinite(si)) return "unknown";
        var unit = CustomaryUnits.For(si, dimension, system);
        var number = unit.FromSi(si);
        if (unit.Code == "ft" && Math.Abs(si) < LongestInFeetAndInches && FeetAndInches(si) is { } feet) return feet;
        var figures = unit.Code == "in" && Fraction(number) is { } fraction ? fraction : Figures.Short(number);
        return unit.Code == "1" ? figures : $"{figures} {Symbol(unit)}";
    }

    /// <summary>The unit a shop expects for a dimension, without regard to size.</summary>
    public static Unit Customary(Dimension dimension, MeasureSystem system) => CustomaryUnits.Main(dimension, system);

    /// <summary>The unit itself where people of the system use it, else the one they use for a quantity of this size.</summary>
    /// <param name="usual">What the quantity is told in otherwise.</param>
    /// <param name="si">A magnitude as it commonly is.</param>
    public static Unit UnitFor(Unit usual, double si, MeasureSystem system) =>
        CustomaryUnits.Belongs(usual, system) ? usual : CustomaryUnits.For(si, usual.Dimension, system);

    /// <summary>The unit as it is printed: raised powers, a middle dot between factors, signs for degree and ohm.</summary>
    public static string Symbol(Unit unit)
    {
        if (unit.Dimension == Dimension.Temperature || unit.Dimension == Dimension.TemperatureDifference)
            return unit.Code.TrimStart('d') is "K" ? "K" : "°" + unit.Code.TrimStart('d');
        return unit.Code.Replace('2', '²').Replace('3', '³').Replace('4', '⁴').Replace("H²O", "H2O", StringComparison.Ordinal)
            .Replace("Ohm", "Ω", StringComparison.Ordinal).Replace("deg", "°", StringComparison.Ordinal).Replace("uΩ", "µΩ", StringComparison.Ordinal)
            .Replace("um", "µm", StringComparison.Ordinal).Replace("fl oz", "fl\u00A0oz", StringComparison.Ordinal).Replace(' ', '·');
    }

    private static string? FeetAndInches(double si)
    {
        var inches = Math.Abs(si) / 0.0254;
        var feet = Math.Floor((inches + FractionTolerance) / 12);
        if (Fraction(Math.Max(0, inches - (12 * feet))) is not { } rest) return null;
        return $"{(si < 0 ? "-" : "")}{feet:0} ft{(rest == "0" ? "" : $" {rest} in")}";
    }

    /// <summary>Whole inches and sixteenths (or thirty-seconds) as on a tape, or null where no such fraction is close.</summary>
    private static string? Fraction(double inches)
    {
        var tolerance = FractionTolerance * Math.Min(1, Math.Abs(inches));
        foreach (var parts in (int[])[16, 32])
        {
            var count = Math.Round(Math.Abs(inches) * parts);
            if (Math.Abs((count / parts) - Math.Abs(inches)) > tolerance) continue;
            double whole = Math.Floor(count / parts), top = count - (whole * parts), bottom = parts;
            while (top > 0 && top % 2 == 0) (top, bottom) = (top / 2, bottom / 2);
            var fraction = top == 0 ? $"{whole:0}" : whole == 0 ? $"{top:0}/{bottom:0}" : $"{whole:0}-{top:0}/{bottom:0}";
            return inches < 0 ? "-" + fraction : fraction;
        }
        return null;
    }
}
