using System.Collections.Immutable;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Builds.Evaluation;

/// <summary>Works one sheet out: who exists, what is stated, the ledger, then every instance in publishing order.</summary>
internal sealed class Evaluator
{
    private readonly EvaluationPlan _plan;
    private readonly KeySpace _space;
    private readonly Build _build;
    private readonly ShopFacts _shop;
    private readonly string _scenario;
    private readonly Choices _choices;
    private readonly ImmutableArray<KeyValuePair<string, Stated>> _whatIf;
    private readonly Sheet? _previous;
    private readonly bool _trial;
    private readonly CompiledOption?[] _inEffect;
    private readonly KeyState[] _keys;
    private readonly InstanceState?[] _instances;
    private readonly ModelFindings _findings;
    private readonly Ledger _ledger;
    private bool[] _alive = [];

    public Evaluator(
        EvaluationPlan plan, Build build, ShopFacts shop, string scenario, Choices choices, ImmutableArray<KeyValuePair<string, Stated>> whatIf, Sheet? previous,
        bool trial = false)
    {
        (_plan, _space, _build, _shop, _scenario, _choices, _whatIf, _trial) = (plan, plan.Space, build, shop, scenario, choices, whatIf, trial);
        _previous = ReferenceEquals(previous?.Plan, plan) ? previous : null;
        _inEffect = new CompiledOption?[plan.SlotNames.Length];
        foreach (var slot in build.Slots) _inEffect[plan.SlotId(slot.Id)] = plan.Compiled(build, slot, choices[slot.Id]);
        _keys = new KeyState[_space.KeyCount];
        _instances = new InstanceState?[plan.Instances.Length];
        _findings = new(plan);
        _ledger = new(plan, build, _inEffect);
    }

    public Sheet Run()
    {
        _alive = Liveness.Of(_space, _build, _inEffect);
        new LeafValues(_space, _alive, _inEffect, _keys, _findings, _plan).State(_whatIf);
        _ledger.Publish(_keys);
        for (var i = 0; i < _instances.Length; i++)
            if (Array.TrueForAll(_plan.Instances[i].Members, m => _alive[m]))
                _instances[i] = Work(_plan.Instances[i], _previous?.Instances[i]);
        _findings.OfChoices(_build, _choices, _inEffect);
        _findings.OfDifferences(_keys);
        var totals = Totals.Of(_plan, _inEffect, _shop, _ledger.BareMass());
        _findings.OfTotals(totals);
        var scale = ScaleComparison.All(_plan, _build, _ledger);
        _findings.OfWeighings(_ledger, scale);
        return new(_plan, _build, _shop, _scenario, _choices)
        {
            InEffect = _inEffect,
            Alive = _alive,
            Keys = _keys,
            Instances = _instances,
            ModelFindings = _findings.Sorted(),
            Totals = totals,
            Ledger = _ledger,
            Scale = scale,
        };
    }

    private InstanceState Work(Instance instance, InstanceState? before)
    {
        var inputs = new Value[instance.Inputs.Length];
        var rests = new Bits(_plan.LeafCount);
        var basis = Basis.Measured;
        Bits?[]? limits = null;
        for (var i = 0; i < inputs.Length; i++)
            if (instance.Calculation.IsOnlyLimit(i))
            {
                var ignored = Basis.Measured;
                inputs[i] = Read(instance.Inputs[i], (limits ??= new Bits?[inputs.Length])[i] = new(_plan.LeafCount), ref ignored);
            }
            else inputs[i] = Read(instance.Inputs[i], rests, ref basis);
        var same = before is not null && before.Inputs.AsSpan().SequenceEqual(inputs);
        var outcome = same ? before!.Outcome : instance.Calculation.Run(inputs, false);
        // A trial borrows the spreads of what it is held against: they tell doubt, not the answer, and cost ten times as much as the answer.
        var grounds = _trial && before is not null ? before.Grounds : Uncertainty.Grounds(instance, inputs, _keys, _ledger);
        var spread = _trial && before is not null ? before.PlusMinus : same && grounds.AsSpan().SequenceEqual(before!.Grounds) ? before.PlusMinus : Uncertainty.Of(instance, inputs, outcome, _keys, _ledger);
        var state = new InstanceState(instance, inputs, outcome, basis, rests) { PlusMinus = spread, Grounds = grounds, Limits = limits };
        Publish(instance, state);
        return state;
    }

    private Value Read(InputSource source, Bits rests, ref Basis basis)
    {
        if (!source.Constant.IsAbsent) return source.Constant;
        if (source.Map is { } map)
        {
            var items = new List<(string, Value)>(map.Length);
            var missing = false;
            foreach (var (key, name) in map)
            {
                if (!Lives(key)) continue;
                var member = ReadKey(key, false, source.Spec, rests, ref basis);
                missing |= member.IsAbsent;
                items.Add((name, member));
            }
            return missing || items.Count == 0 ? default : Value.Of(new Members(items));
        }
        if (source.Key >= 0) return Lives(source.Key) ? ReadKey(source.Key, source.MayDefault, source.Spec, rests, ref basis) : default;
        if (!source.MayDefault || source.Spec.DefaultSi is not { } standIn) return default;
        basis = Basis.Assumed;
        return Value.Of(standIn);
    }

    private bool Lives(int key) => Array.TrueForAll(_space.MembersOf(key), m => _alive[m]);

    private Value ReadKey(int key, bool mayDefault, InputSpec spec, Bits rests, ref Basis basis)
    {
        ref var state = ref _keys[key];
        state.Exists = true;
        if (state.Source == Source.None && mayDefault && (_space.PatternOf(key).Default ?? spec.DefaultSi) is { } standIn)
            (state.Value, state.Source, state.Basis, state.PlusMinus) = (Value.Of(standIn), Source.Default, Basis.Assumed, double.NaN);
        if (state.RestsOn is { } deeper && state.Source is Source.Calculated or Source.None) rests.Unite(deeper);
        else rests.Add(key);
        if (!state.Value.IsAbsent && state.Basis > basis) basis = state.Basis;
        return state.Value;
    }

    private void Publish(Instance instance, InstanceState state)
    {
        for (var o = 0; o < instance.Publishes.Length; o++)
        {
            if (instance.Publishes[o] is not (>= 0 and var key)) continue;
            ref var k = ref _keys[key];
            k.Exists = true;
            (k.Published, k.PublishedPlusMinus, k.PublishedRestsOn) = (state.Outcome.Outputs[o], state.PlusMinus?[o] ?? double.NaN, state.RestsOn);
            if (k.Source != Source.None) continue;
            k.RestsOn = state.RestsOn;
            if (k.Published.IsAbsent) continue;
            (k.Value, k.Source, k.Basis, k.PlusMinus) = (k.Published, Source.Calculated, state.Basis, k.PublishedPlusMinus);
        }
    }
}
