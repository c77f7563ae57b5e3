using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Driveline;

/// <summary>Shear stress in the tube of a propeller shaft.</summary>
/// <remarks>
/// Formula:  tau = 16 T D / (pi (D^4 - d^4)), d = D - 2 wall
/// Valid:    elastic, plain tube; welds and a tube so thin that it wrinkles are not counted
/// Source:   torsion of a round tube (Shigley, from memory)
/// Example:  76.2 mm, wall 2.1 mm, 3294 N m -> 186.8 MPa
/// </remarks>
public sealed class PropshaftShear() : Calculation<PropshaftShear.Inputs, PropshaftShear.Result>(new()
{
    Id = "driveline.propshaft-shear",
    Version = 1,
    Title = "Propeller shaft tube stress",
    Purpose = "How hard the tube of a propeller shaft is twisted: whether a tube at hand is stout enough for a shaft made here.",
    Formula = "tau = 16 T D / (pi (D^4 - d^4)), d = D - 2 x wall",
    Validity = "Plain round tube in steady torsion. Welds and their soft zone are not counted; a tube with a diameter of more than 50 walls may "
        + "wrinkle before it yields.",
    Sources = ["Shigley, Mechanical Engineering Design: torsion of round tubes, from memory", "50 walls: common practice, no source"],
    Checks = [new("shear", Sense.AtMost, "Does the tube stand the torque?", "shearStrength")],
    Trends = [new("torque", "shearStress", '+', 100, 5000), new("tubeDiameter", "shearStress", '-', 2, 4), new("tubeWall", "shearStress", '-', 0.065, 0.25)],
    NoTrends = [new("shearStrength", "only compared with the result")],
    Examples =
    [
        new(new Dictionary<string, string> { ["torque"] = "3294 N m", ["tubeDiameter"] = "76.2 mm", ["tubeWall"] = "2.1 mm" },
            new Dictionary<string, double> { ["shearStress"] = 186.8 / 6.894757 }, 0.0005,
            "16 x 3294 x 0.0762 / (pi (0.0762^4 - 0.0720^4)) = 186.8 MPa by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "A propeller shaft made here is to be welded by somebody qualified, straightened and balanced by a driveline shop: at road speed a bad one comes apart.",
    ],
})
{
    public sealed record Inputs(
        [Input("torque in the propeller shaft", "lbf ft", AtLeast = 0, Measure = "run driveline.propshaft-torque for this axle")] Torque Torque,
        [Input("outside diameter of the tube", "in", MoreThan = 0, Low = 1, High = 6, Measure = HowToMeasureShafts.TubeDiameter)] Length TubeDiameter,
        [Input("wall of the tube", "in", MoreThan = 0, Low = 0.049, High = 0.5, Measure = HowToMeasureShafts.TubeWall)] Length TubeWall,
        [Input("shear strength of the tube", "ksi", MoreThan = 0, Measure = HowToMeasureShafts.ShearStrength)] Pressure? ShearStrength);

    public sealed record Result([Output("shear stress in the tube", "ksi")] Pressure ShearStress);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        double T = x.Torque.NewtonMeters, D = x.TubeDiameter.Meters, wall = x.TubeWall.Meters, d = D - (2 * wall); // N m, m
        if (d < 0)
        {
            w.Caution("The wall is more than half the diameter: there is no such tube. Measure both again.");
            return null;
        }
        if (D > 50 * wall) w.Caution($"The diameter is {D / wall:0} walls: so thin a tube may wrinkle before it yields.");
        var tau = RoundShaft.ShearStress(T, D, d); // Pa
        w.Line("d", "D - 2 wall", $"{D} - 2 x {wall}", d, "m");
        w.Line("tau", "16 T D / (pi (D^4 - d^4))", $"16 x {T} x {D} / (pi x ({D}^4 - {d}^4))", tau / 1e6, "MPa");
        var stress = Pressure.FromPascals(tau);
        if (x.ShearStrength is { } strength)
            w.AtMost("shear", stress.KilopoundsForcePerSquareInch, strength.KilopoundsForcePerSquareInch, "ksi",
                $"The tube is twisted to {stress.KilopoundsForcePerSquareInch:0.#} ksi; it stands {strength.KilopoundsForcePerSquareInch:0.#} ksi.",
                "the maker's strength");
        return new(stress);
    }
}
