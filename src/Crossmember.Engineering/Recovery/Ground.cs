using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Recovery;

/// <summary>What the ground takes of a vehicle's weight when it is pulled: low, likely and high, after <c>ground-resistance.csv</c>.</summary>
/// <remarks>
/// A rolling vehicle presses on the ground with W cos th and loses a share of that; a mired one is held by a multiple of its whole weight. One or the other,
/// never both multiplied. Each row of the table says where its figure comes from: most are common practice or from memory.
/// </remarks>
internal sealed record Ground(string Name, bool Mired, double Low, double Likely, double High)
{
    private static readonly ReferenceTable s_table = ReferenceTable.Load("ground-resistance.csv");

    /// <summary>In the order of the table, which is that of the pull within each kind.</summary>
    public static IReadOnlyList<Ground> All { get; } =
    [
        .. s_table.Rows.Select(r => new Ground(s_table.Text(r, "ground"), s_table.Text(r, "kind") == "mired", s_table.Number(r, "low"),
            s_table.Number(r, "likely"), s_table.Number(r, "high"))),
    ];

    public static string Names { get; } = string.Join(", ", All.Select(g => g.Name));

    public static Ground? Find(string name) => All.FirstOrDefault(g => string.Equals(g.Name, name.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>Pull along the slope as a share of the weight, <paramref name="th"/> in radians.</summary>
    public double Share(double of, double th) => (Mired ? of : of * Math.Cos(th)) + Math.Sin(th);

    /// <summary>The slope in radians on which <paramref name="q"/> of the weight is just enough; null where it is enough on any.</summary>
    public double? Slope(double q)
    {
        var most = Mired ? 1 : Math.Sqrt(1 + (Likely * Likely));
        var sine = Mired ? q - Likely : q / most;
        if (sine > 1) return null;
        return sine < -1 ? -Math.PI / 2 : Math.Asin(sine) - (Mired ? 0 : Math.Atan(Likely));
    }

    /// <summary>What a ground typed at a door must be.</summary>
    internal sealed class Notation : ITextNotation
    {
        public string? Refuse(string text) => Find(text) is null ? $"must be one of: {Names}" : null;
    }
}
