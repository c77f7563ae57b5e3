using System.Text;
using Crossmember.Engineering.Reading;

namespace Crossmember.Engineering.Quantities;

/// <summary>How people write the units of a dimension: exact codes, the rows of <c>unit-spellings.csv</c>, and the marks ' and ".</summary>
/// <remarks>A spelling means different units in different dimensions (lb of force, lb of mass), so every question names its dimension.</remarks>
internal static class Spellings
{
    private static readonly List<(Unit Unit, string Text, bool AnyCase)> s_rows = Load();
    private static readonly Dictionary<(Dimension, string), Unit> s_exact = Exact();
    private static readonly Dictionary<(Dimension, string), Unit> s_anyCase = AnyCase();

    /// <summary>The unit that a text means in a dimension, or null.</summary>
    public static Unit? Find(string written, Dimension dimension)
    {
        var text = Canonical(written);
        return Mark(text, dimension) ?? s_exact.GetValueOrDefault((dimension, text)) ?? s_anyCase.GetValueOrDefault((dimension, text.ToLowerInvariant()));
    }

    /// <summary>The unit a misspelt text comes nearest to.</summary>
    public static Unit NearestTo(string written, Dimension dimension)
    {
        var text = Canonical(written);
        var known = s_rows.Where(r => r.Unit.Dimension == dimension).GroupBy(r => r.Text).ToDictionary(g => g.Key, g => g.First().Unit);
        return Nearest.To(text, known.Keys) is { } name ? known[name] : dimension.Si;
    }

    /// <summary>Another dimension that knows the text, for the message only.</summary>
    public static Unit? Elsewhere(string written) =>
        Units.Find(Canonical(written)) ?? Dimension.All.Select(d => Find(written, d)).FirstOrDefault(u => u is not null);

    /// <summary>The spellings listed for a unit beside its code.</summary>
    public static IEnumerable<string> Of(Unit unit) => s_rows.Where(r => r.Unit == unit && r.Text != unit.Code).Select(r => r.Text);

    /// <summary>One way of writing: single spaces for every multiplication mark, plain digits for powers, Ohm and u for their signs.</summary>
    public static string Canonical(string written)
    {
        var text = new StringBuilder(written.Length);
        foreach (var c in written)
        {
            if (c is ' ' or '-' or '*' or '.')
            {
                if (text.Length > 0 && text[^1] is not (' ' or '/')) text.Append(' ');
                continue;
            }
            if (c == '/' && text.Length > 0 && text[^1] == ' ') text.Length--;
            text.Append(c switch
            {
                '²' => "2",
                '³' => "3",
                '⁴' => "4",
                '^' => "",
                'Ω' or '\u2126' => "Ohm",
                'µ' or 'μ' => "u",
                '°' => "deg",
                _ => c.ToString(),
            });
        }
        return text.ToString().TrimEnd();
    }

    private static Unit? Mark(string text, Dimension dimension) => text switch
    {
        "'" when dimension == Dimension.Length => Units.Require("ft"),
        "\"" or "''" when dimension == Dimension.Length => Units.Require("in"),
        "'" when dimension == Dimension.Angle => Units.Require("arcmin"),
        _ => null,
    };

    private static List<(Unit, string, bool)> Load()
    {
        var table = ReferenceTable.Load("unit-spellings.csv");
        var listed = table.Rows.Select(r => (Units.Require(table.Text(r, "code")), table.Text(r, "spelling"), table.Text(r, "case") == "any"));
        return [.. Units.All.Select(u => (u, u.Code, false)), .. listed];
    }

    private static Dictionary<(Dimension, string), Unit> Exact()
    {
        var map = new Dictionary<(Dimension, string), Unit>();
        foreach (var (unit, text, _) in s_rows) map.TryAdd((unit.Dimension, Canonical(text)), unit);
        return map;
    }

    private static Dictionary<(Dimension, string), Unit> AnyCase()
    {
        var map = new Dictionary<(Dimension, string), Unit>();
        foreach (var (unit, text, any) in s_rows)
            if (any) map.TryAdd((unit.Dimension, text.ToLowerInvariant()), unit);
        return map;
    }
}
