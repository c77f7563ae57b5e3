using System.Collections.Immutable;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>A rule broken, located by the subject of the entry and the place within its payload.</summary>
public sealed record RuleBroken(string Subject, string Inner, string Wrong, string Right);

/// <summary>What must hold across subjects: references, cycles, members, reserved ids. Checked on import and in every appending transaction.</summary>
public sealed class BuildRules
{
    private const int LongestChain = 100;

    private readonly List<RuleBroken> _broken = [];
    private readonly Build _build;
    private readonly ParameterTable _table;
    private readonly Dictionary<string, Slot> _slots;

    private BuildRules(Build build, ParameterTable table) =>
        (_build, _table, _slots) = (build, table, build.Slots.ToDictionary(s => s.Id, StringComparer.Ordinal));

    public static IReadOnlyList<RuleBroken> Check(Build build, ParameterTable table, string? currency)
    {
        var rules = new BuildRules(build, table);
        rules.Tree();
        foreach (var slot in build.Slots) new SlotRules(rules, slot).Check(ref currency);
        rules.Scenarios();
        rules.Conditions();
        rules.Weighings();
        return rules._broken;
    }

    internal Build Build => _build;

    internal ParameterTable Table => _table;

    internal Slot? Find(string slot) => _slots.GetValueOrDefault(slot);

    internal void Break(string subject, string inner, string wrong, string right) => _broken.Add(new(subject, inner, wrong, right));

    internal string NearestSlot(string slot) => $"nearest item: {Nearest.To(slot, _slots.Keys)}";

    /// <summary>Every set member a key names must be one of the build's; members of open sets are free.</summary>
    internal void Members(string key, string subject, string inner)
    {
        if (_table.Of(key) is not { } pattern) return;
        foreach (var (set, member) in ParameterTable.MembersOf(pattern, key))
            if (Sets.Closed.Contains(set) && !_build.Sets.Of(set).Contains(member))
                Break(subject, inner, $"'{member}' is not in the set {set}", $"one of: {string.Join(", ", _build.Sets.Of(set))}");
    }

    internal bool HasOption(string slot, string option) => Find(slot)?.Find(option) is not null;

    internal string OptionsOf(string slot) => "one of: " + string.Join(", ", Find(slot)!.Options.Select(o => o.Id).Append(Option.None));

    private void Tree()
    {
        if (!_slots.ContainsKey(Slot.Root)) Break("build", "", "there is no item 'vehicle'", "the vehicle itself is the root of the tree");
        foreach (var slot in _build.Slots)
        {
            var subject = "slots/" + slot.Id;
            if (!slot.Id.Split('.').All(Sets.IsMemberName)) Break(subject, "/id", $"'{slot.Id}' is no id of an item", "lower-case words joined by dots and dashes");
            if (slot.Id == Slot.Root && slot.Parent is not null) Break(subject, "/parent", "the root has a parent", "null");
            if (slot.Id == Slot.Root) continue;
            if (slot.Parent is null) Break(subject, "/parent", "only the root is without a parent", "name the item it belongs to");
            else if (!_slots.ContainsKey(slot.Parent)) Break(subject, "/parent", $"there is no item '{slot.Parent}'", NearestSlot(slot.Parent));
            else if (IsEndless(slot.Id, id => Find(id)?.Parent)) Break(subject, "/parent", $"it is its own ancestor, or lies more than {LongestChain} deep", "a parent nearer to the vehicle");
        }
    }

    /// <summary>Whether a chain comes back to itself, or is longer than anything on a vehicle: whoever follows it must come to an end.</summary>
    internal static bool IsEndless(string start, Func<string, string?> next)
    {
        var at = next(start);
        for (var n = 0; at is not null && n < LongestChain; n++) at = next(at);
        return at is not null;
    }

    private void Scenarios()
    {
        foreach (var s in _build.Scenarios.Values)
        {
            var subject = "scenarios/" + s.Id;
            if (s.Id is Option.AsFound or Option.None or Option.Approved) Break(subject, "/id", $"'{s.Id}' is reserved", "another id");
            if (!IsId(s.Id)) Break(subject, "/id", $"'{s.Id}' is no id", "letters, digits, dots and dashes");
            if (s.Base is { } b && !_build.Scenarios.ContainsKey(b)) Break(subject, "/base", $"there is no scenario '{b}'", $"one of: {string.Join(", ", _build.Scenarios.Keys)}");
            else if (IsEndless(s.Id, id => _build.Scenarios.GetValueOrDefault(id)?.Base)) Break(subject, "/base", $"it is its own base in the end, or stands on more than {LongestChain}", "a base that does not rest on it");
            Choices(s.Choices, subject, "/choices/");
            foreach (var (key, _) in s.WhatIf) Members(key, $"{subject}/what-ifs/{key}", "");
            var faults = new Faults();
            KeyChecks.NoTies([.. s.WhatIf.Where(w => w.Value is not null).Select(w => w.Key)], "/whatIf", faults);
            foreach (var f in faults.List) Break(subject, f.Path, f.Wrong, f.Right);
        }
    }

    internal static bool IsId(string id) => id.Length is > 0 and <= 100 && id.All(c => char.IsAsciiLetterOrDigit(c) || c is '-' or '.' or '_');

    private void Choices(ImmutableSortedDictionary<string, string> choices, string subject, string inner)
    {
        foreach (var (slot, option) in choices)
        {
            if (Find(slot) is null) Break(subject, inner + ObjectReader.Escape(slot), $"there is no item '{slot}'", NearestSlot(slot));
            else if (!HasOption(slot, option)) Break(subject, inner + ObjectReader.Escape(slot), $"'{slot}' has no option '{option}'", OptionsOf(slot));
            else if (slot == Slot.Root && option == Option.None) Break(subject, inner + slot, "the vehicle itself cannot be left off", OptionsOf(slot));
        }
    }

    private void Conditions()
    {
        foreach (var c in _build.Conditions.Keys)
            if (!_build.Sets.Of("condition").Contains(c))
                Break("conditions/" + c, "", $"'{c}' is not in the set condition", $"list it in sets; there are: {string.Join(", ", _build.Sets.Of("condition"))}");
    }

    private void Weighings()
    {
        for (var i = 0; i < _build.Weighings.Length; i++)
        {
            var w = _build.Weighings[i];
            var subject = $"weighings/{i}";
            if (w.Condition is { } c && !_build.Sets.Of("condition").Contains(c))
                Break(subject, "/condition", $"'{c}' is not in the set condition", $"one of: {string.Join(", ", _build.Sets.Of("condition"))}");
            Choices(w.Fitted, subject, "/fitted/");
            var places = w.ByWheel
                ? _build.Sets.Of("axle").SelectMany(a => _build.Sets.Of("side").Select(s => $"{a}.{s}")).ToHashSet()
                : [.. _build.Sets.Of("axle")];
            var list = w.ByWheel ? "/wheels" : "/axles";
            foreach (var reading in w.Readings.Keys.Where(k => !places.Contains(k))) Break(subject, list, $"'{reading}' is no place to weigh at", string.Join(", ", places));
            foreach (var place in places.Where(p => !w.Readings.ContainsKey(p))) Break(subject, list, $"the reading of {place} is missing", "every one is needed for the whole");
        }
    }
}
