using System.Collections.Immutable;
using System.Text.Json.Nodes;

namespace Crossmember.Builds.Journal;

/// <summary>An entry as it stands today: its place is the entry's, its content that of the latest correction, if there is one.</summary>
/// <param name="Correction">The correction whose payload stands here; null where the entry was never corrected.</param>
public sealed record Standing(Entry Entry, Entry? Correction)
{
    /// <summary>Sequences of all its corrections: each may name the one before it, so none can be left out where the entry is kept.</summary>
    public ImmutableArray<long> CorrectedAt { get; init; } = [];

    /// <summary>The entry whose words count.</summary>
    public Entry Source => Correction ?? Entry;

    public Fact Fact => Entry.Fact;

    /// <summary>The payload's shape is that of the source, which may be newer than the entry's.</summary>
    public int Schema => Source.Fact.Schema;

    public JsonNode Payload => Source.Fact.Payload!;
}

/// <summary>Applies corrections: the record keeps every word, the fold sees what stands.</summary>
public static class Corrections
{
    /// <summary>
    /// Each entry in its place with the payload of its latest correction; voided ones are left out.
    /// Correcting a correction means the original. Order is that of the entries given, which must start at the first of the stream.
    /// </summary>
    public static IReadOnlyList<Standing> Effective(IEnumerable<Entry> entries)
    {
        var list = new List<Standing>();
        var place = new Dictionary<Guid, int>();
        foreach (var entry in entries)
        {
            if (entry.Fact.Corrects is { } target && place.TryGetValue(target, out var at))
                list[at] = list[at] with { Correction = entry, CorrectedAt = list[at].CorrectedAt.Add(entry.Sequence) };
            else
            {
                at = list.Count;
                list.Add(new(entry, null));
            }
            // A correction of this entry, original or not, lands in the same place.
            place[entry.Fact.Id] = at;
        }
        return [.. list.Where(s => s.Source.Fact.Payload is not null)];
    }
}
