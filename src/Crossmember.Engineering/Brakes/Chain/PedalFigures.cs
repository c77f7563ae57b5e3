using UnitsNet;

namespace Crossmember.Engineering.Brakes.Chain;

/// <summary>Makes the pedal's line out of the six figures that a sheet carries.</summary>
internal static class PedalFigures
{
    /// <summary>Null where a figure is not known.</summary>
    public static PedalLine? Line(Force? cutIn, Pressure? jumpIn, Force? knee, Pressure? kneePressure, Pressure? plain, Pressure? deadLoss) =>
        cutIn is { } c && jumpIn is { } j && knee is { } k && kneePressure is { } kp && plain is { } p && deadLoss is { } d
            ? new(p.Pascals / PedalLine.ReferenceForce, c.Newtons, j.Pascals, k.Newtons, kp.Pascals, d.Pascals) : null;
}
