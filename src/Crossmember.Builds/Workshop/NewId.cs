using System.Text;
using Crossmember.Builds.Folding;
using Crossmember.Builds.Journal;
using Crossmember.Builds.Parameters;
using Crossmember.Builds.Slots;

namespace Crossmember.Builds.Workshop;

/// <summary>Makes ids out of the names people give: lower-case words joined by dashes, told apart by a number.</summary>
public static class NewId
{
    private const int Longest = 60;

    private static readonly string[] s_kept = [Option.AsFound, Option.None, Option.Approved, "note", "new", Fact.Shop];

    /// <summary>Null where the name holds no letter or digit.</summary>
    /// <param name="taken">Ids that are in use, or ever were.</param>
    public static string? Of(string title, IEnumerable<string> taken)
    {
        var id = new StringBuilder();
        foreach (var c in title.ToLowerInvariant())
            if (char.IsAsciiLetterOrDigit(c)) id.Append(c);
            else if (id.Length > 0 && id[^1] != '-') id.Append('-');
        var name = id.ToString(0, Math.Min(id.Length, Longest)).Trim('-');
        return name.Length == 0 ? null : Free(name, taken);
    }

    /// <summary>The id itself, or with the first number that nobody has taken.</summary>
    public static string Free(string id, IEnumerable<string> taken)
    {
        var used = taken.Concat(s_kept).ToHashSet(StringComparer.Ordinal);
        return Enumerable.Range(1, int.MaxValue).Select(n => n == 1 ? id : $"{id}-{n}").First(n => !used.Contains(n));
    }

    /// <summary>Whether a build may be called so.</summary>
    public static bool IsBuild(string id) => BuildRules.IsId(id) && !s_kept.Contains(id);

    /// <summary>Whether an item may be called so.</summary>
    public static bool IsItem(string id) => id.Split('.').All(Sets.IsMemberName) && !s_kept.Contains(id);
}
