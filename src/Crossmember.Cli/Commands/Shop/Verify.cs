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
        return new Outcome.Result(() => Report(problems, heads), output => Tell(problems, heads, output), problems.Count > 0);
    }

    private static JsonObject Report(IReadOnlyList<Problem> problems, HeadsFile heads) => new()
    {
        ["format"] = "crossmember.verified/1",
        ["problems"] = Json.List(problems, p => new JsonObject { ["stream"] = p.Where, ["sequence"] = p.Sequence, ["item"] = p.Item, ["what"] = p.What }),
        ["heads"] = new JsonObject(heads.Heads.Select(h => KeyValuePair.Create(h.Key, (JsonNode?)h.Value.Sequence))),
    };

    private static void Tell(IReadOnlyList<Problem> problems, HeadsFile heads, TextWriter output)
    {
        foreach (var p in problems) output.WriteLine(p.ToString());
        if (problems.Count == 0) output.WriteLine($"All as it was written: {string.Join(", ", heads.Heads.Select(h => $"{h.Key} {h.Value.Sequence}"))}.");
    }
}
