using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>How the shipped calculations are tied to the master sheet.</summary>
public static class ShippedBindings
{
    public static IReadOnlyList<Binding> All { get; } =
    [
        new(Calculation("driveline.engine-speed"), ["gear", "range"],
            new Dictionary<string, string>
            {
                ["roadSpeed"] = "duty.cruise-speed", ["tireDiameter"] = "axle.rear.tire-diameter", ["axleRatio"] = "axle.rear.ratio",
                ["gearRatio"] = "gearbox.{gear}.ratio", ["transferRatio"] = "transfer.{range}.ratio", ["redline"] = "engine.redline",
            },
            new Dictionary<string, string>(), []),
    ];

    private static Calculation Calculation(string id) => CalculationList.Find(id) ?? throw new InvalidOperationException($"there is no calculation {id}");
}
