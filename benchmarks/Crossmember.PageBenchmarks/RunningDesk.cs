using System.Diagnostics;
using System.Globalization;
using System.Text.Json.Nodes;

namespace Crossmember.PageBenchmarks;

/// <summary>The desk as <c>./run</c> starts it, on a folder of its own.</summary>
internal sealed class RunningDesk : IDisposable
{
    private const string Says = "Crossmember is at ";

    private readonly Process _script;

    private RunningDesk(Process script) => _script = script;

    public HttpClient Client { get; } = new();

    /// <summary>From the call of the script to the first page in hand.</summary>
    public double StartMilliseconds { get; private set; }

    public static async Task<RunningDesk> Start(string root, string data)
    {
        var began = Stopwatch.GetTimestamp();
        var desk = new RunningDesk(Process.Start(new ProcessStartInfo(Path.Combine(root, "run"), ["--data", data]) { RedirectStandardOutput = true })!);
        desk.Client.BaseAddress = await desk.Printed();
        using var page = await desk.Client.GetAsync("/");
        page.EnsureSuccessStatusCode();
        desk.StartMilliseconds = Stopwatch.GetElapsedTime(began).TotalMilliseconds;
        // Read on, or the desk would be stuck when nobody takes what it says.
        _ = desk._script.StandardOutput.ReadToEndAsync();
        return desk;
    }

    public async Task<string> FirstBuild() =>
        JsonNode.Parse(await Client.GetStringAsync("/api/builds"))!["builds"]![0]!["id"]!.GetValue<string>();

    /// <summary>From the request to the whole answer, in milliseconds; what is fetched is not looked at.</summary>
    public async Task<double> Fetch(string path)
    {
        var began = Stopwatch.GetTimestamp();
        await Client.GetByteArrayAsync(path);
        return Stopwatch.GetElapsedTime(began).TotalMilliseconds;
    }

    /// <summary>Resident memory of the server in MiB; null where the system does not tell.</summary>
    public double? Memory()
    {
        var children = $"/proc/{_script.Id}/task/{_script.Id}/children";
        if (!File.Exists(children)) return null;
        var server = File.ReadAllText(children).Split(' ', StringSplitOptions.RemoveEmptyEntries)[0];
        var line = File.ReadLines($"/proc/{server}/status").First(l => l.StartsWith("VmRSS:", StringComparison.Ordinal));
        return double.Parse(line.Split(' ', StringSplitOptions.RemoveEmptyEntries)[1], CultureInfo.InvariantCulture) / 1024;
    }

    public void Dispose()
    {
        Process.Start("kill", ["-TERM", _script.Id.ToString(CultureInfo.InvariantCulture)]).Dispose();
        _script.WaitForExit();
        _script.Dispose();
        Client.Dispose();
    }

    private async Task<Uri> Printed()
    {
        // The server says it first, the script again; either will do.
        while (await _script.StandardOutput.ReadLineAsync() is { } line)
            if (line.Split(Says) is [_, var address]) return new(address.Trim().Split(' ')[0]);
        throw new InvalidOperationException("./run ended without an address; call it by hand to see why.");
    }
}
