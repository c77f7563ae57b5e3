namespace Crossmember.Engineering.Quantities;

/// <summary>The stable unit codes of the project (<c>docs/units.md</c>): stored values carry these and never change meaning.</summary>
public static class Units
{
    private static readonly Dictionary<string, Unit> s_byCode = UnitTable.Rows.ToDictionary(u => u.Code, StringComparer.Ordinal);
    private static readonly Dictionary<Dimension, Unit[]> s_byDimension = UnitTable.Rows.GroupBy(u => u.Dimension).ToDictionary(g => g.Key, g => g.ToArray());

    /// <summary>Every unit; within a dimension the SI unit comes first.</summary>
    public static IReadOnlyList<Unit> All => UnitTable.Rows;

    /// <summary>The unit of an exact code, or null.</summary>
    public static Unit? Find(string code) => s_byCode.GetValueOrDefault(code);

    /// <summary>The units of a dimension, SI first.</summary>
    public static IReadOnlyList<Unit> Of(Dimension dimension) => s_byDimension[dimension];

    /// <summary>The unit of a code that the program itself wrote.</summary>
    public static Unit Require(string code) => Find(code) ?? throw new ArgumentException($"'{code}' is no unit code of the project", nameof(code));
}
