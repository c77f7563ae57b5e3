using System.Text.RegularExpressions;
using Crossmember.Engineering.Quantities;
using Crossmember.Planning;

namespace Crossmember.Builds.Pasting;

/// <summary>Reads the unit or the currency in the header of a column: it holds for every cell that names none of its own.</summary>
public static partial class HeaderUnits
{
    /// <summary>Words for the units of weight that a shop's notation does not know, in the languages of the headers.</summary>
    private static readonly Dictionary<string, string> s_masses = Map("kilo kilos kilogramm kilogrammes kilogramos kilogrammi:kg|gr grs gramm grammes gramos grammi:g|unzen onzas onces:oz");

    /// <summary>Units of weight that mean different things in different places, or that nobody here knows.</summary>
    private static readonly HashSet<string> s_doubtful = [.. "ton tons stone stones cwt hundredweight pfund zentner livre livres libra libras libbre".Split(' ')];

    /// <summary>What stands in brackets behind a weight and says nothing of its unit.</summary>
    private static readonly HashSet<string> s_silent = [.. "each ea per a piece pieces pc pcs part item unit one single net gross dry wet approx about est estimated in of stück st je pro par pièce unité netto brutto net brut".Split(' ')];

    private static readonly Dictionary<string, string> s_monies = Map("usd:USD|eur euro euros:EUR|gbp sterling pound pounds:GBP|cad:CAD|aud:AUD|nzd:NZD|chf:CHF|dollar dollars:$");

    private static readonly Dictionary<string, string> s_times =
        Map("day days tag tage tagen jour jours día días dia dias dagen giorni:days|week weeks wk wks woche wochen semaine semaines semana semanas weken settimane:weeks|month months monat monate mois mes meses maanden mesi:months");

    /// <summary>The unit of bare weights; the usual one where the header says nothing of it; null where what it says is not known or is two things.</summary>
    public static string? Mass(string? header, string usual)
    {
        var words = Words(header).ToList();
        var units = words.Select(MassUnit).OfType<string>().Distinct().ToList();
        if (units is [var one] && !words.Exists(s_doubtful.Contains)) return one;
        return units.Count > 0 || words.Exists(s_doubtful.Contains) || InBrackets(header).Any(w => !s_silent.Contains(w)) ? null : usual;
    }

    /// <summary>The currency of bare amounts, as a code or a sign; empty where the header names none; null where it names several.</summary>
    public static string? Currency(string? header)
    {
        var named = Signs().Matches(header ?? "").Select(m => m.Value).Concat(Letters().Matches(header ?? "").Select(m => Code(m.Value)).OfType<string>()).Distinct().ToList();
        return named switch { [] => "", [var one] => one, _ => null };
    }

    /// <summary>The unit of bare lead times; empty where the header says nothing of it.</summary>
    public static string Lead(string? header)
    {
        var words = Words(header).ToList();
        if (words.Select(w => s_times.GetValueOrDefault(w)).OfType<string>().Distinct().ToList() is not [var one]) return "";
        return words.Contains("working") || words.Contains("business") ? $"working {one}" : one;
    }

    /// <summary>Whether a word of a header is a unit or a currency and not what the column holds.</summary>
    public static bool IsUnit(string word) => MassUnit(word.ToLowerInvariant()) is not null || s_doubtful.Contains(word.ToLowerInvariant()) || Code(word) is not null;

    private static string? MassUnit(string word) => s_masses.GetValueOrDefault(word) ?? ShopNotation.Read("1 " + word, Dimension.Mass).Value?.Unit.Code;

    /// <summary>A code in capitals, or a word that is nothing else.</summary>
    private static string? Code(string word) => s_monies.GetValueOrDefault(word.ToLowerInvariant()) ?? (Currencies.IsKnown(word) ? word : null);

    private static IEnumerable<string> Words(string? header) => Letters().Matches(header ?? "").Select(m => m.Value.ToLowerInvariant());

    private static IEnumerable<string> InBrackets(string? header) => Brackets().Matches(header ?? "").SelectMany(m => Words(m.Groups["in"].Value));

    private static Dictionary<string, string> Map(string rows) =>
        rows.Split('|').Select(r => r.Split(':')).SelectMany(r => r[0].Split(' ').Select(w => (Word: w, Means: r[1]))).ToDictionary(p => p.Word, p => p.Means, StringComparer.Ordinal);

    [GeneratedRegex(@"\p{L}+")]
    private static partial Regex Letters();

    [GeneratedRegex(@"((?<!\p{L})(US|NZ|C|A))?\p{Sc}")]
    private static partial Regex Signs();

    [GeneratedRegex(@"[(\[](?<in>[^)\]]*)|/(?<in>[^(\[]*)$")]
    private static partial Regex Brackets();
}
