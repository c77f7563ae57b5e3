using System.Globalization;
using System.Xml.Linq;
using Crossmember.Documents.Curves;

namespace Crossmember.Documents.Paper.Html;

/// <summary>Our own drawings as markup, in the colours and the face of the page's tokens.</summary>
internal static class DrawingSvg
{
    private static readonly XNamespace s_svg = "http://www.w3.org/2000/svg";

    public static string Fitting(Drawing drawing) => Whole(drawing, $"width:{Number(drawing.Width)}mm;max-width:100%;height:auto");

    public static string TrueScale(Drawing drawing) => Whole(drawing, $"width:{Number(drawing.Width)}mm;height:{Number(drawing.Height)}mm;display:block");

    /// <summary>The shape of a verdict beside its word, which says the same.</summary>
    public static string Mark(Shape shape) => new XElement(s_svg + "svg", new XAttribute("aria-hidden", "true"), new XAttribute("viewBox", "0 0 16 16"), new XAttribute("width", 12), new XAttribute("height", 12),
        Of(shape)).ToString(SaveOptions.DisableFormatting);

    private static string Whole(Drawing drawing, string style) => new XElement(s_svg + "svg", new XAttribute("role", "img"), new XAttribute("aria-label", Plain.Text(drawing.Told)),
        new XAttribute("viewBox", $"0 0 {Number(drawing.Width)} {Number(drawing.Height)}"), new XAttribute("style", style), drawing.Shapes.Select(Of)).ToString(SaveOptions.DisableFormatting);

    private static XElement Of(Shape shape) => shape switch
    {
        Shape.Path p => new(s_svg + "path", new XAttribute("d", $"M{string.Join('L', p.Points.Select(s => $"{Number(s.X)} {Number(s.Y)}"))}{(p.Closed ? "Z" : "")}"), Style(p.Fill, p.Pen, p.Width)),
        Shape.Circle c => new(s_svg + "circle", new XAttribute("cx", Number(c.Center.X)), new XAttribute("cy", Number(c.Center.Y)), new XAttribute("r", Number(c.Radius)), Style(c.Fill, c.Pen, c.Width)),
        Shape.Label l => new(s_svg + "text", new XAttribute("x", Number(l.At.X)), new XAttribute("y", Number(l.At.Y)), new XAttribute("text-anchor", l.Anchor.ToString().ToLowerInvariant()),
            new XAttribute("style", $"font-size:{Number(l.Size)}px;fill:var(--{l.Ink.Token});{(l.Bold ? "font-weight:700" : "")}"), Plain.Text(l.Words)),
        _ => throw new InvalidOperationException("a shape of no known kind"),
    };

    private static XAttribute Style(Ink? fill, Ink? pen, double width) =>
        new("style", $"fill:{(fill is null ? "none" : $"var(--{fill.Token})")};" + (pen is null ? "" : $"stroke:var(--{pen.Token});stroke-width:{Number(width)}"));

    private static string Number(double value) => Math.Round(value, 4).ToString("0.####", CultureInfo.InvariantCulture);
}
