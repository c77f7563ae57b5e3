using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Brakes.Heat;

/// <summary>What the rotors or drums of an axle hold and shed: mass, swept face, share of the heat, cooling.</summary>
/// <remarks>
/// Formula:  mass as weighed, else rho V; share 1 / (1 + e_lining A_lining / (e_iron A_swept)); shed 100 K x film x area, or mass c 100 K / time constant
/// Valid:    gray iron; both sides alike, of two unlike ones the lighter counts
/// Source:   geometry; heat partition by effusivity and films after Limpert, Brake Design and Safety, from memory; docs/derivations/brake-heat.md
/// Example:  300 over 190 mm, 22 mm solid: 6.71 kg without its hat
/// </remarks>
public sealed class HeatStore() : Calculation<HeatStore.Inputs, HeatStore.Result>(new()
{
    Id = "brakes.heat-store",
    Version = 1,
    Title = "What rotors and drums hold and shed",
    Purpose = "How much iron takes the heat of braking at each wheel and how fast the air takes it away again: every brake temperature rests on these.",
    Formula = "mass as weighed, else 7200 kg/m3 x ring x thickness (x 0.65 vented) or the rim of the drum; share of heat into the iron by effusivity and area; "
        + "cooling = film x area at 40 mph, or mass x 480 / time constant where that was measured",
    Validity = "Gray iron. Mass from dimensions leaves the hat or bell out and so errs to the hot side. The films are from memory and may be half or twice the truth behind a dirt shield: "
        + "a measured cooling time replaces them. Where the two sides differ the lighter or smaller counts.",
    Sources = ["Geometry, derived", "Films and heat partition: R. Limpert, Brake Design and Safety, from memory", "Iron share, wall and cover of the linings: common practice, no source"],
    Checks = [new("weighed", null, "Is the mass of iron known?")],
    Trends =
    [
        new("rotorThickness", "mass", '+', 8, 40), new("rotorDiameter", "mass", '+', 250, 400), new("padInnerDiameter", "mass", '-', 120, 240), new("rotorMass", "mass", '+', 3, 20),
        new("drumDiameter", "mass", '+', 200, 400), new("liningWidth", "mass", '+', 30, 120), new("drumMass", "mass", '+', 4, 30), new("padArea", "rotorShare", '-', 20, 150),
        new("padOuterDiameter", "sweptArea", '+', 250, 300), new("coolingTime", "cooling", '-', 100, 1500),
    ],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["kind"] = """{"left":"disc"}""", ["rotorDiameter"] = """{"left":"300 mm"}""", ["rotorThickness"] = """{"left":"22 mm"}""", ["rotorVented"] = """{"left":"solid"}""",
                ["padInnerDiameter"] = """{"left":"190 mm"}""", ["padOuterDiameter"] = """{"left":"300 mm"}""", ["padArea"] = """{"left":"50 cm2"}""",
            },
            new Dictionary<string, double> { ["mass"] = 6.7053, ["sweptArea"] = 846.66, ["rotorShare"] = 0.98468, ["depth"] = 11 }, 0.0001,
            "pi/4 (0.3^2 - 0.19^2) = 0.042333 m2, x 0.022 x 7200; 1 / (1 + 1732.1 x 0.01 / (13145 x 0.084666)); by hand", Provenance.Derived),
        new(new Dictionary<string, string>
            {
                ["kind"] = """{"left":"disc","right":"disc"}""", ["rotorMass"] = """{"left":"7.5 kg","right":"7.4 kg"}""", ["coolingTime"] = """{"left":"500 s","right":"500 s"}""",
            },
            new Dictionary<string, double> { ["mass"] = 7.4, ["cooling"] = 710.4, ["rotorShare"] = 0.95 }, 1e-9, "7.4 kg x 480 x 100 / 500; the share is the usual 0.95; by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["kind"] = """{"left":"drum"}""", ["drumDiameter"] = """{"left":"280 mm"}""", ["liningWidth"] = """{"left":"60 mm"}""" },
            new Dictionary<string, double> { ["mass"] = 4.5917 }, 0.0001, "7200 x pi x 0.29 x 0.01 x 0.07; by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["kind"] = """{"left":"drum"}""", ["drumDiameter"] = """{"left":"280 mm"}""", ["liningWidth"] = """{"left":"60 mm"}""", ["drumMass"] = """{"left":"9 kg"}""" },
            new Dictionary<string, double> { ["mass"] = 9, ["sweptArea"] = 527.79, ["depth"] = 10 }, 0.0001, "pi x 28 x 6 cm; by hand", Provenance.Derived),
    ],
    Cautions = [HowToMeasureHeat.Makers, "Dust of old linings may hold asbestos: wet it down, never blow it."],
})
{
    public sealed record Inputs(
        [Input("kind of brake", OneOf = [TwoAxles.Disc, TwoAxles.Drum], Measure = HowToMeasureHeat.Kind)] Members<string> Kind,
        [Input("diameter of the rotor", "mm", MoreThan = 0, Low = 150, High = 500, Measure = HowToMeasureHeat.RotorDiameter)] Members<Length>? RotorDiameter,
        [Input("thickness of the rotor", "mm", MoreThan = 0, Low = 6, High = 60, Measure = HowToMeasureHeat.Thickness)] Members<Length>? RotorThickness,
        [Input("whether the rotor is vented", OneOf = [Vented, Solid], Measure = HowToMeasureHeat.Vented)] Members<string>? RotorVented,
        [Input("outer diameter of the ring that the pads sweep", "mm", MoreThan = 0, Measure = HowToMeasureHeat.PadOuter)] Members<Length>? PadOuterDiameter,
        [Input("inner diameter of the ring that the pads sweep", "mm", MoreThan = 0, Measure = HowToMeasureHeat.PadInner)] Members<Length>? PadInnerDiameter,
        [Input("area of one pad", "cm2", MoreThan = 0, Low = 10, High = 200, Measure = HowToMeasureHeat.PadArea)] Members<Area>? PadArea,
        [Input("mass of one rotor", "kg", MoreThan = 0, Low = 2, High = 40, Measure = HowToMeasureHeat.RotorMass)] Members<UnitsNet.Mass>? RotorMass,
        [Input("inside diameter of the drum", "mm", MoreThan = 0, Low = 150, High = 500, Measure = HowToMeasureHeat.DrumDiameter)] Members<Length>? DrumDiameter,
        [Input("width of the lining", "mm", MoreThan = 0, Low = 20, High = 150, Measure = HowToMeasureHeat.LiningWidth)] Members<Length>? LiningWidth,
        [Input("mass of one drum", "kg", MoreThan = 0, Low = 2, High = 60, Measure = HowToMeasureHeat.DrumMass)] Members<UnitsNet.Mass>? DrumMass,
        [Input("time in which a hot brake loses 63 % of what it is over the air, at 40 mph", "s", MoreThan = 0, Low = 60, High = 3000, Measure = HowToMeasureHeat.CoolingTime)]
        Members<Duration>? CoolingTime);

    public sealed record Result(
        [Output("rotor or drum of one wheel, by what takes the heat", "kg")] UnitsNet.Mass? Mass,
        [Output("both faces of the rotor or the inside of the drum, as far as lining sweeps it", "cm2")] Area? SweptArea,
        [Output("iron behind a swept face", "mm")] Length? Depth,
        [Output("all lining of one wheel", "cm2")] Area? LiningArea,
        [Output("share of the heat that goes into the iron")] Ratio? RotorShare,
        [Output("heat that one wheel sheds at 40 mph when 100 K hotter than the air", "W")] Power? Cooling,
        [Output("what the air sweeps of one rotor or drum", "cm2")] Area? CoolingArea);

    private const string Vented = "vented", Solid = "solid";

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (TwoAxles.Same(x.Kind) is not { } kind)
        {
            w.Answer("weighed", Verdict.Fail, "One side has a drum and the other a disc: such an axle pulls to one side. Check the readings.");
            return null;
        }
        var drum = kind == TwoAxles.Drum;
        if (!drum && Least(x.PadInnerDiameter) is { } inner && (inner >= Least(x.PadOuterDiameter) || inner >= Least(x.RotorDiameter))) // what is not known is never reached
        {
            w.Answer("weighed", Verdict.Fail, "The ring that the pads sweep has no width by these diameters: check the readings of its edges and of the rotor.");
            return null;
        }
        var body = drum ? Drum(x) : Disc(x);
        var weighed = drum ? Least(x.DrumMass) : Least(x.RotorMass); // kg
        if ((weighed ?? body?.Mass) is not { } mass)
        {
            w.Answer("weighed", Verdict.Unknown, drum ? "Not known: weigh one drum; or measure the drum inside and the width of its lining."
                : "Not known: weigh one rotor; or measure its diameter and thickness and the ring that the pads sweep.");
            return new(null, null, null, null, null, null, null);
        }
        w.Line("m", weighed is null ? "rho V" : "as weighed", $"{mass}", mass, "kg");
        w.Answer("weighed", weighed is null ? Verdict.Caution : Verdict.Pass, weighed is null
            ? $"About {mass:0.0} kg of iron at each wheel by its dimensions: weigh one {(drum ? "drum" : "rotor")}, the temperatures rest on it."
            : $"{mass:0.0} kg of iron at each wheel, weighed.", mass, "kg");
        return Told(x, w, drum, mass, body);
    }

    private static Result Told(Inputs x, Worksheet w, bool drum, double mass, BrakeBody? body)
    {
        double share = body?.RotorShare ?? UsualShare;
        double? shed = body is { } b ? Airflow.ReferenceExcess * b.CoolingArea * Airflow.Film(drum, Diameter(x, drum), IsVented(x)) : null; // W
        if (body is { } told)
        {
            w.Line("share", "1 / (1 + e_l A_l / (e A))", $"1 / (1 + {GrayIron.LiningEffusivity} x {told.LiningArea} / ({GrayIron.Effusivity} x {told.SweptArea}))", share, "1");
            w.Line("Q", "100 K x film x area", $"100 x {Airflow.Film(drum, Diameter(x, drum), IsVented(x))} x {told.CoolingArea}", shed!.Value, "W");
        }
        if (x.CoolingTime is { } times && Greatest(times) is var tau)
        {
            shed = mass * GrayIron.SpecificHeat * Airflow.ReferenceExcess / tau;
            w.Line("Q", "m c 100 K / tau", $"{mass} x {GrayIron.SpecificHeat} x 100 / {tau}", shed.Value, "W");
        }
        return new(UnitsNet.Mass.FromKilograms(mass), Square(body?.SweptArea), body is { } d ? Length.FromMeters(d.Depth) : null, Square(body?.LiningArea),
            Ratio.FromDecimalFractions(share), shed is { } q ? Power.FromWatts(q) : null, Square(body?.CoolingArea));
    }

    /// <summary>Where neither pad nor ring was measured: common practice, no source.</summary>
    private const double UsualShare = 0.95;

    private static BrakeBody? Disc(Inputs x)
    {
        if (Least(x.RotorDiameter) is not { } outer || Least(x.RotorThickness) is not { } thickness) return null;
        double inner = Least(x.PadInnerDiameter) ?? BrakeBody.InnerShare * outer, pads = Math.Min(Least(x.PadOuterDiameter) ?? outer, outer);
        // What nobody looked at counts as vented for its mass and as solid for its cooling: the hot side both times.
        var light = x.RotorVented is not { } v || TwoAxles.Same(v) != Solid;
        return inner < pads ? BrakeBody.Disc(outer, inner, pads, thickness, light, Least(x.PadArea) ?? 0) : null;
    }

    private static BrakeBody? Drum(Inputs x) => Least(x.DrumDiameter) is { } d && Least(x.LiningWidth) is { } width ? BrakeBody.Drum(d, width) : null;

    private static double Diameter(Inputs x, bool drum) => (drum ? Least(x.DrumDiameter) : Least(x.RotorDiameter)) ?? 0;

    private static bool IsVented(Inputs x) => x.RotorVented is { } v && TwoAxles.Same(v) == Vented;

    private static double? Least(Members<UnitsNet.Mass>? sides) => Least(sides, m => m.Kilograms);

    private static double? Least(Members<Length>? sides) => Least(sides, l => l.Meters);

    private static double? Least(Members<Area>? sides) => Least(sides, a => a.SquareMeters);

    private static double? Least<T>(Members<T>? sides, Func<T, double> si)
    {
        if (sides is null) return null;
        var least = double.PositiveInfinity;
        foreach (var (_, value) in sides.Items) least = Math.Min(least, si(value));
        return least;
    }

    private static double Greatest(Members<Duration> sides)
    {
        double most = 0;
        foreach (var (_, value) in sides.Items) most = Math.Max(most, value.Seconds);
        return most;
    }

    private static Area? Square(double? area) => area is { } a ? Area.FromSquareMeters(a) : null;
}
