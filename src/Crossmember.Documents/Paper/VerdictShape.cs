using Crossmember.Documents.Curves;
using Crossmember.Engineering.Calculations;

namespace Crossmember.Documents.Paper;

/// <summary>The shape and colour that a verdict bears beside its word, on a square of 16 by 16 as the desk draws it.</summary>
public static class VerdictShape
{
    public const double Grid = 16;

    private static readonly Ink s_pass = new("pass", "#2E6B4F"), s_caution = new("caution", "#8F5206"), s_fail = new("fail", "#A32020"), s_unknown = new("unknown", "#4E5962");

    public static Ink InkOf(Verdict verdict) => verdict switch { Verdict.Pass => s_pass, Verdict.Caution => s_caution, Verdict.Fail => s_fail, _ => s_unknown };

    /// <summary>Filled circle, triangle, square; a hollow circle where nobody knows.</summary>
    public static Shape Of(Verdict verdict) => verdict switch
    {
        Verdict.Pass => new Shape.Circle(new(8, 8), 7, null, s_pass),
        Verdict.Caution => new Shape.Path([new(8, 1), new(15.5, 15), new(0.5, 15)], true, null, s_caution),
        Verdict.Fail => Shape.Box(1, 1, 14, 14, null, s_fail),
        _ => new Shape.Circle(new(8, 8), 6, s_unknown, null, 2),
    };

    /// <summary>What the shape takes before a word of a size.</summary>
    public static double Room(double size) => size * 1.15;
}
