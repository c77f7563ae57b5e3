using Crossmember.Builds.Journal;

namespace Crossmember.Builds.Tests.Folding;

/// <summary>Facts as the entries of a stream.</summary>
internal static class Streams
{
    public static List<Entry> Stamped(IEnumerable<Fact> facts)
    {
        var (head, entries) = (Head.Empty, new List<Entry>());
        foreach (var fact in facts)
        {
            var entry = Stamp.On(head, fact, FactText.Write(fact), DateTimeOffset.UnixEpoch);
            head = new(entry.Sequence, entry.Hash);
            entries.Add(entry);
        }
        return entries;
    }
}
