using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>One or more builds compiled against the catalogue: keys, slots and instances numbered, instances in publishing order.</summary>
/// <remarks>Sheets of one plan compare by number. To compare a build with its earlier self, compile both into one plan.</remarks>
public sealed class EvaluationPlan
{
    private readonly Dictionary<string, int> _slotIds = new(StringComparer.Ordinal);
    private readonly Dictionary<(Build, string Slot, string Option), CompiledOption> _options = new(OptionKeys.Instance);
    private readonly Lock _lock = new();

    public EvaluationPlan(Catalogue catalogue, params IReadOnlyList<Build> builds)
    {
        Catalogue = catalogue;
        Space = new(catalogue.Table, builds);
        Instances = [.. catalogue.Bindings.SelectMany(b => Instance.Compile(b, Space))];
        foreach (var slot in builds.SelectMany(b => b.Slots).Select(s => s.Id).Distinct()) _slotIds.Add(slot, _slotIds.Count);
        SlotNames = [.. _slotIds.Keys];
        LedgerKeys = Enumerable.Range(0, Space.KeyCount).Where(k => Space.PatternOf(k) is { IsLedger: true } p && p.Segments[0] == "mass").Select(k => (Key: k, Name: Space.KeyName(k).Split('.')))
            .ToDictionary(k => k.Key, k => (k.Name[1], Array.IndexOf(Ledger.Outputs, k.Name[2])));
    }

    public Catalogue Catalogue { get; }

    public KeySpace Space { get; }

    public Instance[] Instances { get; }

    public string[] SlotNames { get; }

    /// <summary>By key of the mass ledger: its condition, and which of mass and moments it is.</summary>
    internal Dictionary<int, (string Condition, int Which)> LedgerKeys { get; }

    /// <summary>Leaves are numbered keys first, then slots.</summary>
    public int LeafCount => Space.KeyCount + SlotNames.Length;

    public int SlotId(string slot) => _slotIds[slot];

    public int SlotLeaf(int slot) => Space.KeyCount + slot;

    /// <summary>The name of a leaf in <c>restsOn</c> and <c>because</c>.</summary>
    public string LeafName(int leaf) => leaf < Space.KeyCount ? Space.KeyName(leaf) : "slot:" + SlotNames[leaf - Space.KeyCount];

    /// <summary>The sheet of a scenario; null: everything as found.</summary>
    /// <param name="previous">An earlier sheet of this plan: instances whose inputs are bit for bit the same are not worked again.</param>
    public Sheet Evaluate(Build build, ShopFacts shop, Scenario? scenario, Sheet? previous = null) =>
        new Evaluator(this, build, shop, scenario?.Id ?? Option.AsFound, Choices.Of(build, scenario), Choices.WhatIf(build, scenario), previous).Run();

    /// <summary>What a choice would say, for looking at many: verdicts and values are those of its own sheet, the spreads those of the sheet it is held against.</summary>
    public Sheet Try(Sheet against, Scenario scenario) =>
        new Evaluator(this, against.Build, against.Shop, scenario.Id, Choices.Of(against.Build, scenario), Choices.WhatIf(against.Build, scenario), against, trial: true).Run();

    /// <summary>The sheet of a fixed map of choices, as an approval keeps it.</summary>
    public Sheet Evaluate(Build build, ShopFacts shop, string name, IReadOnlyDictionary<string, string> chosen, Sheet? previous = null) =>
        new Evaluator(this, build, shop, name, Choices.Of(build, chosen), [], previous).Run();

    internal CompiledOption Compiled(Build build, Slot slot, Option option)
    {
        lock (_lock)
        {
            if (!_options.TryGetValue((build, slot.Id, option.Id), out var compiled))
                _options.Add((build, slot.Id, option.Id), compiled = new(slot, option, Space));
            return compiled;
        }
    }

    /// <summary>Builds are told apart by reference: comparing them by content would cost more than the cache saves.</summary>
    private sealed class OptionKeys : IEqualityComparer<(Build Build, string Slot, string Option)>
    {
        public static readonly OptionKeys Instance = new();

        public bool Equals((Build Build, string Slot, string Option) x, (Build Build, string Slot, string Option) y) =>
            ReferenceEquals(x.Build, y.Build) && x.Slot == y.Slot && x.Option == y.Option;

        public int GetHashCode((Build Build, string Slot, string Option) k) =>
            HashCode.Combine(System.Runtime.CompilerServices.RuntimeHelpers.GetHashCode(k.Build), k.Slot, k.Option);
    }
}
