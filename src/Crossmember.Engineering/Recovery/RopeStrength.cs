using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Driveline;
using UnitsNet;

namespace Crossmember.Engineering.Recovery;

/// <summary>What a rope has over the pull of its winch, and what the rules for lifting and for the field would allow it.</summary>
/// <remarks>
/// Formula:  design factor = breaking force / pull; field rule of steel wire rope 8 D^2 kg (D mm), sharply bent 30 % less; ASME B30.7: breaking force / 3.5
/// Valid:    a sound rope; kinks, broken wires, burnt or fluffy fibre and knots take far more
/// Source:   Australian Emergency Manual, Disaster Rescue, par. 3.15; ASME B30.7-2016 from memory
/// Example:  14 mm steel: 1568 kg, sharply bent 1098 kg; 6600 kgf on a winch of 4310 kgf: 1.53, where B30.7 would allow 1886 kgf
/// </remarks>
public sealed class RopeStrength() : Calculation<RopeStrength.Inputs, RopeStrength.Result>(new()
{
    Id = "recovery.rope",
    Version = 1,
    Title = "Rope against its winch",
    Purpose = "How far the rope is from breaking when the winch stalls: vehicle winches carry far less rope than any rule for lifting asks, and a sharp bend takes 30 % of it.",
    Formula = "design factor = minimum breaking force / line pull; sharply bent: 30 % less; field rule of steel 8 D^2 kg; ASME B30.7: minimum breaking force / 3.5",
    Validity = "Minimum breaking force of a new straight rope with a proper end. Wear, kinks, heat, salt, sun on fibre, knots and small sheaves lower it; a jerk raises the pull over "
        + "what the winch gives. The field rule is for steel wire rope only; its 30 % for a sharp bend are taken of any rope.",
    Sources =
    [
        "Australian Emergency Manual, Disaster Rescue, par. 3.15: steel wire rope 8 D^2 kg (D in mm), 30 % less where sharply bent",
        "ASME B30.7-2016, before 7-1.2.6: design factor 3.5 or more of a winch's rope, from memory", "Caution below twice the pull: common practice, no source",
    ],
    Checks = [new("design-factor", Sense.AtLeast, "Does the rope hold more than the winch pulls?", "breakingForce")],
    Trends =
    [
        new("breakingForce", "designFactor", '+', 20, 200), new("linePull", "designFactor", '-', 10, 100), new("ropeDiameter", "fieldRule", '+', 5, 25),
    ],
    Examples =
    [
        new(new Dictionary<string, string> { ["breakingForce"] = "6600 kgf", ["linePull"] = "4310 kgf" },
            new Dictionary<string, double> { ["designFactor"] = 1.53, ["liftingLoad"] = 1886 }, 0.003, "6600 / 4310 and 6600 / 3.5 by hand; rule of ASME B30.7 from memory", Provenance.Derived),
        new(new Dictionary<string, string> { ["ropeDiameter"] = "14 mm", ["linePull"] = "10 kN", ["rope"] = "steel", ["bend"] = "straight", ["breakingForce"] = "100 kN" },
            new Dictionary<string, double> { ["fieldRule"] = 1568 }, 0.0001, "Australian Emergency Manual, Disaster Rescue, par. 3.15", Provenance.Published),
        new(new Dictionary<string, string> { ["ropeDiameter"] = "14 mm", ["linePull"] = "10 kN", ["rope"] = "steel", ["bend"] = "sharp" },
            new Dictionary<string, double> { ["fieldRule"] = 1098 }, 0.0004, "Australian Emergency Manual, Disaster Rescue, par. 3.15, less 30 %", Provenance.Published),
    ],
    Cautions =
    [
        RecoveryCautions.StandClear, RecoveryCautions.NoLifting,
        "Look the whole rope over before each use. Cut up a wire rope with broken wires, kinks or crushed places; retire a fibre rope that is glazed, stiff or half worn through.",
    ],
})
{
    internal const string Steel = "steel", Synthetic = "synthetic", Straight = "straight", Sharp = "sharp";

    private const double SharplyBent = 0.7, Lifting = 3.5, Watch = 2;

    public sealed record Inputs(
        [Input("line pull of the winch on the first layer", "kN", MoreThan = 0, Low = 1, High = 300, Measure = HowToMeasureRecovery.FirstPull)] Force LinePull,
        [Input("minimum breaking force of the rope", "kN", MoreThan = 0, Measure = HowToMeasureRecovery.Breaking)] Force? BreakingForce,
        [Input("diameter of the rope", "mm", MoreThan = 0, Low = 4, High = 30, Measure = HowToMeasureRecovery.RopeDiameter)] Length? RopeDiameter,
        [Input("what the rope is made of", OneOf = [Steel, Synthetic])] string? Rope,
        [Input("how it is bent under load; straight where nothing is said", OneOf = [Straight, Sharp])] string? Bend);

    public sealed record Result(
        [Output("design factor: breaking force over line pull, the bend taken off")] Ratio? DesignFactor,
        [Output("what ASME B30.7 would let a lifting winch pull on this rope", "kg")] UnitsNet.Mass? LiftingLoad,
        [Output("safe working load by the field rule of steel wire rope", "kg")] UnitsNet.Mass? FieldRule);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double T = x.LinePull.Newtons, bend = x.Bend == Sharp ? SharplyBent : 1; // N
        double? field = x.RopeDiameter is { } d && x.Rope == Steel ? 8 * d.Millimeters * d.Millimeters * bend : null; // kg
        w.Line("T", "line pull on the first layer", $"{T}", T, "N");
        if (field is { } kg) w.Line("field rule", "8 D^2, sharply bent x 0.7", $"8 x {x.RopeDiameter!.Value.Millimeters}^2 x {bend}", kg, "kg");
        if (x.BreakingForce is not { } breaking) return new(null, null, Of(field));
        double B = breaking.Newtons * bend, factor = B / T, lifting = breaking.Newtons / Lifting / Resistance.Gravity; // N, kg
        w.Line("factor", "breaking force x bend / T", $"{breaking.Newtons} x {bend} / {T}", factor, "1");
        w.Line("by B30.7", "breaking force / 3.5 / g", $"{breaking.Newtons} / {Lifting} / {Resistance.Gravity}", lifting, "kg");
        var told = $"The rope {(bend < 1 ? "sharply bent " : "")}breaks at {B / 1000:0.0} kN, {factor:0.00} times the {T / 1000:0.0} kN the winch pulls. ";
        w.AtLeast("design-factor", factor, 1, "1", told + (factor < 1 ? "The rope goes before the winch stalls: never use them together."
            : $"{(factor < Watch ? "Usual of vehicle winches, and little" : "Good for a vehicle winch")}; lifting gear by ASME B30.7 has {Lifting}, and this is none."),
            "caution below 2: common practice, no source", watch: Watch);
        return new(Ratio.FromDecimalFractions(factor), UnitsNet.Mass.FromKilograms(lifting), Of(field));
    }

    private static UnitsNet.Mass? Of(double? kilograms) => kilograms is { } kg ? UnitsNet.Mass.FromKilograms(kg) : null;
}
