using Crossmember.Engineering.Brakes.Limits;

namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>What a rule asks of a parking brake: the rows of that test in <c>brake-rules.csv</c>.</summary>
/// <param name="Grade">Rise over run.</param>
/// <param name="Hand">Largest force at a hand lever, N.</param>
/// <param name="Foot">Largest force at a pedal, N.</param>
internal sealed record ParkingRule(string Name, double Grade, double Hand, double Foot, string Source)
{
    public const string None = BrakeRule.None;

    private static readonly ParkingRule[] s_all = [.. BrakeRule.All.Where(r => r.Test == "parking").Select(r => new ParkingRule(r.Rule, r.Grade!.Value, r.HandForce!.Value, r.MostForce!.Value, r.Source))];

    /// <summary>Where no rule is picked, the forces that most of them allow stand in.</summary>
    public static ParkingRule Usual { get; } = Of(BrakeRule.Car135)!;

    public static ParkingRule? Of(string? name) => Array.Find(s_all, r => r.Name == name);

    public double Force(string operation) => operation == "foot" ? Foot : Hand;
}
