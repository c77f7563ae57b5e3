using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Mass;

/// <summary>Mass, center of gravity in plan and diagonal load from four wheel scales.</summary>
/// <remarks>
/// Formula:  x = L (Wlr + Wrr) / W; y = [Tf (Wrf - Wlf) + Tr (Wrr - Wlr)] / (2 W), positive to the right; cross = (Wrf + Wlr) / W
/// Valid:    four scales in one level plane, brakes off, springs settled by rolling; the diagonal share needs scales level to a few millimetres
/// Source:   statics, docs/derivations/axle-and-wheel-load.md
/// Example:  545, 520, 560, 525 kg, 2560, 1460 and 1480 mm -> 2150 kg, 1291.9 mm, 20.5 mm left, cross 50.23 %
/// </remarks>
public sealed class CornerWeights() : Calculation<CornerWeights.Inputs, CornerWeights.Result>(new()
{
    Id = "mass.corner-weights",
    Version = 1,
    Title = "Four wheel scales",
    Purpose = "What the four scales say: how heavy, where the weight sits, and whether the frame or a spring stands crooked across the diagonal.",
    Formula = "x = L (Wlr + Wrr) / W; y = [Tf (Wrf - Wlf) + Tr (Wrr - Wlr)] / (2 W); cross = (Wrf + Wlr) / W",
    Validity = "Four scales in one level plane, brakes off, tires at pressure, rolled on so that springs and tires stand free of side load. "
        + "A scale 5 mm out of plane moves the diagonal by a few per cent and the sum not at all.",
    Sources = ["Statics, derived"],
    Checks =
    [
        new("all-wheels", Sense.AtLeast, "Does every wheel carry a share?"),
        new("cross", null, "Is the diagonal share near one half?"),
        new("sides", null, "Do left and right carry alike?"),
    ],
    Trends = [new("rearRight", "centerX", '+', 300, 900), new("rearLeft", "centerX", '+', 300, 900), new("frontRight", "centerY", '+', 300, 900), new("wheelbase", "centerX", '+', 2, 5)],
    NoTrends =
    [
        new("frontLeft", "raises the mass and moves the center of gravity to the front and to the left at once"),
        new("frontTrack", "widens whatever difference there is to its own side"), new("rearTrack", "widens whatever difference there is to its own side"),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["frontLeft"] = "545 kg", ["frontRight"] = "520 kg", ["rearLeft"] = "560 kg", ["rearRight"] = "525 kg",
                ["wheelbase"] = "2560 mm", ["frontTrack"] = "1460 mm", ["rearTrack"] = "1480 mm",
            },
            new Dictionary<string, double> { ["mass"] = 2150, ["centerX"] = 1291.9, ["centerY"] = -20.5, ["frontShare"] = 49.53, ["cross"] = 50.23 }, 0.002,
            "By hand to 0.1 mm and 0.01 %", Provenance.Derived),
    ],
    Cautions = ["Chock nothing hard against a wheel on a scale, and let nobody stand in front of the ramps while the vehicle rolls on."],
})
{
    private const double Crossed = 0.02, Even = 0.05;

    public sealed record Inputs(
        [Input("left front reading", "kg", AtLeast = 0, Measure = Reading)] UnitsNet.Mass FrontLeft,
        [Input("right front reading", "kg", AtLeast = 0, Measure = Reading)] UnitsNet.Mass FrontRight,
        [Input("left rear reading", "kg", AtLeast = 0, Measure = Reading)] UnitsNet.Mass RearLeft,
        [Input("right rear reading", "kg", AtLeast = 0, Measure = Reading)] UnitsNet.Mass RearRight,
        [Input("wheelbase", "m", MoreThan = 0, Low = 1.2, High = 8, Measure = AxleBalance.HowWheelbase)] Length Wheelbase,
        [Input("track of the front axle", "m", MoreThan = 0, Low = 0.8, High = 2.6, Measure = AxleBalance.HowTrack)] Length FrontTrack,
        [Input("track of the rear axle", "m", MoreThan = 0, Low = 0.8, High = 2.6, Measure = AxleBalance.HowTrack)] Length RearTrack);

    private const string Reading = "a scale under this wheel, all four in one level plane, brakes off";

    public sealed record Result(
        [Output("mass", "kg")] UnitsNet.Mass? Mass,
        [Output("center of gravity behind the front axle", "mm")] Length? CenterX,
        [Output("center of gravity to the right of the middle", "mm")] Length? CenterY,
        [Output("share of the front axle", "%")] Ratio? FrontShare,
        [Output("share of the diagonal right front and left rear", "%")] Ratio? Cross);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double lf = x.FrontLeft.Kilograms, rf = x.FrontRight.Kilograms, lr = x.RearLeft.Kilograms, rr = x.RearRight.Kilograms; // kg
        double L = x.Wheelbase.Meters, tf = x.FrontTrack.Meters, tr = x.RearTrack.Meters, W = lf + rf + lr + rr; // m, kg
        (string Name, double Kg)[] wheels = [("left front", lf), ("right front", rf), ("left rear", lr), ("right rear", rr)];
        var least = wheels.MinBy(s => s.Kg);
        // Below a twentieth of an even share a wheel is as good as hanging: no vehicle on four springs stands so on level scales.
        var hangs = least.Kg <= 0.05 * W / 4;
        w.AtLeast("all-wheels", least.Kg, 0.05 * W / 4, "kg", hangs
            ? $"The scale under the {least.Name} wheel reads {least.Kg:0} kg: the vehicle stands on three wheels, or that scale is off. Level the scales and read all four again."
            : $"The lightest wheel is the {least.Name} with {least.Kg:0} kg.", "common practice, no source");
        if (hangs) return new(W > 0 ? UnitsNet.Mass.FromKilograms(W) : null, null, null, null, null);
        double cx = L * (lr + rr) / W, cy = ((tf * (rf - lf)) + (tr * (rr - lr))) / (2 * W), cross = (rf + lr) / W;
        w.Line("W", "Wlf + Wrf + Wlr + Wrr", $"{lf} + {rf} + {lr} + {rr}", W, "kg");
        w.Line("x", "L (Wlr + Wrr) / W", $"{L} x ({lr} + {rr}) / {W}", cx * 1000, "mm");
        w.Line("y", "[Tf (Wrf - Wlf) + Tr (Wrr - Wlr)] / (2 W)", $"[{tf} x ({rf} - {lf}) + {tr} x ({rr} - {lr})] / (2 x {W})", cy * 1000, "mm");
        w.Line("cross", "(Wrf + Wlr) / W", $"({rf} + {lr}) / {W}", 100 * cross, "%");
        w.Answer("cross", Math.Abs(cross - 0.5) > Crossed ? Verdict.Caution : Verdict.Pass, Math.Abs(cross - 0.5) > Crossed
            ? $"The diagonal of right front and left rear carries {100 * cross:0.0} %: look for scales out of level, a tired spring, a twisted frame or a bound shackle."
            : $"The diagonal of right front and left rear carries {100 * cross:0.0} %.", 100 * cross, "%", "common practice, no source");
        var left = (lf + lr) / W;
        w.Answer("sides", Math.Abs(left - 0.5) > Even ? Verdict.Caution : Verdict.Pass,
            $"The left side carries {100 * left:0.0} %: the weight sits {1000 * Math.Abs(cy):0} mm {(cy < 0 ? "left" : "right")} of the middle.", 100 * left, "%", "common practice, no source");
        return new(UnitsNet.Mass.FromKilograms(W), Length.FromMeters(cx), Length.FromMeters(cy), Ratio.FromDecimalFractions((lf + rf) / W), Ratio.FromDecimalFractions(cross));
    }
}
