using System.Net.Http.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Storage;

namespace Crossmember.EndToEnd.Tests;

/// <summary>The real program, killed without warning while a client sends: what it acknowledged is there, once, and the record is whole.</summary>
public sealed class KilledDeskTests : IDisposable
{
    private const int Kills = 20;

    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-killed-");
    private readonly Flatbed _flatbed = Flatbed.New();

    [Fact]
    public async Task What_was_acknowledged_is_there_exactly_once_after_twenty_kills()
    {
        var random = new Random(20260501);
        SecondDesk.Import(_data.FullName, _flatbed.File);
        var acknowledged = new List<Guid>();
        for (var round = 0; round < Kills; round++) acknowledged.AddRange(await KilledAfter(facts: random.Next(1, 12), thenMilliseconds: random.Next(0, 15)));
        using var store = ShopStore.Open(_data.FullName, TimeProvider.System);
        var kept = store.Journal.Store.Read(_flatbed.Id).Select(e => e.Fact.Id).ToList();
        Assert.True(acknowledged.Count >= Kills);
        Assert.Equal(kept.Distinct().Count(), kept.Count);
        Assert.Empty(acknowledged.Except(kept));
        Assert.Empty(store.Verify());
    }

    public void Dispose() => _data.Delete(recursive: true);

    /// <summary>The ids that were acknowledged before the program was killed, in the middle of a call as like as not.</summary>
    private async Task<List<Guid>> KilledAfter(int facts, int thenMilliseconds)
    {
        using var program = new DeskProgram(_data.FullName);
        var acknowledged = new List<Guid>();
        var sending = Send(await program.Address(), acknowledged);
        while (!sending.IsCompleted && Count(acknowledged) < facts) await Task.Delay(1, TestContext.Current.CancellationToken);
        await Task.Delay(thenMilliseconds, TestContext.Current.CancellationToken);
        await program.Kill();
        await sending;
        return acknowledged;
    }

    /// <summary>Sends one fact after the other until nobody answers any more; only a whole answer counts.</summary>
    private async Task Send(Uri address, List<Guid> acknowledged)
    {
        using var client = new HttpClient { BaseAddress = address };
        while (true)
        {
            var id = FactIds.New(TimeProvider.System);
            var fact = new Fact(id, _flatbed.Id, EntryKind.NoteWritten.Name, 1, TimeProvider.System.GetUtcNow(), "ana", "tablet", "slots/tires/notes", null, null, null, new JsonObject { ["text"] = "x" });
            try
            {
                using var answer = await client.PostAsJsonAsync($"/api/builds/{_flatbed.Id}/facts?arrival=queue", new JsonArray(JsonNode.Parse(FactText.Write(fact))));
                var outcome = JsonNode.Parse(await answer.Content.ReadAsStringAsync())!["outcomes"]![0]!["outcome"]!.GetValue<string>();
                Assert.Equal("appended", outcome);
            }
            catch (HttpRequestException)
            {
                return;
            }
            lock (acknowledged) acknowledged.Add(id);
        }
    }

    private static int Count(List<Guid> acknowledged)
    {
        lock (acknowledged) return acknowledged.Count;
    }
}
