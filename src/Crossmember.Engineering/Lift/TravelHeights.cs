using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Lift;

/// <summary>The lowest and the highest that an axle's ride height comes to, over all conditions, m.</summary>
internal readonly record struct TravelHeights(double Lowest, double Highest)
{
    /// <summary>Where a travel is not known, the ride heights alone bound it.</summary>
    /// <param name="bump">Until the stop is squeezed solid; where that is not known, until it touches.</param>
    public static TravelHeights Of(Members<Length> heights, Members<Length>? bump, Members<Length>? droop)
    {
        double lowest = double.PositiveInfinity, highest = double.NegativeInfinity;
        foreach (var (name, height) in heights.Items)
        {
            lowest = Math.Min(lowest, height.Meters - Math.Max(0, Travel(bump, name)));
            highest = Math.Max(highest, height.Meters + Math.Max(0, Travel(droop, name)));
        }
        return new(lowest, highest);
    }

    private static double Travel(Members<Length>? travels, string name)
    {
        if (travels is null) return 0;
        foreach (var (of, travel) in travels.Items)
            if (of == name) return travel.Meters;
        return 0;
    }

    /// <summary>Heights from lowest to highest in equal steps.</summary>
    public IEnumerable<double> Steps(int count)
    {
        var (from, to) = (Lowest, Highest);
        return Enumerable.Range(0, count + 1).Select(i => i == count ? to : from + ((to - from) * i / count));
    }
}
