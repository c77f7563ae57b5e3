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

    private readonly Dictionary<(bool Bold, double Size), (SKFont Font, double Digit)> _fonts = [];

    /// <summary>The text as the face can print it: signs that it lacks written otherwise, what nobody can print as a question mark.</summary>
    public static string Printable(string text)
    {
        var made = new StringBuilder(text.Length);
        foreach (var rune in DrawnFace.Printable(text).EnumerateRunes())
            made.Append(s_instead.TryGetValue(rune.Value, out var instead) ? instead : Rune.IsControl(rune) ? " " : s_glyphs.ContainsGlyph(rune.Value) ? rune.ToString() : Unknown);
        return made.ToString();
    }

    public double Width(string text, Style style)
    {
        var (font, digit) = Font(style);
        return style.Tabular ? text.Sum(c => Advance(c, font, digit)) : font.MeasureText(text);
    }

    /// <summary>Draws from a place on the base line.</summary>
    public void Draw(SKCanvas canvas, string text, double x, double y, Style style)
    {
        if (string.IsNullOrWhiteSpace(text)) return;
        var (font, digit) = Font(style);
        using var paint = new SKPaint { Color = SKColor.Parse(style.Ink.Light), IsAntialias = true };
        if (!style.Tabular)
        {
            canvas.DrawText(text, (float)x, (float)y, SKTextAlign.Left, font, paint);
            return;
        }
        var places = new float[text.Length];
        for (var i = 0; i < text.Length; i++)
        {
            var own = font.MeasureText(text[i].ToString());
            var advance = Advance(text[i], font, digit);
            places[i] = (float)(x + ((advance - own) / 2));
            x += advance;
        }
        using var blob = SKTextBlob.CreateHorizontal(text, font, places, 0);
        if (blob is not null) canvas.DrawText(blob, 0, (float)y, paint);
    }

    public void Dispose()
    {
        foreach (var (font, _) in _fonts.Values) font.Dispose();
    }

    private static double Advance(char c, SKFont font, double digit) => char.IsAsciiDigit(c) ? digit : font.MeasureText(c.ToString());

    private (SKFont Font, double Digit) Font(Style style)
    {
        if (_fonts.TryGetValue((style.Bold, style.Size), out var known)) return known;
        var font = new SKFont(style.Bold ? DrawnFace.Bold : DrawnFace.Regular, (float)style.Size) { Subpixel = true, LinearMetrics = true, Hinting = SKFontHinting.None };
        return _fonts[(style.Bold, style.Size)] = (font, "0123456789".Max(d => font.MeasureText(d.ToString())));
    }
}

/// <summary>How text looks.</summary>
/// <param name="Tabular">Every digit of one width, so that columns of numbers stand under each other.</param>
internal sealed record Style(double Size, Ink Ink, bool Bold = false, bool Tabular = false)
{
    /// <summary>From base line to base line.</summary>
    public double Leading => Size * 1.36;

    /// <summary>From the top of a line to its base line.</summary>
    public double Ascent => Size * 1.02;
}
