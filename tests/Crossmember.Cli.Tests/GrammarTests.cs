using System.CommandLine;

namespace Crossmember.Cli.Tests;

public sealed class GrammarTests
{
    private static IEnumerable<Command> All(Command command) => command.Subcommands.SelectMany(All).Prepend(command);

    public static TheoryData<string> Commands => [.. All(CommandLine.Compose()).Select(c => string.Join(' ', Path(c)))];

    [Theory]
    [MemberData(nameof(Commands))]
    public void Every_command_helps_with_an_example(string path)
    {
        using var place = new Place();
        var used = place.Run([.. path.Split(' ', StringSplitOptions.RemoveEmptyEntries), "--help"]);
        Assert.Equal(0, used.Code);
        Assert.Contains("Examples:", used.Out, StringComparison.Ordinal);
        Assert.Contains("  crossmember ", used.Out.Replace("| crossmember", "  crossmember", StringComparison.Ordinal), StringComparison.Ordinal);
    }

    [Fact]
    public void The_grammar_is_the_one_other_programs_rely_on() =>
        Assert.Equal(["brakes", "calc", "check", "demo", "export", "import", "rebuild", "report", "ripple", "serve", "verify"],
            CommandLine.Compose().Subcommands.Select(c => c.Name).Order(StringComparer.Ordinal));

    [Theory]
    [InlineData("chek", "check")]
    [InlineData("calc lst", "list")]
    [InlineData("check x.json --scenari y", "--scenario")]
    public void A_wrong_word_names_the_nearest(string line, string nearest)
    {
        using var place = new Place();
        var used = place.Run(line.Split(' '));
        Assert.Equal(2, used.Code);
        Assert.Contains(nearest, used.Error, StringComparison.Ordinal);
    }

    private static IEnumerable<string> Path(Command command) =>
        command.Parents.OfType<Command>().FirstOrDefault() is { } parent ? [.. Path(parent), command.Name] : [];
}
