using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Recovery;

/// <summary>Proof strength of a bolt by the marks on its head, after <c>bolt-grades.csv</c> (ISO 898-1, SAE J429, from memory).</summary>
internal static class BoltGrade
{
    private static readonly ReferenceTable s_table = ReferenceTable.Load("bolt-grades.csv");

    public static string Names { get; } = string.Join(", ", s_table.Rows.Select(r => s_table.Text(r, "grade")).Distinct());

    /// <summary>Pa; null where no such grade is made so thick. The first row that is thick enough counts.</summary>
    public static double? Proof(string grade, double diameter) =>
        s_table.Rows.FirstOrDefault(r => Is(r, grade) && diameter <= s_table.Number(r, "up-to") * (1 + 1e-9)) is { } row
            ? s_table.Number(row, "proof") : null;

    public static bool Knows(string grade) => s_table.Rows.Any(r => Is(r, grade));

    /// <summary>Tensile stress area of a thread, m2: pi / 4 (d - 0.9382 p)^2 (ISO 898-1, from memory); without the pitch a share of the shank that no coarse thread so thick is below.</summary>
    public static double StressArea(double d, double? pitch) =>
        pitch is { } p ? Math.PI / 4 * Math.Pow(Math.Max(0, d - (0.9382 * p)), 2) : CoarseShare(d) * Math.PI / 4 * d * d;

    /// <summary>0.70 from 3/8 in (3/8-16 has 0.702), 0.64 under it (1/4-20 has 0.648, 5/16-18 0.683).</summary>
    public static double CoarseShare(double d) => d < 0.375 * 0.0254 * (1 - 1e-9) ? 0.64 : 0.7;

    private static bool Is(string[] row, string grade) => string.Equals(s_table.Text(row, "grade"), grade.Trim(), StringComparison.OrdinalIgnoreCase);

    /// <summary>What a grade typed at a door must be.</summary>
    internal sealed class Notation : ITextNotation
    {
        public string? Refuse(string text) => Knows(text) ? null : $"must be one of: {Names}";
    }
}
