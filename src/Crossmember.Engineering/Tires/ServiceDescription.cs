using System.Globalization;
using System.Text.RegularExpressions;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Tires;

/// <summary>The service description on a sidewall: load index single (and dual) and speed symbol, for example 113Q or 121/118Q.</summary>
/// <remarks>
/// Source: tables <c>load-index.csv</c> and <c>speed-symbol.csv</c> after ISO 4000-1, the ETRTO Standards Manual and the TRA Year Book, from memory.
/// The table governs; the smooth formula 45 x 10^(index/80) kg is up to 1.8 % off and is used by the tests only.
/// </remarks>
public sealed partial record ServiceDescription(int LoadIndexSingle, int? LoadIndexDual, string SpeedSymbol)
{
    private static readonly ReferenceTable s_loads = ReferenceTable.Load("load-index.csv");
    private static readonly ReferenceTable s_speeds = ReferenceTable.Load("speed-symbol.csv");

    private static readonly Dictionary<int, double> s_kilograms =
        s_loads.Rows.ToDictionary(r => int.Parse(s_loads.Text(r, "load-index"), CultureInfo.InvariantCulture), r => s_loads.Number(r, "load"));

    private static readonly Dictionary<string, double> s_metersPerSecond = s_speeds.Rows.ToDictionary(r => s_speeds.Text(r, "symbol"), r => s_speeds.Number(r, "speed"));

    /// <summary>Null where the text is no service description.</summary>
    public static ServiceDescription? Read(string text)
    {
        var match = Pattern().Match(text);
        return match.Success ? new(Index(match.Groups[1])!.Value, Index(match.Groups[2]), match.Groups[3].Value.ToUpperInvariant()) : null;
    }

    /// <summary>kg carried by one tire of a load index; null outside the table.</summary>
    public static double? LoadOf(int loadIndex) => s_kilograms.TryGetValue(loadIndex, out var kg) ? kg : null;

    /// <summary>m/s a speed symbol stands for; null outside the table.</summary>
    public static double? SpeedOf(string symbol) => s_metersPerSecond.TryGetValue(symbol, out var v) ? v : null;

    private static int? Index(Group group) => group.Success ? int.Parse(group.Value, CultureInfo.InvariantCulture) : null;

    [GeneratedRegex(@"^\s*([0-9]{1,3})(?:\s*/\s*([0-9]{1,3}))?\s*([A-Za-z])\s*\z", RegexOptions.CultureInvariant)]
    private static partial Regex Pattern();

    /// <summary>What a service description typed at a door must look like.</summary>
    internal sealed class Notation : ITextNotation
    {
        public string? Refuse(string text) => Read(text) is null ? "must be a load index and a speed symbol, for example 113Q or 121/118Q" : null;
    }
}
