using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Workshop;

/// <summary>In what way something was said of a value.</summary>
public enum SaidAs { Option, Noted, Tried }

/// <summary>One word on a value: who, when, where, what it was before and what after.</summary>
/// <param name="Place">The option's or the what-if's subject, such as <c>slots/tires/options/at33</c>.</param>
/// <param name="Pattern">The key as it was written there, stars and all.</param>
/// <param name="Old">Null where nothing was said there before; an absent value where it was said that nothing is known.</param>
/// <param name="New">Null where the word was taken away.</param>
public sealed record ValueWord(Entry Entry, SaidAs As, string Place, string Pattern, Stated? Old, Stated? New)
{
    /// <summary>Whether it put an earlier entry right, or took it back.</summary>
    public bool Corrects => Entry.Fact.Corrects is not null;
}

/// <summary>Everything that was ever said of one key of a build.</summary>
public sealed class ValueHistory
{
    private readonly string _key;
    private readonly ParameterPattern _pattern;
    private readonly Dictionary<string, List<(HashSet<Guid> Ids, JsonNode? Payload)>> _standing = new(StringComparer.Ordinal);
    private readonly List<ValueWord> _words = [];

    private ValueHistory(string key, ParameterPattern pattern) => (_key, _pattern) = (key, pattern);

    /// <summary>Newest first. None for a key that no pattern knows.</summary>
    /// <param name="entries">The build's, from its first.</param>
    public static IReadOnlyList<ValueWord> Of(IReadOnlyList<Entry> entries, string key, ParameterTable table)
    {
        if (table.Of(key) is not { } pattern) return [];
        var history = new ValueHistory(key, pattern);
        foreach (var entry in entries) history.Take(entry);
        history._words.Reverse();
        return history._words;
    }

    private void Take(Entry entry)
    {
        switch (entry.Fact.Subject.Split('/'))
        {
            case ["slots", var slot, "options", var option] when entry.Fact.Kind == EntryKind.OptionStated.Name:
                Said(entry, SaidAs.Option, $"slots/{slot}/options/{option}");
                break;
            case ["slots", var slot, "options", var option, "values", var pattern] when entry.Fact.Kind == EntryKind.ValueNoted.Name && KeyChecks.Covers(pattern, _key):
                Said(entry, SaidAs.Noted, $"slots/{slot}/options/{option}");
                break;
            case ["scenarios", var scenario, "what-ifs", var pattern] when entry.Fact.Kind == EntryKind.WhatIfSet.Name && KeyChecks.Covers(pattern, _key):
                Said(entry, SaidAs.Tried, $"scenarios/{scenario}");
                break;
        }
    }

    private void Said(Entry entry, SaidAs way, string place)
    {
        var before = Present(entry.Fact.Subject);
        Stand(entry.Fact);
        var after = Present(entry.Fact.Subject);
        // A new body of an option that says the same of this key is no news of it.
        if (way == SaidAs.Option && before == after) return;
        var old = before ?? (way == SaidAs.Noted ? Present(place) : null);
        if (old is null && after is null) return;
        _words.Add(new(entry, way, place, after?.Pattern ?? old!.Value.Pattern, old?.Stated, after?.Stated));
    }

    /// <summary>A correction takes the place of what it corrects, or of an earlier correction of that.</summary>
    private void Stand(Fact fact)
    {
        if (!_standing.TryGetValue(fact.Subject, out var list)) _standing[fact.Subject] = list = [];
        var at = fact.Corrects is { } target ? list.FindIndex(s => s.Ids.Contains(target)) : -1;
        if (at < 0) list.Add(([fact.Id], fact.Payload));
        else
        {
            list[at].Ids.Add(fact.Id);
            list[at] = (list[at].Ids, fact.Payload);
        }
    }

    private (string Pattern, Stated Stated)? Present(string subject)
    {
        if (!_standing.TryGetValue(subject, out var list) || list.FindLast(s => s.Payload is not null).Payload is not { } payload) return null;
        if (subject.Contains("/values/", StringComparison.Ordinal) || subject.Contains("/what-ifs/", StringComparison.Ordinal)) return Read(subject.Split('/')[^1], payload);
        // Within one body the fewest stars win; of equals the later.
        var said = (payload["parameters"] as JsonObject ?? []).Where(p => KeyChecks.Covers(p.Key, _key)).OrderByDescending(p => KeyChecks.Stars(p.Key)).LastOrDefault();
        return said.Key is null ? null : Read(said.Key, said.Value);
    }

    private (string, Stated)? Read(string pattern, JsonNode? said) =>
        ValueReader.Stated(JsonSerializer.SerializeToElement(said), "", _pattern, new Faults()) is { } stated ? (pattern, stated) : null;
}
