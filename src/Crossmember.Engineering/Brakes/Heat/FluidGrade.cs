using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Least boiling points of brake fluids, after <c>brake-fluid.csv</c> (49 CFR 571.116, from memory).</summary>
internal static class FluidGrade
{
    public const string Dot3 = "DOT 3", Dot4 = "DOT 4", Dot5 = "DOT 5", Dot51 = "DOT 5.1", Source = "49 CFR 571.116 S5.1.1 and S5.1.2, from memory";

    private static readonly ReferenceTable s_table = ReferenceTable.Load("brake-fluid.csv");
    private static readonly Dictionary<string, (double Dry, double Wet)> s_grades =
        s_table.Rows.ToDictionary(r => s_table.Text(r, "grade"), r => (s_table.Number(r, "dry"), s_table.Number(r, "wet")));

    /// <summary>K: new out of the can, and with the water that it draws in service.</summary>
    public static (double Dry, double Wet) Boils(string grade) => s_grades[grade];

    public static bool Knows(string grade) => s_grades.ContainsKey(grade);
}
