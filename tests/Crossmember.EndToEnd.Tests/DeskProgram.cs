using System.Diagnostics;

namespace Crossmember.EndToEnd.Tests;

/// <summary>The real program in a process of its own, which can be killed.</summary>
public sealed class DeskProgram : IDisposable
{
    private readonly Process _process;

    /// <param name="port">0: any that is free.</param>
    public DeskProgram(string folder, int port = 0)
    {
        string[] words = [Path.Combine(AppContext.BaseDirectory, "Crossmember.Web.dll"), "--urls", $"http://127.0.0.1:{port}", "--data", folder];
        var start = new ProcessStartInfo("dotnet", words) { RedirectStandardOutput = true };
        // Nobody reads on after the address: a program that goes on talking would be stuck.
        start.Environment["Logging__LogLevel__Default"] = "Warning";
        _process = Process.Start(start)!;
    }

    public async Task<Uri> Address()
    {
        const string says = "Crossmember is at ";
        while (await _process.StandardOutput.ReadLineAsync(TestContext.Current.CancellationToken) is { } line)
            if (line.StartsWith(says, StringComparison.Ordinal)) return new(line[says.Length..]);
        throw new InvalidOperationException("It ended without an address.");
    }

    public async Task Kill()
    {
        _process.Kill();
        await _process.WaitForExitAsync(TestContext.Current.CancellationToken);
    }

    public void Dispose()
    {
        if (!_process.HasExited) _process.Kill();
        _process.Dispose();
    }
}
