using System.Globalization;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Places;

/// <summary>Where items of a name usually sit, in shares of the vehicle: along of the wheelbase, across of half the track (right is positive), height of the wheelbase over the frame datum.</summary>
/// <remarks>Our own figures from <c>data/item-places.csv</c>, for a drawing only. No calculation may read them: nobody measured them.</remarks>
public sealed record UsualPlace(string Item, double Along, double Across, double Height);

/// <summary>The table of usual places.</summary>
public static class ItemPlaces
{
    private static readonly char[] s_between = ['.', '-', ' ', ',', '/', '(', ')', '\u2019', '\''];

    public static IReadOnlyList<UsualPlace> All { get; } = Read();

    /// <summary>By the whole id first, then by the words of its last part, then by those of the title; null where nothing is known.</summary>
    public static UsualPlace? Of(Slot slot)
    {
        if (All.FirstOrDefault(p => p.Item == slot.Id) is { } exact) return exact;
        string[] id = slot.Id.Split('.')[^1].Split(s_between), title = slot.Title.ToLowerInvariant().Split(s_between, StringSplitOptions.RemoveEmptyEntries);
        // What stands before the last dot is where it belongs, and that may lie elsewhere than usual. Of the rest the last word says most.
        return Named(id.Reverse()) ?? Named(title);
    }

    private static UsualPlace? Named(IEnumerable<string> words) =>
        words.Select(w => All.FirstOrDefault(p => p.Item == w)).FirstOrDefault(p => p is not null);

    private static List<UsualPlace> Read()
    {
        using var reader = new StreamReader(typeof(ItemPlaces).Assembly.GetManifestResourceStream("item-places.csv")!);
        return [.. reader.ReadToEnd().Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(r => r.Split(',')).Select(c => new UsualPlace(c[0], Number(c[1]), Number(c[2]), Number(c[3])))];
    }

    private static double Number(string cell) => double.Parse(cell, CultureInfo.InvariantCulture);
}
