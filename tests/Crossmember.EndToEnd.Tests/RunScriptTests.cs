using System.Diagnostics;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Crossmember.EndToEnd.Tests;

/// <summary>What somebody does first: run it, look at the page, stop it.</summary>
public sealed partial class RunScriptTests : IDisposable
{
    private readonly DirectoryInfo _data = Directory.CreateTempSubdirectory("crossmember-run-");

    [GeneratedRegex(@"Crossmember is at (http://\S+)")]
    private static partial Regex Address();

    [Fact]
    public async Task It_serves_the_demo_shop_at_the_address_it_prints_until_it_is_stopped()
    {
        using var run = Process.Start(new ProcessStartInfo(RepositoryRoot.Script("run"), ["--data", _data.FullName])
        {
            RedirectStandardOutput = true, RedirectStandardError = true,
        })!;
        var errors = run.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        try
        {
            using var client = new HttpClient { BaseAddress = await Printed(run.StandardOutput) };
            using var page = await client.GetAsync("/", TestContext.Current.CancellationToken);
            Assert.True(page.IsSuccessStatusCode, $"the first page answers {page.StatusCode}");
            var builds = JsonNode.Parse(await client.GetStringAsync("/api/builds", TestContext.Current.CancellationToken))!["builds"]!.AsArray();
            Assert.Equal(["croft", "packhorse", "shieling", "steading"], builds.Select(b => (string?)b!["id"]).Order(StringComparer.Ordinal));
        }
        finally
        {
            Process.Start("kill", ["-TERM", run.Id.ToString()]).Dispose();
        }
        await run.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal("", await errors);
        Assert.Equal(0, run.ExitCode);
    }

    [Fact]
    public async Task A_word_it_does_not_know_is_refused_before_anything_is_done()
    {
        using var run = Process.Start(new ProcessStartInfo(RepositoryRoot.Script("run"), ["--datta", _data.FullName]) { RedirectStandardError = true })!;
        Assert.Contains("--datta is not known", await run.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken), StringComparison.Ordinal);
        await run.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.Equal(2, run.ExitCode);
        Assert.Empty(_data.GetFileSystemInfos());
    }

    public void Dispose() => _data.Delete(recursive: true);

    private static async Task<Uri> Printed(StreamReader output)
    {
        while (await output.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
            if (Address().Match(line) is { Success: true } found) return new(found.Groups[1].Value);
        throw new InvalidOperationException("It ended without an address.");
    }
}
