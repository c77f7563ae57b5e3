using System.Collections.Immutable;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Folding;

/// <summary>A slot while it is being folded.</summary>
internal sealed class SlotState(Slot slot)
{
    private readonly List<Option> _options = [.. slot.Options];
    private readonly Dictionary<(string Option, string Pattern), (int Order, NotedValue Value)> _noted =
        slot.Noted.Select((v, i) => (v, i)).ToDictionary(x => (x.v.Option, x.v.Pattern), x => (x.i, x.v));

    private Slot _slot = slot;
    private int _next = slot.Noted.Length;

    public string Id => _slot.Id;

    public void Define(Slot definition) => _slot = definition with { Grade = _slot.Grade, Findings = _slot.Findings };

    public void Grade(string? grade, IReadOnlyList<string> findings) => _slot = _slot with { Grade = grade, Findings = [.. findings] };

    public void State(Option option)
    {
        var at = _options.FindIndex(o => o.Id == option.Id);
        if (at >= 0) _options[at] = option;
        else _options.Add(option);
    }

    /// <summary>A later value of the same pattern displaces the earlier one and counts as the latest word.</summary>
    public void Note(NotedValue value) => _noted[(value.Option, value.Pattern)] = (_next++, value);

    public Slot ToSlot() => _slot with { Options = [.. _options], Noted = [.. _noted.Values.OrderBy(v => v.Order).Select(v => v.Value)] };
}

/// <summary>A scenario while it is being folded.</summary>
internal sealed class ScenarioState(Scenario scenario)
{
    private readonly SortedDictionary<string, string> _choices = new(scenario.Choices, StringComparer.Ordinal);
    private readonly List<KeyValuePair<string, Stated?>> _whatIf = [.. scenario.WhatIf];
    private Scenario _scenario = scenario;

    public void Rename(string? title, string? basedOn) => _scenario = _scenario with { Title = title, Base = basedOn };

    /// <summary>A null option goes back to the base.</summary>
    public void Choose(string slot, string? option)
    {
        if (option is null) _choices.Remove(slot);
        else _choices[slot] = option;
    }

    /// <summary>A null value drops the what-if, also the one inherited from the base.</summary>
    public void Try(string key, Stated? value)
    {
        _whatIf.RemoveAll(w => w.Key == key);
        _whatIf.Add(new(key, value));
    }

    public Scenario ToScenario() => _scenario with { Choices = _choices.ToImmutableSortedDictionary(StringComparer.Ordinal), WhatIf = [.. _whatIf] };
}
