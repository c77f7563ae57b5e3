using System.Text;
using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Engineering.Reading;
using CsCheck;

namespace Crossmember.Builds.Tests.Files;

/// <summary>The order of lists changes nothing beyond rounding (firm rule of the formats).</summary>
public sealed class ShuffleProperties
{
    private static readonly string s_everyKey = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Files", "every-key.json"));
    private static readonly string[] s_free = ["slots", "options", "masses", "prices", "hours", "loads", "scenarios", "takes", "requires", "tasks", "governs", "weighings", "empty", "touring", "findings"];

    private static readonly Dictionary<string, JsonNode> s_asWritten = Checks(s_everyKey);

    [Fact]
    public void Shuffled_lists_give_the_same_check() =>
        Gen.Int.Sample(seed =>
        {
            var tree = JsonNode.Parse(s_everyKey)!;
            Shuffle(tree, new Random(seed));
            var checks = Checks(tree.ToJsonString());
            Assert.Equal(s_asWritten.Keys, checks.Keys);
            foreach (var (scenario, check) in checks) Alike(s_asWritten[scenario], check, scenario);
        }, iter: 60);

    [Fact]
    public void Every_scenario_has_masses_costs_and_results_to_compare()
    {
        Assert.Equal(["bare", "working"], s_asWritten.Keys.Order());
        var totals = s_asWritten["working"]["totals"]!;
        Assert.True(s_asWritten["working"]["results"]!.AsObject().Count > 5);
        // By hand: five at 310.00 and 6 % on the sum; the mean of low 2, mode 3, high 5 is 19/6 hours.
        Assert.Equal("1643.00 USD", (string)totals["cost"]!["parts"]!);
        Assert.Equal(19.0 / 6, (double)totals["hours"]!["technician"]!, 1e-9);
    }

    private static Dictionary<string, JsonNode> Checks(string json)
    {
        var faults = new Faults();
        var file = BuildFile.Read(Encoding.UTF8.GetBytes(json), Catalogue.Shipped, faults);
        Assert.True(file is not null, string.Join('\n', faults.List));
        var plan = new EvaluationPlan(Catalogue.Shipped, file!.Build);
        return file.Build.Scenarios.Values.ToDictionary(s => s.Id, s => (JsonNode)SheetJson.Of(plan.Evaluate(file.Build, file.Shop, s), (0, 0)));
    }

    private static void Shuffle(JsonNode node, Random random)
    {
        if (node is JsonArray items) foreach (var item in items.OfType<JsonNode>()) Shuffle(item, random);
        if (node is not JsonObject o) return;
        foreach (var (key, value) in o.ToList())
        {
            if (value is not null) Shuffle(value, random);
            if (value is not JsonArray list || !s_free.Contains(key)) continue;
            JsonNode?[] order = [.. list.Select(i => i?.DeepClone())];
            random.Shuffle(order);
            o[key] = new JsonArray(order);
        }
    }

    private static void Alike(JsonNode? a, JsonNode? b, string at)
    {
        if (a is JsonObject x && b is JsonObject y)
        {
            Assert.Equal(x.Select(m => m.Key), y.Select(m => m.Key));
            foreach (var (key, value) in x) Alike(value, y[key], $"{at}/{key}");
        }
        else if (a is JsonArray p && b is JsonArray q)
        {
            Assert.True(p.Count == q.Count, at);
            // Lists of ids and findings are sets here.
            foreach (var (one, other) in p.OrderBy(Key, StringComparer.Ordinal).Zip(q.OrderBy(Key, StringComparer.Ordinal))) Alike(one, other, at);
        }
        else if (a is JsonValue v && v.TryGetValue<double>(out var number) && b is JsonValue w) Assert.Equal(number, w.GetValue<double>(), 1e-12 * Math.Max(1, Math.Abs(number)));
        else Assert.True(JsonNode.DeepEquals(a, b), $"{at}: {a} became {b}");
    }

    private static string Key(JsonNode? item) => item is JsonObject o && o["id"] is { } id ? (string)id! : item?.ToJsonString() ?? "";
}
