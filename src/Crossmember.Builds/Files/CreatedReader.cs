using System.Globalization;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Files;

/// <summary>Reads the <c>created</c> of a file: a day, or an instant in UTC.</summary>
public static class CreatedReader
{
    private static readonly string[] s_forms = ["yyyy-MM-dd", "yyyy-MM-ddTHH:mmZ", "yyyy-MM-ddTHH:mm:ssZ", "yyyy-MM-ddTHH:mm:ss.fffZ", "yyyy-MM-ddTHH:mm:ss"];

    public static DateTimeOffset? Read(ObjectReader r)
    {
        if (r.OptionalText("created") is not { } text) return null;
        if (DateTimeOffset.TryParseExact(text, s_forms, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal | DateTimeStyles.AdjustToUniversal, out var at)) return at;
        r.Faults.Add(r.At("created"), $"'{text}' is no instant", "a day such as 2026-03-02 or an instant such as 2026-03-02T08:00:00Z");
        return null;
    }
}
