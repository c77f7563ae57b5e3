using System.Diagnostics;

namespace Crossmember.EndToEnd.Tests;

/// <summary>The script at the root that people and other programs call.</summary>
public sealed class CommandLineScriptTests : IDisposable
{
    private readonly DirectoryInfo _elsewhere = Directory.CreateTempSubdirectory("crossmember-script-");

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
        await File.WriteAllTextAsync(Path.Combine(_elsewhere.FullName, "half.json"), "{", TestContext.Current.CancellationToken);
        var (code, _, errors) = await Crossmember("check", "half.json");
        Assert.Equal(2, code); // a fault in the file itself: it was found
        Assert.Contains("half.json: /", errors, StringComparison.Ordinal);
    }

    public void Dispose() => _elsewhere.Delete(recursive: true);

    private async Task<(int Code, string Output, string Errors)> Crossmember(params string[] arguments)
    {
        var start = new ProcessStartInfo(RepositoryRoot.Script("crossmember"), arguments)
        {
            WorkingDirectory = _elsewhere.FullName, RedirectStandardOutput = true, RedirectStandardError = true,
        };
        start.Environment["CROSSMEMBER_DATA"] = Path.Combine(_elsewhere.FullName, "data");
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        return (process.ExitCode, await output, await errors);
    }
}
