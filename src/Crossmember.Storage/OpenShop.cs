using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Workshop;

namespace Crossmember.Storage;

/// <summary>A shop opened for work: the store with everything that reads and writes builds in it. Programs compose from this one object.</summary>
public sealed class OpenShop : IDisposable
{
    private OpenShop(ShopStore store, Catalogue catalogue, TimeProvider clock)
    {
        Store = store;
        Shelf = new(store.Journal.Store, store.Snapshots, catalogue);
        Deciding = new(Shelf, clock);
        Stating = new(clock);
        Exporting = new(Shelf, store.Attachments);
    }

    public ShopStore Store { get; }

    public BuildLibrary Shelf { get; }

    public Deciding Deciding { get; }

    public Stating Stating { get; }

    public ExportingBuilds Exporting { get; }

    /// <summary>One import keeps remarks of its own.</summary>
    public ImportingBuilds Importing() => new(Store.Journal, Store.Attachments);

    /// <summary>Checks and ripples of an opened build.</summary>
    public Comparing Comparing(OpenBuild open) =>
        new(open, Shelf.Shop(), position => new(Shelf.At(open.Build.Id, position).Build, Shelf.ShopAt));

    /// <summary>Opens a shop in a folder, making it if it is not there.</summary>
    public static OpenShop Open(string folder, TimeProvider clock) =>
        new(ShopStore.Open(folder, clock, new AppendRules(Catalogue.Shipped)), Catalogue.Shipped, clock);

    /// <summary>Opens a shop by a connection string; attachments and personal records lie in the folder.</summary>
    public static OpenShop Open(string connection, string folder, TimeProvider clock) =>
        new(ShopStore.Open(ShopPlace.Beside(connection, folder), clock, new AppendRules(Catalogue.Shipped)), Catalogue.Shipped, clock);

    public void Dispose() => Store.Dispose();
}
