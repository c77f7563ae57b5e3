using System.Collections.Immutable;
using System.Text.Json;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>Folds the facts of one build, in order, into the build as it stands.</summary>
/// <remarks>Facts must come lifted and corrected. Reading faults are located under the pointer given with each fact; a faulty fact changes nothing.</remarks>
public sealed class BuildFold
{
    /// <summary>Raised whenever the same entries fold into something else.</summary>
    public const int Version = 2;

    private readonly ParameterTable _table;
    private readonly OptionReader _options;
    private readonly Dictionary<string, SlotState> _slots = new(StringComparer.Ordinal);
    private readonly List<string> _order = [];
    private readonly Dictionary<string, ScenarioState> _scenarios = new(StringComparer.Ordinal);
    private Build _rest;

    public BuildFold(string id, ParameterTable table)
    {
        (_table, _options) = (table, new(table));
        _rest = new() { Id = id };
    }

    /// <summary>Goes on from where an earlier fold stopped.</summary>
    public BuildFold(Build from, ParameterTable table)
        : this(from.Id, table)
    {
        _rest = from;
        foreach (var slot in from.Slots) Add(new(slot));
        foreach (var scenario in from.Scenarios.Values) _scenarios.Add(scenario.Id, new(scenario));
    }

    /// <summary>Applies one fact.</summary>
    /// <param name="pointer">Where its payload stands in the file, or its subject.</param>
    public void Apply(string kind, string subject, JsonElement payload, string pointer, long sequence, Faults faults)
    {
        _rest = _rest with { Position = Math.Max(_rest.Position, sequence) };
        if (EntryKind.Find(kind) is { Nature: EntryNature.Log } log && log != EntryKind.WeighingTaken) return;
        var before = faults.Count;
        var r = new ObjectReader(payload, pointer, faults);
        if (!r.IsObject) return;
        var change = Reading(kind, subject.Split('/'), r, faults);
        if (faults.Count == before) change?.Invoke();
    }

    public Build ToBuild() => _rest with
    {
        Slots = [.. _order.Select(id => _slots[id].ToSlot())],
        Scenarios = _scenarios.ToImmutableSortedDictionary(p => p.Key, p => p.Value.ToScenario(), StringComparer.Ordinal),
    };

    private Action? Reading(string kind, string[] subject, ObjectReader r, Faults faults) => kind switch
    {
        "build.opened" => Opened(r),
        "slot.defined" => Slot(SlotReader.Definition(r, subject[1], _table)),
        "slot.graded" => Graded(subject[1], SlotReader.Grade(r)),
        "option.stated" => OnSlot(subject[1], _options.Read(r, subject[3]), (s, o) => s.State(o)),
        "value.noted" => Noted(subject[1], subject[3], subject[5], r),
        "scenario.opened" => Scenario(subject[1], r),
        "scenario.dropped" => () => _scenarios.Remove(subject[1]),
        "choice.made" => Choice(subject[1], subject[3], r),
        "what-if.set" => WhatIf(subject[1], subject[3], r, faults),
        "scenario.approved" => Approved(ScenarioReader.Approval(r)),
        "condition.stated" => Condition(subject[1], r),
        "weighing.taken" => WeighingReader.Read(r) is { } w ? () => Weigh(w) : null,
        "document.revised" => Document(subject[1], r),
        "work.stopped" => Work(r),
        "phase.entered" => Entered(r),
        "build.archived" => Archived(r),
        "customer.recorded" => Recorded(r),
        "customer.erased" => Erased(r),
        _ => null,
    };

    private Action Opened(ObjectReader r)
    {
        string title = r.OptionalText("title") ?? "", created = r.OptionalText("created") ?? "";
        var sets = SetsReader.Read(r);
        r.Done();
        return () => _rest = _rest with { Title = title, Sets = sets, Created = created.Length > 0 ? created : null };
    }

    private Action Slot(Slot definition) => () =>
    {
        if (_slots.TryGetValue(definition.Id, out var known)) known.Define(definition);
        else Add(new(definition));
    };

    private void Add(SlotState state)
    {
        _slots.Add(state.Id, state);
        _order.Add(state.Id);
    }

    private Action? OnSlot<T>(string slot, T what, Action<SlotState, T> change) =>
        () =>
        {
            if (_slots.TryGetValue(slot, out var state)) change(state, what);
        };

