using System.Collections.Immutable;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Evaluation;

/// <summary>What is on the vehicle in a scenario: for every slot the option in effect, after bases, takes and <c>none</c>.</summary>
public sealed class Choices
{
    private readonly Dictionary<string, Option> _inEffect = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _takenBy = new(StringComparer.Ordinal);

    private Choices(Build build, IReadOnlyDictionary<string, string> chosen)
    {
        Chosen = chosen;
        var left = new HashSet<string>(StringComparer.Ordinal);
        // Parents before children, then by id: neither list order nor time decides who takes whom.
        foreach (var slot in build.Slots.OrderBy(s => Depth(build, s)).ThenBy(s => s.Id, StringComparer.Ordinal))
        {
            var absent = left.Contains(slot.Id) || (slot.Parent is { } p && left.Contains(p));
            var option = absent ? null : slot.Find(chosen.GetValueOrDefault(slot.Id, Option.AsFound));
            option ??= absent ? slot.Find(Option.None)! : slot.Find(Option.AsFound)!;
            _inEffect[slot.Id] = option;
            if (option.Id == Option.None) left.Add(slot.Id);
            foreach (var taken in ResolvedOption.Of(slot, option).Body.Takes ?? [])
                if (Take(taken, slot.Id, left))
                    LeaveOffBeneath(build, taken, left);
        }
    }

    /// <summary>Explicit choices: own, else the base's.</summary>
    public IReadOnlyDictionary<string, string> Chosen { get; }

    /// <summary>The slot whose option took each taken slot.</summary>
    public IReadOnlyDictionary<string, string> TakenBy => _takenBy;

    public Option this[string slot] => _inEffect[slot];

    /// <summary>The choices of a scenario over its bases.</summary>
    public static Choices Of(Build build, Scenario? scenario) => new(build, Explicit(build, scenario));

    /// <summary>The choices that a map states; everything else as found.</summary>
    public static Choices Of(Build build, IReadOnlyDictionary<string, string> chosen) => new(build, chosen);

    public static IReadOnlyDictionary<string, string> Explicit(Build build, Scenario? scenario)
    {
        var map = new SortedDictionary<string, string>(StringComparer.Ordinal);
        foreach (var s in Chain(build, scenario))
            foreach (var (slot, option) in s.Choices)
                map.TryAdd(slot, option);
        return map;
    }

    /// <summary>What-ifs in effect: per key the nearest scenario's word; null drops.</summary>
    public static ImmutableArray<KeyValuePair<string, Stated>> WhatIf(Build build, Scenario? scenario)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var list = ImmutableArray.CreateBuilder<KeyValuePair<string, Stated>>();
        foreach (var s in Chain(build, scenario))
            foreach (var (key, stated) in s.WhatIf)
                if (seen.Add(key) && stated is not null)
                    list.Add(new(key, stated));
        return list.ToImmutable();
    }

    /// <summary>A scenario and its bases, nearest first.</summary>
    public static IEnumerable<Scenario> Chain(Build build, Scenario? scenario)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        for (var s = scenario; s is not null && seen.Add(s.Id); s = s.Base is { } b ? build.Scenarios.GetValueOrDefault(b) : null) yield return s;
    }

    private bool Take(string taken, string by, HashSet<string> left)
    {
        if (!_takenBy.TryAdd(taken, by)) return false;
        left.Add(taken);
        return true;
    }

    /// <summary>A taker may come after what it takes: put right what was already settled there and beneath.</summary>
    private void LeaveOffBeneath(Build build, string taken, HashSet<string> left)
    {
        foreach (var slot in build.Slots.Where(s => s.Id == taken || s.Parent == taken))
        {
            if (_inEffect.ContainsKey(slot.Id)) _inEffect[slot.Id] = slot.Find(Option.None)!;
            if (slot.Id != taken && left.Add(slot.Id)) LeaveOffBeneath(build, slot.Id, left);
        }
    }

    private static int Depth(Build build, Slot slot)
    {
        var depth = 0;
        for (var at = slot; at?.Parent is { } p && depth <= build.Slots.Length; at = build.Find(p)) depth++;
        return depth;
    }
}
