using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>How much a brake hose swells at 1000 psi, after <c>brake-hose.csv</c>.</summary>
/// <remarks>
/// Formula:  V = e L; at other pressures in proportion (rough: the standard's second column at 1500 psi lies below that line)
/// Source:   49 CFR 571.106 table I, from memory: the most that a new hose may swell
/// </remarks>
internal sealed record BrakeHose(string Bore, string Grade, double AtThousand, double AtFifteenHundred)
{
    public const string Narrow = "1/8 in", Middle = "3/16 in", Wide = "1/4 in", Regular = "regular", Low = "low";

    /// <summary>A hose between frame and axle where nobody has measured it, m.</summary>
    public const double UsualLength = 0.45;

    private const double PerFoot = 1e-6 / 0.3048; // cm3 each foot in m3 each m
    private static readonly ReferenceTable s_table = ReferenceTable.Load("brake-hose.csv");

    public static IReadOnlyList<BrakeHose> All { get; } =
    [
        .. s_table.Rows.Select(r => new BrakeHose(s_table.Text(r, "bore"), s_table.Text(r, "grade"), s_table.Number(r, "at-1000-psi") * PerFoot, s_table.Number(r, "at-1500-psi") * PerFoot)),
    ];

    /// <summary>Volume of one hose at 1000 psi in m3.</summary>
    public static double Swell(string? bore, string? grade, double length)
    {
        foreach (var hose in All)
            if (hose.Bore == (bore ?? Narrow) && hose.Grade == (grade ?? Regular)) return hose.AtThousand * length;
        return All[0].AtThousand * length;
    }
}
