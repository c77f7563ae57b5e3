using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>What a rule asks of a parking brake, from <c>brake-parking.csv</c>.</summary>
/// <param name="Grade">Rise over run.</param>
/// <param name="Hand">Largest force at a hand lever, N.</param>
/// <param name="Foot">Largest force at a pedal, N.</param>
internal sealed record ParkingRule(string Name, double Grade, double Hand, double Foot, string Source)
{
    public const string None = "none";

    private static readonly ReferenceTable s_table = ReferenceTable.Load("brake-parking.csv");

    private static readonly ParkingRule[] s_all = [.. s_table.Rows.Select(r =>
        new ParkingRule(s_table.Text(r, "rule"), s_table.Number(r, "grade"), s_table.Number(r, "hand"), s_table.Number(r, "foot"), s_table.Text(r, "source")))];

    /// <summary>Where no rule is picked, the forces that most of them allow stand in.</summary>
    public static ParkingRule Usual { get; } = s_all[0];

    public static ParkingRule? Of(string? name) => Array.Find(s_all, r => r.Name == name);

    public double Force(string operation) => operation == "foot" ? Foot : Hand;
}
