using System.Text.Json;
using System.Text.Json.Nodes;
using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Files;
using Crossmember.Builds.Journal;
using Crossmember.Engineering.Reading;
using Json.Schema;

namespace Crossmember.Builds.Tests.Files;

/// <summary>The published schema and the reader agree: what one refuses by its shape, the other refuses as well.</summary>
public sealed class SchemaTests
{
    private static readonly JsonSchema s_schema = JsonSchema.FromText(File.ReadAllText(Beside("build-1.schema.json")));
    private static readonly string s_everyKey = File.ReadAllText(Beside("every-key.json"));

    [Fact]
    public void The_file_with_every_key_fits_both()
    {
        Assert.True(Fits(s_everyKey), Why(s_everyKey));
        Assert.Empty(Faults(s_everyKey));
    }

    [Fact]
    public void The_case_worked_by_hand_fits() => Assert.True(Fits(File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Proof", "build.json"))));

    [Fact]
    public void What_export_writes_fits_both()
    {
        var faults = new Faults();
        var sheet = BuildFile.Read(System.Text.Encoding.UTF8.GetBytes(s_everyKey), Catalogue.Shipped, faults)!.Sheet!;
        var head = Head.Empty;
        var entries = new List<Entry>();
        foreach (var fact in sheet.Facts)
        {
            entries.Add(Stamp.On(head, fact, FactText.Write(fact), new(2026, 3, 2, 8, 0, 0, TimeSpan.Zero)));
            head = new(entries[^1].Sequence, entries[^1].Hash);
        }
        var bytes = JournalForm.Write("every-key", "Drover", entries, []);
        var text = System.Text.Encoding.UTF8.GetString(bytes);
        Assert.True(Fits(text), Why(text));
        var again = BuildFile.Read(bytes, Catalogue.Shipped, faults)?.Journal;
        Assert.True(again is not null, string.Join('\n', faults.List));
        Assert.Equal(bytes, JournalForm.Write("every-key", "Drover", again!.Entries, []));
        Assert.False(Fits(text.Replace("\"sequence\":1,", "\"sequence\":\"1\",", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("/slots/1/options/1", "orginality", "0.2")]
    [InlineData("/slots/1", "wieght", "2")]
    [InlineData("", "scenarois", "[]")]
    [InlineData("", "phase", "\"assembled\"")]
    [InlineData("/slots/1", "id", "\"Tires\"")]
    [InlineData("/slots/1", "id", "7")]
    [InlineData("/slots/1/options/1", "originality", "1.2")]
    [InlineData("/slots/1/options/1", "class", "\"improve\"")]
    [InlineData("/slots/1/options/1", "prices", "{}")]
    [InlineData("/slots/1/options/1/prices/0", "category", "\"part\"")]
    [InlineData("/slots/1/options/1/prices/0", "each", "\"310,00 USD\"")]
    [InlineData("/slots/1/options/1/hours/0/distribution", "kind", "\"guess\"")]
    [InlineData("/slots/1/options/1/masses/0", "at", "[\"1 m\",\"0 m\"]")]
    [InlineData("/weighings/0", "date", "\"yesterday\"")]
    [InlineData("/shop/tax", "parts", "6")]
    [InlineData("/sets", "winch", "[\"front\"]")]
    [InlineData("", "format", "\"crossmember.build/2\"")]
    public void A_wrong_shape_is_refused_by_both(string place, string key, string value)
    {
        var file = JsonNode.Parse(s_everyKey)!;
        At(file, place)[key] = JsonNode.Parse(value);
        var text = file.ToJsonString();
        Assert.False(Fits(text));
        Assert.Contains(Faults(text), f => f.Path.StartsWith(place, StringComparison.Ordinal));
    }

    /// <summary>Every key of every object: spoilt by one letter, both must see it.</summary>
    [Fact]
    public void No_key_is_known_to_one_of_them_only()
    {
        foreach (var (place, key) in Keys(JsonNode.Parse(s_everyKey)!, ""))
        {
            var file = JsonNode.Parse(s_everyKey)!;
            var holder = At(file, place).AsObject();
            var value = holder[key];
            holder.Remove(key);
            holder[key + "x"] = value?.DeepClone();
            Assert.False(Fits(file.ToJsonString()), $"the schema does not mind {place}/{key}x");
            Assert.True(Faults(file.ToJsonString()).Any(f => f.Path.StartsWith(place, StringComparison.Ordinal)), $"the reader does not mind {place}/{key}x");
        }
    }

    private static IEnumerable<(string Place, string Key)> Keys(JsonNode node, string place)
    {
        // Maps are keyed by names of the file's own; documents and stock are other formats' business.
        string[] maps = ["parameters", "choices", "whatIf", "conditions", "axles", "wheels", "fitted", "uses", "driver", "rates", "tax", "documents", "stock", "front", "rear", "winch", "governs"];
        if (node is JsonObject o)
            foreach (var (key, value) in o)
            {
                if (!maps.Contains(place.Split('/')[^1])) yield return (place, key);
                if (value is not null && key is not ("documents" or "stock")) foreach (var inner in Keys(value, $"{place}/{key}")) yield return inner;
            }
        else if (node is JsonArray list)
            for (var i = 0; i < list.Count; i++)
                if (list[i] is { } item)
                    foreach (var inner in Keys(item, $"{place}/{i}"))
                        yield return inner;
    }

    private static JsonNode At(JsonNode file, string place) =>
        place.Split('/', StringSplitOptions.RemoveEmptyEntries).Aggregate(file, (n, part) => n is JsonArray list ? list[int.Parse(part, null)]! : n[part]!);

    private static bool Fits(string json) => s_schema.Evaluate(JsonDocument.Parse(json).RootElement).IsValid;

    private static string Why(string json) =>
        string.Join('\n', s_schema.Evaluate(JsonDocument.Parse(json).RootElement, new() { OutputFormat = OutputFormat.List }).Details?.Where(d => d.Errors is not null).Select(d => $"{d.InstanceLocation}: {string.Join(", ", d.Errors!.Values)}") ?? []);

    private static IReadOnlyList<Fault> Faults(string json)
    {
        var faults = new Faults();
        BuildFile.Read(System.Text.Encoding.UTF8.GetBytes(json), Catalogue.Shipped, faults);
        return faults.List;
    }

    private static string Beside(string file) => Path.Combine(AppContext.BaseDirectory, "Files", file);
}
