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

    /// <summary>Tensile stress area of a thread, m2: pi / 4 (d - 0.9382 p)^2 (ISO 898-1, from memory); without the pitch 0.70 of the shank, less than any coarse thread from 8 mm has.</summary>
    public static double StressArea(double d, double? pitch) =>
        pitch is { } p ? Math.PI / 4 * Math.Pow(Math.Max(0, d - (0.9382 * p)), 2) : 0.7 * Math.PI / 4 * d * d;

    private static bool Is(string[] row, string grade) => string.Equals(s_table.Text(row, "grade"), grade.Trim(), StringComparison.OrdinalIgnoreCase);

    /// <summary>What a grade typed at a door must be.</summary>
    internal sealed class Notation : ITextNotation
    {
        public string? Refuse(string text) => Knows(text) ? null : $"must be one of: {Names}";
    }
}
