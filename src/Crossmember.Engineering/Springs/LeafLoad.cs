using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>Stress and arch of a leaf spring under what its leaves themselves carry.</summary>
/// <remarks>
/// Formula:  stress = limit x load / load at the limit; arch left = free arch - load g / k
/// Valid:    as the leaf pack: straight-line spring; a helper of unknown gap takes between nothing and kh / (k + kh) of the load
/// Source:   proportion and springs beside each other, docs/derivations/springs.md
/// Example:  635 kg on leaves that reach 620 MPa at 577 kg -> 683 MPa
/// </remarks>
public sealed class LeafLoad() : Calculation<LeafLoad.Inputs, LeafLoad.Result>(new()
{
    Id = "springs.leaf-load",
    Version = 1,
    Title = "Leaf spring under its load",
    Purpose = "Whether the leaves stand what they themselves carry in this state of load, and keep their arch: a helper takes some of the load, and only that much of the worry.",
    Formula = "stress = limit x load / load at the limit; arch left = free arch - load x g / k",
    Validity = "As for the leaf pack. The load is what the leaves alone carry, the helper's share taken off by its gap and rate. Where the gap is not known the share is not either: "
        + "the helper takes helper / (leaf + helper) of the load at most, so what is beyond the limit even then fails, and what may be within it has no answer.",
    Sources = ["Proportion and springs beside each other, derived (docs/derivations/springs.md)"],
    Checks =
    [
        new("stress", Sense.AtMost, "Is the stress in the leaves within what their maker allows?", "stressLimit", "loadAtLimit"),
        new("flat", Sense.AtLeast, "Is the spring still arched?", "freeArch"),
    ],
    Trends =
    [
        new("load", "stress", '+', 100, 1500), new("stressLimit", "stress", '+', 300, 900), new("loadAtLimit", "stress", '-', 300, 1500), new("rate", "archLeft", '+', 20, 200),
        new("freeArch", "archLeft", '+', 40, 150),
    ],
    NoTrends = [new("relief", "taken off the load already; tells only that the helper's share is known"), new("helperRate", "only bounds what a helper of unknown gap may take")],
    Examples =
    [
        new(new Dictionary<string, string>
            {
                ["load"] = "600 kg", ["rate"] = "40 N/mm", ["stressLimit"] = "620 MPa", ["loadAtLimit"] = "500 kg", ["freeArch"] = "200 mm",
            },
            new Dictionary<string, double> { ["stress"] = 744, ["archLeft"] = 52.900 }, 1e-5, "620 x 600 / 500; 200 - 600 x 9.80665 / 40; by hand", Provenance.Derived),
    ],
    Cautions = [StoredEnergy, UBolts, Qualified],
})
{
    public sealed record Inputs(
        [Input("what the leaves of one spring carry, a known helper's share taken off", "kg", AtLeast = 0, High = 5000, Measure = SpringLoads)] UnitsNet.Mass Load,
        [Input("rate of the leaf spring", "N/mm", MoreThan = 0, High = 1000, Measure = "measure the leaves")] ForcePerLength Rate,
        [Input("stress that the leaves may carry", "MPa", MoreThan = 0, Low = 200, High = 1200, Measure = StressLimit)] Pressure? StressLimit,
        [Input("load on one spring at which the stress reaches it", "kg", MoreThan = 0, High = 5000, Measure = "measure the leaves")] UnitsNet.Mass? LoadAtLimit,
        [Input("arch of the unloaded spring", "mm", AtLeast = 0, High = 300, Measure = LeafPack.HowArch)] Length? FreeArch,
        [Input("what helper and bump stop took off that load", "kg", AtLeast = 0, High = 5000, Measure = "comes from the ride height")] UnitsNet.Mass? Relief,
        [Input("rate of one helper", "N/mm", MoreThan = 0, High = 1000, Measure = HelperRate)] ForcePerLength? HelperRate);

    public sealed record Result(
        [Output("stress in the leaves", "MPa")] Pressure? Stress,
        [Output("arch left; negative is past flat", "mm")] Length? ArchLeft);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double m = x.Load.Kilograms, k = x.Rate.NewtonsPerMeter; // kg, N/m
        var main = new MainSpring(m, x.Relief is null ? x.HelperRate?.NewtonsPerMeter : null, k);
        var helped = x.Relief?.Kilograms >= 0.5 ? $" What helps them takes {x.Relief.Value.Kilograms:0} kg more." : main.Says;
        double? mega = null; // MPa
        if (x.StressLimit is { } limit && x.LoadAtLimit is { } at)
        {
            mega = limit.Megapascals * m / at.Kilograms;
            w.Line("stress", "limit m / load at the limit", $"{limit.Megapascals} x {m} / {at.Kilograms}", mega.Value, "MPa");
            w.AtMost("stress", mega.Value, limit.Megapascals, "MPa", $"{m:0} kg on its leaves stress one spring to {mega:0} MPa; {limit.Megapascals:0} MPa are allowed.{helped}",
                "spring maker's limit, as stated", watch: 0.9 * limit.Megapascals, beyond: main.Beyond(at.Kilograms));
        }
        if (x.FreeArch is not { } free) return new(Pascals(mega * 1e6), null);
        var left = free.Meters - (m * Gravity / k); // m
        w.Line("arch", "free arch - m g / k", $"{free.Millimeters} - {m} x {Gravity} / {k / 1000}", 1000 * left, "mm");
        w.AtLeast("flat", 1000 * left, 0, "mm", left < 0
            ? $"Under {m:0} kg the spring is {-1000 * left:0} mm past flat: it is too soft or has sagged. Rate and stress still hold, but its travel and its length do not.{helped}"
            : $"Under {m:0} kg the spring keeps {1000 * left:0} mm of arch.", Practice,
            beyond: main.Beyond(free.Meters * k / Gravity) == Verdict.Unknown ? Verdict.Unknown : Verdict.Caution);
        return new(Pascals(mega * 1e6), Meters(left));
    }
}
