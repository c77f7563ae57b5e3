using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Two master cylinders on a bar: force and pressure of each circuit, and where the bearing must stand for a wanted share.</summary>
/// <remarks>
/// Formula:  Ff = F xr / (xf + xr), Fr = F xf / (xf + xr); p = F eta / A of each; wanted share s of the force in front: xf = (1 - s) (xf + xr)
/// Valid:    the bar stands square and moves freely in its bearing; both cylinders in their stroke
/// Source:   statics
/// Example:  3000 N, 30 and 34 mm, 19.05 and 22.225 mm: 1593.75 and 1406.25 N, 5.592 and 3.625 MPa
/// </remarks>
public sealed class BiasBar() : Calculation<BiasBar.Inputs, BiasBar.Result>(new()
{
    Id = "brakes.bias-bar",
    Version = 1,
    Title = "Two master cylinders on a bar",
    Purpose = "What each circuit gets of the pedal, and how far to move the bearing for another split of pressure.",
    Formula = "Ff = F xr / (xf + xr), Fr = F xf / (xf + xr), p = F eta / A",
    Validity = "The bar square to both push rods and free in its bearing. When a cylinder bottoms or the bar stands askew the split is another one: look at it with the pedal pressed hard.",
    Sources = ["Statics of a lever, derived"],
    Trends =
    [
        new("barForce", "frontPressure", '+', 100, 5000), new("frontArm", "frontPressure", '-', 15, 60), new("rearArm", "rearPressure", '-', 15, 60), new("frontBore", "frontPressure", '-', 14, 30),
        new("rearBore", "rearPressure", '-', 14, 30), new("efficiency", "frontPressure", '+', 0.7, 1), new("wantedFrontShare", "bearingShift", '+', 0.3, 0.8),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["barForce"] = "3000 N", ["frontArm"] = "30 mm", ["rearArm"] = "34 mm", ["frontBore"] = "19.05 mm", ["rearBore"] = "22.225 mm", ["efficiency"] = "1", ["wantedFrontShare"] = "0.7",
            },
            new Dictionary<string, double> { ["frontForce"] = 1593.75, ["rearForce"] = 1406.25, ["frontPressure"] = 5.592, ["rearPressure"] = 3.625, ["bearingShift"] = 6.421 }, 0.0005,
            "Lever of 64 mm by hand; 0.7 of the pressure in front: Ff / Fr = (0.7 / 0.3) x (19.05 / 22.225)^2 = 1.7143, xf = 23.579 mm", Provenance.Derived),
    ],
    Cautions = ["Set the bar so that the front wheels lock first on every road, and lock it there; a bar within the driver's reach is no place for guessing. Have the split tried by a qualified person on closed ground."],
})
{
    public sealed record Inputs(
        [Input("force on the bar", "N", AtLeast = 0, High = 10000, Measure = HowToMeasurePedal.Force)] Force BarForce,
        [Input("bearing to the front circuit's push rod", "mm", MoreThan = 0, Low = 5, High = 120, Measure = HowToMeasurePedal.BarArm)] Length FrontArm,
        [Input("bearing to the rear circuit's push rod", "mm", MoreThan = 0, Low = 5, High = 120, Measure = HowToMeasurePedal.BarArm)] Length RearArm,
        [Input("bore of the front cylinder", "mm", MoreThan = 0, Low = 10, High = 60, Measure = HowToMeasurePedal.TwinBore)] Length FrontBore,
        [Input("bore of the rear cylinder", "mm", MoreThan = 0, Low = 10, High = 60, Measure = HowToMeasurePedal.TwinBore)] Length RearBore,
        [Input("efficiency of the cylinders", MoreThan = 0, Low = 0.5, High = 1, Default = 0.97, Measure = HowToMeasurePedal.MasterEfficiency)] Ratio Efficiency,
        [Input("wanted front pressure as a share of the sum of both", MoreThan = 0, Low = 0.2, High = 0.9, Measure = "take it from the brake balance")] Ratio? WantedFrontShare);

    public sealed record Result(
        [Output("force on the front cylinder", "N")] Force FrontForce,
        [Output("force on the rear cylinder", "N")] Force RearForce,
        [Output("pressure of the front circuit", "MPa")] Pressure FrontPressure,
        [Output("pressure of the rear circuit", "MPa")] Pressure RearPressure,
        [Output("front pressure as a share of the sum of both")] Ratio? FrontShare,
        [Output("move the bearing toward the front circuit's rod by this for the wanted share", "mm")] Length? BearingShift);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double F = x.BarForce.Newtons, xf = x.FrontArm.Meters, xr = x.RearArm.Meters, eta = x.Efficiency.DecimalFractions;
        var bar = MasterCylinder.Of(MasterCylinder.Pair, null, null, x.FrontBore.Meters, x.RearBore.Meters, xf, xr)!.Value;
        double ff = F * bar.FrontShare, fr = F - ff, pf = ff * eta / bar.FrontArea, pr = fr * eta / bar.RearArea;
        w.Line("Ff", "F xr / (xf + xr)", $"{F} x {xr * 1000} / ({xf * 1000} + {xr * 1000})", ff, "N");
        w.Line("Fr", "F - Ff", $"{F} - {ff}", fr, "N");
        w.Line("pf", "Ff eta / Af", $"{ff} x {eta} / {bar.FrontArea * 1e6}", pf / 1e6, "MPa");
        w.Line("pr", "Fr eta / Ar", $"{fr} x {eta} / {bar.RearArea * 1e6}", pr / 1e6, "MPa");
        Length? shift = null;
        if (x.WantedFrontShare is { DecimalFractions: < 1 and var s })
        {
            var forces = s / (1 - s) * bar.FrontArea / bar.RearArea; // Ff / Fr
            var wanted = (xf + xr) / (1 + forces);
            w.Line("xf wanted", "(xf + xr) / (1 + s / (1 - s) Af / Ar)", $"{(xf + xr) * 1000} / (1 + {forces})", wanted * 1000, "mm");
            shift = Length.FromMeters(xf - wanted);
        }
        return new(Force.FromNewtons(ff), Force.FromNewtons(fr), Pressure.FromPascals(pf), Pressure.FromPascals(pr), pf + pr > 0 ? Ratio.FromDecimalFractions(pf / (pf + pr)) : null, shift);
    }
}
