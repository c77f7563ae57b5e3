using System.Globalization;
using Crossmember.Builds.Places;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Web.Features.VehicleMass;

/// <summary>Masses, shares and places as the reader of the page has them.</summary>
public static class MassText
{
    /// <summary>A scale in a shop shows whole pounds or kilograms.</summary>
    public static string Load(double kilograms, MeasureSystem measure)
    {
        var unit = Display.Customary(Dimension.Mass, measure);
        return $"{Number(unit.FromSi(kilograms), 0)} {Display.Symbol(unit)}";
    }

    public static string Load(double? kilograms, MeasureSystem measure) => kilograms is { } kg && double.IsFinite(kg) ? Load(kg, measure) : Words.DontKnow;

    /// <summary>With its sign, for what an entry adds or takes away.</summary>
    public static string Signed(double kilograms, MeasureSystem measure) =>
        double.IsNaN(kilograms) ? Words.DontKnow : Shown.Signed(kilograms, k => Load(k, measure));

    public static string Share(double? share) => share is { } s && double.IsFinite(s) ? $"{Number(100 * s, 0)} %" : "";

    /// <summary>A length along, across or up, to the tenth of an inch or the millimeter.</summary>
    public static string Length(double meters, MeasureSystem measure)
    {
        var unit = Display.Customary(Dimension.Length, measure);
        return $"{Number(unit.FromSi(meters), measure == MeasureSystem.Metric ? 0 : 1)} {Display.Symbol(unit)}";
    }

    /// <summary>Behind the front axle, right of the center line, over the frame datum, in words.</summary>
    public static string Place(Place? at, MeasureSystem measure) => at is not { } p ? "no place yet"
        : $"{Way(p.X, "behind", "ahead of", measure)} the front axle, {(Near(p.Y) ? "on" : Way(p.Y, "right of", "left of", measure))} the center line, {Way(p.Z, "over", "under", measure)} the frame datum";

    /// <summary>What a mark stands for.</summary>
    public static string Of(MassStanding standing) => standing switch
    {
        MassStanding.PutOn => "put on",
        MassStanding.CameOff => "came off",
        MassStanding.Aboard => "on board",
        _ => "on the scale already",
    };

    internal static string Number(double number, int decimals)
    {
        var rounded = Math.Round(number, decimals, MidpointRounding.AwayFromZero);
        return (rounded == 0 ? 0 : rounded).ToString(decimals == 0 ? "0" : "0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }

    private static bool Near(double meters) => Math.Abs(meters) < 0.0005;

    private static string Way(double meters, string positive, string negative, MeasureSystem measure) => $"{Length(Math.Abs(meters), measure)} {(meters < 0 ? negative : positive)}";
}
