using System.Text.Json.Nodes;
using Crossmember.Engineering.Reading;

namespace Crossmember.Cli;

/// <summary>How a command ended. A closed set: <see cref="Ending"/> turns each into what is printed and the exit code.</summary>
internal abstract record Outcome
{
    private Outcome() { }

    /// <summary>There is a result; <paramref name="Fails"/> says that a finding in it fails.</summary>
    /// <param name="Json">The result for programs.</param>
    /// <param name="Text">The same for people.</param>
    public sealed record Result(Func<JsonObject> Json, Action<TextWriter> Text, bool Fails = false) : Outcome;

    /// <summary>What was handed in is not right.</summary>
    /// <param name="Told">Lines about what went well nevertheless.</param>
    public sealed record Refused(IReadOnlyList<FileFault> Faults, IReadOnlyList<string> Told) : Outcome;

    /// <summary>The command line itself is not right.</summary>
    public sealed record Misused(string Wrong, string Right) : Outcome;

    /// <summary>Disk, database, or somebody stopped it.</summary>
    public sealed record Stopped(string Why) : Outcome;

    /// <summary>Another program ran in its place.</summary>
    public sealed record Forwarded(int ExitCode) : Outcome;

    /// <summary>Help or version: it is printed already.</summary>
    public sealed record Shown : Outcome;

    public static Outcome Faulty(string file, Faults faults) => new Refused([.. faults.List.Select(f => new FileFault(file, f))], []);

    public static Outcome Faulty(string file, string wrong, string right) => new Refused([new(file, new("", wrong, right))], []);
}

/// <summary>A fault and the file it is in.</summary>
internal sealed record FileFault(string File, Fault Fault)
{
    public override string ToString() => $"{File}: {Fault}";
}
