using System.Text;
using Crossmember.Documents.Curves;
using SkiaSharp;

namespace Crossmember.Documents.Paper.Pdf;

/// <summary>Measures and draws text in the face that the program brings; sizes in points.</summary>
internal sealed class Typesetter : IDisposable
{
    private const string Unknown = "?";

    /// <summary>The face lacks these; the others read the same.</summary>
    private static readonly Dictionary<int, string> s_instead = new()
    {
        ['→'] = "->", ['←'] = "<-", ['₀'] = "0", ['₁'] = "1", ['₂'] = "2", ['₃'] = "3", ['⁻'] = "-", ['ρ'] = "rho", ['η'] = "eta", ['θ'] = "theta", ['α'] = "alpha", ['β'] = "beta",
        ['λ'] = "lambda", ['ω'] = "omega", ['φ'] = "phi", ['σ'] = "sigma", ['Σ'] = "sum", ['\u00A0'] = " ", ['\t'] = " ",
    };

    private static readonly SKFont s_glyphs = new(DrawnFace.Regular);

    private readonly Dictionary<(bool Bold, double Size), SKFont> _fonts = [];

    /// <summary>The text as the face can print it: signs that it lacks written otherwise, what nobody can print as a question mark.</summary>
    public static string Printable(string text)
    {
        var made = new StringBuilder(text.Length);
        foreach (var rune in DrawnFace.Printable(text).EnumerateRunes())
            made.Append(s_instead.TryGetValue(rune.Value, out var instead) ? instead : Rune.IsControl(rune) ? " " : s_glyphs.ContainsGlyph(rune.Value) ? rune.ToString() : Unknown);
        return made.ToString();
    }

    public double Width(string text, Style style) => Font(style).MeasureText(text);

    /// <summary>Draws from a place on the base line.</summary>
    public void Draw(SKCanvas canvas, string text, double x, double y, Style style)
    {
        if (string.IsNullOrWhiteSpace(text)) return;
        using var paint = new SKPaint { Color = SKColor.Parse(style.Ink.Light), IsAntialias = true };
        canvas.DrawText(text, (float)x, (float)y, SKTextAlign.Left, Font(style), paint);
    }

    public void Dispose()
    {
        foreach (var font in _fonts.Values) font.Dispose();
    }

    private SKFont Font(Style style) => _fonts.TryGetValue((style.Bold, style.Size), out var known) ? known
        : _fonts[(style.Bold, style.Size)] = new(style.Bold ? DrawnFace.Bold : DrawnFace.Regular, (float)style.Size) { Subpixel = true, LinearMetrics = true, Hinting = SKFontHinting.None };
}

/// <summary>How text looks.</summary>
internal sealed record Style(double Size, Ink Ink, bool Bold = false)
{
    /// <summary>From base line to base line.</summary>
    public double Leading => Size * 1.36;

    /// <summary>From the top of a line to its base line.</summary>
    public double Ascent => Size * 1.02;
}
