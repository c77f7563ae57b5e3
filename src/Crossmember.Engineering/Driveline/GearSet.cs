using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>All gears of all ranges, seen from the wheels.</summary>
internal static class GearSet
{
    public static IReadOnlyList<(string Gear, string Range, Gearing Gearing)> Gearings(this TopSpeed.Inputs x) =>
    [
        .. from range in x.TransferRatios.Items
           from gear in x.GearRatios.Items
           select (gear.Name, range.Name, Of(gear.Value, range.Value, x.AxleRatio, x.RollingRadius, x.Efficiency)),
    ];

    public static Gearing Of(Ratio gear, Ratio transfer, Ratio axle, Length rollingRadius, Ratio efficiency) =>
        new(gear.DecimalFractions * transfer.DecimalFractions * axle.DecimalFractions, rollingRadius.Meters, efficiency.DecimalFractions);

    public static Ratio Lowest(this Members<Ratio> ratios) => ratios.Items.MaxBy(r => r.Value.DecimalFractions).Value;

    public static Ratio Longest(this Members<Ratio> ratios) => ratios.Items.MinBy(r => r.Value.DecimalFractions).Value;
}
