using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Pedal;

/// <summary>Fluid that one wheel's brake takes: to close its clearances, and in all at 1000 psi.</summary>
/// <remarks>
/// Formula:  disc V = A (2 c + k), A all pistons on one side, c clearance of each pad, k knock-back; drum V = pistons Aw s; at 1000 psi s grows by what pads, caliper or shoes and drum give
/// Valid:    a sliding caliper moves its pistons by both clearances; a fixed one moves twice the pistons by one each: the same fluid
/// Source:   geometry, docs/derivations/brake-pedal.md; clearances and give: common practice, no source
/// Example:  2 pistons of 48 mm, 0.45 mm in all: 1.629 cm3
/// </remarks>
public sealed class WheelVolume() : Calculation<WheelVolume.Inputs, WheelVolume.Result>(new()
{
    Id = "brakes.wheel-volume",
    Version = 1,
    Title = "Fluid taken by a wheel's brake",
    Purpose = "How much of the pedal's way goes into closing clearances, and how much into what gives under pressure.",
    Formula = "disc: V = n pi d^2 / 4 (2 c + k); drum: V = pistons pi d^2 / 4 s; at 1000 psi with the give of pads and caliper, or shoes and drum",
    Validity = "Adjusted brakes, warm. Clearance and give are rough where they were not measured (disc 0.10 mm each pad, 0.25 mm of give; drum 0.50 mm at the tip, 0.40 mm of give): "
        + "the pedal's way is good to a third then. Knock-back counts where it is stated.",
    Sources = ["Geometry of pistons, derived", "Clearances and give: common practice, no source"],
    Either = ["pistonDiameter", "pistons", "cylinderBore"],
    Trends =
    [
        new("pistonDiameter", "takeUp", '+', 25, 70), new("pistons", "takeUp", '+', 1, 4), new("padClearance", "takeUp", '+', 0.02, 0.4), new("knockBack", "takeUp", '+', 0.1, 1),
        new("give", "full", '+', 0.05, 0.9), new("cylinderBore", "takeUp", '+', 15, 40), new("cylinders", "takeUp", '+', 1, 2), new("shoeClearance", "takeUp", '+', 0.2, 2),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["kind"] = "disc", ["pistonDiameter"] = "48 mm", ["pistons"] = "2", ["padClearance"] = "0.1 mm", ["give"] = "0.25 mm" },
            new Dictionary<string, double> { ["takeUp"] = 0.7238, ["full"] = 1.6286 }, 0.0002, "3619.1 mm2 by 0.20 and 0.45 mm, by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["kind"] = "drum", ["cylinderBore"] = "25.4 mm", ["cylinders"] = "1", ["shoeClearance"] = "0.5 mm", ["give"] = "0.4 mm" },
            new Dictionary<string, double> { ["takeUp"] = 0.5067, ["full"] = 0.9121 }, 0.0002, "Two pistons of 506.71 mm2 by 0.5 and 0.9 mm, by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["kind"] = "disc", ["pistonDiameter"] = "48 mm", ["pistons"] = "2", ["padClearance"] = "0.1 mm", ["give"] = "0.25 mm", ["knockBack"] = "0.4 mm" },
            new Dictionary<string, double> { ["takeUp"] = 2.1715, ["knockBackVolume"] = 1.4476 }, 0.0002, "3619.1 mm2 by 0.60 and 0.40 mm, by hand", Provenance.Derived),
    ],
    Cautions = ["A long pedal that comes up with pumping is clearance, knock-back or worn shoes; a springy one is air or hoses. Neither goes on the road."],
})
{
    private const double PadClearance = 0.10e-3, DiscGive = 0.25e-3, ShoeClearance = 0.50e-3, DrumGive = 0.40e-3; // m

    public sealed record Inputs(
        [Input("kind of brake", OneOf = ["disc", "drum"], Measure = "look at it")] string Kind,
        [Input("diameter of a caliper piston", "mm", MoreThan = 0, Low = 15, High = 90, Measure = "calipers across the piston's rim, or read the casting")] Length? PistonDiameter,
        [Input("pistons on one side of the disc", MoreThan = 0, Low = 1, High = 4, Measure = "count them from the inner side only")] Ratio? Pistons,
        [Input("clearance of each pad; 0.10 mm where nothing is said", "mm", AtLeast = 0, High = 0.5, Measure = "feeler gauge between pad and disc after the pedal was let go")] Length? PadClearance,
        [Input("gap that axial float or runout knocks open, both pads together; none where nothing is said", "mm", AtLeast = 0, High = 3,
            Measure = "drive over rough ground, stop without the brake and feel the gaps, or take hub float and runout on a dial")] Length? KnockBack,
        [Input("bore of a wheel cylinder", "mm", MoreThan = 0, Low = 12, High = 50, Measure = "read it off the casting")] Length? CylinderBore,
        [Input("wheel cylinders of this wheel; one where nothing is said", MoreThan = 0, Low = 1, High = 2, Measure = "count them")] Ratio? Cylinders,
        [Input("kind of drum brake", OneOf = ["leading-trailing", "two-leading", "duo-servo"])] string? DrumKind,
        [Input("way of a shoe's tip to the drum; 0.50 mm where nothing is said", "mm", AtLeast = 0, High = 3,
            Measure = "turn the adjuster until the wheel drags, back it off as you always do, and measure at the tip")] Length? ShoeClearance,
        [Input("give at 1000 psi: a piston's further way; 0.25 mm of a disc and 0.40 mm of a drum where nothing is said", "mm", AtLeast = 0, High = 1,
            Measure = "dial gauge on the piston or shoe while somebody presses to 1000 psi on a gauge")] Length? Give);

    public sealed record Result(
        [Output("fluid to close the clearances", "cm3")] Volume? TakeUp,
        [Output("fluid in all at 1000 psi", "cm3")] Volume? Full,
        [Output("share of it that knock-back takes", "cm3")] Volume? KnockBackVolume);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        if (x.Kind == "disc")
        {
            if (x.PistonDiameter is not { } d || x.Pistons is not { } n) return new(null, null, null);
            double A = n.DecimalFractions * MasterCylinder.AreaOf(d.Meters), c = x.PadClearance?.Meters ?? PadClearance, k = x.KnockBack?.Meters ?? 0, g = x.Give?.Meters ?? DiscGive;
            w.Line("A", "n pi d^2 / 4", $"{n.DecimalFractions} x pi x {d.Millimeters}^2 / 4", A * 1e6, "mm2");
            w.Line("V", "A (2 c + k)", $"{A * 1e6} x (2 x {c * 1000} + {k * 1000})", A * ((2 * c) + k) * 1e6, "cm3");
            w.Line("V full", "V + A give", $"V + {A * 1e6} x {g * 1000}", A * ((2 * c) + k + g) * 1e6, "cm3");
            return new(Volume.FromCubicMeters(A * ((2 * c) + k)), Volume.FromCubicMeters(A * ((2 * c) + k + g)), x.KnockBack is null ? null : Volume.FromCubicMeters(A * k));
        }
        if (x.CylinderBore is not { } bore) return new(null, null, null);
        double cylinders = x.Cylinders?.DecimalFractions ?? 1, s = x.ShoeClearance?.Meters ?? ShoeClearance, give = x.Give?.Meters ?? DrumGive;
        // Two cylinders on a two-leading brake push one shoe each; any other cylinder pushes both ways.
        var pistons = x.DrumKind == "two-leading" && cylinders > 1 ? cylinders : 2 * cylinders;
        var area = pistons * MasterCylinder.AreaOf(bore.Meters);
        w.Line("A", "pistons pi d^2 / 4", $"{pistons} x pi x {bore.Millimeters}^2 / 4", area * 1e6, "mm2");
        w.Line("V", "A s", $"{area * 1e6} x {s * 1000}", area * s * 1e6, "cm3");
        w.Line("V full", "A (s + give)", $"{area * 1e6} x ({s * 1000} + {give * 1000})", area * (s + give) * 1e6, "cm3");
        return new(Volume.FromCubicMeters(area * s), Volume.FromCubicMeters(area * (s + give)), null);
    }
}
