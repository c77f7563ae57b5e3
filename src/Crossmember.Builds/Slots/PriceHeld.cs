using System.Globalization;

namespace Crossmember.Builds.Slots;

/// <summary>Until when a price holds. People write all sorts of things there; only a day that can be read in one way counts as one.</summary>
public static class PriceHeld
{
    /// <summary>The last day, written year, month, day (ISO 8601); null for any other word.</summary>
    public static DateOnly? LastDay(string? until) =>
        DateOnly.TryParseExact(until?.Trim(), "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out var day) ? day : null;

    /// <summary>Whether it no longer holds on a day; a word that is no day says nothing of it.</summary>
    public static bool RanOut(string? until, DateOnly today) => LastDay(until) is { } last && last < today;
}
