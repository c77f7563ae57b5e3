using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Pasting;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Quantities;

namespace Crossmember.Builds.Workshop;

/// <summary>Makes the facts of a pasted parts list, one batch: options, items where they are new, lines of the shop's price list.</summary>
/// <param name="build">The build as it was seen.</param>
/// <param name="shop">The shop as it was seen.</param>
/// <param name="seen">The last entry on a subject of a stream that the person was looking at.</param>
public sealed class TakingInParts(Stating stating, TimeProvider clock, Build build, ShopFacts shop, Func<string, string, Guid?> seen)
{
    private readonly List<Fact> _facts = [];
    private readonly Dictionary<string, HashSet<string>> _options = new(StringComparer.Ordinal);
    private readonly HashSet<string> _items = [.. build.Slots.Select(s => s.Id)];
    private readonly HashSet<string> _stock = [.. shop.Stock.Keys];

    /// <param name="oneOption">Parts for one item are lines of one option, not options to choose between.</param>
    public IReadOnlyList<Fact> Facts(IEnumerable<(PastedPart Part, Destination To)> parts, bool oneOption, Speaker by)
    {
        _facts.Clear();
        var batch = FactIds.New(clock);
        var list = parts.ToList();
        foreach (var (part, _) in list.Where(p => p.To is Destination.NewItem)) Define(part, by, batch);
        foreach (var group in list.Where(p => p.To is Destination.Item).GroupBy(p => ((Destination.Item)p.To).Slot))
            if (oneOption) State(group.Key, [.. group.Select(g => g.Part)], null, by, batch);
            else
                foreach (var (part, _) in group) State(group.Key, [part], null, by, batch);
        foreach (var (part, _) in list.Where(p => p.To is Destination.PriceList)) List(part, by, batch);
        return [.. _facts];
    }

    private void List(PastedPart part, Speaker by, Guid batch)
    {
        var payload = new JsonObject { ["title"] = part.Title, ["category"] = part.Category };
        if (part.Each is { } each) payload["each"] = each.ToString();
        if (part.Number is { } number) payload["number"] = number;
        if (part.Vendor is { } vendor) payload["vendor"] = vendor;
        if (part.Lead is { } lead) payload["lead"] = lead;
        if (part.Mass is { } mass) payload["option"] = new JsonObject { ["masses"] = new JsonArray(Mass("part", mass)) };
        if (part.Description is { } note) payload["note"] = note;
        var id = Take(_stock, part.Title, i => seen(Fact.Shop, "stock/" + i) is not null);
        _facts.Add(stating.Say(Fact.Shop, EntryKind.StockListed, "stock/" + id, payload, seen(Fact.Shop, "stock/" + id), by, batch));
    }

    private void Define(PastedPart part, Speaker by, Guid batch)
    {
        var id = Take(_items, part.Title, i => seen(build.Id, "slots/" + i) is not null);
        _facts.Add(stating.Define(build.Id, id, Slot.Root, part.Title, 1, seen(build.Id, "slots/" + id), by, batch));
        State(id, [part], _facts[^1].Id, by, batch);
    }

    private void State(string item, IReadOnlyList<PastedPart> parts, Guid? after, Speaker by, Guid batch)
    {
        if (!_options.TryGetValue(item, out var taken)) _options[item] = taken = [.. build.Find(item)?.Options.Select(o => o.Id) ?? []];
        var option = Take(taken, parts[0].Title, _ => false);
        _facts.Add(stating.State(build.Id, item, option, Body(parts), after ?? seen(build.Id, $"slots/{item}/options/{option}"), by, batch));
    }

    /// <param name="used">Whether something was ever said of an id: what was taken back keeps its own for good.</param>
    private static string Take(HashSet<string> taken, string title, Func<string, bool> used)
    {
        while (true)
        {
            var id = NewId.Of(title, taken) ?? NewId.Free("part", taken);
            taken.Add(id);
            if (!used(id)) return id;
        }
    }

    private static JsonObject Body(IReadOnlyList<PastedPart> parts)
    {
        var body = new JsonObject
        {
            ["title"] = parts.Count == 1 ? parts[0].Title : $"{parts[0].Title} and {parts.Count - 1} more",
            ["class"] = "replace",
            ["originality"] = OriginalityWords.Usual(OptionClass.Replace),
        };
        var lead = Longest(parts);
        var weighed = parts.All(p => p.Mass is not null);
        body["note"] = string.Join("; ", parts.SelectMany(Remarks).Concat(parts.SelectMany(p => LeftOut(p, lead, weighed))).Prepend(OriginalityWords.Assumed));
        var names = new HashSet<string>(StringComparer.Ordinal);
        var ids = parts.Select(p => Take(names, p.Title, _ => false)).ToList();
        if (parts.Any(p => p.Each is not null)) body["prices"] = new JsonArray([.. parts.Zip(ids).Where(p => p.First.Each is not null).Select(p => Price(p.First, p.Second))]);
        if (weighed) body["masses"] = new JsonArray([.. parts.Zip(ids).SelectMany(p => Masses(p.First, p.Second))]);
        if (lead is not null) body["lead"] = lead;
        return body;
    }

    /// <summary>The option is there when its last part is: the longest time that can be read, else the first that is said.</summary>
    private static string? Longest(IReadOnlyList<PastedPart> parts) => parts.Select(p => p.Lead).OfType<string>().OrderByDescending(l => LeadTime.Seconds(l) ?? -1).FirstOrDefault();

    /// <summary>What an option of several parts cannot hold stays readable: a weight beside parts without one, another lead time.</summary>
    private static IEnumerable<string> LeftOut(PastedPart part, string? lead, bool weighed)
    {
        if (!weighed && part.Mass is { } mass) yield return $"{part.Title} weighs {mass} each, not counted";
        if (part.Lead is { } own && own != lead) yield return $"{part.Title} takes {own}";
    }

    private static IEnumerable<string> Remarks(PastedPart part) =>
        new[] { part.Number is { } n ? $"number {n}" : null, part.Vendor is { } v ? $"from {v}" : null, part.Description }.OfType<string>();

    private static JsonObject Price(PastedPart part, string id) =>
        new() { ["id"] = id, ["what"] = part.Title, ["count"] = (double)part.Count, ["each"] = part.Each!.Value.ToString(), ["category"] = part.Category };

    /// <summary>A few have a place on the vehicle each, which the list does not tell; of many only what they weigh together matters.</summary>
    private static IEnumerable<JsonObject> Masses(PastedPart part, string id)
    {
        if (part.Count == 1) return [Mass(id, part.Mass!)];
        if (part.Count is > 1 and <= 12 && part.Count == decimal.Truncate(part.Count)) return Enumerable.Range(1, (int)part.Count).Select(n => Mass($"{id}-{n}", part.Mass!));
        return [Mass(id, FormattableString.Invariant($"{ShopNotation.Read(part.Mass!, Dimension.Mass).Value!.Si * (double)part.Count:0.####} kg"))];
    }

    private static JsonObject Mass(string id, string mass) => new() { ["id"] = id, ["mass"] = mass, ["basis"] = "vendor" };
}
