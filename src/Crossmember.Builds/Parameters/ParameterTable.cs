using System.Globalization;
using Crossmember.Engineering.Calculations;
using Crossmember.Engineering.Quantities;
using Crossmember.Engineering.Reading;

namespace Crossmember.Builds.Parameters;

/// <summary>Every declared key pattern, from <c>data/parameters.csv</c>.</summary>
public sealed class ParameterTable
{
    /// <summary>Before a smallest value that is itself allowed.</summary>
    private const char Edge = '=';

    private readonly Dictionary<int, ParameterPattern[]> _byLength;

    public ParameterTable(IEnumerable<ParameterPattern> patterns)
    {
        All = [.. patterns];
        _byLength = All.GroupBy(p => p.Segments.Length).ToDictionary(g => g.Key, g => g.ToArray());
    }

    public static ParameterTable Shipped { get; } = Read(Resource());

    public IReadOnlyList<ParameterPattern> All { get; }

    /// <summary>The pattern of a key, stars allowed; null where none fits.</summary>
    public ParameterPattern? Of(string key)
    {
        var segments = key.Split('.');
        return _byLength.GetValueOrDefault(segments.Length)?.FirstOrDefault(p => p.Fits(segments));
    }

    /// <summary>Every set and member that a key names, stars left out.</summary>
    public static IEnumerable<(string Set, string Member)> MembersOf(ParameterPattern pattern, string key)
    {
        var segments = key.Split('.');
        for (var i = 0; i < segments.Length; i++)
            if (pattern.Segments[i][0] == '{' && segments[i] != "*")
                yield return (pattern.Segments[i][1..^1], segments[i]);
    }

    /// <summary>The declared key most like a misspelt one, its members put in where they fit.</summary>
    public string NearestTo(string key)
    {
        var words = key.Split('.');
        var candidates = All.Select(p => string.Join('.', p.Segments.Select((s, i) => s[0] == '{' && i < words.Length && Sets.IsMemberName(words[i]) ? words[i] : s)));
        return Nearest.To(key, candidates) ?? "";
    }

    /// <summary>Whether two patterns could match one key.</summary>
    public static bool Overlap(ParameterPattern a, ParameterPattern b) =>
        a.Segments.Length == b.Segments.Length
        && a.Segments.Zip(b.Segments).All(s => s.First[0] == '{' || s.Second[0] == '{' || s.First == s.Second);

    public static ParameterTable Read(string csv) => new(csv.Split('\n', StringSplitOptions.RemoveEmptyEntries).Skip(1).Select(ReadRow));

    private static ParameterPattern ReadRow(string row)
    {
        // No cell holds a comma or a quote: a test keeps it so.
        var c = row.TrimEnd('\r').Split(',');
        var kind = c[1].Split(':');
        var units = c[2].Split(':');
        var form = kind[0] switch { "text" => Form.Text, "curve" => Form.Curve, _ => Form.Number };
        var unit = form == Form.Text ? null : Units.Require(units[0]);
        var dimension = form switch { Form.Text => null, Form.Curve => Dimension.Named(kind[1]), _ => Dimension.Named(kind[0]) };
        return new(c[0])
        {
            Form = form,
            Dimension = dimension,
            Unit = unit,
            CurveUnit = form == Form.Curve ? Units.Require(units[1]) : null,
            Merge = c[3] == "sum" ? Merge.Sum : Merge.One,
            Default = Number(c[4]) is { } d ? unit!.ToSi(d) : null,
            MoreThan = c[5].StartsWith(Edge) ? null : Number(c[5]),
            AtLeast = c[5].StartsWith(Edge) ? Number(c[5][1..]) : null,
            Page = c[6],
            Meaning = c[7],
            Measure = c[8],
        };
    }

    private static double? Number(string cell) => cell.Length == 0 ? null : double.Parse(cell, CultureInfo.InvariantCulture);

    private static string Resource()
    {
        using var stream = typeof(ParameterTable).Assembly.GetManifestResourceStream("parameters.csv")!;
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
