using System.Runtime.InteropServices;

namespace Crossmember.Builds.Searching;

/// <summary>Counts what fell out and why, and keeps what is left. Each thread has its own; they are added at the end.</summary>
internal sealed class SearchTally(int findings)
{
    /// <summary>A part of the stock list beside an option that has no such part: not a combination at all.</summary>
    public const string NotOffered = "";

    private readonly Dictionary<string, (long Count, long First)> _out = new(StringComparer.Ordinal);
    private readonly List<(long Index, double Effort, double Margin)> _kept = [];
    private readonly List<(long Index, long Count, string Killer)> _ranges = [];

    public IReadOnlyDictionary<string, (long Count, long First)> Rejected => _out;

    public IReadOnlyList<(long Index, double Effort, double Margin)> Kept => _kept;

    /// <summary>Which run of combinations fell out by what.</summary>
    public IReadOnlyList<(long Index, long Count, string Killer)> Ranges => _ranges;

    /// <summary>By number of the finding: what it has said.</summary>
    public Sight[] Sights { get; } = new Sight[findings];

    public void Keep(long index, double effort, double margin) => _kept.Add((index, effort, margin));

    public void Out(string killer, long index, long count)
    {
        ref var known = ref CollectionsMarshal.GetValueRefOrAddDefault(_out, killer, out var had);
        known = (known.Count + count, had ? Math.Min(known.First, index) : index);
        _ranges.Add((index, count, killer));
    }

    public void Add(SearchTally other)
    {
        foreach (var (killer, (count, first)) in other._out)
        {
            ref var known = ref CollectionsMarshal.GetValueRefOrAddDefault(_out, killer, out var had);
            known = (known.Count + count, had ? Math.Min(known.First, first) : first);
        }
        for (var f = 0; f < Sights.Length; f++) Sights[f] = Sights[f].With(other.Sights[f]);
        _kept.AddRange(other._kept);
        _ranges.AddRange(other._ranges);
    }
}

/// <summary>What a finding said over all combinations: one that said no always, and to the same value, is moved by nothing that is chosen.</summary>
/// <param name="Moves">It said something else than no somewhere, or said no without a number: it may decide.</param>
internal readonly record struct Sight(bool Said, bool Moves, double Least, double Most)
{
    public bool Stands => Said && !Moves && Most - Least <= 1e-12 * Math.Abs(Most);

    public static Sight Of(bool no, double? value) => new(true, !no || value is null, value ?? 0, value ?? 0);

    public Sight With(Sight other) =>
        !Said ? other : !other.Said ? this : new(true, Moves || other.Moves, Math.Min(Least, other.Least), Math.Max(Most, other.Most));
}
