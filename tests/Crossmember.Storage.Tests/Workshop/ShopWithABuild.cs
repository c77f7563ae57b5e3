using System.Text;
using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;
using Crossmember.Engineering.Reading;

namespace Crossmember.Storage.Tests.Workshop;

/// <summary>A shop in a folder of its own with one small invented build in it.</summary>
internal sealed class ShopWithABuild : IDisposable
{
    public const string Json = """
        {"format":"crossmember.build/1","id":"hauler","title":"Hauler","created":"2026-03-02",
         "sets":{"gear":["1","2"],"range":["high"],"condition":["empty"]},
         "slots":[
          {"id":"vehicle","parent":null,"title":"Hauler","weight":0,"options":[{"id":"as-found","parameters":{"duty.cruise-speed":"55 mph","engine.redline":"3600 rpm","gearbox.*.ratio":1,"transfer.high.ratio":1}}]},
          {"id":"tires","parent":"vehicle","title":"Tires","options":[{"id":"as-found","parameters":{"wheel.*.*.tire.size":"31x10.50R15LT"}},
            {"id":"at33","title":"33 in","class":"upgrade","originality":0.2,"parameters":{"wheel.*.*.tire.size":"33x10.50R15LT"},
             "prices":[{"id":"set","what":"set of five","count":5,"each":"310.00 USD","category":"parts"}],"hours":[{"trade":"technician","distribution":{"kind":"fixed","value":3}}]}]},
          {"id":"axle.rear","parent":"vehicle","title":"Rear axle","options":[{"id":"as-found","parameters":{"axle.rear.ratio":{"value":4.27,"basis":"measured"}}},
            {"id":"deep","class":"replace","originality":0.5,"parameters":{"axle.rear.ratio":4.88}}]}],
         "scenarios":[{"id":"working","base":null,"choices":{}},{"id":"tall","base":"working","choices":{"tires":"at33"}}],
         "shop":{"currency":"USD","rates":{"technician":"95.00 USD"},"tax":{"parts":0.06}}}
        """;

    private readonly string _folder = Directory.CreateTempSubdirectory("crossmember-shop").FullName;

    public ShopWithABuild(bool empty = false)
    {
        Shop = OpenShop.Open(_folder, TimeProvider.System);
        if (!empty) Import(Json);
    }

    public OpenShop Shop { get; }

    public string Folder => _folder;

    public BuildLibrary Shelf => Shop.Shelf;

    public OpenBuild Open(string id = "hauler") => Shelf.Open(id)!;

    public Imported Import(string json, string? into = null) => Import(Encoding.UTF8.GetBytes(json), into);

    public Imported Import(byte[] content, string? into = null)
    {
        var faults = new Faults();
        var file = BuildFile.Read(content, Catalogue.Shipped, faults);
        var imported = file is null ? null : Shop.Importing().Import(file, into, faults);
        Assert.True(imported is not null, string.Join('\n', faults.List));
        return imported!;
    }

    public byte[] Export(string id = "hauler")
    {
        var faults = new Faults();
        var file = Shop.Exporting.Export(id, faults);
        Assert.Empty(faults.List);
        return file!;
    }

    public AppendOutcome Append(Fact fact) => Shop.Store.Journal.Append([fact], Arrival.Online)[0];

    /// <summary>Appends as one who has just looked.</summary>
    public AppendOutcome Say(string kind, string subject, JsonNode? payload) =>
        Append(new(Guid.CreateVersion7(), "hauler", kind, 1, DateTimeOffset.UnixEpoch, "lead", "test", subject,
            EntryKind.Find(kind)?.Nature == EntryNature.Log ? null : Shop.Deciding.LastOn("hauler", subject), null, null, payload));

    public void Dispose()
    {
        Shop.Dispose();
        Directory.Delete(_folder, true);
    }
}
