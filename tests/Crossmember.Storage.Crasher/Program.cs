using System.Text.Json.Nodes;
using Crossmember.Builds.Journal;
using Crossmember.Storage;

// Appends batches for ever and prints the id of each fact once it is acknowledged; the test ends it at a moment of its choosing.
using var store = ShopStore.Open(args[0], TimeProvider.System);
using var output = Console.OpenStandardOutput();
for (var n = 0; ; n++)
{
    var batch = FactIds.New(TimeProvider.System);
    var facts = Enumerable.Range(0, 1 + n % 3).Select(_ => new Fact(
        FactIds.New(TimeProvider.System), "b1", EntryKind.NoteWritten.Name, 1, TimeProvider.System.GetUtcNow(), "ana", "tablet",
        "slots/tires/notes", null, null, batch, new JsonObject { ["text"] = new string('x', 100 + n % 400) })).ToList();
    foreach (var outcome in store.Journal.Append(facts, Arrival.Queue).OfType<AppendOutcome.Appended>())
        output.Write(System.Text.Encoding.ASCII.GetBytes($"{FactText.Id(outcome.FactId)}\n"));
    output.Flush();
}
