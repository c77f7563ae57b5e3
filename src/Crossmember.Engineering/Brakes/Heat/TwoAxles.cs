using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using UnitsNet;
using How = Crossmember.Engineering.Brakes.Balance.HowToMeasureBalance;

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

    /// <summary>Whether a fitted valve is known well enough to share the heat; else it asks for what is missing. Without a valve a knee or slope left over says nothing.</summary>
    public static bool Knows(Worksheet w, string valve, Pressure? knee, Ratio? slope)
    {
        if (valve == How.NoValve || (knee is not null && slope is not null)) return true;
        if (knee is null) w.Lacks("valveKnee");
        if (slope is null) w.Lacks("valveSlope");
        return false;
    }

    /// <summary>Null where an axle is not in the maps, or neither brakes.</summary>
    public static Rig? Rig(Members<Force> forces, Members<Pressure> thresholds, string valve, Pressure? knee, Ratio? slope, Pressure? metering, Ratio? rearShare)
    {
        if (!Find(forces, out var ff, out var fr) || !Find(thresholds, out var tf, out var tr) || ff.Newtons + fr.Newtons <= 0) return null;
        // Two cylinders on a bar: the rear circuit's pressure is this share of the front's, so all that is told in it is seen earlier or later from the front.
        var seen = rearShare?.DecimalFractions ?? 1;
        var valves = valve != How.NoValve && knee is { } k && slope is { } s ? new Valves(k.Pascals / seen, s.DecimalFractions, metering?.Pascals ?? 0)
            : Valves.None with { Metering = metering?.Pascals ?? 0 };
        return new(Of(ff, tf, 1), Of(fr, tr, seen), valves);
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
