using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;

namespace Crossmember.Web.Tests;

/// <summary>Pages over a store of their own with the flatbed in it, read by Ana; Ben writes from elsewhere.</summary>
public abstract class WrittenPages() : ShopPages(Bracken.Json)
{
    protected Builds.Slots.ShopFacts Facts => Shop.Shelf.Shop();

    /// <summary>Ben says something elsewhere, having just looked.</summary>
    protected void Ben(string stream, EntryKind kind, string subject, JsonNode payload) =>
        Assert.IsType<AppendOutcome.Appended>(Desk.Append([Desk.Stating.Say(stream, kind, subject, payload, Desk.Deciding.LastOn(stream, subject), new Speaker("Ben", "there"))], Arrival.Online)[0]);
}
