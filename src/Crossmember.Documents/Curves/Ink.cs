namespace Crossmember.Documents.Curves;

/// <summary>What a thing in a picture is drawn in: the name of a token of the desk, and its light colour for paper and files.</summary>
public sealed record Ink(string Token, string Light)
{
    public static readonly Ink Text = new("ink", "#22282B");
    public static readonly Ink Quiet = new("quiet", "#4E5962");
    public static readonly Ink Rule = new("rule", "#CFCBC1");
    public static readonly Ink Ground = new("card", "#FFFFFF");

    /// <summary>For curves, in the order of their marks; none of them tells a curve apart by itself.</summary>
    public static readonly IReadOnlyList<Ink> OfCurves =
    [
        new("action", "#8A3B2A"), new("link", "#1F5673"), new("pass", "#2E6B4F"), new("caution", "#8F5206"), Text, new("fail", "#A32020"), Quiet,
    ];

    public static Ink OfCurve(int mark) => OfCurves[mark % OfCurves.Count];

    /// <summary>Every ink once.</summary>
    public static IReadOnlyList<Ink> All { get; } = [.. OfCurves.Append(Rule).Append(Ground)];
}
