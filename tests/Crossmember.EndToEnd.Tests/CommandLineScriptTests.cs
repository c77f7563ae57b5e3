using System.Diagnostics;

namespace Crossmember.EndToEnd.Tests;

/// <summary>The script at the root that people and other programs call.</summary>
public sealed class CommandLineScriptTests
{
    private static readonly string s_root = FindRoot();

    [Fact]
    public async Task It_works_from_any_folder_and_says_nothing_of_its_own()
    {
        var (code, output, errors) = await Crossmember("calc", "list", "--json");
        Assert.Equal(0, code);
        Assert.StartsWith("{", output, StringComparison.Ordinal);
        Assert.Empty(errors);
    }

    [Fact]
    public async Task Files_are_named_from_where_the_caller_stands()
    {
        var (code, _, errors) = await Crossmember("check", "no-such-build.json");
        Assert.NotEqual(0, code);
        Assert.Contains("no-such-build.json", errors, StringComparison.Ordinal);
        Assert.DoesNotContain(s_root, errors, StringComparison.Ordinal);
    }

    private static async Task<(int Code, string Output, string Errors)> Crossmember(params string[] arguments)
    {
        var start = new ProcessStartInfo(Path.Combine(s_root, "crossmember"), arguments)
        {
            WorkingDirectory = Path.GetTempPath(), RedirectStandardOutput = true, RedirectStandardError = true,
        };
        start.Environment["CROSSMEMBER_DATA"] = Path.Combine(Path.GetTempPath(), "crossmember-script-tests-" + Environment.ProcessId);
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, await output, await errors);
    }

    private static string FindRoot()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "crossmember"))) folder = folder.Parent!;
        return folder.FullName;
    }
}
