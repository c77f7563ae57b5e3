using Crossmember.Engineering.Calculations;
using UnitsNet;

namespace Crossmember.Engineering.Tires;

/// <summary>Load and speed ratings that the service description of a tire stands for.</summary>
/// <remarks>
/// Formula:  look-up of load index and speed symbol
/// Valid:    load index 80 to 121, symbols K to Y; outside the tables: unknown
/// Source:   ISO 4000-1, ETRTO Standards Manual, TRA Year Book: load index and speed symbol tables, from memory
/// Example:  113Q -> 1150 kg, 160 km/h
/// </remarks>
public sealed class TireRatings() : Calculation<TireRatings.Inputs, TireRatings.Result>(new()
{
    Id = "tires.service-description",
    Version = 1,
    Title = "Load and speed rating of a tire",
    Purpose = "What the figures after the size on the sidewall allow: load per tire, single and dual, and speed.",
    Formula = "load index and speed symbol looked up in the standard's tables",
    Validity = "Load index 80 to 121, speed symbols K to Y. The load holds at the inflation pressure its maker gives for it. Load range letters are not load indexes.",
    Sources = ["ISO 4000-1, ETRTO Standards Manual, TRA Year Book: load index and speed symbol tables, from memory, to be checked in the text"],
    Checks = [new("speed", Sense.AtLeast, "Are the tires fit for the cruise speed?", "cruiseSpeed")],
    NoTrends = [new("cruiseSpeed", "only compared with the result")],
    Examples =
    [
        new(new Dictionary<string, string> { ["serviceDescription"] = "113Q" },
            new Dictionary<string, double> { ["loadRating"] = 1150, ["speedRating"] = 99.419 }, 0.00001,
            "ETRTO Standards Manual tables, from memory: 113 is 1150 kg, Q is 160 km/h = 99.419 mph", Provenance.HandbookMemory),
        new(new Dictionary<string, string> { ["serviceDescription"] = "121/118Q" },
            new Dictionary<string, double> { ["loadRating"] = 1450, ["loadRatingDual"] = 1320 }, 1e-9,
            "ETRTO Standards Manual tables, from memory: 121 is 1450 kg single, 118 is 1320 kg dual", Provenance.HandbookMemory),
    ],
    Cautions =
    [
        "Size, load index and speed symbol may not fall below what the vehicle requires without an approval: local rules decide.",
        "Old tires fail at any rating: read the date code and have a tire fitter look at them.",
    ],
})
{
    public sealed record Inputs(
        [Input("service description", Measure = "read the figures after the size on the sidewall, for example 113Q", Notation = typeof(ServiceDescription.Notation))]
        string ServiceDescription,
        [Input("cruise speed", "mph", AtLeast = 0, High = 150, Measure = "choose the speed the customer wants to cruise at")] Speed? CruiseSpeed);

    public sealed record Result(
        [Output("load rating of one tire, single", "kg")] UnitsNet.Mass? LoadRating,
        [Output("load rating of one tire in a dual pair", "kg")] UnitsNet.Mass? LoadRatingDual,
        [Output("speed rating", "mph")] Speed? SpeedRating);

    protected override Result? Solve(Inputs x, Worksheet w)
    {
        if (Tires.ServiceDescription.Read(x.ServiceDescription) is not { } d) return null;
        UnitsNet.Mass? single = Load(d.LoadIndexSingle, w), dual = d.LoadIndexDual is { } index ? Load(index, w) : null;
        var speed = Tires.ServiceDescription.SpeedOf(d.SpeedSymbol) is { } v ? Speed.FromMetersPerSecond(v) : (Speed?)null;
        if (speed is { } s) w.Line("v", "speed symbol", $"{d.SpeedSymbol}", s.KilometersPerHour, "km/h");
        else w.Caution($"Speed symbol {d.SpeedSymbol} is not in the table (K to Y): read the speed in the tire maker's book.");
        if (x.CruiseSpeed is { } cruise) Judge(w, d.SpeedSymbol, speed, cruise);
        return new(single, dual, speed);
    }

    private static void Judge(Worksheet w, string symbol, Speed? speed, Speed cruise)
    {
        if (speed is { } s)
            w.AtLeast("speed", s.MilesPerHour, cruise.MilesPerHour, "mph",
                $"Symbol {symbol} is good for {s.MilesPerHour:0} mph; cruising at {cruise.MilesPerHour:0.#} mph.", "speed symbol table (from memory)");
        else w.Answer("speed", Verdict.Unknown, $"Not known: symbol {symbol} is not in the table.");
    }

    private static UnitsNet.Mass? Load(int index, Worksheet w)
    {
        if (Tires.ServiceDescription.LoadOf(index) is not { } kg)
        {
            w.Caution($"Load index {index} is not in the table (80 to 121): read the load on the sidewall.");
            return null;
        }
        w.Line("Q", "load index", $"{index}", kg, "kg");
        return UnitsNet.Mass.FromKilograms(kg);
    }
}
