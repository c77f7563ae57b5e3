using System.Text;
using Crossmember.Builds.Slots;

namespace Crossmember.Web.Features.Decisions;

/// <summary>Makes the id of a new what-if from the name people give it.</summary>
public static class WhatIfId
{
    private const int Longest = 60;

    /// <summary>Lower-case words joined by dashes, told apart by a number; null where the name holds no letter or digit.</summary>
    public static string? Of(string title, IEnumerable<string> taken)
    {
        var id = new StringBuilder();
        foreach (var c in title.ToLowerInvariant())
            if (char.IsAsciiLetterOrDigit(c)) id.Append(c);
            else if (id.Length > 0 && id[^1] != '-') id.Append('-');
        var name = id.ToString(0, Math.Min(id.Length, Longest)).Trim('-');
        if (name.Length == 0) return null;
        var used = taken.Concat([Option.AsFound, Option.None, Option.Approved]).ToHashSet(StringComparer.Ordinal);
        return Enumerable.Range(1, int.MaxValue).Select(n => n == 1 ? name : $"{name}-{n}").First(n => !used.Contains(n));
    }
}
