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

    /// <summary>The last that a speaker said on their device and that still stands uppermost, with all of its batch in the order said; none where there is nothing.</summary>
    public static IReadOnlyList<Fact> Last(IReadOnlyList<Entry> entries, Speaker speaker)
    {
        var own = new WordLines(entries).Uppermost.Select(e => e.Fact).Where(f => f.Person == speaker.Person && f.Device == speaker.Device && !s_forGood.Contains(f.Kind)).ToList();
        return own.LastOrDefault() is not { } last ? [] : last.Batch is { } batch ? [.. own.Where(f => f.Batch == batch)] : [last];
    }
}
