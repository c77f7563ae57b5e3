using Crossmember.Engineering.Brakes.Chain;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Balance;

/// <summary>Makes the parts of the chain out of quantities at the door.</summary>
internal static class Given
{
    public static AxleForce Axle(Force atReference, Pressure threshold) => new(atReference.Newtons / AxleForce.ReferencePressure, threshold.Pascals);

    /// <param name="rearShare">Pressure of the rear circuit over that of the front: forces are then told over the front's.</param>
    public static Rig Rig(in AxleForce front, in AxleForce rear, in Valves valves, Ratio rearShare) => new Rig(front, rear, valves).RearSeen(rearShare.DecimalFractions);

    /// <summary>Null where there is a valve and it is not known where it begins, or how it goes on.</summary>
    public static Valves? Valves(string kind, Pressure? knee, Ratio? slope, Pressure metering) =>
        kind == HowToMeasureBalance.NoValve ? Chain.Valves.None with { Metering = metering.Pascals }
        : knee is { } k && slope is { } s ? new(k.Pascals, s.DecimalFractions, metering.Pascals) : null;

    /// <summary>Null where the center of gravity lies behind the rear axle: the front would be off the ground.</summary>
    public static Loading? Loading(UnitsNet.Mass total, Length centerX, Length height, Length wheelbase) => centerX >= wheelbase ? null
        : new(total.Kilograms * Chain.Loading.Gravity, wheelbase.Meters, centerX.Meters, height.Meters);
}
