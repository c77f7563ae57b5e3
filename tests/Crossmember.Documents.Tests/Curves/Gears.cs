using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Documents.Tests.Curves;

/// <summary>Engine speed over road speed of an invented four-speed, as a calculation would plot it.</summary>
internal static class Gears
{
    public static readonly double[] Ratios = [6.4, 3.09, 1.69, 1];

    /// <summary>Straight from standstill to 3200 rpm; <paramref name="axle"/> rpm for each mph in direct gear.</summary>
    public static PlottedCurve Gear(int gear, double axle, int points = 33) => new(
        $"gear {gear}", "road speed", "mph", [.. Enumerable.Range(0, points).Select(i => 3200.0 * i / (points - 1) / (axle * Ratios[gear - 1]))],
        "engine speed", "rpm", [.. Enumerable.Range(0, points).Select(i => 3200.0 * i / (points - 1))]);

    public static Side Side(string name, double axle) => new(name, [.. Enumerable.Range(1, 4).Select(g => Gear(g, axle))]);

    public static PlottedCurve Pull { get; } = new("gear 1", "road speed", "mph", [5, 10, 15], "force at the wheels", "lbf", [4000, 4500, 3000]);

    public static CurveChart Alone(MeasureSystem system = MeasureSystem.UsCustomary) => Assert.Single(CurveChart.Of("Engine speed, high range", Side("working", 45), null, system));

    public static CurveChart Compared(MeasureSystem system = MeasureSystem.UsCustomary) =>
        Assert.Single(CurveChart.Of("Engine speed, high range", Side("working", 45), Side("as found", 54), system));
}
