using Crossmember.Engineering.Calculations;

namespace Crossmember.Documents.Paper;

/// <summary>A stretch of text of one kind.</summary>
/// <param name="Mark">A verdict: its shape stands before the words, both in its colour.</param>
public sealed record Run(string Words, bool Bold = false, bool Quiet = false, Verdict? Mark = null)
{
    public static Run Strong(string words) => new(words, Bold: true);

    public static Run Hint(string words) => new(words, Quiet: true);

    /// <summary>A verdict as it is always told: shape, word and colour.</summary>
    public static Run Of(Verdict verdict) => new(Wording.ShopWords.Of(verdict), Bold: true, Mark: verdict);

    public static implicit operator Run(string words) => new(words);
}

/// <summary>What a person reads in one piece: runs, one after the other.</summary>
public sealed record Text(params IReadOnlyList<Run> Runs)
{
    /// <summary>The words alone.</summary>
    public string Plain => string.Concat(Runs.Select(r => r.Words));

    public static implicit operator Text(string words) => new(new Run(words));

    public static implicit operator Text(Run run) => new(run);
}
