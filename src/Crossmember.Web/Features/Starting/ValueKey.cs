using Crossmember.Builds.Evaluation;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Web.Features.Starting;

/// <summary>A value that an option may bring, as the list of values shows it.</summary>
/// <param name="Page">The page of the build that shows it.</param>
public sealed record ValueKey(string Page, string Key, string Label)
{
    private const string Own = "Of this item";

    /// <summary>Those that other options of the item bring first; then the rest by page. Curves are left to build files.</summary>
    public static IReadOnlyList<ValueKey> Of(Sheet sheet, Slot item)
    {
        var (space, names) = (sheet.Plan.Space, new RowNames(sheet.Plan, sheet.Build));
        var single = Enumerable.Range(0, space.KeyCount).Where(k => MayBeStated(space.PatternOf(k))).Select(k => new ValueKey(space.PatternOf(k).Page, space.KeyName(k), Name(names, space.KeyName(k))));
        var whole = sheet.Plan.Catalogue.Table.All.Where(p => p.Sets.Length > 0 && MayBeStated(p)).Select(p => new ValueKey(p.Page, Starred(p), $"{Web.Words.Sentence(p.Meaning)}, all"));
        var near = Words(item.Title).Concat(Words(item.Id)).ToHashSet(StringComparer.Ordinal);
        var own = item.Options.SelectMany(o => o.Parameters.Select(p => p.Key)).Concat(item.Noted.Select(n => n.Pattern)).Distinct(StringComparer.Ordinal).ToHashSet(StringComparer.Ordinal);
        return [.. single.Concat(whole).DistinctBy(k => k.Key).Select(k => own.Contains(k.Key) || IsNear(k.Key, near) ? k with { Page = Own } : k)
            .OrderByDescending(k => k.Page == Own).ThenByDescending(k => own.Contains(k.Key)).ThenByDescending(k => k.Page == Own && k.Key.Contains('*', StringComparison.Ordinal)).ThenBy(k => k.Page, StringComparer.Ordinal).ThenBy(k => k.Label, StringComparer.Ordinal)];
    }

    /// <summary>A key that shares a word with the item, and not only the end of the vehicle: the size of a tire for the tires.</summary>
    private static bool IsNear(string key, HashSet<string> item)
    {
        var words = Words(key).ToHashSet(StringComparer.Ordinal);
        return words.Overlaps(item.Where(w => w is not ("front" or "rear"))) && !(words.Contains("front") && item.Contains("rear")) && !(words.Contains("rear") && item.Contains("front"));
    }

    private static IEnumerable<string> Words(string text) =>
        text.ToLowerInvariant().Split([' ', '.', '-', ',', '*'], StringSplitOptions.RemoveEmptyEntries).Where(w => w.Length > 3).Select(w => w.TrimEnd('s'));

    private static bool MayBeStated(ParameterPattern pattern) => !pattern.IsLedger && pattern.Form != Form.Curve;

    private static string Starred(ParameterPattern pattern) => string.Join('.', pattern.Segments.Select(s => s[0] == '{' ? "*" : s));

    private static string Name(RowNames names, string key) => names.Key(key) is var n && n.Where.Length > 0 ? $"{n.Title}, {n.Where}" : n.Title;
}
