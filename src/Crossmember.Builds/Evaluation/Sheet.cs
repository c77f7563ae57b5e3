using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>Where a key's value in a sheet is from.</summary>
public enum Source { None, Option, WhatIf, Calculated, Default, Conflict }

/// <summary>A key in a sheet.</summary>
public struct KeyState
{
    public Value Value { get; internal set; }

    public Source Source { get; internal set; }

    public Basis Basis { get; internal set; }

    /// <summary>As somebody typed it; null where calculated.</summary>
    public string? Typed { get; internal set; }

    /// <summary>One standard uncertainty in SI; NaN where nobody said.</summary>
    public double PlusMinus { get; internal set; }

    /// <summary>Stated, tried, in conflict, published or read by a living instance: it shows.</summary>
    public bool Exists { get; internal set; }

    /// <summary>What the publishing calculation says, also where a stated value hides it.</summary>
    public Value Published { get; internal set; }

    public double PublishedPlusMinus { get; internal set; }

    /// <summary>Leaves that a published value rests on; null for leaves themselves.</summary>
    public Bits? RestsOn { get; internal set; }

    /// <summary>The same for a published value that a stated one hides.</summary>
    public Bits? PublishedRestsOn { get; internal set; }
}

/// <summary>A living instance in a sheet.</summary>
public sealed record InstanceState(Instance Instance, Value[] Inputs, Outcome Outcome, Basis Basis, Bits RestsOn)
{
    /// <summary>By input: what one that is only a limit rests on; null for the others. Findings rest on it, outputs do not.</summary>
    public Bits?[]? Limits { get; init; }

    /// <summary>One standard uncertainty per output in SI, from those of the inputs; null where no input has one.</summary>
    public double[]? PlusMinus { get; init; }

    /// <summary>The spreads of the inputs, as far as they bear on those of the outputs.</summary>
    internal double[] Grounds { get; init; } = [];

    /// <summary>The same outcome with its working and its curves, which sheets are worked out without.</summary>
    public Outcome Shown() => Instance.Calculation.Run(Inputs, true);
}

/// <summary>A finding with its identity in the sheet and what it rests on.</summary>
public sealed record SheetFinding(string Id, Finding Finding, Bits RestsOn);

/// <summary>The master sheet: everything one scenario says, derived in one pass.</summary>
public sealed class Sheet
{
    internal Sheet(EvaluationPlan plan, Build build, ShopFacts shop, string scenario, Choices choices) =>
        (Plan, Build, Shop, Scenario, Choices) = (plan, build, shop, scenario, choices);

    public EvaluationPlan Plan { get; }

    public Build Build { get; }

    public ShopFacts Shop { get; }

    public string Scenario { get; }

    public Choices Choices { get; }

    /// <summary>By the plan's slot number; null where this build has no such slot.</summary>
    public required CompiledOption?[] InEffect { get; init; }

    public required bool[] Alive { get; init; }

    public required KeyState[] Keys { get; init; }

    /// <summary>By the plan's instance number; null where the instance does not exist.</summary>
    public required InstanceState?[] Instances { get; init; }

    /// <summary>Findings of the model itself, ordinally by id.</summary>
    public required IReadOnlyList<SheetFinding> ModelFindings { get; init; }

    public required Totals Totals { get; init; }

    /// <summary>What the mass is made of.</summary>
    public required Ledger Ledger { get; init; }

    /// <summary>Every weighing after the first against what the one before it and the ledger led to expect.</summary>
    public required IReadOnlyList<ScaleComparison> Scale { get; init; }

    /// <summary>The state of a key by name, or null where it does not exist.</summary>
    public KeyState? Key(string name) => Plan.Space.KeyId(name) is >= 0 and var k && Keys[k].Exists ? Keys[k] : null;

    public InstanceState? Instance(string id) => Instances.FirstOrDefault(i => i?.Instance.Id == id);

    /// <summary>Every finding, worst first, then by id.</summary>
    public IEnumerable<SheetFinding> Findings() =>
        Instances.Where(i => i is not null).SelectMany(FindingsOf!).Concat(ModelFindings)
            .OrderByDescending(f => f.Finding.Verdict).ThenBy(f => f.Id, StringComparer.Ordinal);

    /// <summary>The findings an instance raises in a sheet.</summary>
    public static IEnumerable<SheetFinding> FindingsOf(InstanceState state) =>
        state.Outcome.Findings.Where(f => state.Instance.Binding.Does(f.Check)).Select(f => new SheetFinding($"{state.Instance.Id}/{f.Check}", f, RestsOf(state, f.Check)));

    private static Bits RestsOf(InstanceState state, string check)
    {
        if (state.Limits is not { } limits) return state.RestsOn;
        var rests = state.RestsOn.Copy();
        foreach (var need in state.Instance.Calculation.About.Checks.First(c => c.Id == check).Needs)
            if (limits[state.Instance.Calculation.InputIndex(need)] is { } limit)
                rests.Unite(limit);
        return rests;
    }

    /// <summary>Names of leaves; a default is told as such.</summary>
    public IEnumerable<string> Names(Bits leaves) =>
        leaves.Items().Select(i => i < Plan.Space.KeyCount && Keys[i].Source == Source.Default ? "default:" + Plan.LeafName(i) : Plan.LeafName(i)).Order(StringComparer.Ordinal);
}
