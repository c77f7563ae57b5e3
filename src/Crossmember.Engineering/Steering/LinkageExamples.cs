namespace Crossmember.Engineering.Steering;

/// <summary>Answers of another method for the worked examples of the linkage.</summary>
internal static class LinkageExamples
{
    /// <summary>Degrees, by the program beside <c>LinkageSolverTests</c>.</summary>
    public static IReadOnlyDictionary<string, double> Bump { get; } = new Dictionary<string, double> { ["atBump"] = -0.200632, ["atDroop"] = -0.298689, ["total"] = 0.300320 };
}
