namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>What the fitted causes say together: the one that explains the readings, several that nobody could tell apart, or none.</summary>
internal static class GaugeVerdict
{
    private const int OneMissIn = 10;

    /// <summary>Causes that explain all readings within their error; where none does, those that miss no more than one in ten. Least cost first.</summary>
    public static List<GaugeCause> Explaining(List<GaugeCause> causes, int readings)
    {
        var all = causes.FindAll(c => c.Within == readings);
        var kept = all.Count > 0 ? all : causes.FindAll(c => c.Within >= readings - (readings / OneMissIn));
        kept.Sort((a, b) => a.Cost.CompareTo(b.Cost));
        return kept;
    }

    /// <summary>The families of the causes, likeliest first.</summary>
    public static string Names(List<GaugeCause> kept)
    {
        var names = new List<string>();
        foreach (var c in kept) if (Name(c.Family) is var n && !names.Contains(n)) names.Add(n);
        return string.Join(", ", names);
    }

    private static string Name(GaugeFamily family) => family switch
    {
        GaugeFamily.Linkage => "linkage",
        GaugeFamily.Bore => "bore",
        GaugeFamily.Vacuum => "vacuum",
        GaugeFamily.BoosterDead => "booster-dead",
        GaugeFamily.FrontHeld => "front-held",
        GaugeFamily.RearHeld => "rear-held",
        GaugeFamily.Valve => "valve",
        GaugeFamily.FrontLine => "front-line",
        GaugeFamily.RearLine => "rear-line",
        _ => "friction",
    };

    /// <summary>The sentence on what explains the gap.</summary>
    public static string Told(List<GaugeCause> kept, int readings)
    {
        if (kept.Count == 0) return "No single cause explains them: look for two faults at once, or air, and read again with the pedal held still.";
        var first = kept[0];
        var others = kept.FindAll(c => c.Family != first.Family);
        var same = kept.FindAll(c => c.Family == first.Family && !c.Equals(first));
        var count = first.Within == readings ? $"all {readings} readings" : $"{first.Within} of {readings} readings";
        if (others.Count == 0)
            return $"{Capital(first.Told)} explains {count}." + (same.Count == 0 ? "" : $" So would {string.Join(", or ", same.ConvertAll(c => c.Told))}: {Apart(first.Family, null)}.");
        var named = kept.Count <= 4 ? kept : kept.GetRange(0, 4);
        return $"These explain {count} alike: {string.Join("; ", named.ConvertAll(c => c.Told))}. To tell them apart, {Apart(first.Family, kept)}.";
    }

    /// <summary>The quickest measurement that tells causes apart.</summary>
    private static string Apart(GaugeFamily first, List<GaugeCause>? kept)
    {
        bool Has(GaugeFamily f) => first == f || (kept?.Exists(c => c.Family == f) ?? false);
        if (kept is null)
            return first == GaugeFamily.Friction ? "feel which axle's discs or drums are cooler after a few stops, or have each axle tried on a roller tester" : "take three readings more above the rear valve's turn";
        if (Has(GaugeFamily.Friction)) return "screw a gauge into a bleeder of each axle: it tells the fluid from the linings";
        if (Has(GaugeFamily.FrontLine) || Has(GaugeFamily.RearLine) || Has(GaugeFamily.Valve)) return "read the bleeders of both axles at the same pedal forces";
        if (Has(GaugeFamily.Vacuum) || Has(GaugeFamily.BoosterDead)) return "tee a gauge into the booster hose, and read the bleeder again with the booster dead";
        if (Has(GaugeFamily.Linkage) && Has(GaugeFamily.Bore)) return "read the bore off the casting, and tape the two arms of the pedal";
        return "read at no pedal force at all and at four forces up to a hard stop";
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
