using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Pasting;

/// <summary>Finds the item that a part is for by the words of its title.</summary>
public sealed class ItemMatch
{
    /// <summary>Words that tell nothing of the place, or of which every list is full.</summary>
    private static readonly HashSet<string> s_dull = ["and", "or", "the", "for", "with", "of", "set", "kit", "new", "pair", "its", "their", "in", "on", "a", "an", "part", "complete", "oem"];

    private readonly List<(Slot Item, HashSet<string> Words)> _items;
    private readonly Dictionary<string, double> _weights;

    public ItemMatch(Build build)
    {
        _items = [.. build.Slots.Where(s => s.Id != Slot.Root).Select(s => (s, WordsOf(s.Title)))];
        // A word that many items share tells little: front, rear, brakes.
        _weights = _items.SelectMany(i => i.Words).GroupBy(w => w).ToDictionary(g => g.Key, g => 1.0 / g.Count(), StringComparer.Ordinal);
    }

    /// <summary>The item whose words are met best, or null where none is met, or two alike.</summary>
    /// <param name="place">What the list says it is for; it counts before the part's own name.</param>
    public Slot? Of(string? place, string title) => (place is { } p ? Best(p) : null) ?? Best(title);

    private Slot? Best(string text)
    {
        if (_items.Find(i => i.Item.Id == text || string.Equals(i.Item.Title, text, StringComparison.OrdinalIgnoreCase)) is { Item: { } exact }) return exact;
        var words = WordsOf(text);
        // A wrong end of the vehicle is worse than no answer.
        var scored = _items.Where(i => !OtherEnd(words, i.Words)).Select(i => (i.Item, Score: Score(i.Words, words))).Where(i => i.Score > 0).OrderByDescending(i => i.Score).Take(2).ToList();
        return scored.Count == 0 || (scored.Count == 2 && scored[0].Score - scored[1].Score < 1e-9) ? null : scored[0].Item;
    }

    private static bool OtherEnd(HashSet<string> said, HashSet<string> item) =>
        (said.Contains("front") && item.Contains("rear")) || (said.Contains("rear") && item.Contains("front"));

    /// <summary>What is met, less a little for what is not, so that the plainer item wins. An end alone is no match.</summary>
    private double Score(HashSet<string> item, HashSet<string> said)
    {
        var met = item.Where(said.Contains).ToList();
        return met.TrueForAll(w => w is "front" or "rear") ? 0 : met.Sum(w => _weights[w]) - (0.01 * (item.Count - met.Count));
    }

    private static HashSet<string> WordsOf(string text) =>
        [.. string.Concat(text.ToLowerInvariant().Select(c => char.IsLetterOrDigit(c) ? c : ' ')).Split(' ', StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length > 1 && !s_dull.Contains(w)).Select(Stem)];

    /// <summary>One word for one and many.</summary>
    private static string Stem(string word) => word.Length > 3 && word.EndsWith('s') && word[^2] is not ('s' or 'u' or 'i') ? word[..^1] : word;
}