    private Action? Graded(string slot, (string? Grade, IReadOnlyList<string> Findings) said) =>
        OnSlot(slot, said, (s, x) => s.Grade(x.Grade, x.Findings));

    private Action? Noted(string slot, string option, string key, ObjectReader r)
    {
        if (KeyChecks.Known(key, r.Pointer, _table, r.Faults) is not { } pattern) return null;
        var stated = ValueReader.Stated(r.Self, r.Pointer, pattern, r.Faults);
        return stated is null ? null : OnSlot(slot, new NotedValue(option, key, stated), (s, v) => s.Note(v));
    }

    private Action Scenario(string id, ObjectReader r)
    {
        string? title = r.OptionalText("title"), basedOn = r.OptionalText("base");
        r.Done();
        return () =>
        {
            if (_scenarios.TryGetValue(id, out var known)) known.Rename(title, basedOn);
            else _scenarios.Add(id, new(new(id, title, basedOn, ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal), [])));
        };
    }

    private Action Choice(string scenario, string slot, ObjectReader r)
    {
        var option = r.OptionalText("option");
        if (!r.Has("option")) r.Missing("option");
        r.Done();
        return () => _scenarios.GetValueOrDefault(scenario)?.Choose(slot, option);
    }

    private Action? WhatIf(string scenario, string key, ObjectReader r, Faults faults)
    {
        var value = r.Self;
        var drops = value.TryGetProperty("value", out var v) && v.ValueKind == JsonValueKind.Null;
        if (KeyChecks.Known(key, r.Pointer, _table, faults) is not { } pattern) return null;
        var stated = drops ? null : ValueReader.Stated(value, r.Pointer, pattern, faults);
        return () => _scenarios.GetValueOrDefault(scenario)?.Try(key, stated);
    }

    private Action Approved(Approval approval) => () => _rest = _rest with { Approvals = _rest.Approvals.Add(approval) };

    private Action Condition(string id, ObjectReader r)
    {
        var items = ConditionReader.Read(r);
        return () => _rest = _rest with { Conditions = _rest.Conditions.SetItem(id, new(id, items)) };
    }

    /// <summary>What is said of its condition later did not stand on the scale.</summary>
    private void Weigh(Weighing w) =>
        _rest = _rest with { Weighings = _rest.Weighings.Add(w with { ConditionThen = w.Condition is { } c && _rest.Conditions.TryGetValue(c, out var then) ? then.Items : null }) };

    private Action Document(string id, ObjectReader r)
    {
        var hash = r.Text("hash");
        foreach (var key in new[] { "document", "generator", "sourceHash", "after" }) _ = r.OptionalText(key);
        r.Done();
        return () => _rest = _rest with { Documents = _rest.Documents.SetItem(id, hash) };
    }

    private Action Entered(ObjectReader r)
    {
        var phase = r.Text("phase");
        if (phase.Length > 0 && !Phase.All.Contains(phase)) r.Faults.Add(r.At("phase"), $"'{phase}' is no phase", $"one of {string.Join(", ", Phase.All)}");
        r.Done();
        return () => _rest = _rest with { Phase = phase };
    }

    private Action Work(ObjectReader r)
    {
        var stopped = r.OptionalFlag("stopped") ?? true;
        var why = r.OptionalText("why") ?? "no reason given";
        r.Done();
        return () => _rest = _rest with { Stopped = stopped ? why : null };
    }

    private Action Archived(ObjectReader r)
    {
        var archived = r.OptionalFlag("archived") ?? true;
        var why = r.OptionalText("why") ?? "";
        r.Done();
        return () => _rest = _rest with { Archived = archived ? why : null };
    }

    /// <summary>A random id, because one made from a name would still tell the name.</summary>
    private Action Recorded(ObjectReader r)
    {
        var record = r.Text("record");
        if (!Guid.TryParseExact(record, "D", out _)) r.Faults.Add(r.At("record"), $"'{record}' is no id of a record", "a random UUID; the person's data lie under it, outside the journal");
        r.Done();
        return () => _rest = _rest with { Customer = record };
    }

    private Action Erased(ObjectReader r)
    {
        r.Done();
        return () => _rest = _rest with { Customer = null };
    }
}
