using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Line pressure at a pedal force.</summary>
/// <remarks>
/// Formula:  p = (F i eta + B) / A, A = pi d^2 / 4 (F and B N, d m, p Pa)
/// Valid:    one bore, pressed slowly; B is what a booster adds on the rod at this force, less where its springs take something
/// Source:   statics
/// Example:  80 lb on 6.5 and 1 in: 662 psi
/// </remarks>
public sealed class LinePressure() : Calculation<LinePressure.Inputs, LinePressure.Result>(new()
{
    Id = "brakes.line-pressure",
    Version = 1,
    Title = "Line pressure at a pedal force",
    Purpose = "What a foot makes in the lines: the number to read on a gauge at a bleeder.",
    Formula = "p = (F i eta + B) / (pi d^2 / 4)",
    Validity = "Pressed slowly, one bore. eta is the whole loss between pad and fluid: in a sheet it holds the linkage and the seals of the master cylinder, so neither is taken twice, "
        + "and B is what arrives of the booster at the piston; below the booster's cut-in it is negative, since its springs hold the piston back. "
        + "With two cylinders on a bar d is the one bore that would give the front circuit's pressure.",
    Sources = ["Statics of lever and piston, derived"],
    Trends =
    [
        new("pedalForce", "pressure", '+', 50, 1500), new("pedalRatio", "pressure", '+', 2.5, 8), new("pedalEfficiency", "pressure", '+', 0.5, 1), new("masterBore", "pressure", '-', 12, 40),
        new("boosterForce", "pressure", '+', 0, 5000),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["pedalForce"] = "80 lbf", ["pedalRatio"] = "6.5", ["masterBore"] = "1 in" },
            new Dictionary<string, double> { ["pressure"] = 4.565 }, 0.0002, "520 lb on 0.7854 in2 is 662.1 psi, by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["pedalForce"] = "300 N", ["pedalRatio"] = "4.2", ["pedalEfficiency"] = "0.95", ["boosterForce"] = "2660 N", ["masterBore"] = "25.4 mm" },
            new Dictionary<string, double> { ["pressure"] = 7.612 }, 0.0002, "(300 x 3.99 + 2660) / 506.71 mm2, by hand", Provenance.Derived),
    ],
    Cautions = ["Fluid under pressure cuts and blinds: shield the joint, keep face and hands away, never test lines with compressed air."],
})
{
    public sealed record Inputs(
        [Input("pedal force", "N", AtLeast = 0, High = 2000, Measure = HowToMeasurePedal.Force)] Force PedalForce,
        [Input("pedal ratio", MoreThan = 0, Low = 2, High = 10, Measure = HowToMeasurePedal.Ratio)] Ratio PedalRatio,
        [Input("efficiency from the pad to the fluid", MoreThan = 0, Low = 0.3, High = 1, Default = 1, Measure = HowToMeasurePedal.Efficiency)] Ratio PedalEfficiency,
        [Input("what the booster adds at the piston", "N", Default = 0, Measure = HowToMeasurePedal.BoosterCurve)] Force BoosterForce,
        [Input("bore of the master cylinder", "mm", MoreThan = 0, Low = 10, High = 60, Measure = HowToMeasurePedal.MasterBore)] Length MasterBore);

    public sealed record Result([Output("line pressure", "MPa")] Pressure Pressure);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double F = x.PedalForce.Newtons, i = x.PedalRatio.DecimalFractions, eta = x.PedalEfficiency.DecimalFractions, B = x.BoosterForce.Newtons, d = x.MasterBore.Meters;
        var A = MasterCylinder.AreaOf(d); // m2
        var p = Math.Max(0, ((F * i * eta) + B) / A); // Pa; a rod does not pull
        w.Line("A", "pi d^2 / 4", $"pi x {d * 1000}^2 / 4", A * 1e6, "mm2");
        w.Line("p", "(F i eta + B) / A", $"({F} x {i} x {eta} + {B}) / {A * 1e6}", p / 1e6, "MPa");
        return new(Pressure.FromPascals(p));
    }
}
