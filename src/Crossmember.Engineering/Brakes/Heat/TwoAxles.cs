using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>Picks front and rear out of a map of axles, and the rig out of what a sheet tells of it.</summary>
internal static class TwoAxles
{
    public const string Front = "front", Rear = "rear", Disc = "disc", Drum = "drum";

    /// <summary>False where an axle is not in the map: then there is no answer for two axles.</summary>
    public static bool Find<T>(Members<T> members, out T front, out T rear)
    {
        var found = 0;
        (front, rear) = (default!, default!);
        foreach (var (name, value) in members.Items)
            if (name == Front) (front, found) = (value, found | 1);
            else if (name == Rear) (rear, found) = (value, found | 2);
        return found == 3;
    }

    /// <summary>Null where an axle is not in the maps, or neither brakes; a valve counts where both knee and slope are known.</summary>
    public static Rig? Rig(Members<Force> forces, Members<Pressure> thresholds, Pressure? knee, Ratio? slope, Pressure? metering, Ratio? rearShare)
    {
        if (!Find(forces, out var ff, out var fr) || !Find(thresholds, out var tf, out var tr) || ff.Newtons + fr.Newtons <= 0) return null;
        // Two cylinders on a bar: the rear circuit's pressure is this share of the front's, so all that is told in it is seen earlier or later from the front.
        var seen = rearShare?.DecimalFractions ?? 1;
        var valves = new Valves(knee is { } k && slope is not null ? k.Pascals / seen : double.PositiveInfinity, slope?.DecimalFractions ?? 1, metering?.Pascals ?? 0);
        return new(Of(ff, tf, 1), Of(fr, tr, seen), valves);
    }

    /// <summary>Says so where a valve is half known and so left out.</summary>
    public static void TellOfValve(Worksheet w, Pressure? knee, Ratio? slope)
    {
        if (knee is null != slope is null) w.Caution($"The {(knee is null ? "knee" : "slope")} of the rear valve is not known: the shares of the axles are reckoned without a valve.");
    }

    private static AxleForce Of(Force force, Pressure threshold, double seen) => new(force.Newtons * seen / AxleForce.ReferencePressure, threshold.Pascals / seen);

    /// <summary>Share of a braking force that one axle gives; null where no pressure brakes so hard.</summary>
    public static double? Share(in Rig rig, double force, bool front) =>
        force > 0 && rig.Pressure(force) is { } line && rig.TotalAt(line) is > 0 and var all ? (front ? rig.FrontAt(line) : rig.RearAt(line)) / all : null;

    /// <summary>The word that both sides share; null where they differ.</summary>
    public static string? Same(Members<string> sides)
    {
        var first = sides.Items[0].Value;
        foreach (var (_, value) in sides.Items)
            if (value != first) return null;
        return first;
    }
}
