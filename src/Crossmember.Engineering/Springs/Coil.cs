using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>Rate, solid length and stress of a coil spring from its dimensions.</summary>
/// <remarks>
/// Formula:  k = G d^4 / (8 D^3 Na), D = outside - d; shear stress Kw 8 F D / (pi d^3), Kw = (4C - 1)/(4C - 4) + 0.615/C, C = D/d
/// Valid:    round wire, one pitch, coils that do not touch before they all do; index C from 3 to 16
/// Source:   Shigley, Mechanical Engineering Design, chapter on mechanical springs, table of ends and first example, from memory
/// Example:  music wire 0.037 in, outside 7/16 in, 12.5 turns, closed, 11.85e6 psi -> 4.12 lbf/in
/// </remarks>
public sealed class Coil() : Calculation<Coil.Inputs, Coil.Result>(new()
{
    Id = "springs.coil",
    Version = 1,
    Title = "Coil spring from its dimensions",
    Purpose = "The rate of one coil spring from calipers and a count of turns, how much travel it has left before its coils touch, and what its wire is stressed to.",
    Formula = "k = G d^4 / (8 D^3 Na), D = outside diameter less wire; Na = turns less 2 (closed ends), less 1 (open, ground), or all (open); "
        + "stress = Kw 8 F D / (pi d^3), Kw = (4C - 1)/(4C - 4) + 0.615/C",
    Validity = "Round wire and one pitch all along: tapered and progressive coils have no one rate. Cut coils lose active turns and get stiffer. The diameter that counts is "
        + "that of the wire's center line, never the outside, and only the turns that are free to twist.",
    Sources =
    [
        "J. E. Shigley, Mechanical Engineering Design, mechanical springs: rate, ends, first example, from memory, to be checked in the book",
        "A. M. Wahl, Mechanical Springs: curvature factor, from memory, to be checked in the book",
    ],
    Checks =
    [
        new("dimensions", null, "Can these dimensions be of one spring?"),
        new("solid", Sense.AtLeast, "Is there travel left before the coils touch?", "freeLength", "loads", "axleLoads"),
        new("stress", Sense.AtMost, "Is the stress in the wire within what its maker allows?", "loads", "axleLoads", "stressLimit"),
    ],
    Trends =
    [
        new("wire", "rate", '+', 8, 20), new("outsideDiameter", "rate", '-', 80, 160), new("turns", "rate", '-', 5, 14), new("shearModulus", "rate", '+', 75, 82),
        new("freeLength", "travelLeft", '+', 350, 600), new("loads", "stress", '+', 50, 400),
    ],
    NoTrends =
    [
        new("stressLimit", "only compared with the result"), new("axleLoads", "another way to the loads"), new("unsprungMass", "taken off the loads on the axle"),
        new("motionRatio", "turns loads at the wheel into loads at the spring"),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["wire"] = "14 mm", ["outsideDiameter"] = "114 mm", ["turns"] = "9", ["ends"] = "closed and ground" },
            new Dictionary<string, double> { ["rate"] = 54.40, ["meanDiameter"] = 100, ["activeTurns"] = 7, ["solidLength"] = 126 }, 0.0005,
            "79300 x 14^4 / (8 x 100^3 x 7) by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["wire"] = "0.037 in", ["outsideDiameter"] = "7/16 in", ["turns"] = "12.5", ["ends"] = "closed", ["shearModulus"] = "11850 ksi" },
            new Dictionary<string, double> { ["rate"] = 0.7232, ["activeTurns"] = 10.5, ["solidLength"] = 12.69 }, 0.005,
            "Shigley, mechanical springs, first example, from memory: 4.13 lbf/in with D rounded to 0.400 in, solid length 0.500 in", Provenance.HandbookMemory),
        new(new Dictionary<string, string>
            {
                ["wire"] = "14 mm", ["outsideDiameter"] = "114 mm", ["turns"] = "9", ["ends"] = "closed and ground", ["freeLength"] = "400 mm", ["loads"] = """{"full":"300 kg"}""",
            },
            new Dictionary<string, double> { ["rate"] = 54.40, ["travelLeft"] = 219.9, ["stress"] = 329.9 }, 0.001,
            "G d^4 / (8 D^3 Na) = 79300 x 38416 / (8 x 1e6 x 7); 400 - 2942.0 / 54.40 - 126; Kw 1.2082 x 8 x 2942.0 x 100 / (pi x 2744); by hand", Provenance.Derived),
    ],
    Cautions = [StoredEnergy, Stops, "Never heat or cut a coil to lower a vehicle: heat takes the temper, and a short spring can fall out at droop.", Qualified],
})
{
    public const string HowWire = "caliper the wire where it is clean", HowOutside = "caliper over the coils in the middle of the spring",
        HowTurns = "count from wire end to wire end, quarters included", HowFree = "stand the spring free and tape it";

    public sealed record Inputs(
        [Input("wire diameter", "mm", MoreThan = 0, Low = 0.3, High = 30, Measure = HowWire)] Length Wire,
        [Input("outside diameter of the coils", "mm", MoreThan = 0, Low = 3, High = 300, Measure = HowOutside)] Length OutsideDiameter,
        [Input("total turns", MoreThan = 0, Low = 3, High = 30, Measure = HowTurns)] Ratio Turns,
        [Input("ends", OneOf = ["closed", "closed and ground", "open", "open and ground"], Measure = "look whether the last turn touches the next (closed) and is ground flat")] string Ends,
        [Input("shear modulus", "GPa", MoreThan = 0, Low = 70, High = 85, Default = 79.3, Measure = HowToMeasureSprings.ShearModulus)] Pressure ShearModulus,
        [Input("free length", "mm", MoreThan = 0, High = 1000, Measure = HowFree)] Length? FreeLength,
        [Input("what one spring carries, in each state of load", "kg", AtLeast = 0, High = 5000, Measure = SpringLoads)] Members<UnitsNet.Mass>? Loads,
        [Input("shear stress that the wire may carry", "MPa", MoreThan = 0, Low = 200, High = 1500, Measure = HowToMeasureSprings.StressLimit)] Pressure? StressLimit,
        [Input("load on its axle, in each state of load, where what the spring carries is not given", "kg", MoreThan = 0, High = 10000, Measure = AxleLoad)] Members<UnitsNet.Mass>? AxleLoads,
        [Input("mass of the unsprung parts of the axle", "kg", AtLeast = 0, High = 1500, Measure = HowToMeasureSprings.UnsprungMass)] UnitsNet.Mass? UnsprungMass,
        [Input("travel of the spring over travel of the wheel; without it 1, as on a solid axle", MoreThan = 0, Low = 0.3, High = 1.2, Measure = HowToMeasureSprings.MotionRatio)]
        Ratio? MotionRatio);

    public sealed record Result(
        [Output("mean diameter of the coils", "mm")] Length? MeanDiameter,
        [Output("active turns")] Ratio? ActiveTurns,
        [Output("rate of one spring; unknown where its coils touch under the load", "N/mm")] ForcePerLength? Rate,
        [Output("length with all coils touching", "mm")] Length? SolidLength,
        [Output("travel left under the heaviest load until the coils touch", "mm")] Length? TravelLeft,
        [Output("shear stress under the heaviest load, curvature counted", "MPa")] Pressure? Stress);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double d = x.Wire.Meters, D = x.OutsideDiameter.Meters - d, Nt = x.Turns.DecimalFractions; // m
        bool closed = x.Ends.StartsWith("closed", StringComparison.Ordinal), ground = x.Ends.EndsWith("ground", StringComparison.Ordinal);
        double Na = Nt - (closed ? 2 : ground ? 1 : 0), solid = d * (ground ? Nt : Nt + 1); // -, m
        var wrong = D <= d ? $"Wire of {1000 * d:0.##} mm cannot be wound to {x.OutsideDiameter.Millimeters:0.##} mm outside: caliper both again."
            : Na <= 0 ? $"{Nt:0.##} turns with these ends leave none to work: count them again."
            : x.FreeLength?.Meters <= solid ? $"Free length {x.FreeLength!.Value.Millimeters:0} mm is no more than the {1000 * solid:0} mm of its coils laid together: tape and count again." : null;
        w.Answer("dimensions", wrong is null ? Verdict.Pass : Verdict.Fail, wrong ?? $"Mean diameter {1000 * D:0.#} mm, {Na:0.##} turns at work, solid at {1000 * solid:0} mm.");
        if (wrong is not null) return new(null, null, null, null, null, null);
        double k = x.ShearModulus.Pascals * Math.Pow(d, 4) / (8 * Math.Pow(D, 3) * Na), C = D / d; // N/m, -
        w.Line("Na", closed ? "turns - 2" : ground ? "turns - 1" : "turns", $"{Nt}", Na, "1");
        w.Line("k", "G d^4 / (8 D^3 Na)", $"{x.ShearModulus.Megapascals} x {1000 * d}^4 / (8 x {1000 * D}^3 x {Na})", k / 1000, "N/mm");
        if (C is < 3 or > 16) w.Caution($"Mean diameter over wire is {C:0.#}: outside 3 to 16 the formula strays and such springs are hard to wind.");
        if (Loaded(x) is not { } loads) return new(Meters(D), Ratio.FromDecimalFractions(Na), Rate(k), Meters(solid), null, null);
        var (name, load) = loads.Items.MaxBy(l => l.Value.Kilograms);
        double m = load.Kilograms, F = m * Gravity; // kg, N
        if (Past(x, w, name, m, F / k, solid) is not { } left || left < 0) return new(Meters(D), Ratio.FromDecimalFractions(Na),
            x.FreeLength is null ? Rate(k) : null, Meters(solid), null, x.FreeLength is null ? Pascals(Stressed(x, w, name, m, D, C)) : null);
        return new(Meters(D), Ratio.FromDecimalFractions(Na), Rate(k), Meters(solid), Meters(left), Pascals(Stressed(x, w, name, m, D, C)));
    }

    /// <summary>What one spring carries: given, or out of the loads on its axle, a helper's share not taken off.</summary>
    private static Members<UnitsNet.Mass>? Loaded(Inputs x)
    {
        if (x.Loads is not null || x.AxleLoads is not { } axle) return x.Loads;
        double unsprung = x.UnsprungMass?.Kilograms ?? 0, r = x.MotionRatio?.DecimalFractions ?? 1; // kg, -
        return new(axle.Items.Select(i => (i.Name, UnitsNet.Mass.FromKilograms(Math.Max(0, i.Value.Kilograms - unsprung) / (2 * r)))));
    }

    /// <summary>Travel left (m), negative where the coils touch; null where the free length is not known.</summary>
    private static double? Past(Inputs x, Worksheet w, string name, double m, double deflection, double solid)
    {
        if (x.FreeLength is not { } free) return null;
        var left = free.Meters - deflection - solid;
        w.Line("left", "free - F / k - solid", $"{free.Millimeters} - {1000 * deflection} - {1000 * solid}", 1000 * left, "mm");
        w.AtLeast("solid", 1000 * left, 0, "mm", left < 0
            ? $"Under {m:0} kg ({name}) the coils touch: the spring would have to be {-1000 * left:0} mm shorter than solid. It is no spring there: a stiffer or longer one is needed."
            : $"Under {m:0} kg ({name}) {1000 * left:0} mm are left until the coils touch.", "geometry of the coils");
        return left;
    }

    private static double Stressed(Inputs x, Worksheet w, string name, double m, double D, double C)
    {
        double F = m * Gravity, d = x.Wire.Meters, Kw = (((4 * C) - 1) / ((4 * C) - 4)) + (0.615 / C); // N, m, -
        var mega = Kw * 8 * F * D / (Math.PI * d * d * d) / 1e6; // MPa
        w.Line("stress", "Kw 8 F D / (pi d^3)", $"{Kw} x 8 x {F} x {1000 * D} / (pi x {1000 * d}^3)", mega, "MPa");
        if (x.StressLimit is { } limit)
            w.AtMost("stress", mega, limit.Megapascals, "MPa", $"{m:0} kg on one spring ({name}) stresses its wire to {mega:0} MPa; {limit.Megapascals:0} MPa are allowed.",
                "spring maker's limit, as stated", watch: 0.9 * limit.Megapascals);
        return mega * 1e6;
    }
}
