using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Crossmember.Storage;

namespace Crossmember.Benchmarks;

/// <summary>A shop after twenty years: 200 vehicles, the demo's over and over, each with 5,000 entries, most of them hours, notes and values noted again. Made once in a folder, for the desk to be timed on.</summary>
internal static class BigShop
{
    private const int Vehicles = 200, Entries = 5_000;

    /// <param name="demo">Folder with the demo's build files.</param>
    public static void Make(string folder, string demo)
    {
        using var shop = OpenShop.Open(folder, TimeProvider.System);
        var files = Directory.GetFiles(demo, "*.json").Order(StringComparer.Ordinal).Select(Read).ToList();
        var random = new Random(1);
        for (var i = 0; i < Vehicles; i++)
        {
            var id = $"vehicle-{i:000}";
            if (shop.Store.Journal.Store.Head(id).Sequence > 0) continue;
            var facts = files[i % files.Count].FactsAs(id).Select(f => f.Kind == EntryKind.BuildOpened.Name ? Titled(f, i) : f).ToList();
            var last = new LastOnSubject();
            foreach (var fact in facts) last.Add(fact.Subject, fact.Id);
            while (facts.Count < Entries) facts.Add(Next(random, last, id, facts.Count));
            var refused = shop.Store.Journal.Append(facts, Arrival.Online).OfType<AppendOutcome.Refused>().FirstOrDefault();
            if (refused is not null) throw new InvalidOperationException(refused.Fault.Wrong);
            if (i % 20 == 19) Console.WriteLine($"{i + 1} vehicles");
        }
    }

    private static SheetImport Read(string file)
    {
        var faults = new Faults();
        return BuildFile.Read(File.ReadAllBytes(file), Catalogue.Shipped, faults)?.Sheet ?? throw new InvalidOperationException(string.Join('\n', faults.List));
    }

    private static Fact Titled(Fact opened, int number)
    {
        var payload = opened.Payload!.DeepClone();
        payload["title"] = $"{payload["title"]}, number {number}";
        return opened with { Payload = payload };
    }

    private static Fact Next(Random random, LastOnSubject last, string build, int i)
    {
        var (kind, subject, payload) = random.Next(6) switch
        {
            0 => ("value.noted", $"slots/vehicle/options/as-found/values/duty.grade", new JsonObject { ["value"] = 0.3 + (0.2 * random.NextDouble()), ["basis"] = "measured" }),
            1 or 2 => ("note.written", "slots/vehicle/notes", new JsonObject { ["text"] = $"Looked at it again on day {i}; nothing new." }),
            _ => ("hours.logged", "slots/vehicle/hours", new JsonObject { ["trade"] = "technician", ["hours"] = 1 + random.Next(6) }),
        };
        var log = kind != "value.noted";
        var fact = new Fact(Guid.CreateVersion7(), build, kind, 1, DateTimeOffset.UnixEpoch.AddMinutes(i), "desk", "bench", subject, log ? null : last.On(subject), null, null, payload);
        if (!log) last.Add(subject, fact.Id);
        return fact;
    }
}
