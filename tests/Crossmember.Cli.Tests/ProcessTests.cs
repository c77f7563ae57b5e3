using System.Diagnostics;
using System.Text.Json;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Cli.Tests;

/// <summary>The program as a process of its own.</summary>
public sealed class ProcessTests : IDisposable
{
    /// <summary>As it was built, with the native libraries of its own platform; the copy beside the tests has the tests' own.</summary>
    private static readonly string s_folder = Path.GetFullPath(Path.Combine(AppContext.BaseDirectory, "../../../../../src/Crossmember.Cli/bin", Path.GetFileName(Path.GetFullPath("..", AppContext.BaseDirectory.TrimEnd('/'))), "net10.0"));
    private static readonly string s_program = Path.Combine(s_folder, "crossmember.dll");

    private readonly Place _place = new();

    public static TheoryData<string> Examples => [.. All(CommandLine.Compose()).OfType<Verb>().Where(v => v.Name != "serve").Select(v => v.Name)];

    /// <summary>As a newcomer copies them: with the demo file in the folder and the demo build in the store.</summary>
    [Theory]
    [MemberData(nameof(Examples))]
    public void The_examples_of_the_help_run(string verb)
    {
        _place.Run("demo", "--out", _place.Folder);
        _place.Run("import", Path.Combine(_place.Folder, "packhorse.json"));
        foreach (var example in All(CommandLine.Compose()).OfType<Verb>().Single(v => v.Name == verb).Examples)
        {
            var (code, output, errors) = Shell($"crossmember() {{ '{DotNet}' '{s_program}' \"$@\"; }}; {example}");
            Assert.True(code is 0 or 1 && errors.Length == 0, $"{example}: {code} {errors}");
            if (!example.Contains("--json", StringComparison.Ordinal)) Assert.NotEqual("", output);
            else using (var whole = JsonDocument.Parse(output)) Assert.StartsWith("crossmember.", whole.RootElement.GetProperty("format").GetString(), StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Examples_of_serve_are_understood() =>
        Assert.All(All(CommandLine.Compose()).OfType<Verb>().Single(v => v.Name == "serve").Examples, e => Assert.Empty(CommandLine.Compose().Parse(e.Split(' ')[1..]).Errors));

    [Fact]
    public void A_calculation_runs_where_there_is_no_store_to_load()
    {
        var bare = Directory.CreateDirectory(Path.Combine(_place.Folder, "bare")).FullName;
        foreach (var name in new[] { "crossmember.dll", "crossmember.runtimeconfig.json", "Crossmember.Engineering.dll", "Crossmember.Builds.dll", "Crossmember.Planning.dll", "System.CommandLine.dll", "UnitsNet.dll" })
            File.Copy(Path.Combine(s_folder, name), Path.Combine(bare, name));
        var id = CalculationList.All.First().Id;
        foreach (var words in new[] { $"calc run {id}", "calc list", $"calc describe {id}" })
        {
            var (code, output, errors) = Shell($"echo '{{}}' | '{DotNet}' '{bare}/crossmember.dll' {words} --json");
            Assert.Equal((0, "{", ""), (code, output[..1], errors));
        }
        Assert.Equal(3, Shell($"'{DotNet}' '{bare}/crossmember.dll' rebuild").Code);
    }

    [Fact]
    public void Whoever_reads_the_output_may_leave_early() =>
        Assert.Equal("{\n", Shell($"'{DotNet}' '{s_program}' calc list --json | head -n 1").Output);

    [Theory]
    [InlineData("TERM", "15")]
    [InlineData("INT", "2")]
    public void The_desk_is_told_where_to_serve_hears_the_signal_and_gives_the_exit_code(string signal, string number)
    {
        // A desk of the test's own: it says what it was told, waits, and ends with the code 40 + the signal's number.
        var desk = _place.File("dotnet", $$"""
            #!/usr/bin/env bash
            trap 'exit 42' INT; trap 'exit 55' TERM
            printf '%s ' "${@:2}" > told.txt
            while :; do sleep 0.05; done
            """);
        _place.File("Crossmember.Web.dll", "");
        var start = $"chmod +x '{desk}'; export CROSSMEMBER_DESK='{_place.Folder}/Crossmember.Web.dll' DOTNET_ROOT='{Path.GetDirectoryName(DotNet)}' PATH='{_place.Folder}':$PATH; set -m; ";
        var (code, _, errors) = Shell($"{start} '{Path.ChangeExtension(s_program, null)}' serve --urls http://127.0.0.1:9 & until [ -s told.txt ]; do sleep 0.05; done; kill -{signal} $!; {{ wait $!; code=$?; }} 2>/dev/null; exit $code");
        Assert.Equal((40 + int.Parse(number), ""), (code, errors));
        Assert.Equal($"--data {_place.Data} --urls http://127.0.0.1:9 ", File.ReadAllText(Path.Combine(_place.Folder, "told.txt")));
    }

    [Fact]
    public void A_desk_that_is_not_built_is_the_surroundings_fault()
    {
        using var stderr = new StringWriter();
        Assert.Equal(3, Program.Run(["serve"], TextWriter.Null, stderr, Stream.Null));
        Assert.Contains("./run builds", stderr.ToString(), StringComparison.Ordinal);
    }

    public void Dispose() => _place.Dispose();

    private static IEnumerable<System.CommandLine.Command> All(System.CommandLine.Command command) => command.Subcommands.SelectMany(All).Prepend(command);

    /// <summary>The runtime that runs these tests.</summary>
    private static string DotNet { get; } = Path.GetFullPath(Path.Combine(System.Runtime.InteropServices.RuntimeEnvironment.GetRuntimeDirectory(), "..", "..", "..", "dotnet"));

    private (int Code, string Output, string Errors) Shell(string script)
    {
        var start = new ProcessStartInfo("bash", ["-c", script]) { WorkingDirectory = _place.Folder, RedirectStandardOutput = true, RedirectStandardError = true };
        start.Environment["CROSSMEMBER_DATA"] = _place.Data;
        using var process = Process.Start(start)!;
        var output = process.StandardOutput.ReadToEndAsync();
        var errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output.GetAwaiter().GetResult(), errors);
    }
}
