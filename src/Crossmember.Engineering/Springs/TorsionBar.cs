using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>Rate at the end of the arm and stress of a torsion bar.</summary>
/// <remarks>
/// Formula:  kt = pi d^4 G / (32 L); F = T / (R cos a); k = kt / (R cos a)^2 - F tan a / (R cos a); stress 16 T / (pi d^3), T = F R cos a
/// Valid:    round solid bar, arm level or within 45 deg of it; a counts positive where the arm's end hangs below its pivot
/// Source:   torsion of a round bar and derivative of the arm's force, docs/derivations/springs.md
/// Example:  1000 mm, 25 mm, arm 400 mm level, 79.3 GPa -> 19.0 N/mm
/// </remarks>
public sealed class TorsionBar() : Calculation<TorsionBar.Inputs, TorsionBar.Result>(new()
{
    Id = "springs.torsion-bar",
    Version = 1,
    Title = "Torsion bar from its dimensions",
    Purpose = "The rate a torsion bar gives at the end of its arm, at the angle the arm really stands at: winding a bar up to lift a vehicle hangs the arm "
        + "and changes the rate.",
    Formula = "kt = pi d^4 G / (32 L); k = kt / (R cos a)^2 - F tan a / (R cos a); stress = 16 F R cos a / (pi d^3)",
    Validity = "Round solid bar twisted freely between its anchors, the load standing upright on the arm's end. The second term is geometry: the load's lever changes as "
        + "the arm swings. A hanging arm (positive angle) is softer, a raised one stiffer.",
    Sources = ["Torsion of a round bar, derivative of the force at the arm's end, derived (docs/derivations/springs.md)"],
    Checks =
    [
        new("arm", null, "Does the arm carry at this angle?"),
        new("stress", Sense.AtMost, "Is the stress in the bar within what its maker allows?", "stressLimit"),
    ],
    Trends =
    [
        new("barLength", "rate", '-', 700, 1500), new("barDiameter", "rate", '+', 20, 35), new("armLength", "rate", '-', 250, 500), new("armAngle", "rate", '-', -5, 12),
        new("load", "rate", '-', 100, 450), new("shearModulus", "rate", '+', 75, 82),
    ],
    NoTrends = [new("stressLimit", "only compared with the result")],
    Examples =
    [
        new(new Dictionary<string, string> { ["barLength"] = "1000 mm", ["barDiameter"] = "25 mm", ["armLength"] = "400 mm", ["armAngle"] = "15 deg", ["load"] = "400 kg" },
            new Dictionary<string, double> { ["rate"] = 17.65, ["stress"] = 494.0 }, 0.0005,
            "19.007 / cos^2 15 - 3.9227 x tan 15 / (0.4 x cos 15) = 20.372 - 2.720 N/mm, by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["barLength"] = "1000 mm", ["barDiameter"] = "25 mm", ["armLength"] = "400 mm", ["armAngle"] = "0 deg", ["load"] = "400 kg" },
            new Dictionary<string, double> { ["rate"] = 19.007, ["stress"] = 511.4, ["twist"] = 29.56 }, 0.0005,
            "kt = pi 25^4 x 79300 / (32 x 1000) = 3.0411e6 N mm/rad over 400^2; T = 3922.7 x 400 N mm; by hand", Provenance.Derived),
    ],
    Cautions = [StoredEnergy, "Never let torsion bars change sides or get nicked: they are pre-set for one direction, and a scratch starts a crack.", Stops, Qualified],
})
{
    public const string HowLength = "tape between the splines or hexagons, the part that twists", HowDiameter = "caliper the bar in the middle",
        HowArm = "tape from the pivot's center to where the load stands on the arm",
        HowAngle = "put an angle finder on the arm's center line with the weight on the wheels: 0 is level, positive hangs down";

    private const double Steepest = 80;

    public sealed record Inputs(
        [Input("length of the bar that twists", "mm", MoreThan = 0, Low = 300, High = 2500, Measure = HowLength)] Length BarLength,
        [Input("diameter of the bar", "mm", MoreThan = 0, Low = 10, High = 60, Measure = HowDiameter)] Length BarDiameter,
        [Input("length of the arm", "mm", MoreThan = 0, Low = 100, High = 800, Measure = HowArm)] Length ArmLength,
        [Input("angle of the arm under this load, positive hanging down", "deg", AtLeast = -89, Low = -45, High = 45, Measure = HowAngle)] Angle ArmAngle,
        [Input("what the arm's end carries", "kg", AtLeast = 0, High = 3000, Measure = SpringLoads)] UnitsNet.Mass Load,
        [Input("shear modulus", "GPa", MoreThan = 0, Low = 70, High = 85, Default = 79.3, Measure = HowToMeasureSprings.ShearModulus)] Pressure ShearModulus,
        [Input("shear stress that the bar may carry", "MPa", MoreThan = 0, Low = 200, High = 1500, Measure = HowToMeasureSprings.StressLimit)] Pressure? StressLimit);

    public sealed record Result(
        [Output("rate at the arm's end", "N/mm")] ForcePerLength? Rate,
        [Output("rate of the bar", "N m/deg")] RotationalStiffness BarRate,
        [Output("twist of the bar under this load", "deg")] Angle? Twist,
        [Output("shear stress under this load", "MPa")] Pressure? Stress);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double L = x.BarLength.Meters, d = x.BarDiameter.Meters, R = x.ArmLength.Meters, a = x.ArmAngle.Radians, F = x.Load.Kilograms * Gravity; // m, m, m, rad, N
        var kt = Math.PI * Math.Pow(d, 4) * x.ShearModulus.Pascals / (32 * L); // N m/rad
        w.Line("kt", "pi d^4 G / (32 L)", $"pi x {1000 * d}^4 x {x.ShearModulus.Megapascals} / (32 x {1000 * L})", kt, "N m/rad");
        var bar = RotationalStiffness.FromNewtonMetersPerRadian(kt);
        if (Math.Abs(x.ArmAngle.Degrees) > Steepest)
        {
            w.Answer("arm", Verdict.Fail, $"An arm at {x.ArmAngle.Degrees:0} deg stands nearly upright and cannot carry: measure its angle from level.", x.ArmAngle.Degrees, "deg");
            return new(null, bar, null, null);
        }
        double lever = R * Math.Cos(a), T = F * lever, k = (kt / (lever * lever)) - (F * Math.Tan(a) / lever); // m, N m, N/m
        w.Line("T", "F R cos a", $"{F} x {R} x cos {x.ArmAngle.Degrees}", T, "N m");
        w.Line("k", "kt / (R cos a)^2 - F tan a / (R cos a)", $"{kt} / {lever}^2 - {F} x tan {x.ArmAngle.Degrees} / {lever}", k / 1000, "N/mm");
        var mega = 16 * T / (Math.PI * d * d * d) / 1e6; // MPa
        w.Line("stress", "16 T / (pi d^3)", $"16 x {T * 1000} / (pi x {1000 * d}^3)", mega, "MPa");
        if (x.StressLimit is { } limit)
            w.AtMost("stress", mega, limit.Megapascals, "MPa", $"{x.Load.Kilograms:0} kg on the arm stresses the bar to {mega:0} MPa; {limit.Megapascals:0} MPa are allowed.",
                "bar maker's limit, as stated", watch: 0.9 * limit.Megapascals);
        var carries = k > 0;
        w.Answer("arm", carries ? Verdict.Pass : Verdict.Fail, carries
            ? $"The arm stands at {x.ArmAngle.Degrees:0} deg; the bar is twisted {T / kt * 180 / Math.PI:0} deg."
            : "At this angle the load gains more lever than the bar gains force: the arm would fall through. Measure load, angle and arm again.", x.ArmAngle.Degrees, "deg");
        return new(carries ? Rate(k) : null, bar, Angle.FromRadians(T / kt), Pascals(mega * 1e6));
    }
}
