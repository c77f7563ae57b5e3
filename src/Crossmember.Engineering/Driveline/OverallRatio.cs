using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>Overall ratio from engine to wheel in one gear and range.</summary>
/// <remarks>
/// Formula:  G = gear x transfer x axle
/// Valid:    gear trains in series; planetary hubs or portals multiply into the axle ratio
/// Source:   US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-14
/// Example:  2.798 x 2.43 x 5.38 = 36.58 (printed 36.7)
/// </remarks>
public sealed class OverallRatio() : Calculation<OverallRatio.Inputs, OverallRatio.Result>(new()
{
    Id = "driveline.overall-ratio",
    Version = 1,
    Title = "Overall ratio",
    Purpose = "How many turns of the engine make one turn of the wheels in a gear and range: what tractive effort and speed both follow from.",
    Formula = "G = gear ratio x transfer ratio x axle ratio",
    Validity = "Gear trains in series, none slipping. Hub reductions and portal gears multiply into the axle ratio; a converter multiplies torque beyond this.",
    Sources = ["US Army TM 9-8000, Principles of Automotive Vehicles, par. 29-14"],
    Trends = [new("gearRatio", "ratio", '+', 0.6, 7), new("transferRatio", "ratio", '+', 1, 5), new("axleRatio", "ratio", '+', 2.5, 6)],
    Examples =
    [
        new(new Dictionary<string, string> { ["gearRatio"] = "2.798", ["transferRatio"] = "2.43", ["axleRatio"] = "5.38" },
            new Dictionary<string, double> { ["ratio"] = 36.7 }, 0.004,
            "US Army TM 9-8000, par. 29-14: prints the product as 36.7 where it is 36.58, so 0.4 %", Provenance.Published),
        new(new Dictionary<string, string> { ["gearRatio"] = "5.15", ["transferRatio"] = "2.28", ["axleRatio"] = "4.11" },
            new Dictionary<string, double> { ["ratio"] = 48.26 }, 0.00011, "Product worked by hand to two decimals", Provenance.Derived),
    ],
})
{
    public sealed record Inputs(
        [Input("gearbox ratio in this gear", MoreThan = 0, Low = 0.5, High = 15, Measure = HowToMeasure.GearRatio)] Ratio GearRatio,
        [Input("transfer case ratio in this range", MoreThan = 0, Low = 0.7, High = 6, Default = 1, Measure = HowToMeasure.TransferRatio)] Ratio TransferRatio,
        [Input("axle ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasure.AxleRatio)] Ratio AxleRatio);

    public sealed record Result([Output("overall ratio")] Ratio Ratio);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double gear = x.GearRatio.DecimalFractions, transfer = x.TransferRatio.DecimalFractions, axle = x.AxleRatio.DecimalFractions;
        var G = gear * transfer * axle;
        w.Line("G", "gear x transfer x axle", $"{gear} x {transfer} x {axle}", G, "1");
        return new(Ratio.FromDecimalFractions(G));
    }
}
