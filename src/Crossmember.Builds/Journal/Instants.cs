using System.Globalization;

namespace Crossmember.Builds.Journal;

/// <summary>Instants as the journal keeps them: UTC, to the millisecond, 24 ASCII characters.</summary>
public static class Instants
{
    private const string Form = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    public static string Text(DateTimeOffset instant) => instant.UtcDateTime.ToString(Form, CultureInfo.InvariantCulture);

    public static DateTimeOffset? Read(string text) =>
        DateTimeOffset.TryParseExact(text, Form, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var instant)
            ? instant
            : null;

    /// <summary>The same instant without what the journal cannot keep.</summary>
    public static DateTimeOffset Whole(DateTimeOffset instant)
    {
        var utc = instant.ToUniversalTime();
        return utc.AddTicks(-(utc.Ticks % TimeSpan.TicksPerMillisecond));
    }
}
