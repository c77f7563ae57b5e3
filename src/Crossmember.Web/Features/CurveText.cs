using System.Text.Json;

namespace Crossmember.Web.Features;

/// <summary>A curve as people write it: a line for each point, x and y with a comma between.</summary>
public static class CurveText
{
    private static readonly string[] s_between = [";", "\t", "=", ", "];

    /// <summary>The parts of each line that is not empty; a line that cannot be told apart stays one part.</summary>
    public static IReadOnlyList<string[]> Pairs(string text) =>
        [.. text.Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Select(Parts)];

    public static string Of(IEnumerable<(string X, string Y)> pairs) => string.Join('\n', pairs.Select(p => $"{p.X}, {p.Y}"));

    /// <summary>From the list of pairs that the formats write; anything else as it stands.</summary>
    public static string Of(JsonElement given) => given.ValueKind != JsonValueKind.Array ? given.ToString()
        : string.Join('\n', given.EnumerateArray().Select(p => p.ValueKind == JsonValueKind.Array ? string.Join(", ", p.EnumerateArray()) : p.ToString()));

    /// <summary>A comma with a blank behind it parts two figures; one without may as well stand within a figure, so that only a single one is taken.</summary>
    private static string[] Parts(string line)
    {
        foreach (var between in s_between)
            if (line.IndexOf(between, StringComparison.Ordinal) is > 0 and var at) return [line[..at].Trim(), line[(at + between.Length)..].Trim()];
        if (line.Split(',') is [{ Length: > 0 } x, var y]) return [x.Trim(), y.Trim()];
        return line.Split(' ', StringSplitOptions.RemoveEmptyEntries) is { Length: 2 } bare ? bare : [line];
    }
}
