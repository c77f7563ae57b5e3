namespace Crossmember.Engineering.Reading;

/// <summary>The known name nearest to a misspelt one, by edit distance.</summary>
public static class Nearest
{
    public static string? To(string word, IEnumerable<string> known)
    {
        string? best = null;
        var least = int.MaxValue;
        foreach (var name in known)
        {
            var d = Distance(word, name);
            if (d < least || (d == least && string.CompareOrdinal(name, best) < 0)) (best, least) = (name, d);
        }
        return best;
    }

    private static int Distance(string a, string b)
    {
        var row = new int[b.Length + 1];
        for (var j = 0; j <= b.Length; j++) row[j] = j;
        for (var i = 1; i <= a.Length; i++)
        {
            var diagonal = row[0];
            row[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var cost = char.ToLowerInvariant(a[i - 1]) == char.ToLowerInvariant(b[j - 1]) ? 0 : 1;
                (diagonal, row[j]) = (row[j], Math.Min(Math.Min(row[j] + 1, row[j - 1] + 1), diagonal + cost));
            }
        }
        return row[b.Length];
    }
}
