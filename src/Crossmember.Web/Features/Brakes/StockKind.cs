using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Searching;

namespace Crossmember.Web.Features.Brakes;

/// <summary>What kind of part of the stock list a place is for, read off the keys that its parts state.</summary>
public static class StockKind
{
    // The first that fits names the kind: a caliper states its pads as well.
    private static readonly (string Within, string Title)[] s_kinds =
    [
        ("brakes.master.", "Master cylinder"), ("brakes.booster.", "Booster"), ("brakes.valve.", "Rear valve"), ("brakes.residual.", "Residual valve"), ("brakes.metering.", "Metering valve"), ("brakes.parking.", "Parking brake"),
        ("brakes.pedal.", "Pedal"), ("brakes.fluid.", "Fluid"), (".brake.piston", "Calipers"), (".brake.caliper", "Calipers"), (".brake.cylinder", "Wheel cylinders"), (".brake.rotor", "Discs"), (".brake.drum", "Drums"),
        (".brake.friction", "Pads or linings"), (".brake.lining", "Pads or linings"), (".brake.pad", "Pads"), (".brake.shoe", "Shoes"), (".hose", "Brake hoses"),
    ];

    public static string Of(SearchPlace place, Sheet sheet)
    {
        var keys = place.Slot.Split(' ');
        var fit = Array.Find(s_kinds, k => Array.Exists(keys, key => key.Contains(k.Within, StringComparison.Ordinal)));
        var title = fit.Title ?? Words.Sentence(sheet.Plan.Catalogue.Table.Of(keys[0])?.Meaning.Split(':', ';')[0] ?? "Part");
        var axles = keys.Select(k => k.Split('.')).Where(s => s.Length > 2 && s[0] is "wheel" or "axle").Select(s => s[1]).Where(a => a != "*").Distinct().ToList();
        return axles is [var axle] ? $"{title}, {axle}" : title;
    }
}
