using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Tires;

/// <summary>How much of its load rating a tire uses.</summary>
/// <remarks>
/// Formula:  u = Q derate / rating
/// Valid:    static load on level ground; rating at the pressure the maker gives for it
/// Source:   ratio of load to rating; derate 1.10 for passenger tires on trucks: 49 CFR 571.110 and 571.120, from memory
/// Example:  590 kg on a tire rated 900 kg -> 65.6 %; a passenger tire on a truck (derate 1.10) -> 72.1 %
/// </remarks>
public sealed class TireLoad() : Calculation<TireLoad.Inputs, TireLoad.Result>(new()
{
    Id = "tires.load",
    Version = 1,
    Title = "Tire load",
    Purpose = "Whether a tire carries what stands on it, everything fitted and loaded.",
    Formula = "utilization = load x derate / rating",
    Validity = "Standing on level ground, at the inflation pressure the rating is given for; at less pressure the tire carries less. Passenger (P) tires on a truck, "
        + "bus or multipurpose vehicle have their rating divided by 1.10.",
    Sources = ["49 CFR 571.110 and 571.120: passenger tires on trucks, rating divided by 1.10, from memory, to be checked in the text"],
    Checks = [new("rating", Sense.AtMost, "Does the tire carry no more than its rating?")],
    Trends = [new("load", "utilization", '+', 100, 1500), new("rating", "utilization", '-', 450, 1450), new("derate", "utilization", '+', 1, 1.2)],
    Examples =
    [
        new(new Dictionary<string, string> { ["load"] = "590 kg", ["rating"] = "900 kg" }, new Dictionary<string, double> { ["utilization"] = 65.6 }, 0.0008,
            "1180 kg on two tires of load index 104 (900 kg each, 1800 kg), by hand to 0.1 %", Provenance.Derived),
        new(new Dictionary<string, string> { ["load"] = "590 kg", ["rating"] = "900 kg", ["derate"] = "1.10" },
            new Dictionary<string, double> { ["utilization"] = 72.1 }, 0.0008,
            "The same with passenger tires: 1800 / 1.10 = 1636 kg, by hand to 0.1 %", Provenance.Derived),
    ],
    Cautions =
    [
        "An overloaded or underinflated tire overheats and bursts: set the pressure from the tire maker's load table, cold, for the load it really carries.",
        "Size, load index and speed symbol may not fall below what the vehicle requires without an approval: local rules decide.",
    ],
})
{
    public sealed record Inputs(
        [Input("load on the tire", "kg", AtLeast = 0, High = 3000,
            Measure = "weigh the wheel, loaded as it will be used; half the axle load will do to begin with")] UnitsNet.Mass Load,
        [Input("load rating of the tire", "kg", MoreThan = 0, Measure = "read the load index or the maximum load on the sidewall")] UnitsNet.Mass Rating,
        [Input("derate: 1.10 for a passenger tire on a truck, else 1", AtLeast = 1, High = 1.5, Default = 1,
            Measure = "read whether the size begins with P")] Ratio Derate);

    public sealed record Result([Output("share of the load rating used", "%")] Ratio Utilization);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double Q = x.Load.Kilograms, rating = x.Rating.Kilograms, derate = x.Derate.DecimalFractions; // kg, kg
        var u = Q * derate / rating;
        w.Line("u", "load x derate / rating", $"{Q} x {derate} / {rating}", 100 * u, "%");
        w.AtMost("rating", 100 * u, 100, "%", $"The tire carries {Q:0} kg of {rating / derate:0} kg ({100 * u:0} %).");
        return new(Ratio.FromDecimalFractions(u));
    }
}
