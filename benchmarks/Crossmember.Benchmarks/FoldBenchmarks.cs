using System.Text.Json.Nodes;
using BenchmarkDotNet.Attributes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;
using Crossmember.Storage;

namespace Crossmember.Benchmarks;

/// <summary>Opening a build of 20,000 entries: a year of work, most of it logs and values noted again.</summary>
[MemoryDiagnoser]
public class FoldBenchmarks
{
    private const int Entries = 20_000;
    private string _folder = "";
    private OpenShop _shop = null!;

    [GlobalSetup]
    public void Setup()
    {
        _folder = Directory.CreateTempSubdirectory("crossmember-bench").FullName;
        _shop = OpenShop.Open(_folder, TimeProvider.System);
        var faults = new Engineering.Reading.Faults();
        var file = Builds.Files.BuildFile.Read(SyntheticVehicle.PlainJson(), Catalogue.Shipped, faults)!;
        _shop.Importing().Import(file, null, faults);
        var (random, last) = (new Random(1), new LastOnSubject());
        foreach (var e in _shop.Shelf.Store.Read("bench").Where(e => EntryKind.Find(e.Fact.Kind)!.Nature == EntryNature.State)) last.Add(e.Fact.Subject, e.Fact.Id);
        var count = (int)_shop.Shelf.Store.Head("bench").Sequence;
        var batch = new List<Fact>();
        for (var i = count; i < Entries; i++) batch.Add(Next(random, last, i));
        _shop.Store.Journal.Append(batch, Arrival.Online);
        Whole();
    }

    [GlobalCleanup]
    public void Cleanup()
    {
        _shop.Dispose();
        Directory.Delete(_folder, true);
    }

    [Benchmark(Description = "20,000 entries read and folded")]
    public Builds.Slots.Build Whole() => new BuildLibrary(_shop.Shelf.Store, new NoSnapshots(), Catalogue.Shipped).Open("bench")!.Build;

    [Benchmark(Description = "the same with a snapshot")]
    public Builds.Slots.Build FromSnapshot() => new BuildLibrary(_shop.Shelf.Store, _shop.Store.Snapshots, Catalogue.Shipped).Open("bench")!.Build;

    private static Fact Next(Random random, LastOnSubject last, int i)
    {
        var log = random.Next(3) > 0;
        var (kind, subject, payload) = log
            ? ("hours.logged", "slots/tires/hours", new JsonObject { ["trade"] = "technician", ["hours"] = 1 + random.Next(6) })
            : ("value.noted", $"slots/vehicle/options/as-found/values/gearbox.{1 + random.Next(4)}.ratio", new JsonObject { ["value"] = 1 + random.NextDouble(), ["basis"] = "measured" });
        var id = Guid.CreateVersion7();
        var fact = new Fact(id, "bench", kind, 1, DateTimeOffset.UnixEpoch.AddMinutes(i), "desk", "bench", subject, log ? null : last.On(subject), null, null, payload);
        if (!log) last.Add(subject, id);
        return fact;
    }

    private sealed class NoSnapshots : ISnapshotStore
    {
        public (long Sequence, byte[] Content)? Latest(string stream, long upTo, int foldVersion) => null;

        public void Keep(string stream, long sequence, int foldVersion, byte[] content)
        {
        }
    }
}
