using System.Globalization;

namespace Crossmember.Builds.Journal;

/// <summary>Paths that say what an entry is about.</summary>
public static class Subject
{
    /// <summary>Whether two subjects bear on each other: the same, or one above the other.</summary>
    public static bool Meet(string a, string b) => a == b || IsAbove(a, b) || IsAbove(b, a);

    /// <summary>The subjects above one, longest first.</summary>
    public static IEnumerable<string> Above(string subject)
    {
        for (var cut = subject.LastIndexOf('/'); cut > 0; cut = subject.LastIndexOf('/', cut - 1)) yield return subject[..cut];
    }

    /// <summary>Whether a subject has the shape its kind asks for, such as <c>slots/{slot}/grade</c>.</summary>
    public static bool Fits(string subject, string shape)
    {
        var (parts, wanted) = (subject.Split('/'), shape.Split('/'));
        return parts.Length == wanted.Length && parts.Zip(wanted).All(p => PartFits(p.First, p.Second));
    }

    private static bool IsAbove(string a, string b) => b.Length > a.Length && b[a.Length] == '/' && b.StartsWith(a, StringComparison.Ordinal);

    private static bool PartFits(string part, string wanted) => wanted switch
    {
        "{date}" => DateOnly.TryParseExact(part, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _),
        "{slot}" => part.Length > 0 && part.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c is '.' or '-'),
        _ when wanted.StartsWith('{') => part.Length > 0 && part.Trim() == part && !part.Any(char.IsControl),
        _ => part == wanted,
    };
}
