namespace Crossmember.Engineering.Calculations;

/// <summary>What evaluating gives, always in this one shape: screen, paper and command line print the same.</summary>
/// <param name="Outputs">In SI, in the order of <see cref="Calculation.OutputSpecs"/>; absent where unknown.</param>
public sealed record Outcome(
    IReadOnlyList<Value> Outputs,
    IReadOnlyList<Finding> Findings,
    IReadOnlyList<WorkingLine> Working,
    IReadOnlyList<PlottedCurve> Curves,
    IReadOnlyList<MissingInput> Missing,
    IReadOnlyList<string> Cautions);

/// <summary>The same at the typed door.</summary>
public sealed record Evaluation<TResult>(TResult? Result, Outcome Outcome)
    where TResult : class;
