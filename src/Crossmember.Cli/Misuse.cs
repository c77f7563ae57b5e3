using System.CommandLine;
using System.CommandLine.Parsing;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli;

/// <summary>What is wrong with a command line, in one line that names the nearest right thing.</summary>
internal static class Misuse
{
    public static Outcome.Misused? Of(ParseResult line)
    {
        var command = line.CommandResult.Command;
        if (UnknownOption(line, command) is { } option) return option;
        if (line.UnmatchedTokens is [var word, ..]) return Surplus(word, command);
        if (command is not Verb) return new($"'{Path(line.CommandResult)}' wants a command", "one of: " + string.Join(", ", command.Subcommands.Select(c => c.Name)));
        return line.Errors is [var error, ..] ? new(Plain(error.Message), See(line.CommandResult)) : null;
    }

    /// <summary>The parser would take a misspelt option for a file name where files are wanted.</summary>
    private static Outcome.Misused? UnknownOption(ParseResult line, Command command)
    {
        foreach (var token in line.Tokens)
        {
            if (token.Type == TokenType.DoubleDash) return null;
            if (token.Type != TokenType.Argument || token.Value is not ['-', _, ..]) continue;
            var known = OptionsOf(line.CommandResult).SelectMany(o => o.Aliases.Prepend(o.Name)).ToList();
            var typed = token.Value.Split('=')[0];
            return new($"'{typed}' is no option of '{Path(line.CommandResult)}'", $"nearest: {Nearest.To(typed, known)}");
        }
        return null;
    }

    private static Outcome.Misused Surplus(string word, Command command) => command.Subcommands.Count > 0
        ? new($"'{word}' is no command", $"nearest: {Nearest.To(word, command.Subcommands.Select(c => c.Name))}")
        : new($"'{word}' is one word too many", $"see 'crossmember {command.Name} --help'");

    private static IEnumerable<Option> OptionsOf(CommandResult result)
    {
        IEnumerable<Option> own = result.Command.Options;
        return result.Parent is CommandResult above ? own.Concat(OptionsOf(above).Where(o => o.Recursive)) : own;
    }

    private static string Path(CommandResult result) => result.Parent is CommandResult above ? $"{Path(above)} {result.Command.Name}" : result.Command.Name;

    private static string See(CommandResult result) => $"see '{Path(result)} --help'";

    private static string Plain(string message) => char.ToLowerInvariant(message[0]) + message[1..].TrimEnd('.');
}
