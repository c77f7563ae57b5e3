using System.Diagnostics;
using System.Text;
using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Searching;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;

namespace Crossmember.Benchmarks;

/// <summary>A hundred thousand sets of brakes for the demo's truck: five kinds of parts in the stock list, nine of each beside the option's own.</summary>
internal static class PartsSearchLook
{
    private const int Each = 9;

    public static void Run()
    {
        var file = JsonNode.Parse(File.ReadAllBytes(DemoCheck.Demo))!.AsObject();
        file["stock"] = Stock();
        // The options stay as they are: most beside what is chosen fall out at once, as they would for a person.
        var faults = new Faults();
        var read = BuildFile.Read(Encoding.UTF8.GetBytes(file.ToJsonString()), Catalogue.Shipped, faults) ?? throw new InvalidDataException(string.Join('\n', faults.List));
        var plan = new EvaluationPlan(Catalogue.Shipped, read.Build);
        var sheet = plan.Evaluate(read.Build, read.Shop, read.Build.Scenarios["carried"]);
        for (var i = 0; i < 5; i++)
        {
            var search = BrakeSearch.Of(sheet);
            var clock = Stopwatch.GetTimestamp();
            var result = search.Run(10);
            Console.WriteLine($"search: {search.Count} ways, {result.Offered} combinations, {result.Passed} pass, {Stopwatch.GetElapsedTime(clock).TotalSeconds:0.00} s on {Environment.ProcessorCount} cores, {Stopwatch.GetElapsedTime(clock).TotalSeconds * 100_000 / result.Offered:0.00} s a hundred thousand");
        }
        Once(sheet);
        // The peer in the same run: whole sheets, one after the other.
        var whole = Stopwatch.GetTimestamp();
        var some = BrakeSearch.Of(sheet);
        for (var i = 0; i < 200; i++) some.SheetOf([.. some.Places.Select((p, n) => p.Candidates[(i >> n) % p.Candidates.Count])]);
        Console.WriteLine($"whole sheets: {Stopwatch.GetElapsedTime(whole).TotalMilliseconds / 200:0.00} ms each, {Stopwatch.GetElapsedTime(whole).TotalMilliseconds / 200 * 100:0} s for 100,000");
    }

    /// <summary>Every calculation of the brakes but heat and readings, in both loading conditions, as a search runs them.</summary>
    private static void Once(Sheet sheet)
    {
        var states = sheet.Instances.OfType<InstanceState>().Where(i => BrakeSearch.Goal().Judges(i.Instance) && i.Instance.Calculation.Id != "lift.hose-length").ToList();
        var runs = new double[300];
        for (var r = 0; r < runs.Length; r++)
        {
            var clock = Stopwatch.GetTimestamp();
            for (var i = 0; i < 20; i++)
                foreach (var state in states) state.Instance.Calculation.Run(state.Inputs, Told.Numbers);
            runs[r] = Stopwatch.GetElapsedTime(clock).TotalMicroseconds / 20;
        }
        Array.Sort(runs);
        Console.WriteLine($"all {states.Count} calculations of the brakes but heat, with their verdicts: median {runs[150]:0.0} us, best {runs[0]:0.0}");
        foreach (var g in states.GroupBy(i => i.Instance.Calculation.Id))
        {
            var clock = Stopwatch.GetTimestamp();
            for (var i = 0; i < 2000; i++)
                foreach (var state in g) state.Instance.Calculation.Run(state.Inputs, Told.Numbers);
            Console.WriteLine($"  {g.Key}: {Stopwatch.GetElapsedTime(clock).TotalMicroseconds / 2000:0.0} us for {g.Count()}");
        }
    }

    private static JsonArray Stock()
    {
        var stock = new JsonArray();
        void Kind(string name, Func<int, (string Key, JsonNode Value)[]> of)
        {
            for (var i = 0; i < Each; i++)
                stock.Add(new JsonObject
                {
                    ["id"] = $"{name}-{i}", ["title"] = $"{name} {i}", ["each"] = $"{40 + (7 * i)}.00 USD",
                    ["option"] = new JsonObject { ["parameters"] = new JsonObject(of(i).Select(p => KeyValuePair.Create(p.Key, (JsonNode?)p.Value))) }
                });
        }
        Kind("caliper", i => [("wheel.front.*.brake.piston-diameter", $"{64 + (2 * i)} mm")]);
        Kind("rotor", i => [("wheel.front.*.brake.rotor-diameter", $"{290 + (5 * i)} mm"), ("wheel.front.*.brake.pad-outer-diameter", $"{286 + (5 * i)} mm"), ("wheel.front.*.brake.pad-inner-diameter", $"{200 + (4 * i)} mm")]);
        Kind("master", i => [("brakes.master.bore", $"{23 + i} mm")]);
        Kind("booster", i => [("brakes.booster.diaphragm-diameter", $"{200 + (8 * i)} mm")]);
        Kind("valve", i => [("brakes.valve.knee", $"{2 + (0.3 * i):0.0} MPa")]);
        return stock;
    }
}
