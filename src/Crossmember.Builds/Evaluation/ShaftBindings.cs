using static Crossmember.Builds.Evaluation.ShippedBindings;

namespace Crossmember.Builds.Evaluation;

/// <summary>How rolling tires, propeller shafts and axle shafts are tied to the master sheet.</summary>
internal static class ShaftBindings
{
    private const string Tire = "wheel.{axle}.{side}.tire.", Axle = "axle.{axle}.";

    public static IReadOnlyList<Binding> All { get; } = [.. RollingTires()];

    private static IEnumerable<Binding> RollingTires() =>
    [
        // A measured circumference is stated under the key this publishes and hides it; what is far off is then told as a difference.
        Bind("tires.rolling", ["axle", "side"], [("diameter", Tire + "diameter"), ("loadedRadius", Tire + "loaded-radius")],
            [("rollingCircumference", Tire + "rolling-circumference")], raises: []),
        Bind("tires.axle-rolling-radius", ["axle"], [("circumferences", "wheel.{axle}.*.tire.rolling-circumference")], [("rollingRadius", Axle + "rolling-radius")]),
    ];
}
