using Crossmember.Builds.Evaluation;

namespace Crossmember.Builds.Searching;

/// <summary>One candidate at every place, and how it does.</summary>
/// <param name="Effort">SI; NaN where it is not known.</param>
/// <param name="Margin">The least of what is to be kept safe; below zero it is not.</param>
/// <param name="Cost">In the books' currency, tax not counted; null where a price is not known.</param>
/// <param name="UnsprungMass">kg.</param>
/// <param name="Watch">How many of its findings are to be watched; null until it was worked out as a whole sheet.</param>
public sealed record Combination(IReadOnlyList<Candidate> Chosen, double Effort, double? Margin, decimal? Cost, double? UnsprungMass, int? Watch);

/// <summary>Why combinations fell out.</summary>
/// <param name="Finding">Id of the finding, as the sheet has it.</param>
/// <param name="Example">The first that fell out by it.</param>
/// <param name="Text">What the finding says of the example.</param>
public sealed record SearchReason(string Finding, long Count, IReadOnlyList<Candidate> Example, string Text);

/// <summary>What a search found.</summary>
/// <param name="Offered">Combinations that go together at all.</param>
/// <param name="Passed">Those that no finding refused.</param>
/// <param name="Best">The best of them, the best first, each worked out as a whole sheet.</param>
/// <param name="Standing">Findings that say no whatever is chosen: they refuse nobody and have to be settled elsewhere.</param>
/// <param name="TooMany">Nothing was looked at.</param>
public sealed record SearchResult(
    PartsSearch Search, long Offered, long Passed, IReadOnlyList<Combination> Best, IReadOnlyList<SearchReason> Reasons, IReadOnlyList<SheetFinding> Standing,
    IReadOnlyList<(long Index, long Count, string Killer)> Ranges, bool TooMany)
{
    /// <summary>The finding that refused a combination, or null where none did.</summary>
    public string? WhyNot(IReadOnlyList<Candidate> chosen)
    {
        long index = 0;
        for (var p = 0; p < Search.Places.Count; p++) index = (index * Search.Places[p].Candidates.Count) + Search.Places[p].Candidates.ToList().IndexOf(chosen[p]);
        foreach (var (from, count, killer) in Ranges) if (index >= from && index < from + count) return killer;
        return null;
    }

    /// <summary>Combinations that fell out, in the order of the places, with what refused them.</summary>
    public IEnumerable<(IReadOnlyList<Candidate> Chosen, string Finding)> Rejected() =>
        Ranges.SelectMany(r => Enumerable.Range(0, (int)Math.Min(r.Count, int.MaxValue)).Select(i => (Search.Chosen(r.Index + i), r.Killer)));
}
