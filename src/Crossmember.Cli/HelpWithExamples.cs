using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;

namespace Crossmember.Cli;

/// <summary>The usual help, then examples to copy.</summary>
internal sealed class HelpWithExamples : SynchronousCommandLineAction
{
    private readonly HelpAction _usual = new();

    public override bool ClearsParseErrors => true;

    public override int Invoke(ParseResult parseResult)
    {
        var code = _usual.Invoke(parseResult);
        var output = parseResult.InvocationConfiguration.Output;
        output.WriteLine("Examples:");
        foreach (var example in ExamplesOf(parseResult.CommandResult.Command)) output.WriteLine("  " + example);
        output.WriteLine();
        return code;
    }

    /// <summary>A group of commands shows the first example of each.</summary>
    private static IEnumerable<string> ExamplesOf(Command command) =>
        command is Verb verb ? verb.Examples : command.Subcommands.SelectMany(c => ExamplesOf(c).Take(1));
}
