namespace Crossmember.Engineering.Calculations;

/// <summary>Everything a page, a sheet of paper or a test needs to know of a calculation besides its inputs and outputs.</summary>
public sealed record Description
{
    /// <summary>Stable dotted id: <c>driveline.engine-speed</c>.</summary>
    public required string Id { get; init; }

    /// <summary>Raised whenever the same inputs may give another answer.</summary>
    public required int Version { get; init; }

    public required string Title { get; init; }

    public required string Purpose { get; init; }

    public required string Formula { get; init; }

    /// <summary>Where the formula holds, what it leaves out, how far off it may be.</summary>
    public required string Validity { get; init; }

    public required IReadOnlyList<string> Sources { get; init; }

    public IReadOnlyList<Check> Checks { get; init; } = [];

    public IReadOnlyList<Trend> Trends { get; init; } = [];

    /// <summary>For each numeric input without a trend: the reason.</summary>
    public IReadOnlyList<NoTrend> NoTrends { get; init; } = [];

    /// <summary>Optional inputs of which one at least must be known: where none is, these are asked for, and no other optional input.</summary>
    public IReadOnlyList<string> Either { get; init; } = [];

    public required IReadOnlyList<Example> Examples { get; init; }

    /// <summary>What a qualified person must look at, wherever the work can hurt someone.</summary>
    public IReadOnlyList<string> Cautions { get; init; } = [];

    /// <summary>The first part of the id.</summary>
    public string Area => Id[..Id.IndexOf('.', StringComparison.Ordinal)];
}

/// <summary>A declared check.</summary>
/// <param name="Needs">Optional inputs without which this check (not the result) is unknown.</param>
public sealed record Check(string Id, Sense? Sense, string Asks, params string[] Needs);

/// <summary>Raising the input over the range (in the input's unit) raises (+) or lowers (-) the output, all else equal.</summary>
public sealed record Trend(string Input, string Output, char Sign, double Low, double High);

/// <summary>Why an input has no trend.</summary>
public sealed record NoTrend(string Input, string Why);

/// <summary>A worked example from outside.</summary>
/// <param name="Inputs">As typed; a map of members or a curve is written as its JSON.</param>
/// <param name="Outputs">In the output's own unit.</param>
/// <param name="Tolerance">Relative.</param>
public sealed record Example(
    IReadOnlyDictionary<string, string> Inputs, IReadOnlyDictionary<string, double> Outputs, double Tolerance, string Source, Provenance Provenance);

/// <summary>How an expected number is known. Pinned proves only that nothing moved.</summary>
public enum Provenance { Published, HandbookMemory, Derived, Independent, Pinned }
