using System.Globalization;
using System.Text.RegularExpressions;

namespace Crossmember.Builds.Pasting;

/// <summary>One field for how much and how many: "310 each, 5", "5 x 310", "31 kg each, 4", or only the one.</summary>
public static partial class EachAndCount
{
    public static (string Each, decimal Count) Split(string text)
    {
        var said = text.Trim();
        foreach (var way in s_ways)
            if (way.Match(said) is { Success: true } m)
                return (m.Groups["each"].Value.Trim(), m.Groups["n"].Success ? decimal.Parse(m.Groups["n"].Value, CultureInfo.InvariantCulture) : 1);
        return (said, 1);
    }

    /// <summary>As it would be typed again.</summary>
    public static string Say(string each, decimal count) => count == 1 ? each : string.Create(CultureInfo.InvariantCulture, $"{each} each, {count:0.####}");

    private static readonly Regex[] s_ways = [Each(), Times(), Behind()];

    [GeneratedRegex(@"^(?<each>.+?)\s*(each|ea\.?|apiece|a piece)(\s*[,x×*]?\s*(?<n>\d{1,6}(\.\d{1,4})?)(\s*(off|pcs|pieces))?)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Each();

    [GeneratedRegex(@"^(?<n>\d{1,6}(\.\d{1,4})?)\s*(x|×|\*|@|off at)\s*(?<each>[^x×*@]+?)(\s*(each|ea\.?))?$", RegexOptions.IgnoreCase)]
    private static partial Regex Times();

    [GeneratedRegex(@"^(?<each>[^x×*@]*[^x×*@\s])\s*[x×*]\s*(?<n>\d{1,6}(\.\d{1,4})?)$", RegexOptions.IgnoreCase)]
    private static partial Regex Behind();
}
