using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Slots;

namespace Crossmember.Web.Features.Writing;

/// <summary>The shop's own stream as one person sees it at one position.</summary>
public sealed class ShopView : StreamView
{
    private ShopView(ShopFacts shop, IReadOnlyList<Entry> entries)
        : base(entries) => Shop = shop;

    public ShopFacts Shop { get; }

    public override long Position => Shop.Position;

    public override bool IsReadOnly => false;

    public static ShopView Of(ShopDesk desk)
    {
        var shop = desk.Shop.Shelf.Shop();
        return new(shop, desk.Shop.Store.Journal.Store.Read(Fact.Shop, 0, shop.Position));
    }

    /// <summary>What stands on a subject, in the order said: all of it has to go where the subject is to be gone.</summary>
    public IReadOnlyList<Fact> Standing(string subject) => [.. Corrections.Effective(Entries).Where(s => s.Fact.Subject == subject).Select(s => s.Fact)];

    /// <summary>Subjects under a beginning on which something was said and nothing stands, with what was said last.</summary>
    public IReadOnlyList<(string Subject, JsonNode Payload)> Gone(string beginning)
    {
        var standing = Corrections.Effective(Entries).Select(s => s.Fact.Subject).ToHashSet(StringComparer.Ordinal);
        return [.. Entries.Where(e => e.Fact is { Payload: not null } f && f.Subject.StartsWith(beginning, StringComparison.Ordinal) && !standing.Contains(f.Subject))
            .GroupBy(e => e.Fact.Subject).Select(g => (g.Key, g.Last().Fact.Payload!))];
    }

    protected override string Plain(Fact fact) => ShopSayings.Plain(fact);
}
