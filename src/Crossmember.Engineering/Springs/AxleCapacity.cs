using Crossmember.Engineering.Calculations;
using UnitsNet;
using static Crossmember.Engineering.Springs.HowToMeasureSprings;

namespace Crossmember.Engineering.Springs;

/// <summary>What one spring of an axle itself carries, against what it is rated for.</summary>
/// <remarks>
/// Formula:  one spring carries (load - unsprung) / (2 r) less what helper and stop take / r; the axle may carry 2 r x rating + unsprung
/// Valid:    standing level, both sides alike; a helper of unknown gap takes between nothing and kh / (k + kh) of the load
/// Source:   statics, springs beside each other, docs/derivations/springs.md
/// Example:  1724 kg on the axle, 180 kg unsprung -> 772 kg on each spring, 655 kg where a helper takes 117 kg
/// </remarks>
public sealed class AxleCapacity() : Calculation<AxleCapacity.Inputs, AxleCapacity.Result>(new()
{
    Id = "springs.axle-capacity",
    Version = 2,
    Title = "Load on each spring against its rating",
    Purpose = "Whether the springs, not only the axle, are made for the load: ratings of springs are told at the spring, scales read at the ground, and what a helper carries is no "
        + "load of the main spring.",
    Formula = "one spring carries (axle load - unsprung) / (2 r) - helper's share / r; the axle may carry 2 r x rating + unsprung",
    Validity = "Standing level, both springs alike. Without the unsprung mass all of the load is put on the springs: more than they carry, never less. What helper and bump stop take comes from the "
        + "ride height. Where the helper's gap is not known its share is not either: it takes kh / (k + kh) of the load at most. While something helps, no reserve is told.",
    Sources = ["Statics and springs beside each other, derived (docs/derivations/springs.md)"],
    Checks = [new("rating", Sense.AtMost, "Does each spring carry no more than it is rated for?", "rating")],
    Trends =
    [
        new("load", "springLoad", '+', 500, 5000), new("unsprungMass", "springLoad", '-', 50, 450), new("motionRatio", "springLoad", '-', 0.4, 1), new("rating", "reserve", '+', 300, 2000),
        new("relief", "springLoad", '-', 10, 300),
    ],
    NoTrends = [new("helperRate", "only bounds what a helper of unknown gap may take"), new("wheelRate", "only bounds what a helper of unknown gap may take")],
    Examples =
    [
        new(new Dictionary<string, string> { ["load"] = "1724 kg", ["unsprungMass"] = "180 kg", ["rating"] = "800 kg" },
            new Dictionary<string, double> { ["springLoad"] = 772, ["reserve"] = 56 }, 1e-9, "(1724 - 180) / 2; 1600 + 180 - 1724; by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["load"] = "1000 kg", ["unsprungMass"] = "120 kg", ["motionRatio"] = "0.55", ["rating"] = "900 kg" },
            new Dictionary<string, double> { ["springLoad"] = 800, ["reserve"] = 110 }, 1e-9, "880 / (2 x 0.55); 2 x 0.55 x 900 + 120 - 1000; by hand", Provenance.Derived),
        new(new Dictionary<string, string> { ["load"] = "1724 kg", ["unsprungMass"] = "180 kg", ["relief"] = "117 kg", ["rating"] = "700 kg" },
            new Dictionary<string, double> { ["springLoad"] = 655 }, 1e-9, "772 - 117 by hand", Provenance.Derived),
    ],
    Cautions =
    [
        "Stronger springs do not raise what the axle may carry: axle, wheels, tires, brakes and frame each have their own limit. The maker's plate and local rules decide.", Qualified,
    ],
})
{
    public sealed record Inputs(
        [Input("load on the axle", "kg", MoreThan = 0, High = 10000, Measure = AxleLoad)] UnitsNet.Mass Load,
        [Input("mass of the unsprung parts of the axle", "kg", AtLeast = 0, High = 1500, Measure = HowToMeasureSprings.UnsprungMass)] UnitsNet.Mass? UnsprungMass,
        [Input("travel of the spring over travel of the wheel; without it 1, as on a solid axle", MoreThan = 0, Low = 0.3, High = 1.2, Measure = HowToMeasureSprings.MotionRatio)]
        Ratio? MotionRatio,
        [Input("what one spring is rated for, at the spring", "kg", MoreThan = 0, High = 5000,
            Measure = "read the spring's tag or ask the spring works; a rating at the ground has half of the unsprung mass in it")] UnitsNet.Mass? Rating,
        [Input("what helper and bump stop take off one spring, told at the wheel", "kg", AtLeast = 0, High = 5000, Measure = "comes from the ride height")] UnitsNet.Mass? Relief,
        [Input("rate of one helper", "N/mm", MoreThan = 0, High = 1000, Measure = HowToMeasureSprings.HelperRate)] ForcePerLength? HelperRate,
        [Input("spring rate at one wheel", "N/mm", MoreThan = 0, Low = 5, High = 600, Measure = HowToMeasureSprings.WheelRate)] ForcePerLength? WheelRate);

    public sealed record Result(
        [Output("what one spring carries", "kg")] UnitsNet.Mass? SpringLoad,
        [Output("load the axle could take on until its springs are at their rating", "kg")] UnitsNet.Mass? Reserve);

    protected override Result Solve(Inputs x, Worksheet w)
    {
        double load = x.Load.Kilograms, unsprung = x.UnsprungMass?.Kilograms ?? 0, r = x.MotionRatio?.DecimalFractions ?? 1, relief = x.Relief?.Kilograms ?? 0; // kg, kg, -, kg
        var on = ((load - unsprung) / (2 * r)) - (relief / r); // kg
        w.Line("m", relief > 0 ? "(load - unsprung) / (2 r) - helper / r" : "(load - unsprung) / (2 r)", $"({load} - {unsprung}) / (2 x {r}) - {relief} / {r}", on, "kg");
        if (x.UnsprungMass is null) w.Caution("The unsprung mass is not known: all of the load is put on the springs, more than they carry.");
        if (on < 0)
        {
            var wrong = load < unsprung ? $"The unsprung parts, {unsprung:0} kg, weigh more than the axle's load, {load:0} kg: weigh both again."
                : $"The helper takes {relief:0} kg, more than there is: measure the helper's gap and rate, the taped height and its load again.";
            if (x.Rating is not null) w.Answer("rating", Verdict.Fail, wrong);
            else w.Caution(wrong);
            return new(null, null);
        }
        var carried = new MainSpring(on, x.Relief is null ? x.HelperRate?.NewtonsPerMeter : null, x.WheelRate?.NewtonsPerMeter);
        if (carried.Shared) w.Caution("What the helper takes is not known: all of the load is put on the main springs, more than they carry.");
        if (x.Rating is { } rating)
            w.AtMost("rating", on, rating.Kilograms, "kg", $"Each spring carries {on:0} kg of {rating.Kilograms:0} kg." + (relief >= 0.5 ? $" What helps it takes {relief:0} kg." : carried.Says), "spring maker's rating, as stated", watch: 0.95 * rating.Kilograms,
                beyond: carried.Beyond(rating.Kilograms) is Verdict.Fail && x.UnsprungMass is null && on - rating.Kilograms < 0.1 * load ? Verdict.Caution : carried.Beyond(rating.Kilograms));
        var reserve = relief > 0 || carried.Shared ? null : (2 * r * x.Rating?.Kilograms) + unsprung - load; // kg
        return new(UnitsNet.Mass.FromKilograms(on), reserve is { } more ? UnitsNet.Mass.FromKilograms(more) : null);
    }
}
