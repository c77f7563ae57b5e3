using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;
using Crossmember.Storage.Rows;

namespace Crossmember.Web.Features;

/// <summary>The one door through which pages and programs write: whoever looks at a build hears that it has changed.</summary>
public sealed class ShopDesk(OpenShop shop)
{
    /// <summary>The name of a stream that has new entries: the id of a build, or the shop's own.</summary>
    public event Action<string>? Changed;

    public OpenShop Shop => shop;

    public Deciding Deciding => shop.Deciding;

    public Stating Stating => shop.Stating;

    public IReadOnlyList<BuildRow> Builds() => shop.Store.Builds();

    /// <summary>Items and options by words of their titles, over every build.</summary>
    public IReadOnlyList<Storage.Projections.TitleHit> Search(string typed, int most) => shop.Store.Search(typed, most);

    public OpenBuild? Open(string build) => shop.Shelf.Open(build);

    /// <summary>Every build of the shop as it stands now, those put away among them.</summary>
    public IEnumerable<OpenBuild> OpenBuilds() => Builds().Select(b => Open(b.Id)).OfType<OpenBuild>();

    public IReadOnlyList<AppendOutcome> Append(IReadOnlyList<Fact> facts, Arrival arrival)
    {
        var outcomes = shop.Store.Journal.Append(facts, arrival);
        foreach (var stream in facts.Zip(outcomes).Where(p => p.Second is AppendOutcome.Appended or AppendOutcome.Held).Select(p => p.First.Stream).Distinct())
            Changed?.Invoke(stream);
        return outcomes;
    }

    /// <summary>Takes a build file of either form into the shop, or answers null with located faults.</summary>
    /// <param name="beforeWriting">Called when the file has been read and nothing is written yet: the last moment to turn back by throwing.</param>
    public Imported? Import(ReadOnlyMemory<byte> content, Faults faults, Action? beforeWriting = null)
    {
        if (BuildFile.Read(content, Catalogue.Shipped, faults) is not { } file) return null;
        beforeWriting?.Invoke();
        var before = shop.Store.Journal.Store.Head(Fact.Shop).Sequence;
        var imported = shop.Importing().Import(file, null, faults);
        if (imported is not null) Changed?.Invoke(imported.Id);
        if (shop.Store.Journal.Store.Head(Fact.Shop).Sequence > before) Changed?.Invoke(Fact.Shop);
        return imported;
    }

    public IReadOnlyList<HeldFact> Held(string build) => [.. shop.Store.Journal.Store.Held(build).Where(h => h.Decision is null)];

    public IReadOnlyList<AppendOutcome> Release(string build, Guid held, string person, string why, long seen)
    {
        var outcomes = shop.Store.Journal.Release(held, person, why, seen);
        Changed?.Invoke(build);
        return outcomes;
    }

    public Fault? SetAside(string build, Guid held, string person, string why)
    {
        var fault = shop.Store.Journal.Discard(held, person, why);
        Changed?.Invoke(build);
        return fault;
    }
}
