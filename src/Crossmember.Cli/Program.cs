using System.Data.Common;
using System.Text;

namespace Crossmember.Cli;

/// <summary>The command line: parses, runs one command and turns its outcome into the exit code.</summary>
public static class Program
{
    public static int Main(string[] args)
    {
        using var interruption = new Interruption();
        // Written in one piece at the end: a reader of the pipe never sees half a document.
        using var output = new StreamWriter(Console.OpenStandardOutput(), new UTF8Encoding(false), 1 << 16);
        using var error = new StreamWriter(Console.OpenStandardError(), new UTF8Encoding(false)) { AutoFlush = true };
        return Run(args, output, error, Console.OpenStandardInput(), interruption);
    }

    public static int Run(IReadOnlyList<string> args, TextWriter stdout, TextWriter stderr, Stream stdin, Interruption? interruption = null)
    {
        var terminal = new Terminal(stdout, stderr, stdin, args.Contains(SharedOptions.JsonName), interruption);
        var outcome = Guarded(() => CommandLine.Run(args, terminal));
        try
        {
            return Ending.Of(outcome, terminal);
        }
        catch (IOException)
        {
            return Ending.EnvironmentCode; // whoever read the output has gone
        }
    }

    /// <summary>What no command foresaw is told in one line; it is never taken for a verdict.</summary>
    private static Outcome Guarded(Func<Outcome> run)
    {
        try
        {
            return run();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or InvalidDataException or DbException)
        {
            return new Outcome.Stopped(e.Message);
        }
        catch (OperationCanceledException)
        {
            return new Outcome.Stopped("cancelled");
        }
        catch (Exception e)
        {
            return new Outcome.Stopped($"{e.GetType().Name}: {(e.InnerException is DbException inner ? inner.Message : e.Message)}");
        }
    }
}
