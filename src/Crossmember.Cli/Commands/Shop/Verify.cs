using System.CommandLine;
using System.Text.Json.Nodes;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Reading;
using Crossmember.Storage.Verification;

namespace Crossmember.Cli.Commands.Shop;

internal static class Verify
{
    public static Verb Make(SharedOptions shared)
    {
        var heads = new Option<string?>("--heads") { HelpName = "FILE", Description = "compare with where the streams stood, kept in FILE away from the records; written anew when all is well" };
        return new("verify", "Recomputes every hash chain and reads every attachment; names whatever is not as it was written.", "crossmember verify", "crossmember verify --heads heads.json")
        {
            Options = { heads }, Runs = (line, _) => Run(line.GetValue(heads), shared.Address(line)),
        };
    }

    private static Outcome Run(string? headsFile, ShopAddress address)
    {
        if (!address.Exists) return Outcome.Faulty(address.ToString(), "nothing is stored here", "name the folder with --data");
        using var shop = address.Open();
        var faults = new Faults();
        var problems = headsFile is null ? shop.Store.Verify() : shop.Store.VerifyAgainst(headsFile, faults);
        if (faults.Any) return Outcome.Faulty(headsFile!, faults);
        var heads = shop.Store.Heads();
        // What a damaged journal names cannot be relied on: that comes first.
        var remarks = problems.Count == 0 ? shop.Store.Remarks() : [];
        return new Outcome.Result(() => Report(problems, remarks, heads), output => Tell(problems, remarks, heads, output), problems.Count > 0);
    }

    private static JsonObject Report(IReadOnlyList<Problem> problems, IReadOnlyList<Problem> remarks, HeadsFile heads) => new()
    {
        ["format"] = "crossmember.verified/1",
        ["problems"] = Json.List(problems, p => new JsonObject { ["stream"] = p.Where, ["sequence"] = p.Sequence, ["item"] = p.Item, ["what"] = p.What }),
        ["remarks"] = Json.List(remarks, r => new JsonObject { ["where"] = r.Where, ["item"] = r.Item, ["what"] = r.What }),
        ["heads"] = new JsonObject(heads.Heads.Select(h => KeyValuePair.Create(h.Key, (JsonNode?)h.Value.Sequence))),
    };

    private static void Tell(IReadOnlyList<Problem> problems, IReadOnlyList<Problem> remarks, HeadsFile heads, TextWriter output)
    {
        foreach (var p in problems) output.WriteLine(p.ToString());
        foreach (var r in remarks) output.WriteLine($"Remark: {r}");
        if (problems.Count == 0) output.WriteLine($"All as it was written: {string.Join(", ", heads.Heads.Select(h => $"{h.Key} {h.Value.Sequence}"))}.");
    }
}
