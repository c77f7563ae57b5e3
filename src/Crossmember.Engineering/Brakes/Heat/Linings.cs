using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Temperature up to which kinds of lining are used, after <c>brake-lining.csv</c>: common practice, so it cautions and never fails.</summary>
internal static class Linings
{
    public const string Organic = "organic", SemiMetallic = "semi-metallic", Ceramic = "ceramic", Sintered = "sintered", Source = "common practice, no source";

    private static readonly ReferenceTable s_table = ReferenceTable.Load("brake-lining.csv");
    private static readonly Dictionary<string, double> s_limit = s_table.Rows.ToDictionary(r => s_table.Text(r, "lining"), r => s_table.Number(r, "limit"));

    /// <summary>K; where nobody knows what the lining is, the least of all.</summary>
    public static double Limit(string? lining) => lining is not null && s_limit.TryGetValue(lining, out var limit) ? limit : s_limit[Organic];

    /// <summary>How the limit is spoken of.</summary>
    public static string Named(string? lining) => lining is null ? "organic lining (taken, since nobody said what it is)" : $"{lining} lining";
}
