using System.Diagnostics;
using BenchmarkDotNet.Attributes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Benchmarks;

/// <summary>The whole check of one real build: every calculation in every loading condition, with its uncertainties, and what its findings say.</summary>
[MemoryDiagnoser]
public class DemoCheck
{
    private Build _build = null!;
    private ShopFacts _shop = null!;
    private EvaluationPlan _plan = null!;
    private Sheet _asFound = null!;

    /// <summary>The file of the demo's truck in this checkout.</summary>
    internal static string Demo => Path.Combine(Root(), "data", "demo", "packhorse.json");

    [GlobalSetup]
    public void Setup() => Read(Demo);

    /// <summary>The sheet from nothing but the compiled build.</summary>
    [Benchmark(Baseline = true)]
    public int Check() => _plan.Evaluate(_build, _shop, _build.Scenarios["working"]).Findings().Count();

    /// <summary>The peer in the same run: reading the file's text alone, without its meaning.</summary>
    [Benchmark]
    public int ParseTheFile() => System.Text.Json.JsonDocument.Parse(File.ReadAllBytes(Demo)).RootElement.GetProperty("slots").GetArrayLength();

    /// <summary>One choice changed, the sheet before at hand.</summary>
    [Benchmark]
    public int CheckAgain() => _plan.Evaluate(_build, _shop, _build.Scenarios["working"], _asFound).Findings().Count();

    /// <summary>Rough figures in seconds.</summary>
    public static void Look()
    {
        var check = new DemoCheck();
        check.Setup();
        foreach (var (name, act) in new (string, Func<int>)[] { ("check", check.Check), ("check again", check.CheckAgain), ("parse the file", check.ParseTheFile) })
        {
            for (var i = 0; i < 200; i++) act();
            var times = new double[300];
            for (var i = 0; i < times.Length; i++)
            {
                var clock = Stopwatch.GetTimestamp();
                act();
                times[i] = Stopwatch.GetElapsedTime(clock).TotalMilliseconds;
            }
            Array.Sort(times);
            Console.WriteLine($"{name}: median {times[150]:0.00} ms, best {times[0]:0.00}, nine in ten under {times[270]:0.00}");
        }
        Console.WriteLine($"{check._plan.Instances.Length} instances, {check._plan.Space.KeyCount} keys, {check.Check()} findings");
        foreach (var slow in check.Slowest().Take(12)) Console.WriteLine(slow);
    }

    private IEnumerable<string> Slowest()
    {
        var sheet = _plan.Evaluate(_build, _shop, _build.Scenarios["working"]);
        return sheet.Instances.OfType<InstanceState>().GroupBy(i => i.Instance.Calculation.Id).Select(g =>
        {
            var clock = Stopwatch.GetTimestamp();
            for (var i = 0; i < 20; i++)
                foreach (var state in g) state.Instance.Calculation.Run(state.Inputs, false);
            return (g.Key, Ms: Stopwatch.GetElapsedTime(clock).TotalMilliseconds / 20, Count: g.Count());
        }).OrderByDescending(s => s.Ms).Select(s => $"  {s.Key}: {s.Ms:0.000} ms for {s.Count}, once each");
    }

    private void Read(string file)
    {
        var faults = new Faults();
        var read = BuildFile.Read(File.ReadAllBytes(file), Catalogue.Shipped, faults) ?? throw new InvalidDataException(string.Join('\n', faults.List));
        (_build, _shop) = (read.Build, read.Shop);
        _plan = new(Catalogue.Shipped, _build);
        _asFound = _plan.Evaluate(_build, _shop, null);
    }

    private static string Root()
    {
        var at = new DirectoryInfo(AppContext.BaseDirectory);
        while (at is not null && !File.Exists(Path.Combine(at.FullName, "Crossmember.slnx"))) at = at.Parent;
        return at?.FullName ?? throw new InvalidOperationException("run it from a checkout");
    }
}
