using Crossmember.Engineering.Brakes.Chain;
using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Brakes.Wheels.HowToMeasureWheels;

namespace Crossmember.Engineering.Brakes.Wheels;

/// <summary>Braking torque of one wheel at 1000 psi over its threshold.</summary>
/// <remarks>
/// Formula:  disc T = C p n pi d^2 / 4 re, n pistons on one side, re = (ro + ri) / 2; drum T = C p pi d^2 / 4 r; p = 6.894757 MPa
/// Valid:    pads worn in; the factor counts both faces of a disc and both shoes of a drum, so that one side's pistons and one piston of a wheel cylinder are counted
/// Source:   statics
/// Example:  2 x 48 mm, mu 0.38, pads 200 to 300 mm -> 343.8 N m for each MPa, 2370 N m
/// </remarks>
public sealed class WheelTorque() : Calculation<WheelTorque.Inputs, WheelTorque.Result>(new()
{
    Id = "brakes.wheel-torque",
    Version = 1,
    Title = "Torque of a wheel brake",
    Purpose = "What one wheel brakes with, told at 1000 psi, so that discs and drums, bores and pads can be held against each other.",
    Formula = "disc T = C p n (pi d^2 / 4) (ro + ri) / 2; drum T = C p (pi d^2 / 4) r, at p = 1000 psi over the threshold",
    Validity = "Straight with pressure above the threshold. Disc: pistons of one side only, whatever the caliper, and worn-in pads; new pads act a little farther out. Drum: one piston of the cylinder, "
        + "since the factor counts both shoes; two cylinders with one piston each come to the same.",
    Sources = ["Statics, derived (docs/derivations/drum-brakes.md)", "No more than three pistons a side, under no more than a third of the pads' ring: common practice, no source"],
    Checks = [new("parts", null, "Can these readings be of one brake?")],
    Trends =
    [
        new("factor", "torque", '+', 0.4, 6), new("pistonDiameter", "torque", '+', 25, 70), new("padOuter", "torque", '+', 230, 300), new("padInner", "torque", '+', 100, 250),
        new("cylinderBore", "torque", '+', 12, 40), new("drumDiameter", "torque", '+', 150, 400),
    ],
    NoTrends = [new("pistons", "counted in wholes"), new("caliperBore", "only held against the piston"), new("rotorDiameter", "only held against the pads")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["kind"] = "disc", ["factor"] = "0.76", ["caliper"] = "sliding", ["pistons"] = "2", ["pistonDiameter"] = "48 mm", ["padOuter"] = "300 mm", ["padInner"] = "200 mm", ["rotorDiameter"] = "302 mm",
            },
            new Dictionary<string, double> { ["torque"] = 343.8 * 6.894757, ["effectiveRadius"] = 125, ["newRadius"] = 126.67 }, 0.0002,
            "2 x 0.38 x 3619.1 mm2 x 0.125 m = 343.8 N m for each MPa; radii of worn-in and new pads, by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["kind"] = "drum", ["factor"] = "2.3", ["cylinderBore"] = "25.4 mm", ["drumDiameter"] = "254 mm" },
            new Dictionary<string, double> { ["torque"] = 148.0 * 6.894757 }, 0.0005, "2.30 x 506.7 mm2 x 0.127 m = 148.0 N m for each MPa, by hand", Provenance.Derived),
    ],
    Cautions = [Qualified],
})
{
    /// <summary>A seal bridges no more than this between piston and bore, m. Common practice, no source.</summary>
    private const double WidestGap = 0.001;

    /// <summary>Pistons on one side, and share of the pads' ring under them: a pad spans a third of it at most. Common practice, no source.</summary>
    private const double MostPistons = 3, MostShare = 1 / 3.0;

    public sealed record Inputs(
        [Input("disc or drum", OneOf = [Disc, DrumBrake], Measure = HowToMeasureWheels.Kind)] string Kind,
        [Input("brake factor", MoreThan = 0, High = 12, Measure = HowToMeasureWheels.Factor)] Ratio Factor,
        [Input("caliper: sliding, or fixed with pistons on both sides", OneOf = ["sliding", "fixed"], Measure = "look whether pistons press from both sides")] string? Caliper,
        [Input("pistons on one side of the disc", AtLeast = 1, High = 4, Measure = HowToMeasureWheels.Pistons)] Ratio? Pistons,
        [Input("diameter of a caliper's piston", "mm", MoreThan = 0, Low = 20, High = 90, Measure = HowToMeasureWheels.PistonDiameter)] Length? PistonDiameter,
        [Input("bore of the caliper", "mm", MoreThan = 0, Measure = "caliper it with the piston out")] Length? CaliperBore,
        [Input("outer diameter of the rotor", "mm", MoreThan = 0, Measure = "caliper or rule it")] Length? RotorDiameter,
        [Input("outer diameter of the ring that the pads sweep", "mm", MoreThan = 0, Measure = HowToMeasureWheels.PadOuter)] Length? PadOuter,
        [Input("inner diameter of that ring", "mm", MoreThan = 0, Measure = HowToMeasureWheels.PadInner)] Length? PadInner,
        [Input("inner diameter of the drum", "mm", MoreThan = 0, Low = 100, High = 500, Measure = HowToMeasureWheels.DrumDiameter)] Length? DrumDiameter,
        [Input("bore of the wheel cylinder", "mm", MoreThan = 0, Low = 10, High = 60, Measure = HowToMeasureWheels.CylinderBore)] Length? CylinderBore);

    public sealed record Result(
        [Output("torque of the wheel at 1000 psi over the threshold", "N m")] Torque? Torque,
        [Output("radius at which worn-in pads act", "mm")] Length? EffectiveRadius,
        [Output("radius at which new pads act", "mm")] Length? NewRadius);

    protected override Result Solve(Inputs x, Worksheet w) => x.Kind == Disc ? OfDisc(x, w) : OfDrum(x, w);

    private static Result OfDisc(Inputs x, Worksheet w)
    {
        if (x.Pistons is null) w.Lacks("pistons");
        if (x.PistonDiameter is null) w.Lacks("pistonDiameter");
        if (x.PadOuter is null) w.Lacks("padOuter");
        if (x.PadInner is null) w.Lacks("padInner");
        if (w.Lacking.Count > 0) return new(null, null, null);
        double n = x.Pistons!.Value.DecimalFractions, d = x.PistonDiameter!.Value.Meters, C = x.Factor.DecimalFractions;
        var ring = new PadRing(x.PadOuter!.Value.Meters / 2, x.PadInner!.Value.Meters / 2); // m
        var (verdict, text) = Discs(x, n, d, ring);
        w.Answer("parts", verdict, text);
        if (verdict == Verdict.Fail) return new(null, null, null);
        double A = n * Math.PI * d * d / 4, T = C * AxleForce.ReferencePressure * A * ring.WornIn; // m2, N m
        w.Line("A", "n pi d^2 / 4, one side", $"{n} x pi x {1000 * d}^2 / 4", 1e6 * A, "mm2");
        w.Line("re", "(ro + ri) / 2, worn in", $"({1000 * ring.Outer} + {1000 * ring.Inner}) / 2", 1000 * ring.WornIn, "mm");
        w.Line("re new", "2/3 (ro^3 - ri^3) / (ro^2 - ri^2)", $"{1000 * ring.Outer}, {1000 * ring.Inner}", 1000 * ring.New, "mm");
        w.Line("T", "C p A re", $"{C} x 6.894757e6 x {A} x {ring.WornIn}", T, "N m");
        return new(Torque.FromNewtonMeters(T), Length.FromMeters(ring.WornIn), Length.FromMeters(ring.New));
    }

    private static (Verdict Verdict, string Text) Discs(Inputs x, double n, double d, in PadRing ring)
    {
        if (n != Math.Floor(n)) return (Verdict.Fail, $"{n:0.##} pistons on one side cannot be: count them again.");
        if (ring.Inner >= ring.Outer) return (Verdict.Fail, $"The pads' ring would be {2000 * ring.Inner:0.#} mm inside and {2000 * ring.Outer:0.#} mm outside: rule both edges of a pad again.");
        if (x.RotorDiameter is { } rotor && 2 * ring.Outer > rotor.Meters)
            return (Verdict.Fail, $"The pads reach out to {2000 * ring.Outer:0.#} mm on a rotor of {rotor.Millimeters:0.#} mm: they hang over its edge. Wrong rotor, wrong pads, or a reading is off.");
        if (x.CaliperBore is { } bore && d > bore.Meters) return (Verdict.Fail, $"A piston of {1000 * d:0.##} mm does not go into a bore of {bore.Millimeters:0.##} mm: caliper both again.");
        if (x.CaliperBore is { } wide && wide.Meters - d > WidestGap)
            return (Verdict.Caution, $"A piston of {1000 * d:0.##} mm in a bore of {wide.Millimeters:0.##} mm: no seal bridges that. Caliper both again (common practice, no source).");
        var share = n * d * d / 4 / ((ring.Outer * ring.Outer) - (ring.Inner * ring.Inner));
        if (n > MostPistons || share > MostShare)
            return (Verdict.Caution, $"{n:0} of {1000 * d:0.#} mm on one side {(share > MostShare ? $"would cover {100 * share:0} % of the ring that the pads sweep" : "is more than calipers have")}: were both sides counted? "
                + "Count the pistons of one side only, and caliper one again (common practice, no source).");
        var all = x.Caliper switch { "fixed" => $", {2 * n:0} in all in a fixed caliper", "sliding" => " in a sliding caliper", _ => "" };
        var over = x.RotorDiameter is null ? " Whether they reach past the rotor is not known: rule it." : "";
        return (Verdict.Pass, $"{n:0} of {1000 * d:0.#} mm on one side{all}; the pads act at {1000 * ring.WornIn:0.#} mm.{over}");
    }

    private static Result OfDrum(Inputs x, Worksheet w)
    {
        if (x.DrumDiameter is null) w.Lacks("drumDiameter");
        if (x.CylinderBore is null) w.Lacks("cylinderBore");
        if (w.Lacking.Count > 0) return new(null, null, null);
        double r = x.DrumDiameter!.Value.Meters / 2, d = x.CylinderBore!.Value.Meters, C = x.Factor.DecimalFractions;
        if (d >= r)
        {
            w.Answer("parts", Verdict.Fail, $"A wheel cylinder of {1000 * d:0.#} mm bore does not go between the shoes of a {2000 * r:0.#} mm drum: read both again.");
            return new(null, null, null);
        }
        double A = Math.PI * d * d / 4, T = C * AxleForce.ReferencePressure * A * r; // m2, N m
        w.Line("A", "pi d^2 / 4, one piston", $"pi x {1000 * d}^2 / 4", 1e6 * A, "mm2");
        w.Line("T", "C p A r", $"{C} x 6.894757e6 x {A} x {r}", T, "N m");
        w.Answer("parts", Verdict.Pass, $"A {1000 * d:0.#} mm cylinder in a {2000 * r:0.#} mm drum.");
        return new(Torque.FromNewtonMeters(T), null, null);
    }
}
