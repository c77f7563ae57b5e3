using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using ScottPlot;
using SkiaSharp;

namespace Crossmember.Documents.Curves;

/// <summary>A chart as a drawing of lines and text.</summary>
public static partial class CurveSvg
{
    private const string Dashes = "8 5";

    private static readonly XNamespace s_svg = "http://www.w3.org/2000/svg";

    [GeneratedRegex(@"-?\d+\.\d{3,}")]
    private static partial Regex TooExact();

    /// <summary>A file by itself: the light colours on white, what it shows in its title and description.</summary>
    public static byte[] Write(CurveChart chart, PictureSize size)
    {
        var root = Draw(chart, size, ink => ink.Light, $"'{DrawnFace.Family}','DejaVu Sans',sans-serif");
        root.AddFirst(new XElement(s_svg + "title", chart.Title), new XElement(s_svg + "desc", CurveWords.Describe(chart)),
            new XElement(s_svg + "rect", new XAttribute("width", size.Width), new XAttribute("height", size.Height), new XAttribute("fill", Ink.Ground.Light)));
        return Encoding.UTF8.GetBytes(root.ToString(SaveOptions.DisableFormatting));
    }

    /// <summary>Markup to stand within a page, in the colours and the face of the page's tokens, so that it follows the theme.</summary>
    public static string ForPage(CurveChart chart, PictureSize size)
    {
        var root = Draw(chart, size, ink => $"var(--{ink.Token})", "var(--text-face)");
        root.SetAttributeValue("width", null);
        root.SetAttributeValue("height", null);
        root.SetAttributeValue("role", "img");
        root.SetAttributeValue("aria-label", CurveWords.Describe(chart));
        return root.ToString(SaveOptions.DisableFormatting);
    }

    private static XElement Draw(CurveChart chart, PictureSize size, Func<Ink, string> colour, string face)
    {
        var plot = CurvePlot.Of(chart, size, new CodePens());
        var place = new PixelRect(0, size.Width, size.Height, 0);
        // The key takes its room only once it has been drawn: the first time is thrown away.
        using (var settling = new SKPictureRecorder()) plot.Render(settling.BeginRecording(new(0, 0, size.Width, size.Height)), place);
        using var stream = new MemoryStream();
        using (var canvas = SKSvgCanvas.Create(new SKRect(0, 0, size.Width, size.Height), stream)) plot.Render(canvas, place);
        stream.Position = 0;
        var root = XElement.Load(stream);
        Tidy(root, colour);
        root.SetAttributeValue("viewBox", $"0 0 {size.Width} {size.Height}");
        root.SetAttributeValue("style", $"font-family:{face}");
        return root;
    }

    /// <summary>Leaves what is seen, in its final colours, to a hundredth of a pixel.</summary>
    private static void Tidy(XElement root, Func<Ink, string> colour)
    {
        // Nothing lies outside the axes, and a clip would cut off a name that another face sets wider. Clips also bear names that count on from chart to chart.
        foreach (var e in root.Descendants().Where(e => e.Name == s_svg + "clipPath" || IsUnseen(e)).ToList()) e.Remove();
        foreach (var g in root.Descendants(s_svg + "g").Reverse().ToList())
        {
            g.SetAttributeValue("clip-path", null);
            if (!g.HasAttributes) g.ReplaceWith(g.Nodes());
        }
        foreach (var e in root.Descendants()) Finish(e, colour);
    }

    private static bool IsUnseen(XElement e) => (string?)e.Attribute("fill-opacity") == "0" && e.Attribute("stroke") is null;

    private static void Finish(XElement e, Func<Ink, string> colour)
    {
        if (e.Name == s_svg + "text") Set(e);
        foreach (var a in e.Attributes()) a.Value = TooExact().Replace(a.Value, m => double.Parse(m.Value, CultureInfo.InvariantCulture).ToString("0.##", CultureInfo.InvariantCulture));
        foreach (var name in (string[])["fill", "stroke"])
            if (CodePens.Meant((string?)e.Attribute(name)) is { } meant)
            {
                // A style and not an attribute: only there do all browsers know variables.
                e.SetAttributeValue(name, null);
                e.SetAttributeValue("style", $"{(string?)e.Attribute("style")}{name}:{colour(meant.Ink)};");
                if (meant.Then) e.SetAttributeValue("stroke-dasharray", Dashes);
            }
    }

    /// <summary>One place for the whole text instead of one for each letter, so that another face sets it well too.</summary>
    private static void Set(XElement text)
    {
        text.Value = text.Value.Trim();
        text.SetAttributeValue("font-family", null);
        foreach (var name in (string[])["x", "y"]) text.SetAttributeValue(name, ((string?)text.Attribute(name))?.Split(',')[0].Trim());
    }
}
