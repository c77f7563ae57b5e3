using ScottPlot;

namespace Crossmember.Documents.Curves;

/// <summary>Size of a picture in its own units, with room for its key; wide for a desk and for paper, narrow for a phone.</summary>
public sealed record PictureSize(int Width, int Height, int Ticks, bool KeyBeneath)
{
    private const int KeyLine = 26;

    public static PictureSize Wide(CurveChart chart) => new(780, Math.Max(420, 90 + Key(chart)), 8, false);

    public static PictureSize Narrow(CurveChart chart) => new(360, 380 + Key(chart), 4, true);

    /// <summary>A line for each curve, and two for the sides of a comparison.</summary>
    private static int Key(CurveChart chart) => KeyLine * (chart.Lines.Where(l => !l.IsGuide).DistinctBy(l => l.Name).Count() + (chart.Then is null ? 0 : 2));
}

/// <summary>How inks and kinds of line come onto the canvas.</summary>
internal interface IPens
{
    Color Ground { get; }

    Color Of(Ink ink);

    Color Line(Ink ink, bool then);

    LinePattern Pattern(bool then);
}

/// <summary>For pixels: the light colours as they are.</summary>
internal sealed class PixelPens : IPens
{
    private static readonly LinePattern s_dashed = new([8, 5], 0, "then");

    public Color Ground => Of(Ink.Ground);

    public Color Of(Ink ink) => Color.FromHex(ink.Light);

    public Color Line(Ink ink, bool then) => Of(ink);

    public LinePattern Pattern(bool then) => then ? s_dashed : LinePattern.Solid;
}

/// <summary>For drawings: every ink and kind of line in a colour of its own, which <see cref="CurveSvg"/> replaces. Dashes drawn as shapes would be ten times the size.</summary>
internal sealed class CodePens : IPens
{
    private const string Solid = "#0101", Dashed = "#0102";

    public Color Ground => Colors.Transparent;

    public Color Of(Ink ink) => Line(ink, false);

    public Color Line(Ink ink, bool then) => Color.FromHex($"{(then ? Dashed : Solid)}{Ink.All.ToList().IndexOf(ink) + 1:X2}");

    public LinePattern Pattern(bool then) => LinePattern.Solid;

    /// <summary>The ink behind a colour of the drawing, and whether the line is dashed; null for any other colour.</summary>
    public static (Ink Ink, bool Then)? Meant(string? colour) =>
        colour is { Length: 7 } && (colour.StartsWith(Solid, StringComparison.Ordinal) || colour.StartsWith(Dashed, StringComparison.Ordinal))
            ? (Ink.All[Convert.ToInt32(colour[5..], 16) - 1], colour.StartsWith(Dashed, StringComparison.Ordinal)) : null;
}
