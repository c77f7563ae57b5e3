using System.Text.Json.Nodes;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Workshop;

/// <summary>What another vehicle can take over from a build: sets, items, and options as they could be had anywhere. What was measured, found, weighed, tried on or quoted belongs to the one vehicle.</summary>
public sealed class BuildPattern
{
    private readonly Dictionary<(string Item, string Option), JsonObject> _bodies = [];

    private BuildPattern(IReadOnlyList<Standing> standing)
    {
        foreach (var s in standing.Where(s => s.Fact.Kind == EntryKind.BuildOpened.Name)) Sets = s.Payload["sets"]?.DeepClone() as JsonObject;
        // A new wording of an item replaces the old one in its place.
        Items = [.. standing.Where(s => s.Fact.Kind == EntryKind.SlotDefined.Name).GroupBy(s => s.Fact.Subject.Split('/')[1]).Select(g => (g.Key, (JsonObject)g.Last().Payload.DeepClone()))];
        foreach (var s in standing.Where(s => s.Fact.Kind == EntryKind.OptionStated.Name))
            if (s.Fact.Subject.Split('/') is [_, var item, _, var option])
                _bodies[(item, option)] = (JsonObject)s.Payload.DeepClone();
    }

    public JsonObject? Sets { get; }

    /// <summary>In the order they were defined.</summary>
    public IReadOnlyList<(string Id, JsonObject Definition)> Items { get; }

    public static BuildPattern Of(IEnumerable<Entry> entries) => new(Corrections.Effective(entries));

    /// <summary>Every option but what was found on the vehicle.</summary>
    public IEnumerable<(string Item, string Option, JsonObject Body)> Options()
    {
        foreach (var body in _bodies.Values) Strip(body);
        foreach (var ((item, option), body) in _bodies.OrderBy(b => IndexOf(b.Key.Item)).Where(b => b.Key.Option != Option.AsFound))
        {
            if (body["overrides"] is JsonArray overrides) Keep(body, "overrides", overrides.Where(o => States(item, option, (string?)o ?? "", 0)));
            yield return (item, option, body);
        }
    }

    private int IndexOf(string item) => Items.Select((i, n) => (i.Id, n)).First(i => i.Id == item).n;

    private static void Strip(JsonObject body)
    {
        foreach (var key in new[] { "fits", "documents", "stock" }) body.Remove(key);
        if (body["parameters"] is JsonObject parameters)
            foreach (var measured in parameters.Where(p => IsMeasured(p.Value)).Select(p => p.Key).ToList()) parameters.Remove(measured);
        if (body["masses"] is JsonArray { Count: > 0 } masses) Keep(body, "masses", masses.Where(m => !IsMeasured(m)));
        foreach (var price in (body["prices"] as JsonArray ?? []).OfType<JsonObject>())
            foreach (var key in new[] { "quote", "until" }) price.Remove(key);
    }

    private static bool IsMeasured(JsonNode? stated) => stated is JsonObject o && (string?)o["basis"] == "measured";

    /// <summary>A list that loses all it had goes: an empty one would say that there is nothing.</summary>
    private static void Keep(JsonObject body, string key, IEnumerable<JsonNode?> kept)
    {
        var list = kept.Select(n => n?.DeepClone()).ToArray();
        body.Remove(key);
        if (list.Length > 0) body[key] = new JsonArray(list);
    }

    /// <summary>Whether an option, or what it starts from, still states what it is to override.</summary>
    private bool States(string item, string option, string pattern, int deep)
    {
        if (deep > 100 || option == Option.AsFound || !_bodies.TryGetValue((item, option), out var body)) return false;
        return (body["parameters"] as JsonObject ?? []).Any(p => KeyChecks.Meet(p.Key, pattern)) || ((string?)body["like"] is { } like && States(item, like, pattern, deep + 1));
    }
}
