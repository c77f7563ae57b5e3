using System.CommandLine;
using System.CommandLine.Help;
using Crossmember.Cli.Commands.Calc;
using Crossmember.Cli.Commands.Paper;
using Crossmember.Cli.Commands.Sheets;
using Crossmember.Cli.Commands.Shop;

namespace Crossmember.Cli;

/// <summary>The grammar: every command, composed.</summary>
internal static class CommandLine
{
    private static readonly ParserConfiguration s_parser = new() { EnablePosixBundling = false, ResponseFileTokenReplacer = null };

    public static Outcome Run(IReadOnlyList<string> args, Terminal terminal)
    {
        var line = Compose().Parse(args, s_parser);
        if (line.Action is not null && line.Errors.Count == 0)
        {
            line.Invoke(new() { Output = terminal.Out, Error = terminal.Error, EnableDefaultExceptionHandler = false });
            return new Outcome.Shown();
        }
        if (Misuse.Of(line) is { } misused) return misused;
        return ((Verb)line.CommandResult.Command).Runs!(line, terminal);
    }

    /// <summary>Only the grammar is made here; what a command needs is loaded when it runs.</summary>
    public static Command Compose()
    {
        var shared = new SharedOptions();
        var root = new Command("crossmember", "The engineering and master sheet of vehicle builds.")
        {
            Serve.Make(shared), Demo.Make(), Import.Make(shared), Export.Make(shared), Rebuild.Make(shared), Verify.Make(shared),
            new Command("calc", "Calculations: list them, describe one, run one.") { List.Make(), Describe.Make(), Commands.Calc.Run.Make() },
            Check.Make(shared), Ripple.Make(shared), Report.Make(shared),
            new Command("brakes", "Brakes: look for the parts that pass.") { Commands.Brakes.Search.Make(shared) },
            new HelpOption { Action = new HelpWithExamples() },
            new VersionOption(),
        };
        shared.AddTo(root);
        return root;
    }
}
