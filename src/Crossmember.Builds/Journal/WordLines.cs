using System.Text.Json.Nodes;

namespace Crossmember.Builds.Journal;

/// <summary>The words of a stream in lines: each begins with an entry, and what corrects it lies over it.</summary>
/// <remarks>
/// A correction that says again what lay beneath the uppermost word, or that voids a word under which nothing lies, is a taking back: it lifts that word off and adds none.
/// So what was taken back cannot be taken back again, and what was said before it comes up.
/// </remarks>
public sealed class WordLines
{
    private readonly List<List<Entry>> _lines = [];
    private readonly Dictionary<Guid, List<Entry>> _of = [];

    /// <param name="entries">From the first of the stream.</param>
    public WordLines(IEnumerable<Entry> entries)
    {
        foreach (var entry in entries) Add(entry);
    }

    /// <summary>The word on top of each line, in the order said; lines of which nothing is left have none.</summary>
    public IEnumerable<Entry> Uppermost => _lines.Where(l => l.Count > 0).Select(l => l[^1]).OrderBy(e => e.Sequence);

    /// <summary>What lies beneath a word and stands again when it is taken back; null where nothing does.</summary>
    public JsonNode? Beneath(Guid fact) =>
        _of.TryGetValue(fact, out var line) && line.FindIndex(e => e.Fact.Id == fact) is > 0 and var at ? line[at - 1].Fact.Payload : null;

    private void Add(Entry entry)
    {
        if (entry.Fact.Corrects is not { } target || !_of.TryGetValue(target, out var line)) _lines.Add(line = []);
        // A correction of a correction means the original: all of them are in one line.
        _of[entry.Fact.Id] = line;
        if (line.Count > 0 && TakesBack(entry.Fact.Payload, line)) line.RemoveAt(line.Count - 1);
        // Voiding several words at once is a word of its own, which can be taken back.
        else if (entry.Fact.Payload is not null || line.Count > 0) line.Add(entry);
    }

    private static bool TakesBack(JsonNode? payload, List<Entry> line) => JsonNode.DeepEquals(payload, line.Count > 1 ? line[^2].Fact.Payload : null);
}
