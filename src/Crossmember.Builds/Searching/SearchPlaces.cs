using System.Text.Json;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Searching;

/// <summary>Finds what there is to choose from: the options of every item that states what the goal reads, and parts of the stock list that state the same.</summary>
internal static class SearchPlaces
{
    public static List<SearchPlace> Of(Sheet sheet, HashSet<int> read, SearchGoal goal)
    {
        // What another item's option takes along cannot be chosen.
        var options = sheet.Build.Slots.Where(s => !sheet.Choices.TakenBy.ContainsKey(s.Id)).Select(s => OfItem(sheet, s, read, goal)).OfType<SearchPlace>().ToList();
        return [.. options, .. OfStock(sheet, [.. options.SelectMany(p => p.Keys)], goal)];
    }

    private static SearchPlace? OfItem(Sheet sheet, Slot slot, HashSet<int> read, SearchGoal goal)
    {
        var candidates = new List<Candidate>();
        foreach (var option in slot.Options)
        {
            var compiled = sheet.Plan.Compiled(sheet.Build, slot, option);
            // Leaving brakes off is no way to build a vehicle.
            if (compiled.Body.Class == OptionClass.None || compiled.Body.Takes is { Length: > 0 }) continue;
            var values = compiled.Values.Where(v => read.Contains(v.Key) && Searchable(sheet, v.Key)).ToList();
            candidates.Add(new(option.Id, null, compiled.Body.Title ?? option.Id, [.. values.Select(v => (v.Key, v.Stated.Value))],
                [.. values.Select(v => KeyValuePair.Create(sheet.Plan.Space.KeyName(v.Key), v.Stated))], CostOf(compiled.Body, sheet.Shop),
                goal.IsUnsprung(slot.Id) ? MassOf(compiled.Body) : 0, [.. compiled.Body.Requires ?? []]));
        }
        int[] keys = [.. candidates.SelectMany(c => c.Values.Select(v => v.Key)).Distinct()];
        // One that states nothing here moves nothing here; one that states what the sheet reads competes.
        return keys.Length == 0 || candidates.Count < 2 || !candidates.Exists(c => c.Values.Count == 0 || Differs(c, candidates[0])) ? null
            : new(slot.Id, slot.Title, false, [.. candidates.Where(c => c.Values.Count > 0)], keys);
    }

    private static bool Differs(Candidate a, Candidate b) => !a.Values.ToHashSet().SetEquals(b.Values);

    /// <summary>A what-if is what somebody wants to see: the search leaves it alone. Masses move loads, which are taken as they stand.</summary>
    private static bool Searchable(Sheet sheet, int key) =>
        sheet.Keys[key].Source != Source.WhatIf && sheet.Plan.Space.PatternOf(key) is { Merge: Merge.One, IsLedger: false };

    private static IEnumerable<SearchPlace> OfStock(Sheet sheet, HashSet<int> keys, SearchGoal goal)
    {
        var parts = sheet.Shop.Stock.Values.Select(p => Part(sheet, p, keys, goal)).OfType<Candidate>();
        foreach (var kind in parts.GroupBy(p => string.Join(' ', p.Stated.Select(s => s.Key).Order(StringComparer.Ordinal)), StringComparer.Ordinal).OrderBy(g => g.Key, StringComparer.Ordinal))
        {
            var own = new Candidate(null, null, "as the option has it", [], [], 0, 0, []);
            yield return new(kind.Key, "stock", true, [own, .. kind.OrderBy(p => p.Stock, StringComparer.Ordinal)], [.. kind.First().Values.Select(v => v.Key).Order()]);
        }
    }

    private static Candidate? Part(Sheet sheet, StockPart part, HashSet<int> keys, SearchGoal goal)
    {
        if (part.Body is null || part.OnHand is 0) return null;
        using var body = JsonDocument.Parse(part.Body);
        var faults = new Faults();
        var option = new OptionReader(sheet.Plan.Catalogue.Table).Read(new(body.RootElement, $"/stock/{part.Id}", faults), part.Id);
        if (faults.Count > 0 || option.Parameters.IsEmpty) return null;
        var values = option.Parameters.SelectMany(p => sheet.Plan.Space.Expand(p.Key).Select(k => (Key: k, p.Value.Value))).ToList();
        // Everything it states must be something that an option here states: otherwise nobody knows what it goes with.
        if (values.Count == 0 || !values.TrueForAll(v => keys.Contains(v.Key))) return null;
        decimal? bought = option.Prices is not null ? CostOf(option with { Hours = null }, sheet.Shop) : part.Each is { } each && each.Currency == sheet.Totals.CostTotal.Currency ? each.Amount : null;
        return new(null, part.Id, part.Title, values, option.Parameters, bought, option.Masses is not null || option.MassBelow is not null ? MassOf(option) : 0, []);
    }

    private static decimal CostOf(Option body, ShopFacts shop) =>
        (body.Prices ?? []).Where(p => p.Each is { } e && (shop.Books is not { } books || e.Currency == books)).Sum(p => p.Each!.Value.Amount * p.Count)
        + (body.Hours ?? []).Where(h => h.Hours is not null).Sum(h => (shop.Rates.GetValueOrDefault(h.Trade)?.Amount ?? 0) * (decimal)h.Hours!.Mean);

    private static double? MassOf(Option body) =>
        body.MassBelow is { } below ? below / 2 : body.Masses is not { } items ? null : items.Any(m => m.Kilograms is null) ? null : items.Sum(m => m.Kilograms!.Value);
}
