using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>The friction that the first letter on a lining's edge stands for: a band 0.1 wide, from <c>brake-friction.csv</c>.</summary>
/// <remarks>
/// Formula:  looked up
/// Valid:    warm linings
/// Source:   SAE J866, from memory
/// </remarks>
internal readonly record struct FrictionBand(double Low, double High)
{
    private static readonly ReferenceTable s_table = ReferenceTable.Load("brake-friction.csv");

    private static readonly Dictionary<char, FrictionBand> s_bands =
        s_table.Rows.Where(r => s_table.Text(r, "letter") != "-").ToDictionary(r => s_table.Text(r, "letter")[0], r => new FrictionBand(s_table.Number(r, "low"), s_table.Number(r, "high")));

    /// <summary>Null where the letter has no band.</summary>
    public static FrictionBand? Of(string letters) => letters.Length > 0 && s_bands.TryGetValue(letters[0], out var band) ? band : null;

    public bool Holds(double friction) => friction >= Low - 1e-9 && friction <= High + 1e-9;
}
