using System.Globalization;
using System.Text.RegularExpressions;

namespace Crossmember.Builds.Pasting;

/// <summary>One field for how much and how many: "310 each, 5", "5 x 310", "31 kg each, 4", or only the one.</summary>
public static partial class EachAndCount
{
    /// <param name="mark">How numbers are written here.</param>
    public static (string Each, decimal Count) Split(string text, DecimalMark mark = DecimalMark.Point)
    {
        var said = text.Trim();
        // "310 x 5" and "5 x 310" are the same: of two bare numbers the smaller whole one is the count.
        if (Bare().Match(said) is { Success: true } bare && Number(bare, "a", mark) > Number(bare, "b", mark) && Number(bare, "b", mark) % 1 == 0) return (bare.Groups["a"].Value, Number(bare, "b", mark)!.Value);
        foreach (var way in s_ways)
            if (way.Match(said) is { Success: true } m && (m.Groups["n"].Success ? Number(m, "n", mark) : 1) is { } count)
                return (m.Groups["each"].Value.Trim(), count);
        return (said, 1);
    }

    /// <summary>As it would be typed again.</summary>
    public static string Say(string each, decimal count) => count == 1 ? each : string.Create(CultureInfo.InvariantCulture, $"{each} each, {count:0.####}");

    private static decimal? Number(Match match, string group, DecimalMark mark) => WrittenNumber.Read(match.Groups[group].Value, mark);

    private static readonly Regex[] s_ways = [Each(), Times(), Behind()];

    [GeneratedRegex(@"^(?<a>\d[\d.,]{0,12})\s*[x×*]\s*(?<b>\d[\d.,]{0,12})$", RegexOptions.IgnoreCase)]
    private static partial Regex Bare();

    [GeneratedRegex(@"^(?<each>.+?)\s*(each|ea\.?|apiece|a piece)(\s*[,x×*]?\s*(?<n>\d[\d.,]{0,10})(\s*(off|pcs|pieces))?)?$", RegexOptions.IgnoreCase)]
    private static partial Regex Each();

    [GeneratedRegex(@"^(?<n>\d[\d.,]{0,10})\s*(x|×|\*|@|off at)\s*(?<each>[^x×*@]+?)(\s*(each|ea\.?))?$", RegexOptions.IgnoreCase)]
    private static partial Regex Times();

    [GeneratedRegex(@"^(?<each>[^x×*@]*[^x×*@\s])\s*[x×*]\s*(?<n>\d[\d.,]{0,10})$", RegexOptions.IgnoreCase)]
    private static partial Regex Behind();
}
