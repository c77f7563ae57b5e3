using System.CommandLine;
using System.Diagnostics;
using System.Runtime.InteropServices;

namespace Crossmember.Cli.Commands.Shop;

internal static class Serve
{
    public static Verb Make(SharedOptions shared)
    {
        var urls = new Option<string?>("--urls") { HelpName = "URL", Description = "the address to serve on (default: http://127.0.0.1:5230)" };
        return new("serve", "Serves the web desk.", "crossmember serve", "crossmember serve --urls http://127.0.0.1:8080 --data records")
        {
            Options = { urls }, Runs = (line, terminal) => Run(line.GetValue(urls), shared.Address(line), terminal),
        };
    }

    /// <summary>The desk is a program of its own: its pages bring a web server, which no other command wants to load.</summary>
    private static Outcome Run(string? urls, ShopAddress address, Terminal terminal)
    {
        if (Desk() is not { } desk) return new Outcome.Stopped("the web desk is not built; ./run builds and serves it");
        var start = new ProcessStartInfo(DotNet()) { WorkingDirectory = Environment.CurrentDirectory };
        foreach (var word in (string[])[desk, "--data", address.Folder, .. address.Connection is { } c ? new[] { "--database", c } : [], .. urls is null ? [] : new[] { "--urls", urls }])
            start.ArgumentList.Add(word);
        using var process = Process.Start(start)!;
        // A terminal sends Ctrl-C to both and the desk hears it twice, which does it no harm; a supervisor sends it to this one alone.
        if (terminal.Interruption is { } i) i.Instead = signal => _ = Kill(process.Id, signal == PosixSignal.SIGINT ? 2 : 15);
        process.WaitForExit();
        return new Outcome.Forwarded(process.ExitCode);
    }

    /// <summary>The one that runs this program, if it was started so.</summary>
    private static string DotNet() => Environment.ProcessPath is { } self && Path.GetFileNameWithoutExtension(self) == "dotnet" ? self : "dotnet";

    [DllImport("libc", EntryPoint = "kill")]
    private static extern int Kill(int process, int signal);

    /// <summary>Beside this program, or where the scripts publish it.</summary>
    private static string? Desk() =>
        new[] { Environment.GetEnvironmentVariable("CROSSMEMBER_DESK"), Path.Combine(AppContext.BaseDirectory, "Crossmember.Web.dll"), Path.Combine(AppContext.BaseDirectory, "..", "web", "Crossmember.Web.dll") }
            .FirstOrDefault(p => p is not null && File.Exists(p));
}
