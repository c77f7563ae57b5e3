using System.CommandLine;

namespace Crossmember.Cli;

/// <summary>A command that does something, with examples of its use.</summary>
internal sealed class Verb(string name, string description, params string[] examples) : Command(name, description)
{
    /// <summary>As typed in a shell; <c>--help</c> shows them and the tests run them.</summary>
    public IReadOnlyList<string> Examples { get; } = examples;

    /// <summary>Runs on the parsed line; null until the composition has said what to do.</summary>
    public Func<ParseResult, Terminal, Outcome>? Runs { get; init; }
}
