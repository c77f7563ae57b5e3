using Crossmember.Builds.Parameters;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Folding;

/// <summary>What must hold of keys before any build is known.</summary>
public static class KeyChecks
{
    /// <summary>The pattern of a key that may be stated, or null with a fault that names the nearest.</summary>
    public static ParameterPattern? Known(string key, string pointer, ParameterTable table, Faults faults)
    {
        if (table.Of(key) is not { } pattern) faults.Add(pointer, $"'{key}' is no parameter", $"nearest known one: {table.NearestTo(key)}");
        else if (pattern.IsLedger) faults.Add(pointer, $"'{key}' is made by the mass ledger", "state masses and weighings instead");
        else return pattern;
        return null;
    }

    /// <summary>Two patterns with equally many stars that meet leave open which one counts.</summary>
    public static void NoTies(IReadOnlyList<string> keys, string pointer, Faults faults)
    {
        // Keys with stars at the same places meet only if they are the same; so only kinds of keys are held against each other.
        var kinds = keys.Where(k => Stars(k) > 0).Distinct().GroupBy(k => string.Concat(k.Split('.').Select(s => s == "*" ? '*' : '-'))).ToList();
        for (var i = 0; i < kinds.Count; i++)
            for (var j = 0; j < i; j++)
                if (kinds[i].Key.Length == kinds[j].Key.Length && Stars(kinds[i].First()) == Stars(kinds[j].First()))
                    Ties(kinds[j], kinds[i], pointer, faults);
    }

    private static void Ties(IGrouping<string, string> earlier, IGrouping<string, string> later, string pointer, Faults faults)
    {
        string Exact(string key) => string.Join('.', key.Split('.').Where((_, i) => earlier.Key[i] == '-' && later.Key[i] == '-'));
        var known = earlier.GroupBy(Exact).ToDictionary(g => g.Key, g => g.First());
        foreach (var key in later)
            if (known.TryGetValue(Exact(key), out var met))
                faults.Add(pointer + "/" + ObjectReader.Escape(key), $"it meets '{met}' with equally many stars", "write the meeting keys out");
    }

    public static int Stars(string key) => key.Split('.').Count(s => s == "*");

    public static bool Meet(string a, string b)
    {
        string[] x = a.Split('.'), y = b.Split('.');
        return x.Length == y.Length && x.Zip(y).All(p => p.First == p.Second || p.First == "*" || p.Second == "*");
    }

    /// <summary>Whether a pattern with stars covers an instance key.</summary>
    public static bool Covers(string pattern, string key)
    {
        string[] p = pattern.Split('.'), k = key.Split('.');
        return p.Length == k.Length && p.Zip(k).All(s => s.First == "*" || s.First == s.Second);
    }
}
