using System.Diagnostics;

namespace Crossmember.EndToEnd.Tests;

/// <summary>The command line as people call it, in a process of its own.</summary>
public static class CrossmemberScript
{
    /// <summary>What it prints; a code that means neither "done" nor "a check fails" is a failure of the test.</summary>
    public static async Task<string> Run(params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(RepositoryRoot.Script("crossmember"), arguments) { RedirectStandardOutput = true, RedirectStandardError = true })!;
        var output = process.StandardOutput.ReadToEndAsync(TestContext.Current.CancellationToken);
        var errors = process.StandardError.ReadToEndAsync(TestContext.Current.CancellationToken);
        await process.WaitForExitAsync(TestContext.Current.CancellationToken);
        Assert.True(process.ExitCode is 0 or 1, await errors);
        return await output;
    }
}
