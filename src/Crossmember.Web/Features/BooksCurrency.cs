using Crossmember.Builds.Slots;

namespace Crossmember.Web.Features;

/// <summary>Which currency an amount without one is in: the one answer for every page that takes prices.</summary>
public static class BooksCurrency
{
    /// <summary>What the shop has said, else what its prices are in already; null: nobody knows, and none may be assumed.</summary>
    /// <param name="first">The build at hand: its prices count before those of others.</param>
    public static string? Of(ShopDesk desk, ShopFacts shop, Build? first = null) =>
        shop.Books ?? (first is null ? null : InUse(first)) ?? desk.OpenBuilds().Select(b => InUse(b.Build)).FirstOrDefault(c => c is not null) ?? shop.Stock.Values.FirstOrDefault(p => p.Each is not null)?.Each?.Currency;

    private static string? InUse(Build build) => build.Slots.SelectMany(s => s.Options).SelectMany(o => o.Prices ?? []).FirstOrDefault(p => p.Each is not null)?.Each?.Currency;
}
