namespace Crossmember.Planning;

/// <summary>How well somebody knows a job whose hours they tell.</summary>
public enum Certainty { DoneIt, SeenIt, Guess }

/// <summary>One figure of hours and how well the job is known, in place of three guesses.</summary>
/// <remarks>
/// Half of such jobs take less than the figure, about five in six less than figure x factor: a lognormal with the figure as its median.
/// The factors 1.15, 1.35 and 1.8 are common practice, no source: what has been done before comes out within a seventh, a mere guess may nearly double.
/// </remarks>
public sealed record HoursGuess(double Figure, Certainty Certainty)
{
    public static IReadOnlyList<Certainty> Certainties { get; } = [Certainty.DoneIt, Certainty.SeenIt, Certainty.Guess];

    public Distribution Distribution => new Distribution.Lognormal(Figure, Factor(Certainty));

    /// <summary>What the job counts as: more than the figure, since what goes wrong adds more than luck saves.</summary>
    public double Mean => Distribution.Mean;

    /// <summary>Hours that about five such jobs in six do not exceed.</summary>
    public double FiveInSix => Figure * Factor(Certainty);

    public static double Factor(Certainty certainty) => certainty switch
    {
        Certainty.DoneIt => 1.15,
        Certainty.SeenIt => 1.35,
        _ => 1.8,
    };

    /// <summary>The figure and the words behind a distribution; null where it was said in another way.</summary>
    public static HoursGuess? From(Distribution? distribution)
    {
        if (distribution is not Distribution.Lognormal said) return null;
        foreach (var certainty in Certainties)
            if (Math.Abs(said.Factor - Factor(certainty)) < 1e-9) return new(said.Median, certainty);
        return null;
    }
}
