using System.Net.Http.Headers;
using System.Text.Json.Nodes;

namespace Crossmember.PageBenchmarks;

/// <summary>The lists of a large shop, as the server makes and sends them: <c>Crossmember.Benchmarks shop FOLDER DEMO</c> makes it.</summary>
internal static class BigShopPages
{
    private const int Times = 20;

    public static async Task Time(DirectoryInfo root, string records)
    {
        using (await RunningDesk.Start(root.FullName, records)) { } // builds what is stale
        var figures = new Figures();
        using var desk = await RunningDesk.Start(root.FullName, records);
        figures.Add("./run on the large shop, to the first page", "ms", desk.StartMilliseconds);
        while ((await desk.Client.GetStringAsync("/")).Contains("worked out", StringComparison.Ordinal)) await Task.Delay(500);
        foreach (var (name, path) in new[] { ("Today", "/"), ("Builds", "/builds"), ("search for one word", "/search?q=ring"), ("search for two words", "/search?q=tire+33"), ("peer: static file", "/icon.svg") })
        {
            figures.Add($"{name}, first time", "ms", await desk.Fetch(path));
            for (var i = 0; i < Times; i++) figures.Add($"{name}, again", "ms", await desk.Fetch(path));
        }
        for (var i = 0; i < Times; i++)
        {
            await Note(desk, $"vehicle-{i * 7:000}");
            figures.Add("Today, right after somebody wrote of a vehicle that was not open", "ms", await desk.Fetch("/"));
        }
        if (desk.Memory() is { } memory) figures.Add("memory of the server afterwards", "MiB", memory);
        figures.Print();
    }

    private static async Task Note(RunningDesk desk, string build)
    {
        var now = DateTime.UtcNow.ToString("yyyy-MM-dd'T'HH:mm:ss.fff'Z'", System.Globalization.CultureInfo.InvariantCulture);
        var fact = new JsonObject
        {
            ["id"] = Guid.CreateVersion7().ToString(), ["stream"] = build, ["kind"] = "note.written", ["schema"] = 1, ["occurred"] = now, ["person"] = "bench", ["device"] = "bench",
            ["subject"] = "slots/vehicle/notes", ["payload"] = new JsonObject { ["text"] = "looked at" },
        };
        using var body = new StringContent(new JsonArray(fact).ToJsonString()) { Headers = { ContentType = new MediaTypeHeaderValue("application/json") } };
        using var answer = await desk.Client.PostAsync($"/api/builds/{build}/facts?arrival=online", body);
        answer.EnsureSuccessStatusCode();
    }
}
