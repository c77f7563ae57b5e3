using System.Globalization;
using System.Text;

namespace Crossmember.Builds.Journal;

/// <summary>Instants as the journal keeps them: UTC, to the millisecond, 24 ASCII characters.</summary>
public static class Instants
{
    private const string Form = "yyyy-MM-dd'T'HH:mm:ss.fff'Z'";

    public static string Text(DateTimeOffset instant) => instant.UtcDateTime.ToString(Form, CultureInfo.InvariantCulture);

    public static DateTimeOffset? Read(string text)
    {
        Span<byte> ascii = stackalloc byte[24];
        return text.Length == 24 && Encoding.ASCII.TryGetBytes(text, ascii, out _) ? Read(ascii) : null;
    }

    /// <summary>The same from ASCII.</summary>
    /// <remarks>By hand: the runtime's reader of a form given in letters takes ten times as long, and every entry has two instants.</remarks>
    public static DateTimeOffset? Read(ReadOnlySpan<byte> text)
    {
        if (text.Length != 24 || text[4] != '-' || text[7] != '-' || text[10] != 'T' || text[13] != ':' || text[16] != ':' || text[19] != '.' || text[23] != 'Z')
            return null;
        var (year, month, day) = (Number(text[..4]), Number(text[5..7]), Number(text[8..10]));
        var (hour, minute, second, millisecond) = (Number(text[11..13]), Number(text[14..16]), Number(text[17..19]), Number(text[20..23]));
        return year >= 1 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month)
            && hour is >= 0 and <= 23 && minute is >= 0 and <= 59 && second is >= 0 and <= 59 && millisecond >= 0
            ? new DateTimeOffset(year, month, day, hour, minute, second, millisecond, TimeSpan.Zero)
            : null;
    }

    /// <summary>The same instant without what the journal cannot keep.</summary>
    public static DateTimeOffset Whole(DateTimeOffset instant)
    {
        var utc = instant.ToUniversalTime();
        return utc.AddTicks(-(utc.Ticks % TimeSpan.TicksPerMillisecond));
    }

    private static int Number(ReadOnlySpan<byte> digits)
    {
        var number = 0;
        foreach (var digit in digits)
        {
            if (digit is < (byte)'0' or > (byte)'9') return -1;
            number = number * 10 + (digit - '0');
        }
        return number;
    }
}
