using System.Globalization;

namespace Crossmember.Engineering.Quantities;

/// <summary>Numbers for reading: five significant figures, no exponent where a shop would not write one.</summary>
public static class Figures
{
    public static string Short(double value)
    {
        if (value == 0 || !double.IsFinite(value)) return value == 0 ? "0" : "unknown";
        var magnitude = (int)Math.Floor(Math.Log10(Math.Abs(value)));
        if (magnitude is > 8 or < -5) return value.ToString("0.####e+0", CultureInfo.InvariantCulture);
        var decimals = Math.Clamp(4 - magnitude, 0, 9);
        return Math.Round(value, decimals).ToString("0.#########", CultureInfo.InvariantCulture);
    }
}
