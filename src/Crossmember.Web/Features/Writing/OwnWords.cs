using Crossmember.Builds.Journal;
using Crossmember.Builds.Workshop;

namespace Crossmember.Web.Features.Writing;

/// <summary>What somebody could take back.</summary>
public static class OwnWords
{
    /// <summary>Without its opening a stream is nothing, what was erased does not come back, and photos and hours were worked for.</summary>
    private static readonly string[] s_forGood =
    [
        EntryKind.BuildOpened.Name, EntryKind.CustomerRecorded.Name, EntryKind.CustomerErased.Name, EntryKind.PhotoTaken.Name, EntryKind.HoursLogged.Name, EntryKind.ReceiptLogged.Name,
    ];

    /// <summary>Whether facts said together are what opened their build: that is not unsaid, the build is put away.</summary>
    public static bool OpenedIt(IReadOnlyList<Entry> entries, IReadOnlyList<Fact> own) =>
        own is [{ Batch: { } batch }, ..] && entries.Any(e => e.Fact.Batch == batch && e.Fact.Kind == EntryKind.BuildOpened.Name);

    /// <summary>The last that a speaker said on their device and that still stands, with all of its batch in the order said; none where there is nothing.</summary>
    public static IReadOnlyList<Fact> Last(IReadOnlyList<Entry> entries, Speaker speaker)
    {
        var own = Corrections.Effective(entries).Select(s => s.Source.Fact).Where(f => f.Person == speaker.Person && f.Device == speaker.Device && !s_forGood.Contains(f.Kind)).ToList();
        return own.LastOrDefault() is not { } last ? [] : last.Batch is { } batch ? [.. own.Where(f => f.Batch == batch)] : [last];
    }

    /// <summary>What stood where a correction stands now, and stands there again when it is taken back; null for a word that corrects nothing.</summary>
    public static System.Text.Json.Nodes.JsonNode? Before(IReadOnlyList<Entry> entries, Fact fact)
    {
        if (fact.Corrects is not { } target) return null;
        var earlier = entries.Select(e => e.Fact).TakeWhile(f => f.Id != fact.Id).ToList();
        // A correction of a correction means the original: all of them form one line.
        var line = new HashSet<Guid> { target };
        for (var grown = true; grown;)
            grown = earlier.Where(f => f.Corrects is { } c && (line.Contains(c) || line.Contains(f.Id))).Sum(f => (line.Add(f.Id) ? 1 : 0) + (line.Add(f.Corrects!.Value) ? 1 : 0)) > 0;
        return earlier.LastOrDefault(f => line.Contains(f.Id))?.Payload;
    }
}
