using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Drawn beside the pedal's travel: travel over pressure, and what another bore trades of travel for force.</summary>
internal static class TravelCurves
{
    private const double Inch = 0.0254;

    /// <summary>Bores that master cylinders are made in, m: common practice, no source.</summary>
    public static IReadOnlyList<double> Bores { get; } =
        [5 * Inch / 8, 11 * Inch / 16, 3 * Inch / 4, 13 * Inch / 16, 7 * Inch / 8, 15 * Inch / 16, Inch, 17 * Inch / 16, 9 * Inch / 8, 5 * Inch / 4];

    /// <summary>As they are called.</summary>
    public static IReadOnlyList<string> Names { get; } = ["5/8", "11/16", "3/4", "13/16", "7/8", "15/16", "1", "1-1/16", "1-1/8", "1-1/4"];

    public static void Draw(Worksheet w, PedalTravel.Inputs x, in MasterCylinder m, Circuit front, Circuit rear, PedalLine? line)
    {
        double hard = x.HardPressure.Pascals, i = x.PedalRatio.DecimalFractions, play = x.FreePlay?.Meters ?? 0, takeUp = x.TakeUp.Meters;
        var rod = PushRod.Of(m, front, rear, takeUp);
        double[] pressures = [0, hard, 1.5 * hard];
        w.Curve(new("pedal travel", "line pressure", "MPa", [.. pressures.Select(p => p / 1e6)], "pedal travel", "mm", [.. pressures.Select(p => 1000 * ((i * rod.At(p)) + play))]));
        if (m.Twin) return;
        var own = m;
        double[] bores = [.. Bores.Select(b => b * 1000)];
        w.Curve(new("pedal travel by bore", "bore of the master cylinder", "mm", bores, "pedal travel at that line pressure", "mm", [.. Bores.Select(b => 1000 * ((i * Bored(own, b, front, rear, takeUp).At(hard)) + play))]));
        double[] fitted = [2000 * Math.Sqrt(own.FrontArea / Math.PI)];
        w.Curve(new("as fitted", "bore of the master cylinder", "mm", fitted, "pedal travel at that line pressure", "mm", [1000 * ((i * rod.At(hard)) + play)]));
        // The rod's force for a pressure grows with the bore's area: on today's line that is the force of a pressure as much higher.
        if (line is not { } l) return;
        w.Curve(new("as fitted", "bore of the master cylinder", "mm", fitted, "pedal force at that line pressure", "N", [l.Force(hard)]));
        w.Curve(new("pedal force by bore", "bore of the master cylinder", "mm", bores, "pedal force at that line pressure", "N", [.. Bores.Select(b => l.Force(hard * MasterCylinder.AreaOf(b) / own.FrontArea))]));
    }

    private static PushRod Bored(in MasterCylinder m, double bore, Circuit front, Circuit rear, double takeUp)
    {
        var area = MasterCylinder.AreaOf(bore);
        return PushRod.Of(m with { FrontArea = area, RearArea = area, Fill = area * m.Fill / m.FrontArea }, front, rear, takeUp);
    }
}
