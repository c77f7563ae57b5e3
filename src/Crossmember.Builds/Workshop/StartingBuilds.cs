using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;
using Crossmember.Builds.Templates;

namespace Crossmember.Builds.Workshop;

/// <summary>Makes the facts of a new build, one batch: what it is called, its items, a what-if to work in.</summary>
public sealed class StartingBuilds(Stating stating, TimeProvider clock)
{
    /// <summary>The what-if that every new build has.</summary>
    public const string Working = "working";

    /// <summary>From the usual items of a type of vehicle; nothing is said of any of them yet.</summary>
    public IReadOnlyList<Fact> FromTemplate(ItemTemplate template, string id, string title, int gears, int ranges, Speaker by)
    {
        var items = template.Items.Select(i => (Subject(i.Id), EntryKind.SlotDefined, Definition(i, title)));
        return Batch(id, title, ItemTemplate.Sets(gears, ranges), items, by);
    }

    /// <summary>From a build that is here: its items, and what could be done about each if wanted.</summary>
    /// <param name="entries">Its whole stream.</param>
    public IReadOnlyList<Fact> FromBuild(IReadOnlyList<Entry> entries, bool withOptions, string id, string title, Speaker by)
    {
        var pattern = BuildPattern.Of(entries);
        var items = pattern.Items.Select(i => (Subject(i.Id), EntryKind.SlotDefined, i.Id == Slot.Root ? Renamed(i.Definition, title) : i.Definition));
        var options = withOptions ? pattern.Options().Select(o => ($"{Subject(o.Item)}/options/{o.Option}", EntryKind.OptionStated, o.Body)) : [];
        return Batch(id, title, pattern.Sets, [.. items, .. options], by);
    }

    private List<Fact> Batch(string id, string title, JsonObject? sets, IEnumerable<(string Subject, EntryKind Kind, JsonObject Payload)> said, Speaker by)
    {
        var batch = FactIds.New(clock);
        List<Fact> facts = [stating.Open(id, title, sets, by, batch)];
        var seen = new LastOnSubject();
        foreach (var (subject, kind, payload) in said)
        {
            facts.Add(stating.Say(id, kind, subject, payload, seen.On(subject), by, batch));
            seen.Add(subject, facts[^1].Id);
        }
        facts.Add(stating.Say(id, EntryKind.ScenarioOpened, $"scenarios/{Working}", new JsonObject { ["base"] = null }, null, by, batch));
        return facts;
    }

    private static string Subject(string slot) => "slots/" + slot;

    private static JsonObject Definition(TemplateItem item, string title)
    {
        var payload = new JsonObject { ["parent"] = item.Parent, ["title"] = item.Parent is null ? title : item.Title, ["weight"] = item.Weight };
        if (item.Governs.Length > 0) payload["governs"] = new JsonArray(item.Governs);
        return payload;
    }

    private static JsonObject Renamed(JsonObject definition, string title)
    {
        var own = (JsonObject)definition.DeepClone();
        own["title"] = title;
        return own;
    }
}
