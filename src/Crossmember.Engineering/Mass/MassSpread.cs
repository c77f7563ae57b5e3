using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Mass;

/// <summary>How far off the mass and the place of a part usually are, by where the figures are from: <c>data/engineering/mass-spread.csv</c>.</summary>
/// <param name="Share">One standard uncertainty as a share of the mass.</param>
/// <param name="Place">One standard uncertainty of each coordinate, m.</param>
public readonly record struct MassSpread(double Share, double Place)
{
    private static readonly Dictionary<string, MassSpread> s_all = Read();

    /// <summary>Of a scale reading whose error nobody stated.</summary>
    public static MassSpread Reading { get; } = s_all["reading"];

    /// <summary>Of a part, by basis: measured, published, vendor or assumed.</summary>
    public static MassSpread Of(string basis) => s_all[basis];

    private static Dictionary<string, MassSpread> Read()
    {
        var table = ReferenceTable.Load("mass-spread.csv");
        return table.Rows.ToDictionary(r => table.Text(r, "basis"), r => new MassSpread(table.Number(r, "share"), table.Number(r, "place")), StringComparer.Ordinal);
    }
}
