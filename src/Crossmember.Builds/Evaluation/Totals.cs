using System.Collections.Immutable;
using Crossmember.Builds.Slots;
using Crossmember.Planning;

namespace Crossmember.Builds.Evaluation;

/// <summary>What a scenario adds up to.</summary>
/// <param name="Cost">What is bought, by category, tax included once per category on its sum.</param>
/// <param name="Hours">Mean hours by trade.</param>
/// <param name="Labour">Mean hours at the shop's rates, by trade; beside the cost of what is bought, not in it. Trades without a rate are left out and named by a finding.</param>
/// <param name="Foreign">Items priced in another currency than the books': their prices are in no sum and are named by a finding.</param>
/// <param name="Originality">Weighted share of what is kept; null where no item has a weight.</param>
public sealed record Totals(
    BareMass Mass, ImmutableSortedDictionary<string, Money> Cost, Money CostTotal, ImmutableSortedDictionary<string, double> Hours, double HoursTotal,
    ImmutableSortedDictionary<string, Money> Labour, IReadOnlyList<string> Unrated, IReadOnlyList<string> Foreign, double? Originality)
{
    public static Totals Of(EvaluationPlan plan, CompiledOption?[] inEffect, ShopFacts shop, BareMass mass)
    {
        var options = inEffect.OfType<CompiledOption>().OrderBy(o => o.Slot.Id, StringComparer.Ordinal).ToList();
        var priced = options.SelectMany(o => (o.Body.Prices ?? []).Where(p => p.Each is not null).Select(p => (Slot: o.Slot.Id, Line: p))).ToList();
        var currency = shop.Books ?? (priced.Count > 0 ? priced[0].Line.Each!.Value.Currency : "USD");
        var lines = priced.ToLookup(p => p.Line.Each!.Value.Currency == currency);
        var cost = lines[true].Select(p => p.Line).GroupBy(p => p.Category!).ToImmutableSortedDictionary(g => g.Key, g => WithTax(g, currency, shop.Tax.GetValueOrDefault(g.Key), shop.Rounding), StringComparer.Ordinal);
        var hours = options.SelectMany(o => o.Body.Hours ?? []).Where(h => h.Hours is not null).GroupBy(h => h.Trade)
            .ToImmutableSortedDictionary(g => g.Key, g => g.Sum(h => h.Hours!.Mean), StringComparer.Ordinal);
        var labour = hours.Where(h => shop.Rates.GetValueOrDefault(h.Key) is not null)
            .ToImmutableSortedDictionary(h => h.Key, h => (shop.Rates[h.Key]!.Value * (decimal)h.Value).Rounded(shop.Rounding), StringComparer.Ordinal);
        // A shop that states no rate at all has not asked for labour: only a gap among rates is worth a word.
        IReadOnlyList<string> unrated = shop.Rates.Values.Any(r => r is not null) ? [.. hours.Keys.Where(t => !labour.ContainsKey(t))] : [];
        return new(mass, cost, cost.Values.Aggregate(Money.Zero(currency), (a, b) => a + b), hours, hours.Values.Sum(), labour, unrated, [.. lines[false].Select(p => p.Slot).Distinct()], OriginalityOf(options));
    }

    private static Money WithTax(IEnumerable<PriceLine> lines, string currency, decimal tax, decimal? step)
    {
        var sum = lines.OrderBy(p => p.Id, StringComparer.Ordinal).Aggregate(Money.Zero(currency), (total, p) => total + (p.Each!.Value * p.Count).Rounded(step));
        return sum + (sum * tax).Rounded(step);
    }

    private static double? OriginalityOf(List<CompiledOption> options)
    {
        var weight = options.Sum(o => o.Slot.Weight);
        return weight > 0 ? options.Sum(o => o.Slot.Weight * (o.Body.Originality ?? 0)) / weight : null;
    }
}
