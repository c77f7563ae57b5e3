using ScottPlot;
using SkiaSharp;

namespace Crossmember.Documents.Curves;

/// <summary>The desk's text face, from inside the program: no picture depends on what fonts a machine has. Its digits are all of one width.</summary>
internal sealed class DrawnFace : IFontResolver
{
    public const string Name = "Desk Text";

    internal static readonly SKTypeface Regular = Load("Regular.ttf"), Bold = Load("Bold.ttf");

    /// <summary>The face's own name, under which it is written into drawings.</summary>
    public static string Family => Regular.FamilyName;

    /// <summary>From now on every text of every plot is set in it, whatever face it asks for.</summary>
    public static void Register()
    {
        Fonts.FontResolvers.Clear();
        Fonts.FontResolvers.Add(new DrawnFace());
        Fonts.Default = Name;
    }

    public SKTypeface CreateTypeface(string fontName, FontWeight weight, FontSlant slant, FontSpacing width) => weight >= FontWeight.SemiBold ? Bold : Regular;

    public SKTypeface CreateTypeface(string fontName, bool bold, bool italic) => bold ? Bold : Regular;

    /// <summary>The face lacks two signs that our units are printed with; it has others that read the same.</summary>
    public static string Printable(string text) => text.Replace('µ', 'μ').Replace("⁴", "^4", StringComparison.Ordinal);

    public static bool Has(string text)
    {
        using var font = new SKFont(Regular);
        return font.ContainsGlyphs(Printable(text));
    }

    private static SKTypeface Load(string file)
    {
        using var stream = typeof(DrawnFace).Assembly.GetManifestResourceStream(file)!;
        return SKTypeface.FromStream(stream);
    }
}
