using System.Globalization;
using System.Text.RegularExpressions;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Builds.Slots;

/// <summary>How long a lead time is, as far as its words tell. Weeks and months are no units of measurement, but people order by them.</summary>
public static partial class LeadTime
{
    private const double Day = 86400;

    /// <summary>In seconds; null where the words tell no time. Of "2-3 weeks" the longer counts.</summary>
    public static double? Seconds(string lead)
    {
        if (ShopNotation.Read(lead, Dimension.Duration).Value is { Si: >= 0 } read) return read.Si;
        if (lead.Trim().Equals("in stock", StringComparison.OrdinalIgnoreCase)) return 0;
        if (Said().Match(lead) is not { Success: true } m) return null;
        var days = m.Groups["week"].Success ? 7 : m.Groups["month"].Success ? 30 : 1;
        return double.Parse(m.Groups["n"].Value.Replace(',', '.'), CultureInfo.InvariantCulture) * days * Day;
    }

    [GeneratedRegex(@"(?<n>\d{1,4}([.,]\d{1,2})?)\s*(working|business)?\s*((?<day>d|days?|tagen?|tage|jours?|días?|dagen|giorni)|(?<week>w|wks?|weeks?|wochen?|semaines?|semanas?|weken|settimane)|(?<month>months?|monate?|mois|meses|maanden|mesi))\b", RegexOptions.IgnoreCase)]
    private static partial Regex Said();
}
