using BenchmarkDotNet.Attributes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Ripples;
using Crossmember.Builds.Slots;

namespace Crossmember.Benchmarks;

/// <summary>What a page asks for when one option is looked at: a new sheet from the last one, and the difference.</summary>
[MemoryDiagnoser]
public class RippleBenchmarks
{
    private readonly ShopFacts _shop = new() { Currency = "USD" };
    private EvaluationPlan _plan = null!;
    private Sheet _working = null!;
    private Scenario _tall = null!, _all = null!, _tried = null!;

    [GlobalSetup]
    public void Setup()
    {
        var build = SyntheticVehicle.Build;
        _plan = new(SyntheticVehicle.Catalogue, build);
        (_tall, _all) = (build.Scenarios["tall"], build.Scenarios["all"]);
        _tried = build.Scenarios["working"] with { Id = "tried", WhatIf = [new("engine.redline", new(Engineering.Calculations.Value.Of(400), "3820 rpm", Basis.Assumed, null))] };
        _working = _plan.Evaluate(build, _shop, build.Scenarios["working"]);
    }

    [Benchmark(Description = "one parameter that every calculation rests on")]
    public Ripple EveryCalculation() => Ripple.Between(_working, _plan.Evaluate(SyntheticVehicle.Build, _shop, _tall, _working));

    [Benchmark(Description = "one parameter that few rest on")]
    public Ripple FewCalculations() => Ripple.Between(_working, _plan.Evaluate(SyntheticVehicle.Build, _shop, _tried, _working));

    [Benchmark(Description = "120 choices at once")]
    public Ripple EveryChoice() => Ripple.Between(_working, _plan.Evaluate(SyntheticVehicle.Build, _shop, _all, _working));

    [Benchmark(Description = "peer: the whole sheet without the previous one, then the difference")]
    public Ripple FromNothing() => Ripple.Between(_working, _plan.Evaluate(SyntheticVehicle.Build, _shop, _tall));
}
